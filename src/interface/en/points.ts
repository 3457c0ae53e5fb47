/** Reviewer’s points. */
export const points = {};
