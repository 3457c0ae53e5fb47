import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyOf, atLeast, poissonAtLeast } from '../../src/reasoning/chance.ts';

/** n! / (k! (n − k)!), by Pascal's triangle. */
function choose(n: number, k: number): number {
  let row = [1];
  for (let i = 0; i < n; i++) row = [1, ...row.slice(1).map((one, at) => one + row[at]!), 1];
  return row[k]!;
}

const binomialAtLeast = (k: number, n: number, p: number) =>
  Array.from(
    { length: n - k + 1 },
    (_, i) => choose(n, k + i) * p ** (k + i) * (1 - p) ** (n - k - i),
  ).reduce((sum, one) => sum + one, 0);

describe('one of many tries', () => {
  test('1 − (1 − p)^n', () => {
    expect(anyOf(3, 0.5)).toBeCloseTo(0.875, 12);
    expect(anyOf(0, 0.5)).toBe(0);
    expect(anyOf(5, 1)).toBe(1);
    // Where 1 − p is 1 to the last digit, the chance is n p.
    expect(anyOf(1000, 1e-18)).toBeCloseTo(1e-15, 25);
  });
});

describe('so many of several trials', () => {
  /* Equal chances: the binomial distribution, in closed form. */
  test.each([
    [0, 5, 0.3],
    [1, 5, 0.3],
    [3, 5, 0.3],
    [5, 5, 0.3],
    [2, 12, 0.05],
    [7, 12, 0.6],
  ])('at least %i of %i at %f', (k, n, p) =>
    expect(atLeast(k, Array<number>(n).fill(p))).toBeCloseTo(binomialAtLeast(k, n, p), 12),
  );

  /* Unequal chances, written out: of 1/2, 1/3 and 1/4 at least two. */
  test('every way of two or three of three', () => {
    const [a, b, c] = [1 / 2, 1 / 3, 1 / 4];
    const two = a * b * (1 - c) + a * (1 - b) * c + (1 - a) * b * c;
    expect(atLeast(2, [a, b, c])).toBeCloseTo(two + a * b * c, 14);
  });

  test('more than there are trials never happens; none always does', () => {
    expect(atLeast(4, [0.5, 0.5, 0.5])).toBeCloseTo(0, 14);
    expect(atLeast(0, [])).toBe(1);
  });

  test('asking for more is never likelier, and the order of the trials says nothing', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 }),
        fc.nat({ max: 12 }),
        (all, k) => {
          expect(atLeast(k + 1, all)).toBeLessThanOrEqual(atLeast(k, all) + 1e-12);
          expect(atLeast(k, all.toReversed())).toBeCloseTo(atLeast(k, all), 10);
        },
      ),
      { seed: 412 },
    ));
});

describe('where so many are expected', () => {
  /* The Poisson distribution in closed form. */
  test.each([0.01, 0.5, 3, 20])('mean %f', (mean) => {
    const at = (k: number) => {
      let term = Math.exp(-mean);
      for (let i = 1; i <= k; i++) term *= mean / i;
      return term;
    };
    expect(poissonAtLeast(1, mean)).toBeCloseTo(-Math.expm1(-mean), 12);
    expect(poissonAtLeast(3, mean)).toBeCloseTo(1 - at(0) - at(1) - at(2), 12);
  });
  test('small chances are not lost to rounding: mean⁵ / 5! to the first order', () =>
    expect(poissonAtLeast(5, 1e-4) / (1e-20 / 120)).toBeCloseTo(1, 3));
  test('nothing expected, nothing seen', () => {
    expect(poissonAtLeast(1, 0)).toBe(0);
    expect(poissonAtLeast(0, 0)).toBe(1);
  });
  /* L. Le Cam (1960): the two differ by no more than the sum of the squared chances. */
  test('close to independent trials of small chance', () => {
    const all = Array.from({ length: 200 }, (_, i) => 0.0001 * (1 + (i % 7)));
    const mean = all.reduce((sum, p) => sum + p, 0);
    const bound = all.reduce((sum, p) => sum + p * p, 0);
    for (const k of [1, 2, 3])
      expect(Math.abs(atLeast(k, all) - poissonAtLeast(k, mean))).toBeLessThanOrEqual(bound);
  });
});
