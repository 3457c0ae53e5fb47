import type { sightLines as English } from '../en/sight-lines.ts';
import { joined } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const { numberWord } = everywhere;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const lines = (n: number): string => `${numberWord(n)} siktelinje${n === 1 ? '' : 'r'}`;

export const sightLines: typeof English = {
  title: (place) => `Siktelinjer mot ${place}`,
  meets: (n, placeAndKind) => `${capital(lines(n))} treffer merket, ${placeAndKind}.`,
  reach: (steps) =>
    `${capital(steps.map(({ n, placeAndKind }) => `${numberWord(n)} når ${placeAndKind}`).join('; '))}.`,
  passBy: (n) => `${capital(lines(n))} går forbi merket.`,

  reachesMark: (item) => [...item, ' når fram til merket'],
  reachesOnly: (item, place) => [...item, ` når ${place}`],
  but: (clause) => ['men', ...clause],
  shareLine: (items) => [...joined(items, ' og '), ' deler linje med det'],
  alongside: (items) => [...joined(items, ' og '), ' løper ved siden av og telles ikke i tillegg'],
  countedInstead: (item, places) => [
    item,
    ' telles i stedet for det ved ',
    ...joined(
      places.map((place) => [place]),
      ' og ',
    ),
  ],
  speaksAgainst: (place) => [` taler mot ${place}`],
  passesTo: (place, end) => [` går forbi ${place} og ender ved `, end],
  answered: (yes) => (yes ? ', besvart' : ', ikke besvart'),
  notIndependentOf: (letter) => `; ikke uavhengig av linje ${letter}`,
  items: (items) => joined(items, ' og '),
  inWords: 'Tegningen i ord',

  independent: (n) => (n === 1 ? '1 uavhengig' : `${n} uavhengige`),
  speaksAgainstMark: 'taler mot',
  isAnswered: 'besvart',
  isUnanswered: 'ubesvart',
  notCounted: 'Ikke talt med',
  said: (reading) => `«${reading}»`,
  manyItems: (n) => `${n} belegg`,
  andMore: (title, n) => `${title} og ${n} til`,
  aSearch: 'Et søk',
  recordNotShown: 'En kilde som ikke vises her',

  outside: {
    negative: 'negativt belegg',
    'no-place': 'nevner ikke noe sted',
    ties: 'bare en tilknytning, nevner ikke noe sted',
    untied: 'ikke knyttet til personen',
    'broken-tie': 'tilknytningen holder ikke',
    uncited: 'ikke brukt',
    elsewhere: 'peker et annet sted',
  },

  key: {
    body: 'et uavhengig belegg',
    short: 'når bare så langt',
    shared: 'deler linje',
    alongside: 'ved siden av: kan avhenge av den linja og telles derfor ikke i tillegg',
    argued: 'uavhengig etter begrunnelse',
    missAnswered: 'går forbi merket, besvart',
    missOpen: 'går forbi merket, ubesvart',
  },
};
