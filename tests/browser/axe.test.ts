import axe, { type AxeResults, type RunOptions } from 'axe-core';
import { describe, expect, test } from 'vitest';
import { onPages, useBrowser, type Opened } from './support/browser.ts';
import { oneOfEach, urlOf } from './support/site.ts';

useBrowser();

/**
 * What axe has to say of an open page, all its rules on. Its program is handed to the page over the debugger’s line,
 * which the page’s own policy does not govern; a script element would be refused, as it should be.
 */
async function violations({ page }: Opened, rules?: string[]): Promise<string[]> {
  // What passes is not described at length: that takes longer than the looking.
  const options: RunOptions = {
    resultTypes: ['violations'],
    ...(rules ? { runOnly: { type: 'rule', values: rules } } : {}),
  };
  // What is folded away is looked at too.
  await page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });
  await page.evaluate(axe.source);
  const found = await page.evaluate(async (options) => {
    const { axe: here } = window as unknown as {
      axe: { run(where: Document, options: RunOptions): Promise<AxeResults> };
    };
    return (await here.run(document, options)).violations;
  }, options);
  return found.flatMap(({ id, help, nodes }) =>
    nodes.map(({ html, target }) => `${id}: ${help} — ${target.join(' ')} ${html.slice(0, 120)}`),
  );
}

/** In other colours the page is the same but for these. */
const ofColours = ['color-contrast', 'link-in-text-block'];

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
        return (await violations(opened, rules && [...rules])).map((violation) => `${page} ${violation}`);
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
