import { get, type IncomingMessage } from 'node:http';
import { expect, test } from 'vitest';
import { newPage, useBrowser } from './support/browser.ts';
import { addresses, parse } from './support/html.ts';
import { base } from './support/server.ts';
import { missing, oneOfEach, pages, served } from './support/site.ts';

useBrowser();

async function fetched(address: string): Promise<{ status: number; type: string; text: string }> {
  const response = await new Promise<IncomingMessage>((resolve, reject) => {
    get(address, resolve).on('error', reject);
  });
  const parts: Buffer[] = [];
  for await (const part of response) parts.push(part as Buffer);
  return {
    status: response.statusCode ?? 0,
    type: response.headers['content-type'] ?? '',
    text: Buffer.concat(parts).toString('utf8'),
  };
}

test('served under a path, every link from the first page on is answered, and all pages are met', async () => {
  const seen = new Set([served]);
  const wrong: string[] = [];
  for (const address of seen) {
    const { status, type, text } = await fetched(address);
    if (status !== 200) wrong.push(`${address} ${status}`);
    if (!type.startsWith('text/html')) continue;
    for (const link of addresses(parse(address, text))) {
      const to = new URL(link, address);
      if (!to.protocol.startsWith('http')) continue;
      to.hash = '';
      if (to.href.startsWith(served)) seen.add(to.href);
      else wrong.push(`${address} leads away to ${to.href}`);
    }
  }
  expect(wrong).toEqual([]);
  expect(
    pages.filter((page) => page !== missing && !seen.has(served + page) && page !== 'index.html'),
  ).toEqual([]);
});

test('served under a path, a page of every kind is styled, shows its pictures and says nothing on the console', async () => {
  const { page, faults } = await newPage({ within: served });
  for (const one of oneOfEach.filter((name) => name !== missing)) {
    await page.goto(served + one);
    expect([
      one,
      await page.evaluate(() =>
        document.fonts.ready.then(() => [...document.fonts].some(({ status }) => status === 'loaded')),
      ),
    ]).toEqual([one, true]);
    expect([
      one,
      await page.evaluate(
        () =>
          // A viewer that is not open has no picture yet.
          [...document.images].filter(
            (image) => image.hasAttribute('src') && image.complete && image.naturalWidth === 0,
          ).length,
      ),
    ]).toEqual([one, 0]);
  }
  expect(faults).toEqual([]);
  await page.context().close();
});

test('an address that isn’t there, however deep, is answered by a page that is whole and leads home', async () => {
  const { page, faults } = await newPage({ within: new URL('/', served).href });
  const response = await page.goto(`${served}records/of/nobody/at-all.html`);
  expect(response?.status()).toBe(404);
  expect(
    await page.evaluate(() =>
      document.fonts.ready.then(() => [...document.fonts].some(({ status }) => status === 'loaded')),
    ),
  ).toBe(true);
  // The browser itself notes the answer 404; nothing else may be said.
  expect(faults.filter((fault) => !fault.includes('status of 404'))).toEqual([]);
  await page.getByRole('main').getByRole('link').first().click();
  expect(new URL(page.url()).pathname.startsWith(base)).toBe(true);
  expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
  await page.context().close();
});
