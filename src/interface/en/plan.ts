/** Research plans and coverage. */
export const plan = {};
