import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import * as yauzl from 'yauzl';
import { manifestName, manifestOf, manifestText, type Manifest } from '../../src/exports/site/manifest.ts';
import { preparePage } from '../../src/exports/site/page.ts';
import { folderName, sumLine, sumsName, writePortable, zipEnding } from '../../src/exports/zip/portable.ts';
import { writeZip } from '../../src/exports/zip/zip.ts';
import { dossierOf, site } from './published-content.ts';

let root: string;
beforeEach(() => (root = mkdtempSync(join(tmpdir(), 'whence-zip-'))));
afterEach(() => rmSync(root, { recursive: true, force: true }));

const sha256 = (bytes: Buffer | string) => createHash('sha256').update(bytes).digest('hex');
const jpeg = Buffer.concat([Buffer.from([0xff, 0xd8]), Buffer.alloc(4000, 'x'), Buffer.from([0xff, 0xd9])]);
const files: Record<string, Buffer | string> = {
  'index.html': '<p>home</p>'.repeat(200),
  'people/bjørg-ó-faoláin.html': '<p>Bjørg</p>',
  'media/a scan.jpg': jpeg,
  'assets/style.abc.css': 'p{}',
  'empty.txt': '',
};

/** A finished site on disk. */
function lay(): Manifest {
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(root, 'site', path)), { recursive: true });
    writeFileSync(join(root, 'site', path), content);
  }
  const manifest = manifestOf(
    new Map(Object.entries(files).map(([path, content]) => [path, sha256(content)])),
  );
  writeFileSync(join(root, 'site', manifestName), manifestText(manifest));
  return manifest;
}

interface Read {
  entries: { path: string; stored: boolean; time: string; rights: number; utf8: boolean; bytes: Buffer }[];
  comment: string;
}

/** Reads a zip with another library than the one that wrote it, which checks sizes and checksums. */
async function read(file: string): Promise<Read> {
  const zip = await yauzl.openPromise(file);
  const entries: Read['entries'] = [];
  for await (const entry of zip.eachEntry()) {
    const stream = await zip.openReadStreamPromise(entry);
    const chunks: Buffer[] = [];
    for await (const chunk of stream) chunks.push(chunk as Buffer);
    entries.push({
      path: entry.fileName,
      stored: entry.compressionMethod === 0,
      time: entry.getLastModDate({ timezone: 'UTC' }).toISOString(),
      rights: entry.externalFileAttributes >>> 16,
      utf8: (entry.generalPurposeBitFlag & 0x800) !== 0,
      bytes: Buffer.concat(chunks),
    });
  }
  return { entries, comment: zip.comment };
}

