/** The overlay on the pages of `start`, in a real browser, and that no build has it. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { goodContent } from '../corpus/content.ts';
import { violations } from './support/axe.ts';
import { newPage, useBrowser } from './support/browser.ts';

const project = resolve(import.meta.dirname, '../..');
const deed = goodContent['records/deed.md']!;
let folder: string;
let server: ChildProcess;
let site: string;
useBrowser();

function lay(file: string, text: string): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'whence-overlay-'));
  for (const [file, text] of Object.entries(goodContent)) lay(file, text);
  server = spawn(
    process.execPath,
    [join(project, 'src/cli/start.ts'), '--content', folder, '--port', '0', '--today', '2026-06-01'],
    { cwd: tmpdir(), env: { ...process.env, VITEST: undefined, INIT_CWD: undefined, NO_COLOR: '1' } },
  );
  site = await new Promise((found, failed) => {
    let printed = '';
    const look = (chunk: Buffer) => {
      printed += String(chunk);
      const address = /http:\/\/localhost:\d+/.exec(printed)?.[0];
      if (address && printed.includes('Ctrl-C')) found(address);
    };
    server.stdout!.on('data', look);
    server.stderr!.on('data', look);
    server.once('close', () => failed(new Error(printed)));
  });
});
afterAll(async () => {
  if (server.exitCode === null) {
    const gone = new Promise((done) => server.once('close', done));
    server.kill('SIGKILL');
    await gone;
  }
  rmSync(folder, { recursive: true, force: true });
});

test('the overlay says what is wrong on the last good page, can be put aside, and goes when it is mended', async () => {
  const opened = await newPage({ within: site, viewport: { width: 390, height: 800 } });
  const { page, faults } = opened;
  await page.goto(`${site}/records/deed.html`);
  const panel = page.locator('#whence-findings .panel');
  expect(await panel.count()).toBe(0);

  // Half-written YAML: the page stays.
  lay('records/deed.md', '---\ntitle: [half\n');
  await panel.waitFor();
  expect(await page.locator('h1').textContent()).toBe('Deed of 1870');
  expect(await panel.locator('code').first().textContent()).toMatch(/^records\/deed\.md:\d+:\d+$/);
  expect(await panel.textContent()).toContain('this page');
  expect(await panel.textContent()).toContain('stays as it last was');
  expect(await violations(opened)).toEqual([]);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);

  // Put aside by the keyboard, it stays so on other pages, until something else is wrong.
  await panel.locator('.close').focus();
  await page.keyboard.press('Escape');
  await panel.waitFor({ state: 'detached' });
  await page.goto(`${site}/people/maurice-phelan.html`);
  const again = page.locator('#whence-findings .again');
  await again.waitFor();
  expect(
    await page.evaluate(() =>
      document.querySelector('#whence-findings')?.shadowRoot?.querySelector('.panel'),
    ),
  ).toBe(null);
  lay('records/deed.md', deed.replace('place: michigan', 'placce: michigan'));
  await panel.waitFor();
  expect(await panel.textContent()).toContain('Did you mean place?');

  lay('records/deed.md', deed);
  await panel.waitFor({ state: 'detached' });
  expect(await again.count()).toBe(0);
  expect(faults.filter((fault) => !fault.includes('[vite]'))).toEqual([]);
  await page.context().close();
});

test('no page of a build knows of it', () => {
  const built = inject('site');
  for (const file of readdirSync(built, { recursive: true, encoding: 'utf8' }))
    if (/\.(?:js|css)$/.test(file) || /^(?:index|404|about)\.html$/.test(file))
      expect(readFileSync(join(built, file), 'utf8')).not.toMatch(
        /whence-findings|whence:told|@whence|@vite/,
      );
});
