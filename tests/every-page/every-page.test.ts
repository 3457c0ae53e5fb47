/** What is looked at on every page there is: longer than the other tests together, so a command of its own. */
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { ofColours, violations } from '../browser/support/axe.ts';
import { onPages, useBrowser } from '../browser/support/browser.ts';
import { faultsOf, phone } from '../browser/support/faults.ts';
import { missing, pages, site, urlOf } from '../browser/support/site.ts';

useBrowser();

test('axe finds nothing on any page, in light or in dark colours', async () => {
  expect(pages.length).toBeGreaterThan(300);
  const found = await onPages(
    pages,
    { within: '', colorScheme: 'light', viewport: { width: 1280, height: 900 } },
    async (page, opened) => {
      await opened.page.goto(urlOf(page));
      const light = await violations(opened);
      await opened.page.emulateMedia({ colorScheme: 'dark' });
      const dark = await violations(opened, ofColours);
      await opened.page.emulateMedia({ colorScheme: 'light' });
      return [
        ...light.map((said) => `${page} in light colours: ${said}`),
        ...dark.map((said) => `${page} in dark colours: ${said}`),
      ];
    },
    3,
  );
  expect(found.flat()).toEqual([]);
});

test('every page, opened from a folder on disk on a phone without JavaScript, is whole, quiet and no wider than the window', async () => {
  const found = await onPages(
    pages.filter((page) => page !== missing),
    { ...phone, within: `${pathToFileURL(site).href}/` },
    async (page, opened) => (await faultsOf(urlOf(page), opened)).map((fault) => `${page} ${fault}`),
    3,
  );
  expect(found.flat()).toEqual([]);
});
