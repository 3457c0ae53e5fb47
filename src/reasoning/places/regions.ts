/** The names of a region, indexed when a reading first names it, and kept while there is room. */
import type { Gazetteer } from './gazetteer.ts';
import { pairIndexOf, type PairIndex } from './pair-index.ts';

/** Regions of more places than this are not indexed by themselves. */
const widest = 20_000;
/** How many names all regions kept may hold together. */
const room = 300_000;

interface Kept {
  byKey: Map<string, PairIndex | null>;
  held: number;
}
const kept = new WeakMap<Gazetteer, Kept>();

/** The index of the names of places inside any of `outer` or sharing ground with one; `null` where there are too many. */
export function regionOf(gazetteer: Gazetteer, outer: Iterable<number>): PairIndex | null {
  const cache = kept.get(gazetteer) ?? kept.set(gazetteer, { byKey: new Map(), held: 0 }).get(gazetteer)!;
  const roots = [...outer].sort((a, b) => a - b);
  const key = roots.join(' ');
  let index = cache.byKey.get(key);
  if (index === undefined) {
    const names = namesInside(gazetteer, roots);
    index = names && pairIndexOf(names, (name) => gazetteer.names[name]!.sound);
    if (cache.held > room || cache.byKey.size > 2_000) {
      cache.byKey.clear();
      cache.held = 0;
    }
    cache.byKey.set(key, index);
    cache.held += names?.length ?? 0;
  }
  return index;
}

function namesInside(gazetteer: Gazetteer, roots: readonly number[]): number[] | null {
  const { inside, overlaps, namesAt } = gazetteer;
  const seen = new Set<number>();
  const waiting = [...roots];
  for (const root of roots) waiting.push(...(overlaps.get(root) ?? []));
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    if (seen.size > widest) return null;
    for (const at of overlaps.get(next) ?? []) if (!seen.has(at)) waiting.push(at);
    for (const at of inside.get(next) ?? []) if (!seen.has(at)) waiting.push(at);
  }
  const names = new Set<number>();
  for (const at of seen) for (const name of namesAt[at]!) names.add(name);
  return [...names].sort((a, b) => a - b);
}
