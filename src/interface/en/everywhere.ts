/** Words used by more than one room: counting, joining, and what has no answer. */
const numbers = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

export const everywhere = {
  /** The language’s own name, as its readers call it. */
  language: 'English',
  /** “no”, “one” … “twelve”, then figures. */
  numberWord: (n: number): string => numbers[n] ?? String(n),
  /** Thousands as the language parts them: “2,000”. */
  figures: (n: number): string => String(n).replace(/\B(?=(\d{3})+(?!\d))/g, ','),
  /** What stands before the last of a list: “a, b and c”. */
  and: ' and ',
  or: ' or ',
  undated: 'undated',
  notKnown: 'not known',
};
