/**
 * Associates by surname: several of one surname beside a family are often one family, and where the surname is the
 * family's own they may be kin (common practice). Patronymics are no surnames and are left out.
 */
import type { Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { parseName } from '../names/parse-name.ts';
import { preparedSurname } from '../names/prepared.ts';
import { independentOf } from './independent.ts';
import type { Associate, SurnameGroup } from './types.ts';

/** The key under which spellings of a surname fall together: the commonest form the catalogue knows, else its stem. */
export function surnameKey(surname: string): string {
  const { keys, stem } = preparedSurname(surname);
  return keys.find((key) => key.startsWith('=')) ?? stem;
}

/** The groups of two or more, those of most records first, then by surname. */
export function surnameGroups(
  facts: Facts,
  associates: readonly Associate[],
  family: ReadonlySet<string>,
): SurnameGroup[] {
  const own = new Set(
    [...family].flatMap((id) => {
      const person = facts.people.get(id);
      const surname = person ? parseName(person.name).surname : '';
      return surname === '' ? [] : [surnameKey(surname)];
    }),
  );
  const groups = new Map<string, Associate[]>();
  for (const one of associates) {
    if (one.surname === '' || preparedSurname(one.surname).patronymic) continue;
    gather(groups, surnameKey(one.surname), one);
  }
  return [...groups]
    .filter(([, members]) => members.length > 1)
    .map(([key, members]) => ({
      surname: commonest(members.map(({ surname }) => surname)),
      associates: members.map(({ id }) => id),
      records: independentOf(
        facts,
        members.flatMap(({ sightings }) => sightings.map(({ record }) => record)),
      ).chosen.length,
      ofFamily: own.has(key),
    }))
    .toSorted(
      (a, b) => b.records - a.records || (a.surname < b.surname ? -1 : a.surname > b.surname ? 1 : 0),
    );
}

/** The value met most often; of several the first met. */
export function commonest(values: readonly string[]): string {
  return byFrequency(values)[0] ?? '';
}

/** Each value once, the most frequent first, otherwise in the order in which they were met. */
export function byFrequency(values: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].toSorted((a, b) => b[1] - a[1]).map(([value]) => value);
}
