// Hostile zips are made by changing bytes of honest ones: the writer of the project makes none of them.
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CannotRun } from '../../src/corpus/types.ts';
import { writeCaseZip } from '../../src/exports/case/zip.ts';
import { unpackCase } from '../../src/imports/case/zip.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-hostile-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

const card = JSON.stringify({ version: 1, kind: 'whence-case', case: 'x', question: 'Where?', digest: null });
let count = 0;

/** A zip of files, its bytes changed as asked, and a folder to unpack it into. */
async function zip(files: Record<string, string>, change: (bytes: Buffer) => Buffer = (bytes) => bytes) {
  const path = join(work, `${++count}.zip`);
  await writeCaseZip(
    path,
    Object.entries({ 'case.json': card, ...files }).map(([name, text]) => ({
      path: name,
      from: Buffer.from(text),
    })),
  );
  writeFileSync(path, change(readFileSync(path)));
  return { path, into: mkdtempSync(join(work, 'into-')) };
}

/** Another name of the same length, everywhere it stands. */
const renamed = (from: string, to: string) => (bytes: Buffer) => {
  expect(to.length).toBe(from.length);
  return Buffer.from(bytes.toString('latin1').replaceAll(from, to), 'latin1');
};

test('an honest one is unpacked', async () => {
  const { path, into } = await zip({
    'content/site.yaml': 'title: T\n',
    'content/media/a b/ø.jpg': 'x',
    'READ ME.txt': 'r',
  });
  expect(await unpackCase(path, into)).toMatchObject({
    case: 'x',
    question: 'Where?',
    files: ['media/a b/ø.jpg', 'site.yaml'],
  });
  expect(readFileSync(join(into, 'site.yaml'), 'utf8')).toBe('title: T\n');
});

describe('refused, with nothing outside its folder', () => {
  test.each([
    ['content/records/aaaaaaaaa.md', 'content/../../../escaped.md'],
    ['content/records/aaaaaaaaa.md', '/etc/cron.d/aaaaaaaaaaaaa.md'],
    ['content/records/aaaaaaaaa.md', 'C:/windows/records/aaaaa.md.'],
    ['content/records/aaaaaaaaa.md', 'content\\..\\..\\..\\escaped.md'],
    ['content/records/aaaaaaaaa.md', 'content/records/.hidden00.md'],
    ['content/records/aaaaaaaaa.md', 'content/records/AAAAAAAAA.js'],
    ['content/records/aaaaaaaaa.md', 'content/media/../../aaaaa.md'],
    ['content/records/aaaaaaaaa.md', 'content/media/.git/hooks/a.m'],
    ['content/records/aaaaaaaaa.md', 'content/node_modules/a/b.mjs'],
  ])('%s as %s', async (from, to) => {
    const fitted = to.padEnd(from.length, 'x').slice(0, from.length);
    const { path, into } = await zip({ [from]: 'x' }, renamed(from, fitted));
    await expect(unpackCase(path, into)).rejects.toThrow(/^\d+\.zip was not opened: /);
    expect(readdirSync(into, { recursive: true }).filter((name) => String(name).endsWith('.md'))).toEqual([]);
    expect(readdirSync(work).some((name) => name.includes('escaped'))).toBe(false);
  });

  test('a link', async () => {
    const { path, into } = await zip({ 'content/media/a.jpg': '/etc/passwd' }, (bytes) => {
      // The rights of a file stand in the upper half of its external attributes (ZIP application note, 4.4.15).
      const regular = Buffer.from([0, 0, 0xa4, 0x81]);
      const link = Buffer.from([0, 0, 0xff, 0xa1]);
      const at = bytes.lastIndexOf(regular);
      expect(at).toBeGreaterThan(0);
      link.copy(bytes, at);
      return bytes;
    });
    await expect(unpackCase(path, into)).rejects.toThrow('is a link to somewhere else');
    expect(readdirSync(into)).toEqual([]);
  });

  test('two files of one name, capitals aside', async () => {
    const { path, into } = await zip({ 'content/media/a.jpg': 'x', 'content/media/A.jpg': 'y' });
    await expect(unpackCase(path, into)).rejects.toThrow(
      '“content/media/A.jpg” in it stands in it twice'.replace(' in it stands', ' stands'),
    );
  });

  test('more than a file can hold, said or unsaid', async () => {
    const large = 'a'.repeat(6 * 1024 * 1024);
    const said = await zip({ 'content/records/a.md': large });
    await expect(unpackCase(said.path, said.into)).rejects.toThrow('has 6 megabytes; at most 5 are read');
    const size = Buffer.alloc(4);
    size.writeUInt32LE(large.length);
    const little = Buffer.alloc(4);
    little.writeUInt32LE(100);
    const unsaid = await zip({ 'content/records/a.md': large }, (bytes) =>
      Buffer.from(
        bytes.toString('latin1').replaceAll(size.toString('latin1'), little.toString('latin1')),
        'latin1',
      ),
    );
    await expect(unpackCase(unsaid.path, unsaid.into)).rejects.toThrow(/was not opened/);
  });

  test.each([
    [{ 'case.json': '{}' }, 'its case.json is not that of a case'],
    [{ 'case.json': 'no' }, 'its case.json can’t be read'],
    [
      { 'case.json': JSON.stringify({ kind: 'whence-case', case: 'x', version: 2 }) },
      'it was made by a newer Whence',
    ],
  ])('%j', async (files, said) => {
    const { path, into } = await zip(files);
    await expect(unpackCase(path, into)).rejects.toThrow(said);
  });

  test('what is no zip, or cut off', async () => {
    const path = join(work, 'no.zip');
    writeFileSync(path, 'PK and no more');
    await expect(unpackCase(path, work)).rejects.toThrow(
      'no.zip was not opened: it is no zip that can be read',
    );
    await expect(unpackCase(join(work, 'absent.zip'), work)).rejects.toThrow('There is no file');
    const cut = await zip({ 'content/site.yaml': 'title: T\n' }, (bytes) =>
      bytes.subarray(0, bytes.length - 30),
    );
    await expect(unpackCase(cut.path, cut.into)).rejects.toThrow(/was not opened/);
  });
});

test('an honest one with bytes changed by chance is opened, or refused in a sentence', async () => {
  const { path } = await zip({
    'content/site.yaml': 'title: T\n',
    'content/records/a.md': '---\ntitle: A\n---\n',
  });
  const honest = readFileSync(path);
  const changes = fc.array(fc.tuple(fc.nat(honest.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(changes, async (some) => {
      const bytes = Buffer.from(honest);
      for (const [at, value] of some) bytes[at] = value;
      const changed = join(work, 'changed.zip');
      writeFileSync(changed, bytes);
      const into = mkdtempSync(join(work, 'into-'));
      try {
        const { files } = await unpackCase(changed, into);
        expect(files.every((file) => existsSync(join(into, file)))).toBe(true);
      } catch (error) {
        expect(error).toBeInstanceOf(CannotRun);
      }
    }),
    { numRuns: 40 },
  );
});
