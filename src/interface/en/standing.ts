/** Standings: a case’s in a word or two, what each means, and how much stands behind it. */
import { joined, type Part, type Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const { numberWord } = everywhere;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** “two independent items of evidence”. */
const independentItems = (n: number): string =>
  `${numberWord(n)} independent item${n === 1 ? '' : 's'} of evidence`;

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
      : `${numberWord(n)} independent ${n === 1 ? 'body' : 'bodies'} of evidence`,

  /** Where a case stands, clause by clause; each but `reach` is a sentence. */
  says: {
    open: 'The case is open: no place has been concluded, and none is proposed.',
    reach: (n: number, place: string): string =>
      `${capital(independentItems(n))} ${n === 1 ? 'reaches' : 'reach'} ${place}`,
    workingIdea: (place: string): string => `${place} is a working idea, not a conclusion.`,
    needsTwo: (reach: string, enough: boolean): string =>
      enough ? `${reach}.` : `${reach}; a conclusion needs two.`,
    meets: (reach: string, conflicts: boolean): string =>
      `${reach}, and ${conflicts ? 'every conflict is answered' : 'no evidence of the case conflicts'}.`,
    short: (reach: string): string => `${reach}; a conclusion needs at least two.`,
    contested: (reach: string): string => `${reach}, but the conclusion is contested.`,
    unanswered: (n: number): string =>
      `${capital(numberWord(n))} conflicting item${n === 1 ? ' is' : 's are'} not answered.`,
  },
  /** The author’s own judgement. */
  claims: {
    established: 'The author holds this as established.',
    probable: 'The author holds this as probable.',
    hypothesis: '',
  },
  /** How many records would have to fall, and which. */
  margin: {
    thePlace: 'the place',
    none: (place: string): Phrase => [
      `Fewer than two independent items reach ${place} now, so there is nothing to overturn yet.`,
    ],
    one: (record: Part, place: string): Phrase => [
      'One record would do it. If ',
      record,
      ` were discredited, fewer than two independent items would reach ${place}.`,
    ],
    anyOf: (records: readonly Part[], place: string): Phrase => [
      'One record would do it: if any of ',
      ...joined(
        records.map((record) => [record]),
        ' or ',
      ),
      ` were discredited, fewer than two independent items would reach ${place}.`,
    ],
    several: (n: number, place: string, weakest: readonly Part[]): Phrase => [
      `No single record carries it. At least ${numberWord(n)} records would have to be discredited before fewer than two independent items reach ${place}`,
      ...(weakest.length > 0 ? [': for example ', ...joined(weakest.map((record) => [record]))] : []),
      '.',
    ],
  },
};
