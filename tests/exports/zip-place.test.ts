import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { CannotWrite } from '../../src/exports/site/problems.ts';
import { clearZip, placeZip, stageZip, zipPlace } from '../../src/exports/zip/place.ts';
import { writeZip } from '../../src/exports/zip/zip.ts';

let root: string;
beforeEach(() => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'whence-zip-place-')));
  for (const folder of ['project/src', 'content', 'site']) mkdirSync(join(root, folder), { recursive: true });
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const at = (file: string) =>
  zipPlace(join(root, file), join(root, 'site'), join(root, 'content'), join(root, 'project'));
const entry = { path: 'a.txt', from: Buffer.from('a') };
const ours = (file: string) =>
  writeZip(join(root, file), [entry], '2026-01-01', `A site made by Whence, sha256-${'0'.repeat(64)}`);
const digits = 'a'.repeat(64);

test('a zip goes where there is none, with its checksum beside it', async () => {
  const place = at('new.zip');
  const sum = await ours('made');
  stageZip(join(root, 'made'), place);
  expect(existsSync(join(root, 'new.zip'))).toBe(false);
  placeZip(place, sum);
  expect(readFileSync(join(root, 'new.zip.sha256'), 'utf8')).toBe(`${sum}  new.zip\n`);
  expect(readdirSync(root).sort()).toEqual(['content', 'new.zip', 'new.zip.sha256', 'project', 'site']);
});

test('an earlier zip of ours is replaced, and only when the new one is whole', async () => {
  const sum = await ours('site.zip');
  placeZip({ ...at('site.zip'), next: join(root, 'site.zip') }, sum);
  const before = readFileSync(join(root, 'site.zip'));
  const place = at('site.zip');
  await writeZip(join(root, 'made'), [entry, { path: 'b', from: Buffer.from('b') }], '2026-01-02', 'x');
  stageZip(join(root, 'made'), place);
  expect(readFileSync(join(root, 'site.zip')).equals(before)).toBe(true);
  clearZip(place);
  expect(readFileSync(join(root, 'site.zip')).equals(before)).toBe(true);
  expect(readdirSync(root).some((name) => name.endsWith('.next'))).toBe(false);
});

describe('nothing else is written over', () => {
  test.each([
    [
      'letters.zip',
      () => writeZip(join(root, 'letters.zip'), [entry], '2026-01-01', 'my letters'),
      'no earlier zip of Whence',
    ],
    [
      'notes.zip',
      () => writeFileSync(join(root, 'notes.zip'), `A site made by Whence, sha256-${digits}`),
      'no earlier zip of Whence',
    ],
    ['empty.zip', () => writeFileSync(join(root, 'empty.zip'), ''), 'no earlier zip of Whence'],
    ['folder.zip', () => mkdirSync(join(root, 'folder.zip')), 'it is a folder'],
    ['sum.zip', () => writeFileSync(join(root, 'sum.zip.sha256'), 'my own notes'), 'no checksum of it'],
    [
      'other.zip',
      () => writeFileSync(join(root, 'other.zip.sha256'), `${digits}  another.zip\n`),
      'no checksum of it',
    ],
    ['content/x.zip', () => undefined, 'lies in the content folder'],
    ['project/src/x.zip', () => undefined, 'project’s own files'],
    ['site/x.zip', () => undefined, 'folder of the site itself'],
  ])('%s', async (file, lay, why) => {
    await lay();
    expect(() => at(file)).toThrow(CannotWrite);
    expect(() => at(file)).toThrow(why);
  });
});
