/** The clues of a case for the pages. They are never evidence until the author makes one of them evidence. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';

export interface ClueView {
  /** A sentence that says what was noticed. */
  says: string;
}

/** The clues in the family of a case's subject. */
export function clueViews(_facts: Facts, _c: Case): ClueView[] {
  return [];
}
