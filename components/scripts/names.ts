/** The scripts pages may ask for; each is a file beside this one. */
export const scriptNames = ['sheet', 'search', 'review'] as const;
export type ScriptName = (typeof scriptNames)[number];
