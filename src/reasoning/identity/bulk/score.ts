/** The weights of candidate pairs under a model, and a model learned anew from them. */
import type { Blocking } from './blocking.ts';
import type { Chance } from './chance.ts';
import type { Comparer, Tables } from './columns.ts';
import { alliesAmong, probabilitiesAlone, probabilitiesAmongRivals, type Links } from './compete.ts';
import {
  inOrder,
  maximised,
  meeting,
  mostAgainst,
  slipsIn,
  weightsOf,
  type Against,
  type Model,
} from './estimate.ts';
import type { LedgerLine, LinkOptions } from './link.ts';

/** What is worked with: the tables, how they are compared, and what chance gives. */
export interface Work {
  tables: Tables;
  options: LinkOptions;
  comparers: readonly Comparer[];
  blocking: Blocking;
  chance: Chance;
  /** Levels that speak against a pair, by column. */
  against: Against;
  possible: number;
  mostMatches: number;
  say: (text: string) => void;
}

/** Log₂ odds below which a pair is not even a rival. */
const leastWeight = -10;

/** Levels that stand in the order of their strength; an initial, or a slip of the pen, is a thing of its own. */
export const ordered = ({ levels }: Comparer): boolean[] => [
  false,
  ...levels.map((level) => level !== 'initial' && level !== 'one digit off'),
];

/** Bits of the rarity of what agrees in a pair, before the averages. */
export function rarityOf(comparers: readonly Comparer[], levels: Uint8Array, a: number, b: number) {
  let bits = 0;
  for (let at = 0; at < comparers.length; at++) {
    const { claims, rarity } = comparers[at]!;
    const claim = claims[levels[at]!];
    if (claim) bits += claim * rarity(levels[at]!, a, b);
  }
  return bits;
}

/** Bits by column and level, the averages of rarity included. */
function weightsWithAverages({ chance }: Work, model: Model): Float64Array[] {
  return model.shares.map((one, at) =>
    weightsOf(one).map((bits, level) => bits + chance.averages[at]![level]!),
  );
}

/** The candidates of all rows that are not hopeless. */
export function scored(work: Work, model: Model): { links: Links; looked: number } {
  const { tables, comparers, blocking, against, say } = work;
  const weights = weightsWithAverages(work, model);
  const prior = priorOf(work, model);
  const levels = new Uint8Array(comparers.length);
  const links: Links = {
    count: 0,
    a: new Int32Array(4096),
    b: new Int32Array(4096),
    weight: new Float32Array(4096),
  };
  let looked = 0;
  for (let a = 0; a < tables.rowsA; a++) {
    if (a % 1000 === 0) say(`Comparing: row ${a} of ${tables.rowsA} …`);
    const { rows, count } = blocking.candidates(a);
    looked += count;
    for (let at = 0; at < count; at++) {
      const b = rows[at]!;
      let weight = prior;
      for (let c = 0; c < comparers.length; c++) {
        const level = comparers[c]!.judge(a, b);
        levels[c] = level;
        weight += weights[c]![level]!;
      }
      weight += rarityOf(comparers, levels, a, b) + model.together[slipsIn(against, levels)]!;
      if (weight >= leastWeight) add(links, a, b, weight);
    }
  }
  return { links, looked };
}

function add(links: Links, a: number, b: number, weight: number): void {
  if (links.count === links.a.length) {
    const length = links.count * 2;
    const longer = <T extends Int32Array | Float32Array>(made: T, old: T) => (made.set(old), made);
    links.a = longer(new Int32Array(length), links.a);
    links.b = longer(new Int32Array(length), links.b);
    links.weight = longer(new Float32Array(length), links.weight);
  }
  links.a[links.count] = a;
  links.b[links.count] = b;
  links.weight[links.count++] = weight;
}

