/** Head, foot and what stands on every page; the words the site puts into running text. */
import type { Part, Phrase } from '../phrase.ts';

export const layout = {
  skip: 'Skip to the text',
  /** The name of the site’s navigation, for those who hear it. */
  site: 'Site',
  whereYouAre: 'Where you are',
  onThisPage: 'On this page',
  find: 'Find',
  nav: {
    cases: 'Cases',
    people: 'People',
    associates: 'Associates',
    records: 'Records',
    places: 'Places',
    searches: 'Searches',
    sources: 'Sources',
    method: 'Method',
    about: 'About',
  },
  invented: {
    title: 'An invented family',
    text: 'These people never lived and their records are made up; the places are real.',
  },
  family: {
    title: 'For the family only',
    text: 'These pages may speak of living people. Please don’t pass them on or put them where others can read them.',
  },
  corrections: (contact: Part): Phrase => ['Corrections and questions: ', contact, '.'],
  caution: (method: (text: string) => Part): Phrase => [
    'A conclusion here is a reasoned opinion on the evidence seen, open to revision, and no legal proof. ',
    method('How standings are worked out'),
    '.',
  ],
  published: (day: string, whence: Part, guides: Part): Phrase => [
    `As of ${day}. Published with `,
    whence,
    '. ',
    guides,
    '.',
  ],
  /** The link to the guides at the foot of every page. */
  guides: 'Guides for authors and reviewers',
  feed: 'News of these cases',
  notes: 'Notes',
  backToText: (note: number): string => `Back to the text at note ${note}`,
  close: 'Close',
  seeSightLines: (drawing: (text: string) => Part): Phrase => [
    'See the drawing of the ',
    drawing('sight lines'),
    '.',
  ],
  /** What the site itself puts into the author’s running text. */
  prose: {
    note: (number: number): string => `note ${number}`,
    /** The link from a citation to its record. */
    record: 'record',
    recordOf: (citation: string): string => `record: ${citation}`,
    evidence: (id: string): string => `evidence ${id}`,
    table: (number: number): string => `Table ${number}`,
  },
};
