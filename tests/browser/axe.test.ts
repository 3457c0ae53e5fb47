import { describe, expect, test } from 'vitest';
import { ofColours, violations } from './support/axe.ts';
import { onPages, useBrowser } from './support/browser.ts';
import { oneOfEach, urlOf } from './support/site.ts';

useBrowser();

describe.each([
  ['light', 1280, undefined],
  ['dark', 1280, ofColours],
  ['light', 390, undefined],
] as const)('in %s colours, %i wide', (colorScheme, width, rules) => {
  test('axe finds nothing on a page of any kind', async () => {
    const found = await onPages(
      oneOfEach,
      { within: '', colorScheme, viewport: { width, height: 900 } },
      async (page, opened) => {
        await opened.page.goto(urlOf(page));
        return (await violations(opened, rules)).map((violation) => `${page} ${violation}`);
      },
      2,
    );
    expect(found.flat()).toEqual([]);
  });
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
