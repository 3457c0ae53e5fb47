import { describe, expect, test } from 'vitest';
import type { Facts } from '../../../src/model/facts.ts';
import { atLeast } from '../../../src/reasoning/chance.ts';
import { associatesOf } from '../../../src/reasoning/associates/associates.ts';
import { chanceModel } from '../../../src/reasoning/associates/by-chance.ts';
import { seeded, type Random } from '../../bench/random.ts';
import { facts } from '../../twin/facts.ts';

/** Names that nobody takes for one another, from common to rare: shares fall as 1/rank does. */
const given = ['Patrick', 'Mary', 'Thomas', 'Ellen', 'James', 'Bridget', 'Hugh', 'Sarah'];
const surname = [
  'Abernethy',
  'Bulgrave',
  'Cuthwin',
  'Dorrell',
  'Eskmoor',
  'Fendlow',
  'Gartshore',
  'Hippisley',
  'Inkpen',
  'Jellicoe',
  'Kexby',
  'Lomthwaite',
];
const counts = (values: readonly string[]) =>
  values.map((name, at) => ({ name, count: Math.round(600_000 / (at + 1)) }));
const total = (values: readonly string[]) => counts(values).reduce((sum, { count }) => sum + count, 0);

/** A population of a million and more in which every name was counted, so that its share is known. */
function population(records: { id: string; names: string[] }[]): Facts {
  const all = facts({
    places: [{ id: 'town', name: 'Town', kind: 'town' }],
    cases: [{ id: 'c', subject: 'subject' }],
    people: [{ id: 'subject', name: 'Zebedee Quillfeather', mentions: records.map(({ id }) => `${id}#m`) }],
    records: records.map(({ id, names }) => ({
      id,
      place: 'town',
      mentions: [
        { id: 'm', name: 'Zebedee Quillfeather' },
        ...names.map((name, i) => ({ id: `x${i}`, name, role: 'witness' })),
      ],
    })),
  });
  const rows = (part: 'given' | 'surname', values: readonly string[]) =>
    counts(values).map((row) => ({ ...row, part, place: 'town', total: total(values), source: 'counted' }));
  return { ...all, nameCounts: [...rows('given', given), ...rows('surname', surname)] };
}

/** Draws a value as often as it was counted. */
function drawn(random: Random, values: readonly string[]): string {
  let left = random.below(total(values));
  for (const { name, count } of counts(values)) {
    left -= count;
    if (left < 0) return name;
  }
  return values.at(-1)!;
}
const somebody = (random: Random) => `${drawn(random, given)} ${drawn(random, surname)}`;
const shareOf = (name: string) => {
  const [g = '', s = ''] = name.split(' ');
  const share = (values: readonly string[], of: string) =>
    counts(values).find((row) => row.name === of)!.count / total(values);
  return share(given, g) * share(surname, s);
};
/** As many standard errors as chance exceeds once in some fifteen thousand tests. */
const errors = 4;

describe('closed forms', () => {
  const occasions = [3, 3, 1, 6].map((places, i) => ({ record: `r${i}`, places }));
  const place = population(
    occasions.map(({ record, places }) => ({ id: record, names: Array(places).fill('Hugh Kexby') })),
  );
  const name = { given: 'Hugh', surname: 'Kexby', alike: 0 };
  const model = chanceModel(place, occasions);
  const s = model.rarity(name, 'r0').share;

  test('the share is the product of the two, as counted', () => {
    expect(s / shareOf('Hugh Kexby')).toBeCloseTo(1, 2);
  });
  /* Poisson binomial: 1 less the product of the failures, for one success or more of independent trials. */
  test('met in two of four records: one of the other three holds the name, or more', () => {
    // Granted is the record that expects least of those that hold it: r2 with one place.
    const { expected, chance } = model.of(name, ['r2', 'r3']);
    expect(expected).toBeCloseTo(12 * s, 12);
    expect(chance).toBeCloseTo(1 - (1 - s) ** 12, 12);
  });
  test('met in three: two of the other three hold it, or more', () => {
    const p = [3, 3, 6].map((n) => 1 - (1 - s) ** n);
    expect(model.of(name, ['r0', 'r2', 'r3']).chance).toBeCloseTo(atLeast(2, p), 12);
    const [a = 0, b = 0, c = 0] = p;
    expect(model.of(name, ['r0', 'r2', 'r3']).chance).toBeCloseTo(a * b + a * c + b * c - 2 * a * b * c, 12);
  });
  test('met in one: certain', () => {
    expect(model.of(name, ['r1']).chance).toBe(1);
  });
  test('coming back at all, granted that somebody was met: P(two or more) ÷ P(one or more)', () => {
    const p = [3, 3, 1, 6].map((n) => 1 - (1 - s) ** n);
    expect(model.again(name)).toBeCloseTo(atLeast(2, p) / atLeast(1, p), 9);
  });
  /* Le Cam 1960: the Poisson distribution is no farther off than the sum of the squared chances. */
  test('of very many records the Poisson distribution stands for the exact one', () => {
    const many = Array.from({ length: 400 }, (_, i) => ({ record: `r${i}`, places: 2 }));
    const p = 1 - (1 - s) ** 2;
    const exact = atLeast(
      2,
      Array.from({ length: 399 }, () => p),
    );
    const { chance } = chanceModel(place, many).of(name, ['r0', 'r1', 'r2']);
    expect(Math.abs(chance - exact)).toBeLessThan(399 * p * p);
    expect(chance).not.toBe(exact);
  });
  test('a name is never rarer than one in the people of the place, nor than one long list shows it', () => {
    const lone = facts({
      places: [{ id: 'street', name: 'Street', kind: 'townland' }],
      records: [{ id: 'r', place: 'street' }],
    });
    const rare = chanceModel(lone, [{ record: 'r', places: 1 }]).rarity(
      { given: 'Xantippe', surname: 'Yveling', alike: 0 },
      'r',
    );
    expect(rare.because).toMatchObject({ of: 'crowd' });
    expect(model.rarity({ ...name, alike: 0.25 }, 'r0')).toMatchObject({ share: 0.25 });
  });
});

