/** The review sheet of a case: everything a reviewer answers, each with what it says, and what the saved file needs. */
import type { Claim } from '../../src/dossier/claims.ts';
import type { CaseView } from '../../src/dossier/types.ts';
import type { Phrase } from '../../src/interface/phrase.ts';
import type { ProofPage } from '../proof/page.ts';
import { claimTitle } from './reviews.ts';

/** One thing to answer. */
export interface SheetItem {
  id: string;
  title: Phrase;
  /** What is said about it, each under its word. */
  says: { term: string; words: Phrase; lang?: string | undefined }[];
}

export interface Sheet {
  claims: SheetItem[];
  points: SheetItem[];
}

/** The sheet of a computed case, in the words of its proof page. `lang` is that of the author’s own words. */
export function sheetOf(view: CaseView, page: ProofPage, lang: string | undefined): Sheet {
  const { sheet: t } = page.names.wording.reviews;
  return {
    claims: view.claims.map((claim) => ({
      id: claim.id,
      title: claimTitle(claim, page.names),
      says: ofClaim(claim, view, page, lang).map(({ words, ...rest }) => ({
        ...rest,
        words: withoutNotes(words),
      })),
    })),
    points: page.points.map(({ title, holds, because }, i) => ({
      id: page.result.points[i]!.point,
      title: [title],
      says: [{ term: holds ? t.held : t.notHeld, words: because }],
    })),
  };
}

function ofClaim(claim: Claim, view: CaseView, page: ProofPage, lang: string | undefined): SheetItem['says'] {
  const { case: c } = view;
  const { names } = page;
  const author = (text: string | undefined): SheetItem['says'] =>
    text === undefined ? [] : [{ term: names.wording.reviews.sheet.says, words: names.linked(text), lang }];
  switch (claim.kind) {
    case 'conclusion':
    case 'hypothesis':
      return [
        { term: '', words: [names.place(claim.place)] },
        ...author((c.conclusion ?? c.hypothesis)?.because),
      ];
    case 'item': {
      const row = page.evidence.find(({ id }) => id === claim.item);
      if (!row) return [];
      const { terms } = names.wording.proof.evidence;
      return [
        { term: '', words: row.title },
        ...[
          ...row.says,
          ...row.worth.filter(({ term }) => term === terms.tie || term === terms.author),
        ].flatMap(({ term, words, lang: own }) =>
          words.map((phrase) => ({ term: `${term}:`, words: phrase, lang: own })),
        ),
      ];
    }
    case 'independence':
      return author(c.independence[claim.index]?.because);
    case 'conflict': {
      // The page has those with a place first, as they were computed, then the others in the author’s order.
      const { conflicts } = page.result;
      const others = c.conflicts.filter(({ evidence }) => evidence === undefined);
      const at =
        claim.evidence === undefined
          ? conflicts.length + others.indexOf(c.conflicts[claim.index]!)
          : conflicts.findIndex(({ evidence }) => evidence === claim.evidence);
      const what = page.conflicts[at]?.what;
      return [...(what ? [{ term: '', words: what }] : []), ...author(c.conflicts[claim.index]?.resolution)];
    }
    case 'rejected':
      return author(c.rejected[claim.index]?.because);
    case 'candidate':
      return author(c.candidates.find(({ id }) => id === claim.candidate)?.note);
  }
}

/** Notes belong to the proof page. */
function withoutNotes(phrase: Phrase): Phrase {
  return phrase.filter((part) => typeof part === 'string' || !('note' in part));
}
