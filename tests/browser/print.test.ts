/** The proof page as a printed argument: its notes in place without a script, and its sheets. */
import axe, { type AxeResults } from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { newPage, useBrowser, type Opened } from './support/browser.ts';
import { addresses, inside, parsed, textOf } from './support/html.ts';
import { urlOf } from './support/site.ts';
import { overflow } from './support/layout.ts';

useBrowser();

const proof = 'cases/phelan-knockmahon/proof.html';
const patient = { timeout: 20_000 };

async function open(page: string, width: number, options = {}): Promise<Opened> {
  const opened = await newPage({
    within: 'file://',
    viewport: { width, height: 800 },
    javaScriptEnabled: false,
    reducedMotion: 'reduce',
    ...options,
  });
  await opened.page.goto(urlOf(page));
  return opened;
}

/** Whether something is seen: on the window, with a size. */
async function seen(of: Locator): Promise<boolean> {
  return of.evaluate((element) => {
    const { top, bottom, width, height } = element.getBoundingClientRect();
    return width > 20 && height > 10 && bottom > 0 && top < innerHeight;
  });
}

/** Whether something stands wholly within the window. */
async function whole(of: Locator): Promise<boolean> {
  return of.evaluate((element) => {
    const { top, bottom, left, right } = element.getBoundingClientRect();
    return top >= 0 && left >= 0 && bottom <= innerHeight && right <= innerWidth;
  });
}

async function toMark(
  page: Page,
  number: number,
): Promise<{ button: Locator; note: Locator; copy: Locator }> {
  const mark = page.locator(`#ref-${number}`);
  await mark.scrollIntoViewIfNeeded();
  return {
    button: mark.locator('button'),
    note: page.locator(`#note-${number}`),
    copy: page.locator(`#ref-${number} + .sidenote`),
  };
}

