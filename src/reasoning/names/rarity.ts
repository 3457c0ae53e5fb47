/**
 * How common a name is where somebody lived: the more common, the less its agreement says.
 *
 * Rules. The share of a name is taken from the population at hand, the parish before the county before the country
 * (M. Winkler's frequency-based matching, US Census Bureau RR2000/06; common practice). A small count is drawn toward
 * the next larger place as if so many of its people had been counted too, which is the posterior mean under a
 * Dirichlet prior: share = (count + k · share of the larger place) / (total + k). A name in no table has a floor under
 * its share, so that a misspelling does not seem to prove who it is (open documentation of Splink, UK Ministry of
 * Justice). Surnames are counted with their varieties and with or without O’ and Mac, as R. E. Matheson counted
 * (Special Report on Surnames in Ireland, 1894).
 */
import { givenCounts } from '../../catalogue/names/given-counts.ts';
import { fromMemory } from '../../catalogue/names/sources.ts';
import { surnameCounts } from '../../catalogue/names/surname-counts.ts';
import type { NameCount } from '../../model/name-count.ts';
import { prepareGiven, prepareSurname, type PreparedName } from './agree.ts';
import { givenNameOf, surnameOf } from './lookup.ts';
import { foldName, surnameParts } from './fold.ts';

/** People of the larger place that stand beside a small count (k above). */
export const borrowedPeople = 200;

/** The share of a name that no table has, and the least that any name is given. */
export const unseenShare = 0.001;
export const leastShare = 0.0001;

/** A table of fewer people than this is called small, and says nothing about places that it does not cover. */
const fewPeople = 4000;

/** A table lists everybody when its rows come to nearly its total; otherwise it lists the commonest names only. */
const nearlyAll = 0.98;

/** What share of a population bears a name. */
export interface NameShare {
  /** From 0 (excluded) to 1. */
  share: number;
  /** Bearers and all that were counted in the nearest table; the bearers are absent where it does not list the name. */
  count?: number;
  total?: number;
  /** The place of that table, by id; absent where no table covers the places asked for. */
  place?: string;
  source: string;
  /** In words, for a page: a whole sentence. */
  because: string;
}

interface Counted {
  count: number;
  source: string;
}

