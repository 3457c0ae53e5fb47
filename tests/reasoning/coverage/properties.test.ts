import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planOf } from '../../../src/reasoning/coverage/plan.ts';
import { census, familyFacts, type FamilyFiles } from './family.ts';

/** A small random family of brothers, counted in some censuses, with a few searches and a paper of the town. */
const families = fc.record({
  men: fc.array(
    fc.record({
      born: fc.integer({ min: 1820, max: 1880 }),
      years: fc.uniqueArray(fc.constantFrom<number>(1860, 1870, 1880, 1900, 1910), { maxLength: 4 }),
      came: fc.option(fc.integer({ min: 1840, max: 1910 })),
      died: fc.option(fc.integer({ min: 1885, max: 1940 })),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  paper: fc.tuple(fc.integer({ min: 1830, max: 1930 }), fc.integer({ min: 0, max: 40 })),
  searched: fc.uniqueArray(fc.constantFrom('us-federal-census-1880', 'us-gravestones', 'us-newspapers'), {
    maxLength: 2,
  }),
});
type Family = typeof families extends fc.Arbitrary<infer T> ? T : never;

function filesOf({ men, paper: [from, length], searched }: Family, turned = false): FamilyFiles {
  const years = [1860, 1870, 1880, 1900, 1910];
  const records: Record<string, object> = {};
  for (const year of years) {
    const mentions = men.flatMap(({ born, years: in_, came }, i) =>
      in_.includes(year) && born <= year
        ? [
            {
              id: `m${i}`,
              name: `Man ${i} Foley`,
              age: year - born,
              birthplace: 'Ireland',
              ...(came !== null && year >= 1900 && came <= year ? { immigrated: String(came) } : {}),
            },
          ]
        : [],
    );
    if (mentions.length > 0) records[`c${year}`] = census(year, turned ? mentions.toReversed() : mentions);
  }
  const people = men.map(({ died }, i) => {
    const mentions = Object.entries(records).flatMap(([id, record]) =>
      (record as { mentions: { id: string }[] }).mentions.some((m) => m.id === `m${i}`)
        ? [`${id}#m${i}`]
        : [],
    );
    return {
      id: `man-${i}`,
      name: `Man ${i} Foley`,
      sex: 'M',
      parents: ['father'],
      mentions: turned ? mentions.toReversed() : mentions,
      ...(died === null ? {} : { died: { date: String(died), place: 'hancock' } }),
    };
  });
  const father = { id: 'father', name: '— Foley', placeholder: true };
  return {
    people: turned ? [...people.toReversed(), father] : [...people, father],
    records: turned ? Object.fromEntries(Object.entries(records).toReversed()) : records,
    case: { subject: 'man-0' },
    series: [
      {
        id: 'the-paper',
        title: 'The Paper',
        of: 'hancock',
        kind: 'newspaper',
        from: String(from),
        to: String(from + length),
      },
    ],
    searches: searched.map((series, i) => ({
      id: `s${i}`,
      date: '2024',
      for: ['man-0'],
      series,
      result: 'not-found',
    })),
  };
}

const shown = (files: FamilyFiles) => {
  const { open } = planOf(familyFacts(files), 'c');
  return open.map(({ id, gain, people }) => [
    id,
    gain,
    people.map(({ person, entry }) => `${person.life.id} ${entry.event}`),
  ]);
};

describe('of any family', () => {
  test('a series is never suggested outside of its years', () => {
    fc.assert(
      fc.property(families, (family) => {
        for (const { people } of planOf(familyFacts(filesOf(family)), 'c').open)
          for (const { entry } of people) {
            expect(entry.first).toBeLessThanOrEqual(entry.last);
            expect(entry.first).toBeGreaterThanOrEqual(entry.series.first);
            if (entry.event !== 'census') expect(entry.last).toBeLessThanOrEqual(entry.series.last);
          }
      }),
      { numRuns: 25 },
    );
  });
  test('the order of files and mentions makes no difference', () => {
    fc.assert(
      fc.property(families, (family) => {
        expect(shown(filesOf(family, true))).toEqual(shown(filesOf(family)));
      }),
      { numRuns: 25 },
    );
  });
  test('a record that is found is not suggested again', () => {
    fc.assert(
      fc.property(families, (family) => {
        const files = filesOf(family);
        const census1880 = planOf(familyFacts(files), 'c').open.find(
          ({ series }) => series === 'us-federal-census-1880',
        );
        const missing = census1880?.people[0]?.person.life.id;
        if (missing === undefined) return;
        const i = Number(missing.slice(4));
        const added = structuredClone(files);
        (added.records as Record<string, object>)['found-1880'] = census(1880, [
          { id: `m${i}`, name: 'Found', age: Math.max(0, 1880 - family.men[i]!.born), birthplace: 'Ireland' },
        ]);
        const person = (added.people as { id: string; mentions: string[] }[]).find(
          ({ id }) => id === missing,
        )!;
        person.mentions.push(`found-1880#m${i}`);
        const after = planOf(familyFacts(added), 'c').open.filter(
          ({ series }) => series === 'us-federal-census-1880',
        );
        expect(after.flatMap(({ people }) => people.map((look) => look.person.life.id))).not.toContain(
          missing,
        );
      }),
      { numRuns: 25 },
    );
  });
  test('gains are shares, best first', () => {
    fc.assert(
      fc.property(families, (family) => {
        const { open } = planOf(familyFacts(filesOf(family)), 'c');
        const gains = open.map(({ gain }) => gain);
        expect(gains.every((gain) => gain > 0 && gain <= 1)).toBe(true);
        expect(gains).toEqual(gains.toSorted((a, b) => b - a));
      }),
      { numRuns: 25 },
    );
  });
});
