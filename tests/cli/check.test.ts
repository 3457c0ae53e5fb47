import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseDocument } from 'yaml';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const project = resolve(import.meta.dirname, '../..');
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-check-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function check(...args: string[]): { code: number | null; out: string; err: string } {
  const run = spawnSync(
    process.execPath,
    [join(project, 'src/cli/check.ts'), '--today', '2026-06-01', ...args],
    {
      cwd: project,
      env: { ...process.env, INIT_CWD: work, NO_COLOR: '1' },
      encoding: 'utf8',
    },
  );
  return { code: run.status, out: run.stdout, err: run.stderr };
}

interface Document {
  version: number;
  ok: boolean;
  counts: Record<string, number>;
  findings: {
    severity: string;
    rule: string;
    file: string;
    line: number;
    column: number;
    message: string;
    help: string;
  }[];
  cases: {
    id: string;
    standing: string | null;
    independent: number;
    margin: number;
    criticalRecords: string[];
    digest: string | null;
    [key: string]: unknown;
  }[];
  people: {
    id: string;
    born: { earliest: string | null; latest: string | null };
    outliers: string[];
    living: boolean;
  }[];
}

function json(...args: string[]): Document & { code: number | null } {
  const { code, out } = check('--format', 'json', ...args);
  return { ...(JSON.parse(out) as Document), code };
}

/** A copy of the demo to break. */
function demo(name: string): string {
  const dir = join(work, name);
  cpSync(join(project, 'content'), dir, { recursive: true });
  return dir;
}

function edit(dir: string, file: string, change: (text: string) => string): void {
  const path = join(dir, file);
  const before = readFileSync(path, 'utf8');
  const after = change(before);
  expect(after).not.toBe(before);
  writeFileSync(path, after);
}

describe('the demo', () => {
  let demonstration: ReturnType<typeof json>;
  beforeAll(() => {
    demonstration = json('--content', join(project, 'content'));
  });

  test('has no errors and covers the standings it is there to show', () => {
    expect(demonstration.findings.filter((f) => f.severity === 'error')).toEqual([]);
    expect(demonstration).toMatchObject({ version: 1, ok: true, code: 0 });
    expect(Object.fromEntries(demonstration.cases.map((c) => [c.id, c.standing]))).toEqual({
      'kirwan-templeyvrick': 'meets',
      'nor-rindy': 'meets',
      'nor-synneva': 'open',
      'phelan-knockmahon': 'meets',
    });
  });

  test('is as large as a demonstration must be to show real work', () => {
    const { counts } = demonstration;
    expect(counts['records']).toBeGreaterThanOrEqual(60);
    expect(counts['mentions']).toBeGreaterThanOrEqual(250);
    expect(counts['people']).toBeGreaterThanOrEqual(70);
    expect(counts['places']).toBeGreaterThanOrEqual(50);
    expect(counts['searches']).toBeGreaterThanOrEqual(25);
  });

  test('is reported as agreed on (vitest -u writes it anew)', async () => {
    const { out } = check('--content', join(project, 'content'));
    await expect(out).toMatchFileSnapshot('check.golden.txt');
  });

  test('puts among the living only the two who are', () =>
    expect(demonstration.people.filter((person) => person.living).map(({ id }) => id)).toEqual([
      'rosalind-teague',
      'denis-teague',
    ]));

  test('has the keys of the document in their published order', () => {
    expect(Object.keys(demonstration).filter((key) => key !== 'code')).toEqual([
      'version',
      'ok',
      'counts',
      'findings',
      'cases',
      'people',
    ]);
    expect(Object.keys(demonstration.cases[0]!)).toEqual([
      'id',
      'subject',
      'claim',
      'place',
      'standing',
      'independent',
      'support',
      'dependence',
      'undetermined',
      'argued',
      'untied',
      'conflicts',
      'margin',
      'criticalRecords',
      'points',
      'digest',
    ]);
  });

  test('loses its established place with the evidence of any critical record, at the line of the conclusion, and gets it back', () => {
    const established = demonstration.cases.find((c) => c.id === 'phelan-knockmahon')!;
    expect(established.margin).toBe(1);
    expect(established.criticalRecords.length).toBeGreaterThan(0);
    for (const record of established.criticalRecords) {
      const dir = demo(`without-${record}`);
      const file = 'cases/phelan-knockmahon.mdx';
      const whole = readFileSync(join(dir, file), 'utf8');
      edit(dir, file, (text) => withoutEvidenceOf(text, record));
      const broken = json('--content', dir);
      const text = readFileSync(join(dir, file), 'utf8');
      const cites = text.split('\n').findIndex((line) => line.startsWith('  cites:')) + 1;
      expect(broken.code).toBe(1);
      expect(broken.findings.find((f) => f.rule === 'two-independent-sources')).toMatchObject({
        severity: 'error',
        file,
        line: cites,
        column: 3,
      });
      writeFileSync(join(dir, file), whole);
      expect(json('--content', dir).code).toBe(0);
    }
  });
});

