/** The places of random corpora: two countries, and below them places inside one or several others. */
import type { RawPlace } from './facts.ts';

/** Every place after those it may lie in, so that containment never runs in a circle. Ids are not in that order. */
const ground: RawPlace[] = [
  { id: 'union', kind: 'country' },
  { id: 'mainland', kind: 'country', within: ['union'] },
  { id: 'newland', kind: 'country' },
  { id: 'uplands', kind: 'region', within: ['mainland'] },
  { id: 'east-shire', kind: 'county', within: ['mainland'] },
  { id: 'west-shire', kind: 'county', within: ['mainland', 'uplands'] },
  { id: 'lakes', kind: 'state', within: ['newland'] },
  { id: 'z-barony', kind: 'barony', within: ['east-shire'] },
  { id: 'abbey-parish', kind: 'parish', within: ['z-barony'] },
  { id: 'moor-parish', kind: 'parish', within: ['east-shire', 'west-shire'] },
  { id: 'port', kind: 'town', within: ['lakes'] },
  { id: 'glen', kind: 'townland', within: ['abbey-parish', 'moor-parish'] },
  { id: 'knoll', kind: 'townland', within: ['abbey-parish'] },
  { id: 'bog', kind: 'townland', within: ['moor-parish'] },
  { id: 'ship', kind: 'vessel' },
  { id: 'ford', kind: 'farm', within: ['glen', 'knoll'] },
];

export const placeIds = ground.map((place) => place.id);

/** Where records of the new country are made. */
export const overHere = ['lakes', 'port', 'newland'];

/** Where an origin may be concluded. */
export const origins = [
  'glen',
  'knoll',
  'bog',
  'ford',
  'abbey-parish',
  'moor-parish',
  'east-shire',
  'mainland',
  'port',
];

/** The gazetteer with more containment (`[lower, higher]`, any numbers) and more overlaps (any numbers). */
export function gazetteer(within: [number, number][], overlaps: [number, number][]): RawPlace[] {
  const places = ground.map((place) => ({
    ...place,
    within: [...[place.within ?? []].flat()],
    overlaps: [] as string[],
  }));
  for (const [a, b] of within) {
    const lower = places[1 + (a % (places.length - 1))];
    const higher = places[b % places.indexOf(lower ?? places[1]!)];
    if (lower && higher && !lower.within.some((one) => one === higher.id)) lower.within.push(higher.id);
  }
  for (const [a, b] of overlaps)
    places[a % places.length]?.overlaps.push(placeIds[b % placeIds.length] ?? 'glen');
  return places;
}
