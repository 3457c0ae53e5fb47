import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPeople, type PeopleFile } from '../../src/imports/people-file.ts';
import { preparePeople } from '../../src/imports/people-table.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-people-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

const usual = { map: [], withoutHeadings: false };
function read(
  content: string | Buffer,
  options: Parameters<typeof readPeople>[2] = usual,
  name = 'a.csv',
): PeopleFile {
  const path = join(work, name);
  writeFileSync(path, content);
  return readPeople(path, name, options);
}
/** What each column of the comparison is made from, and what its rows say. */
function taken(a: PeopleFile, b?: PeopleFile, years = {}) {
  const { taken, shown } = preparePeople(a, b, years);
  return Object.fromEntries(
    taken.map(({ column }) => [
      column.name,
      Array.from({ length: a.rows }, (_, row) => shown(column, 'a', row)),
    ]),
  );
}

describe('what the columns are taken for', () => {
  test('whole names are taken apart; a year of birth is reckoned from age and year', () => {
    const file = read('Name,Age,Year,Birthplace\n"Whelan, Patk",31,1871,Kill\nJohn O’Brien,7m,1871,-\n');
    expect(taken(file)).toEqual({
      'given name': ['Patk', 'John'],
      surname: ['Whelan', 'O’Brien'],
      'year of birth': ['1840', '1871'],
      birthplace: ['Kill', ''],
    });
  });
  test('kin go by their given name, however the list has their names', () => {
    const file = read(
      'Surname,Spouse,Father\nWhelan,Mary,"Whelan, Patk"\nPower,Mary Hayes,Mr John Power\nRoche,"HAYES, Mary",Murphy\n',
    );
    expect(taken(file)).toMatchObject({
      spouse: ['Mary', 'Mary', 'Mary'],
      father: ['Patk', 'John', 'Murphy'],
    });
  });
  test('parts of names are joined, and NA is nothing', () => {
    const file = read(
      'fname_c1,fname_c2,lname_c1,lname_c2,by,bm,bd\nHANS,UWE,MEYER,NA,1940,2,30\nILSE,NA,KOCH,NA,1950,13,1\n',
    );
    expect(taken(file)).toEqual({
      'given name': ['HANS UWE', 'ILSE'],
      surname: ['MEYER', 'KOCH'],
      'year of birth': ['1940', '1950'],
      'month of birth': ['2', ''],
      'day of birth': ['30', '1'],
    });
  });
  test('the command line goes before the guess', () => {
    const file = read('who,first name\nMurphy,Kelly\n', {
      map: [
        { use: 'given', heading: 'WHO' },
        { use: 'surname', heading: 'first name' },
      ],
      withoutHeadings: false,
    });
    expect(taken(file)).toEqual({ 'given name': ['Murphy'], surname: ['Kelly'] });
  });
  test('without headings, columns go by their numbers', () => {
    const file = read('Patrick,Murphy\nJohn,Kelly\n', {
      map: [
        { use: 'given', heading: '1' },
        { use: 'surname', heading: '2' },
      ],
      withoutHeadings: true,
    });
    expect(taken(file)).toEqual({ 'given name': ['Patrick', 'John'], surname: ['Murphy', 'Kelly'] });
    expect([...file.lines]).toEqual([1, 2]);
  });
  test('ages of two lists need their years', () => {
    const [a, b] = [read('name,age\nJohn Daly,30\n'), read('name,age\nJohn Daly,40\n', usual, 'b.csv')];
    expect(preparePeople(a, b, {}).notes.join(' ')).toMatch(/not known in which years/);
    expect(taken(a, b, { a: 1870, b: 1880 })['year of birth']).toEqual(['1840']);
  });
  test('of unknown columns those are compared that both have', () => {
    const a = read('id,name,ship,seen\n1,John Daly,Harvest Home,x\n2,Ann Daly,Swift,x\n');
    const b = read('ref,name,Ship,page\n7,John Daly,Harvest Home,3\n', usual, 'b.csv');
    expect(Object.keys(taken(a, b))).toEqual(['given name', 'surname', 'ship']);
    expect(preparePeople(a, b, {}).notes.join(' ')).toMatch(/only one of the files has it: seen, page/);
  });
});

