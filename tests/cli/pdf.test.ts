/** The PDFs of proof pages, read back by a library that knows nothing of the browser that wrote them. */
import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { goodContent } from '../corpus/content.ts';

const project = resolve(import.meta.dirname, '../..');
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-pdf-'));
  for (const [file, text] of Object.entries({ ...goodContent, 'cases/phelan.md': openCase })) {
    mkdirSync(dirname(join(work, 'content', file)), { recursive: true });
    writeFileSync(join(work, 'content', file), text);
  }
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

const openCase = [
  '---',
  'question: Where was Maurice Phelan born?',
  'subject: maurice-phelan',
  '---',
  'Nobody knows.',
  '',
].join('\n');

function pdf(...args: string[]): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((done) => {
    const run = spawn(process.execPath, [join(project, 'src/cli/pdf.ts'), '--today', '2026-06-01', ...args], {
      cwd: work,
      env: { ...process.env, VITEST: undefined, INIT_CWD: undefined, NO_COLOR: '1' },
    });
    let out = '';
    let err = '';
    run.stdout.on('data', (chunk) => (out += chunk));
    run.stderr.on('data', (chunk) => (err += chunk));
    run.on('close', (code) => done({ code, out, err }));
  });
}

interface Sheet {
  /** Width and height in points. */
  size: [number, number];
  text: string;
  /** Lines of text by how far from the lower edge they stand, with the size of their letters. */
  pieces: { text: string; up: number; letters: number }[];
}

async function read(file: string): Promise<{ sheets: Sheet[]; document: PDFDocumentProxy }> {
  const document = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  const sheets: Sheet[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str, up: Number(item.transform[5]), letters: Number(item.transform[3]) }]
        : [],
    );
    sheets.push({
      size: [right - left, top - bottom],
      text: items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''),
      pieces,
    });
  }
  return { sheets, document };
}

describe('the demonstration', () => {
  const demo = ['--content', join(project, 'content'), 'phelan-knockmahon'];
  let a4: Awaited<ReturnType<typeof read>>;
  beforeAll(async () => {
    const run = await pdf(...demo, '--out', 'a4');
    expect(run).toMatchObject({ code: 0, err: '' });
    expect(run.out).toMatch(/a4\/phelan-knockmahon\.pdf: \d+ sheets/);
    a4 = await read(join(work, 'a4/phelan-knockmahon.pdf'));
  });

  // ISO 216: A4 is 210 by 297 mm; a point is 1/72 inch.
  test('is on sheets of A4, and nothing else is written', () => {
    expect(a4.sheets.length).toBeGreaterThan(10);
    for (const { size } of a4.sheets) {
      expect(Math.abs(size[0] - (210 / 25.4) * 72)).toBeLessThan(1);
      expect(Math.abs(size[1] - (297 / 25.4) * 72)).toBeLessThan(1);
    }
    expect(readdirSync(join(work, 'a4'))).toEqual(['phelan-knockmahon.pdf']);
  });

  test('has the question, the standing, the argument, what is folded on a screen, and the digest', () => {
    const text = a4.sheets
      .map((sheet) => sheet.text)
      .join('\n')
      .replace(/\s+/g, ' ')
      // The typeface has one shape for both apostrophes.
      .replaceAll('\u02bc', '’');
    for (const words of [
      'In which townland of County',
      'Established',
      'Two independent items of evidence',
      'lived on Quincy Street',
      'What it says, and of whom',
      'before comparing',
      'Reviewer’s points',
      'Cautions',
    ])
      expect(text).toContain(words);
    expect(text.replace(/ /g, '')).toMatch(/sha256-[0-9a-f]{64}/);
    expect(text).toContain('These people never lived');
  });

  test('numbers its sheets, and every one after the first has the question and the site above it', () => {
    const many = a4.sheets.length;
    for (const [i, { text, pieces }] of a4.sheets.entries()) {
      const foot = pieces.filter(({ up }) => up < 50).map((piece) => piece.text);
      expect([i, foot.join('').replace(/\s/g, '')]).toEqual([i, `${i + 1}/${many}`]);
      const head = pieces
        .filter(({ up }) => up > 842 - 50)
        .map((piece) => piece.text)
        .join(' ');
      if (i > 0)
        expect([i, head]).toEqual([i, expect.stringMatching(/Proof: In which townland .*From What Place/)]);
      expect(text.length).toBeGreaterThan(100);
    }
  });

  test('leaves no heading alone at the foot of a sheet, and no sheet nearly empty', () => {
    for (const [i, { pieces }] of a4.sheets.entries()) {
      const body = pieces.filter(({ up }) => up > 50 && up < 842 - 50);
      // Headings of sections are the only letters of 15 points.
      const headings = body.filter(({ letters }) => letters > 14 && letters < 16);
      const lowest = Math.min(...body.map(({ up }) => up));
      for (const heading of headings)
        expect([i, heading.text, heading.up > lowest + 10]).toEqual([i, heading.text, true]);
      if (i < a4.sheets.length - 1) expect([i, body.length > 12]).toEqual([i, true]);
    }
  });

  test('repeats the heads of tables on every sheet they run over', () => {
    const heads = a4.sheets.filter(({ text }) => text.includes('Where that comes from'));
    expect(heads.length).toBeGreaterThan(3);
  });

  test('is tagged for screen readers, in its language, with an outline and the day it was asked for', async () => {
    const { info } = await a4.document.getMetadata();
    const said = info as Record<string, unknown>;
    const marks = (await a4.document.getMarkInfo()) as unknown as Map<string, boolean>;
    expect(marks.get('Marked')).toBe(true);
    expect(said['Language']).toBe('en');
    expect(said['CreationDate']).toMatch(/^D:20260601000000/);
    const titles = JSON.stringify(await a4.document.getOutline());
    expect(titles).toContain('The evidence, item by item');
  });

  test('links within itself and to the world, never to a folder of this machine', async () => {
    const places: (string | undefined)[] = [];
    let within = 0;
    for (let number = 1; number <= a4.document.numPages; number++)
      for (const { url, unsafeUrl, dest } of (await (await a4.document.getPage(number)).getAnnotations()) as {
        url?: string;
        unsafeUrl?: string;
        dest?: unknown;
      }[]) {
        if (dest) within++;
        places.push(url ?? unsafeUrl);
      }
    expect(within).toBeGreaterThan(100);
    expect(places.filter((place) => place?.startsWith('file:'))).toEqual([]);
    expect(readFileSync(join(work, 'a4/phelan-knockmahon.pdf')).includes(project)).toBe(false);
  });
});

