import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sortableDate } from '../../components/layout/lookup.ts';
import { interfaceTags, wordingIn } from '../../src/interface/index.ts';
import { sayEventDate, yearOf } from '../../src/interface/say-date.ts';
import { daySpan, edtfProblem } from '../../src/model/edtf.ts';

/* Whatever an author writes for a date is read or answered with a sentence, and pages can say it. */
const pieces = [
  ...[
    '0',
    '1',
    '2',
    '3',
    '4',
    '8',
    '9',
    'X',
    '-',
    '/',
    '..',
    ',',
    '?',
    '~',
    '%',
    'T',
    'Z',
    'Y',
    'E',
    'S',
    ':',
  ],
  ...['julian ', '1648/9', '1840', '-01', '-33', '-02-29', '[', ']', '{', '}', ' ', ' mo. ', 'Easter ', 'Q1'],
  ...['th', 'Geo. II', 'hebrew ', '12', 'Mar. quarter ', '🙂', 'é'],
];
const text = fc
  .array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 9 })
  .map((parts) => parts.join(''));

describe('any text at all as a date', () => {
  test('is days in order, or a sentence', () => {
    fc.assert(
      fc.property(text, (date) => {
        const problem = edtfProblem(date);
        if (problem === undefined) {
          const { first, last } = daySpan(date);
          if (first !== null && last !== null) expect(first).toBeLessThanOrEqual(last);
          if (first !== null) expect(Number.isSafeInteger(first)).toBe(true);
        } else expect(problem).toMatch(/\.$/);
        for (const tag of interfaceTags)
          expect(typeof sayEventDate(date, wordingIn(tag).dates)).toBe('string');
        expect(typeof yearOf(date)).toBe('string');
        expect(typeof sortableDate(date)).toBe('string');
      }),
      { numRuns: 3000 },
    );
  });

  test('a day of the Julian calendar is said in words and never loses its New Style', () => {
    const date = fc
      .record({
        year: fc.integer({ min: 1, max: 1999 }),
        month: fc.integer({ min: 1, max: 12 }),
        day: fc.integer({ min: 1, max: 28 }),
      })
      .map(
        ({ year, month, day }) =>
          `julian ${[String(year).padStart(4, '0'), ...[month, day].map((n) => String(n).padStart(2, '0'))].join('-')}`,
      );
    fc.assert(
      fc.property(date, (julian) => {
        const { first, last } = daySpan(julian);
        expect(first).toBe(last);
        // As many days apart as the calendars are: from 2 behind in the year 1 to 13 ahead since 1900.
        const ahead = first! - daySpan(julian.slice(7)).first!;
        expect(ahead).toBeGreaterThanOrEqual(-2);
        expect(ahead).toBeLessThanOrEqual(13);
        expect(sayEventDate(julian, wordingIn('en').dates)).toContain('New Style)');
        expect(sayEventDate(julian, wordingIn('nb').dates)).toContain('etter ny stil)');
      }),
      { numRuns: 500 },
    );
  });
});
