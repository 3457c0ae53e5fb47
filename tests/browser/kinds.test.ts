import { expect, test } from 'vitest';
import { onPages, useBrowser } from './support/browser.ts';
import { overflow } from './support/layout.ts';
import { oneOfEach, urlOf } from './support/site.ts';

useBrowser();

/** The ways a page is looked at. A4 within the margins of the print style: 210 mm less 2 × 16 mm, at 96 pixels to the inch. */
const ways = [
  { way: 'on a phone', width: 390, media: 'screen', schemes: ['light', 'dark'] },
  { way: 'on a screen', width: 1280, media: 'screen', schemes: ['light', 'dark'] },
  { way: 'on paper', width: 672, media: 'print', schemes: ['light', 'dark'] },
] as const;

test.each(ways)(
  'a page of any kind keeps what it holds inside its edges $way',
  async ({ width, media, schemes }) => {
    const found = await onPages(
      oneOfEach,
      { within: '', viewport: { width, height: 900 }, javaScriptEnabled: false },
      async (url, { page }) => {
        await page.goto(urlOf(url));
        const faults: string[] = [];
        // Colours move nothing: one scheme shows what a page holds, and the phone, where it is tightest, both.
        for (const colorScheme of width === 390 ? schemes : schemes.slice(0, 1)) {
          await page.emulateMedia({ media, colorScheme });
          for (const fault of await overflow(page)) faults.push(`${url} in ${colorScheme} colours: ${fault}`);
        }
        return faults;
      },
    );
    expect(found.flat()).toEqual([]);
  },
);

test('light pages are light, dark ones dark, and paper is white for someone who reads in dark colours too', async () => {
  const urls = ['index.html', 'cases/phelan-knockmahon/proof.html'];
  const found = await onPages(urls, { within: '', javaScriptEnabled: false }, async (url, { page }) => {
    await page.goto(urlOf(url));
    const papers: number[] = [];
    for (const { media, schemes } of ways.slice(1))
      for (const colorScheme of schemes) {
        await page.emulateMedia({ media, colorScheme });
        papers.push(await page.evaluate(lightnessOfPaper));
      }
    return papers;
  });
  for (const [light, dark, printed, printedDark] of found) {
    expect(light).toBeGreaterThan(0.8);
    expect(dark).toBeLessThan(0.3);
    expect([printed, printedDark]).toEqual([1, 1]);
  }
});

/** From 0, black, to 1, white: what is painted behind the heading of the page. Paper without a colour is white. */
function lightnessOfPaper(): number {
  for (let at: Element | null = document.querySelector('h1'); at; at = at.parentElement) {
    const [red = 0, green = 0, blue = 0, alpha = 1] = (
      getComputedStyle(at).backgroundColor.match(/[\d.]+/g) ?? []
    ).map(Number);
    if (alpha > 0.5) return (red + green + blue) / 3 / 255;
  }
  return 1;
}
