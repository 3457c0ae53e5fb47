import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  alliesAmong,
  oneToOne,
  probabilitiesAlone,
  probabilitiesAmongRivals,
  type Links,
} from '../../../src/reasoning/identity/bulk/compete.ts';

const links = (...pairs: [a: number, b: number, weight: number][]): Links => ({
  count: pairs.length,
  a: Int32Array.from(pairs, ([a]) => a),
  b: Int32Array.from(pairs, ([, b]) => b),
  weight: Float32Array.from(pairs, ([, , weight]) => weight),
});

/** All ways to pair rows off, each weighed by the product of the odds of its pairs. */
function byEnumeration({ count, a, b, weight }: Links): number[] {
  const together = new Array<number>(count).fill(0);
  let total = 0;
  const go = (at: number, taken: number[], product: number) => {
    if (at === count) {
      total += product;
      for (const one of taken) together[one]! += product;
      return;
    }
    go(at + 1, taken, product);
    if (taken.every((one) => a[one] !== a[at] && b[one] !== b[at]))
      go(at + 1, [...taken, at], product * 2 ** weight[at]!);
  };
  go(0, [], 1);
  return together.map((sum) => sum / total);
}

describe('candidates compete', () => {
  test('two equally good ones leave both doubtful', () => {
    const [one, other] = probabilitiesAmongRivals(links([0, 0, 12], [0, 1, 12]), 1, false);
    expect(one).toBeCloseTo(0.5, 2);
    expect(other).toBeCloseTo(0.5, 2);
  });
  test('a pair without rivals is as likely as its odds', () => {
    const lone = links([0, 0, 3]);
    expect(probabilitiesAmongRivals(lone, 1, false)[0]).toBeCloseTo(8 / 9, 5);
    expect(probabilitiesAlone(lone)[0]).toBeCloseTo(8 / 9, 5);
  });
  test('one that is surely somebody else’s does not stand in the way', () => {
    const [first, second] = probabilitiesAmongRivals(links([0, 0, 5], [0, 1, 5], [1, 1, 25]), 2, false);
    expect(first).toBeGreaterThan(0.95);
    expect(second).toBeLessThan(0.05);
  });
  test('as in an enumeration of all pairings, where candidates form no circle', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -6, max: 12, noNaN: true }), { minLength: 1, maxLength: 9 }),
        (weights) => {
          // A path: a0 b0 a1 b1 a2 …
          const path = links(
            ...weights.map((weight, at): [number, number, number] => [
              Math.ceil(at / 2),
              Math.floor(at / 2),
              Math.fround(weight),
            ]),
          );
          const found = probabilitiesAmongRivals(path, 10, false);
          byEnumeration(path).forEach((share, at) => expect(found[at]).toBeCloseTo(share, 2));
        },
      ),
    );
  });
  test('rows that are one person among themselves do not compete', () => {
    const three = links([0, 1, 10], [0, 2, 10], [1, 2, 10]);
    expect(probabilitiesAmongRivals(three, 3, true)[0]).toBeLessThan(0.6);
    const allied = probabilitiesAmongRivals(three, 3, true, alliesAmong(three));
    for (const share of allied) expect(share).toBeGreaterThan(0.95);
  });
});

test('one to one: each row stands once, the likeliest pairs first', () => {
  const pairs = links([0, 0, 3], [0, 1, 5], [1, 1, 4], [2, 0, 1]);
  const probability = probabilitiesAlone(pairs);
  expect(oneToOne(pairs, probability, false, [0, 1, 2, 3])).toEqual([1, 3]);
});
