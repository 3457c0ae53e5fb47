/** What is known of a family, and what a comparison of two of them says. */
import type { Reason } from '../../model/reason.ts';
import type { TraitSaid } from '../../model/trait.ts';
import type { Days } from '../identity/agreement.ts';

/** One way a record names somebody. */
export interface Naming {
  given: string;
  surname: string;
  /** The surname says what the father was called. */
  patronymic: boolean;
  /** As the record has it. */
  written: string;
  /** The patronymic that alone tells a given name: “as Larsdatter tells”. */
  toldBy?: string;
  /** `record#mention`; empty where only a person's file says so. */
  ref: string;
}

/** A child of a family. */
export interface Relative {
  /** A person's id, else a mention. */
  key: string;
  names: readonly Naming[];
  sex?: 'M' | 'F';
  /** The days of the birth, and who says so. */
  birth?: Days & { ref: string };
  /** Every birth that is told to the month, or, where none is, the one above. */
  births: readonly (Days & { ref: string })[];
  /** Days on which a record states the birth to the day. */
  birthdays: readonly { day: number; ref: string }[];
  refs: readonly string[];
  /** Lists of one parent's children that name them, with the place in the list. */
  listed: readonly { list: string; at: number }[];
}

/** Where a family was, as a record says it. */
export interface FamilyPlace {
  place: string;
  /** As written; empty where the record was made there. */
  reading: string;
  ref: string;
}

/** A family as one shore knows it: of the child in question, the parents, the other children. Anything may be empty. */
export interface Family {
  /** The emigrant, or the child who would be the emigrant. */
  child?: Relative;
  father: readonly Naming[];
  mother: readonly Naming[];
  siblings: readonly Relative[];
  spouse: readonly Naming[];
  places: readonly FamilyPlace[];
  occupation: readonly { text: string; ref: string }[];
}

/** Something a record says; the reference is empty where only a person's file says it. */
export interface Said {
  text: string;
  ref: string;
  /**
   * What the text is, where it is not what the record says outright: the name that tells another, the day by which the
   * emigrant was here, a list without somebody, a search that found nothing, a child not named.
   */
  as?: 'tells' | 'here-by' | 'without' | 'not-found' | 'child';
}

export type FamilyField =
  | 'given'
  | 'birth'
  | 'birthday'
  | 'surname'
  | 'father'
  | 'father-patronymic'
  | 'mother'
  | 'maiden'
  | 'sibling'
  | 'order'
  | 'spouse'
  | 'place'
  | 'occupation'
  | 'afterwards';

/** One line of the ledger of a candidate. */
export interface FamilyRow {
  field: FamilyField;
  /** What the new country's records say, and what the candidate's do; empty where they do not. */
  a: string;
  b: string;
  /** The same, each value with a mention that says so. */
  aFrom: readonly Said[];
  bFrom: readonly Said[];
  /** A level of the field, or `missing`. */
  agreement: string;
  verdict: 'agrees' | 'differs' | 'unsaid';
  /** Of the order of the children: how many pairs of them stand as here, of how many. */
  order?: { same: number; pairs: number };
  /** In bits; 0 where something is missing. */
  weight: number;
  because: readonly Reason[];
}

/** A number with the interval it lies in nine times in ten. */
export interface Estimate {
  value: number;
  low: number;
  high: number;
}

/** How many families of a place agree as well by accident. */
export interface ByChance {
  /** The place whose families are counted. */
  place: string;
  placeName: string;
  placeKind: string;
  households: Estimate;
  householdsBecause: Reason;
  /** Expected number of other families that agree in all that agrees here. */
  expected: Estimate;
  /** The chance that there is at least one: 1 − (1 − p)^N. */
  any: number;
  /** What was multiplied: each agreement with the share of families that have it. */
  parts: { what: TraitSaid; share: number; because: readonly Reason[] }[];
}

export interface CandidateComparison {
  id: string;
  records: readonly string[];
  people: readonly string[];
  note?: string;
  /** The child of the candidate who would be the emigrant, by person or mention; absent where the records name none. */
  child?: string;
  family: Family;
  rows: FamilyRow[];
  /** The sum of the rows, in bits. */
  weight: number;
  /** Among the candidates and “none of them”: 0 to 1. */
  probability: number;
  /** Absent where nothing agrees. */
  chance?: ByChance;
  /** Other candidates that it cannot be told apart from, each with what would tell them apart. */
  ties: { other: string; bits: number; fields: FamilyField[] }[];
  /** Children beyond the number that is compared, left out. */
  leftOut: number;
}

/** The candidates of a case beside the family as the new country knows it. */
export interface CandidateComparisons {
  expected: Family;
  /** Countries the candidates are in, by id. */
  overThere: readonly string[];
  /** The last day by which the subject was in the new country, as a day number, with the mention that says so. */
  hereBy?: { day: number; ref: string };
  candidates: CandidateComparison[];
  /** Households of all the places that candidates are in, and log₂ of the prior odds of each candidate. */
  households: number;
  prior: number;
  /** The probability of “none of them”. */
  none: number;
}
