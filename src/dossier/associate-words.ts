/** Sentences about those beside a family, for findings, pages and tables alike. */
import { english, type Wording } from '../interface/index.ts';
import type { Facts } from '../model/facts.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import type { AssociateRole, FamilyAssociates, Sighting } from '../reasoning/associates/types.ts';
import { yearOf } from '../reasoning/associates/namings.ts';

/** A chance in words: “1 in 400 by accident”. */
export function byAccident(chance: number, wording: Wording = english): string {
  const t = wording.associates.byAccident;
  if (chance >= 0.5) return t.asLikely;
  if (chance < 1e-6) return t.hardly;
  const tries = 1 / chance;
  return t.oneIn(tries < 10 ? Math.round(tries) : Number(tries.toPrecision(tries < 100 ? 1 : 2)));
}

/** “the Phelan and Kirwan family”; where surnames are patronymics, “the family of Ole Johannesen Rinde”. */
export function familyName(
  facts: Pick<Facts, 'people'>,
  { subjects }: Pick<FamilyAssociates, 'subjects'>,
  wording: Wording = english,
): string {
  const t = wording.associates;
  const people = subjects.flatMap((id) => {
    const person = facts.people.get(id);
    return person && !person.placeholder ? [person.name] : [];
  });
  if (people.length === 0) return t.theFamily;
  const surnames = people.map((name) => parseName(name));
  return surnames.some(({ surname, patronymic }) => surname === '' || patronymic)
    ? t.familyOf(people)
    : t.familyNamed([...new Set(surnames.map(({ surname }) => surname))]);
}

/** “neighbour 1851 and 1870, sponsor 1873”: parts in the order in which they were first played, each with its years. */
export function rolesInYears(
  facts: Facts,
  sightings: readonly Pick<Sighting, 'role' | 'record'>[],
  wording: Wording = english,
): string {
  const years = new Map<AssociateRole, Set<number>>();
  for (const { role, record } of sightings) {
    const list = years.get(role) ?? years.set(role, new Set()).get(role)!;
    const year = yearOf(facts, record);
    if (year !== undefined) list.add(year);
  }
  return [...years]
    .map(([role, list]) => {
      const sorted = [...list].sort((a, b) => a - b);
      const told = sorted.length > 3 ? [`${sorted[0]}–${sorted.at(-1)}`] : sorted.map(String);
      return wording.associates.roleInYears(wording.associates.roles[role], told);
    })
    .join(', ');
}

/** A mean as a reader would say it: “1.3”, “0.02”, “fewer than 0.01”. */
export function aboutSoMany(mean: number, { associates: t }: Wording = english): string {
  return mean < 0.01 ? t.hardlyAny : t.about(mean >= 10 ? mean : Number(mean.toPrecision(2)));
}
