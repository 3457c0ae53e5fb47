import { describe, expect, test } from 'vitest';
import { bibtexOf } from '../../src/citations/bibtex.ts';
import { cslItemOf } from '../../src/citations/csl-json.ts';
import { formatCitations } from '../../src/citations/format.ts';
import { libraryView } from '../../src/dossier/library.ts';
import { cslDateVariables, cslNameVariables, cslTypes, citation } from '../../src/model/citation.ts';
import { recordFile, type SourceRecord } from '../../src/model/record.ts';
import { readExamples } from './examples.ts';

const record = (id: string, fields: object): SourceRecord => ({
  ...recordFile.parse({ title: 'A paper', form: 'original', ...fields }),
  id,
  body: '',
});
const libraryOf = (...records: SourceRecord[]) =>
  libraryView(
    { records: new Map(records.map((one) => [one.id, one])) },
    formatCitations(records, { language: 'en' }).notes,
  );

describe('the library as CSL-JSON', () => {
  const library = libraryOf(...readExamples().map((example) => example.record));
  const items = JSON.parse(library.cslJson()) as Record<string, unknown>[];

  /*
   * Source: CSL 1.0.2, schema csl-data.json: an array of objects with id and type; other keys are variables; names are
   * lists of objects of strings; dates have date-parts (one or two lists of one to three numbers), season, circa and
   * literal, and nothing else.
   */
  test('has the shape of the schema', () => {
    const dates: readonly string[] = cslDateVariables;
    const names: readonly string[] = cslNameVariables;
    for (const item of items) {
      expect(item['id']).toMatch(/^record-\d+$/);
      expect(cslTypes).toContain(item['type']);
      for (const [key, value] of Object.entries(item)) {
        if (key === 'id' || key === 'type') continue;
        expect(Object.keys(citation.shape)).toContain(key);
        if (names.includes(key)) {
          for (const name of value as Record<string, unknown>[]) {
            expect(Object.keys(name).length).toBeGreaterThan(0);
            for (const part of Object.values(name)) expect(typeof part).toBe('string');
          }
        } else if (dates.includes(key)) {
          const date = value as Record<string, unknown>;
          expect(
            Object.keys(date).every((part) => ['date-parts', 'season', 'circa', 'literal'].includes(part)),
          ).toBe(true);
          const parts = (date['date-parts'] ?? []) as number[][];
          expect(parts.length > 0 || typeof date['literal'] === 'string').toBe(true);
          expect(parts.length).toBeLessThan(3);
          for (const point of parts) {
            expect(point.length).toBeGreaterThan(0);
            expect(point.length).toBeLessThan(4);
            expect(point.every(Number.isInteger)).toBe(true);
          }
        } else expect(typeof value).toBe('string');
      }
    }
  });

  test('holds every record once, by id, and says how it was seen and what it copies', () => {
    expect(items.map(({ id }) => id)).toEqual(
      readExamples()
        .map(({ record: { id } }) => id)
        .sort(),
    );
    expect(items.find(({ id }) => id === 'record-1')).toEqual({
      id: 'record-1',
      type: 'document',
      title: 'Declaration of intention no. 412, Morris Whelan',
      archive: "County Clerk's Office",
      'archive-place': 'Houghton, Michigan',
      issued: { 'date-parts': [[1871, 4, 11]] },
      note: 'seen as an image',
    });
    expect(items.find(({ id }) => id === 'record-13')?.['note']).toBe(
      'seen only in transcript; copying baptismal register of Kill (not seen)',
    );
  });

  test('keeps approximate and uncertain apart, and every member of a set', () => {
    const issued = (date: string) =>
      cslItemOf(record('x', { cite: { type: 'book', issued: date } }), [])['issued'];
    expect([issued('1840~'), issued('1840?'), issued('[1850,1852]')]).toEqual([
      { 'date-parts': [[1840]], circa: true },
      { literal: 'probably 1840' },
      { literal: '1850 or 1852' },
    ]);
  });
});

