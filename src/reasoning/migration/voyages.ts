/**
 * Lists of one journey: two lists of one ship, or a register of those who left here and a passenger list over there.
 *
 * Rule (common practice): the same ship, spelled alike, on days a few apart; or, where a list names no ship, the same
 * people with the same ages within the time a crossing took. That k of them are met by accident has the Poisson chance of k or
 * more where the two lists would share so many namings by how common the names and ages are.
 */
import { daySpan } from '../../model/edtf.ts';
import type { Facts } from '../../model/facts.ts';
import type { SourceRecord } from '../../model/record.ts';
import { gather } from '../../model/multimap.ts';
import { poissonAtLeast } from '../chance.ts';
import { jaroWinkler } from '../names/jaro-winkler.ts';
import { foldName } from '../names/fold.ts';
import { once } from '../once.ts';
import { rowsOf, type Row } from './list.ts';
import { entriesOf, travellersOf } from './lists.ts';
import { surnameKey } from './tables.ts';

/** One journey, with every list of it. */
export interface Voyage {
  /** The first record’s id. */
  id: string;
  records: string[];
  ship?: string;
  from?: string;
  to?: string;
  /** Days the journey began and ended, where known; the earliest and latest that the lists give. */
  sailed?: number;
  arrived?: number;
  /** Why its lists were put together. */
  joins: VoyageJoin[];
}

export interface VoyageJoin {
  records: [string, string];
  by: 'ship' | 'people';
  /** Mentions taken for one another, where people joined the lists. */
  same: [string, string][];
  /** The chance of so many by accident. */
  chance?: number;
}

/** Days of two lists of one ship may differ by so many: one is sworn, the other filed. */
const fewDays = 7;

/** The longest a crossing took from the certificate to the landing (common practice). */
const longestCrossing = 150;

/** Ages on two lists may differ by this and be one. */
const ageApart = 1;

/** The share of people of about one age and given name (our estimate). */
const sameGivenAndAge = 0.04 * 0.1;

interface ListFacts {
  record: SourceRecord;
  ship?: string;
  from?: string;
  to?: string;
  sailed?: number;
  arrived?: number;
}

/** Every journey of which the content has a list, in the order of their days, the undated last. */
export const voyagesOf: (facts: Facts) => readonly Voyage[] = once((facts: Facts): readonly Voyage[] => {
  const lists: ListFacts[] = [];
  for (const record of facts.records.values())
    if (travellersOf(facts, record).length > 0) lists.push(factsOf(facts, record));
  const dated = lists
    .filter((list) => dayOf(list) !== undefined)
    .sort((a, b) => dayOf(a)! - dayOf(b)! || (a.record.id < b.record.id ? -1 : 1));
  const joins: VoyageJoin[] = [];
  const root = new Map(lists.map(({ record }) => [record.id, record.id]));
  const find = (id: string): string => {
    let at = id;
    while (root.get(at) !== at) at = root.get(at)!;
    root.set(id, at);
    return at;
  };
  const join = (one: VoyageJoin) => {
    const [a, b] = one.records.map(find) as [string, string];
    if (a === b) return;
    root.set(b, a);
    joins.push(one);
  };
  dated.forEach((list, i) => {
    for (let j = i + 1; j < dated.length && dayOf(dated[j]!)! - dayOf(list)! <= fewDays; j++)
      if (sameShip(list, dated[j]!))
        join({ records: [list.record.id, dated[j]!.record.id], by: 'ship', same: [] });
  });
  for (const one of samePeople(facts, dated)) join(one);

  const groups = new Map<string, ListFacts[]>();
  for (const list of [...dated, ...lists.filter((one) => dayOf(one) === undefined)])
    gather(groups, find(list.record.id), list);
  return [...groups.values()].map((group): Voyage => {
    const ids = new Set(group.map(({ record }) => record.id));
    const first = <K extends 'ship' | 'from' | 'to'>(key: K) =>
      group.find((list) => list[key] !== undefined)?.[key];
    const days = (key: 'sailed' | 'arrived') => group.flatMap((list) => list[key] ?? []);
    const optional = {
      ship: first('ship'),
      from: first('from'),
      to: first('to'),
      sailed: days('sailed').length > 0 ? Math.min(...days('sailed')) : undefined,
      arrived: days('arrived').length > 0 ? Math.max(...days('arrived')) : undefined,
    };
    return {
      id: group[0]!.record.id,
      records: [...ids],
      ...Object.fromEntries(Object.entries(optional).filter(([, value]) => value !== undefined)),
      joins: joins.filter(({ records }) => records.every((id) => ids.has(id))),
    };
  });
});

