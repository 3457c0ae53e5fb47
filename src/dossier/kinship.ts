/** The family of a case's subject for the pages: how each is related, and which lines are still untraced. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';

export interface KinshipView {
  /** Everyone joined to the subject. */
  kin: { person: string }[];
}

/** The kin of a case's subject as pages show them. */
export function kinshipView(_facts: Facts, _c: Case): KinshipView {
  return { kin: [] };
}
