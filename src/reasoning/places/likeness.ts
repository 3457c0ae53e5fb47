/**
 * How like two spellings are when slips of the ear and of the pen are cheap and other changes are dear. An edit
 * distance with weights, in time of the product of the two lengths, which callers keep short. The weights are
 * *common practice* of reading old hands (u for n, rn for m, a for o, long s for f) and were checked on generated
 * misreadings.
 */

const vowel = new Uint8Array(128);
for (const letter of 'aeiouy') vowel[letter.charCodeAt(0)] = 1;

/** Letters taken for one another, by eye or by ear. */
const confused = new Uint8Array(128 * 128);
for (const pair of 'un lt ao ce hb fs rv rn vn nm kt tl sf bv td kg gk bp dt ck cg kh lk iu mn ie ri vu vr ei eo hk il nr dl oc hn mv gy fv rs uv'.split(
  ' ',
)) {
  const a = pair.charCodeAt(0);
  const b = pair.charCodeAt(1);
  confused[a * 128 + b] = 1;
  confused[b * 128 + a] = 1;
}

const longestCompared = 64;
const rows = [0, 1, 2].map(() => new Float64Array(longestCompared + 1));

/** What it costs to write one letter for another, and to lose one; letters beyond ASCII stand at 127. */
const changes = new Float64Array(128 * 128).fill(1);
const losses = new Float64Array(128).fill(0.75);
for (let a = 0; a < 127; a++) {
  if (vowel[a]) losses[a] = 0.45;
  for (let b = 0; b < 127; b++) {
    const at = a * 128 + b;
    changes[at] = a === b ? 0 : vowel[a] && vowel[b] ? 0.35 : confused[at] ? 0.55 : 1;
  }
}
losses['h'.charCodeAt(0)] = 0.3;

const second = new Uint16Array(longestCompared + 1);

/** The weighted number of slips between two spellings; past 64 letters the rest is not looked at. */
export function slips(a: string, b: string): number {
  const m = Math.min(a.length, longestCompared);
  const n = Math.min(b.length, longestCompared);
  let [before, last, next] = rows as [Float64Array, Float64Array, Float64Array];
  last[0] = 0;
  for (let j = 1; j <= n; j++) {
    const y = b.charCodeAt(j - 1);
    second[j] = y;
    last[j] = last[j - 1]! + losses[y < 127 ? y : 127]!;
  }
  for (let i = 1, w = 0; i <= m; i++) {
    const x = a.charCodeAt(i - 1);
    const column = x < 127 ? x : 127;
    const drop = losses[column]!;
    next[0] = last[0]! + drop;
    for (let j = 1; j <= n; j++) {
      const y = second[j]!;
      const row = y < 127 ? y : 127;
      let best = last[j - 1]! + (x === y ? 0 : changes[column * 128 + row]!);
      const dropped = last[j]! + drop;
      if (dropped < best) best = dropped;
      const added = next[j - 1]! + losses[row]!;
      if (added < best) best = added;
      if (y === w && i > 1 && j > 1 && x === second[j - 1]) {
        const swapped = before[j - 2]! + 0.6;
        if (swapped < best) best = swapped;
      }
      next[j] = best;
    }
    w = x;
    [before, last, next] = [last, next, before];
  }
  return last[n]!;
}

/** From 0 to 1: 1 for equal spellings, 0 where nothing is left of one in the other. */
export function likeness(a: string, b: string): number {
  const length = Math.max((a.length + b.length) / 2, 4);
  return Math.max(0, 1 - slips(a, b) / length);
}
