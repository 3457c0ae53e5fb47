import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { parse } from 'yaml';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CannotRun } from '../../src/corpus/types.ts';
import { recordFile, type RecordFile } from '../../src/model/record.ts';
import { mapColumns, mappingFile } from '../../src/imports/tables/mapping.ts';
import { mappingText, readMapping } from '../../src/imports/tables/mapping-file.ts';
import { mappingToSave } from '../../src/imports/tables/mapping.ts';
import { readMentionTable } from '../../src/imports/tables/read.ts';
import { recordsOf } from '../../src/imports/tables/records.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-table-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** The records of a table, as they would be read again. */
function recordsFrom(content: string | Buffer, said: object = {}, name = 'list.csv') {
  const path = join(work, name);
  writeFileSync(path, content);
  const table = readMentionTable(path, name);
  const mapping = mapColumns(table.headings, mappingFile.parse(said), name);
  const made = recordsOf(table, mapping, { placeOf: (text) => (text === 'Hancock' ? 'hancock' : undefined) });
  const files = made.records.map(({ id, text }) => {
    const front = /^---\n([^]*?)\n---\n/.exec(text)![1]!;
    return { id, record: recordFile.parse(parse(front)) as RecordFile };
  });
  const problems = made.problems.map(({ row, index, value, message }) => ({
    ...table.locate(row, index),
    value,
    message,
  }));
  return { table, mapping, made, files, problems };
}

