/** The part of the library that is used; it brings no types of its own. */
declare module 'jaro-winkler' {
  /** Similarity of two texts by Jaro's formula with Winkler's bonus for a common beginning, 0 to 1. */
  export default function similarity(a: string, b: string): number;
}
