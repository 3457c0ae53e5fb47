/** What the site is and how to read it, and the page for addresses that lead nowhere. */
import type { Part, Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

type Link = (text: string) => Part;
const { figures } = everywhere;

export const about = {
  title: 'About this site',
  description: (site: string): string => `What ${site} is, how it was made, and how to read it.`,
  cases: 'Cases',
  records: 'Records',
  asOf: 'As of',
  readers: 'Readers',
  familyOnly: 'the family only',
  everyone: 'everyone',
  invented:
    'The people on these pages never lived. Their records are made up, and so are the scans, to show how a case is argued from beginning to end. The places are real, and so are the kinds of record; nothing here should be taken for research on anybody.',
  howToRead: 'How to read it',
  reading: (to: { case: Link; record: Link }): Phrase => [
    'Start with a ',
    to.case('case'),
    '. Each one asks a single question about where somebody came from, and tells the answer as a story. Behind the story lies a second page, “Follow every step”, that sets out each piece of evidence, who it came from, and whether it counts. From there each statement leads on to the ',
    to.record('record'),
    ' it was taken from, with its transcription and, where it may be shown, its image.',
  ],
  counted: (n: { records: number; searches: number }, to: { log: Link; method: Link }): Phrase => [
    `There ${n.records === 1 ? 'is 1 record' : `are ${figures(n.records)} records`} here, and ${n.searches === 1 ? '1 search' : `${figures(n.searches)} searches`} in the `,
    to.log('log'),
    ', those that found nothing included. ',
    to.method('How standings are worked out'),
    ' says what the marks mean and what they cannot tell you.',
  ],
  guides: (guides: Link): Phrase => [
    'Whoever would make a case of their own, or was asked to test one, finds ',
    guides('guides'),
    ' for both.',
  ],
  corrections: 'Corrections',
  welcome: (contact: Part): Phrase => [
    'Evidence that speaks for or against anything here is welcome: ',
    contact,
    '.',
  ],
  made: 'Made with Whence',
  whence:
    'Whence turns a folder of notes into a site such as this, for those who must find, and prove, the place an immigrant came from. It counts independent evidence and refuses to publish a conclusion that falls short. It is free software under the MIT licence. What authors publish with it remains theirs.',
  browser:
    'These pages work without scripts. A few of them bring a small one along, for tables that sort, scans that can be enlarged and a search that answers as you type; it asks nobody anything. There is no cookie, no font or picture from anywhere else, and nobody is told that you read them. They can be printed, saved, and opened from a folder on disk.',
  typeAndMaps: 'Type and maps',
  type: (style: Link): Phrase => [
    'The text is set in Source Serif 4, the labels in Libre Franklin, both under the SIL Open Font License 1.1. How these pages look, and why, stands on the ',
    style('style page'),
    '.',
  ],
  maps: 'Coasts, borders, and the counties and provinces of Ireland, Britain, Norway, Sweden, Canada and Australia are drawn from Natural Earth, American states and counties from the US Census Bureau; both are in the public domain. Borders are those of recent years, drawn for orientation only. Older counties of Britain and of the north of Ireland are put together from the districts of today, and said to be rough where those do not follow them.',
  notFound: {
    title: 'Off the sheet',
    kicker: 'Not found',
    text: 'There is no page at this address. It may have been renamed, or it may speak of somebody living and be left out on purpose.',
    go: (to: { find: Link; cases: Link; people: Link; records: Link; places: Link }): Phrase => [
      to.find('Look it up by name'),
      ', go to the ',
      to.cases('cases'),
      ', or look among the ',
      to.people('people'),
      ', the ',
      to.records('records'),
      ' and the ',
      to.places('places'),
      '.',
    ],
  },
  style: {
    title: 'The style of these pages',
    kicker: 'For whoever makes or changes a page',
    description: 'The tones, type, marks and parts these pages are made of, and what each is for.',
  },
};
