/** The sections of a proof page in order. Their anchors begin with an underscore, which no id of an author’s does. */
import type { ProofPage } from './page.ts';

export interface Section {
  id: string;
  title: string;
}

const order = [
  'conclusion',
  'lines',
  'support',
  'argument',
  'evidence',
  'who',
  'independence',
  'conflicts',
  'aside',
  'families',
  'searches',
  'overturn',
  'points',
  'beside',
  'check',
  'reviews',
  'notes',
  'citing',
] as const;

export type SectionKey = (typeof order)[number];

/** The section of a key. */
export function section(key: SectionKey, page: Pick<ProofPage, 'result' | 'names'>): Section {
  const { sections: t } = page.names.wording.proof;
  const { claim, place } = page.result;
  if (key === 'conclusion' && place === null) return { id: '_conclusion', title: t.openCase };
  if (key === 'conclusion' && claim === 'hypothesis') return { id: '_conclusion', title: t.workingIdea };
  return { id: `_${key}`, title: t[key] };
}

/** The sections a page has: without a place there is nothing to draw, to count or to overturn. */
export function sections(
  page: Pick<ProofPage, 'result' | 'names' | 'argument' | 'rejected' | 'families' | 'ledgers' | 'associates'>,
): Section[] {
  const keys = order.filter((key) => {
    if (page.result.place === null && ['lines', 'support', 'overturn'].includes(key)) return false;
    if (key === 'argument') return page.argument.parts.length > 0;
    if (key === 'beside') return page.associates !== null;
    if (key === 'who') return page.ledgers.length > 0;
    if (key === 'families') return page.families !== null;
    return key !== 'aside' || page.rejected.length > 0;
  });
  return keys.map((key) => section(key, page));
}
