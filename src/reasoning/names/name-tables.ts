/**
 * Counts of names made ready for look-up: the built-in tables, and the author's own in their stead where they count the
 * same place.
 *
 * Rule: surnames are counted with their varieties, and with or without O’ and Mac, as R. E. Matheson counted (Special
 * Report on Surnames in Ireland, 1894).
 */
import { givenCounts } from '../../catalogue/names/given-counts.ts';
import { surnameCounts } from '../../catalogue/names/surname-counts.ts';
import type { NameCount } from '../../model/name-count.ts';
import { prepareGiven, prepareSurname, type PreparedName } from './agree.ts';
import { foldName, surnameParts } from './fold.ts';
import { givenNameOf, surnameOf } from './lookup.ts';

/** A table of fewer people than this is called small, and says nothing about places that it does not cover. */
export const fewPeople = 4000;

/** A table lists everybody when its rows come to nearly its total; otherwise it lists the commonest names only. */
const nearlyAll = 0.98;
/** The count of a name in a table. */
export interface Counted {
  count: number;
  source: string;
}

/** The counts of one place and one part of the name, of one sex or both. */
export interface NameTable {
  place: string | undefined;
  total: number;
  /** Everybody is in it, so that a name it lacks was not there. */
  whole: boolean;
  least: number;
  names: Map<string, Counted>;
  /** Of given names: the count of all that begin with a letter. */
  initials: Map<string, number>;
  source: string;
}

export type Sex = 'M' | 'F';

/** Counts made ready for look-up. */
export interface NameTables {
  tables: ReadonlyMap<string, NameTable>;
  /** The largest share a name, or an initial, has in any table that is not small, for places that no table covers. */
  anywhere: ReadonlyMap<string, { share: number; table: NameTable; counted: Counted }>;
  nameOfPlace: (id: string) => string;
}

const tableKey = (part: NameCount['part'], place: string | undefined, sex: Sex | undefined): string =>
  `${part} ${sex ?? '-'} ${place ?? ''}`;
let builtIn: ReadonlyMap<string, NameTable> | undefined;

/**
 * Makes ready the built-in counts and the author's own. Where both count one place, the author's table stands alone.
 * `nameOfPlace` says what to call a place on a page. Counts without a place serve every place that has none nearer.
 */
export function prepareNameTables(
  own: readonly NameCount[] = [],
  nameOfPlace: (id: string) => string = (id) => id,
): NameTables {
  builtIn ??= tablesOf([...surnameCounts, ...givenCounts]);
  const tables = new Map([...builtIn, ...tablesOf(own)]);
  return { tables, anywhere: largestShares(tables), nameOfPlace };
}

function tablesOf(rows: readonly NameCount[]): Map<string, NameTable> {
  const made = new Map<string, NameCount[]>();
  for (const row of rows) {
    const key = tableKey(row.part, row.place, row.part === 'given' ? row.sex : undefined);
    const same = made.get(key);
    if (same) same.push(row);
    else made.set(key, [row]);
  }
  return new Map([...made].map(([key, same]) => [key, tableOf(same)]));
}

function tableOf(rows: readonly NameCount[]): NameTable {
  const names = new Map<string, Counted>();
  const initials = new Map<string, number>();
  let sum = 0;
  let total = 0;
  for (const { name, part, count, total: stated, source } of rows) {
    sum += count;
    total = Math.max(total, stated ?? 0);
    const key = part === 'surname' ? surnameKey(prepareSurname(name)) : givenKeys(prepareGiven(name))[0];
    if (key === undefined) continue;
    const already = names.get(key);
    names.set(key, { count: (already?.count ?? 0) + count, source: already?.source ?? source });
    const letter = foldName(name).charAt(0);
    initials.set(letter, (initials.get(letter) ?? 0) + count);
  }
  const everybody = Math.max(total, sum, 1);
  let least = Infinity;
  for (const { count } of names.values()) least = Math.min(least, count);
  return {
    place: rows[0]?.place,
    total: everybody,
    whole: sum >= nearlyAll * everybody,
    least: least / everybody,
    names,
    initials,
    source: rows[0]?.source ?? '',
  };
}

