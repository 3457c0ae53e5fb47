/** Records: one record’s page and the index. */
export const records = {};
