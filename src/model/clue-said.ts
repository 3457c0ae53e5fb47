/** What was noticed in the names of a family, as keys with values. People are given by name, places in the reasons. */
import type { KinSex } from './kin-term.ts';
import type { Reason } from './reason.ts';
import type { Said } from './said.ts';

export type ClueKind = 'middle-name' | 'forename' | 'repeated-name' | 'naming-custom' | 'witness' | 'mother';

/** What somebody was who stood by in a record. */
export type AttendantPart = 'witness' | 'sponsor';

/** Somebody who has a surname among the given names. */
interface Bearer {
  bearer: string;
  sex: KinSex;
  /** The surname, as written there. */
  word: string;
  /** Stands where the first given name stands. */
  first: boolean;
}

/** How often as much would be met by accident. */
export interface ClueChance {
  /** How many such things are expected where nothing is behind them. */
  expected: number;
  /** The chance of meeting as many or more by accident, 0 to 1. */
  probability: number;
}

export interface ClueValues {
  /** It is the surname of the mother or a grandmother: `way` has the sexes of those from the bearer up to her. */
  'surname-of-a-forebear': Bearer & {
    owner: string;
    surname: string;
    way: readonly KinSex[];
    rarity: Reason;
  } & ClueChance;
  'surname-of-an-attendant': Bearer & { attendant: string; part: AttendantPart };
  'surname-of-nobody': Bearer & { maidenNameKnown: boolean };
  /** Grandchildren of one sex: in `times` of `families` families one has the name, written in these forms. */
  'name-repeated': {
    elder: string;
    sex: 'M' | 'F';
    forms: readonly string[];
    times: number;
    families: number;
    children: number;
    /** Whose name it is: the elder’s own, another forebear’s, or nobody’s who is known. */
    whose: { is: 'own' } | { is: 'forebear'; name: string } | { is: 'nobody' };
    /** Names looked at. */
    looks: number;
    rarity: Reason;
  } & ClueChance;
  'named-by-custom': {
    father: string;
    mother: string;
    /** Names for the father or mother, by sex, of one of the couple. */
    names: readonly { forms: readonly string[]; sex: 'M' | 'F'; of: string }[];
    /** The order holds of sons and daughters, as in Ireland and Scotland, or of sons, as in Norway. */
    order: 'sons-and-daughters' | 'sons';
    /** Names that can be compared, and those of them that keep to the custom. */
    compared: number;
    agreeing: number;
    expected: number;
  };
  'surname-shared': {
    woman: string;
    attendants: readonly { name: string; part: AttendantPart }[];
    /** Attendants of the surname who are not named. */
    more: number;
    /** Different people who stood by in all. */
    stood: number;
    rarity: Reason;
  } & ClueChance;
  'maiden-names-differ': { woman: string; surnames: readonly { surname: string; records: number }[] };
}

export type ClueSaid = Said<ClueValues>;
