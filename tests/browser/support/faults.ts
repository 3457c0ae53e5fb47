/** What may be wrong with any page, whatever it says. */
import type { Opened } from './browser.ts';
import { overflow } from './layout.ts';

/** The window of a small phone, without JavaScript, as a file opened from a folder on disk. */
export const phone = { viewport: { width: 390, height: 844 }, javaScriptEnabled: false };

/** What is wrong with a page once it is open. */
export async function faultsOf(url: string, { page, faults }: Opened): Promise<string[]> {
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
