/** A small seeded generator of pseudo-random numbers (mulberry32), so that generated content is the same everywhere. */
export interface Random {
  /** A whole number from 0 up to, not including, n. */
  below(n: number): number;
  pick<T>(values: readonly T[]): T;
  chance(probability: number): boolean;
}

export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    below: (n) => Math.floor(next() * n),
    pick: (values) => values[Math.floor(next() * values.length)]!,
    chance: (p) => next() < p,
  };
}
