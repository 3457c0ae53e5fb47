import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { planChanges, writeChanges, type Piece } from '../../src/imports/changes.ts';
import { gedcomNames, memoryFile, readMemory, type MemoryName } from '../../src/imports/memory.ts';

let content: string;
beforeEach(() => {
  content = mkdtempSync(join(tmpdir(), 'whence-memory-'));
});
afterEach(() => rmSync(content, { recursive: true, force: true }));

const put = (file: string, text: string) => {
  mkdirSync(dirname(join(content, file)), { recursive: true });
  writeFileSync(join(content, file), text);
};
const get = (file: string) => readFileSync(join(content, file), 'utf8');
const there = (file: string) => existsSync(join(content, file));
const of = { file: 'lee.ged', digest: 'sha256-0', given: { people: [['I1', 'ann', 'Ann', '', '']] } };

function bring(name: MemoryName, texts: Record<string, string>): Record<string, string> {
  const pieces = Object.entries(texts).map(([place, text]): Piece => {
    const [file = '', entry] = place.split('#');
    return { file, text, ...(entry === undefined ? {} : { entry }) };
  });
  const plan = planChanges(content, pieces, readMemory(content, name));
  writeChanges(content, name, plan, name.startsWith('gedcom/') ? of : undefined);
  return Object.fromEntries(plan.changes.map(({ place, fate }) => [place, fate]));
}

