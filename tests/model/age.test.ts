import { describe, expect, test } from 'vitest';
import { ageInWords } from '../../components/layout/words.ts';
import { agePattern, ageProblem, readAge } from '../../src/model/age.ts';
import { recordFile } from '../../src/model/record.ts';

/* The fractions of infants are common practice of American enumerators; the other forms are the content contract's. */
describe('ages as clerks write them', () => {
  test.each([
    [31, 31, 0, 0, 0, 'y', '31'],
    ['31', 31, 0, 0, 0, 'y', '31'],
    ['31y', 31, 0, 0, 0, 'y', '31'],
    [0, 0, 0, 0, 0, 'y', '0'],
    [130, 130, 0, 0, 0, 'y', '130'],
    ['31y 4m', 31, 4, 0, 0, 'm', '31 years and 4 months'],
    ['1y6m', 1, 6, 0, 0, 'm', '1 year and 6 months'],
    ['7m', 0, 7, 0, 0, 'm', '7 months'],
    ['0m', 0, 0, 0, 0, 'm', '0 months'],
    ['18m', 0, 18, 0, 0, 'm', '18 months'],
    ['3w', 0, 0, 3, 0, 'w', '3 weeks'],
    ['12d', 0, 0, 0, 12, 'd', '12 days'],
    ['63y 2m 12d', 63, 2, 0, 12, 'd', '63 years, 2 months and 12 days'],
    ['3/12', 0, 3, 0, 0, 'm', '3 months'],
    ['1 3/12', 1, 3, 0, 0, 'm', '1 year and 3 months'],
    ['9/30', 0, 0, 0, 9, 'd', '9 days'],
  ] as const)('%s', (age, years, months, weeks, days, unit, words) => {
    expect(readAge(age)).toEqual({ years, months, weeks, days, unit });
    expect(ageProblem(age)).toBeUndefined();
    expect(ageInWords(age)).toBe(words);
    if (typeof age === 'string') expect(age).toMatch(new RegExp(agePattern));
    expect(
      recordFile.parse({ title: 'x', form: 'original', mentions: [{ id: 'm', age }] }).mentions[0]!.age,
    ).toBe(age);
  });

  test.each([
    [131, 'Nobody has lived 131 years'],
    ['310', 'Nobody has lived 310 years'],
    [1e308, 'Nobody has lived'],
    [-1, 'cannot be less than nothing'],
    [Number.NaN, 'An age is a number of years'],
    ['99999d 99999m', 'An age is a number of years'],
    ['99999m', 'Nobody has lived 99999m'],
    ['thirty', 'An age is a number of years'],
    ['', 'An age is a number of years'],
    ['14/12', 'less than 12'],
    ['3/7', 'a fraction of twelve'],
    ['abt 30', 'An age is a number of years'],
    ['4m 31y', 'An age is a number of years'],
    ['1'.repeat(10_000), 'An age is a number of years'],
    [' ,'.repeat(5_000), 'An age is a number of years'],
  ])('%s is refused with a sentence', (age, said) => {
    expect(ageProblem(age)).toContain(said);
    expect(recordFile.safeParse({ title: 'x', form: 'original', mentions: [{ id: 'm', age }] }).success).toBe(
      false,
    );
  });
});