/** The counts of one place and one part of the name, of one sex or both. */
interface Table {
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

type Sex = 'M' | 'F';

/** Counts made ready for look-up. */
export interface NameTables {
  tables: ReadonlyMap<string, Table>;
  /** The largest share a name, or an initial, has in any table that is not small, for places that no table covers. */
  anywhere: ReadonlyMap<string, { share: number; table: Table; counted: Counted }>;
  nameOfPlace: (id: string) => string;
}

const tableKey = (part: NameCount['part'], place: string | undefined, sex: Sex | undefined): string =>
  `${part} ${sex ?? '-'} ${place ?? ''}`;

/**
 * Makes ready the built-in counts and the author's own. Where both count one place, the author's table stands alone.
 * `nameOfPlace` says what to call a place on a page. Counts without a place serve every place that has none nearer.
 */
export function prepareNameTables(
  own: readonly NameCount[] = [],
  nameOfPlace: (id: string) => string = (id) => id,
): NameTables {
  const tables = new Map<string, Table>();
  for (const rows of [[...surnameCounts, ...givenCounts], own]) {
    const made = new Map<string, NameCount[]>();
    for (const row of rows) {
      const key = tableKey(row.part, row.place, row.part === 'given' ? row.sex : undefined);
      const same = made.get(key);
      if (same) same.push(row);
      else made.set(key, [row]);
    }
    for (const [key, same] of made) tables.set(key, tableOf(same));
  }
  return { tables, anywhere: largestShares(tables), nameOfPlace };
}

function tableOf(rows: readonly NameCount[]): Table {
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

function largestShares(tables: ReadonlyMap<string, Table>): NameTables['anywhere'] {
  const largest = new Map<string, { share: number; table: Table; counted: Counted }>();
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
  const usual = name.surnames.find(({ kind }) => kind !== 'interchangeable');
  const stem = usual ? surnameParts(surnameOf(usual.group)).stem : name.stem;
  return `${name.prefix === 'o' || name.prefix === 'mac' ? name.prefix : ''} ${stem}`;
}

/** Keys a surname is counted under: with the prefix it has and without; a bare one with either too. */
function surnameKeys(name: PreparedName): string[] {
  const key = surnameKey(name);
  if (key === undefined) return [];
  const stem = key.slice(key.indexOf(' ') + 1);
  return key.startsWith(' ') ? [key, `o ${stem}`, `mac ${stem}`] : [key, ` ${stem}`];
}

/** Keys a given name may be counted under: its usual name; for a pet form or a stand-in, the names it may stand for. */
function givenKeys(name: PreparedName): string[] {
  const first = name.stem;
  if (first === '') return [];
  const forms = name.given[0] ?? [];
  const own = forms.filter(({ kind }) => kind === 'name');
  const strict = forms.filter(({ kind }) => kind !== 'diminutive' && kind !== 'interchangeable');
  const chosen = own.length > 0 ? own : strict.length > 0 ? strict : forms;
  return chosen.length === 0 ? [first] : chosen.map(({ group }) => foldName(givenNameOf(group)));
}

/**
 * The share of a surname among the people of a place. `chain` holds place ids from the smallest to the largest; the
 * nearest that a table covers is asked first. A name is a text or already prepared.
 */
export function shareOfSurname(
  tables: NameTables,
  name: string | PreparedName,
  chain: readonly string[],
): NameShare {
  const prepared = typeof name === 'string' ? prepareSurname(name) : name;
  const keys = surnameKeys(prepared);
  const counted = (table: Table): Counted | undefined => added(keys, table);
  return shareIn(tables, prepared, 'surname', chain, undefined, counted, keys);
}

/**
 * The share of a given name among the people of a place, of one sex where it is told. The first of several names
 * counts; an initial has the share of all names that begin with it. Otherwise as `shareOfSurname`.
 */
export function shareOfGiven(
  tables: NameTables,
  name: string | PreparedName,
  chain: readonly string[],
  sex?: Sex,
): NameShare {
  const prepared = typeof name === 'string' ? prepareGiven(name) : name;
  const keys = givenKeys(prepared);
  const isInitial = [...prepared.stem].length === 1;
  const counted = (table: Table): Counted | undefined => {
    if (!isInitial) return commonest(keys, table);
    const count = table.initials.get(prepared.stem);
    return count === undefined ? undefined : { count, source: table.source };
  };
  return shareIn(tables, prepared, 'given', chain, sex, counted, keys);
}

function added(keys: readonly string[], table: Table): Counted | undefined {
  const found = keys.map((key) => table.names.get(key)).filter((one) => one !== undefined);
  if (found.length === 0) return undefined;
  return { count: found.reduce((sum, { count }) => sum + count, 0), source: found[0]!.source };
}

function commonest(keys: readonly string[], table: Table): Counted | undefined {
  let best: Counted | undefined;
  for (const key of keys) {
    const one = table.names.get(key);
    if (one && one.count > (best?.count ?? -1)) best = one;
  }
  return best;
}

function shareIn(
  tables: NameTables,
  name: PreparedName,
  part: NameCount['part'],
  chain: readonly string[],
  sex: Sex | undefined,
  countedIn: (table: Table) => Counted | undefined,
  keys: readonly string[],
): NameShare {
  const covering = [...chain, undefined].flatMap((place) => tableFor(tables, part, place, sex) ?? []);
  if (covering.length === 0) return elsewhere(tables, name, part, sex, keys);

  let share = unseenShare;
  for (let at = covering.length - 1; at >= 0; at--) {
    const table = covering[at]!;
    const counted = countedIn(table);
    // A table of the commonest names says of any other only that it is rarer than the last of them.
    share =
      counted === undefined && !table.whole
        ? Math.min(share, table.least)
        : ((counted?.count ?? 0) + borrowedPeople * share) / (table.total + borrowedPeople);
  }
  const nearest = covering[0]!;
  const counted = countedIn(nearest);
  const rounded = Math.min(1, Math.max(leastShare, share));
  return {
    share: rounded,
    ...(counted ? { count: counted.count } : {}),
    total: nearest.total,
    ...(nearest.place === undefined ? {} : { place: nearest.place }),
    source: counted?.source ?? nearest.source,
    because: inWords(tables, name, covering, countedIn, rounded),
  };
}

/** The table of a place: of the sex asked for, else of both, else those of the sexes put together. */
function tableFor(
  { tables }: NameTables,
  part: NameCount['part'],
  place: string | undefined,
  sex: Sex | undefined,
): Table | undefined {
  if (part === 'surname') return tables.get(tableKey(part, place, undefined));
  return (
    (sex && tables.get(tableKey(part, place, sex))) ??
    tables.get(tableKey(part, place, undefined)) ??
    together(tables.get(tableKey(part, place, 'M')), tables.get(tableKey(part, place, 'F')))
  );
}

const joined = new WeakMap<Table, Table>();

/** Both sexes as one population; kept, since it is asked for again and again. */
function together(men: Table | undefined, women: Table | undefined): Table | undefined {
  if (!men || !women) return men ?? women;
  const kept = joined.get(men);
  if (kept) return kept;
  // The sexes are half of the people each, however many of them were counted.
  const scale = men.total / women.total;
  const names = new Map(men.names);
  for (const [name, { count, source }] of women.names)
    names.set(name, { count: (names.get(name)?.count ?? 0) + Math.round(count * scale), source });
  const initials = new Map(men.initials);
  for (const [letter, count] of women.initials)
    initials.set(letter, (initials.get(letter) ?? 0) + Math.round(count * scale));
  const both: Table = {
    ...men,
    total: 2 * men.total,
    whole: men.whole && women.whole,
    least: Math.min(men.least, women.least) / 2,
    names,
    initials,
  };
  joined.set(men, both);
  return both;
}

/** Where no table covers the place, the name is taken to be as common as where it is most common: the careful guess. */
function elsewhere(
  { anywhere, nameOfPlace }: NameTables,
  name: PreparedName,
  part: NameCount['part'],
  sex: Sex | undefined,
  keys: readonly string[],
): NameShare {
  const sexes = part === 'surname' ? ['-'] : sex ? [sex, '-'] : ['M', 'F', '-'];
  const found = sexes
    .flatMap((one) => keys.map((key) => anywhere.get(`${part} ${one} ${key}`)))
    .filter((one) => one !== undefined)
    .sort((a, b) => b.share - a.share)[0];
  if (!found) {
    return {
      share: unseenShare,
      source: '',
      because: `${name.written || 'The name'} is in no list of names, and is taken to be borne by ${perThousand(unseenShare)}.`,
    };
  }
  const place = found.table.place;
  return {
    share: found.share,
    count: found.counted.count,
    total: found.table.total,
    ...(place === undefined ? {} : { place }),
    source: found.counted.source,
    because:
      `No list of names covers the place, so ${name.written} is taken to be as common as ` +
      `${place === undefined ? 'in the list' : `in ${nameOfPlace(place)}`}: ${perThousand(found.share)}.`,
  };
}

function inWords(
  { nameOfPlace }: NameTables,
  name: PreparedName,
  covering: readonly Table[],
  countedIn: (table: Table) => Counted | undefined,
  share: number,
): string {
  const [nearest, larger] = covering;
  const where = nearest?.place === undefined ? 'in the list' : `in ${nameOfPlace(nearest.place)}`;
  const told = name.written === '' ? 'The name' : name.written;
  if (!nearest) return '';
  const counted = countedIn(nearest);
  if (!counted) {
    const wider = covering.find((table) => table.place !== undefined && countedIn(table) !== undefined);
    if (!nearest.whole && wider?.place !== undefined)
      return `${told} is not among the names listed ${where}; in ${nameOfPlace(wider.place)} it is borne by ${perThousand(share)}.`;
    return nearest.whole
      ? `Nobody of the ${thousands(nearest.total)} counted ${where} is called ${told}; it is taken to be borne by ${perThousand(share)}.`
      : `${told} is not among the names listed ${where}, and is taken to be borne by ${perThousand(share)}.`;
  }
  if (counted.source === fromMemory)
    return `${told} is borne by about ${perThousand(share)} ${where} (${fromMemory}).`;
  const base = `${told} is borne by ${thousands(counted.count)} of ${thousands(nearest.total)} ${where}`;
  return larger?.place !== undefined && nearest.total < fewPeople
    ? `${base}; as that is few, ${nameOfPlace(larger.place)} is counted in, which makes ${perThousand(share)}.`
    : `${base}: ${perThousand(share)}.`;
}

const thousands = (count: number): string => String(count).replace(/\B(?=(?:\d{3})+$)/gu, ',');

function perThousand(share: number): string {
  const value = share * 1000;
  const text = value >= 10 ? value.toFixed(0) : value >= 1 ? value.toFixed(1) : value.toFixed(2);
  return `${text.replace(/\.?0+$/u, (zeros) => (text.includes('.') ? '' : zeros))} in 1,000`;
}
