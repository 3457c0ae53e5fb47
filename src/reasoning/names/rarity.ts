/**
 * How common a name is where somebody lived: the more common, the less its agreement says.
 *
 * Rules. The share of a name is taken from the population at hand, the parish before the county before the country
 * (W. E. Winkler's frequency-based matching, US Census Bureau RR2000/06; common practice). A small count is drawn toward
 * the next larger place as if so many of its people had been counted too, which is the posterior mean under a
 * Dirichlet prior: share = (count + k · share of the larger place) / (total + k). A name in no table has a floor under
 * its share, so that a misspelling does not seem to prove who it is (open documentation of Splink, UK Ministry of
 * Justice). Surnames are counted with their varieties and with or without O’ and Mac, as R. E. Matheson counted
 * (Special Report on Surnames in Ireland, 1894).
 */
import type { NameCount } from '../../model/name-count.ts';
import type { Reason } from '../../model/reason.ts';
import { prepareGiven, prepareSurname, type PreparedName } from './agree.ts';
import {
  givenKeys,
  surnameKeys,
  tableFor,
  type Counted,
  type NameTable,
  type NameTables,
  type Sex,
} from './name-tables.ts';
import { reasonOf } from './rarity-reason.ts';

export { prepareNameTables, type NameTables } from './name-tables.ts';

/** People of the larger place that stand beside a small count (k above). */
export const borrowedPeople = 200;

/** The share of a name that no table has, and the least that any name is given. */
export const unseenShare = 0.001;
export const leastShare = 0.0001;
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
  /** Why it has that share. */
  reason: Reason;
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
  const counted = (table: NameTable): Counted | undefined => added(keys, table);
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
  const counted = (table: NameTable): Counted | undefined => {
    if (!isInitial) return commonest(keys, table);
    const count = table.initials.get(prepared.stem);
    return count === undefined ? undefined : { count, source: table.source };
  };
  return shareIn(tables, prepared, 'given', chain, sex, counted, keys);
}

function added(keys: readonly string[], table: NameTable): Counted | undefined {
  const found = keys.map((key) => table.names.get(key)).filter((one) => one !== undefined);
  if (found.length === 0) return undefined;
  return { count: found.reduce((sum, { count }) => sum + count, 0), source: found[0]!.source };
}

function commonest(keys: readonly string[], table: NameTable): Counted | undefined {
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
  countedIn: (table: NameTable) => Counted | undefined,
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
    reason: reasonOf(tables, name, covering, countedIn, rounded),
  };
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
      reason: { key: 'in-no-list', name: name.written, share: unseenShare },
    };
  }
  const place = found.table.place;
  return {
    share: found.share,
    count: found.counted.count,
    total: found.table.total,
    ...(place === undefined ? {} : { place }),
    source: found.counted.source,
    reason: {
      key: 'no-list-of-the-place',
      name: name.written,
      place: place === undefined ? '' : nameOfPlace(place),
      share: found.share,
    },
  };
}
