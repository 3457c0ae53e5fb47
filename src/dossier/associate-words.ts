/** Sentences about those beside a family, for findings, pages and tables alike. */
import type { Facts } from '../model/facts.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import type { AssociateRole, FamilyAssociates, Sighting } from '../reasoning/associates/types.ts';
import { yearOf } from '../reasoning/associates/namings.ts';

/** The word for a part, and for several who play it. */
export const roleNames: Readonly<Record<AssociateRole, string>> = {
  witness: 'witness',
  sponsor: 'sponsor',
  neighbour: 'neighbour',
  'fellow-passenger': 'fellow passenger',
  household: 'in the household',
  grantor: 'dealt in land or money',
  bondsman: 'bondsman or executor',
  informant: 'informant',
  mourner: 'mourner',
  'fellow-worker': 'worked with them',
  other: 'named beside them',
};

/** A chance in words: “1 in 400 by accident”. */
export function byAccident(chance: number): string {
  if (chance >= 0.5) return 'as likely as not by accident';
  if (chance < 1e-6) return 'less than 1 in 1,000,000 by accident';
  const tries = 1 / chance;
  const rounded = tries < 10 ? Math.round(tries) : Number(tries.toPrecision(tries < 100 ? 1 : 2));
  return `1 in ${grouped(rounded)} by accident`;
}

/** A whole number with commas. */
export function grouped(n: number): string {
  return String(n).replace(/\B(?=(?:\d{3})+$)/g, ',');
}

/** “the Phelan and Kirwan family”; where surnames are patronymics, “the family of Ole Johannesen Rinde”. */
export function familyName(
  facts: Pick<Facts, 'people'>,
  { subjects }: Pick<FamilyAssociates, 'subjects'>,
): string {
  const people = subjects.flatMap((id) => {
    const person = facts.people.get(id);
    return person && !person.placeholder ? [person.name] : [];
  });
  if (people.length === 0) return 'the family';
  const surnames = people.map((name) => parseName(name));
  return surnames.some(({ surname, patronymic }) => surname === '' || patronymic)
    ? `the family of ${inList(people)}`
    : `the ${inList([...new Set(surnames.map(({ surname }) => surname))])} family`;
}

/** “a”, “a and b”, “a, b and c”. */
export function inList(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** “neighbour 1851 and 1870, sponsor 1873”: parts in the order in which they were first played, each with its years. */
export function rolesInYears(facts: Facts, sightings: readonly Pick<Sighting, 'role' | 'record'>[]): string {
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
      return [roleNames[role], inList(told)].filter(Boolean).join(' ');
    })
    .join(', ');
}
