/**
 * Why two namings, places or families are said to agree as they do, and how common a name is: the reasons of every
 * ledger, as keys with values.
 */
import type { Said } from './said.ts';

/** Nothing more to say than the key does. */
type Bare = Record<never, never>;

/** One spelling of a given name, and what it is to the name. */
export interface NameForm {
  as: string;
  kind: 'abbreviation' | 'latin' | 'translation' | 'diminutive' | 'interchangeable' | 'spelling';
  /** Of a translation. */
  language: string;
  of: string;
}

/** How two names agree. */
interface NameReasons {
  'prefix-left-off': { prefix: 'o' | 'mac' | 'fitz' | 'particle' };
  'used-for-one-another': { a: string; b: string };
  'spellings-of-one-name': { a: string; b: string };
  'part-of-a-name': { part: string; of: string };
  'spellings-alike': Bare;
  'spellings-nearly-the-same': Bare;
  'sound-alike': Bare;
  'one-patronymic': { a: string; b: string };
  'one-father': { a: string; b: string; father: string };
  'one-name': { a: string; b: string };
  'further-names-differ': { a: string; b: string };
  'left-off': { name: string };
  'further-name-of': { name: string; of: string };
  'only-the-initial': { initial: string };
  'initial-fits': { initial: string; name: string };
  'forms-of-a-name': { forms: readonly NameForm[] };
}

/** What share of a population bears a name. The name is empty where none is written, the place where the list has none. */
interface RarityReasons {
  'listed-in-a-wider-place': {
    name: string;
    place: string;
    wider: string;
    share: number;
    /** Where it must be rarer here: by no more than this. */
    atMost: number | null;
  };
  'nobody-called-so': { name: string; place: string; people: number; share: number };
  'not-among-those-listed': { name: string; place: string; share: number };
  'borne-from-memory': { name: string; place: string; share: number };
  'borne-by': { name: string; place: string; bearers: number; people: number; share: number };
  'borne-by-few': {
    name: string;
    place: string;
    bearers: number;
    people: number;
    larger: string;
    share: number;
  };
  'in-no-list': { name: string; share: number };
  'no-list-of-the-place': { name: string; place: string; share: number };
  'no-more-than-the-father': { name: string; share: number };
}

/** Out of how many people somebody could be another, and how many households that makes. */
interface CrowdReasons {
  'people-counted': { people: number; place: string };
  'people-usual': { people: number; kind: string; place: string };
  'no-place-said': { people: number };
  'size-not-known': { people: number; place: string };
  'households-counted': { crowd: Reason; source: string };
  'households-reckoned': { crowd: Reason; each: number; source: string };
}

/** How two places agree. */
interface PlaceReasons {
  'only-a-country': { place: string };
  'both-mean': { place: string };
  'lies-in': { inner: string; outer: string };
  'share-ground': { a: string; b: string };
  'both-lie-in': { place: string };
  'is-not': { a: string; b: string };
  'address-not-placed': Bare;
  'either-side-of-a-migration': Bare;
}

/** What else a line of a ledger says. */
interface LineReasons {
  'one-does-not-say': Bare;
  'patronymic-beside-family-name': Bare;
  'married-in-between': Bare;
  'years-apart': { years: number };
  'surname-agrees-too': Bare;
  'best-of-values': { values: number; bits: number };
  'best-of-places': { values: number; bits: number };
}

/** What a line of a comparison of families says. */
interface FamilyReasons {
  'one-does-not-name-the-child': Bare;
  'here-do-not-say': Bare;
  'candidate-does-not-say': Bare;
  'any-child-may-have-it': { children: number };
  'day-or-month-the-same': Bare;
  'order-follows-from-ages': Bare;
  'no-age-to-compare': Bare;
  'names-no-other-children': Bare;
  'not-among-the-children': Bare;
  'none-of-the-children': { children: number };
  'departure-not-known': Bare;
  'no-child-who-could-be': Bare;
  'nothing-later-entered': Bare;
  'there-afterwards': Bare;
  'said-to-be-abroad': Bare;
  'looked-for-afterwards': Bare;
  'trades-agree-so': { share: number };
}

export type ReasonValues = NameReasons &
  RarityReasons &
  CrowdReasons &
  PlaceReasons &
  LineReasons &
  FamilyReasons;

/** One reason. */
export type Reason = Said<ReasonValues>;
