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

function change(a: number, b: number): number {
  if (a === b) return 0;
  if (a > 127 || b > 127) return 1;
  if (vowel[a] && vowel[b]) return 0.35;
  return confused[a * 128 + b] ? 0.55 : 1;
}

const loss = (letter: number) => (letter < 128 && vowel[letter] ? 0.45 : letter === 104 ? 0.3 : 0.75);

/** The weighted number of slips between two spellings; past 64 letters the rest is not looked at. */
export function slips(a: string, b: string): number {
  const m = Math.min(a.length, longestCompared);
  const n = Math.min(b.length, longestCompared);
  let [before, last, next] = rows as [Float64Array, Float64Array, Float64Array];
  last[0] = 0;
  for (let j = 1; j <= n; j++) last[j] = last[j - 1]! + loss(b.charCodeAt(j - 1));
  for (let i = 1; i <= m; i++) {
    const x = a.charCodeAt(i - 1);
    next[0] = last[0]! + loss(x);
    for (let j = 1; j <= n; j++) {
      const y = b.charCodeAt(j - 1);
      let best = last[j - 1]! + change(x, y);
      const dropped = last[j]! + loss(x);
      if (dropped < best) best = dropped;
      const added = next[j - 1]! + loss(y);
      if (added < best) best = added;
      if (i > 1 && j > 1 && x === b.charCodeAt(j - 2) && y === a.charCodeAt(i - 2)) {
        const swapped = before[j - 2]! + 0.6;
        if (swapped < best) best = swapped;
      }
      next[j] = best;
    }
    [before, last, next] = [last, next, before];
  }
  return last[n]!;
}

/** From 0 to 1: 1 for equal spellings, 0 where nothing is left of one in the other. */
export function likeness(a: string, b: string): number {
  const length = Math.max((a.length + b.length) / 2, 4);
  return Math.max(0, 1 - slips(a, b) / length);
}