describe('a citation as BibTeX', () => {
  const bib = (cite: object, seen: string[] = []) => bibtexOf(record('a-deed', { cite }), seen);

  test('has the id of the record for its key, and the office in its note', () => {
    expect(
      bib(
        {
          type: 'manuscript',
          title: 'Deed, Aho to Power',
          genre: 'deed',
          authority: 'Register of Deeds',
          issued: '1871-04-11',
          page: '17-18',
          archive: 'County Clerk',
          'archive-place': 'Houghton',
        },
        ['seen on film'],
      ),
    ).toBe(
      `@unpublished{a-deed,
  note = {Register of Deeds; County Clerk, Houghton; seen on film},
  pages = {17--18},
  title = {Deed, {Aho} to {Power}},
  type = {deed},
  year = {1871},
  month = apr,
  day = {11}
}
`,
    );
  });

  test('says a date with a doubt, a range or a choice in words', () => {
    const year = (issued: string) =>
      /year = \{([^}]*)\}/.exec(bib({ type: 'book', title: 'T', issued }))?.[1];
    expect(['1840~', '1840?', '[1850,1852]', '1838/1842', '1846-21', '0000', '1871'].map(year)).toEqual([
      'about 1840',
      'probably 1840',
      '1850 or 1852',
      '1838 to 1842',
      'spring 1846',
      '1 BC',
      '1871',
    ]);
  });

  test('takes the day of the event where the document has none of its own', () => {
    expect(bib({ type: 'manuscript', title: 'T', 'event-date': '1840-03' })).toContain('month = mar');
  });

  /* The signs that TeX takes for commands: The TeXbook, chapter 7 (from memory). */
  test('lets no sign of a value act as a command', () => {
    const made = bib({
      type: 'book',
      title: '50% of $x_1$ & {a} \\input ~ ^ #1',
      author: [{ family: 'Smith, and Sons', given: 'A & B' }, { literal: 'Parish of Kill and Newtown' }],
    });
    const title = /title = \{(.*)\}\n/.exec(made)![1]!;
    expect(title).not.toMatch(/(?<!\\)[%$&#_^~]/);
    expect(title).not.toContain('\\input');
    expect(title.match(/\{/g)?.length).toBe(title.match(/\}/g)?.length);
    expect(made).toContain('{Parish of Kill and Newtown}');
    expect(made).not.toMatch(/author = \{[^\n]*Sons[^}\n]* and Sons\}/);
  });

  test('loses nobody and no element that an author gives', () => {
    const variables =
      `archive archive-place archive_collection archive_location call-number authority jurisdiction division genre medium
      container-title event-place event-title number page section source URL references status title publisher
      publisher-place volume note`.split(/\s+/);
    const lost = ['document', 'manuscript', 'book', 'article-newspaper', 'legal_case', 'dataset'].flatMap(
      (type) =>
        variables
          .filter((variable) => !bib({ type, title: 'Deed', [variable]: 'zebulon' }).includes('ebulon'))
          .map((variable) => `${type} ${variable}`),
    );
    expect(lost).toEqual([]);
    const people = ['author', 'editor', 'compiler', 'recipient', 'interviewer', 'contributor', 'translator'];
    expect(
      people.filter(
        (role) =>
          !bib({ type: 'document', title: 'T', [role]: [{ literal: 'Zebulon' }] }).includes('Zebulon'),
      ),
    ).toEqual([]);
  });

  test('of every example is balanced, and the library holds each once', () => {
    const library = libraryOf(...readExamples().map((example) => example.record));
    const text = library.bibtex();
    expect(text.match(/^@\w+\{record-\d+,$/gm)).toHaveLength(readExamples().length);
    expect(text.match(/\{/g)?.length).toBe(text.match(/\}/g)?.length);
  });
});

describe('a citation to copy', () => {
  test('is the note in plain words, ending in one full stop', () => {
    const { text, cslJson, bibtex } = libraryOf(
      record('x', {
        seen: 'image',
        cite: { type: 'book', title: 'The <i>Harvest</i> & co.', archive: 'A <b' },
      }),
    ).of('x');
    expect(text).toBe('The Harvest & co.; A <b; seen as an image.');
    expect(JSON.parse(cslJson)).toMatchObject({ id: 'x', note: 'seen as an image' });
    expect(bibtex).toMatch(/^@book\{x,/);
  });
});
