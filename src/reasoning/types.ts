/** What the reasoning answers, in plain data. Nothing here knows about files or pages. */
import type { PointSaid } from '../model/point-said.ts';

/** Where information comes from. `key` is unique over the corpus; equal keys are one root. */
export interface Root {
  key: string;
  kind: 'person' | 'described' | 'unseen' | 'unknown';
  /** Of a person: their id. Of described and unknown: the record. Of unseen: the author's words. */
  of: string;
  /** For `described`, the informant's words. */
  label?: string;
  /** Known, or only possible. An unknown root is always only possible in weight, but see `viaPerhaps`. */
  known: boolean;
  /** Reached only through a `perhaps`. */
  viaPerhaps: boolean;
}

export type Relation = 'dependent' | 'undetermined' | 'independent';

/** Why two items are not (certainly) independent. */
export type PairReason =
  | { kind: 'same-record'; record: string }
  | { kind: 'derives'; from: string; to: string }
  | { kind: 'common-exemplar'; record: string }
  | { kind: 'shared-root'; root: Root }
  | { kind: 'unknown-root'; item: string; root: Root }
  | { kind: 'possible-root'; root: Root }
  | { kind: 'perhaps-derives'; from: string; to: string }
  | { kind: 'same-volume'; volume: string };

export interface Pair {
  a: string;
  b: string;
  relation: Relation;
  /** Every reason that puts the pair there; empty when independent. */
  reasons: PairReason[];
  /** Index into the case's `independence` list when an argument lifts an undetermined pair. */
  argument?: number;
}

export type TieState = 'not-needed' | 'holds' | 'broken' | 'missing';

/** One item of evidence, as computed. */
export interface ItemResult {
  id: string;
  index: number;
  cited: boolean;
  /** Counts toward support: cited, not negative, holds, has a place (and a tie where it needs one). */
  counts: boolean;
  needsTie: boolean;
  tie: TieState;
  /** Why it needs a tie, in the order of the rule: mentions of others or of nobody; records placed over there or nowhere. */
  tieReasons: TieReason[];
  roots: Root[];
  /** Records it uses, in the order of `from`. */
  records: string[];
  /** Records it uses or certainly derives from. */
  exemplars: string[];
  mentions: { ref: string; record: string; mention: string; person: string | null }[];
  search?: string;
  /** States what the case asks, of the subject. */
  onQuestion: boolean;
}

export type TieReason =
  | { kind: 'other-person'; ref: string; person: string }
  | { kind: 'nobody-yet'; ref: string }
  | { kind: 'no-place'; record: string }
  | { kind: 'same-country'; record: string; country: string };

export interface SupportLevel {
  place: string;
  kind: string;
  independent: number;
  evidence: string[];
  /** One largest set of pairwise independent items, in file order (the first in lexicographic order of positions). */
  witnesses: string[];
}

export interface ConflictResult {
  evidence: string;
  answered: boolean;
  /** How it is answered. */
  by?: { kind: 'conflicts'; index: number } | { kind: 'rejected'; index: number };
}

export type Standing = 'meets' | 'short' | 'contested' | 'open';

/** A whole case, computed. */
export interface CaseResult {
  id: string;
  subject: string;
  claim: 'established' | 'probable' | 'hypothesis' | null;
  place: string | null;
  standing: Standing;
  independent: number;
  support: SupportLevel[];
  items: ItemResult[];
  /** Every pair of cited items with a place, in file order. */
  pairs: Pair[];
  dependence: [string, string][];
  undetermined: [string, string][];
  argued: [string, string][];
  untied: string[];
  conflicts: ConflictResult[];
  margin: number;
  /** One smallest set of records whose loss leaves fewer than two. Empty when the margin is 0. */
  weakest: string[];
  criticalRecords: string[];
  searched: boolean;
  points: PointResult[];
  problems: CaseProblem[];
}

export type PointId =
  | 'two-independent'
  | 'original-record'
  | 'primary-information'
  | 'exemplars-seen'
  | 'both-shores'
  | 'outside-the-family'
  | 'rivals-looked-for'
  | 'conflicts-answered'
  | 'searches-logged'
  | 'states-what-is-asked'
  | 'independence-argued'
  | 'citations-complete';

export interface PointResult {
  point: PointId;
  holds: boolean;
  /** Why; the interface says it. */
  said: PointSaid;
}

/** Something wrong in the case that the author must hear of, at a place in the case file. */
export interface CaseProblem {
  rule: string;
  severity: 'error' | 'warning' | 'hint';
  /** The path in the case's front matter, or in another entry when `entry` is given. */
  path: (string | number)[];
  entry?: `${'record' | 'person' | 'search'}:${string}`;
  message: string;
  help: string;
}
