/** The places around a place, against the plain way of measuring every one. */
import { geoDistance } from 'd3-geo';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestTo } from '../../src/dossier/places-near.ts';
import type { Place } from '../../src/model/place.ts';

const at = (id: string, lat: number, lon: number, more: Partial<Place> = {}): Place => ({
  id,
  name: id,
  kind: 'townland',
  within: [],
  variants: [],
  overlaps: [],
  builtIn: false,
  lat,
  lon,
  ...more,
});

test('direction and distance', () => {
  const here = at('here', 61.07, 6.6);
  const near = nearestTo([
    here,
    at('north', 61.16, 6.6),
    at('south-east', 61.034, 6.674),
    at('west', 61.07, 6.4),
    at('far', 62, 6.6),
  ]);
  expect(near(here)).toEqual([
    { place: 'south-east', km: 6, wind: 3 },
    { place: 'north', km: 10, wind: 0 },
    { place: 'west', km: 11, wind: 6 },
  ]);
});

test('the middle of a county is near nothing, and nothing is near it', () => {
  const here = at('here', 52, -7);
  const county = at('county', 52, -7, { kind: 'county' });
  const known = at('known', 52, -7, { builtIn: true });
  const near = nearestTo([here, county, known]);
  expect([here, county, known].map(near)).toEqual([[], [], []]);
});

test('the same places as by measuring every one', () => {
  const points = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 })), {
    minLength: 1,
    maxLength: 40,
  });
  fc.assert(
    fc.property(points, (some) => {
      const places = some.map(([a, b], i) => at(`p${i}`, 52 + a / 100, -7 + b / 100));
      const near = nearestTo(places);
      const [here] = places as [Place & { lat: number; lon: number }];
      const plain = places
        .filter(({ id }) => id !== here.id)
        .filter(({ lat, lon }) => geoDistance([here.lon, here.lat], [lon!, lat!]) * 6371 <= 30)
        .map(({ id }) => id);
      expect(new Set(near(here).map(({ place }) => place))).toEqual(new Set(plain));
      const kms = near(here).map(({ km }) => km);
      expect(kms).toEqual([...kms].sort((a, b) => a - b));
    }),
    { numRuns: 60 },
  );
});
