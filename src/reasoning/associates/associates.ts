/**
 * Those who keep turning up beside a family and are not (yet) known to be kin.
 *
 * Rule (common practice, the study of a family's friends, associates and neighbours): the same names coming back in
 * records of one family are the trail of a group, and one of them may have named the place. What chance alone would
 * give is worked out in `by-chance.ts`.
 */
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { namesakesIn } from '../identity/namesakes.ts';
import { kinOf } from '../kin.ts';
import { foldName } from '../names/fold.ts';
import { once } from '../once.ts';
import { chanceModel, type ChanceModel, type NameMet } from './by-chance.ts';
import { crowdBeside, type Crowd, type Seen } from './gather.ts';
import { independentOf } from './independent.ts';
import { individualsOf, inOrder, mayBe, type Individual } from './individuals.ts';
import { yearOf } from './namings.ts';
import { originsOf, statesOrigin } from './origins.ts';
import { byFrequency, commonest, surnameGroups } from './surnames.ts';
import type { Associate, FamilyAssociates, Sighting } from './types.ts';

/** The associates of the family that a person belongs to; worked out once for a family. */
export function associatesOf(facts: Facts, subject: string): FamilyAssociates {
  const family = kinOf(facts).joined(subject);
  const known = families(facts);
  let found = known.get(family);
  if (!found) known.set(family, (found = worked(facts, family)));
  return found;
}

/** The families that cases are about, each once, in the order of the cases. */
export function caseFamilies(facts: Facts): FamilyAssociates[] {
  return [...new Set([...facts.cases.values()].map(({ subject }) => associatesOf(facts, subject)))];
}

const families = once((_facts: Facts) => new WeakMap<ReadonlySet<string>, FamilyAssociates>());

function worked(facts: Facts, family: ReadonlySet<string>): FamilyAssociates {
  const cases = [...facts.cases.values()].filter(({ subject }) => family.has(subject));
  const subjects = [...new Set(cases.map(({ subject }) => subject))];
  const country = countryOf(facts, cases);
  const crowd = crowdBeside(facts, family);
  const individuals = individualsOf(facts, crowd.near);
  const far = inOrder(
    crowd.far.map((one) => ({ ...one, ref: one.namings[0]!.ref })),
    ({ namings }) => namings[0]!.day,
  );
  for (const { namings, seen } of far)
    for (const naming of namings) individuals.take(naming, () => seen(naming));

  const { chosen } = independentOf(facts, crowd.places.keys());
  const model = chanceModel(
    facts,
    chosen.map((record) => ({ record, places: crowd.places.get(record)! })),
    country,
  );
  let expectedByAccident = 0;
  const met: { associate: Associate; first: Seen }[] = [];
  for (const one of individuals.all) {
    const { associate, again } = associateOf(facts, one, crowd, model, country);
    expectedByAccident += again;
    met.push({ associate, first: one.namings[0] as Seen });
  }
  // The order in which they were met is that of their days, whatever the order of the files.
  const order = inOrder(
    met.map(({ associate, first }) => ({ associate, first, ref: first.ref })),
    ({ first }) => first.day,
  );
  name(order.map(({ associate }) => associate));
  const back = order.filter(({ associate }) => associate.records > 1).map(({ associate }) => associate);
  const associates = [
    ...back.toSorted((a, b) => a.chance - b.chance || b.records - a.records || (a.id < b.id ? -1 : 1)),
    ...order.filter(({ associate }) => associate.records < 2).map(({ associate }) => associate),
  ];
  return {
    subjects,
    family,
    records: [...crowd.places.keys()],
    associates,
    surnames: surnameGroups(facts, associates, family),
    met: associates.length,
    metOnce: associates.length - back.length,
    recurring: back.length,
    expectedByAccident,
    tooCommon: commonNames(individuals.tooCommon, crowd),
    ...(country === undefined ? {} : { country }),
  };
}

