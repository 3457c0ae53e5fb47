/** What should exist of a case's people, what was searched, and what to search next, for the pages. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';

export interface PlanView {
  open: { series: string }[];
}

/** The research plan of a case. */
export function planView(_facts: Facts, _c: Case): PlanView {
  return { open: [] };
}
