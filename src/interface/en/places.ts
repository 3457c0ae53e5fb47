/** Places: one place’s page and the index. */
export const places = {};
