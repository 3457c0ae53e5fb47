/** Dates, spans and years in words. */
export const dates = {};
