/** How people are related. */
export const kin = {};
