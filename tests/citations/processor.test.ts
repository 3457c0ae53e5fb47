import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format, type Formatted } from '../../src/citations/processor.ts';
import { cslDateVariables, cslNameVariables, cslTypes, type Citation } from '../../src/model/citation.ts';

const texts = [
  'Deed of "sale"',
  'O’Brien’s <i>book</i>',
  'x & y',
  '3-5',
  '12',
  '1st',
  "it's",
  '“Quoted”',
  'a: b',
];
const variables = [
  'title',
  'genre',
  'volume',
  'page',
  'archive',
  'note',
  'edition',
  'container-title',
  'authority',
];
const names = [
  [],
  [{ family: 'Power', given: 'John' }],
  [{ literal: 'Parish of Kill' }, { family: 'Hove', given: 'A.', 'dropping-particle': 'de' }],
];
const citations: fc.Arbitrary<Citation> = fc
  .tuple(
    fc.constantFrom(...cslTypes),
    fc.dictionary(fc.constantFrom(...variables), fc.constantFrom(...texts), { maxKeys: 6 }),
    fc.dictionary(fc.constantFrom(...cslNameVariables), fc.constantFrom(...names), { maxKeys: 2 }),
    fc.dictionary(fc.constantFrom(...cslDateVariables), fc.constantFrom('1850', '[1850,1852]'), {
      maxKeys: 1,
    }),
  )
  .map(([type, said, people, dates]) => ({ type, ...said, ...people, ...dates }) as Citation);

describe('a citation', () => {
  test('becomes the same alone, among others, and twice', () => {
    fc.assert(
      fc.property(fc.array(citations, { minLength: 2, maxLength: 8 }), (some) => {
        const together = format([...some, some[0]!]);
        expect(together.at(-1)).toEqual(together[0]);
        expect(together.slice(0, -1)).toEqual(some.map((one) => format([one])[0]));
      }),
      { numRuns: 40 },
    );
  });

  test('that has nothing to print leaves the entries of the others with their owners', () => {
    const [first, none, last] = format([
      { type: 'document', title: 'First' },
      { type: 'document', author: [] },
      { type: 'document', title: 'Last' },
    ]);
    expect([first?.entry, none?.entry, last?.entry]).toEqual(['First', '', 'Last']);
  });

  test('is looked up and remembered by its own text', () => {
    const before = new Map<string, Formatted>();
    const cite: Citation = { type: 'document', title: 'Deed' };
    const [made] = format([cite, cite], before);
    expect([...before.values()]).toEqual([made]);
    const other = { item: 'from before', held: '', short: '', entry: '' };
    before.set([...before.keys()][0]!, other);
    expect(format([cite], before)).toEqual([other]);
  });
});

/** The shortcut past the search for quotation marks must not miss one. */
describe('quotation marks and apostrophes are set', () => {
  test.each([
    ['a "word" b', 'a “word” b'],
    ["the clerk's book", 'the clerk’s book'],
    ['plain - text / of, letters; Ødegård', 'plain - text / of, letters; Ødegård'],
  ])('%s', (title, set) => expect(format([{ type: 'document', title }])[0]?.item).toBe(set));
});

describe('what is kept from an earlier build', () => {
  test('is not made again: a rebuild formats only what changed', () => {
    const cites = Array.from({ length: 50 }, (_, i): Citation => ({ type: 'document', title: `Deed ${i}` }));
    const kept = new Map<string, Formatted>();
    const first = format(cites, kept);
    const made: string[] = [];
    const watched = {
      get: (text: string) => kept.get(text),
      set: (text: string, value: Formatted) => made.push(text) && kept.set(text, value),
    };
    const changed = cites.with(7, { ...cites[7]!, note: 'mended' });
    const again = format(changed, watched);
    expect(made).toEqual([JSON.stringify(changed[7])]);
    expect(again).toEqual(format(changed));
    expect(again.toSpliced(7, 1)).toEqual(first.toSpliced(7, 1));
  });
});
