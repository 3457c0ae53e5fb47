/** The candidate families of a case beside the subject's own, for the pages. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';

export interface CandidateView {
  id: string;
}

/** Each candidate family of a case, compared with the family of its subject. */
export function candidateViews(_facts: Facts, c: Case): CandidateView[] {
  return c.candidates.map(({ id }) => ({ id }));
}
