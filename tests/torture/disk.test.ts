/** A disk that is full, and one that can only be read: the earlier site stays whole, and what is said is a sentence. */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { noRoom } from '../../src/cli/shared/run.ts';
import { manifestOf, manifestText, readManifest } from '../../src/exports/site/manifest.ts';
import { planChanges, writeChanges } from '../../src/imports/changes.ts';
import { readMemory } from '../../src/imports/memory.ts';
import { disk, mend, swapIn } from '../../src/exports/site/swap.ts';
import { beside, targetAt } from '../../src/exports/site/target.ts';

let root: string;
let small: string;
let mounted = false;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'whence-disk-'));
  small = join(root, 'small');
  mkdirSync(small);
  // Only whoever administers the machine may mount; elsewhere these tests are passed over.
  mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', small]).status === 0;
});
afterAll(() => {
  if (mounted) spawnSync('umount', ['-l', small]);
  rmSync(root, { recursive: true, force: true });
});

function site(folder: string, bytes: number): string {
  mkdirSync(join(folder, 'records'), { recursive: true });
  const digests = new Map<string, string>();
  for (const path of ['index.html', 'records/a.html', 'records/b.html']) {
    const text = path.repeat(Math.ceil(bytes / 3 / path.length));
    writeFileSync(join(folder, path), text);
    digests.set(path, createHash('sha256').update(text).digest('hex'));
  }
  writeFileSync(join(folder, 'whence.json'), manifestText(manifestOf(digests)));
  return folder;
}

function isWhole(folder: string): boolean {
  return readManifest(folder)!.files.every(
    ({ path, sha256 }) =>
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex') === sha256,
  );
}

describe('an import that does not fit on the disk', () => {
  test('says so, leaves every file whole, and goes on when there is room', ({ skip }) => {
    if (!mounted) skip();
    const content = join(small, 'content');
    mkdirSync(content);
    const texts = (word: string) =>
      Array.from({ length: 12 }, (_, i) => ({ file: `records/r${i}.md`, text: word.repeat(12_000) }));
    const bring = (word: string) => {
      const plan = planChanges(content, texts(word), readMemory(content, 'tables'));
      writeChanges(content, 'tables', plan);
      return plan.changes.map(({ fate }) => fate);
    };
    bring('one ');
    writeFileSync(join(small, 'filler'), Buffer.alloc(300_000));
    let thrown: unknown;
    try {
      bring('three ones ');
    } catch (error) {
      thrown = error;
    }
    expect(noRoom(thrown)).toBeUndefined();
    expect((thrown as Error).message).toMatch(
      /records\/r\d+\.md can’t be written: there is no room left on the disk\. What was written before is whole; when that is mended, import again, and it goes on from there\.$/,
    );
    const names = readdirSync(join(content, 'records'));
    expect(names.filter((name) => !/^r\d+\.md$/.test(name))).toEqual([]);
    const sizes = new Set(names.map((name) => readFileSync(join(content, 'records', name)).length));
    expect([...sizes].sort((a, b) => a - b)).toEqual([48_000, 132_000]);
    rmSync(join(small, 'filler'));
    expect(() => bring('three ones ')).toThrow('can’t be written');
    expect(bring('two ').every((fate) => fate === 'changed')).toBe(true);
    rmSync(content, { recursive: true });
  });
});

describe('a site that does not fit on the disk it is to stand on', () => {
  test('leaves the earlier one whole, and nothing of its own', ({ skip }) => {
    if (!mounted) skip();
    const target = beside(join(small, 'site'));
    swapIn(site(join(root, 'first'), 300_000), target);
    const before = readManifest(target.folder)!.digest;
    expect(isWhole(target.folder)).toBe(true);
    let thrown: unknown;
    try {
      swapIn(site(join(root, 'second'), 2_000_000), target);
    } catch (error) {
      thrown = error;
    }
    expect(noRoom(thrown)).toMatch(
      /^Writing stopped: (?:there is no room left on the disk|the disk takes nothing more).*--out\.$/s,
    );
    expect(readManifest(target.folder)!.digest).toBe(before);
    expect(isWhole(target.folder)).toBe(true);
    expect(readdirSync(small)).toEqual(['site']);
    // With room again, the next one takes its place.
    swapIn(site(join(root, 'third'), 200_000), target);
    expect(isWhole(target.folder)).toBe(true);
  });

  test('cut off while it is copied, is cleared away by the next command', ({ skip }) => {
    if (!mounted) skip();
    const target = beside(join(small, 'other'));
    writeFileSync(target.sign, '');
    site(target.next, 100_000);
    rmSync(join(target.next, 'records/b.html'));
    mend(target);
    expect(existsSync(target.next)).toBe(false);
  });
});

test('a disk that can only be read is refused before anything is made', ({ skip }) => {
  if (!mounted) skip();
  if (spawnSync('mount', ['-o', 'remount,ro', small]).status !== 0) skip();
  const content = join(root, 'content');
  mkdirSync(content, { recursive: true });
  expect(() => targetAt(join(small, 'new'), content, join(root, 'project'))).toThrow(
    /nothing may be written into/,
  );
  spawnSync('mount', ['-o', 'remount,rw', small]);
});

test('other errors are not taken for a full disk', () => {
  expect(noRoom(new Error('EACCES: permission denied'))).toBeUndefined();
  expect(noRoom('ENOSPC')).toBeUndefined();
});

test('a removal that is cut off leaves the list by which the rest is known as ours', ({ skip }) => {
  if (!mounted) skip();
  const folder = site(join(root, 'gone'), 3000);
  // A disk of its own in the middle of the folder: the removal can’t get past it.
  if (spawnSync('mount', ['-t', 'tmpfs', 'tmpfs', join(folder, 'records')]).status !== 0) skip();
  expect(() => disk.remove(folder)).toThrow();
  spawnSync('umount', ['-l', join(folder, 'records')]);
  expect(readManifest(folder)).toBeDefined();
  disk.remove(folder);
  expect(existsSync(folder)).toBe(false);
});
