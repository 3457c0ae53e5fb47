/** Standings and what a case computes to. */
export const standing = {};
