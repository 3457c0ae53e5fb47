/**
 * Looking things up among many records: what the index costs a build, what a phone loads for a question, and how long
 * it takes from a key to the answer with the processor slowed to a quarter, parts that have to be fetched for it
 * included. What the page itself took of the processor, four times over, says the same whatever else the machine does.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { buildSync } from 'esbuild';
import { chromium, type Page } from 'playwright-core';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import type { Document } from '../../src/dossier/search/documents.ts';
import { indexOf, searchIndex, type SearchIndex } from '../../src/dossier/search/index.ts';
import { withBrowserOptions } from '../../src/exports/pdf/browser.ts';
import { generate } from './generate.ts';
import { seeded, type Random } from './random.ts';

const project = join(import.meta.dirname, '../..');
const kilobytes = (bytes: number) => (bytes / 1000).toFixed(0);

/** Rows of a table for the terminal. */
export async function searchReport(sizes: readonly number[] = [1000, 5000, 10_000]): Promise<string[][]> {
  const rows = [
    [
      'records',
      'index s',
      'of dossier',
      'files',
      'kB',
      'first question, kB gzip',
      'ms a key, median',
      'most',
      '4 × processor ms, median',
      'most',
    ],
  ];
  for (const size of sizes) {
    const { seconds, share } = costOf(size);
    const index = indexOf(variedDocuments(size));
    const total = [...index.files.values()].reduce((sum, file) => sum + file.length, 0);
    const { bytes, waited, worked } = await onPhone(index);
    rows.push([
      String(size),
      seconds.toFixed(2),
      share.toFixed(3),
      String(index.files.size),
      kilobytes(total),
      kilobytes(bytes),
      ...middleAndMost(waited),
      ...middleAndMost(worked),
    ]);
  }
  return rows;
}

function middleAndMost(values: readonly number[]): [string, string] {
  const sorted = [...values].sort((a, b) => a - b);
  return [sorted[Math.floor(sorted.length / 2)]!.toFixed(0), sorted.at(-1)!.toFixed(0)];
}

interface OnPhone {
  /** Loaded for the first question, compressed. */
  bytes: number;
  /** Milliseconds from each key to its answer, the processor slowed. */
  waited: number[];
  /** Milliseconds of the page’s own thread for each key, times four. */
  worked: number[];
}

/** What the index of generated content costs, in seconds and beside the making of the dossier. */
function costOf(size: number): { seconds: number; share: number } {
  const content = mkdtempSync(join(tmpdir(), 'whence-search-'));
  try {
    generate(content, size);
    const start = performance.now();
    const dossier = buildDossier(examine(loadCorpus(content), '2026-06-01'));
    const made = performance.now();
    searchIndex(dossier);
    const seconds = (performance.now() - made) / 1000;
    return { seconds, share: (1000 * seconds) / (made - start) };
  } finally {
    rmSync(content, { recursive: true, force: true });
  }
}

const syllables =
  'ba ca da fa ga ha ka la ma na pa ra sa ta va bre cro dri flo glu hel ing jor kil lun mor nes orm pel quin rin sol tun ulv vik wal yst'.split(
    ' ',
  );

/** A made-up word; the later ones of a vocabulary are the longer. */
function wordAt(at: number): string {
  let word = '';
  for (let rest = at + syllables.length; rest > 0; rest = Math.floor(rest / syllables.length))
    word += syllables[rest % syllables.length]!;
  return word;
}

/** Few words are met often and most seldom, as in any text. */
const seldom = (random: Random, count: number): number =>
  Math.floor(count ** (random.below(1_000_000) / 1_000_000)) - 1;

