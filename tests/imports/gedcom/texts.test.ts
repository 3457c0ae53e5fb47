import fc from 'fast-check';
import { load } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { markdownOf } from '../../../src/imports/gedcom/markdown-text.ts';
import { yamlEntry, yamlMapping } from '../../../src/imports/gedcom/yaml-text.ts';
import { slug } from '../../../src/imports/gedcom/ids.ts';
import { idPattern } from '../../../src/model/common.ts';
import { renderBody } from '../../../src/markdown/render.ts';
import { bodyContext } from '../../../src/dossier/examine.ts';
import { loadCorpus } from '../../../src/corpus/load.ts';
import { join } from 'node:path';

const text = fc.oneof(
  fc.string({ unit: 'binary', minLength: 1, maxLength: 12 }).map((one) => one.toWellFormed()),
  fc.constantFrom(
    'yes',
    '~',
    '1840',
    '1e3',
    '- a',
    'a: b',
    'a #b',
    '# x',
    "it's",
    '"q"',
    '{',
    '[',
    '&a',
    '*a',
    '!x',
    '%x',
    '@x',
    '`',
    'x:',
    ' x ',
    '?',
    'a\nb',
    'null',
    'O’Fay',
    '2.10',
    '0x1F',
    'é',
    '|',
    '>',
  ),
);
const value = fc.oneof(text, fc.integer(), fc.boolean());
const mapping = fc.dictionary(
  fc.stringMatching(/^[a-z][a-zA-Z]{0,7}$/),
  fc.oneof(
    value,
    fc.array(value, { maxLength: 3 }),
    fc.dictionary(fc.stringMatching(/^[a-z]{1,5}$/), value, { minKeys: 1, maxKeys: 3 }),
    fc.array(fc.dictionary(fc.stringMatching(/^[a-z]{1,5}$/), value, { minKeys: 1, maxKeys: 3 }), {
      minLength: 1,
      maxLength: 2,
    }),
  ),
  { minKeys: 1, maxKeys: 4 },
);

/** A bare year under a key of a date may stand as a number. */
const years = (item: unknown): unknown =>
  JSON.parse(JSON.stringify(item, (_, one: unknown) => (typeof one === 'number' ? String(one) : one)));

describe('YAML as it is written', () => {
  test('is read as it was meant, by both libraries', () =>
    fc.assert(
      fc.property(mapping, (map) => {
        for (const read of [load, parse]) {
          expect(years(read(yamlMapping(map)))).toEqual(years(map));
          expect(years(read(yamlEntry(map)))).toEqual(years([map]));
        }
      }),
    ));
});

test('an id is an id whatever it is made of', () =>
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (name) => {
      expect(slug(name)).toMatch(new RegExp(`^$|${idPattern.source}`));
    }),
  ));

test('plain text as Markdown shows what it said, and refers to nothing', () => {
  const corpus = loadCorpus(join(import.meta.dirname, '../../../content'));
  const signs = fc.constantFrom(
    '*',
    '_',
    '[@x]',
    '[#e1]',
    '<b>',
    '# ',
    '- ',
    '1. ',
    '> ',
    '`',
    '{x}',
    '&amp;',
    '~~',
    '|',
    '\\',
    'word',
    ' ',
    '\n',
    '\n\n',
    'http://x.org',
    '![a](b)',
    '---',
    '===',
  );
  fc.assert(
    fc.property(fc.array(signs, { minLength: 1, maxLength: 12 }), (parts) => {
      const written = parts.join('');
      const { rendered, problems } = renderBody(markdownOf(written), bodyContext(corpus, 'record', 'x'));
      expect(problems).toEqual([]);
      const html = rendered.parts.map((part) => (part.kind === 'html' ? part.html : '')).join('');
      const shown = html
        .replace(/<[^>]*>/g, ' ')
        .replace(/&#x3C;|&lt;/g, '<')
        .replace(/&gt;/g, '>')
        .replace(/&quot;/g, '"')
        .replace(/&#x26;|&amp;/g, '&');
      expect(shown.replace(/\s+/g, '')).toBe(written.replace(/\s+/g, ''));
    }),
    { numRuns: 60 },
  );
});