const dayOf = ({ sailed, arrived }: ListFacts): number | undefined => arrived ?? sailed;

function factsOf(facts: Facts, record: SourceRecord): ListFacts {
  const voyages = travellersOf(facts, record).flatMap(({ voyage }) => voyage ?? []);
  const said = (key: 'ship' | 'from' | 'to' | 'sailed' | 'arrived') =>
    voyages.find((one) => one[key] !== undefined)?.[key];
  const [sailed, arrived] = [firstDay(said('sailed')), firstDay(said('arrived'))];
  const made = sailed === undefined && arrived === undefined ? firstDay(record.made) : undefined;
  const optional = {
    ship: said('ship'),
    from: said('from'),
    to: said('to'),
    sailed: sailed ?? made,
    arrived,
  };
  return {
    record,
    ...Object.fromEntries(Object.entries(optional).filter(([, value]) => value !== undefined)),
  };
}

/** The first day of a date known to a month at least. */
export function firstDay(date: string | undefined): number | undefined {
  if (date === undefined) return undefined;
  const { first, last } = daySpan(date);
  return first !== null && last !== null && last - first <= 31 ? first : undefined;
}

function sameShip(a: ListFacts, b: ListFacts): boolean {
  if (a.ship === undefined || b.ship === undefined) return false;
  if ((a.arrived === undefined) !== (b.arrived === undefined)) return false;
  const [one, other] = [foldName(a.ship.slice(0, 100)), foldName(b.ship.slice(0, 100))];
  return one !== '' && jaroWinkler(one, other) >= 0.92;
}

/** Lists made on either end of a crossing that name the same people. */
function samePeople(facts: Facts, lists: readonly ListFacts[]): VoyageJoin[] {
  const rows = new Map<string, Row[]>();
  const byKey = new Map<string, { list: number; row: Row }[]>();
  lists.forEach(({ record }, at) => {
    const all = rowsOf(entriesOf(facts, record));
    rows.set(record.id, all);
    for (const row of all) for (const key of new Set(keysOf(row))) gather(byKey, key, { list: at, row });
  });
  const shared = new Map<string, Map<string, string>>();
  const taken = new Set<string>();
  for (const held of byKey.values()) {
    held.sort((a, b) => a.list - b.list);
    // A name that fills many lists joins none by itself; only the lists next in time are compared.
    held.forEach(({ list, row }, i) => {
      for (let j = i + 1; j < held.length && j - i <= 20; j++) {
        const other = held[j]!;
        if (other.list === list || Math.abs(row.age! - other.row.age!) > ageApart) continue;
        const gap = dayOf(lists[other.list]!)! - dayOf(lists[list]!)!;
        if (gap > longestCrossing) break;
        const key = `${list} ${other.list}`;
        const pairs = shared.get(key) ?? shared.set(key, new Map()).get(key)!;
        if (pairs.has(row.entry.ref) || taken.has(`${key} ${other.row.entry.ref}`)) continue;
        pairs.set(row.entry.ref, other.row.entry.ref);
        taken.add(`${key} ${other.row.entry.ref}`);
      }
    });
  }
  const joins: VoyageJoin[] = [];
  for (const [key, pairs] of shared) {
    const [a, b] = key.split(' ').map((at) => lists[Number(at)]!) as [ListFacts, ListFacts];
    if (pairs.size < 2 || (a.ship !== undefined && b.ship !== undefined && !alike(a.ship, b.ship))) continue;
    const [mine, its] = [rows.get(a.record.id)!.length, rows.get(b.record.id)!.length];
    const chance = poissonAtLeast(pairs.size, mine * its * sameGivenAndAge * 0.03);
    if (chance > 0.001) continue;
    joins.push({ records: [a.record.id, b.record.id], by: 'people', same: [...pairs], chance });
  }
  return joins.sort((one, other) => one.chance! - other.chance!);
}

const alike = (a: string, b: string) =>
  jaroWinkler(foldName(a.slice(0, 100)), foldName(b.slice(0, 100))) >= 0.85;

function keysOf(row: Row): string[] {
  if (!row.surname || !row.given || row.age === undefined) return [];
  const given = row.given.keys.find((key) => key.startsWith('=')) ?? row.given.stem;
  return [`${given} ${surnameKey(row.surname)}`];
}
