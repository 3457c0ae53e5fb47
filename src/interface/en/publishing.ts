/** Feed, cards and what travels with the site. */
export const publishing = {};
