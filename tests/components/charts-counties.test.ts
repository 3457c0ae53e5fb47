/**
 * The shapes of counties against what the catalogue says of the same counties, and the ways a place finds its shape.
 */
import { geoArea, geoContains } from 'd3-geo';
import { describe, expect, test } from 'vitest';
import { areaFor, folded, holds, type Area } from '../../components/charts/counties.ts';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import type { Place } from '../../src/model/place.ts';

const builtIn = builtInPlaces.map((place): Place => ({
  ...place,
  within: place.within.map((above) => ({ from: undefined, to: undefined, ...above })),
  builtIn: true,
}));
const byId = new Map(builtIn.map((place) => [place.id, place]));
const areas = builtIn.flatMap((place): [Place, Area][] => {
  const area = areaFor(place, []);
  return area ? [[place, area]] : [];
});
const own = (more: Partial<Place>): Place => ({
  id: 'x',
  name: 'X',
  kind: 'county',
  within: [],
  variants: [],
  overlaps: [],
  builtIn: false,
  ...more,
});
const above = (...ids: string[]) => ids.map((id) => byId.get(id)!);

describe('shapes of built-in counties', () => {
  test('all thirty-two of Ireland, thirteen of Canada, eight of Australia and the American states have one', () => {
    const ids = new Set(areas.map(([{ id }]) => id));
    const missing = builtIn.filter(
      ({ id, iso, kind }) =>
        (id.startsWith('co-') || (/^(?:CA|AU|US)-/.test(iso ?? '') && /^(?:province|state)$/.test(kind))) &&
        !ids.has(id),
    );
    expect(missing.map(({ id }) => id)).toEqual([]);
    expect(areas.length).toBeGreaterThan(150);
  });

  test('each is a small piece of the earth, not everything but it', () => {
    for (const [{ id }, area] of areas) expect([id, geoArea(area) < 0.2]).toEqual([id, true]);
  });

  test('each holds the middle that the catalogue gives, or lies within a few kilometres of it', () => {
    const outside = areas.filter(
      ([{ lat, lon }, area]) =>
        lat !== undefined && lon !== undefined && !holds({ ...area, rough: false }, { lat, lon }),
    );
    expect(outside.map(([{ id }]) => id)).toEqual([]);
  });

  test('hardly any middle lies in the shape of another county of its country', () => {
    const irish = areas.filter(([{ id }]) => id.startsWith('co-'));
    const wrong = irish.filter(([{ id, lat, lon }]) =>
      irish.some(([other, area]) => other.id !== id && geoContains(area, [lon!, lat!])),
    );
    expect(wrong.map(([{ id }]) => id)).toEqual([]);
  });
});

describe('a county of the author’s own', () => {
  test('of the United States is found by its name and state', () => {
    const houghton = areaFor(own({ name: 'Houghton Co.' }), above('michigan', 'united-states'));
    expect(houghton?.key).toBe('us michigan houghton');
    expect(geoContains(houghton!, [-88.65, 47])).toBe(true);
    expect(areaFor(own({ name: 'Houghton County' }), above('wisconsin', 'united-states'))).toBeUndefined();
  });

  test('of Norway is found by a name it had', () => {
    const amt = areaFor(
      own({ name: 'Nordre Bergenhus amt', variants: ['Sogn og Fjordane'] }),
      above('norway'),
    );
    expect(geoContains(amt!, [6.58, 61.08])).toBe(true);
    expect(areaFor(own({ name: 'Bergen', kind: 'city' }), above('norway'))).toBeUndefined();
    expect(areaFor(own({ name: 'Romsdal', kind: 'parish' }), above('norway'))).toBeUndefined();
  });
});

test('a rough area holds only what truly lies in it', () => {
  const armagh = areas.find(([{ id }]) => id === 'co-armagh')![1];
  expect(armagh.rough).toBe(true);
  expect(holds(armagh, { lat: 54.35, lon: -6.65 })).toBe(true);
  expect(holds(armagh, { lat: 54.08, lon: -6.61 })).toBe(false);
});

test('a name is compared without the word for what it names', () => {
  expect(folded('Houghton Co.')).toBe(folded('houghton county'));
  expect(folded('Kalmar län')).toBe('kalmar');
});
