import { describe, expect, test } from 'vitest';
import { daySpan } from '../../src/model/edtf.ts';
import { ageGap, gapShare, gapWords } from '../../src/reasoning/age-agreement.ts';

const days = (date: string) => {
  const { first, last } = daySpan(date);
  return { first: first!, last: last! };
};

describe('how far two birth intervals lie apart', () => {
  test.each([
    ['1840', '1840-06', 0],
    ['1840', '1841', 0],
    ['1840-05-01', '1840-05-02', 0],
    ['1840', '1842', 1],
    ['1844', '1840', 3],
    ['1850', '1839', 10],
  ])('%s and %s: %d years', (a, b, gap) => {
    expect(ageGap(days(a), days(b))).toBeCloseTo(gap, 1);
    expect(ageGap(days(b), days(a))).toBe(ageGap(days(a), days(b)));
  });
});

describe('a gap beside what linked records show', () => {
  /* Source: one large hand-linked set of Irish-born men; between its figures the share runs straight. */
  test.each([
    [0, 0],
    [2, 0.53],
    [3, 0.67],
    [4, 0.74],
    [5, 0.81],
    [7.5, 0.88],
    [10, 0.95],
    [30, 0.95],
  ])('within %f years: %f', (gap, share) => expect(gapShare(gap)).toBeCloseTo(share, 10));

  test('the share never falls as the gap grows', () => {
    for (let gap = 0; gap < 12; gap += 0.01)
      expect(gapShare(gap + 0.01)).toBeGreaterThanOrEqual(gapShare(gap));
  });

  test('under six years a gap is never called a contradiction', () => {
    for (let gap = 0.01; gap < 6; gap += 0.01)
      expect(gapWords(gap).replace('no contradiction', '')).not.toMatch(/contradict|conflict|far|wrong/);
    expect(gapWords(4)).toContain('weaker agreement');
    expect(gapWords(0)).toBe('in agreement');
  });

  test.each([
    [1.5, '53 % of recorded ages agreed within 2 years'],
    [2.5, '67 % of recorded ages agreed within 3 years'],
    [4, '81 % of recorded ages agreed within 5 years'],
    [8, '95 % of recorded ages agreed within 10 years, and 81 % within 5'],
    [14, '14 years off, farther than nearly all'],
  ])('%f years: “%s”', (gap, words) => expect(gapWords(gap).replaceAll('\u00a0', ' ')).toContain(words));
});
