/** About the site, the page that is not there, the style page. */
export const about = {};
