import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { sha256 } from '../../src/exports/site/files-under.ts';
import { digestOfInputs, rememberMade, stillStands } from '../../src/exports/site/inputs.ts';
import { manifestOf, manifestText } from '../../src/exports/site/manifest.ts';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'whence-inputs-'));
  put('content/site.yaml', 'title: A');
  put('content/records/a.md', 'one');
  for (const folder of ['src', 'components', 'public']) put(`project/${folder}/x.ts`, folder);
  for (const file of ['astro.config.mjs', 'tsconfig.json', 'package.json', 'package-lock.json'])
    put(`project/${file}`, file);
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

function put(path: string, text: string): void {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}
const inputs = (options: string[] = ['2026-01-01', '/']) =>
  digestOfInputs(join(root, 'content'), join(root, 'project'), options);

describe('the digest of what a site is made from', () => {
  test.each([
    ['a file changes', () => put('content/records/a.md', 'two')],
    ['a file comes', () => put('content/records/b.md', '')],
    ['a file goes', () => rmSync(join(root, 'content/records/a.md'))],
    ['a program changes', () => put('project/src/x.ts', 'other')],
    ['a package changes', () => put('project/package-lock.json', 'other')],
  ])('changes when %s', (_what, change) => {
    const before = inputs();
    expect(before).toMatch(/^[0-9a-f]{64}$/);
    change();
    expect(inputs()).not.toBe(before);
  });

  test('changes with the day and the base, and not with the clock or a hidden file', () => {
    const before = inputs();
    expect(inputs(['2026-01-02', '/'])).not.toBe(before);
    expect(inputs(['2026-01-01', '/x/'])).not.toBe(before);
    utimesSync(join(root, 'content/site.yaml'), 0, 0);
    put('content/.DS_Store', 'litter');
    expect(inputs()).toBe(before);
  });

  test('tells one long file from two short ones', () => {
    put('content/records/a.md', 'x');
    put('content/records/b.md', 'y');
    const two = inputs();
    rmSync(join(root, 'content/records/b.md'));
    put('content/records/a.md', 'x\0records/b.md\x001\0y');
    expect(inputs()).not.toBe(two);
  });

  test('is not to be had of a folder that can’t be read', () => {
    rmSync(join(root, 'content'), { recursive: true });
    expect(inputs()).toBeUndefined();
  });
});

describe('a site that was made before', () => {
  const site = () => join(root, 'site');
  const memory = () => join(root, 'memory');
  const made = () => {
    put('site/index.html', 'page');
    put('site/records/a.html', 'record');
    const files = new Map(
      [
        ['index.html', 'page'],
        ['records/a.html', 'record'],
      ].map(([path, text]) => [path!, sha256(Buffer.from(text!))]),
    );
    put('site/whence.json', manifestText(manifestOf(files)));
    rememberMade(memory(), site(), inputs());
  };

  test('stands while nothing changes', () => {
    made();
    expect(stillStands(memory(), site(), inputs())).toBe(true);
  });

  test.each([
    ['the content changed', () => put('content/records/a.md', 'two')],
    ['a page of it changed', () => put('site/records/a.html', 'recorD')],
    ['a page of it is gone', () => rmSync(join(root, 'site/records/a.html'))],
    ['its list is gone', () => rmSync(join(root, 'site/whence.json'))],
    [
      'it is another site, whole in itself',
      () => {
        put('site/index.html', 'other');
        put(
          'site/whence.json',
          manifestText(manifestOf(new Map([['index.html', sha256(Buffer.from('other'))]]))),
        );
      },
    ],
    ['nothing is remembered', () => rmSync(join(root, 'memory'), { recursive: true })],
  ])('is made anew when %s', (_what, change) => {
    made();
    change();
    expect(stillStands(memory(), site(), inputs())).toBe(false);
  });
});
