import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { manifestName, manifestOf, manifestText } from '../../src/exports/site/manifest.ts';
import type { Finding } from '../../src/model/finding.ts';
import { goodContent, readMarks } from '../corpus/content.ts';

const project = resolve(import.meta.dirname, '../..');
const today = '2026-06-01';
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-bad-input-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

interface Slip {
  /** What is wrong, as a person would put it. */
  name: string;
  /** Files laid over a good folder, with ‹ before each place an error must point to. */
  files?: Record<string, string>;
  /** What can’t be written as text. Returns the places that errors must point to. */
  prepare?: (dir: string) => string[];
  /** The rules broken, one for each place, in the order of the places. */
  rules: string[];
  /** What the sentence and its help must say. */
  says: RegExp[];
}

/** A case that is right but for what is changed in it. */
function caseWith(...lines: string[]): string {
  return [
    '---',
    'question: Where was Maurice Phelan born?',
    'subject: maurice-phelan',
    'evidence:',
    '  - { id: e1, from: deed#m1, states: birthplace, place: knockmahon, kind: direct }',
    '  - { id: e2, from: deed#m1, states: name, kind: indirect }',
    ...lines,
    '---',
    'He came from Knockmahon.',
    '',
  ].join('\n');
}

const record = (title: string, ...lines: string[]) =>
  ['---', `title: ${title}`, 'form: original', 'made: 1870', ...lines, '---', 'Text.', ''].join('\n');
const times = (count: number, of: string) => Array.from({ length: count }, () => of).join(', ');