describe('what can’t be printed is told', () => {
  test.each([
    [['nobody'], 2, 'There is no case nobody'],
    [['../content'], 2, 'There is no case'],
    [['--out', 'content/pdf'], 2, 'it lies in the content folder'],
    [['--out', 'content/site.yaml'], 2, 'it is a file'],
    [['--paper', 'a5'], 2, 'a4, letter'],
    [['--content', 'nowhere'], 2, 'nowhere'],
  ])('%j', async (args, code, said) => {
    const run = await pdf('--content', 'content', ...args);
    expect([run.code, run.out + run.err]).toEqual([code, expect.stringContaining(said)]);
    expect(run.err).not.toContain('fault of Whence');
    expect(existsSync(join(work, 'pdf'))).toBe(false);
  });

  test('content with errors, and nothing is written', async () => {
    writeFileSync(join(work, 'content/cases/broken.md'), '---\nquestion: Where?\n---\n');
    const run = await pdf('--content', 'content', '--out', 'none');
    rmSync(join(work, 'content/cases/broken.md'));
    expect([run.code, run.err]).toEqual([1, '']);
    expect(run.out).toContain('No PDF was written');
    expect(existsSync(join(work, 'none'))).toBe(false);
  });

  test('but an open case is printed, with everything it has', async () => {
    const run = await pdf('--content', 'content', '--out', 'open', '--paper', 'letter');
    expect([run.code, run.err]).toEqual([0, '']);
    const { sheets } = await read(join(work, 'open/phelan.pdf'));
    expect(sheets.map(({ text }) => text).join(' ')).toContain('Nobody knows.');
    // ANSI/ASME Y14.1: letter is 8.5 by 11 inches.
    for (const { size } of sheets) expect(size).toEqual([612, 792]);
  });

  test('over an earlier PDF, the same bytes', async () => {
    const before = readFileSync(join(work, 'open/phelan.pdf'));
    expect(before.subarray(0, 20_000).toString('latin1')).toContain('/Creator (Whence)');
    writeFileSync(join(work, 'open/phelan.pdf'), before.subarray(0, 9000));
    expect(await pdf('--content', 'content', '--out', 'open', '--paper', 'letter')).toMatchObject({
      code: 0,
    });
    expect(readFileSync(join(work, 'open/phelan.pdf')).equals(before)).toBe(true);
  });

  test('a file that is no PDF of ours is never written over', async () => {
    mkdirSync(join(work, 'mine'));
    for (const text of ['my notes', '%PDF-1.4 my thesis']) {
      writeFileSync(join(work, 'mine/phelan.pdf'), text);
      const run = await pdf('--content', 'content', 'phelan', '--out', 'mine');
      expect([run.code, run.err]).toEqual([2, expect.stringContaining('is no earlier export of this kind')]);
      expect(readFileSync(join(work, 'mine/phelan.pdf'), 'utf8')).toBe(text);
    }
  });
});
