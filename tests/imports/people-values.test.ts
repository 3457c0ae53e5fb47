import { describe, expect, test } from 'vitest';
import { guessOf } from '../../src/imports/people-headings.ts';
import {
  ageOf,
  dateOf,
  dayFirstIn,
  numberOf,
  sexOf,
  stated,
  yearOf,
} from '../../src/imports/people-values.ts';

describe('ages', () => {
  test.each([
    ['31', 31],
    ['31.0', 31],
    ['31 yrs', 31],
    ['7m', 0],
    ['7/12', 0],
    ['12d', 0],
    ['abt 40', 40],
    ['40?', 40],
    ['2 yrs 3 mos', 2],
    ['infant', 0],
    ['31 Jahre', 31],
    ['999', undefined],
    ['-4', undefined],
    ['old', undefined],
    ['9'.repeat(10_000), undefined],
  ])('%.20s', (cell, age) => expect(ageOf(cell)).toBe(age));
});

describe('dates', () => {
  test.each([
    ['1840-04-12', { year: 1840, month: 4, day: 12 }],
    ['19081209', { year: 1908, month: 12, day: 9 }],
    ['12 Apr 1840', { year: 1840, month: 4, day: 12 }],
    ['April 12, 1840', { year: 1840, month: 4, day: 12 }],
    ['12. März 1840', { year: 1840, month: 3, day: 12 }],
    ['1840-04', { year: 1840, month: 4 }],
    ['abt. 1840', { year: 1840 }],
    ['1840?', { year: 1840 }],
    ['12/4/1840', { year: 1840, month: 4, day: 12 }],
    ['4/25/1840', { year: 1840, month: 4, day: 25 }],
    ['1996-02-41', { year: 1996, month: 2 }],
    ['1840-04-12 00:00:00', { year: 1840, month: 4, day: 12 }],
    ['next spring', undefined],
    ['12', undefined],
    ['x'.repeat(10_000), undefined],
  ])('%.20s', (cell, date) => expect(dateOf(cell, undefined)).toEqual(date));
  test('the order of day and month is that of the column', () => {
    expect(dayFirstIn(['4/5/1840', '4/25/1840'])).toBe(false);
    expect(dayFirstIn(['4/5/1840', '25/4/1840'])).toBe(true);
    expect(dayFirstIn(['4/5/1840'])).toBeUndefined();
    expect(dateOf('4/5/1840', false)).toEqual({ year: 1840, month: 4, day: 5 });
  });
  test('years and months', () => {
    expect(yearOf('1840.0')).toBe(1840);
    expect(yearOf('18400')).toBeUndefined();
    expect(numberOf('Sept.', 1, 12)).toBe(9);
    expect(numberOf('13', 1, 12)).toBeUndefined();
  });
});

test.each([
  ['M', 1],
  ['female', 2],
  ['männlich', 1],
  ['kvinne', 2],
  ['?', undefined],
])('sex: %s', (cell, sex) => expect(sexOf(cell)).toBe(sex));

test.each(['', ' NA ', 'NULL', 'unknown', 'not stated', '-', '?', 'N/A'])('“%s” says nothing', (cell) =>
  expect(stated(cell)).toBe(''),
);

describe('headings', () => {
  test.each([
    ['given_name', 'given', 0],
    ['First Name', 'given', 0],
    ['fname_c1', 'given', 0],
    ['fname_c2', 'given', 1],
    ['middle_name', 'given', 1],
    ['Vorname', 'given', 0],
    ['Fornavn', 'given', 0],
    ['lname_c2', 'surname', 1],
    ['Last-Name', 'surname', 0],
    ['last_name_a', 'surname', 0],
    ['Etternavn', 'surname', 0],
    ['by', 'birth-year', 0],
    ['birth_year', 'birth-year', 0],
    ['date_of_birth', 'birth-date', 0],
    ['Fødselsdato', 'birth-date', 0],
    ['Geburtsort', 'birthplace', 0],
    ['bpl', 'birthplace', 0],
    ['rec_id', 'id', 0],
    ['Address 2', 'residence', 0],
    ['year of immigration', 'arrival-year', 0],
  ])('%s', (heading, use, order) => expect(guessOf(heading)).toMatchObject({ use, order }));
  test('a year in a heading is kept', () =>
    expect(guessOf('age_1880')).toEqual({ use: 'age', order: 0, year: 1880 }));
  test('nothing is made of what is not known', () => expect(guessOf('soc_sec_id')).toBeUndefined());
  test('very long headings are no trouble', () => expect(guessOf('x_'.repeat(100_000))).toBeUndefined());
});
