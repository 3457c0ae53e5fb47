/**
 * Which rows of two tables, or of one, are likely the same person: candidates are found by keys, judged field by field,
 * weighed by what the tables themselves teach, and set against their rivals.
 *
 * Rule: as in `compare-rows.ts`; see `estimate.ts`, `blocking.ts` and `compete.ts` for theirs.
 */
import { leastShare } from '../../../catalogue/identity.ts';
import { blockingOf, everyPair } from './blocking.ts';
import { chanceIn } from './chance.ts';
import { comparerOf, type Comparer, type Tables } from './columns.ts';
import { oneToOne } from './compete.ts';
import { learn, mostAgainst, weightsOf, type Learned, type Model, type Pattern } from './estimate.ts';
import {
  ledgerOf,
  ordered,
  priorOf,
  probabilitiesOf,
  rarityOf,
  relearned,
  scored,
  weigh,
  type Work,
} from './score.ts';

export interface LinkOptions {
  /** Values that are rare weigh more. */
  rarity: boolean;
  /** Shares are learned from the tables, where they hold enough. */
  learn: boolean;
  /** A row is at most one row of the other table. */
  rivals: boolean;
  /** Of the pairs above the threshold each row may be in one only. */
  oneToOne: boolean;
  /** Pairs below this probability are left out; 0.5 where it is not said: those less likely than not. */
  threshold?: number;
  /** Up to so many pairs all are looked at; 25 million where it is not said. */
  fewPairs?: number;
}

export interface LinkedPair {
  a: number;
  b: number;
  /** Log₂ odds, prior included. */
  weight: number;
  /** Among its rivals, where they count. */
  probability: number;
}

export interface LedgerLine {
  /** The column. */
  field: string;
  agreement: string;
  weight: number;
}

export interface LinkResult {
  /** The likeliest first, then in the order of the rows. */
  pairs: LinkedPair[];
  /** The least probability of a pair that is told. */
  threshold: number;
  /** In bits. */
  prior: number;
  ledgerOf(a: number, b: number): LedgerLine[];
  /** How many pairs were compared, of how many there are. */
  looked: number;
  possible: number;
  /** The ways in which pairs were found, and how often a row stood under a key too common to be used. */
  passes: readonly string[];
  givenUp: number;
  /** True pairs expected in the tables. */
  expected: number;
  /** Whether the shares were learned, or are the usual ones. */
  learned: boolean;
  shares: readonly {
    field: string;
    levels: readonly { level: string; m: number; u: number; weight: number }[];
  }[];
}

/** Levels in which nobody need have made a mistake. */
const faultless = new Set(['exact', 'same', 'same year', 'within 1 year', 'part']);

const likelierThanNot = 0.5;
/** Up to so many pairs all are looked at, which takes seconds. */
const fewPairs = 25_000_000;
/** Pairs that are looked at to learn from; more add nothing. */
const enoughPairs = 2_000_000;
/** So many expected matches are needed to learn from. */
const fewestMatches = 12;

