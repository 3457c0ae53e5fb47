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
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { sha256 } from '../../src/exports/site/files-under.ts';
import { manifestOf, manifestText } from '../../src/exports/site/manifest.ts';
import { disk, mend, swapIn, type Disk } from '../../src/exports/site/swap.ts';
import { beside, type Target } from '../../src/exports/site/target.ts';

let root: string;
let target: Target;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'whence-swap-'));
  target = beside(join(root, 'site'));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

function site(folder: string, files: Record<string, string>): string {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  writeFileSync(
    join(folder, 'whence.json'),
    manifestText(
      manifestOf(new Map(Object.entries(files).map(([path, text]) => [path, sha256(Buffer.from(text))]))),
    ),
  );
  return folder;
}
const earlier = () =>
  site(target.folder, { 'index.html': 'old', 'records/a.html': 'old a', 'records/gone.html': 'old' });
const made = () => site(join(root, 'made'), { 'index.html': 'new', 'records/a.html': 'new a' });
const read = (path: string) => readFileSync(join(target.folder, path), 'utf8');

describe('a finished site takes its place', () => {
  test('where there was nothing, folders above included', () => {
    target = beside(join(root, 'deep/er/site'));
    swapIn(made(), target);
    expect(read('records/a.html')).toBe('new a');
    expect(readdirSync(dirname(target.folder))).toEqual(['site']);
  });
  test('of an empty folder', () => {
    mkdirSync(target.folder);
    swapIn(made(), target);
    expect(read('index.html')).toBe('new');
  });
  test('of an earlier site, nothing of which stays', () => {
    earlier();
    expect(swapIn(made(), target)).toEqual([]);
    expect(read('index.html')).toBe('new');
    expect(existsSync(join(target.folder, 'records/gone.html'))).toBe(false);
    expect(readdirSync(root)).toEqual(['site']);
  });
  test('and files that were never the site’s are kept', () => {
    earlier();
    writeFileSync(join(target.folder, 'CNAME'), 'family.example');
    writeFileSync(join(target.folder, 'records/mine.txt'), 'mine');
    mkdirSync(join(target.folder, '.git/objects'), { recursive: true });
    writeFileSync(join(target.folder, '.git/HEAD'), 'ref');
    expect(swapIn(made(), target)).toEqual(['.git', 'CNAME', 'records/mine.txt']);
    expect([read('CNAME'), read('records/mine.txt'), read('.git/HEAD'), read('index.html')]).toEqual([
      'family.example',
      'mine',
      'ref',
      'new',
    ]);
    expect(readdirSync(root)).toEqual(['site']);
  });
  test('unless it would replace a file that was never the site’s', () => {
    site(target.folder, { 'index.html': 'old' });
    mkdirSync(join(target.folder, 'records'));
    writeFileSync(join(target.folder, 'records/a.html'), 'mine');
    const finished = made();
    expect(() => swapIn(finished, target)).toThrow('records');
    expect([read('index.html'), read('records/a.html')]).toEqual(['old', 'mine']);
    expect(readdirSync(root)).toEqual(['site']);
  });
  test('and a file that a list claims, but that is not what it lists, is kept unless the new site has it', () => {
    earlier();
    const list = (files: object[]) =>
      writeFileSync(
        join(target.folder, 'whence.json'),
        JSON.stringify({ madeBy: 'whence', version: 1, digest: 'sha256-0', files }),
      );
    mkdirSync(join(target.folder, 'photos'));
    for (const name of ['photos/a.jpg', 'thesis.txt']) writeFileSync(join(target.folder, name), 'mine');
    const wrong = '0'.repeat(64);
    const claimed = ['photos', 'photos/a.jpg', 'thesis.txt', '../victim', '/etc/hostname'];
    writeFileSync(join(root, 'victim'), 'mine');
    const finished = made();
    // A site is written anew whole: what somebody spoilt of it comes right.
    list(
      [...claimed, 'index.html', 'records/a.html', 'records/gone.html'].map((path) => ({
        path,
        sha256: wrong,
      })),
    );
    expect(swapIn(finished, target)).toEqual(['photos/a.jpg', 'records/gone.html', 'thesis.txt']);
    expect([read('photos/a.jpg'), read('thesis.txt'), read('index.html')]).toEqual(['mine', 'mine', 'new']);
    expect(readFileSync(join(root, 'victim'), 'utf8')).toBe('mine');
  });
  test('also from another disk, by way of a copy beside it', () => {
    earlier();
    const finished = made();
    const across: Disk = {
      ...disk,
      rename: (from, to) => {
        if (from === finished)
          throw Object.assign(new Error('EXDEV: cross-device link not permitted'), { code: 'EXDEV' });
        disk.rename(from, to);
      },
    };
    swapIn(finished, target, across);
    expect(read('records/a.html')).toBe('new a');
  });
});

