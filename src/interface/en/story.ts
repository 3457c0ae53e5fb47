/** The story of a case. */
export const story = {};
