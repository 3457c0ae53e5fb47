/** The short way beside the parser, an independent CommonMark and GFM implementation (micromark). */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainBody } from '../../src/markdown/plain.ts';
import { parsedBody } from '../../src/markdown/render.ts';
import { inEnglish } from '../../src/markdown/notes.ts';
import { context } from './context.ts';

const parsed = (body: string) => parsedBody(body, context());

test('a transcription without marks is rendered as the parser renders it', () => {
  const body =
    '\n“Received of Mr. Phelan £2-10,\nthe rent.” (Signed)\n\n| line | name, in full | age |\n| --- | - | --- |\n| 1 | Maurice “Moss” Phelan |  |\n| – | Anne | 31 1/2 |\n\nÆgir Ødegård, 1871 = so.\n';
  expect(plainBody(body, inEnglish)).toEqual(parsed(body).rendered);
  expect(plainBody(body, inEnglish)!.words).toBeGreaterThan(10);
});

test('whatever has a meaning in Markdown is left to the parser', () => {
  for (const body of [
    '',
    '# a',
    '- a',
    '1. a',
    'a\n---',
    'a\n===',
    'a *b*',
    'a_b_',
    '`a`',
    'a  \nb',
    ' a',
    'a\\',
    '[a]',
    '![a](b)',
    'a & b',
    'a ~b~',
    '| a |\n| - |',
    '| a |\n| :-: |\n| b |',
    'a\n| b |\n| - |',
    '| a |\n| - |\n| b |\nc',
    '<b>',
    'a\tb',
    'a\rb',
    '2 a',
    '=a',
    '+ a',
    '> a',
  ])
    expect(plainBody(body, inEnglish), JSON.stringify(body)).toBeUndefined();
});

test('the short way never renders otherwise than the parser', () => {
  const text = fc.oneof(
    fc.constantFrom(
      'a',
      'Maurice Phelan',
      'é',
      '“',
      '(',
      '1',
      '1.',
      '-',
      '=',
      '+',
      ' ',
      '  ',
      '.',
      ':',
      "'",
      '"',
      '|',
      '| a | b |',
      '| - | - |',
      '| - |',
      '| a |',
      '| – | 1 |',
      '|  |',
      '\n',
      '\n\n',
      '\n\n\n',
      '/',
      '!',
      '𝔸',
      'http://a',
      'www.a.b',
      '½',
      '#',
      '*',
      '\u00a0',
    ),
    fc.string({ maxLength: 3, unit: 'grapheme' }),
  );
  fc.assert(
    fc.property(fc.array(text, { maxLength: 12 }), (pieces) => {
      const body = pieces.join('');
      const plain = plainBody(body, inEnglish);
      if (plain) expect({ rendered: plain, problems: [] }).toEqual(parsed(body));
    }),
    { numRuns: 3000 },
  );
});
