/**
 * How often the levels are met, learned from the tables themselves by expectation–maximisation.
 *
 * Rule: A. P. Dempster, N. M. Laird and D. B. Rubin, J. Royal Stat. Soc. B 39 (1977) 1–38, as M. A. Jaro applied it to
 * linkage, JASA 84 (1989) 414–420. What two different people agree in by chance (u) is counted in pairs taken at random
 * and held fast; what is learned is m and how many of all pairs are one person. Pairs that agree in the same levels
 * count as one pattern, so that the work does not grow with the pairs.
 */
import { probabilityOf } from '../weight.ts';

export interface Shares {
  /** By level, from 1; 0 (missing) is unused. */
  m: Float64Array;
  u: Float64Array;
}

/** Pairs that agree in the same levels, with about the same rarity. */
export interface Pattern {
  /** The level of each column; 0 where it is missing. */
  levels: Uint8Array;
  /** Bits of the rarity of what agrees, before the averages. */
  rarity: number;
  count: number;
}

export interface Model {
  /** By column. */
  shares: readonly Shares[];
  /**
   * Bits by how many columns speak against a pair, up to `mostAgainst`: how much oftener so many slips meet in one
   * person’s two rows than if each came by itself. Zeros until it is learned.
   */
  together: Float64Array;
  /** The share of all pairs that are one person. */
  matchShare: number;
}

export interface Learned extends Model {
  /** True pairs expected among the patterns. */
  matches: number;
  converged: boolean;
}

/** Beyond so many slips in one pair it is all the same. */
export const mostAgainst = 3;

/** Which levels of each column speak against a pair. */
export type Against = readonly (readonly boolean[])[];

/** How many columns of a pair speak against it. */
export function slipsIn(against: Against, levels: Uint8Array): number {
  let slips = 0;
  for (let at = 0; at < levels.length; at++) if (against[at]![levels[at]!]) slips++;
  return Math.min(mostAgainst, slips);
}

/** As many pairs of the usual shares stand beside the data, so that a level met twice is not believed outright. */
const usualPairs = 15;

/** The same for how slips meet. */
const usualMeetings = 30;

/**
 * Learns `m` and the share of matches from patterns that stand for all pairs which could be matches; all others, up to
 * `pairs`, are taken as different people. `usual` gives the shares to begin with and to fall back on; its `u` is kept.
 * `ordered` says for each column up to which level the order of levels is one of strength: a better level never weighs
 * less. `mostMatches` bounds the matches; `averages` are bits by column and level that go with the rarity. `against` says
 * which levels speak against a pair; how they meet is learned too, since slips come singly where somebody copied with
 * care, and in company where a hand was bad.
 */
export function learn(
  patterns: readonly Pattern[],
  usual: Model,
  pairs: number,
  mostMatches: number,
  ordered: readonly (readonly boolean[])[],
  averages: readonly Float64Array[],
  against: Against,
  rounds = 200,
): Learned {
  let shares: readonly Shares[] = usual.shares.map(({ m, u }) => ({ m: m.slice(), u }));
  let together = usual.together;
  let matchShare = usual.matchShare;
  let matches = 0;
  let converged = false;
  for (let round = 0; round < rounds && !converged; round++) {
    const weigh = weigherOf({ shares, together, matchShare }, averages, against);
    const sums = shares.map(({ m }) => new Float64Array(m.length));
    const slips = new Float64Array(mostAgainst + 1);
    matches = 0;
    for (const { levels, rarity, count } of patterns) {
      const expected = count * probabilityOf(weigh(levels) + rarity);
      matches += expected;
      slips[slipsIn(against, levels)]! += expected;
      for (let at = 0; at < levels.length; at++) sums[at]![levels[at]!]! += expected;
    }
    const next = shares.map(({ u }, at) => ({
      m: inOrder(maximised(sums[at]!, usual.shares[at]!.m), u, ordered[at]!),
      u,
    }));
    const nextShare = Math.min(mostMatches, Math.max(1, matches)) / pairs;
    converged =
      Math.abs(Math.log(nextShare / matchShare)) < 1e-3 &&
      next.every(({ m }, at) => m.every((value, level) => Math.abs(value - shares[at]!.m[level]!) < 5e-4));
    shares = next;
    together = meeting(slips, sums, against);
    matchShare = nextShare;
  }
  return { shares, together, matchShare, matches, converged };
}

