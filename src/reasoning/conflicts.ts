/** Which items speak against the concluded place, and whether the author has answered them. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { containmentOf } from './containment.ts';
import type { Item } from './items.ts';
import type { ConflictResult } from './types.ts';

/** Every conflicting item of the case, cited or not, in file order. */
export function conflictsOf(facts: Facts, c: Case, place: string, items: readonly Item[]): ConflictResult[] {
  return items.filter((item) => conflicts(facts, item, place)).map((item) => answer(facts, c, item));
}

function conflicts(facts: Facts, item: Item, place: string): boolean {
  const { within, overlap } = containmentOf(facts);
  const { evidence } = item;
  if (evidence.kind === 'negative') return evidence.against !== undefined && within(place, evidence.against);
  const read = evidence.place;
  return (
    item.onQuestion &&
    read !== undefined &&
    !within(read, place) &&
    !within(place, read) &&
    !overlap(read, place)
  );
}

function answer(facts: Facts, c: Case, item: Item): ConflictResult {
  const resolved = c.conflicts.findIndex((conflict) => conflict.evidence === item.id);
  if (resolved >= 0) return { evidence: item.id, answered: true, by: { kind: 'conflicts', index: resolved } };
  const { kind, place } = item.evidence;
  if (kind !== 'negative' && place !== undefined) {
    const index = c.rejected.findIndex((rejected) => containmentOf(facts).within(place, rejected.place));
    if (index >= 0) return { evidence: item.id, answered: true, by: { kind: 'rejected', index } };
  }
  return { evidence: item.id, answered: false };
}
