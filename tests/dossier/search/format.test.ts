import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cut } from '../../../src/dossier/search/cut.ts';
import {
  eachStep,
  partOf,
  partsAtPrefix,
  relationOf,
  relationText,
  stepsOf,
} from '../../../src/dossier/search/format.ts';

const ascending = fc
  .uniqueArray(fc.nat(100_000), { maxLength: 50 })
  .map((list) => list.sort((a, b) => a - b));
const wordsList = fc
  .uniqueArray(fc.stringMatching(/^[a-z]{1,6}$/), { minLength: 1, maxLength: 60 })
  .map((list) => list.sort());

describe('steps', () => {
  test('give back the documents, and how often up to nine', () => {
    fc.assert(
      fc.property(ascending, fc.array(fc.integer({ min: 1, max: 20 })), (documents, counts) => {
        const often = documents.map((_, i) => counts[i] ?? 1);
        const read: [number, number][] = [];
        eachStep(stepsOf(documents, often), (document, times) => read.push([document, times]));
        expect(read).toEqual(documents.map((document, i) => [document, Math.min(often[i]!, 9)]));
      }),
    );
  });
});

describe('parts', () => {
  const rowsOf = (words: readonly string[]) => words.map((word): [string, string] => [word, `"${word}"`]);

  test('hold every row once, in order, and none is larger than asked but for a single row', () => {
    fc.assert(
      fc.property(wordsList, fc.integer({ min: 1, max: 60 }), (words, size) => {
        const parts = cut(rowsOf(words), size);
        const held = parts.map(({ json }) => JSON.parse(json) as string[]);
        expect(held.flat()).toEqual(words);
        expect(parts.map(({ first }) => first)).toEqual(held.map(([first]) => first));
        for (const [i, one] of held.entries())
          if (one.length > 1) expect(parts[i]!.json.length).toBeLessThanOrEqual(size + one.length + 2);
      }),
    );
  });

  test('a word is looked for in the part that holds it, a beginning in all that may', () => {
    fc.assert(
      fc.property(wordsList, fc.integer({ min: 1, max: 30 }), (words, size) => {
        const parts = cut(rowsOf(words), size);
        const firsts = parts.map(({ first }) => first);
        const held = parts.map(({ json }) => JSON.parse(json) as string[]);
        for (const word of words) {
          expect(held[partOf(firsts, word)]).toContain(word);
          for (const length of [1, 2]) {
            const beginning = word.slice(0, length);
            const reached = partsAtPrefix(firsts, beginning).flatMap((part) => held[part]!);
            expect(reached).toEqual(expect.arrayContaining(words.filter((one) => one.startsWith(beginning))));
          }
        }
      }),
    );
  });
});

test.each([
  [{ target: 'phelan', how: 'used' }, 'phelan~'],
  [{ target: 'whalen', how: 'same' }, 'whalen='],
  [{ target: 'bridget', how: 'given', of: 'Bridget', forms: 'dn' }, 'bridget.dn'],
  [{ target: 'delia', how: 'given', of: 'Bridget', forms: 'di' }, 'delia.di Bridget'],
  [{ target: 'johannesen', how: 'father', of: 'John' }, 'johannesen+John'],
  [{ target: 'faolan', how: 'like', of: 'Faelan' }, 'faolan?Faelan'],
] as const)('a relation as text: %j', (relation, text) => {
  expect(relationText(relation)).toBe(text);
  expect(relationOf(text)).toEqual(relation);
});
