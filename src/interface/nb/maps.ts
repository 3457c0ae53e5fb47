import type { maps as English } from '../en/maps.ts';
import { joined, type Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const winds = ['nord', 'nordøst', 'øst', 'sørøst', 'sør', 'sørvest', 'vest', 'nordvest'] as const;
const degrees = (n: number, plus: string, minus: string): string =>
  n === 0 ? '0°' : `${Math.abs(n)}° ${n < 0 ? minus : plus}`;
const hundredths = (n: number): string => Math.abs(n).toFixed(2).replace('.', ',');

export const maps: typeof English = {
  latitude: (n) => degrees(n, 'N', 'S'),
  longitude: (n) => degrees(n, 'Ø', 'V'),
  position: (lat, lon) =>
    `${hundredths(lat)}° ${lat < 0 ? 'S' : 'N'}, ${hundredths(lon)}° ${lon < 0 ? 'V' : 'Ø'}`,
  km: (n) => `${everywhere.figures(n)} km`,
  away: (km, wind) => (km < 1 ? 'under 1 km' : `${everywhere.figures(km)} km ${winds[wind] ?? ''}`),
  inWords: 'Kartet med ord',
  sightLine: 'siktelinje, fra stedet der et funn ble til',
  way: 'veien fra kilde til kilde',
  ofCases: (names, left) =>
    `Kart over hvor ${joined([...names.map((name): Phrase => [name]), ...(left > 0 ? [[`${everywhere.figures(left)} til`]] : [])], everywhere.and).join('')} kom fra og dro. Det samme følger med ord.`,
  caseFrom: (subject, origin, standing) => [subject, ', fra ', origin, ` (${standing.toLowerCase()}).`],
  caseOpen: (subject) => [subject, '; ikke noe sted er foreslått ennå.'],
  theWay: (stops) => ['Veien: ', ...joined(stops, ', så ', ', så '), '.'],
  sights: (stations) => ['Siktelinjene kommer fra ', ...joined(stations, everywhere.and), '.'],
  andMore: (name, more) => `${name} og ${everywhere.figures(more)} til`,
  casesLeft: (n) => `${everywhere.figures(n)} saker til er med på kartet.`,
  place: {
    title: (name, within, position) =>
      `Kart: ${name}${within === undefined ? '' : ` i ${within}`}, på ${position}.`,
    shaded: (name) => `Skyggelagt: ${name}.`,
    roughly: (name) => `Skyggelagt, omtrentlig: ${name}, etter dagens distrikter.`,
    inset: (name, country) => `${name} i ${country}.`,
    others: 'Små merker: andre steder på disse sidene.',
    without: (name, container) => [
      `Vi vet ikke hvor ${name} ligger. Kartet viser `,
      container,
      ', som stedet ligger i.',
    ],
    unplaced: (name) =>
      `Vi vet ikke hvor ${name} ligger, og heller ikke noe av det stedet ligger i, så her er det ikke noe kart.`,
    rings: (name) => `${name} og stedene rundt, etter retning og avstand. Det samme står i listen.`,
  },
  voyages: {
    heading: 'Overfartene',
    title: (legs) =>
      legs === 1
        ? 'Kart over én overfart. Det samme følger med ord.'
        : `Kart over ${everywhere.numberWord(legs)} overfarter. Det samme følger med ord.`,
    leg: (from, to) => [from, ' til ', to],
    years: (first, last, n) => (first === last ? first : n === 2 ? `${first}, ${last}` : `${first}–${last}`),
    key: 'fra havn til havn, med årstallene',
    lists: (lists) => [': ', ...joined(lists, '; ', '; '), '.'],
    journey: (ship, year) => [ship, year].filter(Boolean).join(', ') || 'en reise',
    unplaced: (n) =>
      n === 1
        ? 'Én reise er ikke tegnet inn: En av havnene er ikke oppgitt eller har ingen kjent plassering.'
        : `${everywhere.figures(n)} reiser er ikke tegnet inn: En av havnene er ikke oppgitt eller har ingen kjent plassering.`,
  },
};
