import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { onPages, useBrowser, type Opened } from './support/browser.ts';
import { kinds, missing, pages, site, urlOf } from './support/site.ts';
import { overflow } from './support/layout.ts';

useBrowser();

/** The window of a small phone, without JavaScript, as a file opened from a folder on disk. */
const phone = { viewport: { width: 390, height: 844 }, javaScriptEnabled: false };
const inside = `${pathToFileURL(site).href}/`;

/** What is wrong with a page once it is open. */
async function faultsOf(url: string, { page, faults }: Opened): Promise<string[]> {
  await page.goto(url);
  const counted = await page.evaluate(() => ({
    h1: document.querySelectorAll('h1').length,
    main: document.querySelectorAll('main, [role=main]').length,
    title: document.title.trim().length,
    lang: document.documentElement.lang,
    // What the page’s own policy had kept out would be seen here: sheets that were not applied, pictures that did not come.
    styled: document.styleSheets.length,
    unseen: [...document.images].filter((image) => image.complete && image.naturalWidth === 0).length,
  }));
  return [
    ...(counted.h1 === 1 ? [] : [`has ${counted.h1} headings of the first rank`]),
    ...(counted.main === 1 ? [] : [`has ${counted.main} main landmarks`]),
    ...(counted.title > 0 ? [] : ['has no title']),
    ...(counted.lang ? [] : ['does not say its language']),
    ...(counted.styled > 0 ? [] : ['has no style sheet']),
    ...(counted.unseen === 0 ? [] : ['has a picture that does not show']),
    ...(await overflow(page)),
    ...faults,
  ];
}

test('every kind of page is known, and every page is of one kind', () => {
  for (const { kind, examples } of kinds)
    for (const page of examples) expect([kind, pages.includes(page), page]).toEqual([kind, true, page]);
  expect(pages.filter((page) => !kinds.some(({ path }) => path.test(page)))).toEqual([]);
  expect(pages.length).toBeGreaterThan(300);
});

test('every page, opened from a folder on disk on a phone without JavaScript, is whole, quiet and no wider than the window', async () => {
  const found = await onPages(
    pages.filter((page) => page !== missing),
    { ...phone, within: inside },
    async (page, opened) => (await faultsOf(urlOf(page), opened)).map((fault) => `${page} ${fault}`),
    3,
  );
  expect(found.flat()).toEqual([]);
});

test('a page with every one of these faults is told from a good one', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'whence-bad-page-'));
  try {
    writeFileSync(
      join(folder, 'bad.html'),
      `<!doctype html><meta http-equiv="Content-Security-Policy" content="style-src 'self'"><link rel="stylesheet" href="gone.css">
       <h1>One</h1><h1>Two</h1><p style="color: red">Red</p><img src="http://outside.invalid/a.png" alt=""><table><tr><td>${'wide'.repeat(200)}</table>`,
    );
    const url = pathToFileURL(join(folder, 'bad.html')).href;
    const [found] = await onPages([url], { ...phone, within: `${pathToFileURL(folder).href}/` }, faultsOf);
    const said = found!.join('\n');
    for (const fault of [
      'has 2 headings of the first rank',
      'has 0 main landmarks',
      'has no title',
      'does not say its language',
      'has a picture that does not show',
      'wide in a window of 390',
      '<table> reaches from',
      'asks for http://outside.invalid/a.png',
      'gone.css',
      'inline style',
    ])
      expect(said).toContain(fault);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
