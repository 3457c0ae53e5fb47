/** Plain data of lists of travellers and of the parties found in them. */
import type { TieSaid } from '../../model/tie.ts';

/** One line of a list of travellers. Everything but the reference may be missing. */
export interface ListEntry {
  /** `record#mention`, or any name of the row. */
  ref: string;
  /** As written: “Surname, Mr. Given”, “Mary Do.” … */
  name?: string;
  sex?: 'M' | 'F';
  /** In years; infants have less than 1. */
  age?: number;
  /** Where on the list; where lines are not numbered the order of the entries counts. */
  line?: number;
  ticket?: string;
  /** Number of a family or party on the list. */
  household?: string;
  cabin?: string;
  class?: string;
  /** Port of embarkation. */
  port?: string;
  occupation?: string;
  /** Where they last lived or were born: keys from the narrowest place to the widest, no country among them. */
  origin?: readonly string[];
  /** The origin as written. */
  originReading?: string;
  country?: string;
  /** Where they are bound, as `origin`. */
  bound?: readonly string[];
  boundReading?: string;
  /** Whom they join, and whom they left: name and address, each as written. */
  joining?: readonly string[];
  nearest?: readonly string[];
  /** What the record states between this entry and others. */
  stated?: readonly { as: string; of: string; kin: boolean }[];
}

/** What two entries have in common, or what tells them apart. */
export type TieKind =
  | 'kin'
  | 'companion'
  | 'ticket'
  | 'next ticket'
  | 'household'
  | 'cabin'
  | 'surname'
  | 'maiden name'
  | 'father’s name'
  | 'husband’s name'
  | 'origin'
  | 'bound'
  | 'joining'
  | 'nearest'
  | 'occupation'
  | 'country'
  | 'port'
  | 'class'
  | 'family'
  | 'beside';

/** One piece of evidence between two entries. */
export interface Tie {
  kind: TieKind;
  /** What is shared, as written or as a place id; empty where it is a difference. */
  value: string;
  /** In bits: log₂ of how much likelier it is in one party than between strangers. Negative where it tells against. */
  weight: number;
  /** The share of strangers on this list of whom it would be true by accident, 0 to 1; 1 where it tells against. */
  accident: number;
  because: TieSaid;
}

/** A member of a party, and why they are counted in it. */
export interface PartyMember {
  ref: string;
  /** What joins them to the others, the strongest first. */
  why: { kind: TieKind; with: string[]; because: TieSaid; weight: number }[];
  /** How likely they belong to the party, 0 to 1, as the model has it. */
  probability: number;
}

/** Something several members share. */
export interface SharedValue {
  what: TieKind;
  value: string;
  /** The members that state it. */
  refs: string[];
  /** How many of the other parties and lone travellers state it too, of how many that state any. */
  having: number;
  of: number;
  /** The share of strangers on the list who would state it too. */
  chance: number;
}

/** People of one list who seem to have travelled together. */
export interface Party {
  /** The first entry’s reference; no two parties of a list have the same. */
  id: string;
  members: PartyMember[];
  shared: SharedValue[];
  /** The narrowest place narrower than a country that every member who states an origin shares, if two or more do. */
  origin?: { place: string; refs: string[] };
  /** The joins of the party, strongest tree, in bits without the prior. */
  weight: number;
  /** Groups of this size and likeness that a list of nothing but strangers would show by accident, on average. */
  expected: number;
  /** The chance that such a list shows one or more. */
  chance: number;
}

/** What was made of a list. */
export interface ListReading {
  entries: number;
  parties: Party[];
  /** The list is sorted by surname or its first letter, so that standing side by side says nothing. */
  alphabetical: boolean;
  /** Of each distance in lines from 1 on: the share of such pairs that belong together, as learned or assumed. */
  neighbours: readonly number[];
}
