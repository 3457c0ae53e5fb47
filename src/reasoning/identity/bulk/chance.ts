/**
 * What two different people of the tables agree in: counted in pairs taken at random, with the pairs that are one person
 * after all taken off again. Among few rows those would be most of what agrees.
 */
import { columnShares } from '../../../catalogue/identity.ts';
import type { Comparer, Tables } from './columns.ts';
import type { Shares } from './estimate.ts';

/** Pairs taken at random. */
const randomPairs = 300_000;
/** As many pairs of the usual shares stand beside those counted. */
const usualPairs = 60;

export interface Chance {
  /** The usual `m`, and `u`. */
  shares: readonly Shares[];
  /** By column and level: the bits that bring the rarity of what agrees by chance to nothing on the average. */
  averages: readonly Float64Array[];
}

/** Counts once; the answer says what chance agrees in when a share of all pairs is one person, agreeing as `m` says. */
export function chanceIn(
  comparers: readonly Comparer[],
  tables: Tables,
): (matchShare: number, m?: readonly Float64Array[]) => Chance {
  const counts = comparers.map(({ levels }) => new Float64Array(levels.length + 1));
  const odds = comparers.map(({ levels }) => new Float64Array(levels.length + 1));
  eachByChance(tables, (a, b) => {
    for (let at = 0; at < comparers.length; at++) {
      const { judge, claims, rarity } = comparers[at]!;
      const level = judge(a, b);
      counts[at]![level]!++;
      const claim = claims[level];
      if (claim) odds[at]![level]! += 2 ** (claim * rarity(level, a, b));
    }
  });
  return (matchShare, m) => {
    const shares: Shares[] = [];
    const averages: Float64Array[] = [];
    comparers.forEach(({ column, claims, meanRarity }, at) => {
      const usual = columnShares[column.kind].levels;
      const mine = m?.[at] ?? Float64Array.from([0, ...usual.map((one) => one.m)]);
      const stated = counts[at]!.reduce((sum, count, level) => (level === 0 ? sum : sum + count), 0);
      const matches = matchShare * stated;
      // Never less than a part of what was counted: how many matches there are is a guess.
      const different = counts[at]!.map((count, level) =>
        Math.max(count / 20, count - matches * mine[level]!),
      );
      const all = different.reduce((sum, count, level) => (level === 0 ? sum : sum + count), 0);
      const u = different.map((count, level) =>
        level === 0 ? 0 : (count + usualPairs * usual[level - 1]!.u) / (all + usualPairs),
      );
      shares.push({ m: Float64Array.from([0, ...usual.map((one) => one.m)]), u });
      averages.push(
        different.map((count, level) => {
          const claim = claims[level];
          if (!claim) return 0;
          const raw = odds[at]![level]!;
          const sum = Math.max(raw / 20, raw - matches * mine[level]! * meanRarity(claim));
          // Of a level hardly met, what an exact agreement is worth stands in for the average.
          const few = 25;
          return -Math.log2((sum + few / Math.max(1e-6, u[1]!) ** claim) / (count + few));
        }),
      );
    });
    return { shares, averages };
  };
}

/** Pairs of rows at random, or all of them where they are few. */
function eachByChance({ rowsA, rowsB, within }: Tables, take: (a: number, b: number) => void): void {
  if (rowsA === 0 || rowsB === 0) return;
  const all = rowsA * rowsB <= randomPairs;
  let state = 0x2545f491;
  const next = (bound: number) => {
    // Marsaglia’s xorshift, begun at one place: the same pairs in every run.
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % bound;
  };
  for (let n = 0; n < (all ? rowsA * rowsB : randomPairs); n++) {
    const a = all ? Math.floor(n / rowsB) : next(rowsA);
    const b = all ? n % rowsB : next(rowsB);
    if (!within || a !== b) take(a, b);
  }
}