describe('a memory', () => {
  test('is one line for each text, sorted, in a hidden folder; written again it is the same bytes', () => {
    bring('tables', { 'records/b.md': 'b\n', 'records/a.md': 'a\n' });
    const text = get('.imported/tables.json');
    // The first 96 bits of SHA-256: printf 'a\n' | openssl dgst -sha256 -binary | basenc --base64url | cut -c1-16
    expect(text).toBe(
      '{"version": 2,\n"written": {\n"records/a.md": "h0KPxSKAPTEGXnvO",\n"records/b.md": "AmOCmYm2_ZVPcrqv"\n}}\n',
    );
    bring('tables', { 'records/a.md': 'a\n' });
    expect(get('.imported/tables.json')).toBe(text);
  });

  test('of one import says nothing to another', () => {
    bring('gedcom/lee', { 'records/a.md': 'a\n' });
    expect(bring('tables', { 'records/a.md': 'b\n' })).toEqual({ 'records/a.md': 'taken' });
    expect(bring('gedcom/ray', { 'records/a.md': 'b\n' })).toEqual({ 'records/a.md': 'taken' });
    expect(gedcomNames(content)).toEqual(['lee', 'ray']);
    expect(there('.imported/tables.json')).toBe(false);
    expect(readMemory(content, 'gedcom/lee')?.of).toEqual(of);
  });

  test('forgets what an author takes out of it, the last line too', () => {
    bring('tables', { 'records/a.md': 'a\n', 'records/b.md': 'b\n' });
    for (const file of ['records/a.md', 'records/b.md']) rmSync(join(content, file));
    put('.imported/tables.json', get('.imported/tables.json').replace(/"records\/b.*\n/, ''));
    expect(bring('tables', { 'records/a.md': 'a\n', 'records/b.md': 'b\n' })).toEqual({
      'records/a.md': 'deleted',
      'records/b.md': 'new',
    });
  });

  test.each(['', '{', '[]', '{"version": 3, "written": {}}', '{"version": 2, "written": {"a": 1}}', 'null'])(
    'that can’t be read is told, and nothing is written: %j',
    (text) => {
      put('.imported/tables.json', text);
      put('.imported/gedcom/lee.json', text);
      expect(() => bring('tables', { 'records/a.md': 'a\n' })).toThrow(
        '.imported/tables.json can’t be read as what earlier imports remember. Put it back from a copy, or delete it: then whatever is there counts as yours, and stays as it is.',
      );
      expect(() => bring('gedcom/lee', { 'records/a.md': 'a\n' })).toThrow(
        '.imported/gedcom/lee.json can’t be read as what earlier imports remember. Put it back from a copy, or import under another name with --name.',
      );
      expect(there('records/a.md')).toBe(false);
    },
  );
});

const hex = (text: string) => createHash('sha256').update(text).digest('hex');
const short = (text: string) => createHash('sha256').update(text).digest('base64url').slice(0, 16);

describe('what an earlier version remembered', () => {
  test('of tables and gazetteers together is taken over by each, and nothing of it is lost', () => {
    const texts = { 'records/a.md': 'a\n', 'records/b.md': 'b\n', 'places/kill.yaml': '- { id: kill }\n' };
    for (const [file, text] of Object.entries(texts)) put(file, text);
    const files = Object.fromEntries(
      [...Object.entries(texts), ['records/c.md', 'c\n'] as const].map(([file, text]) => [file, hex(text)]),
    );
    put('.imported/files.json', `${JSON.stringify({ version: 1, files }, null, 1)}\n`);
    put('records/b.md', 'b, edited\n');
    expect(readMemory(content, 'tables')?.written.size).toBe(3);
    expect(JSON.parse(get('.imported/files.json'))).toEqual({ version: 1, files });
    expect(
      bring('tables', { 'records/a.md': 'a2\n', 'records/b.md': 'b2\n', 'records/c.md': 'c2\n' }),
    ).toEqual({ 'records/a.md': 'changed', 'records/b.md': 'edited', 'records/c.md': 'deleted' });
    // The gazetteers’ part waits for them.
    expect(JSON.parse(get('.imported/files.json'))).toEqual({
      version: 1,
      files: { 'places/kill.yaml': files['places/kill.yaml'] },
    });
    expect(bring('gazetteers', { 'places/kill.yaml': '- { id: kill, name: Kill }\n' })).toEqual({
      'places/kill.yaml': 'changed',
    });
    expect(there('.imported/files.json')).toBe(false);
    expect(bring('tables', { 'records/b.md': 'b3\n', 'records/c.md': 'c3\n' })).toEqual({
      'records/b.md': 'edited',
      'records/c.md': 'deleted',
    });
  });

  const list = '- id: ann\n  name: Ann\n- id: bo\n  name: Bo\n';
  const earlier = (complete: boolean) =>
    `${JSON.stringify({
      version: 1,
      ...of,
      complete,
      written: {
        'people/lee.yaml#ann': short('- id: ann\n  name: Ann\n'),
        'people/lee.yaml#bo': short('- id: bo\n  name: Robert\n'),
        'records/a.md': short('a\n'),
      },
    })}\n`;
  const newer = {
    'people/lee.yaml#ann': '- id: ann\n  name: Anna\n',
    'people/lee.yaml#bo': '- id: bo\n  name: Bob\n',
    'records/a.md': 'a2\n',
  };

  test('of a GEDCOM import is taken over where it is', () => {
    put('people/lee.yaml', list);
    put('imports/lee.json', earlier(true));
    put('imports/lee.report.txt', 'The report\n');
    expect(gedcomNames(content)).toEqual(['lee']);
    expect(readMemory(content, 'gedcom/lee')?.of).toEqual(of);
    expect(bring('gedcom/lee', newer)).toEqual({
      'people/lee.yaml#ann': 'changed',
      'people/lee.yaml#bo': 'edited',
      'records/a.md': 'deleted',
    });
    expect([there('imports/lee.json'), there('imports/lee.report.txt')]).toEqual([false, true]);
    expect(bring('gedcom/lee', newer)).toEqual({
      'people/lee.yaml#ann': 'same',
      'people/lee.yaml#bo': 'edited',
      'records/a.md': 'deleted',
    });
    expect(memoryFile('gedcom/lee')).toBe('.imported/gedcom/lee.json');
    expect(there('.imported/gedcom/lee.json')).toBe(true);
  });

  test('of one that was cut off tells what was deleted from what had not come yet', () => {
    put('people/lee.yaml', list);
    put('imports/lee.json', earlier(false));
    expect(bring('gedcom/lee', newer)).toEqual({
      'people/lee.yaml#ann': 'changed',
      'people/lee.yaml#bo': 'edited',
      'records/a.md': 'new',
    });
  });

  test('and can’t be read, is told where it is, and stays', () => {
    put('imports/lee.json', '{"version": 1');
    put('.imported/files.json', '{"version": 1}');
    expect(() => readMemory(content, 'gedcom/lee')).toThrow('imports/lee.json can’t be read');
    expect(() => readMemory(content, 'tables')).toThrow('.imported/files.json can’t be read');
  });
});
