/** The clues of a case for the pages. They are never evidence until the author makes one of them evidence. */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import { gather } from '../model/multimap.ts';
import { cluesOf } from '../reasoning/clues/clues.ts';
import type { Clue, ClueKind } from '../reasoning/clues/types.ts';

export interface ClueView extends Clue {
  /** Mentions left out of `refs`, which holds the first few. */
  moreRefs: number;
}

const labels: Readonly<Record<ClueKind, string>> = {
  'middle-name': 'Surnames as middle names',
  forename: 'Surnames as forenames',
  'repeated-name': 'Given names that come back',
  'naming-custom': 'The custom of naming',
  witness: 'Witnesses and sponsors',
  mother: 'Mothers of two maiden names',
};

/** Mentions shown of one clue. */
const mostRefs = 6;

/** The clues in the family of a case's subject, the telling first; of a family with very many, the first `mostClues`. */
export function clueViews(facts: Facts, c: Case): ClueView[] {
  return cluesOf(facts, c).clues.map((clue) => ({
    ...clue,
    refs: clue.refs.slice(0, mostRefs),
    moreRefs: Math.max(0, clue.refs.length - mostRefs),
  }));
}

export interface ClueGroup {
  /** What kind of clue, in a few words. */
  label: string;
  /** Why such a thing may mean something, where all clues of the kind share the reason. */
  because: string;
  clues: ClueView[];
}

/** Clues by kind, the kind with the most telling one first. */
export function clueGroups(clues: readonly ClueView[]): ClueGroup[] {
  const groups = new Map<ClueKind, ClueView[]>();
  for (const clue of clues) gather(groups, clue.kind, clue);
  return [...groups].map(([kind, all]) => ({
    label: labels[kind],
    because: all.every(({ because }) => because === all[0]!.because) ? all[0]!.because : '',
    clues: all,
  }));
}
