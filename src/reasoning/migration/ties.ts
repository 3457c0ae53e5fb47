/** What a piece of evidence between two entries of a list is made of. */
import type { Row } from './list.ts';
import type { Counted, Tables } from './tables.ts';
import type { TieSaid } from '../../model/tie.ts';
import type { Tie } from './types.ts';

/** Companions a traveller has on average, the lone ones counted, where a list has not shown it yet (our estimate). */
export const usualCompanions = 1.5;

/** How often two of one party agree in a field that both state. */
export const agreeing = {
  ticket: 0.85,
  household: 0.9,
  surname: 0.6,
  patronymic: 0.35,
  origin: 0.65,
  bound: 0.85,
  joining: 0.4,
  nearest: 0.4,
  cabin: 0.4,
  class: 0.96,
  port: 0.97,
  country: 0.97,
  occupation: 0.35,
} as const;

export interface ListContext {
  tables: Tables;
  count: number;
  /** Companions a traveller has on average. */
  companions: number;
  alphabetical: boolean;
  /** The share of neighbours that belong together, by distance from 1. */
  neighbours: readonly number[];
  /** The share of entries that hold a ticket someone else holds too, of those with a ticket. */
  ticketsShared: number;
  /** The share of tickets that are one holder's or few's: of a column of words it is small. */
  ticketsDistinct: number;
  /** The chance that two strangers are said to be companions. */
  statedCompanions: number;
  patronymics: boolean;
}

/** log₂ odds that two entries are of one party, before anything is compared. */
export function priorOf({ count, companions }: Pick<ListContext, 'count' | 'companions'>): number {
  return Math.log2(Math.min(0.5, companions / Math.max(1, count - 1)));
}

/** Evidence for: m among those of one party, u among strangers. */
export const tie = (kind: Tie['kind'], value: string, m: number, u: number, because: TieSaid): Tie => ({
  kind,
  value,
  weight: Math.log2(m / u),
  accident: Math.min(1, u),
  because,
});

const different: TieSaid = { key: 'different' };

/** Evidence against: the two differ where those of one party agree with the share m. */
export const against = (kind: Tie['kind'], m: number, differ: number): Tie => ({
  kind,
  value: '',
  weight: Math.min(0, Math.log2((1 - m) / differ)),
  accident: 1,
  because: different,
});

/** The share of other parties that have a value; half a party is added, since none is not never. */
export function share(field: Counted, value: string, a: Row, b: Row, { tables }: ListContext): number {
  const { having, of } = tables.others(field, value, a, b);
  return Math.min(1, (having + 0.5) / (of + 1));
}
