/** How standings are worked out. */
export const method = {};
