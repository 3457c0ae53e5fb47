import { expect, test } from 'vitest';
import { depthChances, reaches, reachOfKind, seriesKinds } from '../../src/catalogue/series-kinds.ts';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import { builtInSeries } from '../../src/catalogue/series/index.ts';

test('every kind of a built-in series is known, with chances that are chances', () => {
  expect(builtInSeries.filter(({ kind }) => !Object.hasOwn(seriesKinds, kind)).map(({ id }) => id)).toEqual(
    [],
  );
  const chances = [
    ...Object.values(seriesKinds).map(({ chance }) => chance),
    ...builtInSeries.flatMap(({ chance }) => chance ?? []),
  ];
  expect(chances.every((chance) => chance > 0 && chance <= 1)).toBe(true);
});

test('of each depth no more records reach a place than there are, and deeper series reach deeper', () => {
  for (const levels of Object.values(depthChances))
    expect(reaches.reduce((sum, level) => sum + levels[level], 0)).toBeLessThanOrEqual(1);
  expect(depthChances.townland.townland).toBeGreaterThan(depthChances.parish.townland);
  expect(depthChances.parish.parish).toBeGreaterThan(depthChances.county.parish);
  expect(depthChances.county.county).toBeGreaterThan(depthChances.country.county);
});

/* The kinds of the built-in places: counties, states and provinces are a county's depth, countries a country's. */
test('kinds of places say how near they are', () => {
  const of = (id: string) => reachOfKind(builtInPlaces.find((place) => place.id === id)!.kind);
  expect(['ireland', 'norway', 'united-states'].map(of)).toEqual(['country', 'country', 'country']);
  expect(['co-waterford', 'michigan', 'munster', 'ontario'].map(of)).toEqual([
    'county',
    'county',
    'county',
    'county',
  ]);
  expect(
    ['civil parish', 'Catholic parish', 'town', 'townland', 'farm', 'something else'].map(reachOfKind),
  ).toEqual(['parish', 'parish', 'parish', 'townland', 'townland', 'parish']);
});
