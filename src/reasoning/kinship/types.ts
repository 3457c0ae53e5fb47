/** How one person is related to another, in plain data. */

/**
 * - `blood`: by common descent, or in the direct line;
 * - `half`: by common descent from one person, where the other parents are known and differ;
 * - `step`: a parent's spouse, a spouse's child, or the child of a parent's spouse;
 * - `in-law`: a spouse's relative by blood, or the spouse of one;
 * - `connected`: joined only through more than one marriage; no degree is counted.
 */
export type RelationshipKind = 'self' | 'spouse' | 'blood' | 'half' | 'step' | 'in-law' | 'connected';

export interface Relationship {
  /** Whose relation it is, and who is related. */
  from: string;
  to: string;
  kind: RelationshipKind;
  /** Generations from `from` up to the common ancestor and down to `to`; of affinity, those of the blood relation. */
  up: number;
  down: number;
  /** Degree by the civil count: of kinship, or of affinity for `step` and `in-law`. `null` where none is counted. */
  civil: number | null;
  /** Degree by the canon law in force until 26 November 1983. */
  canonOld: number | null;
  /** Degree by the Code of Canon Law of 1983, which counts as the civil law does. */
  canonNew: number | null;
  /** People of the path, `from` first and `to` last. Of a common couple, the first in the entry of the child. */
  through: readonly string[];
  /**
   * Where the path goes from one spouse to the other: the position of the
   * first of the two. `null` for kin by blood, and where several marriages lie on the way.
   */
  marriageAt: number | null;
  /** The common ancestor, or the couple; empty but for kin by common descent. */
  commonAncestors: readonly string[];
  /** What `to` is to `from`: “niece”, “wife's brother (brother-in-law)”. */
  words: string;
}

/** Whether a degree is one of affinity, not of kinship. */
export function isAffinity({ kind }: Relationship): boolean {
  return kind === 'step' || kind === 'in-law';
}
