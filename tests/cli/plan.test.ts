import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const project = resolve(import.meta.dirname, '../..');
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-plan-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function plan(...args: string[]) {
  const run = spawnSync(process.execPath, [join(project, 'src/cli/plan.ts'), ...args], {
    cwd: project,
    env: { ...process.env, INIT_CWD: work, NO_COLOR: '1' },
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

test('what is printed for the demo', async () => {
  const { code, out, err } = plan('nor-synneva', '--limit', '3');
  expect([code, err]).toEqual([0, '']);
  await expect(out).toMatchFileSnapshot('plan.golden.txt');
});

interface PlanDocument {
  version: number;
  case: string;
  open: { series: string; gain: number; why: { because: string }[] }[];
  openInAll: number;
  coverage: { person: string }[];
}

test('as JSON it is one document, cut at the limit, whole with --all', () => {
  const some = JSON.parse(plan('phelan-knockmahon', '--format', 'json', '--limit', '2').out) as PlanDocument;
  expect(some).toMatchObject({ version: 1, case: 'phelan-knockmahon' });
  expect(some.open).toHaveLength(2);
  expect(some.coverage).toHaveLength(1);
  const all = JSON.parse(plan('phelan-knockmahon', '--format', 'json', '--all').out) as PlanDocument;
  expect(all.open).toHaveLength(some.openInAll);
  expect(all.open.slice(0, 2)).toEqual(some.open);
  expect(all.coverage.length).toBeGreaterThan(1);
});

test('a case that is not there: a sentence, what was meant, and the list', () => {
  const { code, out, err } = plan('nor-synnva');
  expect([code, out]).toEqual([2, '']);
  expect(err).toBe(
    'There is no case nor-synnva. Did you mean nor-synneva? The cases are: kirwan-templeyvrick, nor-rindy, nor-synneva, phelan-knockmahon.\n',
  );
});

test('content without cases says how to make one', () => {
  const dir = join(work, 'empty');
  mkdirSync(dir);
  writeFileSync(join(dir, 'site.yaml'), 'title: Empty\n');
  const { code, err } = plan('x', '--content', dir);
  expect(code).toBe(2);
  expect(err).toContain('npm run new -- case');
});

test('usage that can’t be followed ends with 2', () => {
  expect(plan().code).toBe(2);
  expect(plan('nor-synneva', '--limit', '0').err).toContain('whole number');
  expect(plan('--help')).toMatchObject({ code: 0 });
});
