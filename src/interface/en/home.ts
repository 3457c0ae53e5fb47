/** The first page. */
export const home = {};