/** A case without the evidence that comes from a record, and without any mention of that evidence. */
function withoutEvidenceOf(text: string, record: string): string {
  const [, head = '', body = ''] = /^---\n([\s\S]*?\n)---\n([\s\S]*)$/.exec(text)!;
  const document = parseDocument(head);
  const data = document.toJS() as {
    evidence: { id: string; from: string | string[]; tiedBy?: (string | string[])[] }[];
    conclusion: { cites: string[] };
  };
  const gone = new Set(
    data.evidence.filter((e) => [e.from].flat().some((ref) => ref.startsWith(`${record}#`))).map((e) => e.id),
  );
  expect(gone.size).toBeGreaterThan(0);
  for (const [index, item] of data.evidence.entries()) {
    const ways = item.tiedBy?.filter((way) => ![way].flat().some((id) => gone.has(id)));
    if (ways) document.setIn(['evidence', index, 'tiedBy'], ways);
  }
  document.setIn(
    ['conclusion', 'cites'],
    data.conclusion.cites.filter((id) => !gone.has(id)),
  );
  document.setIn(['conflicts'], []);
  document.setIn(
    ['evidence'],
    (document.toJS() as typeof data).evidence.filter((e) => !gone.has(e.id)),
  );
  return `---\n${document.toString({ lineWidth: 0, flowCollectionPadding: false })}---\n${body.replace(/\[#(e\d+)\]/g, (ref, id: string) => (gone.has(id) ? '' : ref))}`;
}

describe('usage', () => {
  test('a folder that is not there ends in a sentence and exit code 2', () => {
    const run = check('--content', 'nowhere');
    expect(run.code).toBe(2);
    expect(run.out).toBe('');
    expect(run.err).toMatch(/^There is no folder .*nowhere/);
  });

  test('an empty folder ends in a sentence and exit code 2', () => {
    mkdirSync(join(work, 'empty'));
    const run = check('--content', 'empty');
    expect(run.code).toBe(2);
    expect(run.err).toMatch(/^[A-Z“].*\.\n$/s);
  });

  test('an option nobody knows ends in a sentence and exit code 2', () => {
    const run = check('--contents', 'x');
    expect(run.code).toBe(2);
    expect(run.err).toMatch(/Did you mean --content\?/);
  });

  test('help is printed with exit code 0', () => {
    const run = check('--help');
    expect(run.code).toBe(0);
    expect(run.out).toContain('npm run check --');
  });

  test('the same content gives the same document, from any folder', () => {
    const content = join(project, 'content');
    const first = check('--content', content, '--format', 'json').out;
    const second = execFileSync(
      process.execPath,
      [join(project, 'src/cli/check.ts'), '--today', '2026-06-01', '--format', 'json', '--content', content],
      { cwd: work, encoding: 'utf8' },
    );
    expect(second).toBe(first);
  });
});

describe('a broken file', () => {
  test('leaves the cases it does not touch computed', () => {
    const dir = demo('half-broken');
    edit(dir, 'records/nor-letter-1866.md', (text) => text.replace('form: original', 'fourm: original'));
    const result = json('--content', dir);
    expect(result.code).toBe(1);
    expect(
      result.findings.filter((f) => f.file === 'records/nor-letter-1866.md' && f.severity === 'error').length,
    ).toBeGreaterThan(0);
    const standing = Object.fromEntries(result.cases.map((c) => [c.id, c.standing]));
    expect(standing).toMatchObject({
      'phelan-knockmahon': 'meets',
      'kirwan-templeyvrick': 'meets',
      'nor-rindy': null,
    });
  });

  test('is reported with an excerpt and a caret under the word', () => {
    const dir = demo('one-word');
    edit(dir, 'cases/phelan-knockmahon.mdx', (text) =>
      text.replace('claim: established', 'claim: establish'),
    );
    const { out, code } = check('--content', dir);
    expect(code).toBe(1);
    const block = out.split(/\n(?=error|warning|hint)/).find((part) => part.startsWith('error'))!;
    expect(block).toMatch(/^error {2}cases\/phelan-knockmahon\.mdx:\d+:10/);
    expect(block).toMatch(/claim: establish\n\s*\|\s*\^/);
    expect(block).toContain('established');
  });
});
