import { describe, expect, test } from 'vitest';
import { asWritten, excerpt, marked } from '../../../components/search/excerpt.ts';
import { target } from '../../../components/search/keys.ts';
import { partsBy } from '../../../components/search/load.ts';
import { newest } from '../../../components/search/newest.ts';
import { addressWith, questionIn } from '../../../components/search/question.ts';
import { reasonWords } from '../../../components/search/reason.ts';
import { english, wordingIn } from '../../../src/interface/index.ts';

describe('late answers', () => {
  test('never stand in place of newer ones, nor do late failures', async () => {
    const waiting = new Map<string, { resolve(given: string): void; reject(error: Error): void }>();
    const taken: string[] = [];
    const run = newest<string, string>(
      (question) => new Promise((resolve, reject) => waiting.set(question, { resolve, reject })),
      (given) => taken.push(given),
      () => taken.push('failed'),
    );
    const runs = ['w', 'wh', 'whe'].map(run);
    waiting.get('whe')!.resolve('to whe');
    waiting.get('w')!.resolve('to w');
    waiting.get('wh')!.reject(new Error('lost'));
    await Promise.all(runs);
    expect(taken).toEqual(['to whe']);
  });
});

test('a part is fetched once, and anew after it could not be got', async () => {
  let times = 0;
  const parts = partsBy(() => (++times === 1 ? Promise.reject(new Error('lost')) : Promise.resolve([])));
  await expect(parts.rows('names', 0)).rejects.toThrow('lost');
  await parts.rows('names', 0);
  await parts.rows('names', 0);
  expect(times).toBe(2);
});

describe('marks and excerpts', () => {
  const shown = (pieces: { text: string; marked: boolean }[]) =>
    pieces.map((piece) => (piece.marked ? `[${piece.text}]` : piece.text)).join('');

  test('words are marked as they are written, other spellings of their letters too', () => {
    expect(shown(marked('Seán Ó Faoláin & Mary <b>', new Set(['faolain', 'mary'])))).toBe(
      'Seán [Ó Faoláin] & [Mary] <b>',
    );
    expect(asWritten(['nobody', 'PHELAN (Whelan)'], 'phelan')).toBe('PHELAN');
    expect(asWritten([], 'phelan')).toBe('Phelan');
  });

  test('the piece with the most words is shown, cut between words', () => {
    const filler = 'lorem ipsum dolor sit amet '.repeat(20);
    const piece = shown(excerpt(`mary ${filler}then mary power came ${filler}`, new Set(['mary', 'power'])));
    expect(piece).toContain('then [mary] [power] came');
    expect(piece).toMatch(/^… \S+ .* …$/);
    expect(piece.length).toBeLessThan(220);
    expect(excerpt(filler, new Set(['mary']))).toEqual([]);
  });
});

test.each([
  ['https://example.org/a/search.html', { text: 'o’brien & co', kind: 'person' }],
  ['file:///home/a/search.html?q=old#q=older', { text: 'x#y?z', kind: undefined }],
  ['file:///home/a/search.html?q=old', { text: '', kind: undefined }],
] as const)('the question stands in the address: %s', (address, question) => {
  expect(questionIn(addressWith(address, question))).toEqual(question);
});

test('an address may ask behind its hash, and an unknown kind is none', () => {
  expect(questionIn('file:///search.html#q=whelan&kind=place')).toEqual({ text: 'whelan', kind: 'place' });
  expect(questionIn('file:///search.html?q=whelan&kind=__proto__').kind).toBeUndefined();
});

test.each([
  ['ArrowDown', -1, 3, 0],
  ['ArrowDown', 2, 3, 2],
  ['ArrowDown', -1, 0, -1],
  ['ArrowUp', 0, 3, -1],
  ['ArrowUp', -1, 3, undefined],
  ['End', 0, 3, 2],
  ['End', -1, 3, undefined],
  ['a', 1, 3, undefined],
])('%s from %i of %i leads to %s', (key, here, count, to) => expect(target(key, here, count)).toBe(to));

test('reasons are said in both languages', () => {
  const say = (reason: Parameters<typeof reasonWords>[3], tag: 'en' | 'nb' = 'en') =>
    reasonWords(tag === 'en' ? english.search : wordingIn('nb').search, 'Bridget', 'Biddy', reason);
  expect([
    say({ how: 'given', of: 'Bridget', forms: 'dn' }),
    say({ how: 'given', of: 'Brigid', forms: 'nd' }),
    say({ how: 'given', of: 'Brigid', forms: 'di' }),
    say({ how: 'used' }),
    say({ how: 'father', of: 'John' }),
    say({ how: 'given', of: 'Bridget', forms: 'dn' }, 'nb'),
    say({ how: 'sound' }, 'nb'),
  ]).toMatchInlineSnapshot(`
    [
      "Bridget, found for Biddy: Biddy is a pet form of Bridget",
      "Bridget, found for Biddy: Bridget is a pet form of Biddy",
      "Bridget, found for Biddy: both stand for Brigid",
      "Bridget, found for Biddy: the two surnames were used for one another",
      "Bridget, found for Biddy: both say that the father was called John",
      "Bridget, funnet for Biddy: Biddy er en kjæleform av Bridget",
      "Bridget, funnet for Biddy: de lyder likt",
    ]
  `);
});
