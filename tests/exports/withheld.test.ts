/**
 * Withheld people with names like nobody else’s, planted in every field a content folder has: the check reports each
 * where it is an error to name them, with file and line; with the words marked, the site is built and tells of none of
 * them, by a scanner that shares nothing with the build’s.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine, type Examination } from '../../src/dossier/examine.ts';
import { plantedContent, type PlantedContent } from './withheld/content.ts';
import { published, tellsOf } from './withheld/scanner.ts';

const project = resolve(import.meta.dirname, '../..');
const today = '2026-06-01';
let work: string;
beforeAll(() => (work = mkdtempSync(join(tmpdir(), 'whence-withheld-'))));
afterAll(() => rmSync(work, { recursive: true, force: true }));

async function lay(name: string, { files, media, people }: PlantedContent): Promise<string> {
  const folder = join(work, name);
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  mkdirSync(join(folder, 'media'), { recursive: true });
  for (const [i, file] of media.entries())
    writeFileSync(
      join(folder, 'media', file),
      await sharp({ create: { width: 40, height: 30, channels: 3, background: '#887766' } })
        .withExif({ IFD0: { Artist: people[i]!.name, Copyright: people[i + 1]!.name } })
        .jpeg()
        .toBuffer(),
    );
  return folder;
}

describe('named', () => {
  let content: PlantedContent;
  let examination: Examination;
  beforeAll(async () => {
    content = plantedContent('named');
    examination = examine(loadCorpus(await lay('named', content)), today);
  });

  test('there are at least 150 of them, all withheld', () => {
    expect(content.people.length).toBeGreaterThanOrEqual(150);
    for (const { id } of content.people.slice(0, -1))
      expect([id, examination.withheld.people.has(id)]).toEqual([id, true]);
    expect(examination.withheld.mentions.has('letter-2019#m3')).toBe(true);
  });

  test('each is an error at the file and the line', () => {
    const errors = examination.findings.filter(({ rule }) => rule === 'living-are-not-named');
    const missing = content.plantings.filter(({ who, file, on }) => {
      const lines = content.files[file]!.split('\n');
      return !errors.some(
        (error) =>
          error.file === file &&
          error.help.includes(`people/${who.id} `) &&
          (on === undefined ||
            on.split('\n').some((one) => one !== '' && lines[error.line - 1]!.includes(one))),
      );
    });
    expect(missing).toEqual([]);
  });

  test('nothing else is wrong, and nobody else is reported', () => {
    const others = examination.findings.filter(
      ({ severity, rule }) => severity === 'error' && rule !== 'living-are-not-named',
    );
    expect(others.map(({ file, line, message }) => `${file}:${line} ${message}`)).toEqual([]);
    const planted = new Set(content.plantings.map(({ file }) => file));
    expect(
      examination.findings.filter(({ rule, file }) => rule === 'living-are-not-named' && !planted.has(file)),
    ).toEqual([]);
  });
});

describe('marked', () => {
  let content: PlantedContent;
  let site: string;
  beforeAll(async () => {
    content = plantedContent('marked');
    const folder = await lay('marked', content);
    site = join(work, 'site');
    const run = spawnSync(
      process.execPath,
      [join(project, 'src/cli/build.ts'), '--content', folder, '--out', site, '--portable', '--today', today],
      { encoding: 'utf8', env: { ...process.env, VITEST: undefined, NO_COLOR: '1' } },
    );
    expect([
      run.status,
      run.stderr,
      run.stdout
        .split('\n')
        .filter((line) => line.includes('error'))
        .slice(0, 5),
    ]).toEqual([0, '', []]);
  });

  test('the scanner finds what is there', async () => {
    const [who] = content.people as [(typeof content.people)[number]];
    const page = (text: string) => [{ path: 'x.html', bytes: Buffer.from(text) }];
    for (const text of [
      who.name,
      who.born,
      who.street,
      who.telephone.replaceAll('-', ' '),
      who.email,
      `<b>${who.given}</b>`,
      `&#x${who.given.charCodeAt(0).toString(16)};${who.given.slice(1)}`,
    ])
      expect(await tellsOf(page(text), content.people), text).not.toEqual([]);
    expect(await tellsOf(page('Ellen Tobin, 1911-03-04'), content.people)).toEqual([]);
  });

  test('no byte of the site or of its zip tells of any of them', async () => {
    const files = await published(site, `${site}.zip`);
    expect(files.length).toBeGreaterThan(80);
    expect(await tellsOf(files, content.people)).toEqual([]);
  });

  test('what may be said is there all the same', async () => {
    const texts = new Map((await published(site)).map(({ path, bytes }) => [path, bytes.toString('utf8')]));
    expect(texts.get('records/marriage-1868.html')).toMatch(/A living person|a living person/);
    expect(texts.get('records/marriage-1868.html')).toContain('a niece');
    expect(texts.get('records/letter-2019.html')).toContain('a living person');
    expect([...texts.keys()].filter((path) => /certificate|of-today|letter\.jpg/.test(path))).toEqual([]);
    expect(texts.has('people/mary-burke.html')).toBe(true);
  });
});
