/** Head, foot and what stands on every page. */
export const layout = {};
