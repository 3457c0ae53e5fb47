import { describe, expect, test } from 'vitest';
import { excerpt } from '../../src/corpus/excerpt.ts';

const text = ['---', 'title: Deed', 'form: copy', '---', ''].join('\n');

describe('an excerpt', () => {
  test('shows the line between its neighbours, with a caret under the place', () => {
    expect(excerpt(text, { line: 3, column: 7 })).toBe(
      ['2 | title: Deed', '3 | form: copy', '  |       ^', '4 | ---'].join('\n'),
    );
  });

  test('begins and ends with the file', () => {
    expect(excerpt(text, { line: 1, column: 1 })).toBe(['1 | ---', '  | ^', '2 | title: Deed'].join('\n'));
    expect(excerpt(text, { line: 4, column: 4 })).toBe(['3 | form: copy', '4 | ---', '  |    ^'].join('\n'));
  });

  test('keeps the numbers in one column', () => {
    const lines = Array.from({ length: 12 }, (_, index) => `k${index + 1}: v`).join('\n');
    expect(excerpt(lines, { line: 9, column: 1 })).toBe(
      [' 8 | k8: v', ' 9 | k9: v', '   | ^', '10 | k10: v'].join('\n'),
    );
  });

  test('cuts a long line to what surrounds the column', () => {
    const line = `${'a'.repeat(150)}X${'b'.repeat(150)}`;
    const [shown, caret] = excerpt(line, { line: 1, column: 151 }, 0).split('\n') as [string, string];
    expect(shown.length).toBeLessThanOrEqual(4 + 96);
    expect(shown).toMatch(/^1 \| …a+Xb+…$/);
    expect(caret.indexOf('^')).toBe(shown.indexOf('X'));
  });

  test('puts the caret right behind letters that take two units, and behind tabs', () => {
    expect(excerpt('\t😀😀x', { line: 1, column: 4 }, 0)).toBe('1 |  😀😀x\n  |    ^');
  });

  test('is empty where there is nothing to show', () => {
    expect(excerpt('', { line: 1, column: 1 })).toBe('');
    expect(excerpt(text, { line: 99, column: 1 })).toBe('');
  });
});
