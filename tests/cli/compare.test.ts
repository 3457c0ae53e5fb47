import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readTable } from '../../src/corpus/table.ts';

const project = resolve(import.meta.dirname, '../..');
let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-compare-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function compare(...args: string[]): { code: number | null; out: string; err: string } {
  const run = spawnSync(process.execPath, [join(project, 'src/cli/compare.ts'), ...args], {
    cwd: project,
    env: { ...process.env, INIT_CWD: work, NO_COLOR: '1' },
    encoding: 'utf8',
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

const put = (name: string, text: string) => writeFileSync(join(work, name), text);

/** Invented people: passengers, and a census some years later. */
const passengers = `id,name,age,year,residence,wife
p1,"Tuohill, Thos",24,1864,Kilgobnet,Joan
p2,Patk O'Brien,30,1864,Kilmore,
p3,Ellen Veale,19,1864,=1+1,
`;
const census = `id;given;surname;age;residence;wife
c1;Thomas;Tuohil;41;Kilgobnet;Johanna
c2;Patrick;Brien;47;Kilmore;Mary
c3;Ellen;Veale;36;=1+1;
c4;Eleanor;Shanahan;61;Kilmore;
`;

describe('the report', () => {
  beforeAll(() => {
    put('passengers.csv', passengers);
    put('census-1880.csv', census);
  });
  test('as text: what was taken for what, and each pair with its ledger', async () => {
    const { code, out } = compare('passengers.csv', 'census-1880.csv');
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot('compare.golden.txt');
  });
  test('of one pair speaks of one', () => {
    put('one.csv', 'id,name,age,year\no1,Ellen Veale,19,1864\n');
    put('other.csv', 'id,name,age,year\nx1,Ellen Veale,36,1880\n');
    expect(compare('one.csv', 'other.csv').out).toMatch(/^The one pair was looked at\.$/m);
  });
  test('as JSON, one document and nothing else', () => {
    const { code, out, err } = compare('passengers.csv', 'census-1880.csv', '--format', 'json');
    expect(code).toBe(0);
    const pairs = JSON.parse(out) as {
      a: string;
      b: string;
      weight: number;
      probability: number;
      ledger: { field: string; a: string; b: string; agreement: string; weight: number }[];
    }[];
    expect(pairs.map(({ a, b }) => `${a} ${b}`).sort()).toEqual(['p1 c1', 'p2 c2', 'p3 c3']);
    const first = pairs.find(({ a }) => a === 'p1')!;
    expect(Object.keys(first)).toEqual(['a', 'b', 'weight', 'probability', 'ledger']);
    expect(first.ledger.find(({ field }) => field === 'given name')).toMatchObject({
      a: 'Thos',
      b: 'Thomas',
      agreement: 'same',
    });
    expect(err.replace(/\s+/g, ' ')).toMatch(/year of birth from “age”/);
    for (const { weight, ledger } of pairs)
      expect(ledger.reduce((sum, line) => sum + line.weight, 0)).toBeCloseTo(weight, 2);
  });
  test('two rows that differ in everything are nobody, however few rows there are', () => {
    put('one.csv', 'id,name\n1,John Smith\n');
    put('other.csv', 'id,name\n1,Peter Brown\n');
    put('both.csv', 'id,name\n1,John Smith\n2,Peter Brown\n');
    for (const files of [['one.csv', 'other.csv'], ['both.csv']]) {
      expect(JSON.parse(compare(...files, '--format', 'json').out)).toEqual([]);
      const [pair] = JSON.parse(compare(...files, '--format', 'json', '--threshold', '0').out) as {
        probability: number;
      }[];
      expect(pair!.probability).toBeLessThan(0.05);
    }
  });
  test('as CSV, formulas defused', () => {
    const { out } = compare('passengers.csv', 'census-1880.csv', '--format', 'csv');
    const { header, rows, problems } = readTable(out);
    expect(problems).toEqual([]);
    expect(header.slice(0, 4)).toEqual(['a', 'b', 'weight', 'probability']);
    expect(rows).toHaveLength(3);
    const veale = rows.find(({ cells }) => cells[0] === 'p3')!;
    expect(veale.cells[header.indexOf('residence a')]).toBe("'=1+1");
  });
  test('as a page of its own, without scripts or requests, and the same twice', () => {
    const make = (name: string) => {
      expect(compare('passengers.csv', 'census-1880.csv', '--out', name).code).toBe(0);
      return readFileSync(join(work, name), 'utf8');
    };
    const page = make('pairs.html');
    expect(page).toContain('<h3 id="p1">');
    expect(page).not.toMatch(/<script|https?:|src=|@import|url\(/);
    expect(make('again.html')).toBe(page);
    expect(existsSync(join(work, 'pairs.html.part'))).toBe(false);
  });
  test('one table is compared with itself', () => {
    put('list.csv', `${passengers}p4,Thomas Tuohill,24,1864,Kilgobnet,\n`);
    const { out } = compare('list.csv', '--format', 'json');
    expect((JSON.parse(out) as { a: string; b: string }[]).map(({ a, b }) => `${a} ${b}`)).toEqual(['p1 p4']);
  });
  test('columns can be told', () => {
    put('odd.csv', 'x1,x2,x3\nThomas,Tuohill,1840\nThos,Tuohil,1840\n');
    const { out, code } = compare(
      'odd.csv',
      '--map',
      'given=x1',
      '--map',
      'surname=x2',
      '--map',
      'birth-year=x3',
      '--format',
      'json',
    );
    expect(code).toBe(0);
    expect(JSON.parse(out)).toHaveLength(1);
  });
});

describe('what cannot be done is a sentence, and exit code 2', () => {
  test.each([
    ['no file', ['none.csv'], /There is no file .*none\.csv/],
    ['an empty file', ['empty.csv'], /empty\.csv is empty/],
    ['rows without headings', ['bare.csv'], /looks like a row, not like headings/],
    ['a threshold that is none', ['list.csv', '--threshold', '7'], /A probability is a number from 0 to 1/],
    ['a column that is not there', ['list.csv', '--id', 'rec'], /has no column “rec”/],
    ['a use that is none', ['list.csv', '--map', 'nose=x'], /Write what the column is/],
    ['over one of the tables', ['list.csv', '--out', 'list.csv'], /is one of the tables/],
    ['into a file as if it were a folder', ['list.csv', '--out', 'list.csv/x.csv'], /can’t be written/],
  ])('%s', (_, args, sentence) => {
    put('empty.csv', '');
    put('bare.csv', 'Thomas,Tuohill,1840\nEllen,Veale,1845\n');
    put('list.csv', passengers);
    const { code, out, err } = compare(...args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(sentence);
    expect(err).not.toMatch(/fault of Whence/);
  });
});

test('a table with everything wrong is read as far as it can be, and each line is named', () => {
  put(
    'bad.csv',
    [
      'id,given,surname,age,year',
      '1,Thomas,Tuohill,24,1864',
      '1,Thos,Tuohill,24,1864,extra',
      '2,"Ellen,Veale,19,1864',
      '3,Ned\0,Power,999,1864',
      `4,${'x'.repeat(10_000)},Power,,`,
      '5,Mary',
      '',
    ].join('\n'),
  );
  const { code, out, err } = compare('bad.csv');
  expect(code).toBe(0);
  expect(err).toBe('');
  for (const said of [
    /bad\.csv:3: This line has 6 cells/,
    /bad\.csv:4: A quotation mark/,
    /bad\.csv:5: This line holds characters/,
    /bad\.csv:7: This line has 2 of 5 cells/,
    /“age” could not be read/,
  ])
    expect(out.replace(/\s+/g, ' ')).toMatch(said);
});