describe('folders beside it that no exchange left', () => {
  test('are not touched: the site is not put into its place', () => {
    for (const place of [target.next, target.previous]) {
      rmSync(root, { recursive: true, force: true });
      mkdirSync(root);
      earlier();
      site(place, { 'index.html': 'a copy', 'note.txt': 'mine' });
      mend(target);
      expect(readFileSync(join(place, 'note.txt'), 'utf8')).toBe('mine');
      const finished = made();
      expect(() => swapIn(finished, target)).toThrow('which is needed while the site is written');
      expect(readFileSync(join(place, 'note.txt'), 'utf8')).toBe('mine');
      expect(read('index.html')).toBe('old');
    }
  });
  test('but an earlier site in whose place there is none goes back there', () => {
    disk.rename(earlier(), target.previous);
    mend(target);
    expect(read('index.html')).toBe('old');
    expect(readdirSync(root)).toEqual(['site']);
  });
});

describe('when a step fails, the earlier site is whole and in its place', () => {
  const failing = (step: number, code: string): Disk => {
    let count = 0;
    return {
      ...disk,
      rename: (from, to) => {
        if (++count === step) throw Object.assign(new Error(`${code}: no`), { code });
        disk.rename(from, to);
      },
    };
  };
  test.each([
    [1, 'EACCES', 'moving the new site beside it'],
    [2, 'EBUSY', 'setting the earlier one aside'],
    [3, 'EPERM', 'putting the new one into its place'],
  ])('step %i, %s: %s', (step, code) => {
    earlier();
    const finished = made();
    expect(() => swapIn(finished, target, failing(step, code))).toThrow();
    expect([read('index.html'), read('records/a.html'), read('records/gone.html')]).toEqual([
      'old',
      'old a',
      'old',
    ]);
    expect(readdirSync(root).filter((name) => name !== 'made')).toEqual(['site']);
  });
  test('a copy from another disk that breaks off', () => {
    earlier();
    const finished = made();
    const broken: Disk = {
      ...disk,
      rename: () => {
        throw Object.assign(new Error('EXDEV'), { code: 'EXDEV' });
      },
      copy: (from, to) => {
        if (from === finished)
          throw Object.assign(new Error('ENOSPC: no space left on device'), { code: 'ENOSPC' });
        disk.copy(from, to);
      },
    };
    expect(() => swapIn(finished, target, broken)).toThrow('ENOSPC');
    expect(read('index.html')).toBe('old');
    expect(readdirSync(root)).toEqual(['made', 'site']);
  });
});

describe('the next build mends what one that was cut off left', () => {
  test('between the two renames: the earlier site comes back', () => {
    writeFileSync(target.sign, '');
    disk.rename(earlier(), target.previous);
    site(target.next, { 'index.html': 'new' });
    mend(target);
    expect(read('index.html')).toBe('old');
    expect(readdirSync(root)).toEqual(['site']);
  });
  test('after them: what was never the site’s comes back and the earlier site goes', () => {
    earlier();
    writeFileSync(join(target.folder, 'CNAME'), 'family.example');
    writeFileSync(target.sign, '');
    disk.rename(target.folder, target.previous);
    disk.rename(made(), target.folder);
    mend(target);
    expect([read('index.html'), read('CNAME')]).toEqual(['new', 'family.example']);
    expect(readdirSync(root)).toEqual(['site']);
  });
});
