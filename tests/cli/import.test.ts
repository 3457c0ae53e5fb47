import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import type { Command } from 'commander';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { caseCommand } from '../../src/cli/export/case.ts';
import { csvCommand } from '../../src/cli/export/csv.ts';
import { caseCommand as importCaseCommand } from '../../src/cli/import/case.ts';
import { gazetteerCommand } from '../../src/cli/import/gazetteer.ts';
import { tableCommand } from '../../src/cli/import/table.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { goodContent } from '../corpus/content.ts';
import { caseFile } from '../exports/published-content.ts';
import { run } from './in-process.ts';

const project = resolve(import.meta.dirname, '../..');
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-import-'));
  vi.stubEnv('INIT_CWD', work);
  vi.stubEnv('NO_COLOR', '1');
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(work, { recursive: true, force: true });
});

const kinds: Record<string, () => Command> = {
  table: tableCommand,
  gazetteer: gazetteerCommand,
  case: importCaseCommand,
};

/** What was typed, what came of it, as one text. */
async function session(...steps: [args: string[], before?: () => void][]): Promise<string> {
  const text: string[] = [];
  for (const [[kind = '', ...args], before] of steps) {
    before?.();
    const { code, out } = await run(kinds[kind]!(), ...args);
    const typed = args.map((arg) => (/[\s{}]/.test(arg) ? JSON.stringify(arg) : arg)).join(' ');
    text.push(`$ npm run import -- ${kind} ${typed}`, `${out}[exit ${code}]`, '');
  }
  return text.join('\n').replaceAll(work, '~');
}

const passengers = [
  'Ship,Arrived,No.,Last name,First name,Age,Sex,Occupation,Native country,Remarks',
  'Harvest Home,2 May 1864,211,Power,Patk,29,M,miner,Ireland,',
  ',,212,Phelan,Maurice,24,M,"miner, tin",,',
  ',,213,do,John,18,M,do,,sick',
  ',,214,do,Bridget,6 mos,F,,,',
  'Sea Gull,5/6/1866,1,Kirwan,Mary,abt 30,F,,,=said "Kill"',
  '',
].join('\n');

test('a table of passengers: shown, written, brought in again after both sides have changed it', async () => {
  const content = join(work, 'tobin');
  mkdirSync(content);
  writeFileSync(join(content, 'site.yaml'), 'title: The Tobins\n');
  const table = join(work, 'passengers.csv');
  writeFileSync(table, passengers);
  const words = [
    '--record',
    'form=original',
    '--record',
    'seen=film',
    '--record',
    'made={Arrived}',
    '--record',
    'place=new-york',
  ];
  const gull = () => {
    writeFileSync(
      table,
      passengers.replace('Patk', 'Patrick').replace('5/6/1866', '1866-06-05').replace('abt 30', '30'),
    );
  };
  const text = await session(
    [['table', 'passengers.csv', '--content', 'tobin']],
    [
      [
        'table',
        'passengers.csv',
        '--content',
        'tobin',
        ...words,
        '--dates',
        'day-first',
        '--save-mapping',
        'lists.yaml',
        '--write',
      ],
    ],
    [['table', 'passengers.csv', '--content', 'tobin', '--mapping', 'lists.yaml'], gull],
    [
      ['table', 'passengers.csv', '--content', 'tobin', '--mapping', 'lists.yaml', '--write'],
      () => {
        const file = join(content, 'records/harvest-home-1864-05-02.md');
        writeFileSync(file, readFileSync(file, 'utf8').replace('John do', 'John Do'));
      },
    ],
  );
  await expect(text).toMatchFileSnapshot('import-table.golden.txt');
  expect(readFileSync(join(content, 'records/harvest-home-1864-05-02.md'), 'utf8')).toContain('John Do');
  expect(readFileSync(join(content, 'records/sea-gull-1866-06-05.md'), 'utf8')).toContain('age: 30');
  expect(examine(loadCorpus(content), '2026-06-01').findings).toEqual([]);
});

test('what can’t be done is told in a sentence, and JSON is one document', async () => {
  const content = join(work, 'second');
  mkdirSync(join(content, 'places'), { recursive: true });
  writeFileSync(join(content, 'site.yaml'), 'title: T\n');
  writeFileSync(
    join(content, 'places/mine.yaml'),
    '# mine\n- { id: kill, name: Kill, kind: civil parish, within: [co-waterford] }\n',
  );
  writeFileSync(join(work, 'book.xlsx'), 'PK\x03\x04');
  writeFileSync(join(work, 'list.csv'), 'Name,Age\nAnn,31\n');
  writeFileSync(
    join(work, 'places.csv'),
    'name,variants,kind,chain,lat,lon\nKill,Cill,civil parish,Co. Waterford,52.17,-7.33\nKnockmahon,,townland,"Kill, Co. Waterford",52.14,-7.35\nX,,townland,Atlantis,1,1\n',
  );
  const text = await session(
    [['table', 'book.xlsx', '--content', 'second']],
    [['table', 'list.csv', '--content', 'second', '--record', 'series=no-such-series']],
    [['gazetteer', 'places.csv', '--content', 'second']],
    [['gazetteer', 'places.csv', '--content', 'second', '--add-variants', '--write']],
  );
  // The verb itself, told by the file alone what kind it is.
  const json = spawnSync(
    process.execPath,
    [join(project, 'src/cli/import.ts'), 'list.csv', '--content', 'second', '--format', 'json'],
    { cwd: project, env: { ...process.env, INIT_CWD: work }, encoding: 'utf8' },
  );
  await expect(text).toMatchFileSnapshot('import-messages.golden.txt');
  expect([json.status, json.stderr]).toEqual([0, '']);
  expect(JSON.parse(json.stdout)).toMatchObject({
    version: 1,
    table: { file: 'list.csv', rows: 1 },
    records: [{ id: 'list', file: 'records/list.md', mentions: 1, standing: 'new' }],
    written: [],
  });
  expect(readFileSync(join(content, 'places/mine.yaml'), 'utf8')).toBe(
    '# mine\n- { id: kill, variants: [Cill], name: Kill, kind: civil parish, within: [co-waterford] }\n',
  );
  expect(existsSync(join(content, 'records'))).toBe(false);
});

