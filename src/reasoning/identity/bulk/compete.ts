/**
 * Rivals: a row is at most one of those it could be, so its candidates compete with each other and with “none of them”.
 * Two equally good ones leave both doubtful; one that is surely somebody else’s does not stand in the way.
 *
 * Rule (common practice): of all ways to pair the rows off, each as likely as the product of the odds of its pairs, the
 * share in which a pair stands together. It is worked out by passing messages between the pairs (belief propagation for
 * monomer–dimer systems), which is exact where candidates form no circles.
 */
import { probabilityOf } from '../weight.ts';

/** Pairs of rows with their log₂ odds, taken by themselves. */
export interface Links {
  count: number;
  a: Int32Array;
  b: Int32Array;
  weight: Float32Array;
}

/** Above this a pair is as good as certain; higher odds would drown the others in rounding. */
const mostBits = 30;

/**
 * The probability of each pair among its rivals. `within`: both sides are the rows of one table, so that a row competes
 * wherever it stands.
 */
export function probabilitiesAmongRivals(
  links: Links,
  rows: number,
  within: boolean,
  allies: Allies = noAllies,
): Float32Array {
  const { count, a, b, weight } = links;
  const offset = within ? 0 : rows;
  const nodes = within ? rows : rows + 1 + b.reduce((most, row) => Math.max(most, row), -1);
  const odds = Float64Array.from({ length: count }, (_, at) => 2 ** Math.min(mostBits, weight[at]!));
  // How free an end of a pair is, as seen from the pair: 1 ÷ (1 + what its other pairs bring).
  let freeA = new Float64Array(count).fill(1);
  let freeB = new Float64Array(count).fill(1);
  const brought = new Float64Array(nodes);
  for (let round = 0; round < 60; round++) {
    brought.fill(0);
    for (let at = 0; at < count; at++) {
      brought[a[at]!]! += odds[at]! * freeB[at]!;
      brought[offset + b[at]!]! += odds[at]! * freeA[at]!;
    }
    const outA = new Float64Array(count);
    const outB = new Float64Array(count);
    for (let n = 0; n < allies.pair.length; n++) {
      const pair = allies.pair[n]!;
      const ally = allies.ally[n]!;
      const shared = allies.row[n]!;
      const gives = odds[ally]! * (a[ally] === shared ? freeB[ally]! : freeA[ally]!);
      if (a[pair] === shared) outA[pair]! += gives;
      else outB[pair]! += gives;
    }
    const nextA = new Float64Array(count);
    const nextB = new Float64Array(count);
    let change = 0;
    for (let at = 0; at < count; at++) {
      const fromA = Math.max(0, brought[a[at]!]! - odds[at]! * freeB[at]! - outA[at]!);
      const fromB = Math.max(0, brought[offset + b[at]!]! - odds[at]! * freeA[at]! - outB[at]!);
      // Halfway to the new value keeps circles from swinging to and fro.
      nextA[at] = Math.sqrt(freeA[at]! / (1 + fromA));
      nextB[at] = Math.sqrt(freeB[at]! / (1 + fromB));
      change = Math.max(change, Math.abs(nextA[at]! / freeA[at]! - 1), Math.abs(nextB[at]! / freeB[at]! - 1));
    }
    freeA = nextA;
    freeB = nextB;
    if (change < 1e-4) break;
  }
  return Float32Array.from({ length: count }, (_, at) => {
    const together = odds[at]! * freeA[at]! * freeB[at]!;
    return together / (1 + together);
  });
}

/** Pairs that do not compete: `pair` shares `row` with `ally`, and their other rows are likely one person too. */
export interface Allies {
  pair: readonly number[];
  ally: readonly number[];
  row: readonly number[];
}

const noAllies: Allies = { pair: [], ally: [], row: [] };

/**
 * Of one table in which a person may stand three times and more: which pairs support each other, because all three rows
 * pair likely enough with one another.
 */
export function alliesAmong({ count, a, b, weight }: Links): Allies {
  const likely = new Map<number, Map<number, number>>();
  const add = (from: number, to: number, at: number) => {
    const known = likely.get(from);
    if (known) known.set(to, at);
    else likely.set(from, new Map([[to, at]]));
  };
  for (let at = 0; at < count; at++) {
    if (weight[at]! < 0) continue;
    add(a[at]!, b[at]!, at);
    add(b[at]!, a[at]!, at);
  }
  const pair: number[] = [];
  const ally: number[] = [];
  const row: number[] = [];
  for (let at = 0; at < count; at++) {
    if (weight[at]! < 0) continue;
    for (const [end, other] of [
      [a[at]!, b[at]!],
      [b[at]!, a[at]!],
    ] as const) {
      const around = likely.get(end)!;
      // Somebody with very many likely pairs is no person, and would cost the square of them.
      if (around.size > mostAround) continue;
      for (const [third, link] of around) {
        if (third === other || !likely.get(other)!.has(third)) continue;
        pair.push(at);
        ally.push(link);
        row.push(end);
      }
    }
  }
  return { pair, ally, row };
}

const mostAround = 40;

/** The probability of each pair by itself. */
export function probabilitiesAlone({ count, weight }: Links): Float32Array {
  return Float32Array.from({ length: count }, (_, at) => probabilityOf(weight[at]!));
}

/**
 * Which of the pairs stand when each row may be in one only: the likeliest first, of equals the heavier, then the
 * earlier rows. `order` gives pairs by number.
 */
export function oneToOne(
  links: Links,
  probability: Float32Array,
  within: boolean,
  order: Iterable<number>,
): number[] {
  const { a, b, weight } = links;
  const usedA = new Set<number>();
  const usedB = within ? usedA : new Set<number>();
  return [...order]
    .sort(
      (one, other) =>
        probability[other]! - probability[one]! ||
        weight[other]! - weight[one]! ||
        a[one]! - a[other]! ||
        b[one]! - b[other]!,
    )
    .filter((at) => {
      if (usedA.has(a[at]!) || usedB.has(b[at]!)) return false;
      usedA.add(a[at]!);
      usedB.add(b[at]!);
      return true;
    });
}
