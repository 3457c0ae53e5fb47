import { expect, test } from 'vitest';
import { pathToFileURL } from 'node:url';
import { newPage, useBrowser } from './support/browser.ts';
import { site, urlOf } from './support/site.ts';

useBrowser();

const within = `${pathToFileURL(site).href}/`;
const record = urlOf('records/declaration-1871.html');
const link = 'a[data-scan]';

test('a scan opens in a dialog from a folder on disk, is enlarged and moved by keys and pointer, and gives the focus back', async () => {
  const { page, faults } = await newPage({ within, viewport: { width: 1280, height: 800 } });
  const drawn = () =>
    page.evaluate(() => {
      const image = document.querySelector('.scan-frame img')!.getBoundingClientRect();
      return { x: image.x, y: image.y, width: image.width };
    });
  const open = () => page.evaluate(() => document.querySelector<HTMLDialogElement>('.scan-viewer')!.open);
  const focused = (selector: string) => page.evaluate((s) => document.activeElement?.matches(s), selector);

  await page.goto(record);
  expect(await open()).toBe(false);
  await page.focus(link);
  await page.keyboard.press('Enter');
  expect(await open()).toBe(true);
  expect(await focused('.scan-frame')).toBe(true);

  const first = await drawn();
  for (let i = 0; i < 3; i++) await page.keyboard.press('+');
  const larger = await drawn();
  expect(larger.width / first.width).toBeCloseTo(1.4 ** 3, 1);
  await page.keyboard.press('ArrowDown');
  expect((await drawn()).y).toBeCloseTo(larger.y - 80, 0);
  await page.keyboard.press('ArrowRight');
  expect((await drawn()).x).toBeCloseTo(larger.x - 80, 0);

  const before = await drawn();
  await page.mouse.move(640, 400);
  await page.mouse.down();
  await page.mouse.move(670, 425, { steps: 3 });
  await page.mouse.up();
  expect((await drawn()).x).toBeCloseTo(before.x + 30, 0);
  expect((await drawn()).y).toBeCloseTo(before.y + 25, 0);
  await page.keyboard.press('0');
  expect(await drawn()).toEqual(first);

  await page.keyboard.press('Escape');
  expect(await open()).toBe(false);
  expect(await focused(link)).toBe(true);
  await page.click(link);
  await page.click('.scan-viewer [data-do=close]');
  expect(await open()).toBe(false);
  expect(faults).toEqual([]);
  await page.context().close();
});

test('without scripts the link leads to the image', async () => {
  const { page, faults } = await newPage({ within, javaScriptEnabled: false });
  await page.goto(record);
  await page.click(link);
  expect(page.url()).toMatch(/\/media\/declaration-1871\.jpg$/);
  expect(faults).toEqual([]);
  await page.context().close();
});
