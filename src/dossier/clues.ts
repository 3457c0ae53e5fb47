/** The clues of a case for the pages. They are never evidence until the author makes one of them evidence. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { cluesOf } from '../reasoning/clues/clues.ts';
import type { Clue, ClueKind } from '../reasoning/clues/types.ts';

export interface ClueView extends Clue {
  /** What kind of clue, in a few words. */
  label: string;
  /** Mentions left out of `refs`, which holds the first few. */
  moreRefs: number;
}

const labels: Readonly<Record<ClueKind, string>> = {
  'middle-name': 'A surname as a middle name',
  forename: 'A surname as a forename',
  'repeated-name': 'A name that comes back',
  'naming-custom': 'The custom of naming',
  witness: 'A witness’s or sponsor’s surname',
  mother: 'Two maiden names',
};

/** Mentions shown of one clue. */
const mostRefs = 6;

/** The clues in the family of a case's subject, the telling first; of a family with very many, the first `mostClues`. */
export function clueViews(facts: Facts, c: Case): ClueView[] {
  return cluesOf(facts, c).clues.map((clue) => ({
    ...clue,
    label: labels[clue.kind],
    refs: clue.refs.slice(0, mostRefs),
    moreRefs: Math.max(0, clue.refs.length - mostRefs),
  }));
}
