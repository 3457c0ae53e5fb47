import fc from 'fast-check';
import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { plainObject } from '../../../components/search/word-index.ts';
import {
  agreeGiven,
  agreeSurname,
  prepareGiven,
  prepareSurname,
} from '../../../src/reasoning/names/agree.ts';
import type { WordRow } from '../../../src/dossier/search/format.ts';
import { indexOf } from '../../../src/dossier/search/index.ts';
import { wordsIn } from '../../../src/dossier/search/words.ts';
import { ofDocuments } from './index.ts';

const people = await ofDocuments(
  [
    'Maurice Phelan',
    'Johanna Kirwan',
    'Bridget Crotty',
    'Seán Ó Faoláin',
    'Mary Faolan',
    'Johannes Johannesen Hove',
    'Ole Rinde',
    'Thomas Brien',
    'William Nobody',
    'Sjur Bjørgum',
  ].map((title) => ({ title })),
);

describe('one spelling finds the others', () => {
  test.each([
    ['Whelan', 'Maurice Phelan'],
    ['whel', 'Maurice Phelan'],
    ['Faolan', 'Seán Ó Faoláin'],
    ['Whelan', 'Mary Faolan'],
    ['Faolain', 'Seán Ó Faoláin'],
    ['Kirwin', 'Johanna Kirwan'],
    ['Curwin', 'Johanna Kirwan'],
    ['Biddy', 'Bridget Crotty'],
    ['Delia', 'Bridget Crotty'],
    ['Johnson', 'Johannes Johannesen Hove'],
    ['John', 'Johannes Johannesen Hove'],
    ['Rindy', 'Ole Rinde'],
    ['O’Brien', 'Thomas Brien'],
    ['o brien', 'Thomas Brien'],
    ['Wm', 'William Nobody'],
    ['bjorgum', 'Sjur Bjørgum'],
    ['BJØRGUM', 'Sjur Bjørgum'],
    ['morris whelan', 'Maurice Phelan'],
  ])('%s finds %s', async (question, title) => expect(await people.titles(question)).toContain(title));

  test('it says why', async () => {
    const reason = async (question: string) => (await people.ask(question)).best(1)[0]?.hits[0]?.reason;
    expect(await reason('Whelan')).toEqual({ how: 'used' });
    expect(await reason('Kirwin')).toEqual({ how: 'same' });
    expect(await reason('Delia')).toEqual({ how: 'given', of: 'Bridget', forms: 'in' });
    expect(await reason('Johnson')).toEqual({ how: 'father', of: 'John' });
    const like = await people.ask('Whelan');
    expect(like.best(9).map(({ hits }) => hits[0]?.reason)).toContainEqual({ how: 'like', of: 'Faelan' });
    expect(await reason('O’Brien')).toEqual({ how: 'prefix' });
    expect(await reason('Phelan')).toBeUndefined();
  });

  test('names that only begin alike are not taken for one another', async () => {
    const places = await ofDocuments(
      ['Kilmacow', 'Kilmacthomas', 'Kilmallock'].map((title) => ({ title, kind: 'place' as const })),
    );
    expect(await places.titles('Kilmacthomes ')).toEqual(['Kilmacthomas']);
  });

  test('whatever the comparison of names takes for one name is found', async () => {
    const surnames =
      'Whelan Phelan Kirwan Power Walsh Reilly Keogh Hayes McGrath O’Shea Rinde Lie Haugen'.split(' ');
    const given = 'Bridget Maurice Johannes Ole Synneva Patrick Margaret Catherine'.split(' ');
    const index = await ofDocuments([...surnames, ...given].map((title) => ({ title })));
    const typed = [
      ...surnames,
      ...given,
      'Felan',
      'Poor',
      'Brannagh',
      'Riley',
      'Kehoe',
      'Hays',
      'Rindy',
      'Shee',
      'Lee',
      'Biddy',
      'Morris',
      'Paddy',
      'Maggie',
      'Kitty',
      'Mauritius',
    ];
    for (const question of typed) {
      const found = await index.titles(`${question} `, 99);
      const levels = (name: string) => [
        agreeSurname(prepareSurname(question), prepareSurname(name)).level,
        agreeGiven(prepareGiven(question), prepareGiven(name)).level,
      ];
      const ofOneKind = (name: string) =>
        levels(name).some((level) => ['exact', 'same', 'variant', 'close'].includes(level));
      expect({ question, found }).toEqual({
        question,
        found: expect.arrayContaining([...surnames, ...given].filter(ofOneKind)),
      });
    }
  });
});

