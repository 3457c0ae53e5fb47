/** What names in a family hint at. A clue is never evidence until the author makes one of it. */

export type ClueKind = 'middle-name' | 'forename' | 'repeated-name' | 'naming-custom' | 'witness' | 'mother';

export interface Clue {
  kind: ClueKind;
  /** What was noticed, in a sentence. */
  says: string;
  /** Why it may mean something, in a sentence. */
  because: string;
  /** What to ask next, in a sentence. */
  suggests: string;
  /** How often as much would be met by accident. */
  chance?: {
    /** How many such things are expected where nothing is behind them. */
    expected: number;
    /** The chance of meeting as many or more by accident, 0 to 1. */
    probability: number;
    because: string;
  };
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
