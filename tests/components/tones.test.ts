import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contrast, tonesIn } from '../../components/layout/tones.ts';

const tones = tonesIn(
  readFileSync(resolve(import.meta.dirname, '../../components/layout/tokens.css'), 'utf8'),
);

describe('contrast', () => {
  // Source: WCAG 2.2, definition of contrast ratio: black on white is 21, a tone on itself 1; #767676 is the lightest
  // grey that reaches 4.5 on white.
  test.each([
    ['#000', '#fff', 21],
    ['#767676', '#ffffff', 4.54],
    ['#777777', '#ffffff', 4.48],
    ['#a5301a', '#a5301a', 1],
  ])('of %s and %s is %d', (a, b, ratio) => {
    expect(contrast(a, b)).toBeCloseTo(ratio, 2);
    expect(contrast(b, a)).toBeCloseTo(ratio, 2);
  });
});

describe.each(['light', 'dark'] as const)('%s', (scheme) => {
  const on = (text: string, ground: string) => contrast(tones.get(text)![scheme], tones.get(ground)![scheme]);

  test.each(['ink', 'ink-2', 'accent'])('%s can be read on paper, wash and desk', (text) => {
    for (const ground of ['paper', 'wash', 'desk']) expect(on(text, ground)).toBeGreaterThanOrEqual(4.5);
  });
  test('rules that carry meaning, and marks, stand out from paper', () => {
    expect(on('line-strong', 'paper')).toBeGreaterThanOrEqual(3);
    expect(on('accent', 'accent-wash')).toBeGreaterThanOrEqual(3);
  });
});