/** Weighs links anew with another model. */
export function weigh(work: Work, model: Model, links: Links): void {
  const { comparers, against } = work;
  const weights = weightsWithAverages(work, model);
  const prior = priorOf(work, model);
  const levels = new Uint8Array(comparers.length);
  for (let at = 0; at < links.count; at++) {
    let weight = prior;
    for (let c = 0; c < comparers.length; c++) {
      levels[c] = comparers[c]!.judge(links.a[at]!, links.b[at]!);
      weight += weights[c]![levels[c]!]!;
    }
    const rarity = rarityOf(comparers, levels, links.a[at]!, links.b[at]!);
    links.weight[at] = weight + rarity + model.together[slipsIn(against, levels)]!;
  }
}

/** The probability of each link, among its rivals where they count. */
export function probabilitiesOf({ options, tables: { rowsA, within } }: Work, links: Links): Float32Array {
  if (!options.rivals) return probabilitiesAlone(links);
  return probabilitiesAmongRivals(
    links,
    rowsA,
    within,
    within && !options.oneToOne ? alliesAmong(links) : undefined,
  );
}

/** One more round of learning, now that each pair’s rivals are known. */
export function relearned(work: Work, model: Model, links: Links): Model {
  const { comparers, chance, against, possible, mostMatches } = work;
  const probability = probabilitiesOf(work, links);
  const sums = comparers.map(({ levels }) => new Float64Array(levels.length + 1));
  const slips = new Float64Array(mostAgainst + 1);
  const levels = new Uint8Array(comparers.length);
  let matches = 0;
  for (let at = 0; at < links.count; at++) {
    const expected = probability[at]!;
    matches += expected;
    for (let c = 0; c < comparers.length; c++) {
      levels[c] = comparers[c]!.judge(links.a[at]!, links.b[at]!);
      sums[c]![levels[c]!]! += expected;
    }
    slips[slipsIn(against, levels)]! += expected;
  }
  return {
    together: meeting(slips, sums, against),
    matchShare: Math.min(mostMatches, Math.max(1, matches)) / (possible + 1),
    shares: model.shares.map(({ u }, at) => ({
      m: inOrder(maximised(sums[at]!, chance.shares[at]!.m), u, ordered(comparers[at]!)),
      u,
    })),
  };
}

/**
 * The prior log₂ odds of a pair. Among rivals they are the odds against both rows standing alone, which are the higher
 * the fewer rows do: matches ÷ (pairs × share of a that is alone × share of b that is alone). One more row and pair is
 * counted than there are, so that tables of a row or two do not make sure of what nobody has compared.
 */
export function priorOf({ tables, options, possible }: Work, { matchShare }: Model): number {
  const odds = Math.log2(matchShare / (1 - matchShare));
  if (!options.rivals) return odds;
  const { rowsA, rowsB, within } = tables;
  const matches = matchShare * possible * (within ? 2 : 1);
  const alone = (rows: number) => Math.max(0.05, 1 - matches / (rows + 1));
  return odds - Math.log2(alone(rowsA) * alone(rowsB));
}

/** The lines of one pair's ledger; with the prior they add up to its weight. */
export function ledgerOf(work: Work, model: Model, a: number, b: number): LedgerLine[] {
  const weights = weightsWithAverages(work, model);
  const met = new Uint8Array(work.comparers.map(({ judge }) => judge(a, b)));
  const slips = slipsIn(work.against, met);
  // What slips weigh together is laid on each of them alike; what it is worth to have none stands in the prior.
  const extra = (model.together[slips]! - model.together[0]!) / Math.max(1, slips);
  return work.comparers.map(({ column, levels, claims, rarity }, at) => {
    const level = met[at]!;
    const claim = claims[level];
    const weight =
      weights[at]![level]! +
      (claim ? claim * rarity(level, a, b) : 0) +
      (work.against[at]![level] ? extra : 0);
    return { field: column.name, agreement: level === 0 ? 'missing' : levels[level - 1]!, weight };
  });
}
