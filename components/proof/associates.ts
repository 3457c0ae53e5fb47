/** The associates that matter to a case: those who come back beside the subject’s family and may say from where. */
import type { AssociateView } from '../../src/dossier/associates.ts';
import type { CaseView, Dossier } from '../../src/dossier/types.ts';

export interface AssociatesOfCase {
  /** The family’s name, and the id of its page. */
  family: string;
  id: string;
  /** Those shown, and how many more come back. */
  shown: readonly AssociateView[];
  left: number;
}

/** So many are shown; the page of the family has the others. */
const most = 8;

/** Below this chance, coming back is hard to put down to accident (our own line, for want of a published one). */
const rare = 1 / 20;

/**
 * Of those who come back beside the subject’s family, the ones of whom a record says where they came from or whom
 * accident hardly explains; leads first, then those with an origin, otherwise the most telling. Null where there are
 * none.
 */
export function associatesOfCase(dossier: Dossier, view: CaseView): AssociatesOfCase | null {
  const family = dossier.associates.families.find(({ subjects }) => subjects.includes(view.case.subject));
  if (!family) return null;
  const matters = family.associates.filter(({ origins, odds }) => origins.length > 0 || odds < rare);
  const rank = ({ leads, origins }: AssociateView) => (leads ? 0 : origins.length > 0 ? 1 : 2);
  const shown = matters.sort((a, b) => rank(a) - rank(b)).slice(0, most);
  if (shown.length === 0) return null;
  return { family: family.name, id: family.id, shown, left: family.recurring - shown.length };
}