describe('a note, without a script', () => {
  const pages = [proof, 'cases/phelan-knockmahon.html'];

  test.each(pages)('opens in place at a tap on a phone, and closes by its button, of %s', async (url) => {
    const { page, faults } = await open(url, 390, { hasTouch: true, isMobile: true });
    const { button, note } = await toMark(page, 3);
    const before = page.url();
    expect(await seen(note)).toBe(false);
    await button.tap();
    await expect.poll(() => seen(note), patient).toBe(true);
    expect(await whole(note)).toBe(true);
    // It stands at its mark, and nothing has moved.
    const [of, at] = [(await note.boundingBox())!, (await button.boundingBox())!];
    expect(Math.min(Math.abs(of.y - at.y - at.height), Math.abs(at.y - of.y - of.height))).toBeLessThan(60);
    expect(page.url()).toBe(before);
    expect(await overflow(page)).toEqual([]);
    await note.getByRole('button', { name: 'Close' }).tap();
    await expect.poll(() => seen(note), patient).toBe(false);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('closes at a tap elsewhere, and one note gives way to the next', async () => {
    const { page } = await open(proof, 390);
    const first = await toMark(page, 3);
    await first.button.click();
    await expect.poll(() => seen(first.note), patient).toBe(true);
    // Beside the note, on the frame of the sheet, where there is nothing to press.
    const { y, height } = (await first.note.boundingBox())!;
    await page.mouse.click(8, y > 60 ? y - 30 : y + height + 30);
    await expect.poll(() => seen(first.note), patient).toBe(false);
    await first.button.click();
    await expect.poll(() => seen(first.note), patient).toBe(true);
    await page.locator('#ref-4 button').press('Enter');
    await expect.poll(() => seen(page.locator('#note-4')), patient).toBe(true);
    expect(await seen(first.note)).toBe(false);
    await page.context().close();
  });

  test('shows when the keyboard comes to its mark and goes when it leaves; Enter opens it for good, Escape closes it', async () => {
    const { page } = await open(proof, 800);
    const { button, note, copy } = await toMark(page, 3);
    await page.locator('#ref-3').evaluate((mark) => mark.querySelector('button')!.focus());
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Tab');
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    await expect.poll(() => seen(copy), patient).toBe(true);
    await page.keyboard.press('Tab');
    await expect.poll(() => seen(copy), patient).toBe(false);
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => seen(note), patient).toBe(true);
    // The same words do not stand there twice, and the next stop is inside of the note.
    expect(await seen(copy)).toBe(false);
    await page.keyboard.press('Tab');
    expect(await note.evaluate((element) => element.contains(document.activeElement))).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(() => seen(note), patient).toBe(false);
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.context().close();
  });

  test('shows while its mark is pointed at, and can itself be pointed at', async () => {
    const { page } = await open(proof, 1280);
    const { button, copy } = await toMark(page, 40); // in the table, where there is no margin
    expect(await seen(copy)).toBe(false);
    await button.hover();
    await expect.poll(() => seen(copy), patient).toBe(true);
    expect(await whole(copy)).toBe(true);
    await copy.hover();
    expect(await seen(copy)).toBe(true);
    await page.mouse.move(2, 2);
    await expect.poll(() => seen(copy), patient).toBe(false);
    await page.context().close();
  });

  test('stands in the margin of the argument where there is room, level with its line', async () => {
    const { page } = await open(proof, 1280);
    const { copy } = await toMark(page, 1);
    const [of, mark, text] = [
      (await copy.boundingBox())!,
      (await page.locator('#ref-1').boundingBox())!,
      (await page.locator('.argument > p').first().boundingBox())!,
    ];
    expect(of.x).toBeGreaterThan(text.x + text.width);
    expect(Math.abs(of.y - mark.y)).toBeLessThan(40);
    await page.locator('#ref-1 a').click();
    expect(page.url()).toMatch(/#note-1$/);
    await page.context().close();
  });

  test('is heard once: copies are kept from screen readers, and from the keyboard', () => {
    for (const { attribs, name } of parsed(proof).elements.filter((one) =>
      (one.attribs['class'] ?? '').split(' ').includes('sidenote'),
    )) {
      expect([name, attribs['aria-hidden'], attribs['hidden']]).toEqual(['span', 'true', '']);
    }
    const copies = parsed(proof)
      .all('span')
      .filter(({ attribs }) => attribs['class'] === 'sidenote');
    expect(copies.length).toBeGreaterThan(60);
    for (const copy of copies)
      for (const link of inside(copy, 'a')) expect(link.attribs['tabindex']).toBe('-1');
  });

  test('leads to its record, and the record back to the mark; numbers run through the page', () => {
    const page = parsed(proof);
    const notes = page.elements.filter(({ attribs }) => /^note-\d+$/.test(attribs['id'] ?? ''));
    expect(notes.map(({ attribs }) => attribs['id'])).toEqual(notes.map((_, i) => `note-${i + 1}`));
    expect(notes.length).toBeGreaterThan(60);
    for (const [i, note] of notes.entries()) {
      const to = inside(note, 'a').map(({ attribs }) => attribs['href']!);
      expect([i, to.includes(`#ref-${i + 1}`)]).toEqual([i, true]);
      const records = to.filter((address) => address.includes('/records/'));
      expect([i, records.length > 0]).toEqual([i, true]);
      for (const record of records) {
        const back = addresses(parsed(record.replace('../../', '')));
        expect([record, back.includes(`../${proof}#ref-${i + 1}`)]).toEqual([record, true]);
      }
    }
    const marks = page.elements.flatMap(({ attribs }) => /^ref-(\d+)$/.exec(attribs['id'] ?? '')?.[1] ?? []);
    expect(marks).toEqual(notes.map((_, i) => String(i + 1)));
  });
});

describe('the proof page', () => {
  test('has the author’s argument in it, once, with the drawing of the page and headings of its own rank', () => {
    const page = parsed(proof);
    expect(page.ids.has('_argument')).toBe(true);
    expect(textOf(page.all('main')[0])).toContain('lived on Quincy Street in Hancock');
    expect(page.all('figure').filter(({ attribs }) => attribs['class'] === 'sight')).toHaveLength(1);
    const headings = page.all('h3').map(textOf);
    expect(headings).toContain('The brother who stayed');
  });

  test('says of each item the classes of source, information and evidence', () => {
    const rows = parsed(proof).elements.filter(({ attribs }) =>
      (attribs['class'] ?? '').startsWith('evidence evidence-'),
    );
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows) {
      const terms = inside(row, 'dt').map(textOf);
      expect(terms).toContain('Evidence');
      if (terms.includes('Search')) continue;
      for (const term of ['Says', 'Of whom', 'Source', 'Information']) expect(terms).toContain(term);
    }
  });

  test.each([
    [1280, 'light'],
    [390, 'dark'],
  ] as const)(
    '%i wide in %s colours, with a note open, has nothing that axe objects to',
    async (width, colorScheme) => {
      const { page } = await open(proof, width, { colorScheme, javaScriptEnabled: true });
      await page.locator('#ref-30 button').click();
      await expect.poll(() => seen(page.locator('#note-30')), patient).toBe(true);
      await page.evaluate(axe.source);
      const found = await page.evaluate(async () => {
        const { axe: here } = window as unknown as { axe: { run(): Promise<AxeResults> } };
        return (await here.run()).violations;
      });
      expect(
        found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`)),
      ).toEqual([]);
      await page.context().close();
    },
  );
});
