import axe, { type AxeResults, type RunOptions } from 'axe-core';
import type { Opened } from './browser.ts';

/**
 * What axe has to say of an open page, all its rules on. Its program is handed to the page over the debugger’s line,
 * which the page’s own policy does not govern; a script element would be refused, as it should be.
 */
export async function violations({ page }: Opened, rules?: readonly string[]): Promise<string[]> {
  // What passes is not described at length: that takes longer than the looking.
  const options: RunOptions = {
    resultTypes: ['violations'],
    ...(rules ? { runOnly: { type: 'rule', values: [...rules] } } : {}),
  };
  // What is folded away is looked at too.
  await page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
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

/** In a narrower window a page is the same but for these, and what they have to do with is laid out anew. */
export const ofLayout = [
  'scrollable-region-focusable',
  'target-size',
  'region',
  'bypass',
  'skip-link',
  'label',
  'button-name',
  'link-name',
  'select-name',
  'aria-hidden-focus',
  'meta-viewport',
];

/** In other colours a page is the same but for these. */
export const ofColours = ['color-contrast', 'link-in-text-block'];