function largestShares(tables: ReadonlyMap<string, NameTable>): NameTables['anywhere'] {
  const largest = new Map<string, { share: number; table: NameTable; counted: Counted }>();
  for (const [key, table] of tables) {
    if (table.total < fewPeople) continue;
    const part = key.slice(0, key.lastIndexOf(' '));
    const initials = [...table.initials].map(([letter, count]): [string, Counted] => [
      letter,
      { count, source: table.source },
    ]);
    for (const [name, counted] of [...table.names, ...(part.startsWith('given') ? initials : [])]) {
      const share = counted.count / table.total;
      const at = `${part} ${name}`;
      if (share > (largest.get(at)?.share ?? 0)) largest.set(at, { share, table, counted });
    }
  }
  return largest;
}

/** The key of a surname in a table: its prefix, and its usual spelling without it. */
function surnameKey(name: PreparedName): string | undefined {
  if (name.text === '') return undefined;
  const usual =
    name.surnames.find(({ kind }) => kind === 'name') ??
    name.surnames.find(({ kind }) => kind === 'spelling');
  const stem = usual ? surnameParts(surnameOf(usual.group)).stem : name.stem;
  return `${name.prefix === 'o' || name.prefix === 'mac' ? name.prefix : ''} ${stem}`;
}

/** Keys a surname is counted under: with the prefix it has and without; a bare one with either too. */
export function surnameKeys(name: PreparedName): string[] {
  const key = surnameKey(name);
  if (key === undefined) return [];
  const stem = key.slice(key.indexOf(' ') + 1);
  return key.startsWith(' ') ? [key, `o ${stem}`, `mac ${stem}`] : [key, ` ${stem}`];
}

/** Keys a given name may be counted under: its usual name; for a pet form or a stand-in, the names it may stand for. */
export function givenKeys(name: PreparedName): string[] {
  const first = name.stem;
  if (first === '') return [];
  const forms = name.given[0] ?? [];
  const own = forms.filter(({ kind }) => kind === 'name');
  const strict = forms.filter(({ kind }) => kind !== 'diminutive' && kind !== 'interchangeable');
  const chosen = own.length > 0 ? own : strict.length > 0 ? strict : forms;
  return chosen.length === 0 ? [first] : chosen.map(({ group }) => foldName(givenNameOf(group)));
}
/** The table of a place: of the sex asked for, else of both, else those of the sexes put together. */
export function tableFor(
  { tables }: NameTables,
  part: NameCount['part'],
  place: string | undefined,
  sex: Sex | undefined,
): NameTable | undefined {
  if (part === 'surname') return tables.get(tableKey(part, place, undefined));
  return (
    (sex && tables.get(tableKey(part, place, sex))) ??
    tables.get(tableKey(part, place, undefined)) ??
    together(tables.get(tableKey(part, place, 'M')), tables.get(tableKey(part, place, 'F')))
  );
}

const joined = new WeakMap<NameTable, { women: NameTable; both: NameTable }>();

/** Both sexes as one population; kept, since it is asked for again and again. */
function together(men: NameTable | undefined, women: NameTable | undefined): NameTable | undefined {
  if (!men || !women) return men ?? women;
  const kept = joined.get(men);
  if (kept?.women === women) return kept.both;
  // The sexes are half of the people each, however many of them were counted.
  const scale = men.total / women.total;
  const names = new Map(men.names);
  for (const [name, { count, source }] of women.names)
    names.set(name, { count: (names.get(name)?.count ?? 0) + Math.round(count * scale), source });
  const initials = new Map(men.initials);
  for (const [letter, count] of women.initials)
    initials.set(letter, (initials.get(letter) ?? 0) + Math.round(count * scale));
  const both: NameTable = {
    ...men,
    total: 2 * men.total,
    whole: men.whole && women.whole,
    least: Math.min(men.least, women.least) / 2,
    names,
    initials,
  };
  joined.set(men, { women, both });
  return both;
}
