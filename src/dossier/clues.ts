/** The clues of a case for the pages. They are never evidence until the author makes one of them evidence. */
import type { ClueTold } from '../interface/en/clues.ts';
import type { Wording } from '../interface/index.ts';
import type { Case } from '../model/case.ts';
import type { ClueKind } from '../model/clue-said.ts';
import type { Facts } from '../model/facts.ts';
import { gather } from '../model/multimap.ts';
import { cluesOf } from '../reasoning/clues/clues.ts';
import type { Clue } from '../reasoning/clues/types.ts';

/** A clue with its sentences in the language of the site. */
export interface ClueView extends Omit<Clue, 'said' | 'chance'>, ClueTold {
  /** Mentions left out of `refs`, which holds the first few. */
  moreRefs: number;
}

/** Mentions shown of one clue. */
const mostRefs = 6;

/** The clues in the family of a case's subject, the telling first; of a family with very many, the first `mostClues`. */
export function clueViews(facts: Facts, c: Case, wording: Wording): ClueView[] {
  return cluesOf(facts, c).clues.map(({ said, chance: _, ...clue }) => ({
    ...clue,
    ...wording.clues.told(said),
    refs: clue.refs.slice(0, mostRefs),
    moreRefs: Math.max(0, clue.refs.length - mostRefs),
  }));
}

export interface ClueGroup {
  kind: ClueKind;
  /** Why such a thing may mean something, where all clues of the kind share the reason. */
  because: string;
  clues: ClueView[];
}

/** Clues by kind, the kind with the most telling one first. */
export function clueGroups(clues: readonly ClueView[]): ClueGroup[] {
  const groups = new Map<ClueKind, ClueView[]>();
  for (const clue of clues) gather(groups, clue.kind, clue);
  return [...groups].map(([kind, all]) => ({
    kind,
    because: all.every(({ because }) => because === all[0]!.because) ? all[0]!.because : '',
    clues: all,
  }));
}
