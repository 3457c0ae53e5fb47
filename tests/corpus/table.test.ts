import { describe, expect, test } from 'vitest';
import { readTable, TableReader } from '../../src/corpus/table.ts';

const cells = (text: string) => readTable(text).rows.map((row) => row.cells.join(' · '));
const said = (text: string) => readTable(text).problems.map(({ line, message }) => `${line}: ${message}`);

describe('what is read', () => {
  test('the header, and rows with the line they begin on', () => {
    expect(readTable('name,count\n\nMurphy,62600\n"Whelan\nor Phelan",2\n\nKelly,55900')).toEqual({
      header: ['name', 'count'],
      rows: [
        { line: 3, cells: ['Murphy', '62600'] },
        { line: 4, cells: ['Whelan\nor Phelan', '2'] },
        { line: 7, cells: ['Kelly', '55900'] },
      ],
      problems: [],
    });
  });
  test.each([
    ['comma', 'a,b\n1,"2,3"\n'],
    ['semicolon, with commas in the cells', 'a;b\n1;2,3\n'],
    ['tab', 'a\tb\n1\t2,3\n'],
    ['bar', 'a|b\n1|2,3\n'],
    ['CRLF', 'a;b\r\n1;2,3\r\n'],
    ['CR alone', 'a;b\r1;2,3\r'],
    ['a byte order mark', '\ufeffa;b\n1;2,3'],
  ])('%s', (_, text) => {
    expect(readTable(text)).toEqual({
      header: ['a', 'b'],
      rows: [{ line: 2, cells: ['1', '2,3'] }],
      problems: [],
    });
  });
  test('one column needs no delimiter', () =>
    expect(cells('name\nMurphy\nKelly')).toEqual(['Murphy', 'Kelly']));
  test('pieces that cut lines and characters apart give the same rows', () => {
    const text = `name;"note"\n${'Ó Faoláin;"two\nlines, é"\n'.repeat(50)}`;
    const rows: unknown[] = [];
    const reader = new TableReader((row) => rows.push(row));
    for (const byte of Buffer.from(text)) reader.push(Buffer.from([byte]));
    expect(reader.end().problems).toEqual([]);
    expect(rows).toEqual(readTable(text).rows);
    expect(rows).toHaveLength(50);
  });
});

describe('what is wrong is said, and the rest is read', () => {
  test('nothing at all', () => expect(said('')).toEqual(['1: There is nothing in this file.']));
  test('nothing but blank lines', () => expect(said('\n \n')).toEqual(['1: There is nothing in this file.']));
  test('ragged rows', () => {
    const text = 'a,b,c\n1,2\n1,2,3,4\n1,2,3,,\n';
    expect(said(text)).toEqual([
      '2: This line has 2 of 3 cells.',
      '3: This line has 4 cells where the headings are 3.',
    ]);
    expect(cells(text)).toEqual(['1 · 2 · ', '1 · 2 · 3', '1 · 2 · 3']);
  });
  test('a quotation mark that is never closed', () => {
    const text = 'a,b\n1,"2\n3,4\n5,6\n';
    expect(said(text)).toEqual(['2: A quotation mark in this line is opened and not closed.']);
    expect(cells(text)).toEqual(['1 · "2', '3 · 4', '5 · 6']);
  });
  test('a quotation mark that a later one seems to close', () => {
    const text = 'a,b\n1,"2\n3,"4"\n5,6\n';
    expect(said(text)).toEqual(['2: A quotation mark in this line is opened and not closed.']);
    expect(cells(text)).toEqual(['1 · "2', '3 · 4', '5 · 6']);
  });
  test('quotation marks inside cells are text', () =>
    expect(cells('a,b\n1,the "old" man\n')).toEqual(['1 · the "old" man']));
  test('quotation marks broken on every line cost no more than a few rereadings', () => {
    const text = `a,b\n${'x,"1\n'.repeat(50_000)}`;
    const table = readTable(text);
    expect(table.rows).toHaveLength(50_000);
    expect(table.problems.length).toBeLessThan(25);
  });
  test('characters of no text', () => {
    expect(said('a,b\n1\0,2\n')).toEqual(['2: This line holds characters of no text (NUL).']);
    expect(cells('a,b\n1\0,2\n')).toEqual(['1 · 2']);
  });
  test('the same problem on very many lines is told twenty times and then counted', () => {
    const problems = said(`a,b,c\n${'1,2\n'.repeat(1000)}`);
    expect(problems).toHaveLength(21);
    expect(problems.at(-1)).toBe('21: The same is so of 980 more.');
  });
  test('cells of ten thousand characters', () => {
    const long = 'x'.repeat(10_000);
    expect(cells(`a,b\n${long},"${long}"\n`)).toEqual([`${long} · ${long}`]);
  });
});

test('a hundred thousand rows come through in pieces', () => {
  let count = 0;
  const reader = new TableReader(() => count++);
  const piece = Buffer.from('Patrick,Murphy,1840,"Kill, Co. Waterford"\n'.repeat(1000));
  reader.push(Buffer.from('given,surname,born,place\n'));
  for (let i = 0; i < 100; i++) reader.push(piece);
  expect(reader.end()).toEqual({ header: ['given', 'surname', 'born', 'place'], problems: [] });
  expect(count).toBe(100_000);
});
