/** A few of the folders that `npm run fuzz` makes by the thousand, and every one that once broke a promise. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { caseFile } from '../../src/model/case.ts';
import { evidence } from '../../src/model/case.ts';
import { personFile } from '../../src/model/person.ts';
import { placeEntry } from '../../src/model/place.ts';
import { mention, recordFile } from '../../src/model/record.ts';
import { reviewFile } from '../../src/model/review.ts';
import { search } from '../../src/model/search.ts';
import { series } from '../../src/model/series.ts';
import { siteFile } from '../../src/model/site.ts';
import { everyKey } from '../hostile/every-key.ts';
import { smallImage } from '../hostile/images.ts';
import { checkMany } from './check-many.ts';
import { changingFolder } from './folder.ts';
import { familyAsItIs, mutated } from './mutate.ts';
import { checkFolder } from './promises.ts';

const image = await smallImage();
const found = join(import.meta.dirname, 'found');

test('the family that is changed has no findings, and every key of every schema', () => {
  const folder = changingFolder();
  folder.hold(familyAsItIs(image));
  const { examination, broken } = checkFolder(folder.path);
  folder.remove();
  expect(broken).toEqual([]);
  expect(examination!.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  const text = Object.values(everyKey).join('\n');
  // A conclusion stands in no case that has a hypothesis.
  const absent = new Set(['conclusion', 'asks', 'claim', 'against']);
  for (const schema of [
    recordFile,
    mention,
    caseFile,
    evidence,
    personFile,
    placeEntry,
    search,
    series,
    reviewFile,
    siteFile,
  ])
    for (const key of Object.keys(schema.shape))
      if (!absent.has(key)) expect([key, new RegExp(`(?<![\\w-])${key}:`).test(text)]).toEqual([key, true]);
});

test('a number stands for the same folder for ever', () => {
  expect(mutated(7, 42, image)).toEqual(mutated(7, 42, image));
  expect(mutated(7, 42, image).changed).not.toEqual(mutated(7, 43, image).changed);
});

test('no changed folder breaks the check off, holds it up, or gets a finding without a place', async () => {
  const said: string[] = [];
  const { counts } = await checkMany({ cases: 100, seed: 3, from: 0, image, say: (line) => said.push(line) });
  expect(said.filter((line) => !line.startsWith('…'))).toEqual([]);
  expect(counts.withErrors + counts.fine + counts.refused).toBe(100);
  expect(counts.fine).toBeGreaterThan(3);
}, 240_000);

describe('what was found', () => {
  test.each(readdirSync(found).sort())('%s', (name) => {
    const files = load(readFileSync(join(found, name), 'utf8')) as Record<string, string>;
    const folder = changingFolder();
    folder.hold({ ...familyAsItIs(image), ...files });
    const { broken } = checkFolder(folder.path);
    folder.remove();
    expect(broken).toEqual([]);
  });
});
