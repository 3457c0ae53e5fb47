/**
 * What an agreement weighs: log₂ of how much oftener it is met between two namings of one person than between two people.
 *
 * Rule: H. B. Newcombe and others, Science 130 (1959) 954–959; I. P. Fellegi and A. B. Sunter, JASA 64 (1969) 1183–1210.
 * Value-specific weights as in W. E. Winkler, Census RR2000/06, and W. E. Yancey, Census RR2000/07.
 */

/** Bits for a level: log₂(m/u). Shares are kept off 0 and 1, so that no single field decides alone. */
export function levelWeight({ m, u }: { m: number; u: number }): number {
  return Math.log2(bounded(m) / bounded(u));
}

const bounded = (share: number) => Math.min(1 - 1e-6, Math.max(1e-6, share));

/** How much of the rarity of a value each level of agreement can claim; the others none. */
const rarityClaim: Readonly<Record<string, number>> = {
  exact: 1,
  same: 1,
  variant: 1,
  'one slip': 0.5,
  close: 0.5,
  near: 0.5,
  sound: 0.5,
};

/**
 * Bits to add to the weight of a level because the values that agree are rarer, or commoner, than values of the field
 * are on average: log₂(average ÷ share). `average` is the chance that two people agree exactly (the sum of the squared
 * shares), so that an exact agreement ends at log₂(m ÷ share). Of two shares the larger counts, and none below `least`.
 */
export function rarityBits(
  level: string,
  shares: readonly [number, number],
  average: number,
  least: number,
): number {
  const claim = rarityClaim[level] ?? 0;
  return claim === 0 ? 0 : claim * Math.log2(bounded(average) / Math.max(least, shares[0], shares[1]));
}

/** The share of `rarityBits` that a level can claim: 0 to 1. */
export function rarityClaimOf(level: string): number {
  return rarityClaim[level] ?? 0;
}

/** Log₂ odds of a probability: log₂(p/(1 − p)). */
export function oddsBits(probability: number): number {
  return Math.log2(probability / (1 - probability));
}

/** The probability of log₂ odds: 2^M/(1 + 2^M). */
export function probabilityOf(bits: number): number {
  return 1 / (1 + 2 ** -bits);
}

/**
 * The prior log₂ odds that two rows are one person, before anything is compared: of `matches` true pairs expected
 * among `pairs`. One match among N candidates is `priorBits(1, N)`, that is −log₂(N − 1).
 */
export function priorBits(matches: number, pairs: number): number {
  return oddsBits(Math.min(1 - 1e-9, Math.max(1e-15, matches / pairs)));
}

/** Among `candidates` people, how many are expected to agree by chance in independent traits of these shares. */
export function expectedByChance(candidates: number, shares: readonly number[]): number {
  return shares.reduce((product, share) => product * share, candidates);
}

/** The chance that at least one of the candidates does: 1 − (1 − p)^N. */
export function anyByChance(candidates: number, shares: readonly number[]): number {
  return -Math.expm1(candidates * Math.log1p(-shares.reduce((product, share) => product * share, 1)));
}

/**
 * The weight a pair must reach for a wanted probability, when `matches` true pairs are expected among the pairs of two
 * files: log₂(P/(1 − P)) − log₂(E/(A·B − E)).
 */
export function weightForProbability(probability: number, matches: number, pairs: number): number {
  return oddsBits(probability) - Math.log2(matches / (pairs - matches));
}

/**
 * The chance that two different rows have the same value, when each value stands in so many rows: the pairs that agree
 * among all pairs.
 */
export function agreementByChance(counts: readonly number[]): number {
  const rows = counts.reduce((sum, count) => sum + count, 0);
  return counts.reduce((sum, count) => sum + count * (count - 1), 0) / (rows * (rows - 1));
}
