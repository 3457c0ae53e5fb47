/*
 * The arithmetic of the clues: against the binomial distribution in closed form, and against a simulation with a fixed
 * seed in which names are given by accident.
 */
import { describe, expect, test } from 'vitest';
import { english } from '../../../src/interface/index.ts';
import { anyOf, atLeast } from '../../../src/reasoning/chance.ts';
import { cluesOf } from '../../../src/reasoning/clues/clues.ts';
import { commonnessFor } from '../../../src/reasoning/clues/names.ts';
import { facts } from '../../twin/facts.ts';

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);
const binomialTail = (n: number, k: number, p: number): number =>
  Array.from({ length: n - k + 1 }, (_, i) => k + i).reduce(
    (sum, j) => sum + choose(n, j) * p ** j * (1 - p) ** (n - j),
    0,
  );

/** A small generator of equally spread numbers (mulberry32), so that every run draws the same. */
function drawing(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A grandfather with one grandson in each of `families` families, `times` of whom bear his name. */
function grandsons(families: number, times: number) {
  const sons = Array.from({ length: families }, (_, n) => (n === 0 ? 'maurice' : `s${n}`));
  return facts({
    places: [{ id: 'ireland', name: 'Ireland', kind: 'country' }],
    cases: [{ id: 'c', subject: 'maurice', hypothesis: { place: 'ireland', cites: [] } }],
    people: [
      { id: 'gf', name: 'Cornelius Phelan', sex: 'M' },
      ...sons.map((id) => ({ id, name: 'Son Phelan', sex: 'M' as const, parents: ['gf'] })),
      ...sons.map((id, n) => ({
        id: `g${n}`,
        name: n < times ? 'Cornelius Phelan' : `Other${n} Phelan`,
        sex: 'M' as const,
        parents: [id],
      })),
    ],
  });
}

describe('names among grandchildren', () => {
  test.each([
    [3, 2],
    [5, 2],
    [8, 3],
    [12, 4],
  ])('with one grandson in each of %i families, %i of the name: the binomial tail', (families, times) => {
    const content = grandsons(families, times);
    const share = commonnessFor(content, 'maurice', 'ireland').given('Cornelius', 'M').share;
    const clue = cluesOf(content, content.cases.get('c')!).clues.find(
      ({ said }) => said.key === 'name-repeated' && said.whose.is === 'own' && said.forms[0] === 'Cornelius',
    );
    expect(clue!.chance!.expected).toBeCloseTo(families * share, 12);
    expect(clue!.chance!.probability).toBeCloseTo(binomialTail(families, times, share), 12);
  });

  test('families of several sons: as a simulation finds it', () => {
    const sizes = [1, 2, 2, 3, 5];
    const share = 0.12;
    const chance = atLeast(
      3,
      sizes.map((size) => anyOf(size, share)),
    );
    const draw = drawing(412);
    const runs = 200_000;
    let met = 0;
    for (let run = 0; run < runs; run++) {
      const withName = sizes.filter((size) => Array.from({ length: size }).some(() => draw() < share));
      if (withName.length >= 3) met++;
    }
    // Three standard errors of a share from so many runs.
    expect(Math.abs(met / runs - chance)).toBeLessThan(3 * Math.sqrt((chance * (1 - chance)) / runs));
  });
});

test('chances in words', () => {
  expect([0.5, 0.095, 0.05, 1 / 3400, 1e-9].map(english.clues.odds)).toEqual([
    'in about 50 of 100 families',
    'in about 10 of 100 families',
    'in about one of 20 families',
    'in about one of 3,400 families',
    'in fewer than one of a million families',
  ]);
  expect([0.0001, 0.123, 2.5].map(english.clues.expected)).toEqual(['fewer than 0.01', '0.12', '2.5']);
});
