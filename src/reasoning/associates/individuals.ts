/**
 * Sightings put together into probable individuals.
 *
 * Rule (common practice): a person file holds one individual. Mentions of nobody yet are put together, or with somebody
 * known, when their names agree and nothing they say contradicts it: another sex, births more than ten years apart, or
 * records more than sixty years apart; two mentions of one record are two people. A name that fits two known people
 * is left to itself.
 */
import { mentionAt, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { yearsApart, type Days } from '../identity/agreement.ts';
import { mentionRows } from '../identity/mention-row.ts';
import { mostNamesakes, namesakesIn } from '../identity/namesakes.ts';
import { once } from '../once.ts';
import type { Naming } from './namings.ts';
import type { Sighting } from './types.ts';

export interface Individual {
  person?: string;
  namings: Naming[];
  /** Namings put here by name alone. */
  byName: Naming[];
  records: Set<string>;
}

/** Years beyond which births, and records, are another's. */
const farthest = { births: 10, records: 60 } as const;

interface Gathered extends Individual {
  sex: 'M' | 'F' | undefined;
  births: Days[];
  first: number | null;
  last: number | null;
}

export interface Individuals {
  all: readonly Individual[];
  /** Keys of names that too many bear; nobody was put together by them. */
  tooCommon: ReadonlySet<string>;
  /** Takes in a naming that belongs to one of those gathered, as `made` makes it; nobody new is begun. */
  take(naming: Naming, made: () => Naming): void;
}

/** Keys of every name a person's records give them. */
const keysOfPerson = once((_facts: Facts) => new Map<string, readonly string[]>());

function personKeys(facts: Facts, person: string): readonly string[] {
  const known = keysOfPerson(facts);
  let keys = known.get(person);
  if (!keys) {
    const { keys: of } = namesakesIn(facts);
    keys = [...new Set((facts.people.get(person)?.mentions ?? []).flatMap((ref) => of(ref)))];
    known.set(person, keys);
  }
  return keys;
}

/** The individuals behind namings. The order in which they are given makes no difference. */
export function individualsOf(facts: Facts, namings: readonly Naming[]): Individuals {
  const sorted = namings.toSorted(
    (a, b) =>
      (a.day ?? Infinity) - (b.day ?? Infinity) ||
      (a.ref < b.ref ? -1 : a.ref > b.ref ? 1 : a.name < b.name ? -1 : 1),
  );
  const bearers = new Map<string, number>();
  for (const { keys } of sorted) for (const key of keys) bearers.set(key, (bearers.get(key) ?? 0) + 1);
  const tooCommon = new Set([...bearers].filter(([, n]) => n > mostNamesakes).map(([key]) => key));

  const all: Gathered[] = [];
  const known = new Map<string, Gathered>();
  const byKey = new Map<string, Gathered[]>();
  const register = (one: Gathered, keys: readonly string[]) => {
    for (const key of keys)
      if (!tooCommon.has(key) && !byKey.get(key)?.includes(one)) gather(byKey, key, one);
  };

  for (const naming of sorted) {
    if (naming.owner === undefined) continue;
    let one = known.get(naming.owner);
    if (!one) {
      one = begun(naming.owner, facts.people.get(naming.owner)?.sex);
      known.set(naming.owner, one);
      all.push(one);
      register(one, personKeys(facts, naming.owner));
    }
    add(one, naming);
  }

  const find = (naming: Naming): Gathered | undefined => {
    const found = new Set<Gathered>();
    for (const key of naming.keys) {
      if (tooCommon.has(key)) return undefined;
      for (const one of byKey.get(key) ?? []) if (!found.has(one) && fits(one, naming)) found.add(one);
    }
    const persons = [...found].filter(({ person }) => person !== undefined);
    if (persons.length === 1) return persons[0];
    return persons.length > 1 ? undefined : [...found][0];
  };

  for (const naming of sorted) {
    if (naming.owner !== undefined) continue;
    let one = find(naming);
    if (one) {
      add(one, naming);
      one.byName.push(naming);
    } else {
      one = begun(undefined, undefined);
      add(one, naming);
      one.byName.push(naming);
      all.push(one);
    }
    register(one, naming.keys);
  }

  return {
    all,
    tooCommon,
    take(naming, made) {
      const one = naming.owner === undefined ? find(naming) : known.get(naming.owner);
      if (!one) return;
      const taken = made();
      add(one, taken);
      if (naming.owner === undefined) one.byName.push(taken);
    },
  };
}

function begun(person: string | undefined, sex: string | undefined): Gathered {
  return {
    ...(person === undefined ? {} : { person }),
    namings: [],
    byName: [],
    records: new Set(),
    sex: sex === 'M' || sex === 'F' ? sex : undefined,
    births: [],
    first: null,
    last: null,
  };
}

function add(one: Gathered, naming: Naming): void {
  one.namings.push(naming);
  one.records.add(naming.record);
  one.sex ??= naming.sex;
  // The first few speak for all: otherwise one life of a thousand records would be weighed a thousand times.
  if (naming.birth && one.births.length < 4) one.births.push(naming.birth);
  if (naming.day !== null) {
    one.first = Math.min(one.first ?? naming.day, naming.day);
    one.last = Math.max(one.last ?? naming.day, naming.day);
  }
}

function fits(one: Gathered, naming: Naming): boolean {
  if (one.records.has(naming.record)) return false;
  if (one.sex && naming.sex && one.sex !== naming.sex) return false;
  if (naming.birth && one.births.some((birth) => yearsApart(birth, naming.birth!) > farthest.births))
    return false;
  if (naming.day === null || one.first === null || one.last === null) return true;
  const reach = farthest.records * 365.2425;
  return naming.day - one.first <= reach && one.last - naming.day <= reach;
}

/** Whether a mention says nothing that contradicts its being one of these people. */
export function mayBe(facts: Facts, ref: string, namings: readonly Naming[]): boolean {
  const [row] = mentionRows(facts, ref);
  const record = mentionAt(facts, ref)?.record.id;
  if (!row || record === undefined) return false;
  return namings.every(
    (one) =>
      one.record !== record &&
      (!one.sex || !row.sex || one.sex === row.sex) &&
      (!one.birth || !row.birth || yearsApart(one.birth, row.birth) <= farthest.births),
  );
}

/** Sightings in the order of their days, then by reference. */
export function inOrder<T extends Pick<Sighting, 'ref'>>(
  list: readonly T[],
  day: (one: T) => number | null,
): T[] {
  return list.toSorted(
    (a, b) => (day(a) ?? Infinity) - (day(b) ?? Infinity) || (a.ref < b.ref ? -1 : a.ref > b.ref ? 1 : 0),
  );
}
