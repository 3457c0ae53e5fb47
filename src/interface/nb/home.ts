import type { home as English } from '../en/home.ts';
import { everywhere } from './everywhere.ts';

const { figures, numberWord } = everywhere;

export const home: typeof English = {
  key: 'Hvem, hvorfra, hvor sikkert',
  moreBelow: (n, cases) => [cases(n === 1 ? 'Én sak til' : `${figures(n)} saker til`)],
  cases: (n) => (n === 1 ? 'Saken' : 'Sakene'),
  none: 'Ingen sak er åpnet ennå.',
  notKnown: 'Stedet er ikke kjent ennå',
  noPlace: 'Ikke noe sted er foreslått ennå.',
  restsOn: (strength) => `Bygger på ${strength}.`,
  setAside: (n) =>
    n === 1
      ? 'Ett annet sted er veid og lagt til side.'
      : `${capital(numberWord(n))} andre steder er veid og lagt til side.`,
  readStory: 'Les historien',
  minutes: (n) => (n === 1 ? '1 minutt' : `${n} minutter`),
  followEveryStep: 'Følg hvert skritt',
  inThesePages: 'På disse sidene',
  records: 'Kilder lest',
  people: 'Personer',
  places: 'Steder',
  searches: 'Søk ført i loggen',
  foundNothing: (n) => `${figures(n)} uten funn`,
  feed: (feed) => ['Nye og endrede saker kan følges med en ', feed('nyhetsleser'), '.'],
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
