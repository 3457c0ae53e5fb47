/**
 * A review from the sheet to the page: made in the browser on the built demonstration, saved into a copy of its content,
 * shown there; a changed birthplace turns it into one of an earlier version, and a forged byte stops the build.
 */
import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { load } from 'js-yaml';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.ts';
import { newPage, useBrowser } from './support/browser.ts';
import { overflow } from './support/layout.ts';
import { served, urlOf } from './support/site.ts';

useBrowser();

const project = resolve(import.meta.dirname, '../..');
const caseId = 'kirwan-templeyvrick';
const sheet = `cases/${caseId}/review.html`;
const folderOf = (url: string) => new URL('../..', url).href;
const item = (page: Page, point: string) => page.locator(`[data-point="${point}"]`);

/** A review as a reviewer fills it in: agreeing with some, querying one, disagreeing with the whole. */
async function fill(page: Page): Promise<void> {
  await page.getByLabel('Your name').fill('Örjan "Ø" Roe: #1');
  await page.getByLabel('Date', { exact: true }).fill('2026-05-04');
  await item(page, 'conclusion').getByLabel('disagree').check();
  await item(page, 'conclusion').getByLabel('Comment').fill('Not *yet*: see e1.\n- a list?\npoints: []');
  await item(page, 'item-e1').getByLabel('query').check();
  await item(page, 'two-independent').getByLabel('agree', { exact: true }).check();
  await item(page, '').getByLabel('disagree').check();
}

