/** The site map for search engines, in the Sitemaps protocol 0.9 (https://www.sitemaps.org/protocol.html). */
import { element } from './xml.ts';

/** The protocol’s own limits for one file. */
const limits = { urls: 50_000, bytes: 52_428_800 };

const head = '<?xml version="1.0" encoding="UTF-8"?>\n';
const space = 'xmlns="http://www.sitemaps.org/schemas/sitemap/0.9"';

/**
 * The files of the site map: `sitemap.xml`, and where the pages are more than one file may list, further ones which it
 * then leads to. `pages` are paths in the site; `changed` knows the day on which some of them last changed.
 */
export function siteMap(
  address: string,
  pages: readonly string[],
  changed: (page: string) => string | undefined,
  { urls, bytes } = limits,
): { path: string; text: string }[] {
  const parts: string[][] = [];
  let size = Infinity;
  for (const page of [...pages].sort(byPath)) {
    const entry = `<url>${element('loc', addressOf(address, page))}${element('lastmod', changed(page))}</url>\n`;
    const length = Buffer.byteLength(entry);
    if (size + length > bytes - 200 || parts.at(-1)!.length === urls) {
      parts.push([]);
      size = 0;
    }
    parts.at(-1)!.push(entry);
    size += length;
  }
  const texts = parts.map((entries) => `${head}<urlset ${space}>\n${entries.join('')}</urlset>\n`);
  if (texts.length === 1) return [{ path: 'sitemap.xml', text: texts[0]! }];
  const files = texts.map((text, i) => ({ path: `sitemap-${i + 1}.xml`, text }));
  const list = files.map(({ path }) => `<sitemap>${element('loc', address + path)}</sitemap>\n`).join('');
  return [
    { path: 'sitemap.xml', text: `${head}<sitemapindex ${space}>\n${list}</sitemapindex>\n` },
    ...files,
  ];
}

/** The home page is the site’s address itself. */
function addressOf(address: string, page: string): string {
  return address + (page === 'index.html' ? '' : page.split('/').map(encodeURIComponent).join('/'));
}

/** The home page first. */
function byPath(a: string, b: string): number {
  if (a === 'index.html' || b === 'index.html') return a === b ? 0 : a === 'index.html' ? -1 : 1;
  return a < b ? -1 : 1;
}
