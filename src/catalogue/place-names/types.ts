/**
 * Spellings that stand for one element of a native place name. Clerks wrote what they heard, so one element turns up
 * in the native spelling, in the spelling of the map, and in several halfway between.
 */
export interface NameElement {
  /** What the element means, in English. */
  means: string;
  /** Every spelling, in lower case without accents. The first is the native one. */
  forms: readonly string[];
  /** Where in a name it stands: at the start of a word, at the end of one, or only as a word of its own. */
  at: 'start' | 'end' | 'word';
}

/** The elements of one language, with the handbook they come from. */
export interface ElementSet {
  language: string;
  elements: readonly NameElement[];
  source: string;
}

/** Names one place has gone by, one after the other or side by side. Each finds a place that bears any of them. */
export interface FormerNames {
  names: readonly string[];
  /** The built-in place it lies in, since other places share some of the names. */
  within: string;
  source: string;
}

/** Short forms in which clerks wrote the name of one built-in place. */
export interface Abbreviated {
  place: string;
  forms: readonly string[];
}
