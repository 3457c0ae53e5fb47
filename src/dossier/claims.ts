/**
 * What the author of a case claims, one claim to each thing that a reviewer should agree with or not, beside the
 * computed points. An id stays the same while the claim is there: it names what the claim is about, never a place in
 * a list.
 */
import type { Case } from '../model/case.ts';
import type { CaseResult } from '../reasoning/types.ts';

export type Claim = { id: string } & (
  | { kind: 'conclusion' | 'hypothesis'; place: string }
  /** A cited item: that it says what it is said to, is read rightly, and is about the subject or joined to them. */
  | { kind: 'item'; item: string }
  /** An argument for the independence of items, by its place in the case. */
  | { kind: 'independence'; index: number; between: readonly string[] }
  /** The answer to a conflict, by its place in the case. */
  | { kind: 'conflict'; index: number; evidence: string | undefined; about: string | undefined }
  | { kind: 'rejected'; index: number; place: string }
  | { kind: 'candidate'; candidate: string }
);

/** The claims of a case, in the order of its proof page. */
export function claimsOf(c: Case): Claim[] {
  const answer = c.conclusion ?? c.hypothesis;
  const kind = c.conclusion ? 'conclusion' : 'hypothesis';
  const cited = answer?.cites ?? c.evidence.map(({ id }) => id);
  const claims: Claim[] = [
    ...(answer ? [{ id: kind, kind, place: answer.place } as const] : []),
    ...c.evidence
      .filter(({ id }) => cited.includes(id))
      .map(({ id }) => ({ id: `item-${id}`, kind: 'item', item: id }) as const),
    ...c.independence.map(
      ({ between }, index) =>
        ({
          id: `independence-${between.toSorted().join('-')}`,
          kind: 'independence',
          index,
          between,
        }) as const,
    ),
    ...c.conflicts.map(
      ({ evidence, about, between = [] }, index) =>
        ({
          id: ['conflict', evidence ?? about ?? '', ...between.toSorted()].filter(Boolean).join('-'),
          kind: 'conflict',
          index,
          evidence,
          about,
        }) as const,
    ),
    ...c.rejected.map(
      ({ place }, index) => ({ id: `rejected-${place}`, kind: 'rejected', index, place }) as const,
    ),
    ...c.candidates.map(({ id }) => ({ id: `candidate-${id}`, kind: 'candidate', candidate: id }) as const),
  ];
  const seen = new Set<string>();
  // Two arguments about the same items are one point to a reviewer.
  return claims.filter(({ id }) => !seen.has(id) && seen.add(id));
}

/** Everything a reviewer can answer: the computed points, then the claims. */
export function answerable(c: Case, result: Pick<CaseResult, 'points'>): string[] {
  return [...result.points.map(({ point }) => point), ...claimsOf(c).map(({ id }) => id)];
}
