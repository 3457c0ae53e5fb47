import fc from 'fast-check';
import { Parser } from 'htmlparser2';
import { describe, expect, test } from 'vitest';
import { formatCitations } from '../../src/citations/format.ts';
import { cslDateVariables, cslNameVariables, cslTypes, type Citation } from '../../src/model/citation.ts';
import { recordFile, type SourceRecord } from '../../src/model/record.ts';
import { readExamples } from './examples.ts';

const record = (id: string, fields: object): SourceRecord => ({
  ...recordFile.parse({ title: 'A paper', form: 'original', ...fields }),
  id,
  body: '',
});
const notesOf = (...records: SourceRecord[]) => formatCitations(records, { language: 'en' });
const noteOf = (cite: object, fields: object = {}) =>
  notesOf(record('x', { cite, ...fields })).notes.get('x')!;

describe('worked examples', () => {
  const examples = readExamples();
  const { notes, sources } = notesOf(...examples.map((example) => example.record));

  test.each(examples)('$case', ({ record: { id }, full, short, entry }) => {
    expect(notes.get(id)).toMatchObject({ full, short });
    expect(sources.find((source) => source.record === id)?.html).toBe(entry);
  });

  test('the source list is in the order of its words, accents and case aside', () => {
    const list = notesOf(
      record('a', { cite: { type: 'book', title: 'Ødegård' } }),
      record('b', { cite: { type: 'book', title: 'zinc' } }),
      record('c', { cite: { type: 'book', title: 'Ábrahám' } }),
      record('d', { cite: { type: 'book', title: '“Actions”' } }),
    ).sources;
    expect(list.map((source) => source.record)).toEqual(['c', 'd', 'b', 'a']);
  });
});

describe('a note', () => {
  test('falls back to the title of a record without a citation', () => {
    expect(notesOf(record('x', { title: 'Pocket book' })).notes.get('x')?.full).toBe('Pocket book');
  });

  test('is its item and its holding, so that a locator can stand between', () => {
    const { full, item, held } = noteOf(
      { type: 'document', title: 'Deed', archive: 'Registry' },
      { seen: 'film' },
    );
    expect(item).toBe('Deed');
    expect(held).toBe('; Registry; seen on film');
    expect(full).toBe(item + held);
  });

  test('says how the record was seen in different words for each way', () => {
    const ways = ['original', 'image', 'film', 'transcript', 'report'].map(
      (seen) => noteOf({ type: 'document', title: 'Deed' }, { seen }).held,
    );
    expect(new Set(ways).size).toBe(5);
    expect(noteOf({ type: 'document', title: 'Deed' }).held).toBe('');
  });

  test('tells likely copying from certain copying, and an exemplar not seen from a record', () => {
    const { notes } = notesOf(
      record('register', { title: 'Register of Kill' }),
      record('x', {
        form: 'derivative',
        derivedFrom: ['register', { unseen: 'the bishop’s copy' }, { perhaps: 'register' }],
      }),
    );
    expect(notes.get('x')?.held).toBe(
      '; copying Register of Kill and the bishop’s copy (not seen); perhaps copying Register of Kill',
    );
  });

  test('in short form is told apart from another that would read the same', () => {
    const cite = { type: 'document', title: 'Census return' };
    const { notes } = notesOf(
      record('x', { title: 'Hove', cite }),
      record('y', { title: 'Vik', cite }),
      record('z', { cite: { ...cite, number: 3 } }),
    );
    expect(notes.get('x')?.short).toBe('Census return (Hove)');
    expect(notes.get('y')?.short).toBe('Census return (Vik)');
    expect(notes.get('z')?.short).toBe('Census return, no. 3');
  });

  test('prints every member of a set of dates', () => {
    expect(noteOf({ type: 'document', title: 'Deed', issued: '[1850,1852]' }).full).toBe(
      'Deed, 1850 or 1852',
    );
  });

  test('tells a sheet of a census from a range of pages', () => {
    const pages = (page: string | number) => noteOf({ type: 'document', title: 'Schedule', page }).full;
    expect([pages(4), pages('3-5'), pages('11-C'), pages('12v'), pages('recto')]).toEqual([
      'Schedule, p. 4',
      'Schedule, pp. 3–5',
      'Schedule, p. 11-C',
      'Schedule, p. 12v',
      'Schedule, recto',
    ]);
  });

  test('shows an author’s note as a note, whatever it looks like', () => {
    expect(noteOf({ type: 'document', title: 'Deed', note: 'archive: none known' }).full).toBe(
      'Deed; archive: none known',
    );
  });

  test('follows a web address and nothing else', () => {
    expect(noteOf({ type: 'webpage', title: 'A', URL: 'https://a.example/?x=1&y=2' }).full).toContain(
      '<a href="https://a.example/?x=1&amp;y=2"',
    );
    expect(noteOf({ type: 'webpage', title: 'A', URL: 'javascript:alert(1)' }).full).not.toContain('<a');
  });

  test('keeps italics of a ship’s name and no other markup', () => {
    const { full } = noteOf({
      type: 'document',
      title: 'The <i>Harvest Home</i> & <b>co</b> <span style="font-variant:small-caps">x</span>',
    });
    expect(full).toContain('<i>Harvest Home</i> &amp; &lt;b&gt;co&lt;/b&gt; &lt;span');
    expect(full).not.toMatch(/<[^>]*style=/);
    expect(noteOf({ type: 'book', title: 'On the <i>Harvest Home</i>' }).full).toBe(
      '<i>On the <span class="upright">Harvest Home</span></i>',
    );
  });
});

