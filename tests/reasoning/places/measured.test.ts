/**
 * How often mangled names come out right. The generator of misreadings is a list of slips clerks are known to make
 * (*common practice*), written before the engine was tuned; its second hand was held out.
 */
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { hands } from '../../bench/clerks.ts';
import { generatedTownlands, townlandsFrom } from '../../bench/gazetteers.ts';
import { measurePlaces } from '../../bench/places.ts';

const file = resolve(import.meta.dirname, '../../../../shared/data/irish-townlands.csv');

test.each(Object.entries(hands))('generated townlands, %s hand, the county given', (_, hand) => {
  const result = measurePlaces(generatedTownlands(10_000, 3), hand, 1_000, 21);
  expect(result.right).toBeGreaterThan(0.93);
  expect(result.wrongUnwarned).toBeLessThan(0.02);
});

// The townlands of 26 counties as OpenStreetMap has them are not part of the project; without the file the test above
// stands alone.
test.skipIf(!existsSync(file)).each(Object.entries(hands))(
  'real townlands, %s hand, the county given',
  (_, hand) => {
    const result = measurePlaces(townlandsFrom(file), hand, 2_000, 21);
    expect(result.right).toBeGreaterThan(0.85);
    expect(result.wrongUnwarned).toBeLessThan(0.02);
  },
);
