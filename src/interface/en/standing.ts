/** Standings: a case’s in a word or two, what each means, and how much stands behind it. */
import { everywhere } from './everywhere.ts';

export const standing = {
  /** One or two words, beside the station mark. */
  words: {
    established: 'Established',
    probable: 'Probable',
    hypothesis: 'Working idea',
    open: 'Open',
    short: 'Falls short',
    contested: 'Contested',
    broken: 'Not computed',
  },
  /** What that means, in a sentence. */
  meanings: {
    established:
      'At least two independent bodies of evidence name this place, every conflict is answered, and the author holds it as established.',
    probable:
      'At least two independent bodies of evidence name this place and every conflict is answered; the author still holds it as probable only.',
    hypothesis: 'A place the author is working toward. Nothing has been concluded.',
    open: 'The question is still open, and no place is put forward.',
    short: 'Fewer than two independent bodies of evidence name this place.',
    contested:
      'Two or more independent bodies of evidence name this place, but evidence for another place is not answered.',
    broken: 'Something this case rests on could not be read.',
  },
  /** How much stands behind a case, in one clause: “two independent bodies of evidence”. */
  strength: (n: number): string =>
    n === 0
      ? 'no evidence that reaches this place yet'
      : `${everywhere.numberWord(n)} independent ${n === 1 ? 'body' : 'bodies'} of evidence`,
};