describe('the order', () => {
  test('names as typed, then their other spellings, then running text, then what is only alike', async () => {
    const index = await ofDocuments([
      { title: 'a', kind: 'record', text: 'declared before Whelan' },
      { title: 'Thomas Phelan', kind: 'record' },
      { title: 'Wheelen', kind: 'record' },
      { title: 'John Whelan', kind: 'record' },
      { title: 'b', kind: 'record', text: 'nothing of the kind' },
    ]);
    expect(await index.titles('Whelan')).toEqual(['John Whelan', 'Thomas Phelan', 'a', 'Wheelen']);
  });

  test('all words, or else the most', async () => {
    const index = await ofDocuments([
      { title: 'Mary Power', text: 'of Kill' },
      { title: 'Mary Drohan' },
      { title: 'Patrick Power' },
    ]);
    const both = await index.ask('mary power');
    expect([both.whole, both.total]).toEqual([true, 1]);
    const some = await index.ask('mary power zzyzx');
    expect(some.whole).toBe(false);
    expect(await index.titles('mary power zzyzx')).toEqual(['Mary Power', 'Mary Drohan', 'Patrick Power']);
  });

  test('kinds are counted, and narrow the list', async () => {
    const index = await ofDocuments([
      { title: 'Kill', kind: 'place' },
      { title: 'Kill register', kind: 'record' },
      { title: 'Kill index', kind: 'record' },
    ]);
    const found = await index.ask('kill');
    expect(found.counts).toEqual({ case: 0, person: 0, place: 1, record: 2, search: 0 });
    expect(found.best(9, 'record').map(({ kind }) => kind)).toEqual(['record', 'record']);
    expect(found.best(1)).toEqual(found.best(9).slice(0, 1));
  });
});

const word = fc.stringMatching(/^[a-zæøå]{1,8}$/);
const text = fc.array(word, { minLength: 1, maxLength: 6 }).map((list) => list.join(' '));

test('every document is found by each word of its title, its names and its text', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.record({ title: text, names: fc.array(text, { maxLength: 2 }), text }), {
        minLength: 1,
        maxLength: 12,
      }),
      async (list) => {
        const index = await ofDocuments(list);
        for (const [number, document] of list.entries()) {
          for (const part of [document.title, ...document.names])
            for (const { word: one } of wordsIn(part))
              expect((await index.ask(`${one} `)).best(99).map((found) => found.document)).toContain(number);
          const [first] = wordsIn(document.text).filter((one) => one.word.length > 1);
          if (first)
            expect((await index.ask(first.word)).best(99).map((found) => found.document)).toContain(number);
        }
      },
    ),
    { numRuns: 30 },
  );
});

test('whatever is asked, an answer comes', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 30 }), async (question) => {
      const found = await people.ask(question);
      expect(found.best(5).length).toBeLessThanOrEqual(5);
    }),
  );
});

test('the same documents make the same files, and other ones another edition', () => {
  const document = { kind: 'person' as const, id: 'a', facts: '', names: [], text: '' };
  const one = indexOf([{ ...document, title: 'Mary Power' }]);
  expect([...indexOf([{ ...document, title: 'Mary Power' }]).files]).toEqual([...one.files]);
  expect(indexOf([{ ...document, title: 'Mary Drohan' }]).edition).not.toBe(one.edition);
});

test('a part is the index the library makes itself of the same documents', () => {
  const documents = ['mary power power', 'power', 'mary kill'];
  const library = new MiniSearch({ fields: ['text'], tokenize: (one) => one.split(' ') });
  library.addAll(documents.map((one, id) => ({ id, text: one })));
  const rows: WordRow[] = [
    ['kill', [4]],
    ['mary', [0, 4]],
    ['power', [1, 2, 2]],
  ];
  const own = plainObject('text', rows, documents.length);
  const theirs = library.toJSON();
  const sorted = (index: typeof theirs.index) => [...index].sort(([a], [b]) => (a < b ? -1 : 1));
  expect(sorted(own.index)).toEqual(
    sorted(theirs.index).map(([term, entry]) => [term, JSON.parse(JSON.stringify(entry)) as object]),
  );
  expect({ ...own, index: [], fieldLength: {}, averageFieldLength: [] }).toMatchObject({
    documentCount: theirs.documentCount,
    documentIds: theirs.documentIds,
    fieldIds: theirs.fieldIds,
    serializationVersion: theirs.serializationVersion,
  });
});
