import { spawnSync } from 'node:child_process';
import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ResolvedReading } from '../../src/reasoning/places/types.ts';

const project = resolve(import.meta.dirname, '../..');
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-place-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function place(args: string[], input?: string | Buffer) {
  const run = spawnSync(process.execPath, [join(project, 'src/cli/place.ts'), ...args], {
    cwd: project,
    env: { ...process.env, INIT_CWD: work, NO_COLOR: '1' },
    encoding: 'utf8',
    ...(input === undefined ? {} : { input }),
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

test('what is printed for the demo', async () => {
  const { code, out } = place([
    'Nockmahon, Co. Waterford',
    'Templebrick, Par. Ballylaneen, Co. Waterford',
    'Hove, Vik, Sogn',
    'Stradbally',
    'Kilmacow, Co. Waterford',
    'New Row, Knockmahon',
    'Ballynothing',
    'ditto',
  ]);
  expect(code).toBe(0);
  await expect(out).toMatchFileSnapshot('place.golden.txt');
});

describe('as JSON', () => {
  test('one reading is one document of the form of the contract, extra keys aside', () => {
    const { code, out } = place(['--format', 'json', 'Nockmahon, Co. Waterford']);
    expect(code).toBe(0);
    const answer = JSON.parse(out) as ResolvedReading;
    expect(answer).toMatchObject({ reading: 'Nockmahon, Co. Waterford', outcome: 'clear' });
    expect(Object.keys(answer.candidates[0]!)).toEqual(['id', 'name', 'kind', 'path', 'score', 'because']);
    expect(answer.candidates[0]).toMatchObject({ id: 'knockmahon', kind: 'townland' });
  });
  test('several readings are one list', () => {
    const answers = JSON.parse(place(['--format', 'json', 'Kill', 'Hove, Vik']).out) as ResolvedReading[];
    expect(answers.map((answer) => answer.reading)).toEqual(['Kill', 'Hove, Vik']);
  });
  test('lines of standard input each give a document; no line stops the rest', () => {
    const lines = ['\uFEFFKill', '', 'x'.repeat(10_000), '(((', 'Hove, Vik', '\u0000\u0007', 'Київ'];
    const { code, out } = place(['-', '--format', 'json'], `${lines.join('\r\n')}\n`);
    expect(code).toBe(0);
    const answers = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as ResolvedReading);
    expect(answers.map((answer) => answer.outcome)).toEqual([
      'clear',
      'nothing',
      'nothing',
      'clear',
      'nothing',
      'nothing',
    ]);
    expect(answers[1]!.message).toContain('10000 characters');
  });
  test('bytes that are no text do no harm', () => {
    const { code, out } = place(['-', '--format', 'json'], Buffer.from([0xff, 0xfe, 0x80, 0x0a, 0x4b, 0x0a]));
    expect(code).toBe(0);
    expect(out.trim().split('\n')).toHaveLength(2);
  });
});

test('a reader that stops early ends it quietly', () => {
  const lines = 'Knockmahon, Waterford\n'.repeat(3_000);
  const run = spawnSync('sh', ['-c', `"${process.execPath}" src/cli/place.ts - | head -n 1`], {
    cwd: project,
    env: { ...process.env, INIT_CWD: work, NO_COLOR: '1' },
    encoding: 'utf8',
    input: lines,
  });
  expect([run.stdout.trim(), run.stderr]).toEqual(['“Knockmahon, Waterford”  one place fits', '']);
});

test('a place to look within narrows', () => {
  const all = JSON.parse(place(['--format', 'json', 'Rinde']).out) as ResolvedReading;
  const within = JSON.parse(
    place(['--format', 'json', '--within', 'co-waterford', 'Rinde']).out,
  ) as ResolvedReading;
  expect(all.candidates[0]!.id).toBe('rinde-gard');
  expect(within.candidates.filter((c) => !c.path.includes('County Waterford'))).toEqual([]);
});

describe('what can’t be done is told, with exit code 2', () => {
  test.each([
    [['--within', 'nowhere', 'Kill'], 'There is no place nowhere in the gazetteer.'],
    [['--limit', '0', 'Kill'], 'Give a whole number from 1 to 9999.'],
    [[], 'Run npm run place -- --help'],
    [['--content', 'not-there', 'Kill'], 'not-there'],
    [['--format', 'xml', 'Kill'], 'text, json'],
  ])('%j', (args, said) => {
    const { code, out, err } = place(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
    expect(err).not.toContain('fault of Whence');
  });
});

test('a content folder without places still has the built-in ones', () => {
  const content = join(work, 'bare');
  mkdirSync(content);
  writeFileSync(join(content, 'site.yaml'), 'title: Bare\nlanguage: en\n');
  const { code, out } = place(['--content', content, '--format', 'json', 'Co. Waterford']);
  expect(code).toBe(0);
  expect((JSON.parse(out) as ResolvedReading).candidates[0]!.id).toBe('co-waterford');
});
