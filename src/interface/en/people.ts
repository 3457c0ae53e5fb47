/** People: one person’s page and the index. */
export const people = {};
