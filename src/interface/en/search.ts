/** Looking things up. */
export const search = {};
