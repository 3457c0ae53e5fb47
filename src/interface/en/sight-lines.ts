/** The sight-line drawing: its lettering, its key, and the same in words. */
import { joined, type Part, type Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const { numberWord } = everywhere;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const lines = (n: number): string => `${numberWord(n)} line${n === 1 ? '' : 's'} of sight`;

export const sightLines = {
  title: (place: string): string => `Sight lines to ${place}`,
  meets: (n: number, placeAndKind: string): string =>
    `${capital(lines(n))} ${n === 1 ? 'meets' : 'meet'} the mark, ${placeAndKind}.`,
  /** How many reach each broader place. */
  reach: (steps: readonly { n: number; placeAndKind: string }[]): string =>
    `${capital(steps.map(({ n, placeAndKind }) => `${numberWord(n)} ${n === 1 ? 'reaches' : 'reach'} ${placeAndKind}`).join('; '))}.`,
  passBy: (n: number): string => `${capital(lines(n))} ${n === 1 ? 'passes' : 'pass'} the mark by.`,

  reachesMark: (item: Phrase): Phrase => [...item, ' reaches the mark'],
  reachesOnly: (item: Phrase, place: string): Phrase => [...item, ` reaches ${place}`],
  but: (clause: Phrase): Phrase => ['but', ...clause],
  shareLine: (items: readonly Phrase[]): Phrase => [
    ...joined(items),
    items.length > 1 ? ' share its line' : ' shares its line',
  ],
  alongside: (items: readonly Phrase[]): Phrase => [
    ...joined(items),
    items.length > 1
      ? ' run alongside and are not counted beside it'
      : ' runs alongside and is not counted beside it',
  ],
  countedInstead: (item: Part, places: readonly string[]): Phrase => [
    item,
    ' is counted in its place at ',
    ...joined(places.map((place) => [place])),
  ],
  /** Clauses that follow the item’s name. */
  speaksAgainst: (place: string): Phrase => [` speaks against ${place}`],
  passesTo: (place: string, end: Part): Phrase => [` passes ${place} by and ends at `, end],
  answered: (yes: boolean): string => (yes ? ', answered' : ', not answered'),
  notIndependentOf: (letter: string): string => `; not independent of line ${letter}`,
  items: (items: readonly Phrase[]): Phrase => joined(items),
  inWords: 'The drawing in words',

  /** Lettering on the drawing, where room is short. */
  independent: (n: number): string => `${n} independent`,
  speaksAgainstMark: 'speaks against',
  isAnswered: 'answered',
  isUnanswered: 'unanswered',
  notCounted: 'Not counted',
  /** What a record says, as it is written there. */
  said: (reading: string): string => `“${reading}”`,
  manyItems: (n: number): string => `${n} items`,
  andMore: (title: string, n: number): string => `${title} and ${n} more`,
  aSearch: 'A search',
  recordNotShown: 'A record not shown here',

  /** Why an item is not counted, in a few words. */
  outside: {
    negative: 'negative evidence',
    'no-place': 'names no place',
    ties: 'a tie only, names no place',
    untied: 'not tied to the subject',
    'broken-tie': 'its tie does not hold',
    uncited: 'not cited',
    elsewhere: 'points elsewhere',
  },

  key: {
    body: 'an independent body of evidence',
    short: 'reaches only so far',
    shared: 'shares its line',
    alongside: 'alongside: may depend on that line, so not counted beside it',
    argued: 'independent by argument',
    missAnswered: 'misses the mark, answered',
    missOpen: 'misses the mark, unanswered',
  },
};
