/** A case’s standing in words, and which station mark stands for it. */
import type { CaseView } from '../../src/dossier/types.ts';
import type { Wording } from '../../src/interface/index.ts';
import * as href from '../layout/href.ts';
import { wording } from '../layout/wording.ts';

export type Shape = keyof Wording['standing']['words'];

interface Standing {
  shape: Shape;
  /** One or two words. */
  word: string;
}

/** The standing of a case as shown. */
export function standingOf(view: CaseView): Standing {
  const shape = shapeOf(view);
  return { shape, word: wording().standing.words[shape] };
}

function shapeOf({ result }: CaseView): Shape {
  if (!result) return 'broken';
  if (result.standing === 'short' || result.standing === 'contested') return result.standing;
  if (result.claim === 'established' || result.claim === 'probable') return result.claim;
  return result.claim === 'hypothesis' ? 'hypothesis' : 'open';
}

/** How much stands behind a case, in one clause: “two independent bodies of evidence”. */
export function strengthOf(view: CaseView): string {
  return wording().standing.strength(view.result?.independent ?? 0);
}

/** Who among the reviewers disagrees, in words, and where their reviews stand; nothing where nobody does. */
export function disagreementOf({ id, disagreements }: CaseView): { words: string; href: string } | undefined {
  const [first] = disagreements;
  if (!first) return undefined;
  const t = wording().reviews.beside;
  const words =
    disagreements.length > 1
      ? t.several(disagreements.length)
      : first.whole
        ? t.whole(first.reviewer)
        : t.point(first.reviewer);
  const earlier = disagreements.every(({ current }) => !current);
  return { words: earlier ? `${words} (${t.earlier})` : words, href: href.reviewsOf(id) };
}
