import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const work = mkdtempSync(join(tmpdir(), 'whence-verbs-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

const run = (verb: string, ...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, `src/cli/${verb}.ts`), ...args],
    {
      cwd: root,
      env: { ...process.env, INIT_CWD: work, NO_COLOR: '1' },
      encoding: 'utf8',
    },
  );
  const plain = (text: string) => text.replaceAll(work, '~');
  return { code: status, out: plain(stdout), err: plain(stderr) };
};
const family = readFileSync(join(root, 'tests/imports/gedcom/files/family.ged'), 'utf8');

test('a family file comes in, again, and out; every answer is a sentence', { timeout: 180_000 }, async () => {
  const said: string[] = [];
  const tell = (what: string, answer: ReturnType<typeof run>) => {
    said.push(
      `$ ${what}   → ${answer.code}\n${answer.out}${answer.err === '' ? '' : `(to the errors) ${answer.err}`}`,
    );
    return answer;
  };
  writeFileSync(join(work, 'family.ged'), family);
  writeFileSync(join(work, 'bad.ged'), '0 HEAD\n1 GEDC\n2 VERS 7.0\n0 @i@ INDI\n 1 NAME Ann\n0 TRLR\n');
  writeFileSync(join(work, 'list.ged'), 'name,born\n');
  const today = ['--today', '2026-06-01'];

  const dry = tell(
    'import family.ged --content new',
    run('import', 'family.ged', '--content', 'new', ...today),
  );
  expect([dry.code, existsSync(join(work, 'new'))]).toEqual([0, false]);
  expect(
    tell(
      'import family.ged --content new --write',
      run('import', 'family.ged', '--content', 'new', '--write', ...today),
    ).code,
  ).toBe(0);
  expect(readdirSync(join(work, 'new')).sort()).toEqual([
    '.imported',
    'imports',
    'people',
    'places',
    'records',
    'site.yaml',
  ]);

  const people = join(work, 'new/people/family.yaml');
  writeFileSync(
    people,
    readFileSync(people, 'utf8').replace('name: Honora Tobin', 'name: Honora Tobin Dunworth'),
  );
  writeFileSync(
    join(work, 'newer.ged'),
    family.replace('2 DATE 1810', '2 DATE 1811').replace('/Tobin/', '/Tobyn/'),
  );
  expect(
    tell('import newer.ged --content new', run('import', 'newer.ged', '--content', 'new', ...today)).code,
  ).toBe(2);
  const again = ['gedcom', 'newer.ged', '--name', 'family', '--content', 'new', '--write', ...today];
  const json = run('import', ...again, '--format', 'json');
  expect(JSON.parse(json.out)).toMatchObject({ version: 1, kind: 'gedcom', texts: { edited: 1, new: 0 } });
  expect(readFileSync(people, 'utf8')).toContain('born: { date: 1811 }');

  tell('import bad.ged', run('import', 'gedcom', 'bad.ged', '--content', 'new'));
  expect(tell('import list.ged', run('import', 'gedcom', 'list.ged', '--content', 'other')).code).toBe(1);
  expect(existsSync(join(work, 'other'))).toBe(false);
  expect(
    tell(
      'export gedcom --out out.ged',
      run('export', 'gedcom', '--content', 'new', '--out', 'out.ged', ...today),
    ).code,
  ).toBe(0);
  expect(readFileSync(join(work, 'out.ged'), 'utf8')).toMatch(
    /^\ufeff0 HEAD\n1 GEDC\n2 VERS 7\.0\n[^]*0 TRLR\n$/,
  );
  await expect(said.join('\n')).toMatchFileSnapshot('import-export.golden.txt');
});