test('what an author took away stays away, and how to have it again is told', async () => {
  const content = join(work, 'third');
  mkdirSync(content);
  writeFileSync(join(content, 'site.yaml'), 'title: T\n');
  writeFileSync(join(work, 'deeds.csv'), 'Name,Document\nAnn Lee,1\nBo Lee,2\n');
  writeFileSync(
    join(work, 'farms.csv'),
    'name,kind,chain,lat,lon\nAbove,townland,"Co. Waterford",52.14,-7.35\n',
  );
  const table = ['deeds.csv', '--group', 'Document', '--content', 'third'];
  const gazetteer = ['farms.csv', '--content', 'third'];
  const plain = async (command: Command, ...args: string[]) =>
    (await run(command, ...args)).out.replace(/\s+/g, ' ');
  await run(tableCommand(), ...table, '--write');
  await run(gazetteerCommand(), ...gazetteer, '--write');
  const [deed, farms] = [join(content, 'records/deeds-1.md'), join(content, 'places/farms.yaml')];
  const other = join(content, 'records/deeds-2.md');
  rmSync(deed);
  rmSync(farms);
  writeFileSync(other, readFileSync(other, 'utf8').replace('Bo Lee', 'Bob Lee'));

  const look = await plain(tableCommand(), ...table);
  expect(look).toContain(
    'records/deeds-2.md, what you have (-) and the table says (+) - mentions: [{ id: m1, name: Bob Lee }] + mentions: [{ id: m1, name: Bo Lee }]',
  );
  const again = await plain(tableCommand(), ...table, '--write');
  expect(again).toContain('1 record is left out: imported before, and taken away by you since.');
  expect(again).toContain(
    'To have those again, take their lines out of .imported/tables.json in your folder.',
  );
  expect(await plain(gazetteerCommand(), ...gazetteer, '--write')).toMatch(
    /places\/farms\.yaml was imported before, and taken away by you since: not brought back\. To have the places again, give the list another name with --name\. There is nothing to write\. $/,
  );
  expect([existsSync(deed), existsSync(farms)]).toEqual([false, false]);
  const memory = join(content, '.imported/tables.json');
  writeFileSync(memory, readFileSync(memory, 'utf8').replace(/"records\/deeds-1.*\n/, ''));
  await run(tableCommand(), ...table, '--write');
  await run(gazetteerCommand(), ...gazetteer, '--name', 'land', '--write');
  expect([existsSync(deed), existsSync(join(content, 'places/land.yaml'))]).toEqual([true, true]);
  expect(readFileSync(other, 'utf8')).toContain('Bob Lee');
});

test('a case goes out, comes in elsewhere, and yields to what is there', async () => {
  const ours = join(work, 'ours');
  for (const [file, text] of Object.entries({ ...goodContent, 'cases/phelan.md': caseFile('') })) {
    mkdirSync(dirname(join(ours, file)), { recursive: true });
    writeFileSync(join(ours, file), text);
  }
  const how = ['--content', 'ours', '--today', '2026-06-01'];
  const first = await run(caseCommand(), 'phelan', ...how);
  const bytes = readFileSync(join(work, 'phelan.zip'));
  await run(caseCommand(), 'phelan', ...how);
  expect(readFileSync(join(work, 'phelan.zip')).equals(bytes)).toBe(true);
  const csv = await run(csvCommand(), 'people', ...how);
  expect(csv.out).toMatch(/^id,name,sex,[^\n]*\nmaurice-phelan,Maurice Phelan,/);
  const theirs = join(work, 'theirs');
  const text = await session(
    [['case', 'phelan.zip', '--content', 'theirs', '--today', '2026-06-01', '--write']],
    [
      ['case', 'phelan.zip', '--content', 'theirs', '--today', '2026-06-01', '--write'],
      () => {
        const file = join(theirs, 'records/deed.md');
        writeFileSync(file, readFileSync(file, 'utf8').replace('Bonmahon', 'Bunmahon'));
      },
    ],
  );
  // Digests change with the model of the content; what is said of them doesn’t.
  const said = `${first.out}\n${text}`.replaceAll(/sha256-[0-9a-f]{64}/g, 'sha256-…');
  await expect(said).toMatchFileSnapshot('import-case.golden.txt');
  expect(readFileSync(join(theirs, 'records/deed.md'), 'utf8')).toContain('Bunmahon');
});
