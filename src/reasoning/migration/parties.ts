/**
 * Who on a list seems to have travelled together.
 *
 * Rules. Evidence between two entries in bits (evidence.ts), groups from pairs (cluster.ts), in two rounds: the second
 * counts how common a value is by the parties of the first. Standing side by side is evidence of company and never of
 * a common origin: an origin is only offered where members state it themselves.
 */
import { gather } from '../../model/multimap.ts';
import { candidatePairs, grouped, type ScoredPair } from './cluster.ts';
import { tiesBetween } from './evidence.ts';
import { rowsOf, type Row } from './list.ts';
import { isAlphabetical, neighbourShares } from './order.ts';
import { partyOf, type TiesOf } from './party.ts';
import { surnameKey, tablesOf, valuesOf, type Counted, type Tables } from './tables.ts';
import { priorOf, usualCompanions, type ListContext } from './ties.ts';
import type { ListEntry, ListReading, Tie } from './types.ts';

export interface ListOptions {
  /** The share of people in general who bear a surname; nothing where it is not known. */
  generalShare?: (surname: string) => number | undefined;
}

/** The parties of a list, in the order of their first members. */
export function partiesAmong(entries: readonly ListEntry[], options: ListOptions = {}): ListReading {
  const rows = rowsOf(entries);
  const general = options.generalShare ?? (() => undefined);
  const alphabetical = isAlphabetical(rows.map(({ surname }) => surname?.text));
  const reading: ListReading = { entries: rows.length, parties: [], alphabetical, neighbours: [] };
  if (rows.length < 2) return reading;

  let units = sameNumber(rows, alphabetical, surnamesAreFamilies(rows));
  let companions = usualCompanions;
  let found: Round | undefined;
  for (let round = 0; round < 2; round++) {
    const tables = tablesOf(rows, units, general);
    found = oneRound(rows, contextOf(rows, tables, alphabetical, companions));
    units = found.groups;
    companions = companionsIn(units);
  }
  const { groups, context, tiesOf } = found!;
  const members = new Map<number, Row[]>();
  rows.forEach((row, i) => gather(members, groups[i]!, row));
  reading.neighbours = context.neighbours;
  reading.parties = [...members.values()]
    .filter((some) => some.length > 1)
    .map((some) => partyOf(some, context, tiesOf));
  return reading;
}

/** So many entries the usual number of companions is worth, and the fewest that are believed. */
const shrunk = { entries: 40, least: 0.25 };

/** Companions on average, as a round found them, drawn toward the usual number. */
function companionsIn(groups: Int32Array): number {
  const sizes = new Map<number, number>();
  for (const group of groups) sizes.set(group, (sizes.get(group) ?? 0) + 1);
  let sum = shrunk.entries * usualCompanions;
  for (const size of sizes.values()) sum += size * (size - 1);
  return Math.max(shrunk.least, Math.min(2 * usualCompanions, sum / (groups.length + shrunk.entries)));
}

interface Round {
  groups: Int32Array;
  context: ListContext;
  tiesOf: TiesOf;
}

function oneRound(rows: readonly Row[], context: ListContext): Round {
  const prior = priorOf(context);
  const ties = new Map<number, readonly Tie[]>();
  const tiesOf = (a: Row, b: Row): readonly Tie[] => {
    const [one, other] = a.at < b.at ? [a, b] : [b, a];
    const key = one.at * rows.length + other.at;
    let known = ties.get(key);
    if (!known) ties.set(key, (known = tiesBetween(one, other, context)));
    return known;
  };
  const oddsOf = (a: number, b: number) =>
    tiesOf(rows[a]!, rows[b]!).reduce((sum, { weight }) => sum + weight, prior);
  const pairs = candidatePairs(rows, context.tables).map(([a, b]): ScoredPair => ({
    a,
    b,
    odds: oddsOf(a, b),
    certain: tiesOf(rows[a]!, rows[b]!).some(({ kind }) => kind === 'kin'),
  }));
  return { groups: grouped(rows.length, pairs, oddsOf), context, tiesOf };
}

/** More namesakes than this are no one family, and fewer pairs of them say nothing. */
const namesakes = { most: 8, pairs: 15 };

/**
 * Whether most who share a seldom surname travel together, judged by what the list says beside it: how much oftener
 * they agree in port, class, country and places than strangers do. Where a list says nothing else, not.
 */
