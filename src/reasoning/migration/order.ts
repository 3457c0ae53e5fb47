/**
 * What standing side by side on a list says.
 *
 * Rules. A list sorted by surname puts strangers of one name together, so its order says nothing beside the name. In a
 * random order as many neighbours rise as fall: the number of falls has mean (n − 1)/2 and variance (n + 1)/12 (the
 * Eulerian numbers; D. E. Knuth, The Art of Computer Programming 3, §5.1, from memory). In a list as people embarked,
 * what neighbours have in common more often than entries a page apart is the mark of parties (common practice); how
 * much more is learned from the list itself, and only a short list is judged by what lists usually are.
 */

/** Farther apart than this, entries are not taken for neighbours. */
export const nearby = 6;

/** The share of neighbours at each distance that belong together, where a list is too short to tell (our estimate). */
const usual = [0.34, 0.24, 0.17, 0.12, 0.08, 0.06];

/** So many pairs the usual shares are worth beside what is counted. */
const pseudoPairs = 8;

/** Neighbours at these distances stand for strangers of the same page. */
const apart = { from: 12, to: 30 };

/** At most this share: standing side by side alone never makes a party. */
const most = 0.45;

/** Whether names stand in order, by their first letters at least: far more rise than chance would give. */
export function isAlphabetical(names: readonly (string | undefined)[]): boolean {
  const known = names.filter((name) => name !== undefined && name !== '') as string[];
  let rises = 0;
  let falls = 0;
  for (let i = 1; i < known.length; i++) {
    const [a, b] = [known[i - 1]!.charAt(0), known[i]!.charAt(0)];
    if (a < b) rises++;
    else if (a > b) falls++;
  }
  const steps = rises + falls;
  // Short of eight letters even a perfect order may be an accident; a sorted list has few steps, but no falls.
  if (steps < 5) return false;
  return rises >= 0.8 * steps && (rises - falls) / 2 / Math.sqrt((steps + 2) / 12) > 3;
}

/**
 * The share of neighbours at distance 1, 2 … `nearby` that belong together. `alike` says whether two entries, by
 * position, share something telling; `cover` is how often two of one party do.
 */
export function neighbourShares(
  count: number,
  alike: (i: number, j: number) => boolean,
  cover = 0.75,
): number[] {
  const rate = (from: number, to: number): { share: number; pairs: number } => {
    let pairs = 0;
    let agreeing = 0;
    for (let d = from; d <= to; d++)
      for (let i = 0; i + d < count; i++) {
        pairs++;
        if (alike(i, i + d)) agreeing++;
      }
    return { share: pairs === 0 ? 0 : agreeing / pairs, pairs };
  };
  const far = rate(apart.from, apart.to);
  const shares: number[] = [];
  for (let d = 1; d <= nearby; d++) {
    const near = rate(d, d);
    const learned = far.pairs === 0 ? 0 : (near.share - far.share) / Math.max(0.05, 1 - far.share) / cover;
    const pairs = far.pairs === 0 ? 0 : near.pairs;
    const share = (Math.max(0, learned) * pairs + usual[d - 1]! * pseudoPairs) / (pairs + pseudoPairs);
    shares.push(Math.min(most, share, shares[d - 2] ?? 1));
  }
  return shares;
}
