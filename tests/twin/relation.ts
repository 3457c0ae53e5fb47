/** Whether two items are dependent, undetermined or independent, clause by clause. */
import type { Case, Evidence } from '../../src/model/case.ts';
import type { Facts } from '../../src/model/facts.ts';
import { derivesAtAll, exemplars, mentionsOf, recordsOf } from './records.ts';
import { merged, rootsOfMention } from './roots.ts';
import type { TwinRoot } from './roots.ts';

export type Relation = 'dependent' | 'undetermined' | 'independent';

export function relation(
  facts: Facts,
  roots: Record<string, TwinRoot[]>,
  a: Evidence,
  b: Evidence,
): Relation {
  const ofA = recordsOf(facts, a);
  const ofB = recordsOf(facts, b);
  const rootsA = roots[a.id] ?? [];
  const rootsB = roots[b.id] ?? [];
  const shared = rootsA.flatMap((x) =>
    rootsB.filter((y) => y.key === x.key).map((y): [TwinRoot, TwinRoot] => [x, y]),
  );
  const isUnknown = (root: TwinRoot) => root.key.startsWith('unknown:');

  // Dependent: one record in common; one derives from the other; both derive from one.
  if (ofA.some((x) => ofB.includes(x))) return 'dependent';
  if (ofA.some((x) => ofB.some((y) => exemplars(facts, x).includes(y) || exemplars(facts, y).includes(x))))
    return 'dependent';
  if (ofA.some((x) => ofB.some((y) => exemplars(facts, x).some((z) => exemplars(facts, y).includes(z)))))
    return 'dependent';
  // A root known for both, or the unknown root of one record that both reach without `perhaps`.
  if (shared.some(([x, y]) => (isUnknown(x) ? !x.viaPerhaps && !y.viaPerhaps : x.known && y.known)))
    return 'dependent';

  // Undetermined: an unknown root on either side; a shared root; a chain with `perhaps` in it; a volume in common.
  if (rootsA.some(isUnknown) || rootsB.some(isUnknown)) return 'undetermined';
  if (shared.length > 0) return 'undetermined';
  if (
    ofA.some((x) => ofB.some((y) => derivesAtAll(facts, x).includes(y) || derivesAtAll(facts, y).includes(x)))
  )
    return 'undetermined';
  const volumes = (records: string[]) =>
    records.flatMap((x) => [x, ...derivesAtAll(facts, x)]).flatMap((x) => facts.records.get(x)?.volume ?? []);
  if (volumes(ofA).some((volume) => volumes(ofB).includes(volume))) return 'undetermined';

  return 'independent';
}

/** An argument speaks for every pair of those it lists. */
export function isArgued(kase: Case, a: Evidence, b: Evidence): boolean {
  return kase.independence.some(({ between }) => between.includes(a.id) && between.includes(b.id));
}

/** An item from several mentions has the roots of all of them; one from a search has none. */
export function rootsOfItem(facts: Facts, item: Evidence): TwinRoot[] {
  return merged(mentionsOf(item).map((ref) => rootsOfMention(facts, ref, item.states)));
}
