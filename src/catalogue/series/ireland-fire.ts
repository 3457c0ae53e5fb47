/**
 * The loss behind most gaps in Irish records. It took most censuses before 1861, the wills and a great part of the
 * Church of Ireland registers; Catholic, civil and valuation records were elsewhere and survive. The day is that of
 * the explosion.
 */
export const fourCourtsFire = 'Destroyed in the Public Record Office, Four Courts, Dublin, on 30 June 1922';
