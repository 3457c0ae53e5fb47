/** Clues. */
export const clues = {};
