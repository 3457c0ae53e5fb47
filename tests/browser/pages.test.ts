import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { onPages, useBrowser } from './support/browser.ts';
import { kinds, missing, oneOfEach, pages, site, urlOf } from './support/site.ts';
import { faultsOf, phone } from './support/faults.ts';

useBrowser();

const inside = `${pathToFileURL(site).href}/`;

test('every kind of page is known, and every page is of one kind', () => {
  for (const { kind, examples } of kinds)
    for (const page of examples) expect([kind, pages.includes(page), page]).toEqual([kind, true, page]);
  expect(pages.filter((page) => !kinds.some(({ path }) => path.test(page)))).toEqual([]);
  expect(pages.length).toBeGreaterThan(300);
});

test('pages of every kind, opened from a folder on disk on a phone without JavaScript, is whole, quiet and no wider than the window', async () => {
  const found = await onPages(
    // One of every kind, all that stand by themselves, and some of the many; all are read with the other checks of every page.
    pages.filter(
      (page, i) =>
        page !== missing &&
        (oneOfEach.includes(page) ||
          (/^(?:rules|examples)\//.test(page)
            ? i % 10 === 0
            : i % 2 === 0 || !/^(?:records|people|places)\//.test(page))),
    ),
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
