/**
 * How often something happens by accident.
 *
 * Rule: independent trials. The number of successes has a Poisson binomial distribution (S. D. Poisson, Recherches sur
 * la probabilité des jugements, 1837); with equal chances that is the binomial distribution. For many trials of small
 * chance it is close to the Poisson distribution of the same mean: the two differ by no more than the sum of the squared
 * chances (L. Le Cam, Pacific Journal of Mathematics 10 (1960)).
 */

/** The chance that one of `tries` independent tries succeeds, each with chance `p`: 1 − (1 − p)^n. */
export function anyOf(tries: number, p: number): number {
  return p >= 1 && tries > 0 ? 1 : -Math.expm1(tries * Math.log1p(-p));
}

/** The chance that at least `k` of independent trials succeed, each with its own chance. */
export function atLeast(k: number, chances: Iterable<number>): number {
  if (k <= 0) return 1;
  // below[i]: exactly i successes so far; k or more are never left again, so only what lies below is kept.
  const below = new Float64Array(k);
  below[0] = 1;
  for (const p of chances) {
    for (let i = k - 1; i > 0; i--) below[i] = below[i]! * (1 - p) + below[i - 1]! * p;
    below[0]! *= 1 - p;
  }
  return Math.max(0, 1 - below.reduce((sum, one) => sum + one, 0));
}

/** The chance of at least `k` events where `mean` are expected, by the Poisson distribution. */
export function poissonAtLeast(k: number, mean: number): number {
  if (k <= 0) return 1;
  if (mean <= 0) return 0;
  // Summed from k upward, since 1 minus the rest would lose small chances to rounding.
  let term = Math.exp(k * Math.log(mean) - mean - logFactorial(k));
  let sum = 0;
  for (let i = k; i < k + 10_000 && (term > sum * 1e-16 || i < mean); i++) {
    sum += term;
    term *= mean / (i + 1);
  }
  return Math.min(1, sum);
}

function logFactorial(n: number): number {
  let sum = 0;
  for (let i = 2; i <= n; i++) sum += Math.log(i);
  return sum;
}