function associateOf(
  facts: Facts,
  one: Individual,
  crowd: Crowd,
  model: ChanceModel,
  country: string | undefined,
): { associate: Associate; again: number } {
  const namings = inOrder(one.namings, ({ day }) => day) as Seen[];
  const sightings: Sighting[] = namings.map(({ sighting }) => sighting());
  const { chosen } = independentOf(facts, one.records);
  const names = byFrequency(namings.map(({ name }) => name));
  const person = one.person === undefined ? undefined : facts.people.get(one.person);
  const naming = namings.find(({ name }) => name === names[0])!;
  const nameMet: NameMet | undefined = [naming, ...namings]
    .filter(({ given, surname }) => given !== '' && surname !== '')
    .map(({ given, surname, keys }) => ({
      given,
      surname,
      alike: Math.max(0, ...keys.map((key) => crowd.alike.get(key) ?? 0)),
    }))[0];
  const chances = nameMet
    ? model.of(nameMet, chosen)
    : {
        rarity: { share: 1, because: { of: 'part-of-a-name' } as const, source: '' },
        expected: 0,
        chance: 1,
      };
  const years = namings.flatMap(({ record }) => yearOf(facts, record) ?? []);
  const kinds = byFrequency(sightings.map(({ role }) => role)) as Associate['roles'];
  return {
    again: nameMet ? model.again(nameMet) : 0,
    associate: {
      id: one.person ?? '',
      ...(one.person === undefined ? {} : { person: one.person }),
      byName:
        one.byName.length > 1 || one.person !== undefined ? one.byName.map(({ ref }) => ref).sort() : [],
      name: (person?.placeholder ? undefined : person?.name) ?? names[0]!,
      names,
      surname: naming.patronymic ? naming.surname : commonest(namings.map(({ surname }) => surname)),
      sightings,
      records: chosen.length,
      roles: kinds,
      ...(years.length > 0 ? { years: { first: Math.min(...years), last: Math.max(...years) } } : {}),
      ...chances,
      origins: originsOf(facts, mentionsOf(facts, one, chosen.length > 1), country),
    },
  };
}

/** The mentions that are, or for those who come back may be by name, the associate's own anywhere in the content. */
function mentionsOf(facts: Facts, one: Individual, recurs: boolean): { ref: string; byName: boolean }[] {
  const kin = kinOf(facts);
  const certain = one.person === undefined ? [] : (facts.people.get(one.person)?.mentions ?? []);
  const own = new Set(certain);
  const put = one.byName.map(({ ref }) => ref).filter((ref) => !own.has(ref));
  // A lone mention is its own; of several put together none is sure to be the others'.
  const alone = one.person === undefined && put.length === 1;
  const named = new Set(put);
  if (recurs) {
    const looked = new Set(put);
    for (const ref of put)
      for (const other of namesakesIn(facts).of(ref)) {
        if (looked.has(other)) continue;
        looked.add(other);
        // Whoever states no origin adds nothing, whoever they are.
        if (statesOrigin(facts, other) && kin.owner(other) === undefined && mayBe(facts, other, one.namings))
          named.add(other);
      }
  }
  return [
    ...certain.map((ref) => ({ ref, byName: false })),
    ...[...named].map((ref) => ({ ref, byName: !alone })),
  ];
}

/** Ids: the person's, or the name, numbered where several bear it. */
function name(associates: readonly Associate[]): void {
  const taken = new Set(associates.flatMap(({ person }) => person ?? []));
  const numbers = new Map<string, number>();
  for (const one of associates) {
    if (one.person !== undefined) continue;
    const base = foldName(one.name).slice(0, 80).trim().replaceAll(' ', '-') || 'somebody';
    let n = numbers.get(base) ?? 0;
    do n += 1;
    while (taken.has(n === 1 ? base : `${base}-${n}`));
    numbers.set(base, n);
    one.id = n === 1 ? base : `${base}-${n}`;
    taken.add(one.id);
  }
}

/** The country most of the places weighed by the cases lie in. */
function countryOf(
  facts: Facts,
  cases: Iterable<{ evidence: readonly { place?: string | undefined }[] }>,
): string | undefined {
  const countries = [...cases].flatMap(({ evidence }) =>
    evidence.flatMap(({ place }) => (place === undefined ? [] : containmentOf(facts).countries(place))),
  );
  const [first] = byFrequency(countries);
  return first;
}

function commonNames(keys: ReadonlySet<string>, crowd: Crowd): string[] {
  if (keys.size === 0) return [];
  const names = new Set<string>();
  for (const { name: written, keys: own } of crowd.near)
    if (own.some((key) => keys.has(key))) names.add(written);
  return [...names].sort().slice(0, 20);
}
