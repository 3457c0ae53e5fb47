/**
 * A site of the small family with hostile text in every field, built once: nothing of it runs in a browser, not even
 * where the content security policy is switched off, nothing leaves its context, and every file is what its ending says.
 */
import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { escapesIn } from '../hostile/escapes.ts';
import { smallImage } from '../hostile/images.ts';
import { plantedContent, today } from '../hostile/planted.ts';
import { hostileStrings } from '../hostile/strings.ts';
import { onPages, useBrowser } from './support/browser.ts';
import { faults as standardFaults } from './support/validator.ts';

useBrowser();
const project = resolve(import.meta.dirname, '../..');
let work: string;
let site: string;
let files: string[];
/** Pages that show something of the content: the tool’s own documentation is left out. */
let pages: string[];

beforeAll(async () => {
  work = mkdtempSync(join(tmpdir(), 'whence-hostile-'));
  // `HOSTILE_SITE=DIR` takes a site of the planted content that is there already.
  const there = process.env['HOSTILE_SITE'];
  site = there ?? join(work, 'site');
  if (there === undefined) await build();
  files = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(site.length + 1))
    .sort();
  pages = files.filter((file) => /\.html$/.test(file) && !/^(?:rules|examples|guide|404)/.test(file));
}, 600_000);
afterAll(() => rmSync(work, { recursive: true, force: true }));

async function build(): Promise<void> {
  const { files: content } = plantedContent(await smallImage());
  for (const [file, text] of Object.entries(content)) {
    mkdirSync(dirname(join(work, 'content', file)), { recursive: true });
    writeFileSync(join(work, 'content', file), text);
  }
  const args = ['--content', join(work, 'content'), '--out', site, '--today', today];
  const env = { ...process.env, VITEST: undefined, NODE_ENV: undefined, NO_COLOR: '1' };
  await promisify(execFile)(process.execPath, [join(project, 'src/cli/build.ts'), ...args], {
    env,
    maxBuffer: 1e8,
  }).catch((error: unknown) => {
    const { stdout = '', stderr = '' } = error as { stdout?: string; stderr?: string };
    throw new Error(`The site could not be built.\n${stdout.slice(-3000)}${stderr}`);
  });
}

test('there are enough strings, and each of them is in the site', () => {
  expect(hostileStrings.length).toBeGreaterThanOrEqual(120);
  const said = files
    .filter((file) => /\.(?:html|js|csv|json)$/.test(file))
    .map((file) => readFileSync(join(site, file), 'latin1'));
  expect(
    hostileStrings.filter(({ mark }) => !said.some((text) => text.includes(mark))).map(({ text }) => text),
  ).toEqual([]);
});

test('nothing leaves its context in any file', () =>
  expect(files.flatMap((file) => escapesIn(file, readFileSync(join(site, file))))).toEqual([]));

test('what the reading of files would tell is told', () => {
  const page = '<meta http-equiv="content-security-policy" content="x">';
  expect(
    escapesIn('a.html', Buffer.from(`${page}<zq-out><p zqattribute=1 onclick=x><a href=" java\tscript:x">`)),
  ).toHaveLength(4);
  expect(
    escapesIn('a.html', Buffer.from(`${page}<a href="https://example.invalid/">x</a>\u0001`)),
  ).toHaveLength(2);
  expect(escapesIn('a.csv', Buffer.from('a,"=1+1"\n'))).toHaveLength(1);
  expect(escapesIn('a.xml', Buffer.from('<a>&zq;</a>'))).toHaveLength(1);
  expect(escapesIn('a.json', Buffer.from('{"a":1'))).toHaveLength(1);
  expect(escapesIn('a.js', Buffer.from('x("a");zqran(1)'))).toHaveLength(1);
  expect(escapesIn('a.bib', Buffer.from('@a{b,\n c = {}}, d = {x}}\n'))).not.toEqual([]);
});

test('pages are HTML as the standard has it', () => {
  // Words of an author may repeat; what they are may not.
  const found = pages.flatMap((page) => standardFaults(page, readFileSync(join(site, page), 'utf8')));
  expect(
    found.filter((fault) => !/ (?:text-content|unique-landmark|no-redundant-for|wcag\/h\d+): /.test(fault)),
  ).toEqual([]);
});

/** What a page shows of hostile text that has become something else, and whether any of it ran. */
function inTheBrowser(): string[] {
  const found: string[] = (window as unknown as { zqhits: string[] }).zqhits.slice();
  for (const element of document.querySelectorAll('*')) {
    if (element.localName.startsWith('zq')) found.push(`<${element.localName}>`);
    for (const { name } of element.attributes)
      if (/^(?:zq|on)/.test(name)) found.push(`${element.localName} ${name}`);
    for (const name of ['href', 'src', 'action'] as const) {
      const address = (element as unknown as Record<string, unknown>)[name];
      if (typeof address === 'string' && /^(?:javascript|data|vbscript|blob):/.test(address))
        found.push(address);
    }
  }
  if (getComputedStyle(document.body).display === 'none') found.push('a style');
  return found;
}

test.each([
  ['with the policy of the page', false],
  ['with the policy switched off', true],
])('nothing runs in a browser %s', async (_how, bypassCSP) => {
  const some = pages.filter((_page, i) => i % (bypassCSP ? 3 : 8) === 0);
  const within = pathToFileURL(`${site}/`).href;
  const results = await onPages(some, { within, bypassCSP }, async (path, { page, faults }) => {
    await page.addInitScript(() => {
      const hits: string[] = [];
      Object.assign(window, {
        zqhits: hits,
        zqran: () => void hits.push('it ran'),
        alert: () => void hits.push('an alert'),
      });
    });
    await page.goto(new URL(path, within).href);
    return [...(await page.evaluate(inTheBrowser)), ...faults].map((what) => `${path}: ${what}`);
  });
  expect(results.flat()).toEqual([]);
});
