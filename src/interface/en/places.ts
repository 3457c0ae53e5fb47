/** Places: the index, and the page of each. */
import type { Part, Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const placesOf = (n: number): string => `${everywhere.figures(n)} ${n === 1 ? 'place' : 'places'}`;

export const places = {
  title: 'Places',
  description: 'Every place the records and conclusions speak of, inside the places it lies in.',
  lede: 'From the country down to the farm and townland, each inside what it lies in.',
  none: 'No place is named yet.',
  counted: 'Places',
  withCase: 'With a case',
  withRecords: 'With records',
  find: 'Name or spelling',
  listed: 'Inside one another',
  kind: 'Kind',
  what: 'What is here',
  whats: { cases: 'a case', records: 'records', people: 'births and deaths' },
  byName: 'Name',
  byRecords: 'Most records',
  /** Beside a place in the index. */
  records: (n: number): string => (n === 1 ? '1 record' : `${everywhere.figures(n)} records`),
  /** Other names of a place, after its own in the index. */
  also: (names: string): string => `also ${names}`,

  kicker: (kind: string): string => `Place · ${kind}`,
  about: (name: string, kind: string): string =>
    `${name}, ${kind}: where it lies, what is near it, who was born and died there, and the records made there.`,
  thePlace: 'The place',
  kindFact: 'Kind',
  position: 'Position',
  existed: 'Existed',
  iso: 'ISO 3166',
  chapman: 'Chapman code',
  alsoCalled: 'Also called',
  liesIn: 'What it lies in',
  liesInLine: (parts: readonly Phrase[]): Phrase => [
    'Lies in: ',
    ...parts.flatMap((part, i) => [...(i > 0 ? ['; '] : []), ...part]),
    '.',
  ],
  sharesGround: 'Shares ground with ',
  cases: (n: number): string => (n === 1 ? 'A case that names it' : 'Cases that name it'),
  readings: 'How records spell it',
  notShown: 'a record not shown here',
  around: 'Round about',
  aroundNote: 'By the positions given, which are often those of a middle or a church; as the crow flies.',
  inside: 'Inside it',
  beside: (within: Part): Phrase => ['Also in ', within],
  besideMany: (n: number, within: Part): Phrase => [
    `${placesOf(n)} more ${n === 1 ? 'lies' : 'lie'} in `,
    within,
    '.',
  ],
  born: 'Born here',
  married: 'Married here',
  died: 'Died here',
  made: 'Records made here',
  source: (source: string): Phrase => ['Source of this entry: ', source],
};
