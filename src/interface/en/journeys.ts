/** Journeys. */
export const journeys = {};
