/**
 * The Sitemaps protocol 0.9 (https://www.sitemaps.org/protocol.html), section by section. Dates are those of the W3C
 * profile of ISO 8601 (https://www.w3.org/TR/NOTE-datetime).
 */
import { parseXml, type XmlElement } from '@rgrove/parse-xml';
import { describe, expect, test } from 'vitest';
import { siteMap } from '../../src/exports/feed/site-map.ts';

const address = 'https://family.example/phelan/';
const namespace = 'http://www.sitemaps.org/schemas/sitemap/0.9';
const days: Record<string, string> = { 'cases/x.html': '2025-03-01', 'index.html': '2025-03-01' };
const mapOf = (pages: readonly string[], limits?: { urls: number; bytes: number }) =>
  siteMap(address, pages, (page) => days[page], limits);
const elements = (parent: XmlElement) =>
  parent.children.filter((node) => node.type === 'element') as XmlElement[];
const read = (xml: string) => {
  const { root } = parseXml(xml);
  return {
    name: root!.name,
    namespace: root!.attributes.xmlns,
    entries: elements(root!).map((entry) => [
      entry.name,
      ...elements(entry).map(({ name, text }) => [name, text] as const),
    ]),
  };
};

describe('one file (XML tag definitions)', () => {
  const [file, ...others] = mapOf([
    'records/x.html',
    'index.html',
    "people/ødegård & sønn's.html",
    'cases/x.html',
  ]);
  test('lists each page by its whole address, escaped, with the day it changed where that is known', () => {
    expect([file!.path, others]).toEqual(['sitemap.xml', []]);
    expect(read(file!.text)).toEqual({
      name: 'urlset',
      namespace,
      entries: [
        ['url', ['loc', address], ['lastmod', '2025-03-01']],
        ['url', ['loc', `${address}cases/x.html`], ['lastmod', '2025-03-01']],
        ['url', ['loc', `${address}people/%C3%B8deg%C3%A5rd%20%26%20s%C3%B8nn's.html`]],
        ['url', ['loc', `${address}records/x.html`]],
      ],
    });
  });
  test('every address is one a URL parser leaves as it is, below that of the map (Sitemap file location)', () => {
    for (const [, loc] of read(file!.text).entries as [string, readonly [string, string]][]) {
      expect(new URL(loc[1]).href).toBe(loc[1]);
      expect(loc[1].startsWith(address)).toBe(true);
    }
  });
});

describe('more pages than one file may list (Using Sitemap index files)', () => {
  const pages = Array.from({ length: 50_001 }, (_, i) => `records/r${i}.html`);
  const [index, ...parts] = mapOf(pages);
  test('an index leads to files of 50,000 addresses at most, which list every page once', () => {
    expect(read(index!.text)).toEqual({
      name: 'sitemapindex',
      namespace,
      entries: [
        ['sitemap', ['loc', `${address}sitemap-1.xml`]],
        ['sitemap', ['loc', `${address}sitemap-2.xml`]],
      ],
    });
    const listed = parts.map(({ text }) =>
      [...text.matchAll(/<loc>([^<]*)<\/loc>/g)].map((found) => found[1]!),
    );
    expect(listed.map(({ length }) => length)).toEqual([50_000, 1]);
    expect(new Set(listed.flat())).toEqual(new Set(pages.map((page) => address + page)));
    expect(parseXml(parts[1]!.text).root!.name).toBe('urlset');
  });
  test('no file is larger than allowed', () => {
    const small = mapOf(pages.slice(0, 500), { urls: 50_000, bytes: 4_000 });
    expect(small.length).toBeGreaterThan(5);
    for (const { path, text } of small.slice(1)) {
      expect([path, Buffer.byteLength(text) <= 4_000]).toEqual([path, true]);
      expect(read(text).entries.length).toBeGreaterThan(10);
    }
  });
});
