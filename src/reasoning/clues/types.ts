/** What names in a family hint at. A clue is never evidence until the author makes one of it. */
import type { ClueChance, ClueKind, ClueSaid } from '../../model/clue-said.ts';

export interface Clue {
  kind: ClueKind;
  /** What was noticed, from which each language makes its sentences. */
  said: ClueSaid;
  /** How often as much would be met by accident, where that can be reckoned. */
  chance?: ClueChance;
  /** As much is likely enough by accident. */
  weak: boolean;
  /** Mentions in which it was noticed (`record#mention`), first the telling one. */
  refs: string[];
  /** People of the family it is about. */
  people: string[];
  /** Items of the case's evidence that use the telling mentions: then it is weighed already. */
  evidence: string[];
}

/** From such a chance on a clue is weak; from the second on it is none. */
export const weakFrom = 0.25;
export const noneFrom = 0.9;

/** A clue as the single questions find it, before the case is looked at. */
export type Found = Omit<Clue, 'weak' | 'evidence'> & {
  /** Mentions that make the clue: an item of evidence that uses one of them has weighed it. */
  telling: string[];
};
