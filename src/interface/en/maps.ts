/** Maps and their legends. */
import { joined, type Part, type Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const winds = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
const degrees = (n: number, plus: string, minus: string): string =>
  n === 0 ? '0°' : `${Math.abs(n)}° ${n < 0 ? minus : plus}`;

export const maps = {
  /** At the edge of a map: “52° N”. */
  latitude: (n: number): string => degrees(n, 'N', 'S'),
  longitude: (n: number): string => degrees(n, 'E', 'W'),
  /** A whole position, to a hundredth of a degree. */
  position: (lat: number, lon: number): string =>
    `${Math.abs(lat).toFixed(2)}° ${lat < 0 ? 'S' : 'N'}, ${Math.abs(lon).toFixed(2)}° ${lon < 0 ? 'W' : 'E'}`,
  km: (n: number): string => `${everywhere.figures(n)} km`,
  /** How far off a place lies: “2 km south-east”. */
  away: (km: number, wind: number): string =>
    km < 1 ? 'less than 1 km' : `${everywhere.figures(km)} km ${winds[wind] ?? ''}`,
  inWords: 'The map in words',
  sightLine: 'line of sight, from where evidence was made',
  way: 'the way from record to record',
  /** What the map of one or more cases is, for those who hear it. */
  ofCases: (names: readonly string[], left: number): string =>
    `Map of where ${joined([...names.map((name): Phrase => [name]), ...(left > 0 ? [[`${everywhere.figures(left)} more`]] : [])]).join('')} came from and went to. The same follows in words.`,
  caseFrom: (subject: Part, origin: Part, standing: string): Phrase => [
    subject,
    ', from ',
    origin,
    ` (${standing.toLowerCase()}).`,
  ],
  caseOpen: (subject: Part): Phrase => [subject, '; no place is named yet.'],
  theWay: (stops: readonly Phrase[]): Phrase => ['The way: ', ...joined(stops, ', then ', ', then '), '.'],
  sights: (stations: readonly Phrase[]): Phrase => [
    'Lines of sight come from ',
    ...joined(stations, everywhere.and),
    '.',
  ],
  /** Places so close that one mark stands for them. */
  andMore: (name: string, more: number): string => `${name} and ${everywhere.figures(more)} more`,
  casesLeft: (n: number): string => `${everywhere.figures(n)} more cases are on the map.`,
  place: {
    /** The map of one place, for those who hear it. */
    title: (name: string, within: string | undefined, position: string): string =>
      `Map: ${name}${within === undefined ? '' : `, in ${within}`}, at ${position}.`,
    /** Shaded ground. */
    shaded: (name: string): string => `Shaded: ${name}.`,
    roughly: (name: string): string => `Shaded, roughly: ${name}, by the districts of today.`,
    /** The small map of the country. */
    inset: (name: string, country: string): string => `${name} in ${country}.`,
    others: 'Small marks: other places of these pages.',
    without: (name: string, container: Part): Phrase => [
      `No position is known for ${name}. The map shows `,
      container,
      ', in which it lies.',
    ],
    unplaced: (name: string): string =>
      `No position is known for ${name}, nor for anything it lies in, so there is no map.`,
    rings: (name: string): string =>
      `${name} and the places around it by direction and distance. The same stands in the list.`,
  },
  voyages: {
    heading: 'The crossings',
    title: (legs: number): string =>
      legs === 1
        ? 'Map of one crossing. The same follows in words.'
        : `Map of ${everywhere.numberWord(legs)} crossings. The same follows in words.`,
    leg: (from: Part, to: Part): Phrase => [from, ' to ', to],
    years: (first: string, last: string, n: number): string =>
      first === last ? first : n === 2 ? `${first}, ${last}` : `${first}–${last}`,
    key: 'from port to port, with the years',
    lists: (lists: readonly Phrase[]): Phrase => [': ', ...joined(lists, '; ', '; '), '.'],
    journey: (ship: string | undefined, year: string): string =>
      [ship, year].filter(Boolean).join(', ') || 'a journey',
    unplaced: (n: number): string =>
      n === 1
        ? 'One journey is not drawn: a port of it is not named or has no position.'
        : `${everywhere.figures(n)} journeys are not drawn: a port of theirs is not named or has no position.`,
  },
};