describe('a passenger list', () => {
  const list = [
    'Ship;Arrived;Line;Last name;First name;Age;Sex;Occupation;Native country;Bound for;Ticket;Remarks',
    'Harvest Home;2 May 1864;211;Power;Patk;29;M;miner;Ireland;Hancock;412;',
    ';;212;Phelan;Maurice;24;M;"miner; tin";;;;',
    ';;213;do;John;18;M;do;;;;"sick',
    'at sea"',
    'Sea Gull;1866-06-05;1;Kirwan;Mary;abt 30;F;;;;;',
  ].join('\n');

  test('becomes one record for each ship and day, its words as they are written', () => {
    const { files, problems } = recordsFrom(list);
    expect(files.map(({ id }) => id)).toEqual(['harvest-home-1864-05-02', 'sea-gull-1866-06-05']);
    expect(files[0]!.record.mentions).toMatchObject([
      {
        id: 'm1',
        name: 'Patk Power',
        role: 'passenger',
        sex: 'M',
        age: 29,
        birthplace: 'Ireland',
        line: '211',
        voyage: { ship: 'Harvest Home', arrived: '1864-05-02', bound: 'Hancock', ticket: '412' },
      },
      { name: 'Maurice Phelan', occupation: 'miner; tin' },
      { name: 'John do', alsoRead: ['John Phelan'], occupation: 'miner; tin', says: { note: 'sick at sea' } },
    ]);
    expect(files[1]!.record.mentions).toMatchObject([{ says: { age: 'abt 30' } }]);
    expect(problems).toEqual([
      {
        line: 6,
        column: 35,
        value: 'abt 30',
        message: 'This could not be read as an age, and was kept as says.age.',
      },
    ]);
  });

  test('claims no more than is known: a copy of a list nobody has seen, of one volume, made nobody knows when', () => {
    const { record } = recordsFrom(list).files[0]!;
    expect(record).toMatchObject({ form: 'derivative', seen: 'transcript', volume: 'list' });
    expect(record.derivedFrom).toEqual([
      { unseen: 'what list.csv was made from: Passenger list of the Harvest Home, 1864-05-02' },
    ]);
    expect([record.made, record.place, record.series, record.informant]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('typed from a film it is an original, and what is said of it goes into each record', () => {
    const { record } = recordsFrom(list, {
      title: 'Manifest of the {Ship}',
      record: {
        form: 'original',
        seen: 'film',
        made: '{Arrived}',
        cite: { archive: 'National Archives' },
        informants: { purser: { described: 'the purser of the {Ship}', knowledge: 'undetermined' } },
      },
      mention: { role: 'traveller' },
    }).files[0]!;
    expect(record).toMatchObject({
      title: 'Manifest of the Harvest Home',
      form: 'original',
      seen: 'film',
      made: '1864-05-02',
      cite: { type: 'document', title: 'Manifest of the Harvest Home', archive: 'National Archives' },
      informants: { purser: { described: 'the purser of the Harvest Home' } },
      derivedFrom: [],
    });
    expect(record.volume).toBeUndefined();
  });

  test('is one record where that is asked for', () => {
    const { files } = recordsFrom(list, { group: [] });
    expect(files.map(({ id, record }) => [id, record.mentions.length])).toEqual([['list', 4]]);
  });
});

describe('a census page', () => {
  const page = [
    'Side,Familie,Navn,Familiestilling,Alder,Kjønn,Fødested,Yrke,Far',
    '4,1,Ole Larsen,Husfader,41,M,Vik,Gaardbruger,',
    '4,,Brita,Hans Kone,38,K,Leikanger,,Nils Hove',
    '4,,Lars,Søn,7 mdr,M,Vik,,',
    '4,2,Kari Nilsdatter,Inderst,60,K,Vik,,',
    '4,3,Anna,Datter,4,K,Vik,,',
  ].join('\n');

  test('joins households by their heads, in the words of the page', () => {
    const { files, problems } = recordsFrom(page, {}, 'folketelling.csv');
    expect(files.map(({ id }) => id)).toEqual(['folketelling-4']);
    const { mentions, cite } = files[0]!.record;
    expect(cite).toMatchObject({ page: '4' });
    expect(
      mentions.map(({ id, name, role, household, relations }) => ({ id, name, role, household, relations })),
    ).toEqual([
      { id: 'm1', name: 'Ole Larsen', role: 'husfader', household: '1', relations: [] },
      { id: 'm2', name: 'Brita', role: 'hans kone', household: '1', relations: [{ as: 'spouse', of: 'm1' }] },
      {
        id: 'm2-father',
        name: 'Nils Hove',
        role: 'father',
        household: undefined,
        relations: [{ as: 'parent', of: 'm2' }],
      },
      { id: 'm3', name: 'Lars', role: 'søn', household: '1', relations: [{ as: 'child', of: 'm1' }] },
      { id: 'm4', name: 'Kari Nilsdatter', role: 'inderst', household: '2', relations: [] },
      { id: 'm5', name: 'Anna', role: 'datter', household: '3', relations: [] },
    ]);
    expect(mentions[2]).toMatchObject({ present: false });
    expect(mentions[3]).toMatchObject({ age: '7m', sex: 'M', birthplace: 'Vik' });
    expect(problems.map(({ line, column, value }) => ({ line, column, value }))).toEqual([
      { line: 5, column: 21, value: 'Inderst' },
      { line: 6, column: 10, value: 'Datter' },
    ]);
  });
});

test('a list of witnesses: one record for each document, the witnesses beside whom it is about', () => {
  const { files } = recordsFrom(
    'Document,Document date,Name,Event,Event date,Witness 1,Witness 2\nDeed 12,1874-05-01,Maurice Phelan,deed,1874-05-01,L. Casey,"O\'Neill, J."\nDeed 13,1875,John Power,,1875-01-01,,\n',
    { record: { form: 'original', seen: 'image' } },
  );
  expect(files.map(({ id, record }) => [id, record.title, record.made])).toEqual([
    ['deed-12-1874-05-01', 'Deed 12, document date 1874-05-01', '1874-05-01'],
    ['deed-13-1875', 'Deed 13, document date 1875', '1875'],
  ]);
  expect(files[0]!.record.mentions).toMatchObject([
    { name: 'Maurice Phelan', event: { kind: 'deed', date: '1874-05-01' } },
    {
      id: 'm1-witness',
      name: 'L. Casey',
      role: 'witness',
      relations: [{ as: 'witness', of: 'm1' }],
      present: true,
    },
    { id: 'm1-witness-2', name: "O'Neill, J." },
  ]);
  // A date of an event without its kind is kept in words.
  expect(files[1]!.record.mentions).toMatchObject([{ says: { eventDate: '1875-01-01' } }]);
});

test('a city directory, each column kept, none of them lost', () => {
  const { files } = recordsFrom(
    'Name\tOccupation\tStreet\tNo of horses\nPhelan Maurice\tminer\tRavine\t2\n',
    {},
    'directory-1895.tsv',
  );
  expect(files[0]).toMatchObject({
    id: 'directory-1895',
    record: {
      title: 'Directory 1895',
      mentions: [
        { name: 'Phelan Maurice', occupation: 'miner', residence: 'Ravine', says: { noOfHorses: '2' } },
      ],
    },
  });
});

describe('files as programs leave them', () => {
  const text = 'Name,Birthplace,Age\nBrita Sjåstad,Sogndalsfjøra,31\n';
  test.each([
    ['UTF-8 with a byte order mark', Buffer.from(`\uFEFF${text}`)],
    [
      'UTF-16 with a byte order mark',
      Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, 'utf16le')]),
    ],
    ['Windows-1252', Buffer.from(text, 'latin1')],
    ['a first line that names the separator', Buffer.from(`sep=;\r\n${text.replaceAll(',', ';')}`)],
    ['semicolons and CRLF', Buffer.from(text.replaceAll(',', ';').replaceAll('\n', '\r\n'))],
  ])('%s', (_what, bytes) => {
    expect(recordsFrom(bytes).files[0]!.record.mentions).toMatchObject([
      { name: 'Brita Sjåstad', birthplace: 'Sogndalsfjøra', age: 31 },
    ]);
  });

  test('an apostrophe that keeps a cell from being a formula is taken off again', () => {
    const { files } = recordsFrom("Name,Remark\nMary,'=HYPERLINK(1)\n");
    expect(files[0]!.record.mentions).toMatchObject([{ says: { note: '=HYPERLINK(1)' } }]);
  });

  test.each([
    [
      'book.xlsx',
      Buffer.from('PK\x03\x04rest'),
      'book.xlsx is a workbook of a spreadsheet program, not a table of text. Open it in the program it was made with, choose “Save as”, and save each sheet as CSV (UTF-8); then bring in that file.',
    ],
    ['book.xls', Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1]), 'book.xls is a workbook'],
    ['page.pdf', Buffer.from('%PDF-1.7'), 'page.pdf is a document for reading'],
    ['empty.csv', Buffer.from(''), 'empty.csv is empty.'],
    ['heads.csv', Buffer.from('Name,Age\n'), 'heads.csv has a line of headings but no rows below it.'],
    [
      'nobody.csv',
      Buffer.from('Horse,Cow\n1,2\n'),
      'None of the columns of nobody.csv is a name; its headings are Horse, Cow. Say which one is, such as --map "Horse=name".',
    ],
  ])('%s is refused in a sentence', (name, bytes, said) => {
    expect(() => recordsFrom(bytes, {}, name)).toThrow(said);
  });
});

