/** How heavy pages are on the way to a phone: the aims the project set itself, held on every page of the demonstration. */
import { readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { parsed } from './support/html.ts';
import { base } from './support/server.ts';
import { kinds, pages, site } from './support/site.ts';

/** Bytes of a page and its styles, compressed, and of its scripts. */
interface Weight {
  page: string;
  kind: string;
  text: number;
  scripts: number;
}

const compressed = new Map<string, number>();
const sizeOf = (file: string): number => {
  const known = compressed.get(file) ?? gzipSync(readFileSync(file)).length;
  compressed.set(file, known);
  return known;
};

function weigh(page: string): Weight {
  const at = (address: string) =>
    // The page for what isn’t there names its files by the path it is served under.
    address.startsWith('/')
      ? join(site, address.slice(base.length))
      : resolve(dirname(join(site, page)), address);
  const document = parsed(page);
  const sheets = document.all('link').filter(({ attribs }) => attribs['rel'] === 'stylesheet');
  const scripts = document.all('script').filter(({ attribs }) => attribs['src'] !== undefined);
  expect(sheets.length, page).toBeGreaterThan(0);
  const sum = (files: string[]) => files.reduce((all, file) => all + sizeOf(at(file)), 0);
  return {
    page,
    kind: kinds.find(({ path }) => path.test(page))!.kind,
    text: sizeOf(join(site, page)) + sum(sheets.map(({ attribs }) => attribs['href']!)),
    scripts: sum(scripts.map(({ attribs }) => attribs['src']!)),
  };
}

const weights = pages.map(weigh);

test.each([
  ['story', 40_000],
  ['person', 40_000],
  ['record', 40_000],
  ['place', 40_000],
  ['home', 40_000],
  ['proof', 60_000],
] as const)('a %s is under %i bytes with its styles, compressed', (kind, most) => {
  const some = weights.filter((one) => one.kind === kind);
  expect(some.length).toBeGreaterThan(0);
  expect(some.filter(({ text }) => text >= most)).toEqual([]);
});

test('pages have less than 15 kB of scripts, but for the one that looks things up', () => {
  expect(weights.filter(({ kind, scripts }) => kind !== 'search' && scripts >= 15_000)).toEqual([]);
  expect(weights.some(({ scripts }) => scripts > 0)).toBe(true);
});
