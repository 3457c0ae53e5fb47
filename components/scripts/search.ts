/** The search page as one types. */
export {};