/*
 * Source of the names: CSL 1.0.2 specification, appendices III and IV, and csl-variables.rnc: the variables that a
 * record of a family can need. An author who gives one of them must find it in the note.
 */
test('no element that an author gives is lost from a full note', () => {
  const variables = [
    'archive',
    'archive-place',
    'archive_collection',
    'archive_location',
    'call-number',
    'authority',
    'jurisdiction',
    'division',
    'genre',
    'medium',
    'collection-title',
    'container-title',
    'part-title',
    'volume-title',
    'event-date',
    'event-place',
    'issued',
    'original-date',
    'number',
    'page',
    'section',
    'version',
    'source',
    'URL',
    'accessed',
    'note',
    'references',
    'status',
    'title',
    'publisher',
    'publisher-place',
    'volume',
    'issue',
    'edition',
    'author',
    'recipient',
    'interviewer',
    'contributor',
    'compiler',
    'editor',
    'translator',
  ] as const;
  const types = [
    'document',
    'manuscript',
    'dataset',
    'article-newspaper',
    'book',
    'chapter',
    'personal_communication',
    'interview',
    'legal_case',
  ];
  const records = types.flatMap((type) =>
    variables.map((variable) => {
      const isName = (cslNameVariables as readonly string[]).includes(variable);
      const isDate = (cslDateVariables as readonly string[]).includes(variable);
      const value = isName ? [{ literal: 'Zebulon' }] : isDate ? '1871-04-11' : 'Zebulon';
      return record(`${type} ${variable}`, {
        cite: { type, title: 'A title', author: [{ literal: 'Somebody' }], [variable]: value },
      });
    }),
  );
  const { notes } = notesOf(...records);
  expect([...notes].filter(([, { full }]) => !/Zebulon|11 April 1871/.test(full)).map(([id]) => id)).toEqual(
    [],
  );
  expect(notes.size).toBe(types.length * variables.length);
});