/**
 * How slips meet, in bits by their number: the expected counts of pairs with so many, beside the counts if the columns
 * were independent (the distribution of a sum of unlike chances). `sums` are the expected counts of the levels.
 */
export function meeting(slips: Float64Array, sums: readonly Float64Array[], against: Against): Float64Array {
  const total = slips.reduce((sum, value) => sum + value, 0);
  let alone = [1];
  sums.forEach((levels, at) => {
    const share =
      levels.reduce((sum, value, level) => sum + (against[at]![level] ? value : 0), 0) /
      Math.max(1e-9, total);
    const next = new Array<number>(alone.length + 1).fill(0);
    alone.forEach((chance, count) => {
      next[count]! += chance * (1 - share);
      next[count + 1]! += chance * share;
    });
    alone = next;
  });
  const bits = slips.map((expected, count) => {
    const chance = Math.max(
      1e-9,
      count < mostAgainst ? (alone[count] ?? 0) : alone.slice(mostAgainst).reduce((sum, one) => sum + one, 0),
    );
    return Math.log2((expected + usualMeetings * chance) / ((total + usualMeetings) * chance));
  });
  // Where two slips are too many, three are no better, however few pairs there are to tell.
  for (let count = 2; count < bits.length; count++)
    if (bits[count - 1]! < 0) bits[count] = Math.min(bits[count]!, bits[count - 1]!);
  return bits;
}

/** The new shares of one column from the expected counts of its levels. */
export function maximised(sums: Float64Array, usual: Float64Array): Float64Array {
  const stated = sums.subarray(1).reduce((sum, value) => sum + value, 0);
  return sums.map((sum, level) =>
    level === 0 ? 0 : (sum + usualPairs * usual[level]!) / (stated + usualPairs),
  );
}

/** Log₂ odds of the levels of a pair, prior and averages included. */
function weigherOf(
  { shares, together, matchShare }: Model,
  averages: readonly Float64Array[],
  against: Against,
) {
  const weights = shares.map((one, at) => weightsOf(one).map((bits, level) => bits + averages[at]![level]!));
  const prior = Math.log2(matchShare / (1 - matchShare));
  return (levels: Uint8Array): number => {
    let sum = prior + together[slipsIn(against, levels)]!;
    for (let at = 0; at < levels.length; at++) sum += weights[at]![levels[at]!]!;
    return sum;
  };
}

/** Bits by level of one column; 0 for what is missing. */
export function weightsOf({ m, u }: Shares): Float64Array {
  return m.map((share, level) =>
    level === 0 ? 0 : Math.log2(Math.max(1e-6, share) / Math.max(1e-6, u[level]!)),
  );
}

/**
 * Shares whose ratios m ÷ u do not rise from a better level to a worse one: neighbours that would are given their
 * common ratio (pool-adjacent-violators). Levels out of the order keep their own.
 */
export function inOrder(m: Float64Array, u: Float64Array, ordered: readonly boolean[]): Float64Array {
  const blocks: { levels: number[]; m: number; u: number }[] = [];
  for (let level = 1; level < m.length; level++) {
    if (!ordered[level]) continue;
    blocks.push({ levels: [level], m: m[level]!, u: Math.max(1e-9, u[level]!) });
    while (blocks.length > 1) {
      const last = blocks.at(-1)!;
      const before = blocks.at(-2)!;
      if (before.m * last.u >= last.m * before.u) break;
      blocks.pop();
      before.levels.push(...last.levels);
      before.m += last.m;
      before.u += last.u;
    }
  }
  const pooled = m.slice();
  for (const block of blocks)
    if (block.levels.length > 1)
      for (const level of block.levels) pooled[level] = (block.m * Math.max(1e-9, u[level]!)) / block.u;
  return pooled;
}
