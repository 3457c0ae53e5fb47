/** Searches and the source list. */
export const searches = {};
