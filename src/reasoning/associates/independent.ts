/**
 * Records that are not copies of one another. Rule (the content contract on derivation; common practice): a record and
 * whatever derives from it, certainly or perhaps, are one observation, and so are two copies of one exemplar.
 */
import type { Facts } from '../../model/facts.ts';
import { lineageOf } from '../derivation.ts';

/**
 * Of these records as many as share no lineage with one another, exemplars before copies, by id; `standsFor` says for
 * each record given which of them it belongs to (of several, the first).
 */
export function independentOf(
  facts: Facts,
  records: Iterable<string>,
): { chosen: string[]; standsFor: ReadonlyMap<string, string> } {
  const ids = [...new Set(records)];
  if (ids.length === 1) return { chosen: ids, standsFor: new Map([[ids[0]!, ids[0]!]]) };
  const all = ids.map((id) => {
    const { certain, perhaps } = lineageOf(facts, id);
    return { id, lineage: perhaps.size === 0 ? certain : new Set([...certain, ...perhaps]) };
  });
  all.sort((a, b) => a.lineage.size - b.lineage.size || (a.id < b.id ? -1 : 1));
  const taken = new Map<string, string>();
  const chosen: string[] = [];
  const standsFor = new Map<string, string>();
  for (const { id, lineage } of all) {
    let other: string | undefined;
    for (const one of lineage) {
      other = taken.get(one);
      if (other !== undefined) break;
    }
    if (other === undefined) {
      chosen.push(id);
      for (const one of lineage) taken.set(one, id);
    }
    standsFor.set(id, other ?? id);
  }
  return { chosen, standsFor };
}