describe('a batch', () => {
  test('gives a record the same note whatever else is in it, before and after', () => {
    const one = record('x', {
      cite: { type: 'book', author: [{ family: 'Aho', given: 'Henrik' }], title: 'Mines', issued: '1894' },
    });
    const other = record('y', {
      cite: { type: 'book', author: [{ family: 'Aho', given: 'Hilda' }], title: 'Mills', issued: '1894' },
    });
    const alone = notesOf(one).notes.get('x');
    expect(notesOf(other, one).notes.get('x')).toEqual(alone);
    expect(notesOf(one).notes.get('x')).toEqual(alone);
  });

  test('is not upset by words that mean something in a program', () => {
    const words = ['constructor', '__proto__', 'toString', 'hasOwnProperty'];
    const { notes } = notesOf(
      ...words.map((word, i) => record(`x${i}`, { cite: { type: 'document', title: word, archive: word } })),
      ...words.map((word, i) =>
        record(`y${i}`, { cite: { type: 'book', author: [{ family: word, given: word }], title: word } }),
      ),
    );
    words.forEach((word, i) => {
      expect(notes.get(`x${i}`)?.full).toBe(`${word}; ${word}`);
      expect(notes.get(`y${i}`)?.full).toBe(`${word} ${word}, <i>${word}</i>`);
    });
  });

  test('may be empty', () => {
    expect(notesOf()).toEqual({ notes: new Map(), sources: [] });
  });

  test('takes ids of any form, since they never reach the processor', () => {
    const ids = ['__proto__', 'constructor', '1', 'a"><script>', 'toString', '</div>'];
    const { notes, sources } = notesOf(
      ...ids.map((id) => record(id, { cite: { type: 'book', title: `Title of ${ids.indexOf(id)}` } })),
    );
    ids.forEach((id, i) => expect(notes.get(id)?.full).toBe(`<i>Title of ${i}</i>`));
    expect(sources.map((source) => source.record).toSorted()).toEqual(ids.toSorted());
    expect(sources.map((source) => source.html).join('')).not.toContain('script');
  });
});

test('whatever the values are, notes are well-formed HTML of a few harmless elements', () => {
  const text = fc.oneof(
    fc.string({ minLength: 1, unit: 'binary' }),
    fc
      .array(
        fc.constantFrom(
          '<i>',
          '</i>',
          '<script>',
          '&',
          '"',
          "'",
          '<b',
          '>',
          '<sup>2</sup>',
          ' ',
          'a',
          '\n',
          '[',
          ':',
          '. ',
          '\uE003',
          '\uE011',
        ),
        { minLength: 1 },
      )
      .map((parts) => parts.join('')),
  );
  const cite: fc.Arbitrary<Citation> = fc.record({
    type: fc.constantFrom(...cslTypes),
    title: fc.option(text, { nil: undefined }),
    archive: fc.option(text, { nil: undefined }),
    page: fc.option(text, { nil: undefined }),
    URL: fc.option(text, { nil: undefined }),
    note: fc.option(text, { nil: undefined }),
    issued: fc.constantFrom(undefined, '1871', '[1850,1852]', '..'),
    author: fc.option(
      fc.array(fc.record({ family: text, given: text }, { requiredKeys: [] }), { maxLength: 2 }),
      { nil: undefined },
    ),
  });
  fc.assert(
    fc.property(fc.array(fc.tuple(cite, text), { minLength: 1, maxLength: 30 }), (cited) => {
      const { notes, sources } = notesOf(
        ...cited.flatMap(([one, title], i) => [
          { ...record(`x${i}`, {}), title, cite: one },
          { ...record(`y${i}`, { form: 'derivative' }), derivedFrom: [`x${i}`, { unseen: title }] },
        ]),
      );
      expect(notes.size).toBe(cited.length * 2);
      for (const html of [...notes.values()]
        .flatMap(({ full, short }) => [full, short])
        .concat(sources.map((s) => s.html))) {
        const open: string[] = [];
        new Parser({
          onopentag(name, attributes) {
            expect(['i', 'sup', 'sub', 'a', 'span', 'b']).toContain(name);
            expect(Object.keys(attributes).filter((key) => !['class', 'href', 'rel'].includes(key))).toEqual(
              [],
            );
            open.push(name);
          },
          onclosetag(name, implied) {
            expect(implied).toBe(false);
            expect(open.pop()).toBe(name);
          },
        }).end(html);
        expect(open).toEqual([]);
        expect(html).not.toMatch(/[\uE000-\uE0FF]|undefined|CSL STYLE ERROR/);
      }
    }),
    { numRuns: 30, seed: 1871 },
  );
}, 60_000);
