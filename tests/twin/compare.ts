/** Brings a computed case and its twin to one form, so that they can be compared whole. */
import type { CaseResult } from '../../src/reasoning/types.ts';
import type { TwinCase } from './twin.ts';

/** What the twin works out, roots in the order of their keys. */
export function fromTwin(twin: TwinCase) {
  return {
    ...twin,
    roots: Object.fromEntries(Object.entries(twin.roots).map(([id, roots]) => [id, sorted(roots)])),
  };
}

/** The same of a computed case. */
export function fromReal(result: CaseResult): ReturnType<typeof fromTwin> {
  const placed = result.place !== null;
  return {
    standing: result.standing,
    place: result.place,
    independent: result.independent,
    support: result.support.map(({ place, independent, evidence, witnesses }) => ({
      place,
      independent,
      evidence,
      witnesses,
    })),
    dependence: result.dependence,
    undetermined: result.undetermined,
    argued: result.argued,
    untied: result.untied,
    conflicts: result.conflicts.map(({ evidence, answered }) => ({ evidence, answered })),
    margin: result.margin,
    criticalRecords: result.criticalRecords,
    counting: result.items.filter((item) => item.counts).map((item) => item.id),
    holds: placed
      ? Object.fromEntries(
          result.items.map((item) => [item.id, item.tie === 'not-needed' || item.tie === 'holds']),
        )
      : {},
    roots: Object.fromEntries(result.items.map((item) => [item.id, sorted(item.roots)])),
  };
}

/** Keys in order. Whether an unknown root is called known or possible makes no difference to anything. */
function sorted(roots: readonly { key: string; known: boolean; viaPerhaps: boolean }[]) {
  return roots
    .map(({ key, known, viaPerhaps }) => ({ key, known: known && !key.startsWith('unknown:'), viaPerhaps }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
}