/** Compares. `say` is told now and then what is being done. */
export function linkTables(
  tables: Tables,
  options: LinkOptions,
  say: (text: string) => void = () => {},
): LinkResult {
  const { rowsA, rowsB, within } = tables;
  const possible = within ? (rowsA * (rowsA - 1)) / 2 : rowsA * rowsB;
  const least = options.rarity ? leastShare / 10 : Infinity;
  const comparers = tables.columns.map((column) => comparerOf(column, least));
  // What the keys bring together is learned from; among all pairs what is alike by chance would drown it.
  const keys = blockingOf(tables, say);
  const all = possible <= (options.fewPairs ?? fewPairs) ? everyPair(tables) : undefined;
  const mostMatches = within ? rowsA : Math.min(rowsA, rowsB);
  // Before anything is known: a row in twenty stands twice, or three in ten stand in the other table.
  const guess = Math.min(0.3, Math.max(1, (within ? 0.05 : 0.3) * Math.min(rowsA, rowsB)) / (possible + 1));
  const chance = chanceIn(comparers, tables);
  const work: Work = {
    tables,
    options,
    comparers,
    blocking: keys,
    chance: chance(guess),
    against: [],
    possible,
    mostMatches,
    say,
  };

  work.against = comparers.map(({ levels }) => [false, ...levels.map((level) => !faultless.has(level))]);

  const patterns = patternsOf(work);
  const apart = new Float64Array(mostAgainst + 1);
  let learned = learn(
    patterns,
    { shares: work.chance.shares, together: apart, matchShare: guess },
    possible + 1,
    mostMatches,
    comparers.map(ordered),
    work.chance.averages,
    work.against,
  );
  // Now that it is known what the matches agree in, they are taken off what chance agrees in.
  work.chance = chance(
    learned.matchShare,
    learned.shares.map(({ m }) => m),
  );
  learned = learn(
    patterns,
    { shares: work.chance.shares, together: learned.together, matchShare: learned.matchShare },
    possible + 1,
    mostMatches,
    comparers.map(ordered),
    work.chance.averages,
    work.against,
  );
  const believed = options.learn && believable(learned, comparers);
  if (!believed) {
    work.chance = chance(Math.min(guess, learned.matchShare));
    learned = { ...learned, shares: work.chance.shares, together: apart };
  }
  let model: Model = { shares: learned.shares, together: learned.together, matchShare: learned.matchShare };
  let { links, looked } = scored(work, model);
  if (believed && options.rivals)
    for (let round = 0; round < 8; round++) {
      model = relearned(work, model, links);
      weigh(work, model, links);
    }
  if (all) {
    work.blocking = all;
    ({ links, looked } = scored(work, model));
  }
  const probability = probabilitiesOf(work, links);
  const threshold = options.threshold ?? likelierThanNot;
  let kept = Array.from({ length: links.count }, (_, at) => at).filter((at) => probability[at]! >= threshold);
  if (options.oneToOne) kept = oneToOne(links, probability, within, kept);
  const pairs = kept
    .map((at) => ({
      a: links.a[at]!,
      b: links.b[at]!,
      weight: links.weight[at]!,
      probability: probability[at]!,
    }))
    .sort((x, y) => y.probability - x.probability || y.weight - x.weight || x.a - y.a || x.b - y.b);
  return {
    pairs,
    threshold,
    prior: priorOf(work, model) + model.together[0]!,
    ledgerOf: (a, b) => ledgerOf(work, model, a, b),
    looked,
    possible,
    passes: work.blocking.passes,
    givenUp: work.blocking.givenUp,
    expected: model.matchShare * possible,
    learned: believed,
    shares: comparers.map(({ column, levels }, at) => {
      const weights = weightsOf(model.shares[at]!);
      return {
        field: column.name,
        levels: levels.map((level, number) => ({
          level,
          m: model.shares[at]!.m[number + 1]!,
          u: model.shares[at]!.u[number + 1]!,
          weight: weights[number + 1]!,
        })),
      };
    }),
  };
}

/** The patterns of the pairs that are looked at. */
function patternsOf({ tables, comparers, blocking, say }: Work): Pattern[] {
  // Rows at even distances stand for all, once there are more pairs than can teach anything.
  let sample = 0;
  const trial = Math.min(tables.rowsA, 200);
  for (let n = 0; n < trial; n++) sample += blocking.candidates(Math.floor((n * tables.rowsA) / trial)).count;
  const stride = Math.max(1, Math.ceil(((sample / Math.max(1, trial)) * tables.rowsA) / enoughPairs));
  const found = new Map<string, Pattern>();
  const levels = new Uint8Array(comparers.length);
  for (let a = 0; a < tables.rowsA; a += stride) {
    if (a % 1000 < stride) say(`Learning from the tables: row ${a} of ${tables.rowsA} …`);
    const { rows, count } = blocking.candidates(a);
    for (let at = 0; at < count; at++) {
      const b = rows[at]!;
      for (let c = 0; c < comparers.length; c++) levels[c] = comparers[c]!.judge(a, b);
      const rarity = Math.round(rarityOf(comparers, levels, a, b));
      const key = String.fromCharCode(...levels, rarity);
      const pattern = found.get(key);
      if (pattern) pattern.count += stride;
      else found.set(key, { levels: levels.slice(), rarity, count: stride });
    }
  }
  return [...found.values()];
}

/** Learned shares are believed when there were enough matches, and names agree oftener among them than not. */
function believable({ matches, converged, shares }: Learned, comparers: readonly Comparer[]): boolean {
  if (!converged || matches < fewestMatches) return false;
  return comparers.every(({ column, levels }, at) => {
    if (column.kind !== 'given' && column.kind !== 'surname') return true;
    return shares[at]!.m[levels.indexOf('different') + 1]! < 0.5;
  });
}
