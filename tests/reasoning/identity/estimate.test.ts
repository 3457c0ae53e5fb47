import { describe, expect, test } from 'vitest';
import {
  inOrder,
  learn,
  weightsOf,
  type Pattern,
  type Shares,
} from '../../../src/reasoning/identity/bulk/estimate.ts';

/** Every pattern of three fields of three levels, with the count expected of each. */
function expected(
  fields: readonly { m: number[]; u: number[] }[],
  matches: number,
  pairs: number,
): Pattern[] {
  const patterns: Pattern[] = [];
  for (let code = 0; code < 27; code++) {
    const levels = Uint8Array.of((code % 3) + 1, (Math.floor(code / 3) % 3) + 1, Math.floor(code / 9) + 1);
    const share = (pick: 'm' | 'u') =>
      fields.reduce((product, field, at) => product * field[pick][levels[at]! - 1]!, 1);
    patterns.push({ levels, rarity: 0, count: matches * share('m') + (pairs - matches) * share('u') });
  }
  return patterns;
}

const shares = (m: number[], u: number[]): Shares => ({
  m: Float64Array.from([0, ...m]),
  u: Float64Array.from([0, ...u]),
});

describe('shares are learned from patterns', () => {
  const truth = [
    { m: [0.8, 0.15, 0.05], u: [0.01, 0.02, 0.97] },
    { m: [0.7, 0.2, 0.1], u: [0.03, 0.05, 0.92] },
    { m: [0.9, 0.06, 0.04], u: [0.05, 0.1, 0.85] },
  ];
  const none = truth.map(() => new Float64Array(4));
  const ordered = truth.map(() => [false, true, true, true]);
  const against = truth.map(() => [false, false, true, true]);
  const together = new Float64Array(4);
  test('the m that made them is found again, and the number of matches', () => {
    const usual = {
      shares: truth.map(({ u }) => shares([0.5, 0.3, 0.2], u)),
      together,
      matchShare: 0.0001,
    };
    const found = learn(expected(truth, 5000, 1_000_000), usual, 1_000_000, 20_000, ordered, none, against);
    expect(found.converged).toBe(true);
    expect(found.matches).toBeGreaterThan(4800);
    expect(found.matches).toBeLessThan(5200);
    truth.forEach(({ m }, at) =>
      m.forEach((share, level) => expect(found.shares[at]!.m[level + 1]!).toBeCloseTo(share, 1)),
    );
  });
  test('where nothing matches, next to nothing is found', () => {
    const usual = { shares: truth.map(({ m, u }) => shares(m, u)), together, matchShare: 0.01 };
    expect(
      learn(expected(truth, 0, 10_000), usual, 10_000, 100, ordered, none, against).matches,
    ).toBeLessThan(3);
  });
  test('there are never more matches than there can be', () => {
    const usual = { shares: truth.map(({ m, u }) => shares(m, u)), together, matchShare: 0.01 };
    expect(
      learn(expected(truth, 900, 10_000), usual, 10_000, 100, ordered, none, against).matchShare,
    ).toBeLessThanOrEqual(0.01);
  });
});

describe('how slips meet', () => {
  const fields = [
    { m: [0.7, 0.15, 0.15], u: [0.01, 0.02, 0.97] },
    { m: [0.7, 0.15, 0.15], u: [0.03, 0.05, 0.92] },
    { m: [0.7, 0.15, 0.15], u: [0.05, 0.1, 0.85] },
  ];
  const against = fields.map(() => [false, false, true, true]);
  const slips = ({ levels }: Pattern) => levels.filter((level) => level > 1).length;
  const learned = (matched: (pattern: Pattern) => number) => {
    const alone = expected(fields, 5000, 5000).map((pattern) => ({ ...pattern, count: matched(pattern) }));
    const chance = expected(fields, 0, 995_000);
    const patterns = chance.map((pattern, at) => ({ ...pattern, count: pattern.count + alone[at]!.count }));
    return learn(
      patterns,
      { shares: fields.map(({ m, u }) => shares(m, u)), together: new Float64Array(4), matchShare: 0.005 },
      1_000_000,
      20_000,
      fields.map(() => [false, true, true, true]),
      fields.map(() => new Float64Array(4)),
      against,
    );
  };
  const independent = expected(fields, 5000, 5000);
  const countOf = ({ levels }: Pattern) =>
    independent.find((one) => one.levels.every((level, at) => level === levels[at]))!.count;

  test('weighs nothing where each comes by itself', () => {
    const found = learned(countOf);
    for (const bits of found.together) expect(Math.abs(bits)).toBeLessThan(0.35);
  });
  test('weighs against a pair with several where one row never has more than one', () => {
    const found = learned((pattern) => (slips(pattern) <= 1 ? countOf(pattern) : 0));
    expect(found.together[1]!).toBeGreaterThan(0);
    expect(found.together[2]!).toBeLessThan(-1.5);
    expect(found.together[3]!).toBeLessThan(-1.5);
  });
});

describe('better levels never weigh less', () => {
  test('levels that would are given their common ratio, and the sum is kept', () => {
    const u = Float64Array.of(0, 0.1, 0.1, 0.8);
    const pooled = inOrder(Float64Array.of(0, 0.2, 0.6, 0.2), u, [false, true, true, true]);
    expect([...pooled].map((share) => Number(share.toFixed(6)))).toEqual([0, 0.4, 0.4, 0.2]);
    const weights = weightsOf({ m: pooled, u });
    expect(weights[1]).toBeCloseTo(weights[2]!);
    expect(weights[2]!).toBeGreaterThan(weights[3]!);
  });
  test('a level out of the order keeps its own', () => {
    const pooled = inOrder(Float64Array.of(0, 0.2, 0.6, 0.2), Float64Array.of(0, 0.1, 0.1, 0.8), [
      false,
      true,
      false,
      true,
    ]);
    expect([...pooled]).toEqual([0, 0.2, 0.6, 0.2]);
  });
});
