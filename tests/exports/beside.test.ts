import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cardOfCase, cardOfHome } from '../../components/layout/href.ts';
import { filesBeside, type FileBeside } from '../../src/exports/site/beside.ts';
import { caseFile, dossierOf, site } from './published-content.ts';

let cache: string;
beforeAll(() => (cache = mkdtempSync(join(tmpdir(), 'whence-beside-'))));
afterAll(() => rmSync(cache, { recursive: true, force: true }));

const pages = ['404.html', 'cases/phelan.html', 'cases/phelan/proof.html', 'index.html'];
async function beside(files: Record<string, string> = {}): Promise<Map<string, FileBeside>> {
  const made = new Map<string, FileBeside>();
  for await (const file of filesBeside(dossierOf(files), pages, cache)) made.set(file.path, file);
  return made;
}

describe('beside the pages stand', () => {
  test('of a site with an address: feed, site map, robots, and a card for the home page and each case', async () => {
    const files = await beside({ 'cases/phelan.md': caseFile('published: 2025-03-01\n') });
    expect([...files.keys()]).toEqual([
      'robots.txt',
      'feed.xml',
      'sitemap.xml',
      cardOfHome.slice(1),
      cardOfCase('phelan').slice(1),
    ]);
    const map = String(files.get('sitemap.xml')!.content);
    expect(map).toContain(
      '<loc>https://family.example/phelan/cases/phelan/proof.html</loc><lastmod>2025-03-01</lastmod>',
    );
    expect(map).not.toContain('404');
    // RFC 9309 2.2: an empty Disallow rule disallows nothing
    expect(String(files.get('robots.txt')!.content)).toBe(
      'User-agent: *\nDisallow:\n\nSitemap: https://family.example/phelan/sitemap.xml\n',
    );
    expect(files.get('cards/cases/phelan.png')!.says).toContain('Where was Maurice Phelan born?');
  });
  test('of a site without an address: nothing', async () =>
    expect([...(await beside({ 'site.yaml': 'title: The Phelans\n' })).keys()]).toEqual([]));
  test.each(['', 'address: https://family.example/\n'])(
    'of a family’s own site: a word to robots, whatever its address (%j)',
    async (address) => {
      const files = await beside({ 'site.yaml': `title: The Phelans\naudience: family\n${address}` });
      expect([...files.values()]).toEqual([{ path: 'robots.txt', content: 'User-agent: *\nDisallow: /\n' }]);
    },
  );
});

test('nothing of someone living is in any of it', async () => {
  const files = await beside({
    'site.yaml': site,
    'people/nora.md': '---\nname: Nora Verran\nborn: { date: 1990 }\n---\n',
    'cases/nora.md': caseFile('published: 2025-01-01\n', 'Where was she born?').replace(
      'subject: maurice-phelan',
      'subject: nora',
    ),
  });
  expect([...files.keys()]).toContain('feed.xml');
  for (const { path, content, says } of files.values())
    expect([path, /nora|verran/i.test(path + (path.endsWith('.png') ? says : String(content)))]).toEqual([
      path,
      false,
    ]);
});
