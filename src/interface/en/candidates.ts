/** Candidate families. */
export const candidates = {};
