import type { Reason } from '../../model/reason.ts';

/**
 * How far two names agree, best first.
 *
 * - `exact`: the same once case, accents and punctuation are folded;
 * - `same`: one name written in two ways: an abbreviation, a Latin form, O’ or Mc left off, a usual spelling variant;
 * - `variant`: a diminutive, or a name used interchangeably with it;
 * - `close`: nearly the same spelling;
 * - `near`: a spelling that a clerk or a transcriber may have made of it;
 * - `sound`: another spelling of one sound;
 * - `initial`: one is only an initial, and it fits;
 * - `different`: none of these.
 */
export type NameLevel = 'exact' | 'same' | 'variant' | 'close' | 'near' | 'sound' | 'initial' | 'different';

export interface NameAgreement {
  level: NameLevel;
  /** Jaro–Winkler similarity of the folded names, 0 to 1. */
  similarity: number;
  /** For the ledger: “Wm is short for William”. Null for `exact` and `different`. */
  why: Reason | null;
}

/** A name taken apart as it stands in a record. Parts keep the spelling of the record; an absent part is empty. */
export interface NameParts {
  /** Mr, Mrs, Rev., Dr, Widow … */
  title: string;
  given: string;
  /** With its prefix: O’Brien, de Burgh. */
  surname: string;
  /** Jr, Sr, the younger … */
  suffix: string;
  /** Given in brackets or after née, born, alias: a second surname. */
  otherSurnames: string[];
  /** The surname is a patronymic (-sen, -son, -datter, -dotter, ap). */
  patronymic: boolean;
  /** A farm name after a patronymic. */
  farm: string;
  /** Other given names told beside the first: in brackets, after “or”. */
  otherGiven?: string[];
  /** A wife or widow called by her husband’s name: Mrs. Maurice Phelan. The given name is his. */
  husbands?: boolean;
  /** Words of the reading that are no part of the name: of Kilmacow, wife of …, & Partners. */
  rest?: string;
}