const slips: Slip[] = [
  {
    name: 'a file that may not be read',
    prepare: (dir) => {
      writeFileSync(join(dir, 'records/locked.md'), record('Locked'));
      chmodSync(join(dir, 'records/locked.md'), 0);
      return ['records/locked.md:1:1'];
    },
    rules: ['file-can-be-read'],
    says: [/cannot be read: permission is denied/],
  },
  {
    name: 'a link that leads nowhere, and one that leads to itself',
    prepare: (dir) => {
      symlinkSync('nothing.md', join(dir, 'records/gone.md'));
      symlinkSync('round.md', join(dir, 'records/round.md'));
      return ['records/gone.md:1:1', 'records/round.md:1:1'];
    },
    rules: ['file-can-be-read', 'file-can-be-read'],
    says: [/what it leads to is not there/, /it leads to itself/],
  },
  {
    name: 'a file that is not UTF-8',
    prepare: (dir) => {
      writeFileSync(join(dir, 'records/latin.md'), Buffer.from(record('Sønnavé'), 'latin1'));
      return ['records/latin.md:2:9'];
    },
    rules: ['file-is-utf8'],
    says: [/the byte F8 cannot stand here.*save it again with the encoding UTF-8/s],
  },
  {
    name: 'tabs in YAML',
    files: {
      'records/tabs.md': '---\ntitle: Tabs\nform: original\nmentions:\n  - id: m1\n‹\tname: Morris\n---\n',
    },
    rules: ['yaml-is-readable'],
    says: [/A tab stands in the indentation.*spaces/s],
  },
  {
    name: 'YAML anchors that explode',
    files: {
      'records/laughs.md': `---\ntitle: Laughs\nform: original\nsays:\n  a: &a [${times(20, 'x')}]\n  b: &b [‹${times(20, '*a')}]\n${[
        'c',
        'd',
        'e',
        'f',
        'g',
        'h',
        'i',
      ]
        .map((name, i) => `  ${name}: &${name} [${times(20, `*${'bcdefgh'[i]!}`)}]`)
        .join('\n')}\n---\n`,
    },
    rules: ['yaml-is-of-bounded-size'],
    says: [/repeat one another so often/],
  },
  {
    name: 'a file of 20 megabytes',
    prepare: (dir) => {
      writeFileSync(join(dir, 'records/long.md'), Buffer.alloc(20 * 1024 * 1024, record('Long')));
      return ['records/long.md:1:1'];
    },
    rules: ['file-is-of-reasonable-size'],
    says: [/This file has 20\.0 megabytes.*Put scans into media\//s],
  },
  {
    name: 'a key given twice',
    files: { 'records/twice.md': '---\ntitle: Twice\nform: original\n‹title: Again\n---\n' },
    rules: ['key-stands-once'],
    says: [/“title” stands twice; it was already given in line 2/],
  },
  {
    name: 'ids with odd characters, in a file’s name and in a list',
    prepare: (dir) => {
      writeFileSync(join(dir, 'records/Déed of 1871.md'), record('Odd'));
      writeFileSync(
        join(dir, 'people/more.yaml'),
        '- id: Mary O\'Brien\n  name: Mary\n- { id: "../../etc", name: X }\n',
      );
      return ['people/more.yaml:1:7', 'people/more.yaml:3:9', 'records/Déed of 1871.md:1:1'];
    },
    rules: ['id-is-well-formed', 'id-is-well-formed', 'id-is-well-formed'],
    says: [/“Mary O'Brien”/, /“\.\.\/\.\.\/etc”/, /Rename it, for instance to deed-of-1871\.md/],
  },
  {
    name: 'places inside each other in a circle',
    files: {
      'places/round.yaml':
        '- { id: upper, name: Upper, kind: parish, within: ‹lower }\n- { id: lower, name: Lower, kind: townland, within: upper }\n',
    },
    rules: ['place-lies-in-no-circle'],
    says: [/upper/],
  },
  {
    name: 'records derived from each other in a circle',
    files: {
      'records/copy.md': record('Copy').replace('form: original', 'form: derivative\nderivedFrom: [‹index]'),
      'records/index.md': record('Index').replace('form: original', 'form: derivative\nderivedFrom: [copy]'),
    },
    rules: ['derivation-lies-in-no-circle'],
    says: [/copy/],
  },
  {
    name: 'a comma that splits a sentence inside braces',
    files: {
      'cases/comma.md': caseWith('rejected:', '  - { place: kill, because: He was older, ‹and a tailor }'),
    },
    rules: ['sentence-is-whole'],
    says: [/the comma inside \{ \} ends the sentence.*because: >-/s],
  },
  {
    name: 'a colon that splits a sentence inside braces',
    files: { 'cases/colon.md': caseWith('rejected:', '  - { place: kill, because: He said‹: no }') },
    rules: ['sentence-is-whole'],
    says: [/The colon after “He said” breaks the sentence/],
  },
  {
    name: 'evidence cited that isn’t there, in the front matter and in the text',
    files: {
      'cases/cites.md': caseWith('hypothesis: { place: knockmahon, cites: [e1, ‹e9] }').replace(
        'Knockmahon.',
        'Knockmahon [#‹e8], [@‹deeds].',
      ),
    },
    rules: ['reference-resolves', 'evidence-reference-resolves', 'citation-resolves'],
    says: [/e9/, /e8/, /deeds.*deed/s],
  },
  {
    name: 'a case about a person nobody knows',
    files: { 'cases/nobody.md': caseWith().replace('subject: maurice', 'subject: ‹morris') },
    rules: ['reference-resolves'],
    says: [/“morris-phelan”.*maurice-phelan/s],
  },
  {
    name: 'independence argued for items that depend on each other',
    files: {
      'cases/argued.md': caseWith(
        'independence:',
        '  - ‹between: [e1, e2]',
        '    because: They are not alike.',
      ),
    },
    rules: ['independence-is-arguable'],
    says: [/e1 and e2|e1.*e2/],
  },
  {
    name: 'scans that lead out of the folder, by their path and by a link',
    files: {
      'records/scans.md': record(
        'Scans',
        'media:',
        '  - { file: ‹../site.yaml, alt: A }',
        '  - { file: ‹/etc/hostname, alt: B }',
        '  - { file: ‹linked.jpg, alt: C }',
      ),
    },
    prepare: (dir) => {
      mkdirSync(join(dir, 'media'), { recursive: true });
      symlinkSync('/etc/hostname', join(dir, 'media/linked.jpg'));
      return [];
    },
    rules: ['media-stays-in-its-folder', 'media-stays-in-its-folder', 'media-stays-in-its-folder'],
    says: [/“\.\.\/site\.yaml” leads out/, /“\/etc\/hostname” leads out/, /“linked\.jpg” leads out/],
  },
];

/** Writes a folder with slips in it, and returns it with the places that must be pointed to. */
function lay(name: string, wrong: readonly Slip[]): { dir: string; places: string[] } {
  const dir = join(work, name);
  const { files, positions } = readMarks(
    Object.assign({}, ...wrong.map((slip) => slip.files ?? {})) as Record<string, string>,
  );
  for (const [file, text] of Object.entries({ ...goodContent, ...files })) {
    mkdirSync(dirname(join(dir, file)), { recursive: true });
    writeFileSync(join(dir, file), text);
  }
  const places = [...positions, ...wrong.flatMap((slip) => slip.prepare?.(dir) ?? [])];
  return { dir, places: places.sort(inFileOrder) };
}

function inFileOrder(a: string, b: string): number {
  const [fileA = '', lineA, columnA] = a.split(':');
  const [fileB = '', lineB, columnB] = b.split(':');
  return (
    (fileA < fileB ? -1 : fileA > fileB ? 1 : 0) ||
    Number(lineA) - Number(lineB) ||
    Number(columnA) - Number(columnB)
  );
}

function errorsOf(dir: string): Finding[] {
  return asOrdinaryUser(() => examine(loadCorpus(dir), today)).findings.filter(
    ({ severity }) => severity === 'error',
  );
}

/** The superuser may read every file; locked ones are locked only for somebody else. */
function asOrdinaryUser<T>(use: () => T): T {
  if (process.getuid?.() !== 0) return use();
  chmodSync(work, 0o755);
  process.seteuid!(65_534);
  try {
    return use();
  } finally {
    process.seteuid!(0);
  }
}

/** Every file and link of a folder with what it holds. */
function bytes(folder: string): Record<string, string> {
  const found = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(
    (entry) => !entry.isDirectory(),
  );
  return Object.fromEntries(
    found.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      const held = entry.isSymbolicLink()
        ? readlinkSync(path)
        : createHash('sha256').update(readFileSync(path)).digest('hex');
      return [path.slice(folder.length + 1), held];
    }),
  );
}

