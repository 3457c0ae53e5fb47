/**
 * A party of a list in words and numbers: what its members share, what joins each, and how easily strangers look so.
 *
 * By accident: of n strangers there are C(n, k) groups of k, each joined in k^(k − 2) ways (A. Cayley, Quarterly
 * Journal of Mathematics 23 (1889)). Groups as much alike are expected C(n, k) · k^(k − 2) · Π u times, where u are the
 * chances by accident along the strongest such joining; that so many are expected bounds the chance of seeing one, which
 * is 1 − e^−expected for rare events (Poisson).
 */
import { gather } from '../../model/multimap.ts';
import { probabilityOf } from '../identity/weight.ts';
import type { Row } from './list.ts';
import { valuesOf } from './tables.ts';
import { priorOf, type ListContext } from './ties.ts';
import type { Party, PartyMember, SharedValue, Tie, TieKind } from './types.ts';

/** A party of more is no longer explained pair by pair beyond so many members. */
const mostExplained = 60;

/** All evidence between two rows. */
export type TiesOf = (a: Row, b: Row) => readonly Tie[];

/** What is said of rows that were found to be one party. */
export function partyOf(rows: readonly Row[], context: ListContext, tiesOf: TiesOf): Party {
  const explained = rows.slice(0, mostExplained);
  const prior = priorOf(context);
  const tree = strongestTree(explained, tiesOf);
  const accident = tree.reduce((sum, one) => sum + one.log2Accident, 0);
  const k = explained.length;
  const log2Expected = log2Choose(context.count, k) + (k - 2) * Math.log2(k) + accident;
  const expected = 2 ** Math.min(60, log2Expected);
  const origin = sharedOrigin(rows);
  return {
    id: rows[0]!.entry.ref,
    members: rows.map((row) => memberOf(row, explained, prior, tiesOf)),
    shared: sharedValues(rows, context),
    ...(origin ? { origin } : {}),
    weight: tree.reduce((sum, one) => sum + one.weight, 0),
    expected,
    chance: -Math.expm1(-expected),
  };
}

interface Join {
  weight: number;
  log2Accident: number;
}

/** The joins of the greatest weight that hold all members together (R. C. Prim, Bell System Technical Journal 36, 1957). */
function strongestTree(rows: readonly Row[], tiesOf: TiesOf): Join[] {
  const best = rows.map((): Join => ({ weight: -Infinity, log2Accident: 0 }));
  const left = new Set(rows.keys());
  const joins: Join[] = [];
  let next = 0;
  for (;;) {
    left.delete(next);
    if (left.size === 0) return joins;
    let top = -1;
    for (const i of left) {
      const ties = tiesOf(rows[next]!, rows[i]!);
      const weight = ties.reduce((sum, tie) => sum + tie.weight, 0);
      if (weight > best[i]!.weight)
        best[i] = { weight, log2Accident: ties.reduce((sum, tie) => sum + Math.log2(tie.accident), 0) };
      if (top < 0 || best[i]!.weight > best[top]!.weight) top = i;
    }
    joins.push(best[top]!);
    next = top;
  }
}

function memberOf(row: Row, rows: readonly Row[], prior: number, tiesOf: TiesOf): PartyMember {
  const why = new Map<string, PartyMember['why'][number]>();
  let top = -Infinity;
  for (const other of rows) {
    if (other === row) continue;
    const ties = tiesOf(row, other);
    top = Math.max(
      top,
      ties.reduce((sum, { weight }) => sum + weight, prior),
    );
    for (const { kind, because, weight } of ties) {
      if (weight < 0.5) continue;
      const key = `${kind} ${Object.values(because).join(' ')}`;
      const known = why.get(key);
      if (known) {
        known.with.push(other.entry.ref);
        known.weight = Math.max(known.weight, weight);
      } else why.set(key, { kind, with: [other.entry.ref], because, weight });
    }
  }
  return {
    ref: row.entry.ref,
    why: [...why]
      .sort(([a, one], [b, other]) => other.weight - one.weight || (a < b ? -1 : 1))
      .map(([, one]) => one),
    probability: probabilityOf(Math.min(top, 50)),
  };
}

const told = ['ticket', 'household', 'cabin', 'surname', 'origin', 'bound', 'joining', 'nearest'] as const;

/** What more than one member states and most who state anything agree in. */
function sharedValues(rows: readonly Row[], context: ListContext): SharedValue[] {
  return told.flatMap((field) => {
    const holders = new Map<string, Row[]>();
    for (const row of rows) for (const value of new Set(valuesOf(row, field))) gather(holders, value, row);
    const taken = new Set<Row>();
    return [...holders]
      .filter(([, some]) => some.length > 1)
      .sort(([, a], [, b]) => b.length - a.length)
      .flatMap(([value, some]): SharedValue[] => {
        // Of a chain of places only the narrowest that the same people share.
        if (some.every((row) => taken.has(row))) return [];
        for (const row of some) taken.add(row);
        const { having, of } = context.tables.others(field, value, some[0]!, some[1]!);
        const first = some[0]!;
        return [
          {
            what: field satisfies TieKind,
            value: wordOf(first, field, value),
            refs: some.map(({ entry }) => entry.ref),
            having,
            of,
            chance: Math.min(1, (having + 0.5) / (of + 1)),
          },
        ];
      });
  });
}

function wordOf(row: Row, field: (typeof told)[number], value: string): string {
  if (field === 'surname') return row.surname!.written;
  if (field === 'ticket') return row.entry.ticket!;
  if (field === 'household' || field === 'cabin') return row.entry[field]!;
  if (field === 'joining' || field === 'nearest')
    return row.entry[field]!.find((text) => text.toLowerCase().includes(value.split(' ')[0]!)) ?? value;
  return value;
}

/** The narrowest place that all members who state an origin share, where at least two do. */
function sharedOrigin(rows: readonly Row[]): Party['origin'] {
  const stating = rows.filter(({ entry }) => (entry.origin?.length ?? 0) > 0);
  if (stating.length < 2) return undefined;
  const place = stating[0]!.entry.origin!.find((id) =>
    stating.every(({ entry }) => entry.origin!.includes(id)),
  );
  return place === undefined ? undefined : { place, refs: stating.map(({ entry }) => entry.ref) };
}

function log2Choose(n: number, k: number): number {
  let sum = 0;
  for (let i = 1; i <= k; i++) sum += Math.log2((n - k + i) / i);
  return sum;
}
