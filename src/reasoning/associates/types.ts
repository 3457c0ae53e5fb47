/** What is known of those who keep turning up beside a family. Plain data; `associatesOf` makes it. */

/** What part somebody who is not kin had in a record beside the family. */
export type AssociateRole =
  | 'witness'
  | 'sponsor'
  | 'neighbour'
  | 'fellow-passenger'
  | 'household'
  | 'grantor'
  | 'bondsman'
  | 'informant'
  | 'mourner'
  | 'fellow-worker'
  | 'other';

/** One mention of an associate beside the family. */
export interface Sighting {
  /** `record#mention`. */
  ref: string;
  record: string;
  role: AssociateRole;
  /** In words, for a table: “neighbour, 3 lines off”. */
  as: string;
  /** Lines of the page or list between this mention and the nearest of the family; absent where either has none. */
  lines?: number;
  /** Mentions of the family in the record that it stands beside. */
  beside: string[];
}

/** A place somebody came from, as a record states it. */
export interface StatedOrigin {
  ref: string;
  /** `birthplace`, `lastResidence`, `event`, `nearest` … */
  states: string;
  reading: string;
  /** The one place it means, where the gazetteer knows it clearly. */
  place?: string;
}

/** One probable individual, not known to be kin, met beside the family in one record or more. */
export interface Associate {
  /** Stable and unique in its family: the person's id, or made from the name. */
  id: string;
  /** The person the author takes the mentions to be; absent for a group made by name alone. */
  person?: string;
  /** The name as most often written. */
  name: string;
  /** Every spelling met, commonest first. */
  names: string[];
  surname: string;
  sightings: Sighting[];
  /** Records that are not copies of one another. */
  records: number;
  roles: AssociateRole[];
  /** Years of the records, where they are dated. */
  years?: { first: number; last: number };
  /** The share of people of the name where they lived, in words, and its source. */
  rarity: { share: number; because: string; source: string };
  /** How many of the family's other records would name somebody of this name by chance alone. */
  expected: number;
  /** The chance that they turn up in so many records by accident: 0 to 1. */
  chance: number;
  /** Where records say they came from: the lead. */
  origins: StatedOrigin[];
}
