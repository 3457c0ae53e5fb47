/** The proof page. */
export const proof = {};
