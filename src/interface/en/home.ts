/** The first page: who, from where, how sure. */
import type { Part, Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const { figures, numberWord } = everywhere;

export const home = {
  /** Over the list of all cases beside the map. */
  key: 'Who, from where, how sure',
  moreBelow: (n: number, cases: (text: string) => Part): Phrase => [
    cases(n === 1 ? 'One more case' : `${figures(n)} more cases`),
  ],
  cases: (n: number): string => (n === 1 ? 'The case' : 'The cases'),
  none: 'No case has been opened yet.',
  notKnown: 'Place not known yet',
  noPlace: 'No place is put forward yet.',
  restsOn: (strength: string): string => `Rests on ${strength}.`,
  setAside: (n: number): string =>
    n === 1
      ? 'One other place weighed and set aside.'
      : `${capital(numberWord(n))} other places weighed and set aside.`,
  readStory: 'Read the story',
  minutes: (n: number): string => (n === 1 ? '1 minute' : `${n} minutes`),
  followEveryStep: 'Follow every step',
  inThesePages: 'In these pages',
  records: 'Records read',
  people: 'People',
  places: 'Places',
  searches: 'Searches logged',
  foundNothing: (n: number): string => `${figures(n)} with nothing found`,
  feed: (feed: (text: string) => Part): Phrase => [
    'New and changed cases can be followed with a ',
    feed('feed reader'),
    '.',
  ],
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
