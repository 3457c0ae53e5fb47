/**
 * Names by the pairs of letters in their sounds, for finding those that share most with a spelling. One is kept for
 * the whole gazetteer, and one for each region that readings name, so that a reading with its county looks through
 * the names of that county only, and through all of them.
 */

export interface PairIndex {
  /** Positions of names in the gazetteer. */
  names: Int32Array;
  /** For each pair of letters: which of `names` have it. */
  pairs: readonly Int32Array[];
  /** How many different pairs each of `names` has. */
  counts: Uint8Array;
  /** Room to count in: zero between looks. */
  shared: Uint8Array;
  touched: Int32Array;
}

/** How many entries of its lists one look may read: it bounds the time whatever the gazetteer holds. */
const budget = 40_000;

/** The least proportion of letter pairs that a near name shares. */
const leastShared = 0.34;

/** The pairs of letters of a sound, with its start and end, as numbers below 784. */
export function pairsOf(sound: string): number[] {
  const pairs: number[] = [];
  const add = (pair: number) => {
    if (!pairs.includes(pair)) pairs.push(pair);
  };
  let before = 27;
  for (let i = 0; i < sound.length && i < 60; i++) {
    const code = sound.charCodeAt(i) - 97;
    const letter = code >= 0 && code < 26 ? code : 26;
    add(before * 28 + letter);
    before = letter;
  }
  add(before * 28 + 27);
  return pairs;
}

/** An index of some names of a gazetteer, given by their positions; `soundAt` tells the sound of each. */
export function pairIndexOf(names: readonly number[], soundAt: (name: number) => string): PairIndex {
  const pairs: number[][] = Array.from({ length: 28 * 28 }, () => []);
  const counts = new Uint8Array(names.length);
  names.forEach((name, n) => {
    const own = pairsOf(soundAt(name));
    counts[n] = own.length;
    for (const pair of own) pairs[pair]!.push(n);
  });
  return {
    names: Int32Array.from(names),
    pairs: pairs.map((list) => (list.length === 0 ? none : Int32Array.from(list))),
    counts,
    shared: new Uint8Array(names.length),
    touched: new Int32Array(names.length),
  };
}

const none = new Int32Array(0);

/** The names of an index that share most pairs of letters with a sound, at most `limit` that `wanted` lets through. */
export function sharing(
  index: PairIndex,
  sound: string,
  limit: number,
  wanted: (name: number) => boolean,
): number[] {
  const { shared, touched, counts, names } = index;
  const pairs = pairsOf(sound)
    .map((pair) => index.pairs[pair]!)
    .sort((a, b) => a.length - b.length);
  let many = 0;
  let left = budget;
  let used = 0;
  for (const list of pairs) {
    if (list.length > left && used >= 3) break;
    const upTo = Math.min(list.length, left);
    for (let i = 0; i < upTo; i++) {
      const n = list[i]!;
      const count = shared[n]!;
      if (count === 0) touched[many++] = n;
      shared[n] = count + 1;
    }
    left -= upTo;
    used++;
  }
  // The commonest pairs tell least and are left unread where they would cost too much: then a share of a share counts.
  const read = used / pairs.length;
  const least = Math.ceil((leastShared / 2) * (pairs.length + 3) * read);
  const buckets: number[][] = Array.from({ length: 21 }, () => []);
  for (let i = 0; i < many; i++) {
    const n = touched[i]!;
    const count = shared[n]!;
    shared[n] = 0;
    if (count < least) continue;
    const part = (2 * count) / read / (pairs.length + counts[n]!);
    if (part >= leastShared) buckets[Math.min(20, Math.floor(part * 20))]!.push(names[n]!);
  }
  const result: number[] = [];
  let looked = 0;
  for (let b = 20; b >= 0; b--)
    for (const name of buckets[b]!) {
      if (result.length >= limit || ++looked > 4000) return result;
      if (wanted(name)) result.push(name);
    }
  return result;
}
