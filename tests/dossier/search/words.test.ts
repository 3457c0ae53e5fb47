import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textOfHtml } from '../../../src/dossier/search/plain.ts';
import { foldWord, wordsIn } from '../../../src/dossier/search/words.ts';

const words = (text: string, typed = false) => wordsIn(text, typed).map(({ word }) => word);

describe('words as they are looked up', () => {
  test.each([
    ['Bjørgum, Njøs', ['bjorgum', 'njos']],
    ['Patᵏ O’Brien’s farm', ['patk', 'obrien', 'farm']],
    ['Mc Carthy and M’Carthy and McCarthy', ['maccarthy', 'and', 'maccarthy', 'and', 'maccarthy']],
    ['Ó Faoláin', ['ofaolain']],
    ['no. 412, p. 18b, 1871–72', ['no', '412', 'p', '18b', '1871', '72']],
    ['Ph[ela]n, Rich:d', ['phelan', 'richd']],
    ['St. Mary’s', ['st', 'mary']],
    ['a o b', ['a', 'o', 'b']],
    ['', []],
    ['— …', []],
  ])('%s', (text, expected) => expect(words(text)).toEqual(expected));

  test('what is typed needs no capitals for a prefix', () => {
    expect(words('o brien', true)).toEqual(['obrien']);
    expect(words('mc carthy', true)).toEqual(['maccarthy']);
  });

  test('each word stands where it says, in order, and is found again from what stands there', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        let last = 0;
        for (const { word, start, end } of wordsIn(text)) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(end).toBeGreaterThan(start);
          expect(word).not.toBe('');
          last = end;
        }
        expect(last).toBeLessThanOrEqual(text.length);
      }),
    );
  });

  test('what has been folded stays as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        for (const { word } of wordsIn(text)) expect(foldWord(foldWord(word))).toBe(foldWord(word));
      }),
    );
  });
});

describe('HTML as running text', () => {
  test.each([
    ['<p>Ph<em>el</em>an</p><p>of Kill</p>', 'Phelan of Kill'],
    ['<table><tr><td>1</td><td>Mary</td></tr></table>', '1 Mary'],
    ['W<sup>m</sup> &amp; Mary &#233;', 'Wm & Mary é'],
    ['<a title="a > b" href="/x">one</a>', 'one'],
    ['here<sup class="note-mark"><a href="#note-1">1</a></sup> too', 'here too'],
    ['a<span class="sidenote" hidden><span>1</span> note</span> b', 'a b'],
    ['unclosed <b', 'unclosed'],
  ])('%s', (html, text) => expect(textOfHtml(html)).toBe(text));
});
