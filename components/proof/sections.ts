/** The sections of a proof page in order. Their anchors begin with an underscore, which no id of an author’s does. */
import type { ProofPage } from './page.ts';

export interface Section {
  id: string;
  title: string;
}

const all = {
  conclusion: 'The conclusion',
  lines: 'Sight lines',
  support: 'How far the evidence reaches',
  argument: 'The author’s argument',
  evidence: 'The evidence, item by item',
  who: 'Who is who',
  independence: 'What depends on what',
  conflicts: 'Conflicts',
  aside: 'Places set aside',
  families: 'Candidate families',
  searches: 'Searches',
  overturn: 'What would overturn it',
  points: 'Reviewer’s points',
  beside: 'Beside the family',
  check: 'What the check says',
  reviews: 'Reviews',
  notes: 'Notes',
  citing: 'Citing this page, and cautions',
} as const;

export type SectionKey = keyof typeof all;

/** The section of a key. */
export function section(key: SectionKey, page: Pick<ProofPage, 'result'>): Section {
  const { claim, place } = page.result;
  if (key === 'conclusion' && place === null) return { id: '_conclusion', title: 'An open case' };
  if (key === 'conclusion' && claim === 'hypothesis') return { id: '_conclusion', title: 'A working idea' };
  return { id: `_${key}`, title: all[key] };
}

/** The sections a page has: without a place there is nothing to draw, to count or to overturn. */
export function sections(
  page: Pick<ProofPage, 'result' | 'argument' | 'rejected' | 'families' | 'ledgers' | 'associates'>,
): Section[] {
  const keys = (Object.keys(all) as SectionKey[]).filter((key) => {
    if (page.result.place === null && ['lines', 'support', 'overturn'].includes(key)) return false;
    if (key === 'argument') return page.argument.parts.length > 0;
    if (key === 'beside') return page.associates !== null;
    if (key === 'who') return page.ledgers.length > 0;
    if (key === 'families') return page.families !== null;
    return key !== 'aside' || page.rejected.length > 0;
  });
  return keys.map((key) => section(key, page));
}
