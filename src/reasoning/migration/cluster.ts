/**
 * Pairs → parties. Two groups become one when their best pair is likely (8 : 1) of one party and their members on
 * the whole do not speak against it (average linkage), so that a chain of slight likenesses does not snowball. What
 * the record states as kinship joins without asking.
 */
import { gather } from '../../model/multimap.ts';
import type { Row } from './list.ts';
import { nearby } from './order.ts';
import type { Counted, Tables } from './tables.ts';

/** log₂ odds from which two entries may begin or join a party. */
export const joinAt = 3;

/** What the pairs between two groups must come to on average, in log₂ odds, each held within ±`clip`. */
export const averageAt = 1.5;
const clip = 8;

/** Values more people have than this bring only those nearest on the list together. */
const mostCompared = 40;
const nearestCompared = 6;

/** Between larger groups only so many of each are asked. */
const mostAsked = 12;

/** Pairs of positions worth comparing: they share a value, a name or a stretch of the list. Grows with the list. */
export function candidatePairs(rows: readonly Row[], tables: Tables): [number, number][] {
  const seen = new Set<number>();
  const pairs: [number, number][] = [];
  const add = (a: Row, b: Row) => {
    const [i, j] = a.at < b.at ? [a.at, b.at] : [b.at, a.at];
    const key = i * rows.length + j;
    if (i === j || seen.has(key)) return;
    seen.add(key);
    pairs.push([i, j]);
  };
  const bucket = (some: readonly Row[]) => {
    const reach = some.length <= mostCompared ? some.length : nearestCompared;
    for (let i = 0; i < some.length; i++)
      for (let j = i + 1; j < some.length && j - i <= reach; j++) add(some[i]!, some[j]!);
  };
  for (const field of [
    'ticket',
    'household',
    'cabin',
    'surname',
    'origin',
    'bound',
    'joining',
    'nearest',
  ] as const satisfies readonly Counted[])
    for (const some of tables.holders(field).values()) bucket(some);
  const byName = new Map<string, Row[]>();
  for (const row of rows) {
    for (const name of [row.surname, row.maiden])
      for (const key of new Set(name ? [...name.keys, ...name.sounds] : [])) gather(byName, key, row);
  }
  for (const some of byName.values()) bucket(some);
  const byNumber = new Map<string, Row[]>();
  for (const row of rows)
    if (row.ticket && row.ticket.number !== null)
      gather(byNumber, `${row.ticket.prefix} ${row.ticket.number}`, row);
  for (const some of byNumber.values())
    for (const step of [1, 2]) {
      const { prefix, number } = some[0]!.ticket!;
      for (const other of (byNumber.get(`${prefix} ${number! + step}`) ?? []).slice(0, mostAsked))
        for (const one of some.slice(0, mostAsked)) add(one, other);
    }
  const byLine = rows.toSorted((a, b) => a.line - b.line || a.at - b.at);
  byLine.forEach((row, i) => {
    for (let j = i + 1; j < byLine.length && j - i <= nearby; j++)
      if (byLine[j]!.line - row.line <= nearby) add(row, byLine[j]!);
  });
  const position = new Map(rows.map(({ entry, at }) => [entry.ref, at]));
  for (const row of rows)
    for (const { of } of row.entry.stated ?? []) {
      const other = position.get(of);
      if (other !== undefined) add(row, rows[other]!);
    }
  return pairs;
}

export interface ScoredPair {
  a: number;
  b: number;
  /** log₂ odds that they are of one party. */
  odds: number;
  /** The record says they are kin. */
  certain: boolean;
}

/** The group of each position, named by its first member. `oddsOf` answers for any pair. */
export function grouped(
  count: number,
  pairs: readonly ScoredPair[],
  oddsOf: (a: number, b: number) => number,
): Int32Array {
  const groupOf = Int32Array.from({ length: count }, (_, i) => i);
  const members = new Map<number, number[]>(Array.from({ length: count }, (_, i) => [i, [i]]));
  const merge = (a: number, b: number) => {
    const [keep, lose] = a < b ? [a, b] : [b, a];
    const moved = members.get(lose)!;
    for (const one of moved) groupOf[one] = keep;
    members.set(
      keep,
      [...members.get(keep)!, ...moved].sort((x, y) => x - y),
    );
    members.delete(lose);
  };
  const ranked = pairs
    .filter(({ odds, certain }) => certain || odds >= joinAt)
    .sort((x, y) => Number(y.certain) - Number(x.certain) || y.odds - x.odds || x.a - y.a || x.b - y.b);
  for (const { a, b, certain } of ranked) {
    const [one, other] = [groupOf[a]!, groupOf[b]!];
    if (one === other) continue;
    if (certain || average(members.get(one)!, members.get(other)!, oddsOf) >= averageAt) merge(one, other);
  }
  return groupOf;
}

function average(
  some: readonly number[],
  others: readonly number[],
  oddsOf: (a: number, b: number) => number,
): number {
  const one = some.slice(0, mostAsked);
  const other = others.slice(0, mostAsked);
  let sum = 0;
  for (const a of one) for (const b of other) sum += Math.max(-clip, Math.min(clip, oddsOf(a, b)));
  return sum / (one.length * other.length);
}
