/**
 * How alike two spellings are, by the letters they share in nearly the same order.
 *
 * Rule: M. A. Jaro, Journal of the American Statistical Association 84 (1989) 414–420; W. E. Winkler, Proceedings of
 * the Section on Survey Research Methods (1990), with the usual p = 0.1 over at most four letters.
 *
 * The library jaro-winkler 0.2.8 (MIT, no dependencies) gives every value of the published table (W. E. Winkler,
 * RR94/05, table 2.1) that follows from the formula. Of the others tried, @skyra/jaro-winkler 1.1.1 does not (ITMAN and
 * SMITH 0.622 instead of 0.467, MASSEY and MASSIE 0.944 instead of 0.933); talisman 1.1.4 and natural 8.1.1 do, but
 * the first rounds half transpositions down and brings six packages along, the second fifty. As in Winkler's own
 * comparator the bonus is given above a Jaro value of 0.7 only.
 *
 * What is added here: the same answer whichever name comes first, and texts cut to a length that no name has, since
 * the work grows with the square of it.
 */
import similarity from 'jaro-winkler';

/** Code units that are compared; the rest of a longer text is left out of account. */
export const comparedLength = 64;

/** Bonus for each letter of a common beginning, and how many letters at most. */
const bonus = 0.1;
const longestBeginning = 4;
const bonusAbove = 0.7;

/**
 * Jaro–Winkler similarity of two texts, 0 (nothing shared) to 1 (equal); two empty texts are equal. Case and accents
 * count: fold first. Symmetric.
 */
export function jaroWinkler(a: string, b: string): number {
  if (a === b) return 1;
  const one = a.length > comparedLength ? a.slice(0, comparedLength) : a;
  const other = b.length > comparedLength ? b.slice(0, comparedLength) : b;
  // Letters are paired greedily from the first text on, so that the order of the texts could change the answer.
  return one.length < other.length || (one.length === other.length && one < other)
    ? similarity(one, other)
    : similarity(other, one);
}

/** Jaro similarity of two texts, 0 to 1: the same without the bonus for a common beginning. */
export function jaro(a: string, b: string): number {
  const withBonus = jaroWinkler(a, b);
  if (withBonus <= bonusAbove || withBonus === 1) return withBonus;
  let beginning = 0;
  while (beginning < longestBeginning && beginning < a.length && a[beginning] === b[beginning]) beginning++;
  return (withBonus - bonus * beginning) / (1 - bonus * beginning);
}
