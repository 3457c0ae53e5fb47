/**
 * Whether two items of evidence are independent: not by how many records there are, but by where the information in
 * them came from. *Common practice* of genealogical proof; the exact rule is the content contract's.
 */
import type { Facts } from '../model/facts.ts';
import { certainExemplars, lineageOf } from './derivation.ts';
import type { Item } from './items.ts';
import type { PairReason, Relation } from './types.ts';

/** The relation of two items before any argument of the author's, with every reason for it. */
export function relationOf(facts: Facts, a: Item, b: Item): { relation: Relation; reasons: PairReason[] } {
  const dependent = dependence(facts, a, b);
  if (dependent.length > 0) return { relation: 'dependent', reasons: dependent };
  const undetermined = doubts(facts, a, b);
  if (undetermined.length > 0) return { relation: 'undetermined', reasons: undetermined };
  return { relation: 'independent', reasons: [] };
}

function dependence(facts: Facts, a: Item, b: Item): PairReason[] {
  const reasons: PairReason[] = [];
  for (const record of nearestShared(facts, a, b)) {
    const inA = a.records.includes(record);
    const inB = b.records.includes(record);
    if (inA && inB) reasons.push({ kind: 'same-record', record });
    else if (inA) reasons.push({ kind: 'derives', from: derived(facts, b, record), to: record });
    else if (inB) reasons.push({ kind: 'derives', from: derived(facts, a, record), to: record });
    else reasons.push({ kind: 'common-exemplar', record });
  }
  for (const root of a.roots) {
    const other = b.roots.find((r) => r.key === root.key);
    if (!other) continue;
    const bothKnown = root.known && other.known;
    const sameUnknown = root.kind === 'unknown' && !root.viaPerhaps && !other.viaPerhaps;
    if (bothKnown || sameUnknown) reasons.push({ kind: 'shared-root', root });
  }
  return reasons;
}

/**
 * The records behind both items, as one meets them going up from the first. What lies above one of them is behind both
 * as well, and says nothing more.
 */
function nearestShared(facts: Facts, a: Item, b: Item): string[] {
  const found: string[] = [];
  const seen = new Set<string>();
  const queue = [...a.records];
  for (let next = 0; next < queue.length; next++) {
    const record = queue[next]!;
    if (seen.has(record)) continue;
    seen.add(record);
    if (b.exemplars.has(record)) found.push(record);
    else queue.push(...certainExemplars(facts, record));
  }
  return found;
}

function derived(facts: Facts, item: Item, exemplar: string): string {
  return item.records.find((record) => lineageOf(facts, record).certain.has(exemplar))!;
}

function doubts(facts: Facts, a: Item, b: Item): PairReason[] {
  const reasons: PairReason[] = [];
  for (const item of [a, b])
    for (const root of item.roots)
      if (root.kind === 'unknown') reasons.push({ kind: 'unknown-root', item: item.id, root });
  for (const root of a.roots) {
    const other = b.roots.find((r) => r.key === root.key);
    if (other && root.kind !== 'unknown')
      reasons.push({ kind: 'possible-root', root: root.known ? other : root });
  }
  for (const [one, two] of [
    [a, b],
    [b, a],
  ] as const)
    for (const from of one.records) {
      const { perhaps } = lineageOf(facts, from);
      for (const to of two.records) if (perhaps.has(to)) reasons.push({ kind: 'perhaps-derives', from, to });
    }
  const volumes = new Set(b.records.flatMap((record) => [...lineageOf(facts, record).volumes]));
  for (const volume of new Set(a.records.flatMap((record) => [...lineageOf(facts, record).volumes])))
    if (volumes.has(volume)) reasons.push({ kind: 'same-volume', volume });
  return reasons;
}
