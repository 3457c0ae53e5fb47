/** A case’s standing in words, and which station mark stands for it. */
import type { CaseView } from '../../src/dossier/types.ts';
import type { Wording } from '../../src/interface/index.ts';
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