function run(verb: string, ...args: string[]): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [join(project, `src/cli/${verb}.ts`), '--today', today, ...args], {
      cwd: work,
      env: { ...process.env, INIT_CWD: undefined, NO_COLOR: '1' },
    });
    let out = '';
    let err = '';
    child.stdout.on('data', (chunk) => (out += chunk));
    child.stderr.on('data', (chunk) => (err += chunk));
    child.on('close', (code) => done({ code, out, err }));
  });
}

test('the folder these slips are made in has no error without them', () => {
  expect(
    errorsOf(lay('good', [{ name: '', files: { 'cases/good.md': caseWith() }, rules: [], says: [] }]).dir),
  ).toEqual([]);
});

describe('each gets a sentence of its own at its place, and the author’s files stay as they are', () => {
  test.each(slips.map((slip, i) => ({ ...slip, slip, folder: `slip-${i}` })))(
    '$name',
    ({ slip, folder, rules, says }) => {
      const { dir, places } = lay(folder, [slip]);
      const before = bytes(dir);
      const errors = errorsOf(dir);
      expect(errors.map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual(places);
      expect(errors.map(({ rule }) => rule)).toEqual(rules);
      for (const [i, said] of says.entries())
        expect(`${errors[i]!.message} ${errors[i]!.help}`).toMatch(said);
      expect(bytes(dir)).toEqual(before);
    },
  );
});

describe('the commands', () => {
  test('say all of it at once, end with code 1, and write and lose nothing', async () => {
    const wrong = slips.filter(({ name }) => name !== 'a file that may not be read');
    const { dir, places } = lay('all', wrong);
    const site = join(work, 'site');
    mkdirSync(site);
    writeFileSync(join(site, 'index.html'), 'An earlier site.');
    writeFileSync(join(site, manifestName), manifestText(manifestOf(new Map([['index.html', 'digest']]))));
    const before = [bytes(dir), bytes(site)];
    const checked = await run('check', '--content', dir);
    const built = await Promise.all([
      run('build', '--content', dir, '--out', site),
      run('build', '--content', dir, '--out', join(work, 'new/site')),
    ]);
    for (const { code, out, err } of [checked, ...built]) {
      expect([code, err]).toEqual([1, '']);
      for (const place of places) expect(out).toContain(place);
      expect(out).not.toMatch(/\n\s+at .*:\d+:\d+\)?\n/);
    }
    expect([bytes(dir), bytes(site)]).toEqual(before);
    expect(readdirSync(work)).not.toContain('new');
  });

  test.each([
    ['there is no such folder', 'nowhere', /^There is no folder “.*nowhere”/],
    ['the folder is empty', 'empty', /empty.*is no content folder|is no content folder|holds nothing/],
    ['it is a file', 'a-file', /is a file; a content folder is wanted/],
  ])('end with code 2 and a sentence when %s', async (_, name, sentence) => {
    if (name === 'empty') mkdirSync(join(work, name), { recursive: true });
    if (name === 'a-file') writeFileSync(join(work, name), 'x');
    const before = readdirSync(work).sort();
    for (const verb of ['check', 'build']) {
      const { code, out, err } = await run(
        verb,
        '--content',
        name,
        ...(verb === 'build' ? ['--out', 'made'] : []),
      );
      expect([verb, code, out]).toEqual([verb, 2, '']);
      expect(err).toMatch(sentence);
      expect(err).not.toMatch(/\n\s+at /);
    }
    expect(readdirSync(work).sort()).toEqual(
      [...new Set([...before, name])].filter((one) => one !== 'nowhere').sort(),
    );
  });
});