function surnamesAreFamilies(rows: readonly Row[]): boolean {
  const bySurname = new Map<string, Row[]>();
  for (const row of rows) if (row.surname) gather(bySurname, surnameKey(row.surname), row);
  const pairs: [Row, Row][] = [];
  for (const some of bySurname.values()) {
    if (some.length > namesakes.most) continue;
    some.forEach((row, i) => {
      for (const other of some.slice(i + 1)) pairs.push([row, other]);
    });
  }
  let excess = 0;
  let possible = 0;
  for (const field of ['port', 'class', 'country', 'bound', 'origin'] as const) {
    const counts = new Map<string, number>();
    let stating = 0;
    for (const row of rows) {
      const [value] = valuesOf(row, field);
      if (value === undefined) continue;
      stating++;
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    let byAccident = 0;
    for (const count of counts.values()) byAccident += (count / stating) ** 2;
    const both = pairs.filter(([a, b]) => valuesOf(a, field).length > 0 && valuesOf(b, field).length > 0);
    if (both.length < namesakes.pairs) continue;
    const same = both.filter(([a, b]) => valuesOf(a, field)[0] === valuesOf(b, field)[0]).length;
    excess += same - both.length * byAccident;
    possible += both.length * (0.95 - byAccident);
  }
  return possible > 0 ? excess / possible > 0.7 : childrenHaveTheirOwn(rows, bySurname);
}

/**
 * Fewer children than this say nothing; so many of them find a parent of their name where names are families, and far
 * fewer of them than of grown people find none.
 */
const children = { fewest: 5, share: 0.75, without: 0.4 };

/**
 * Of a list that says nothing but names and ages: whether its children, who seldom travel alone, find somebody of their
 * surname and old enough to be a parent, much oftener than grown people do (common practice).
 */
function childrenHaveTheirOwn(rows: readonly Row[], bySurname: ReadonlyMap<string, readonly Row[]>): boolean {
  const share = (some: readonly Row[], fits: (age: number, other: number) => boolean) =>
    some.filter(({ at, age, surname }) =>
      bySurname
        .get(surnameKey(surname!))!
        .some((other) => other.at !== at && other.age !== undefined && fits(age!, other.age)),
    ).length / some.length;
  const aged = rows.filter(({ age, surname }) => age !== undefined && surname !== undefined);
  const young = aged.filter(({ age }) => age! < 13);
  // Whoever could be a child’s parent, but is old enough to travel alone.
  const grown = aged.filter(({ age }) => age! >= 16 && age! < 25);
  if (young.length < children.fewest || grown.length < children.fewest) return false;
  const withParent = share(young, (age, other) => other - age >= 16 && other - age <= 55);
  const byAccident = share(grown, (age, other) => other - age >= 16 && other - age <= 55);
  return withParent >= children.share && 1 - withParent <= children.without * (1 - byAccident);
}

/** To begin with, those of one family number, and neighbours of one surname where the list is not sorted, are one. */
function sameNumber(rows: readonly Row[], alphabetical: boolean, bySurname: boolean): Int32Array {
  const groups = Int32Array.from(rows, (_row, i) => i);
  const first = new Map<string, number>();
  rows.forEach((row, i) => {
    const before = rows[i - 1];
    const run =
      !alphabetical &&
      row.surname !== undefined &&
      before?.surname !== undefined &&
      surnameKey(row.surname) === surnameKey(before.surname);
    if (run) groups[i] = groups[i - 1]!;
    const key =
      row.household !== undefined
        ? `number ${row.household}`
        : row.ticket && row.ticket.number !== null
          ? `ticket ${row.ticket.text}`
          : bySurname && row.surname
            ? `name ${surnameKey(row.surname)}`
            : undefined;
    if (key === undefined) return;
    const known = first.get(key);
    if (known === undefined) first.set(key, groups[i]!);
    else if (!run) groups[i] = known;
  });
  return groups;
}

function contextOf(
  rows: readonly Row[],
  tables: Tables,
  alphabetical: boolean,
  companions: number,
): ListContext {
  const telling = [
    'ticket',
    'household',
    'origin',
    'joining',
    ...(alphabetical ? [] : ['surname']),
  ] as Counted[];
  const byLine = rows.toSorted((a, b) => a.line - b.line || a.at - b.at);
  const values = byLine.map((row) =>
    telling.flatMap((field) =>
      valuesOf(row, field)
        .slice(0, 2)
        .map((value) => `${field} ${value}`),
    ),
  );
  const alike = (i: number, j: number) => {
    const [one, other] = [byLine[i]!, byLine[j]!];
    if (alphabetical && one.surname?.text.charAt(0) === other.surname?.text.charAt(0)) return false;
    return values[i]!.some((value) => values[j]!.includes(value));
  };
  const holders = [...tables.holders('ticket').values()];
  const ticketed = holders.reduce((sum, some) => sum + some.length, 0);
  const shared = holders.reduce((sum, some) => sum + (some.length > 1 ? some.length : 0), 0);
  const stated = new Set(
    rows.flatMap(({ entry }) =>
      (entry.stated ?? []).filter(({ kin }) => !kin).map(({ of }) => [entry.ref, of].sort().join(' ')),
    ),
  );
  const named = rows.filter(({ surname }) => surname !== undefined);
  return {
    tables,
    count: rows.length,
    companions,
    alphabetical,
    neighbours: neighbourShares(rows.length, alike),
    ticketsShared: ticketed === 0 ? 0 : shared / ticketed,
    ticketsDistinct: ticketed === 0 ? 0 : holders.length / ticketed,
    statedCompanions: stated.size / ((rows.length * (rows.length - 1)) / 2),
    patronymics: named.filter(({ patronymic }) => patronymic).length > named.length * 0.4,
  };
}
