/** A case told for relatives. */
import type { Part, Phrase } from '../phrase.ts';
import { joined } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

type Link = (text: string) => Part;
const { figures, numberWord } = everywhere;

export const story = {
  kicker: (person: string): string => `Case · ${person}`,
  cases: 'Cases',
  case: 'The case',
  standing: 'Standing',
  person: 'Person',
  independent: 'Independent bodies of evidence',
  readingTime: 'Reading time',
  minutes: (n: number): string => (n === 1 ? '1 minute' : `${figures(n)} minutes`),
  forReviewers: 'For reviewers',
  followEveryStep: 'Follow every step',
  whatNext: 'What to search next',
  method: 'How standings are worked out',
  linkedData: 'This case as linked data (JSON-LD)',

  answer: 'The answer',
  workingIdea: 'The working idea',
  notKnown: 'Not known yet.',
  restsOn: (strength: string): string => `It rests on ${strength}.`,
  heading: 'Nothing has been concluded; this is where the search is heading.',
  setAside: (places: readonly Part[]): Phrase => [
    'Weighed and set aside: ',
    ...joined(
      places.map((place) => [place]),
      everywhere.and,
    ),
    '.',
  ],
  wouldFall: (records: number): string =>
    `It would fall if ${records === 1 ? 'one record' : records === 2 ? 'either of two records' : `any one of ${numberWord(records)} records`} were shown to be wrong.`,

  life: (person: string): string => `The life of ${person}`,
  lifeDrawing: (person: string): string =>
    `The life of ${person} on a scale of years. The same follows in words.`,
  lifeInWords: 'The life in words',
  born: 'born',
  married: 'married',
  died: 'died',
  arrived: 'came over',
  aged: (least: number, greatest: number): string =>
    least === greatest ? `aged ${least}` : `aged ${least} or ${greatest}`,
  children: (n: number): string => (n === 1 ? 'a child born' : 'children born'),
  inRecords: 'named in a record',
  wholeLife: (life: Link): Phrase => [life('Everything the records say of this life')],
  family: (person: string): string => `The family of ${person}`,
  records: 'Records of this case',
  noRecords: 'No record has been brought to this case yet.',
  caution: (method: Link): Phrase => [
    'This answer is a reasoned opinion on the evidence seen so far, open to revision. It is no legal proof of descent, inheritance or citizenship. ',
    method('More on what it can and cannot tell you'),
    '.',
  ],
  changes: 'What changed',
  /** “First published 1 March 2025, changed 4 May 2026.” */
  published: (first: string | undefined, last: string | undefined): string =>
    first === undefined
      ? `Changed ${last ?? ''}.`
      : last === undefined
        ? `First published ${first}.`
        : `First published ${first}, changed ${last}.`,
  otherCases: 'Other cases',
  before: 'Before',
  next: 'Next',
};
