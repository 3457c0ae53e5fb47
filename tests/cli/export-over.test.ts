// An export is written over an earlier one of its kind, and over nothing else.
import { execFileSync } from 'node:child_process';
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
import { dirname, join } from 'node:path';
import type { Command } from 'commander';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { caseCommand } from '../../src/cli/export/case.ts';
import { checkCommand } from '../../src/cli/export/check.ts';
import { csvCommand } from '../../src/cli/export/csv.ts';
import { gedcomExport } from '../../src/cli/export/gedcom.ts';
import { linkedDataCommand } from '../../src/cli/export/linked-data.ts';
import { sourcesCommand } from '../../src/cli/export/sources.ts';
import { isOurComparison } from '../../src/cli/shared/earlier.ts';
import { goodContent } from '../corpus/content.ts';
import { caseFile } from '../exports/published-content.ts';
import { run } from './in-process.ts';

let work: string;
let content: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-over-'));
  content = join(work, 'content');
  vi.stubEnv('INIT_CWD', work);
  vi.stubEnv('NO_COLOR', '1');
  for (const [file, text] of Object.entries({ ...goodContent, 'cases/phelan.md': caseFile('') })) {
    mkdirSync(dirname(join(content, file)), { recursive: true });
    writeFileSync(join(content, file), text);
  }
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(work, { recursive: true, force: true });
});

const kinds: [name: string, file: string, command: () => Command, args: string[]][] = [
  ['gedcom', 'a.ged', gedcomExport, []],
  ['csv', 'a.csv', csvCommand, ['people']],
  ['csl-json', 'a.json', sourcesCommand, []],
  ['bibtex', 'a.bib', sourcesCommand, []],
  ['linked-data', 'a.jsonld', linkedDataCommand, []],
  ['check', 'check.json', checkCommand, []],
  ['case', 'a.zip', caseCommand, ['phelan']],
];

/** What people may have under such a name. */
const theirs: Record<string, string> = {
  gedcom: '0 HEAD\n1 SOUR OTHER\n2 NAME Another program\n1 NOTE 1 SOUR WHENCE\n0 TRLR\n',
  csv: 'id,name,sex,notes\n1,Ann,F,years of work\n',
  'csl-json': '[\n  {\n    "id": "doe2001",\n    "type": "book",\n    "title": "Mine"\n  }\n]\n',
  bibtex: '@book{doe2001,\n  title = {Mine}\n}\n',
  'linked-data': '{\n  "@context": { "@vocab": "https://schema.org/" }\n}\n',
  check: '{ "version": 1, "mine": true }\n',
  case: 'PK no zip',
};

describe.each(kinds)('%s', (kind, name, command, args) => {
  const how = () => [...args, '--content', content, '--today', '2026-06-01'];

  test('over an earlier one of its kind, over an empty file, over nothing else but by --force', async () => {
    const file = join(work, kind, name);
    const export_ = (...more: string[]) => run(command(), ...how(), '--out', file, ...more);
    expect((await export_()).code).toBe(0);
    const first = readFileSync(file);
    expect((await export_()).code).toBe(0);
    expect(readFileSync(file).equals(first)).toBe(true);
    expect(readdirSync(dirname(file))).toEqual([name]);

    writeFileSync(file, theirs[kind]!);
    const { code, out } = await export_();
    expect([code, readFileSync(file, 'utf8')]).toEqual([2, theirs[kind]]);
    expect(out).toMatch(/ is there already and is no earlier .*it was left as it is\. .*--force\.\n$/);
    expect(out).not.toMatch(/ at .*\.ts:/);
    expect((await export_('--force')).code).toBe(0);
    expect(readFileSync(file).equals(first)).toBe(true);
    if (kind !== 'case') {
      writeFileSync(file, '');
      expect((await export_()).code).toBe(0);
    }
  });

  test('a file called .part beside it stays, a folder and what is no ordinary file are refused', async () => {
    const file = join(work, `${kind}-part`, name);
    mkdirSync(dirname(file));
    writeFileSync(`${file}.part`, 'mine');
    expect((await run(command(), ...how(), '--out', file)).code).toBe(0);
    expect(readFileSync(`${file}.part`, 'utf8')).toBe('mine');
    expect(readdirSync(dirname(file)).sort()).toEqual([name, `${name}.part`]);
    const pipe = join(work, `${kind}-pipe`);
    execFileSync('mkfifo', [pipe]);
    for (const place of [work, pipe, '/dev/null']) {
      const { code, out } = await run(command(), ...how(), '--out', place, '--force');
      expect([place, code, out]).toEqual([
        place,
        2,
        expect.stringMatching(/ is (?:a folder|no ordinary file|there already)[^\n]*\.\n$/) as string,
      ]);
    }
  });

  test('not into the content folder', async () => {
    const file = join(content, 'people', name);
    const { code, out } = await run(command(), ...how(), '--out', file, '--force');
    expect([code, existsSync(file)]).toEqual([2, false]);
    expect(out).toContain('lies in the content folder');
  });
});

test('of several tables none is written where one is in the way', async () => {
  const out = join(work, 'tables');
  mkdirSync(out);
  writeFileSync(join(out, 'records.csv'), 'title\nmine\n');
  const how = ['all', '--content', content, '--today', '2026-06-01', '--out', out];
  expect((await run(csvCommand(), ...how)).code).toBe(2);
  expect(readdirSync(out)).toEqual(['records.csv']);
  expect((await run(csvCommand(), ...how, '--force')).code).toBe(0);
  expect((await run(csvCommand(), ...how, '--bom')).code).toBe(0);
  expect((await run(csvCommand(), ...how)).code).toBe(0);
});

test('the pairs of a comparison are known by how they begin', () => {
  expect(isOurComparison.csv('a,b,weight,probability,line a,line b,given a\n')).toBe(true);
  expect(isOurComparison.csv('a,b,weight\n1,2,3\n')).toBe(false);
  expect(isOurComparison.json('[\n{"a":"1","b":"2","weight":3,"probability":1,"ledger":[{')).toBe(true);
  expect(isOurComparison.json('[\n{"a":"1"}]')).toBe(false);
  expect(isOurComparison.html('<!doctype html><title>Mine</title>')).toBe(false);
  expect(isOurComparison.text('anything')).toBe(false);
});