let work: string;
let content: string;
/** The saved file, by its name and text. */
let saved: { name: string; text: string };

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-review-'));
  content = join(work, 'content');
  // The case rests on nothing Norwegian, and the half of the demonstration is looked at in half the time.
  const half = (file: string) => !/\/(?:nor-[^/]*|norway[^/]*|wisconsin\.yaml)$/.test(file);
  cpSync(join(project, 'content'), content, { recursive: true, filter: half });
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe('the sheet', () => {
  test('is filled in from a folder on disk, keeps a draft, and ends in a file', async () => {
    const { page, faults } = await newPage({ within: folderOf(urlOf(sheet)), acceptDownloads: true });
    await page.goto(urlOf(sheet));
    await page.getByRole('button', { name: 'Save as a file' }).click();
    expect(await page.getByRole('status').textContent()).toBe('Write your name first.');
    await fill(page);
    expect(await page.locator('[data-progress]').textContent()).toMatch(/^3 of \d+ answered\. Kept/);

    await page.reload();
    expect(await item(page, 'conclusion').getByLabel('disagree').isChecked()).toBe(true);
    expect(await item(page, 'conclusion').getByLabel('Comment').inputValue()).toContain('- a list?');

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    const file = join(work, 'saved.yaml');
    await download.saveAs(file);
    saved = { name: download.suggestedFilename(), text: readFileSync(file, 'utf8') };
    expect(saved.name).toBe('2026-05-04-orjan-o-roe-1.yaml');
    expect(load(saved.text)).toMatchObject({
      reviewer: 'Örjan "Ø" Roe: #1',
      date: '2026-05-04',
      overall: 'disagree',
      points: [
        { point: 'conclusion', answer: 'disagree', comment: 'Not *yet*: see e1.\n- a list?\npoints: []' },
        { point: 'item-e1', answer: 'query' },
        { point: 'two-independent', answer: 'agree' },
      ],
    });
    expect(await page.getByRole('status').textContent()).toContain(`reviews/${caseId}/`);
    // What has been saved is a draft no longer.
    await page.reload();
    expect(await page.getByLabel('Your name').inputValue()).toBe('');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('says when a draft was begun on another version, and asks before it is saved', async () => {
    const { page } = await newPage({ within: served });
    await page.goto(served + sheet);
    await fill(page);
    await page.evaluate(() => {
      const [key, kept] = Object.entries(localStorage)[0]!;
      const draft = JSON.parse(kept) as { digest: string; answers: Record<string, unknown> };
      draft.digest = `sha256-${'0'.repeat(64)}`;
      draft.answers['item-gone'] = { answer: 'query', comment: 'Of an item that was there' };
      localStorage.setItem(key, JSON.stringify(draft));
    });
    await page.reload();
    const warning = page.locator('[data-warning]');
    expect(await warning.textContent()).toContain('another version');
    expect(await warning.textContent()).toContain('item-gone · query · Of an item that was there');
    await page.getByRole('button', { name: 'Save as a file' }).click();
    expect(await page.getByRole('status').textContent()).toContain('another version');
    await page.getByRole('button', { name: 'They still hold' }).click();
    expect(await warning.isVisible()).toBe(false);
    await page.getByText('The file as text').click();
    expect(await page.getByLabel('The file as text').inputValue()).not.toContain('item-gone');
    await page.context().close();
  });

  test('works where the browser keeps nothing, and says so', async () => {
    const { page, faults } = await newPage({ within: served });
    await page.addInitScript(() =>
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('no', 'SecurityError');
        },
      }),
    );
    await page.goto(served + sheet);
    await fill(page);
    expect(await page.locator('[data-progress]').textContent()).toContain('keeps nothing');
    await page.getByText('The file as text').click();
    expect(await page.getByLabel('The file as text').inputValue()).toContain('overall: disagree');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('is a blank to print without scripts; filled in, it prints what was written', async () => {
    const blank = await newPage({ within: '', javaScriptEnabled: false });
    await blank.page.goto(urlOf(sheet));
    expect(await item(blank.page, 'conclusion').locator('.box').allTextContents()).toEqual([
      'agree',
      'query',
      'disagree',
    ]);
    expect(await item(blank.page, 'conclusion').locator('.box').first().isVisible()).toBe(true);
    expect(await blank.page.locator('.sheet-scripted').first().isVisible()).toBe(false);
    await blank.page.context().close();

    const { page } = await newPage({ within: served });
    await page.goto(served + sheet);
    await fill(page);
    await page.emulateMedia({ media: 'print' });
    expect(await item(page, 'conclusion').locator('.ticked').allTextContents()).toEqual(['disagree']);
    expect(await page.locator('[data-field=reviewer]').textContent()).toContain('Roe');
    expect(await item(page, 'conclusion').getByRole('radio').first().isVisible()).toBe(false);
    await page.context().close();
  });

  test.each([
    [390, 'dark'],
    [1280, 'light'],
  ] as const)('%i wide in %s colours, nothing is amiss', async (width, colorScheme) => {
    const opened = await newPage({ within: served, viewport: { width, height: 900 }, colorScheme });
    await opened.page.goto(served + sheet);
    await fill(opened.page);
    expect(await overflow(opened.page)).toEqual([]);
    expect(await violations(opened)).toEqual([]);
    expect(opened.faults).toEqual([]);
    await opened.page.context().close();
  });
});

describe('saved into the content', () => {
  let server: ChildProcess | undefined;
  let site: string;
  let printed = '';
  const lay = (file: string, text: string | Uint8Array) => {
    mkdirSync(dirname(join(content, file)), { recursive: true });
    writeFileSync(join(content, file), text);
  };
  const env = { ...process.env, VITEST: undefined, NODE_ENV: undefined, INIT_CWD: undefined, NO_COLOR: '1' };

  beforeAll(async () => {
    lay(`reviews/${caseId}/${saved.name}`, saved.text);
    const args = ['--content', content, '--port', '0', '--today', '2026-06-01'];
    server = spawn(process.execPath, [join(project, 'src/cli/start.ts'), ...args], { env });
    await new Promise<void>((ready, failed) => {
      for (const stream of [server!.stdout!, server!.stderr!])
        stream.on('data', (chunk) => {
          printed += chunk;
          if (printed.includes('It follows every change')) ready();
        });
      server!.once('close', () => failed(new Error(printed)));
    });
    site = /http:\/\/localhost:\d+/.exec(printed)![0];
  });
  afterAll(async () => {
    if (!server) return;
    const gone = new Promise((done) => server!.once('close', done));
    server.kill('SIGKILL');
    await gone;
  });

  /** The review on a page of the case, once it says what is expected. */
  async function review(page: Page, path: string, says: string): Promise<string> {
    const shown = page.locator('article.review', { hasText: 'Roe: #1' });
    const text = async () => {
      await page.goto(`${site}${path}`);
      return (await shown.textContent()) ?? '';
    };
    await expect.poll(text, { timeout: 60_000 }).toContain(says);
    return text();
  }

  test('it appears, current and unsigned, with its answers, and the standing says that somebody disagrees', async () => {
    const { page } = await newPage({ within: '' });
    const text = await review(page, `/cases/${caseId}/proof.html`, 'answers exactly the content shown here');
    for (const said of [
      'disagrees, 4 May 2026',
      'Not signed',
      'The conclusion: disagree',
      'Not *yet*: see e1.',
    ])
      expect(text.replace(/\s+/g, ' ')).toContain(said);
    for (const path of ['/index.html', `/cases/${caseId}.html`, `/cases/${caseId}/proof.html`]) {
      await page.goto(site + path);
      const said = page.getByText(/Roe: #1 disagrees/);
      expect(await said.count(), path).toBeGreaterThan(0);
      expect(await page.getByText('Probable', { exact: true }).count(), path).toBeGreaterThan(0);
    }
    await page.context().close();
  });

  test('one changed birthplace in one record makes it a review of an earlier version, which names the record', async () => {
    const { page } = await newPage({ within: '' });
    const file = 'records/obituary-drohan-1909.md';
    const record = readFileSync(join(content, file), 'utf8');
    expect(record).toContain('birthplace: Temple Vrick, near Bonmahon, county Waterford');
    lay(
      file,
      record.replace('birthplace: Temple Vrick, near Bonmahon', 'birthplace: Temple Vrick, by Bonmahon'),
    );
    const text = await review(page, `/cases/${caseId}/proof.html`, 'a review of an earlier version');
    expect(text.replace(/\s+/g, ' ')).toContain(
      'Since then: changed: the mention Mrs. Catherine Drohan (m1) in Obituary of Mrs. David Drohan, Red Jacket, 1909',
    );
    expect(text.match(/changed:/g)).toHaveLength(1);
    await page.context().close();
  });

  test('a forged byte in a signed review stops the build with a sentence', async () => {
    const file = `reviews/${caseId}/2026-02-14-nora-quillinan.yaml`;
    const bytes = readFileSync(join(content, file));
    bytes[bytes.indexOf('Probable')] = 'p'.charCodeAt(0);
    lay(file, bytes);
    const args = [join(project, 'src/cli/build.ts'), '--content', content, '--out', join(work, 'site')];
    const [code, output] = await new Promise<[unknown, string]>((done) =>
      execFile(process.execPath, [...args, '--today', '2026-06-01'], { env }, (error, out, err) =>
        done([error?.code, out + err]),
      ),
    );
    expect(code).toBe(1);
    expect(output.replace(/\s+/g, ' ')).toContain(
      'This signature does not fit 2026-02-14-nora-quillinan.yaml: one of the two is not as it was when the review was signed.',
    );
  });
});
