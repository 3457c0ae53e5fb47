import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { newPage, useBrowser } from './support/browser.ts';
import { inside, parsed, textOf } from './support/html.ts';
import { pages, urlOf } from './support/site.ts';

useBrowser();

const { cases } = loadCorpus(join(resolve(import.meta.dirname, '../..'), 'content'));
const story = 'cases/phelan-knockmahon.html';
const proof = 'cases/phelan-knockmahon/proof.html';

/** How long a loaded machine may take over what a reader sees at once. */
const patient = { timeout: 20_000 };

/** A page without JavaScript, opened from disk. */
async function open(page: string, width: number): Promise<Page> {
  const opened = await newPage({
    within: 'file://',
    viewport: { width, height: 800 },
    javaScriptEnabled: false,
    reducedMotion: 'reduce', // a reader who asks for it is taken to a part of a page at once
  });
  await opened.page.goto(urlOf(page));
  return opened.page;
}

async function closed(page: Page): Promise<void> {
  await page.context().close();
}

/** How far below the upper edge of the window something begins. */
async function topOf(page: Page, selector: string): Promise<number> {
  return (await page.locator(selector).boundingBox())?.y ?? Number.NaN;
}

/** Where the page is, within the site. */
function at(page: Page): string {
  const known = pages.find((one) => page.url().split('#')[0] === urlOf(one));
  return (known ?? page.url()) + new URL(page.url()).hash;
}

describe('a relative', () => {
  test('comes from the first page to a story and on to the person, on a phone', async () => {
    const page = await open('index.html', 390);
    await page.getByRole('main').getByRole('link', { name: 'Maurice Phelan', exact: true }).first().click();
    expect(at(page)).toBe(story);
    const said = await page.getByRole('main').innerText();
    expect(said).toContain('Knockmahon');
    expect(said).toMatch(/established/i);
    await page.getByRole('main').getByRole('link', { name: 'Maurice Phelan', exact: true }).first().click();
    expect(at(page)).toBe('people/maurice-phelan.html');
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('Maurice Phelan');
    await closed(page);
  });

  test('is told the answer before anything has to be scrolled, on a phone', async () => {
    const page = await open(story, 390);
    const heading = await page.getByRole('heading', { level: 1 }).boundingBox();
    const answer = await page.getByRole('main').getByText('Knockmahon').first().boundingBox();
    expect(heading!.y).toBeLessThan(800);
    expect(answer!.y).toBeLessThan(800);
    await closed(page);
  });
});

describe('a reviewer', () => {
  test('comes from a piece of evidence to its record, and sees the scan beside what it says', async () => {
    const page = await open(proof, 1280);
    await page
      .locator('#e1')
      .getByRole('link', { name: 'Baptism of Maurice Phelan, Kill, 1840' })
      .first()
      .click();
    expect(at(page)).toBe('records/baptism-kill-1840.html');
    const scan = page.getByRole('main').locator('img').first();
    await scan.scrollIntoViewIfNeeded();
    await expect
      .poll(() => scan.evaluate((image: HTMLImageElement) => image.naturalWidth), patient)
      .toBeGreaterThan(0);
    expect((await scan.getAttribute('alt'))?.length).toBeGreaterThan(10);
    expect(await page.getByRole('region', { name: 'Transcription' }).innerText()).toContain('Knockmahon');
    await closed(page);
  });

  test('opens the ledger of who is who without a script, adds it up, and comes to both records', async () => {
    const page = await open(proof, 1280);
    const ledger = page
      .locator('details.ledger', { hasText: 'Maurice in Baptism of Maurice Phelan' })
      .first();
    expect(await ledger.getByRole('table').isVisible()).toBe(false);
    await ledger.locator('summary').click();
    await expect.poll(() => ledger.getByRole('table').isVisible(), patient).toBe(true);
    const bits = (await ledger.locator('.weight-figure').allInnerTexts()).map((text) =>
      Number(text.replace('−', '-')),
    );
    expect(bits.length).toBeGreaterThan(4);
    const together = Number((await ledger.locator('tfoot strong').innerText()).replace('−', '-'));
    // Each figure is rounded to a tenth.
    const rounding = 0.05 * (bits.length + 1);
    expect(Math.abs(bits.reduce((sum, one) => sum + one, 0) - together)).toBeLessThanOrEqual(rounding);
    await ledger.getByRole('link', { name: 'Maurice', exact: true }).click();
    expect(at(page)).toBe('records/baptism-kill-1840.html#mention-m1');
    await closed(page);
  });

  test('reads every ledger on paper', async () => {
    const page = await open(proof, 800);
    await page.emulateMedia({ media: 'print' });
    const heights = await page
      .locator('details.ledger')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    expect(heights.length).toBeGreaterThan(4);
    expect(Math.min(...heights)).toBeGreaterThan(100);
    await closed(page);
  });

  test('finds every piece of evidence of every case on its proof page, each leading to its record or search', () => {
    expect(cases.size).toBeGreaterThan(3);
    for (const { id, evidence } of cases.values()) {
      const page = parsed(`cases/${id}/proof.html`);
      expect(evidence.length).toBeGreaterThan(0);
      for (const item of evidence) {
        const block = page.elements.find(({ attribs }) => attribs['id'] === item.id);
        expect([id, item.id, block !== undefined]).toEqual([id, item.id, true]);
        const links = inside(block!, 'a').map(({ attribs }) => attribs['href']);
        for (const from of item.from) {
          const leads = from.startsWith('search:')
            ? `../../searches.html#search-${from.slice('search:'.length)}`
            : `../../records/${from.split('#')[0]!}.html`;
          expect([id, item.id, links.some((link) => link === leads)]).toEqual([id, item.id, true]);
        }
      }
    }
  });

  test('finds on the proof page what the check says of the case', async () => {
    const said = textOf(parsed(proof).all('main')[0]);
    for (const words of ['Established', 'Knockmahon', 'Reviewer’s points', 'sha256-'])
      expect(said).toContain(words);
    expect(textOf(parsed('cases/nor-synneva/proof.html').all('main')[0])).toMatch(/working idea|hypothesis/i);
  });
});