describe('what the author says of columns', () => {
  test('goes over what the headings say, and a column may be named by its number', () => {
    const { files, mapping } = recordsFrom('Who,Age,Age\nAnn,31,32\n', {
      columns: { Who: 'name', 3: 'age', 2: 'ignore' },
    });
    expect(mapping.columns.map(({ field }) => field)).toEqual(['name', 'ignore', 'age']);
    expect(files[0]!.record.mentions).toMatchObject([{ name: 'Ann', age: 32 }]);
  });

  test.each([
    [{ columns: { Shipp: 'name' } }, 'list.csv has no column “Shipp”. Did you mean “Ship”?'],
    [
      { columns: { Name: 'voyage.shp' } },
      '“voyage.shp” is nothing a column can be. Did you mean voyage.ship?',
    ],
    [{ group: ['Shp'] }, 'list.csv has no column “Shp”.'],
    [{ title: 'The {Shp}' }, '{Shp} stands in “The {Shp}”, and list.csv has no such column.'],
    [
      { record: { form: 'orignal' } },
      'The record list (line 2 of list.csv) can’t be written: form is not as a record has it.',
    ],
    [{ record: { made: 'long ago' } }, 'can’t be written: made is not as a record has it.'],
    [{ mention: { age: 'old' } }, 'can’t be written: mentions.0.age'],
  ])('%j', (said, message) => {
    expect(() => recordsFrom('Name,Ship\nAnn,\n', said)).toThrow(message);
  });

  test('a mapping that is saved takes the next table in the same way', () => {
    const first = recordsFrom('Who,When,When\nAnn,1864-05-02,x\n', {
      columns: { Who: 'name', 2: 'voyage.arrived' },
      record: { form: 'original', cite: { type: 'document', archive: 'County: Clerk' } },
    });
    const path = join(work, 'mapping.yaml');
    writeFileSync(path, mappingText(mappingToSave(first.mapping)));
    const again = recordsFrom('Who,When,When\nAnn,1864-05-02,x\n', readMapping(path));
    expect(again.made.records).toEqual(first.made.records);
    writeFileSync(path, 'columns: { Who: name }\ncolum: 1\n');
    expect(() => readMapping(path)).toThrow('mapping.yaml has keys that no mapping has: colum.');
    writeFileSync(path, 'columns: [\n');
    expect(() => readMapping(path)).toThrow(/^mapping\.yaml:\d+:\d+: /);
  });

  test('a place that is plain becomes the record’s place; another is told', () => {
    const rows = 'Name,Record place,Document\nAnn,Hancock,a\nBen,Nowhere,b\n';
    const { files, problems } = recordsFrom(rows);
    expect(files.map(({ record }) => record.place)).toEqual(['hancock', undefined]);
    expect(problems).toMatchObject([{ line: 3, column: 5, value: 'Nowhere' }]);
  });
});

test('whatever bytes a file holds, it becomes records of good form or is refused in a sentence', () => {
  const bytes = fc.oneof(
    fc.uint8Array({ maxLength: 300 }).map((one) => Buffer.from(one)),
    fc
      .string({ unit: fc.constantFrom(...'Name,Age;"\n\r\t 1x/-é\0\u2028=:#[]{}|>&*!%@`do'), maxLength: 300 })
      .map((one) => Buffer.from(`Name,Age,Ship,Relation,Household,Born,Remark\n${one}`)),
  );
  fc.assert(
    fc.property(bytes, (content) => {
      try {
        const { files, problems } = recordsFrom(content, {}, 'any.csv');
        expect(files.length).toBeGreaterThan(0);
        for (const { line, column } of problems) expect(line * column).toBeGreaterThan(0);
      } catch (error) {
        expect(error).toBeInstanceOf(CannotRun);
      }
    }),
    { numRuns: 200 },
  );
});
