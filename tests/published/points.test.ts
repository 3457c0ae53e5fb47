import { readFileSync } from 'node:fs';
import { geoContains, geoDistance } from 'd3-geo';
import { feature } from 'topojson-client';
import { describe, expect, test } from 'vitest';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';

/*
 * Sources: Natural Earth 4.1 at 1:10m (world-atlas) for countries, US Census Bureau boundary files (us-atlas) for the
 * states; both are in the public domain.
 */
const shapes = (path: string, object: string): Map<string, GeoJSON.Feature> => {
  const topology = JSON.parse(readFileSync(new URL(import.meta.resolve(path)), 'utf8'));
  const collection = feature(topology, topology.objects[object]) as unknown as GeoJSON.FeatureCollection;
  const found = new Map<string, GeoJSON.Feature>();
  for (const shape of collection.features) {
    const name = String(shape.properties?.['name']);
    if (shape.geometry !== null && !found.has(name)) found.set(name, shape);
  }
  return found;
};

const countries = shapes('world-atlas/countries-10m.json', 'countries');
const states = shapes('us-atlas/states-10m.json', 'states');

const point = ({ lat, lon }: { lat?: number; lon?: number }): [number, number] => [lon ?? NaN, lat ?? NaN];

/** Points of islands and firths may fall in the water between. */
const atSea = new Set(['orkney', 'hawaii']);

describe('the points of places', () => {
  test('every place has one, within the bounds of the globe', () => {
    for (const place of builtInPlaces) {
      expect(Math.abs(place.lat ?? NaN), place.id).toBeLessThanOrEqual(90);
      expect(Math.abs(place.lon ?? NaN), place.id).toBeLessThanOrEqual(180);
    }
  });

  const ofUnion = builtInPlaces.filter(
    (place) => place.within[0]?.place === 'united-states' && place.kind === 'state',
  );
  test.each(ofUnion)('the point of $name lies in it', (place) => {
    const shape = states.get(place.name);
    expect(shape).toBeDefined();
    if (shape && !atSea.has(place.id)) expect(geoContains(shape, point(place))).toBe(true);
  });

  const inOneShape: [string, string[]][] = [
    ['ireland', ['Ireland', 'United Kingdom']],
    ['england', ['United Kingdom']],
    ['wales', ['United Kingdom']],
    ['scotland', ['United Kingdom']],
  ];
  test.each(inOneShape)('the points of the counties of %s lie on land of theirs', (country, names) => {
    const counties = builtInPlaces.filter(
      ({ id, within, kind }) =>
        kind === 'county' && (country === 'ireland' ? id.startsWith('co-') : within[0]?.place === country),
    );
    expect(counties.length).toBeGreaterThan(12);
    const stray = counties.filter(
      (place) =>
        !atSea.has(place.id) &&
        !names.some((name) => {
          const shape = countries.get(name);
          return shape !== undefined && geoContains(shape, point(place));
        }),
    );
    expect(stray.map((place) => place.id)).toEqual([]);
  });

  test('no two places of one kind and parent stand within four kilometres of each other', () => {
    const close: string[] = [];
    builtInPlaces.forEach((one, index) => {
      for (const other of builtInPlaces.slice(index + 1)) {
        const siblings = one.kind === other.kind && one.within[0]?.place === other.within[0]?.place;
        if (siblings && one.within.length > 0 && geoDistance(point(one), point(other)) * 6371 < 4)
          close.push(`${one.id} ${other.id}`);
      }
    });
    expect(close).toEqual([]);
  });
});
