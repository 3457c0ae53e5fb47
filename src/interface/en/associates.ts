/** Associates. */
export const associates = {};
