/**
 * How common each value is on a list, counted by parties rather than by heads: a family of nine makes its surname no
 * commoner among strangers. As the parties are only found by these counts, both are worked out in turn.
 *
 * Rule: the chance that a stranger shares a value is the share of the *other* parties that have it, drawn toward what
 * is known beforehand (posterior mean under a Beta prior; see names/rarity.ts for surnames). A surname that one party has
 * and nobody counted elsewhere has the share that names met once have on this list: 2·N₂/(N₁·N), where N₁ names are met
 * in one party and N₂ in two (I. J. Good, Biometrika 40 (1953), from memory).
 */
import { gather } from '../../model/multimap.ts';
import type { PreparedName } from '../names/agree.ts';
import type { Row } from './list.ts';

/** Parties that what is known of a surname in general is worth beside the list’s own count. */
const generalWorth = 200;

/** The bounds of what is taken for the share of a surname of which nothing is known in general. */
const unknownSurname = { least: 0.001, most: 0.01 };

/** The fields whose values are counted. */
export type Counted =
  | 'surname'
  | 'ticket'
  | 'household'
  | 'cabin'
  | 'class'
  | 'port'
  | 'occupation'
  | 'country'
  | 'origin'
  | 'bound'
  | 'joining'
  | 'nearest';

export interface Tables {
  /** Parties on the list, as far as they are known yet. */
  units: number;
  /** How many of the other parties than those of `a` and `b` have a value, of how many that state the field. */
  others(field: Counted, value: string, a: Row, b: Row): { having: number; of: number };
  /** Heads that have a value. */
  heads(field: Counted, value: string): number;
  /** Share of pairs of strangers that differ in a field both state. */
  differ(field: Counted): number;
  /** The chance that a stranger bears a surname. */
  surnameShare(name: PreparedName, a: Row, b: Row): number;
  /** Entries by value, for finding pairs. */
  holders(field: Counted): ReadonlyMap<string, readonly Row[]>;
}

/** The one key a surname is counted under: its group of spellings, its father’s name, or itself. */
export function surnameKey(name: PreparedName): string {
  return (
    name.keys.find((key) => key.startsWith('+')) ?? name.keys.find((key) => key.startsWith('=')) ?? name.text
  );
}

/** The values of a row in a field. */
export function valuesOf(row: Row, field: Counted): readonly string[] {
  if (field === 'surname') return row.surname ? [surnameKey(row.surname)] : [];
  if (field === 'ticket') return row.ticket ? [row.ticket.text] : [];
  if (field === 'origin' || field === 'bound') return row.entry[field] ?? [];
  if (field === 'country') return row.entry.country === undefined ? [] : [row.entry.country];
  if (field === 'joining' || field === 'nearest') return row[field];
  const value = row[field];
  return value === undefined ? [] : [value];
}

const fields = [
  'surname',
  'ticket',
  'household',
  'cabin',
  'class',
  'port',
  'occupation',
  'country',
  'origin',
  'bound',
  'joining',
  'nearest',
] as const satisfies readonly Counted[];

/** Counts a list. `unitOf` is the party each row is known to be of, by position. */
export function tablesOf(
  rows: readonly Row[],
  unitOf: Int32Array,
  generalShare: (surname: string) => number | undefined,
): Tables {
  const holders = new Map<Counted, Map<string, Row[]>>();
  const unitsHaving = new Map<Counted, Map<string, Set<number>>>();
  const stating = new Map<Counted, Set<number>>();
  for (const field of fields) {
    const byValue = new Map<string, Row[]>();
    const byUnit = new Map<string, Set<number>>();
    const all = new Set<number>();
    for (const row of rows)
      for (const value of new Set(valuesOf(row, field))) {
        gather(byValue, value, row);
        const unit = unitOf[row.at]!;
        (byUnit.get(value) ?? byUnit.set(value, new Set()).get(value)!).add(unit);
        all.add(unit);
      }
    holders.set(field, byValue);
    unitsHaving.set(field, byUnit);
    stating.set(field, all);
  }
  const differing = new Map<Counted, number>();
  const unknown = shareMetOnce(unitsHaving.get('surname')!, stating.get('surname')!.size);
  const general = new Map<string, number>();
  const tables: Tables = {
    units: new Set(unitOf).size,
    others(field, value, a, b) {
      const having = unitsHaving.get(field)!.get(value);
      const all = stating.get(field)!;
      const pair = new Set([unitOf[a.at]!, unitOf[b.at]!]);
      const count = (set: ReadonlySet<number> | undefined) =>
        (set?.size ?? 0) - [...pair].filter((unit) => set?.has(unit)).length;
      return { having: count(having), of: count(all) };
    },
    heads: (field, value) => holders.get(field)!.get(value)?.length ?? 0,
    differ(field) {
      let share = differing.get(field);
      if (share === undefined) {
        const all = stating.get(field)!.size;
        let same = 0;
        for (const units of unitsHaving.get(field)!.values()) same += (units.size / Math.max(1, all)) ** 2;
        differing.set(field, (share = Math.max(0.05, 1 - Math.min(1, same))));
      }
      return share;
    },
    surnameShare(name, a, b) {
      const { having, of } = tables.others('surname', surnameKey(name), a, b);
      let known = general.get(name.text);
      if (known === undefined) general.set(name.text, (known = generalShare(name.written) ?? unknown));
      return (having + generalWorth * known) / (of + generalWorth);
    },
    holders: (field) => holders.get(field)!,
  };
  return tables;
}

function shareMetOnce(having: ReadonlyMap<string, ReadonlySet<number>>, units: number): number {
  let once = 0;
  let twice = 0;
  for (const { size } of having.values()) {
    if (size === 1) once++;
    if (size === 2) twice++;
  }
  const share = (2 * twice) / Math.max(1, once) / Math.max(1, units);
  return Math.min(unknownSurname.most, Math.max(unknownSurname.least, share));
}
