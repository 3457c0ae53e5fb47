/** A case’s standing in words, and which station mark stands for it. */
import type { CaseView } from '../../src/dossier/types.ts';
import { numberInWords } from '../layout/words.ts';

export type Shape = 'established' | 'probable' | 'hypothesis' | 'open' | 'short' | 'contested' | 'broken';

interface StandingWords {
  shape: Shape;
  /** One or two words. */
  word: string;
  /** What that means, in a sentence. */
  meaning: string;
}

export const standings: Record<Shape, StandingWords> = {
  established: {
    shape: 'established',
    word: 'Established',
    meaning:
      'At least two independent bodies of evidence name this place, every conflict is answered, and the author holds it as established.',
  },
  probable: {
    shape: 'probable',
    word: 'Probable',
    meaning:
      'At least two independent bodies of evidence name this place and every conflict is answered; the author still holds it as probable only.',
  },
  hypothesis: {
    shape: 'hypothesis',
    word: 'Working idea',
    meaning: 'A place the author is working toward. Nothing has been concluded.',
  },
  open: { shape: 'open', word: 'Open', meaning: 'The question is still open, and no place is put forward.' },
  short: {
    shape: 'short',
    word: 'Falls short',
    meaning: 'Fewer than two independent bodies of evidence name this place.',
  },
  contested: {
    shape: 'contested',
    word: 'Contested',
    meaning:
      'Two or more independent bodies of evidence name this place, but evidence for another place is not answered.',
  },
  broken: {
    shape: 'broken',
    word: 'Not computed',
    meaning: 'Something this case rests on could not be read.',
  },
};

/** The standing of a case as shown. */
export function standingOf(view: CaseView): StandingWords {
  const { result } = view;
  if (!result) return standings.broken;
  if (result.standing === 'short' || result.standing === 'contested') return standings[result.standing];
  if (result.claim === 'established' || result.claim === 'probable') return standings[result.claim];
  return result.claim === 'hypothesis' ? standings.hypothesis : standings.open;
}

/** How much stands behind a case, in one clause: “two independent bodies of evidence”. */
export function strengthOf(view: CaseView): string {
  const n = view.result?.independent ?? 0;
  if (n === 0) return 'no evidence that reaches this place yet';
  return `${numberInWords(n)} independent ${n === 1 ? 'body' : 'bodies'} of evidence`;
}
