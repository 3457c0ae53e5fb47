import { expect, test } from 'vitest';
import { ofColours, ofLayout, violations } from './support/axe.ts';
import { onPages, useBrowser } from './support/browser.ts';
import { oneOfEach, urlOf } from './support/site.ts';

useBrowser();

test('axe finds nothing on a page of any kind, in light colours and dark ones, on a desk and on a phone', async () => {
  const found = await onPages(
    oneOfEach,
    { within: '', colorScheme: 'light', viewport: { width: 1280, height: 900 } },
    async (page, opened) => {
      const look = async (how: string, rules?: readonly string[]) =>
        (await violations(opened, rules)).map((violation) => `${page} ${how}: ${violation}`);
      await opened.page.goto(urlOf(page));
      const light = await look('in light colours');
      await opened.page.emulateMedia({ colorScheme: 'dark' });
      const dark = await look('in dark colours', ofColours);
      await opened.page.setViewportSize({ width: 390, height: 844 });
      const narrow = await look('in dark colours on a phone', ofLayout);
      await opened.page.emulateMedia({ colorScheme: 'light' });
      await opened.page.setViewportSize({ width: 1280, height: 900 });
      return [...light, ...dark, ...narrow];
    },
    3,
  );
  expect(found.flat()).toEqual([]);
});

test('axe does look: pale text, a picture without words and a missing language are found', async () => {
  const [found] = await onPages(['bad'], { within: '' }, async (_, opened) => {
    await opened.page.setContent(
      '<main><h1>A</h1><p style="color: #ccc; background: #fff">Pale</p><img src="data:,"></main>',
    );
    return violations(opened);
  });
  const rules = found!.map((said) => said.slice(0, said.indexOf(':')));
  expect(rules).toEqual(expect.arrayContaining(['color-contrast', 'image-alt', 'html-has-lang']));
});
