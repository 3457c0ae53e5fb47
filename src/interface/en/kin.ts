/** How people are related, and what is known of the kin of a subject line by line. */
import type { KinSex, KinTerm } from '../../model/kin-term.ts';
import { worded, type WordsFor } from '../../model/said.ts';
import type { UntracedValues } from '../../model/untraced-said.ts';
import { plainWords } from '../plain-words.ts';

/** In few words each, without a subject. */
const untraced: WordsFor<UntracedValues> = {
  name: () => 'name not fully known',
  record: () => 'named in no record',
  'record-apart': ({ subject }) => `only in records that also name ${subject}`,
  birthplace: () => 'birthplace stated in no record',
  marriage: () => 'marriage or children not known',
  death: () => 'death not known',
  parents: ({ known }) => (known === 'none' ? 'parents not known' : 'a parent not fully named'),
  whereabouts: () => 'emigrated or stayed: not known',
  search: () => 'no search logged',
};

export const kin = {
  /** What somebody is to another: English has its words from the reasoning itself, which the terminal shows too. */
  word: (english: string, term: KinTerm): string => (term.kind === 'self' ? 'the same person' : english),
  /** The degree by the civil count, and the same with the way it is counted. */
  degree: (english: string, _civil: number | null, _byMarriage: boolean): string => english,
  canon: (english: string, _degree: number | null): string => english,
  inTheCase: (n: number): string => (n === 1 ? 'In the case' : 'In the cases'),
  /** Whose, and what: the name comes before, or after where `nameLast`. */
  of: (word: string): { before: string; after: string } => ({ before: '', after: `’s ${word}` }),
  also: (words: readonly string[]): string => words.map((word) => `; also ${word}`).join(''),

  /** What is still untraced of somebody: “death not known”. */
  untraced: (said: Parameters<typeof worded<UntracedValues>>[0]): string =>
    worded<UntracedValues>(said, untraced),
  /** The titles of the lines of a family. */
  lineOf: {
    own: (subject: string): string => `${subject}’s own family`,
    forebears: (subject: string): string => `${subject}’s parents and forebears`,
    spouseForebears: (sex: KinSex): string =>
      `Parents and forebears of the ${sex === 'M' ? 'husband' : sex === 'F' ? 'wife' : 'spouse'}`,
    /** Who begins the line, and what they are to the subject. */
    headed: (name: string, word: string): string => `${name}, ${word}`,
  },
  /** The lines as a page has them. */
  lines: {
    none: (subject: string): string => `No kin of ${subject} are recorded here.`,
    known: (n: number, subject: string): string =>
      `${n === 1 ? '1 relative' : `${n} relatives`} of ${subject} ${n === 1 ? 'is' : 'are'} known, by blood or through one marriage.`,
    nothingOpen: 'Nothing that is asked of kin is open for any of them.',
    open: (n: number): string =>
      `Something is still untraced of ${n}. Any of them may have left the record that names the place.`,
    nearest: 'Nearest, and still to trace',
    people: (n: number): string => (n === 1 ? '1 person' : `${n} people`),
    who: 'Who',
    relationTo: (subject: string): string => `What they are to ${subject}`,
    relation: 'Relation',
    stillUntraced: 'Still untraced',
    untraced: 'Untraced',
    nothing: 'nothing',
    originStated: 'Origin their records state',
    origin: 'Origin',
    /** Before the names of those between. */
    through: 'through',
    /** What kind of statement names an origin: “birthplace”. */
    states: (key: string): string => (key === 'event' ? 'birth or baptism' : plainWords(key)),
    /** Before the place. */
    readAs: (states: string): string => `${states}, read as`,
    anyOf: (states: string, places: number): string => `${states}, may be any of ${places} places`,
    further: 'Joined through more than one marriage',
    left: (n: number): string =>
      n === 1 ? '1 more distant relative is not listed.' : `${n} more distant relatives are not listed.`,
    /** Before the link to the method. */
    method: 'What is asked of each, and how degrees are counted:',
    methodLink: 'kin',
  },
};
