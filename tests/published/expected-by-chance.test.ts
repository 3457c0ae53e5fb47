/*
 * How many families agree by accident, against the closed forms (standard algebra: E = N · ∏ p, and at least one with
 * 1 − (1 − p)^N) worked out by hand, and the shares of names that R. E. Matheson printed (Special Report on Surnames
 * in Ireland, Dublin 1894).
 */
import { describe, expect, test } from 'vitest';
import { prepareNameTables, shareOfSurname } from '../../src/reasoning/names/rarity.ts';
import { anyOf, poissonAtLeast } from '../../src/reasoning/chance.ts';
import { anyByChance, expectedByChance, weightForProbability } from '../../src/reasoning/identity/weight.ts';
import { familiesByChance, nameTrait } from '../../src/reasoning/candidates/by-chance.ts';
import { trigamma, z90 } from '../../src/reasoning/candidates/shares.ts';
import type { Reason } from '../../src/model/reason.ts';
import type { TraitSaid } from '../../src/model/trait.ts';
import { facts } from '../twin/facts.ts';

const none = facts({ places: [{ id: 'kill', name: 'Kill', kind: 'civil parish' }] });
/** What is compared has no part in the arithmetic; any will do. */
const trait = (occupation: string): TraitSaid => ({ key: 'work', occupation });
const because: Reason = { key: 'spellings-alike' };
const sure = (key: string, share: number) => nameTrait(trait(key), { key, share, spread: 0, because: [] });
const households = (value: number) => ({ value, spread: 0, because });

describe('expected by chance', () => {
  /* N = 1200 and p = 0.0133 · 0.02 · 0.1: E = 0.03192; exact 0.031416; by Poisson 0.031414. */
  const shares = [0.0133, 0.02, 0.1];
  test('the number, and the chance of at least one', () => {
    expect(expectedByChance(1200, shares)).toBeCloseTo(0.03192, 10);
    expect(anyByChance(1200, shares)).toBeCloseTo(0.031416, 6);
    expect(anyOf(1200, 0.0133 * 0.02 * 0.1)).toBeCloseTo(0.031416, 6);
    expect(poissonAtLeast(1, 0.03192)).toBeCloseTo(0.031416, 6);
    // Of the same mean the two agree to the sum of the squares, N p² (Le Cam 1960).
    expect(Math.abs(anyByChance(1200, shares) - poissonAtLeast(1, 0.03192))).toBeLessThan(
      1200 * 2.66e-5 ** 2,
    );
  });
  test('families of a place, each share its own trait', () => {
    const chance = familiesByChance(
      none,
      'kill',
      households(1200),
      shares.map((share, i) => sure(`trait ${i}`, share)),
    );
    expect(chance.expected.value).toBeCloseTo(0.03192, 10);
    expect(chance.any).toBeCloseTo(0.031416, 6);
    expect(chance.expected.low).toBeCloseTo(chance.expected.high, 12);
  });
  /* R. D. Cook and others (2001), as printed: 10,000 by 1,000 rows, 500 matches, probability 0.95 → 18.536 bits. */
  test('the weight for a wanted probability', () =>
    expect(weightForProbability(0.95, 500, 10_000_000)).toBeCloseTo(18.536, 3));
});

describe('with the numbers of the Special Report', () => {
  const tables = prepareNameTables();
  /* Murphy 13.3, Kelly 11.8 and Sullivan 9.2 in 1,000: of 600 households as many as the share says. */
  test.each([
    ['Murphy', 7.98],
    ['Kelly', 7.08],
    ['Sullivan', 5.52],
  ])('%s in a parish of 600 households', (name, expected) => {
    const { share } = shareOfSurname(tables, name, ['ireland']);
    const chance = familiesByChance(none, 'kill', households(600), [sure('surname', share)]);
    expect(Math.abs(chance.expected.value - expected)).toBeLessThan(0.05);
  });
  /* A Murphy whose wife was a Kelly: 600 · 0.0133 · 0.0118 = 0.0942. */
  test('a maiden name makes a common surname rare', () => {
    const [a, b] = ['Murphy', 'Kelly'].map((name) => shareOfSurname(tables, name, ['ireland']).share);
    const chance = familiesByChance(none, 'kill', households(600), [sure('a', a!), sure('b', b!)]);
    expect(chance.expected.value).toBeCloseTo(0.0942, 2);
  });
});

describe('the interval', () => {
  /* Trigamma: ψ₁(1) = π²/6, ψ₁(1/2) = π²/2, ψ₁(x + 1) = ψ₁(x) − 1/x² (Abramowitz and Stegun 6.4, from memory). */
  test('trigamma at its known values', () => {
    expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 9);
    expect(trigamma(0.5)).toBeCloseTo(Math.PI ** 2 / 2, 9);
    for (const x of [0.2, 1.7, 6, 43]) expect(trigamma(x + 1)).toBeCloseTo(trigamma(x) - 1 / x ** 2, 9);
  });
  /* Of independent factors the variances of the logarithms add up. */
  test('factors of 2 and 3 make one of exp √(ln² 2 + ln² 3)', () => {
    const spread = (factor: number) => Math.log(factor) / z90;
    const chance = familiesByChance(none, 'kill', { value: 600, spread: spread(2), because }, [
      nameTrait(trait('x'), { key: 'x', share: 0.01, spread: spread(3), because: [] }),
    ]);
    const factor = Math.exp(Math.hypot(Math.log(2), Math.log(3)));
    expect(chance.expected.value).toBeCloseTo(6, 10);
    expect(chance.expected.high).toBeCloseTo(6 * factor, 3);
    expect(chance.expected.low).toBeCloseTo(6 / factor, 3);
  });
  test('a name that stands twice is one unknown, off twice as far', () => {
    const name = { key: 'x', share: 0.1, spread: Math.log(2) / z90, because: [] };
    const chance = familiesByChance(none, 'kill', households(600), [
      nameTrait(trait('father'), name),
      nameTrait(trait('son'), name),
    ]);
    expect(chance.expected.high).toBeCloseTo(600 * 0.01 * 4, 3);
  });
});
