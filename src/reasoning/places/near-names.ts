/** Which names of a gazetteer a spelling may stand for: the same word, elements or sound, or many letters in common. */
import { likeness } from './likeness.ts';
import { pairsOf, type Gazetteer } from './gazetteer.ts';
import type { PlaceName } from './name.ts';

/** How a spelling agrees with a known name, best first. */
export type Agreement = 'same' | 'elements' | 'sound' | 'near';

export interface NearName {
  /** Position in the gazetteer’s names. */
  name: number;
  likeness: number;
  agreement: Agreement;
}

/** How many entries of the lists of letter pairs one look may read: it bounds the time whatever the gazetteer holds. */
const budget = 60_000;

interface Scratch {
  counts: Uint8Array;
}
const scratches = new WeakMap<Gazetteer, Scratch>();

/** How like a spelling is to one known name. */
export function agree(gazetteer: Gazetteer, said: PlaceName, name: number): NearName {
  const known = gazetteer.names[name]!;
  if (known.joined === said.joined) return { name, likeness: 1, agreement: 'same' };
  const letters = likeness(said.joined, known.joined);
  if (known.elements === said.elements)
    return { name, likeness: 0.94 + 0.04 * letters, agreement: 'elements' };
  if (known.sound === said.sound) return { name, likeness: 0.93 + 0.04 * letters, agreement: 'sound' };
  const heard = Math.max(likeness(said.sound, known.sound), likeness(said.elements, known.elements));
  return { name, likeness: Math.min(0.95, 0.55 * heard + 0.45 * letters), agreement: 'near' };
}

/**
 * Names near a spelling, unsorted: every exact one, and of the others the `limit` that share most letter pairs, among
 * those that `wanted` lets through.
 */
export function nearNames(
  gazetteer: Gazetteer,
  said: PlaceName,
  limit: number,
  wanted: (name: number) => boolean,
): NearName[] {
  const found = new Map<number, NearName>();
  const add = (name: number) => {
    if (!found.has(name)) found.set(name, agree(gazetteer, said, name));
  };
  const same = gazetteer.exact.get(said.joined);
  if (same !== undefined) add(same);
  for (const list of [gazetteer.byElements.get(said.elements), gazetteer.bySound.get(said.sound)])
    for (const name of list?.slice(0, 200) ?? []) add(name);
  for (const name of sharing(gazetteer, said.sound, limit, wanted)) add(name);
  return [...found.values()];
}

/** The names that share most pairs of letters with a sound, by the proportion they share. */
function sharing(
  gazetteer: Gazetteer,
  sound: string,
  limit: number,
  wanted: (name: number) => boolean,
): number[] {
  let scratch = scratches.get(gazetteer);
  if (!scratch) scratches.set(gazetteer, (scratch = { counts: new Uint8Array(gazetteer.names.length) }));
  const { counts } = scratch;
  const pairs = pairsOf(sound.slice(0, 60))
    .map((pair) => gazetteer.pairs[pair]!)
    .sort((a, b) => a.length - b.length);
  const touched: number[] = [];
  let left = budget;
  for (const list of pairs) {
    const upTo = Math.min(list.length, left);
    for (let i = 0; i < upTo; i++) {
      const name = list[i]!;
      if (counts[name] === 0) touched.push(name);
      counts[name]!++;
    }
    left -= upTo;
    if (left <= 0) break;
  }
  const buckets: number[][] = Array.from({ length: 41 }, () => []);
  for (const name of touched) {
    const count = counts[name]!;
    counts[name] = 0;
    if (count < 2 && pairs.length > 4) continue;
    const shared = (2 * count) / (pairs.length + gazetteer.names[name]!.sound.length + 1);
    if (shared >= 0.28) buckets[Math.min(40, Math.floor(shared * 40))]!.push(name);
  }
  const result: number[] = [];
  for (let b = 40; b >= 0 && result.length < limit; b--)
    for (const name of buckets[b]!)
      if (wanted(name)) {
        result.push(name);
        if (result.length >= limit) break;
      }
  return result;
}