/** Records with a vocabulary as wide as that of real ones, and the people and places of them. */
export function variedDocuments(records: number): Document[] {
  const random = seeded(7);
  const name = () =>
    `${capital(wordAt(200 + seldom(random, 300)))} ${capital(wordAt(2000 + seldom(random, 6000)))}`;
  const document = (
    kind: Document['kind'],
    i: number,
    title: string,
    names: string[],
    words: number,
  ): Document => ({
    kind,
    id: `${kind}-${i}`,
    title,
    facts: '1871 · Hancock',
    names,
    text: Array.from({ length: words }, () => wordAt(seldom(random, 60_000))).join(' '),
  });
  return [
    ...Array.from({ length: records }, (_, i) => document('person', i, name(), [name(), name()], 20)),
    ...Array.from({ length: records / 5 }, (_, i) => document('place', i, capital(wordAt(9000 + i)), [], 0)),
    ...Array.from({ length: records }, (_, i) =>
      document('record', i, `Census of ${name()}`, Array.from({ length: 6 }, name), 130),
    ),
  ];
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** Types on pages opened from disk, one of them with the processor slowed. */
async function onPhone(index: SearchIndex): Promise<OnPhone> {
  const folder = mkdtempSync(join(tmpdir(), 'whence-search-'));
  try {
    writePage(folder, index);
    return await withBrowserOptions(async (options) => {
      const browser = await chromium.launch(options);
      try {
        const slow = await opened(await browser.newPage(), folder, index, slowed);
        const bytes = await slow.firstQuestion();
        const waited = await typed(slow.ask);
        const quick = await opened(await browser.newPage(), folder, index, 1);
        const worked: number[] = [];
        let before = await quick.processor();
        await typed(async (question) => {
          await quick.ask(question);
          const now = await quick.processor();
          worked.push(slowed * (now - before));
          before = now;
          return 0;
        });
        return { bytes, waited, worked };
      } finally {
        await browser.close();
      }
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const slowed = 4;
const surname = (at: number): string => capital(wordAt(2000 + at));

/** Types some questions a letter at a time. */
async function typed(ask: (question: string) => Promise<number>): Promise<number[]> {
  const took: number[] = [];
  for (const whole of [`${capital(wordAt(201))} ${surname(50)}`, wordAt(3), 'census 1871'])
    for (let length = 1; length <= whole.length; length++) took.push(await ask(whole.slice(0, length)));
  return took;
}

interface OpenedPage {
  /** Asks, and says how long the answer took. */
  ask(question: string): Promise<number>;
  /** Asks for a surname, and says what was loaded for it. */
  firstQuestion(): Promise<number>;
  /** Milliseconds the page’s thread has worked so far. */
  processor(): Promise<number>;
}

async function opened(page: Page, folder: string, index: SearchIndex, rate: number): Promise<OpenedPage> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate });
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  let bytes = 0;
  page.on('request', (request) => {
    const name = /\/search\/([^/]+)\.js/.exec(request.url())?.[1];
    const file = name === undefined ? undefined : index.files.get(name);
    if (file !== undefined) bytes += gzipSync(file).length;
  });
  await page.goto(pathToFileURL(join(folder, 'search.html')).href);
  const ask = (question: string) =>
    page.evaluate(async (text) => {
      const field = document.querySelector('input')!;
      const list = document.querySelector('ol')!;
      field.value = text;
      const start = performance.now();
      const drawn = new Promise<number>((resolve) =>
        new MutationObserver((_, observer) => {
          observer.disconnect();
          resolve(performance.now() - start);
        }).observe(list.parentElement!, { childList: true, subtree: true, characterData: true }),
      );
      field.dispatchEvent(new Event('input'));
      return drawn;
    }, question);
  return {
    ask,
    firstQuestion: async () => {
      await ask(surname(5));
      return bytes;
    },
    processor: async () => {
      const { metrics } = await devtools.send('Performance.getMetrics');
      return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? NaN);
    },
  };
}

/** The search page with nothing around it. */
function writePage(folder: string, index: SearchIndex): void {
  mkdirSync(join(folder, 'search'));
  for (const [name, file] of index.files) writeFileSync(join(folder, 'search', `${name}.js`), file);
  buildSync({
    entryPoints: [join(project, 'components/scripts/search.ts')],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2020',
    outfile: join(folder, 'page.js'),
  });
  const kinds = ['', 'case', 'person', 'place', 'record', 'search']
    .map((kind) => `<button${kind && ` data-kind="${kind}"`}><span></span></button>`)
    .join('');
  writeFileSync(
    join(folder, 'search.html'),
    `<!doctype html><meta charset="utf-8"><script src="page.js" defer></script><div data-find-page data-edition="${index.edition}" data-language="en"><input><div class="find-kinds">${kinds}</div><p role="status"></p><ol></ol><button class="find-more"></button></div>`,
  );
}