describe('a reference in a story', () => {
  test('leads to the piece of evidence on the proof page, and shows it', async () => {
    const page = await open(story, 1280);
    const reference = page.getByRole('main').locator('a[href$="proof.html#e1"]').first();
    await reference.click();
    expect(at(page)).toBe(`${proof}#e1`);
    await expect.poll(() => topOf(page, '#e1'), patient).toBeLessThan(800);
    expect(await topOf(page, '#e1')).toBeGreaterThan(-10);
    await closed(page);
  });

  test('is a link for each one the author wrote', () => {
    let written = 0;
    for (const { id, body } of cases.values()) {
      const wanted = [...body.matchAll(/\[#([a-z0-9-]+)\]/g)].map(([, ref]) => `${id}/proof.html#${ref!}`);
      const links = parsed(`cases/${id}.html`)
        .all('a')
        .map(({ attribs }) => attribs['href']);
      written += wanted.length;
      expect([id, wanted.filter((address) => !links.includes(address))]).toEqual([id, []]);
    }
    expect(written).toBeGreaterThan(20);
  });

  test('by number leads to its note, and the note back, where notes stand beside the text', async () => {
    const page = await open(story, 1280);
    await page.locator('#ref-1 a').click();
    expect(at(page)).toBe(`${story}#note-1`);
    await expect.poll(() => topOf(page, '#note-1'), patient).toBeLessThan(800);
    await page.locator('#note-1').getByRole('link', { name: 'Back to the text' }).first().click();
    expect(at(page)).toBe(`${story}#ref-1`);
    await closed(page);
  });
});

describe('on paper', () => {
  test.each([story, proof, 'records/declaration-1871.html'])('%s has its notes in full', async (url) => {
    const page = await open(url, 1280);
    await page.emulateMedia({ media: 'print' });
    const notes = page.locator('[id^="note-"]');
    const count = await notes.count();
    expect(count).toBeGreaterThan(0);
    for (let i = 0; i < count; i++) {
      const box = await notes.nth(i).boundingBox();
      expect([i, box!.width > 200, box!.height > 10, await notes.nth(i).isVisible()]).toEqual([
        i,
        true,
        true,
        true,
      ]);
    }
    expect(await page.getByText('These people never lived').isVisible()).toBe(true);
    expect(await page.getByRole('navigation', { name: 'Site' }).isVisible()).toBe(false);
    await closed(page);
  });
});

describe('what every reader must be told', () => {
  test('stands on every page: the family is invented', () => {
    for (const page of pages) {
      const notice = parsed(page)
        .all('aside')
        .map(textOf)
        .find((text) => text.includes('never lived'));
      expect([page, notice]).toEqual([page, expect.stringContaining('An invented family')]);
    }
  });

  // The cautions a site of conclusions about families owes its readers: common practice.
  test.each(['method.html', proof, 'cases/nor-synneva/proof.html'])(
    'stands on %s: what a conclusion is, and is not',
    (page) => {
      const said = textOf(parsed(page).all('main')[0]);
      for (const caution of [
        /reasoned opinion on the evidence/,
        /open to revision/,
        /no legal proof of descent/,
        /citizenship/,
        /certified copies/,
        /adoption/,
        /living relatives|relatives who are alive/,
        /privacy law/,
        /reuse terms|terms under which/,
      ])
        expect(said).toMatch(caution);
    },
  );
});

test('the evidence of a proof page says what a relative is to the person of the case', async () => {
  const { page } = await newPage({ within: '', javaScriptEnabled: false });
  await page.goto(urlOf('cases/phelan-knockmahon/proof.html'));
  const said = await page.locator('section.proof-evidence').innerText();
  expect(said.replace(/\s+/g, ' ')).toContain('taken to be Patrick Phelan, the subject’s son');
  await page.context().close();
});