describe('simulation', () => {
  /* The claim of `chance`, for a name planted in one record and drawn nowhere on purpose. */
  test('a planted name comes back as often as is said', () => {
    const random = seeded(1849);
    const runs = 1500;
    for (const planted of ['Patrick Abernethy', 'Ellen Cuthwin', 'Thomas Inkpen']) {
      const tally = [0, 0];
      const sizes = [1, 2, 5, 3, 4, 2, 6, 3];
      const occasions = sizes.map((places, i) => ({ record: `r${i}`, places }));
      const model = chanceModel(population(sizes.map((_, i) => ({ id: `r${i}`, names: [] }))), occasions);
      for (let run = 0; run < runs; run++) {
        const held = sizes
          .slice(1)
          .filter((places) =>
            Array.from({ length: places }, () => somebody(random)).includes(planted),
          ).length;
        for (const k of [1, 2]) if (held >= k) tally[k - 1]! += 1;
      }
      const [g = '', s = ''] = planted.split(' ');
      for (const k of [1, 2]) {
        const { chance } = model.of(
          { given: g, surname: s, alike: 0 },
          Array.from({ length: k + 1 }, (_, i) => `r${i}`),
        );
        const error = Math.sqrt((chance * (1 - chance)) / runs);
        expect(Math.abs(tally[k - 1]! / runs - chance), `${planted} in ${k} more`).toBeLessThan(
          errors * error,
        );
      }
    }
  });

  /* The whole list: strangers only, so that everybody who comes back does so by accident. */
  test('as many names come back by accident as is said', () => {
    const random = seeded(1874);
    const runs = 120;
    let said = 0;
    let found = 0;
    let square = 0;
    let telling = 0;
    let met = 0;
    for (let run = 0; run < runs; run++) {
      const all = population(
        Array.from({ length: 12 }, (_, i) => ({
          id: `r${run}-${i}`,
          // No two alike in one record, which would be two people.
          names: [...new Set(Array.from({ length: 3 }, () => somebody(random)))],
        })),
      );
      const family = associatesOf(all, 'subject');
      said += family.expectedByAccident;
      found += family.recurring;
      square += (family.recurring - family.expectedByAccident) ** 2;
      met += family.met;
      telling += family.associates.filter(({ chance }) => chance < 0.02).length;
    }
    const error = Math.sqrt(square);
    expect(Math.abs(found - said)).toBeLessThan(errors * error);
    // And the error is small beside what is measured, so that the check can fail.
    expect(error / found).toBeLessThan(0.1);
    // Nobody is called telling more often than the chance allows.
    expect(telling / met).toBeLessThan(0.02 + errors * Math.sqrt((0.02 * 0.98) / met));
  });

  test('somebody who is really there stands out among the strangers', () => {
    const random = seeded(7);
    const all = population(
      Array.from({ length: 12 }, (_, i) => ({
        id: `r${i}`,
        names: [...(i % 3 === 0 ? ['Sarah Lomthwaite'] : []), somebody(random), somebody(random)],
      })),
    );
    const [first] = associatesOf(all, 'subject').associates;
    expect(first).toMatchObject({ name: 'Sarah Lomthwaite', records: 4 });
    expect(first!.chance).toBeLessThan(1e-4);
  });
});
