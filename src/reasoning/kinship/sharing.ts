/** Whether two people of one parent are of the whole blood or the half. */
import type { Family } from './family.ts';

/**
 * - `direct`: no brother or sister stands in the line;
 * - `full`: two parents or more in common;
 * - `one-known`: one in common, and of one of the two nobody else is known;
 * - `half`: one in common; the others are known and differ.
 */
export type Sharing = 'direct' | 'full' | 'one-known' | 'half';

/** Better blood first. */
export const sharingRank: Readonly<Record<Sharing, number>> = { direct: 0, full: 0, 'one-known': 1, half: 2 };

/** Parents two people have in common, in the order of the first one's entry. */
export function commonParents(family: Family, one: string, other: string): string[] {
  const theirs = family.parents(other);
  return family.parents(one).filter((parent) => theirs.includes(parent));
}

/** How two children of at least one common parent share them. */
export function sharingOf(family: Family, one: string, other: string): Sharing {
  if (commonParents(family, one, other).length > 1) return 'full';
  return family.parents(one).length > 1 && family.parents(other).length > 1 ? 'half' : 'one-known';
}
