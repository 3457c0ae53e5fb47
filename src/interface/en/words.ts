/** Words for the usual values of the content: roles, kinds, statements, forms. */
export const words = {};
