import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english } from '../../../src/interface/index.ts';
import type { NameCount } from '../../../src/model/name-count.ts';
import {
  borrowedPeople,
  leastShare,
  prepareNameTables,
  shareOfGiven,
  shareOfSurname,
  unseenShare,
  type NameShare,
} from '../../../src/reasoning/names/rarity.ts';

/** Why a name has its share, as readers are told it. */
const said = ({ reason }: NameShare) => english.identity.reason(reason);

const row = (name: string, count: number, more: Partial<NameCount> = {}): NameCount => ({
  name,
  part: 'surname',
  count,
  source: 'an invented list',
  ...more,
});

/** An invented parish of 300 and an invented county of 20,000 of whom the commonest are listed. */
const own: readonly NameCount[] = [
  row('Phelan', 21, { place: 'kill', total: 300 }),
  row('Power', 45, { place: 'kill', total: 300 }),
  row('Phelan', 160, { place: 'county', total: 20_000 }),
  row('Power', 700, { place: 'county', total: 20_000 }),
];
const called: Readonly<Record<string, string>> = {
  kill: 'Kill',
  county: 'the county',
  ireland: 'Ireland',
  norway: 'Norway',
};
const tables = prepareNameTables(own, (id) => called[id] ?? id);

describe('the share of a surname', () => {
  /* Posterior mean under a Dirichlet prior, worked out by hand: (21 + 200·s) / (300 + 200), s from the county. */
  test('a small count is drawn toward the larger place', () => {
    const ireland = unseenShare;
    const county = (160 + borrowedPeople * ireland) / (20_000 + borrowedPeople);
    const kill = (21 + borrowedPeople * county) / (300 + borrowedPeople);
    const found = shareOfSurname(tables, 'Phelan', ['kill', 'county', 'ireland']);
    expect(found.share).toBeCloseTo(kill, 12);
    expect(found).toMatchObject({ count: 21, total: 300, place: 'kill', source: 'an invented list' });
    expect(said(found)).toBe(
      'Phelan is borne by 21 of 300 in Kill; as that is few, the county is counted in, which makes 45 in 1,000.',
    );
  });

  test('the nearest place that was counted is asked', () => {
    expect(shareOfSurname(tables, 'Power', ['elsewhere', 'county', 'ireland']).place).toBe('county');
    expect(shareOfSurname(tables, 'Power', ['elsewhere', 'ireland']).place).toBe('ireland');
    const local = shareOfSurname(tables, 'Power', ['kill', 'county', 'ireland']).share;
    expect(local).toBeGreaterThan(shareOfSurname(tables, 'Power', ['ireland']).share * 20);
  });

  test('a name not among the commonest is rarer than the last of them', () => {
    const murphy = shareOfSurname(tables, 'Murphy', ['county', 'ireland']);
    expect(murphy.share).toBeLessThanOrEqual(160 / 20_000);
    expect(murphy).not.toHaveProperty('count');
    expect(said(murphy)).toMatch(/^Murphy is not among the names listed in the county; in Ireland/);
    expect(shareOfSurname(tables, 'Zyxwen', ['ireland'])).toMatchObject({ share: unseenShare });
  });

  test('where everybody was counted, a name that nobody bears is rare, but not impossible', () => {
    const whole = prepareNameTables([row('Phelan', 60, { place: 'x' }), row('Power', 9940, { place: 'x' })]);
    const zyxwen = shareOfSurname(whole, 'Zyxwen', ['x']);
    expect(zyxwen.share).toBe(leastShare);
    expect(said(zyxwen)).toBe(
      'Nobody of the 10,000 counted in x is called Zyxwen; it is taken to be borne by 0.1 in 1,000.',
    );
  });

  test('no list covers the place: as common as where it is most common, small lists aside', () => {
    const murphy = shareOfSurname(tables, 'Murphy', ['michigan', 'united-states']);
    expect(murphy.share).toBeCloseTo(0.0133, 4);
    expect(said(murphy)).toBe(
      'No list of names covers the place, so Murphy is taken to be as common as in Ireland: 13 in 1,000.',
    );
    expect(shareOfSurname(tables, 'Phelan', ['michigan']).share).toBe(160 / 20_000);
    expect(said(shareOfSurname(tables, 'Zyxwen', ['michigan']))).toBe(
      'Zyxwen is in no list of names, and is taken to be borne by 1 in 1,000.',
    );
  });

  test('counts without a place serve every place', () => {
    const any = prepareNameTables([row('Zyxwen', 50, { total: 10_000 })]);
    expect(shareOfSurname(any, 'Zyxwen', ['michigan']).share).toBeCloseTo(0.005, 3);
  });

  test('the author’s list of a place stands instead of the built-in one', () => {
    const better = prepareNameTables([row('Murphy', 500, { place: 'ireland', total: 100_000 })]);
    expect(shareOfSurname(better, 'Murphy', ['ireland']).share).toBeCloseTo(0.005, 4);
    expect(shareOfSurname(better, 'Kelly', ['ireland'])).not.toHaveProperty('count');
  });
});

describe('the share of a given name', () => {
  test('of a sex, by any of its forms', () => {
    const mary = shareOfGiven(tables, 'Mary', ['ireland'], 'F');
    for (const form of ['Maria', 'Mary Ann', 'Mariae', 'Molly'])
      expect(shareOfGiven(tables, form, ['ireland'], 'F').share).toBe(mary.share);
    expect(mary.share).toBeGreaterThan(0.15);
    expect(said(mary)).toMatch(/^Mary is borne by about \d+ in 1,000 in Ireland \(from memory\)\.$/);
    expect(shareOfGiven(tables, 'Mary', ['ireland']).share).toBeCloseTo(mary.share / 2, 2);
    expect(shareOfGiven(tables, 'Mary', ['ireland'], 'M').share).toBe(unseenShare);
  });

  test('an initial is as common as all names that begin with it', () => {
    const initial = shareOfGiven(tables, 'J.', ['ireland'], 'M').share;
    expect(initial).toBeGreaterThan(shareOfGiven(tables, 'John', ['ireland'], 'M').share);
    expect(shareOfGiven(tables, 'J.', ['michigan'], 'M').share).toBeGreaterThan(0.2);
  });

  test('the built-in shares of a sex come to less than everybody', () => {
    for (const place of ['ireland', 'norway'] as const)
      for (const sex of ['M', 'F'] as const) {
        let sum = 0;
        for (const table of tables.tables.values())
          if (table.place === place && tables.tables.get(`given ${sex} ${place}`) === table)
            for (const { count } of table.names.values()) sum += count / table.total;
        expect(sum).toBeGreaterThan(0.5);
        expect(sum).toBeLessThan(1);
      }
  });
});

test('whatever is asked, a share is between nothing and all', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.array(fc.constantFrom('kill', 'county', 'ireland', 'nowhere'), { maxLength: 3 }),
      fc.constantFrom(undefined, 'M' as const, 'F' as const),
      fc.integer({ min: 0, max: 1000 }),
      (name, chain, sex, count) => {
        const some = prepareNameTables([...own, row(name, count, { place: 'nowhere' })]);
        for (const found of [shareOfSurname(some, name, chain), shareOfGiven(some, name, chain, sex)]) {
          expect(found.share).toBeGreaterThanOrEqual(leastShare);
          expect(found.share).toBeLessThanOrEqual(1);
          expect(said(found)).toMatch(/\.$/);
        }
      },
    ),
    { seed: 5, numRuns: 300 },
  );
});
