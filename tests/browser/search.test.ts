import { expect, test } from 'vitest';
import { newPage, useBrowser, type Opened } from './support/browser.ts';
import { served, urlOf } from './support/site.ts';

useBrowser();

const focused = ({ page }: Opened) => page.evaluate(() => document.activeElement?.textContent ?? '');

for (const [from, address, within] of [
  ['opened from the folder', urlOf('search.html'), new URL('.', urlOf('search.html')).href],
  ['served', `${served}search.html`, served],
] as const)
  test(`${from}, one spelling finds the others, by the keyboard alone`, async () => {
    const opened = await newPage({ within });
    const { page, faults } = opened;
    await page.goto(address);
    const { keyboard } = page;
    const results = page.getByRole('list', { name: 'What was found' }).getByRole('link');

    await keyboard.type('Maurice Whelan');
    await results.getByText('Maurice Phelan', { exact: true }).first().waitFor();
    // While one types, what is found changes with every part that arrives.
    await expect.poll(() => page.getByRole('status').first().textContent()).toMatch(/^\d+ found\.$/);
    const titles = await results.allTextContents();
    expect(titles[0]).toContain('Maurice Whelan');

    const at = titles.indexOf('Maurice Phelan');
    for (let step = 0; step <= at; step++) await keyboard.press('ArrowDown');
    expect(await focused(opened)).toBe('Maurice Phelan');
    await keyboard.press('Enter');
    await page.waitForURL(/people\/maurice-phelan\.html$/);
    await page.goBack();
    await results.getByText('Maurice Phelan', { exact: true }).first().waitFor();
    expect(await results.allTextContents()).toEqual(titles);

    await page.getByRole('searchbox').focus();
    await keyboard.press('Escape');
    await results.first().waitFor({ state: 'detached' });
    expect(new URL(page.url()).search).toBe('');
    await keyboard.type('Delia');
    await page.getByText('Bridget, found for Delia: Delia was used for Bridget').first().waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

test('without script the page leads to the lists and shows no field', async () => {
  const { page, faults } = await newPage({ within: served, javaScriptEnabled: false });
  await page.goto(`${served}search.html`);
  expect(await page.getByText('needs JavaScript').isVisible()).toBe(true);
  expect(await page.getByRole('searchbox').isVisible()).toBe(false);
  expect(await page.getByRole('main').getByRole('link').count()).toBeGreaterThan(6);
  expect(faults).toEqual([]);
  await page.context().close();
});
