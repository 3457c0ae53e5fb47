/** axe on every page there is, in light and in dark colours: longer than the other tests together, so a command of its own. */
import { expect, test } from 'vitest';
import { ofColours, violations } from '../browser/support/axe.ts';
import { onPages, useBrowser } from '../browser/support/browser.ts';
import { pages, urlOf } from '../browser/support/site.ts';

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
