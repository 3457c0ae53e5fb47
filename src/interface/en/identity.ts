/** Who is who. */
export const identity = {};