describe('ids', () => {
  test('rows go by their id, else by their number', () => {
    expect(read('rec_id,name\nr7,John Daly\n').ids).toEqual(['r7']);
    expect(read('name\nJohn Daly\nAnn Daly\n').ids).toEqual(['1', '2']);
  });
  test('ids that stand twice carry their line, and it is said', () => {
    const rows = Array.from({ length: 60 }, (_, at) => `r${at},John Daly`);
    const file = read(`id,name\n${rows.join('\n')}\nr5,Ann Daly\n`);
    expect(file.ids.at(-1)).toBe('r5 (line 62)');
    expect(file.notes.join(' ')).toMatch(/r5 on lines 7 and 62/);
  });
  test('what does not tell the rows apart is no id', () => {
    const file = read('id,name\n1,John Daly\n1,Ann Daly\n2,Tim Daly\n');
    expect(file.ids).toEqual(['1', '2', '3']);
    expect(file.notes.join(' ')).toMatch(/only 2 different values/);
  });
});

describe('encodings', () => {
  const text = 'name;Alter\nSéamus Ó Faoláin;31\n';
  const latin = Buffer.from(text.replaceAll('á', '\u00e1'), 'latin1');
  test.each([
    ['UTF-8', Buffer.from(text)],
    ['UTF-8', Buffer.from(`\ufeff${text}`)],
    ['UTF-16LE', Buffer.from(`\ufeff${text}`, 'utf16le')],
    ['UTF-16LE', Buffer.from(text, 'utf16le')],
    ['UTF-16BE', Buffer.from(`\ufeff${text}`, 'utf16le').swap16()],
    ['Windows-1252', latin],
  ] as const)('%s', (encoding, bytes) => {
    const file = read(bytes);
    expect(file.encoding).toBe(encoding);
    expect(taken(file)['surname']).toEqual(['Ó Faoláin']);
    expect(taken(file)['age']).toEqual(['31']);
  });
});

describe('bad input is a sentence', () => {
  const refused = (content: string | Buffer, options?: Parameters<typeof readPeople>[2]) => {
    try {
      read(content, options);
    } catch (error) {
      return `${(error as Error).name}: ${(error as Error).message}`;
    }
    return 'read';
  };
  test.each([
    ['an empty file', '', /^CannotRun: a\.csv is empty/],
    ['headings only', 'name,age\n', /^CannotRun: a\.csv has a line of headings but no people/],
    [
      'no headings',
      'Patrick,Murphy,1840\nJohn,Kelly,1841\n',
      /looks like a row, not like headings.*--no-headings/,
    ],
    ['no names', 'ship,page\nHarvest Home,3\n', /None of the columns of a\.csv could be told for a name/],
  ])('%s', (_, content, sentence) => expect(refused(content)).toMatch(sentence));
  test('a column that is not there', () =>
    expect(
      refused('fname,lname\nJohn,Daly\n', {
        map: [{ use: 'given', heading: 'fnam' }],
        withoutHeadings: false,
      }),
    ).toMatch(/no column “fnam”. Did you mean “fname”/));
  test('no file', () =>
    expect(() => readPeople(join(work, 'none.csv'), 'none.csv', usual)).toThrow(/There is no file/));
  test('a folder', () => expect(() => readPeople(work, 'x', usual)).toThrow(/is a folder/));
  test('ages that are none are counted, with the first', () => {
    const file = read(
      'name,age,year\nJohn Daly,300,1871\nAnn Daly,,1871\nTim Daly,soon,1871\nEd Daly,4,1871\n',
    );
    expect(preparePeople(file, undefined, {}).notes.join(' ')).toMatch(
      /in 2 rows “age” could not be read and was left out, such as “300” on line 2/,
    );
  });
});
