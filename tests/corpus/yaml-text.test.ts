import fc from 'fast-check';
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { SourceText } from '../../src/corpus/source-text.ts';
import { readYaml } from '../../src/corpus/yaml.ts';
import { block, inline, list } from '../../src/corpus/yaml-text.ts';

/** Text as it comes out of cells and files: any signs, but those no text file holds. */
const text = fc
  .oneof(
    fc.string({ unit: 'grapheme', maxLength: 40 }),
    fc.string({
      unit: fc.constantFrom(...'abÅø 0123456789-:#,[]{}&*!|>\'"%@`.~?/\\=\t\n<_+()'),
      maxLength: 30,
    }),
    fc.constantFrom(
      'true',
      'null',
      '~',
      'yes',
      'No',
      '1e3',
      '0x1F',
      '007',
      '2.10',
      '1864-05-02',
      '5/12',
      '1y 6m',
      'a: b',
      'a #b',
      '- a',
      '---',
      '...',
      'a, b',
      "Patk.'s",
      'x '.repeat(80).trim(),
      '=1+1',
      '<<',
      '.inf',
      '12:30',
      'é\u2028e',
    ),
  )
  .filter((one) => !/[\uFFFE\uFFFF]|[\0-\x08\x0b\x0c\x0e-\x1f]/.test(one));
const scalar = fc.oneof(text, fc.integer({ min: 0, max: 1e9 }), fc.boolean());
const key = fc.constantFrom('name', 'title', 'cite', 'on', 'y', 'archive-place', 'Last name', '1', 'a: b');
const { map } = fc.letrec<{ value: unknown; map: Record<string, unknown> }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small', maxDepth: 3 },
    scalar,
    fc.array(tie('value'), { maxLength: 4 }),
    tie('map'),
  ),
  map: fc.dictionary(key, tie('value'), { maxKeys: 5, noNullPrototype: true }),
}));

describe('what is written is read as the same', () => {
  test('a map, by our own reader and by an independent one', () => {
    fc.assert(
      fc.property(map, (value) => {
        fc.pre(Object.keys(value).length > 0);
        const written = `${block(value).join('\n')}\n`;
        const read = readYaml(new SourceText('x.yaml', written));
        expect(read.findings).toEqual([]);
        expect(read.value).toEqual(value);
        // The reference for YAML 1.2: the library yaml.
        expect(parse(written)).toEqual(value);
      }),
      { numRuns: 150 },
    );
  });

  test('a list, and a value in one line', () => {
    fc.assert(
      fc.property(
        fc.array(
          map.filter((one) => Object.keys(one).length > 0),
          { minLength: 1, maxLength: 4 },
        ),
        (value) => {
          expect(parse(list(value).join('\n'))).toEqual(value);
          expect(parse(inline(value))).toEqual(value);
        },
      ),
      { numRuns: 80 },
    );
  });
});

test('it reads as the content contract is written', () => {
  expect(
    block({
      title: 'Deed, Houghton County',
      made: '1874-05',
      mentions: [{ id: 'm1', name: 'Maurice Phelan', age: '7m', relations: [{ as: 'spouse', of: 'm2' }] }],
      derivedFrom: [],
      because:
        'Ellen and her elder brother named the same parish, forty years apart, each from their own knowledge of it.',
    }).join('\n'),
  ).toMatchInlineSnapshot(`
    "title: Deed, Houghton County
    made: 1874-05
    mentions:
      - id: m1
        name: Maurice Phelan
        age: 7m
        relations: [{ as: spouse, of: m2 }]
    derivedFrom: []
    because: >-
      Ellen and her elder brother named the same parish, forty years apart, each from their own knowledge of it."
  `);
});