describe('the zip of a site', () => {
  test('holds one folder with a page to begin at, the checksums, and the site in a folder of its own', async () => {
    const file = join(root, 'x.zip');
    const sum = await writePortable(file, join(root, 'site'), lay(), dossierOf());
    expect(sum).toBe(sha256(readFileSync(file)));
    const { entries, comment } = await read(file);
    expect(entries.map(({ path }) => path)).toEqual([
      `The Phelans/${sumsName}`,
      'The Phelans/START HERE.html',
      'The Phelans/site/assets/style.abc.css',
      'The Phelans/site/empty.txt',
      'The Phelans/site/index.html',
      'The Phelans/site/media/a scan.jpg',
      'The Phelans/site/people/bjørg-ó-faoláin.html',
      'The Phelans/site/whence.json',
    ]);
    for (const { path, bytes } of entries.filter(({ path }) => path.includes('/site/')))
      expect([path, bytes.equals(readFileSync(join(root, path.slice('The Phelans/'.length))))]).toEqual([
        path,
        true,
      ]);
    expect(comment).toMatch(zipEnding);
    expect(readFileSync(file).subarray(-100).toString('latin1')).toMatch(zipEnding);
  });

  test('its checksums are those of everything else in it', async () => {
    const file = join(root, 'x.zip');
    await writePortable(file, join(root, 'site'), lay(), dossierOf());
    const { entries } = await read(file);
    const [sums, ...others] = entries;
    const lines = others.map(({ path, bytes }) => `${sha256(bytes)}  ${path.slice('The Phelans/'.length)}\n`);
    expect(sums!.bytes.toString('utf8')).toBe(lines.join(''));
  });

  test('bears the day of the site and no other, packs text and stores what is packed already', async () => {
    const file = join(root, 'x.zip');
    await writePortable(file, join(root, 'site'), lay(), dossierOf());
    const { entries } = await read(file);
    expect(new Set(entries.map(({ time, rights, utf8 }) => JSON.stringify([time, rights, utf8])))).toEqual(
      new Set([JSON.stringify(['2026-06-01T12:00:00.000Z', 0o100644, true])]),
    );
    expect(entries.filter(({ stored }) => stored).map(({ path }) => path)).toEqual([
      'The Phelans/site/media/a scan.jpg',
    ]);
    expect(readFileSync(file).length).toBeLessThan(8000);
  });

  test('is the same to the byte in another zone', () => {
    lay();
    const program = `
      import { readManifest } from ${JSON.stringify(join(import.meta.dirname, '../../src/exports/site/manifest.ts'))};
      import { writeZip } from ${JSON.stringify(join(import.meta.dirname, '../../src/exports/zip/zip.ts'))};
      const site = ${JSON.stringify(join(root, 'site'))};
      const entries = readManifest(site).files.map(({ path }) => ({ path, from: site + '/' + path }));
      console.log(await writeZip(site + '.' + process.env.TZ.replace('/', '-') + '.zip', entries, '2026-03-29', 'made'));`;
    const sums = ['Europe/Oslo', 'Pacific/Auckland', 'America/St_Johns'].map((TZ) =>
      execFileSync(process.execPath, ['--input-type=module', '-e', program], {
        env: { ...process.env, TZ },
        encoding: 'utf8',
      }),
    );
    expect(sums[0]).toMatch(/^[0-9a-f]{64}\n$/);
    expect(new Set(sums).size).toBe(1);
  });

  test.runIf(spawnSync('unzip', ['-v']).status === 0 && spawnSync('sha256sum', ['--version']).status === 0)(
    'is unpacked by unzip, and sha256sum finds everything as it was',
    async () => {
      await writePortable(join(root, 'x.zip'), join(root, 'site'), lay(), dossierOf());
      execFileSync('unzip', ['-q', 'x.zip', '-d', 'there'], {
        cwd: root,
        env: { ...process.env, LC_ALL: 'C.UTF-8' },
      });
      const folder = join(root, 'there/The Phelans');
      const checked = execFileSync('sha256sum', ['--strict', '-c', sumsName], {
        cwd: folder,
        encoding: 'utf8',
      });
      expect(checked.split('\n').filter((line) => line.endsWith(': OK'))).toHaveLength(7);
      writeFileSync(join(folder, 'site/index.html'), 'changed');
      expect(spawnSync('sha256sum', ['-c', sumsName], { cwd: folder }).status).toBe(1);
    },
  );

  test('speaks the language of the site', async () => {
    const norwegian = dossierOf({ 'site.yaml': `${site}language: nb\n` });
    await writePortable(join(root, 'x.zip'), join(root, 'site'), lay(), norwegian);
    const { entries } = await read(join(root, 'x.zip'));
    expect(entries[1]!.path).toBe('The Phelans/START HER.html');
    expect(entries[2]!.path).toBe('The Phelans/sider/assets/style.abc.css');
    const page = entries[1]!.bytes.toString('utf8');
    expect(page).toContain('<html lang="nb">');
    expect(page).toContain('href="sider/index.html"');
  });

  test('a file that can’t be read is told of', async () => {
    const entries = [{ path: 'a', from: join(root, 'nowhere') }];
    await expect(writeZip(join(root, 'x.zip'), entries, '2026-01-01', 'x')).rejects.toThrow('ENOENT');
  });

  test.each(['../out.html', '/etc/x', 'a/../../b', 'C:/x'])('no path leads out of it: %s', async (path) => {
    await expect(
      writeZip(join(root, 'x.zip'), [{ path, from: Buffer.from('x') }], '2026-01-01', 'x'),
    ).rejects.toThrow(/relative path|absolute path/);
    expect(existsSync(join(root, 'x.zip'))).toBe(false);
  });
});

describe('the page to begin at', () => {
  const page = async (files: Record<string, string> = {}) => {
    await writePortable(join(root, 'x.zip'), join(root, 'site'), lay(), dossierOf(files));
    const { entries } = await read(join(root, 'x.zip'));
    return entries.find(({ path }) => path.includes('START'))!.bytes.toString('utf8');
  };
  test('keeps the site’s own policy', async () => {
    const { faults, hasPolicy } = preparePage(await page(), (href) => href);
    expect([faults, hasPolicy]).toEqual([[], true]);
  });
  test('leads to nothing that isn’t in the zip', async () => {
    const html = await page();
    const links = [...html.matchAll(/(?:href|src)="([^"]*)"/g)].map((found) => found[1]!);
    expect(links).toEqual(['site/assets/style.abc.css', 'site/favicon.svg', 'site/index.html']);
  });
  test('writes the author’s words as text', async () => {
    const html = await page({ 'site.yaml': `${site}description: '<script>"x"</script> & more'\n` });
    expect(html).toContain('&lt;script&gt;&quot;x&quot;&lt;/script&gt; &amp; more');
    expect(html).not.toContain('<script');
  });
  test('of a family’s own site asks not to pass it on', async () => {
    expect(await page({ 'site.yaml': `${site}audience: family\n` })).toContain('For the family only.');
    expect(await page()).not.toContain('For the family only.');
  });
});

test.each([
  ['From What Place', 'From What Place'],
  ['Who: Phelan / Whelan?', 'Who Phelan Whelan'],
  ['  ..Slektene «fra» Årdal.. ', 'Slektene «fra» Årdal'],
  ['a\u0000b\u202ec', 'abc'],
  ['CON', 'Site CON'],
  ['nul.txt', 'Site nul.txt'],
  ['???', 'Site'],
  ['../..', 'Site'],
  ['x'.repeat(100), 'x'.repeat(60)],
  ['e\u0301', 'é'],
])('%j is a folder named %j everywhere', (title, name) => expect(folderName(title)).toBe(name));

// As GNU coreutils writes it: a line that begins with a backslash has its name escaped.
test.each([
  ['a b.html', `${'0'.repeat(64)}  a b.html\n`],
  ['a\\b', `\\${'0'.repeat(64)}  a\\\\b\n`],
  ['a\nb', `\\${'0'.repeat(64)}  a\\nb\n`],
])('the checksum of %j is written so that sha256sum reads it', (path, line) =>
  expect(sumLine('0'.repeat(64), path)).toBe(line),
);
