/** Maps and their legends. */
export const maps = {};
