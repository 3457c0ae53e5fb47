import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageProblem } from '../../src/model/age.ts';
import { edtfProblem } from '../../src/model/edtf.ts';
import {
  ageValue,
  dateValue,
  isDitto,
  joinedAge,
  relationValue,
  sexValue,
} from '../../src/imports/tables/cells.ts';
import { fieldOf, guessField, saysWord } from '../../src/imports/tables/fields.ts';

// Forms of passenger schedules and censuses, English and Norwegian: common practice. Months of infants as fractions of
// twelve: instructions to enumerators of the US censuses from 1850 on.
test.each([
  ['31', 31],
  ['31.0', 31],
  ['31 yrs', 31],
  ['31 years', 31],
  ['31y 4m', '31y 4m'],
  ['1 yr 6 mos', '1y 6m'],
  ['7 mos.', '7m'],
  ['7m', '7m'],
  ['5/12', '5/12'],
  ['3 wks', '3w'],
  ['12 days', '12d'],
  ['½', '6m'],
  ['1½', '1y 6m'],
  ['30 år', 30],
  ['3 mdr', '3m'],
  ['14 dager', '14d'],
  ['2 aar og 3 mnd', '2y 3m'],
  ['abt 30', undefined],
  ['30?', undefined],
  ['30-35', undefined],
  ['infant', undefined],
  ['xx', undefined],
  ['231', undefined],
  ['13/12', undefined],
])('the age “%s” is %s', (cell, age) => expect(ageValue(cell)).toBe(age));

test('months and days may stand in columns of their own', () => {
  expect(joinedAge('2', '3', '')).toBe('2y 3m');
  expect(joinedAge('', '7', '')).toBe('7m');
  expect(joinedAge('0', '0', '9')).toBe('9d');
  expect(joinedAge('2', 'some', '')).toBeUndefined();
});

// EDTF: Library of Congress specification of 4 February 2019; the cells are common practice.
test.each([
  ['1864-05-02', undefined, '1864-05-02'],
  ['1840~', undefined, '1840~'],
  ['2 May 1864', undefined, '1864-05-02'],
  ['May 2, 1864', undefined, '1864-05-02'],
  ['May 1864', undefined, '1864-05'],
  ['2. mai 1864', undefined, '1864-05-02'],
  ['17/3/1866', undefined, '1866-03-17'],
  ['3/17/1866', undefined, '1866-03-17'],
  ['4/5/1864', true, '1864-05-04'],
  ['4/5/1864', false, '1864-04-05'],
  ['5/5/1864', undefined, '1864-05-05'],
  ['abt 1840', undefined, '1840~'],
  ['ca. 1840', undefined, '1840~'],
  ['1840?', undefined, '1840?'],
  ['about 1840?', undefined, '1840%'],
  ['bef 1850', undefined, '../1850'],
  ['after 1850', undefined, '1850/..'],
  ['1838-1842', undefined, '1838/1842'],
  ['1864-66', undefined, '1864/1866'],
  ['between 1838 and 1842', undefined, '1838/1842'],
  // What may be two days, or none, is never guessed at.
  ['4/5/1864', undefined, undefined],
  ['2 May 64', undefined, undefined],
  ['31 Feb 1864', undefined, undefined],
  ['Michaelmas 1720', undefined, undefined],
  ['1840 or 1841', undefined, undefined],
  ['sometime', undefined, undefined],
])('the date “%s”, days first %s, is %s', (cell, dayFirst, date) =>
  expect(dateValue(cell, dayFirst)).toBe(date),
);

test('whatever a cell holds, what comes of it is of the form of a record', () => {
  const cell = fc.oneof(
    fc.string({ maxLength: 30 }),
    fc.string({ unit: fc.constantFrom(...'0123456789/-. ~?abtyrmoskdMayJune½,'), maxLength: 16 }),
  );
  fc.assert(
    fc.property(cell, fc.option(fc.boolean(), { nil: undefined }), (text, dayFirst) => {
      const date = dateValue(text, dayFirst);
      if (date !== undefined) expect(edtfProblem(date)).toBeUndefined();
      const age = ageValue(text);
      if (age !== undefined) expect(ageProblem(age)).toBeUndefined();
    }),
    { numRuns: 1500 },
  );
});

test('sexes as they are written', () => {
  expect(['M', 'male', 'Mand', 'F', 'k', 'Kvinne', 'fem.', 'child', '?'].map(sexValue)).toEqual([
    'M',
    'M',
    'M',
    'F',
    'F',
    'F',
    'F',
    undefined,
    undefined,
  ]);
});

test('relations to the head, English and Norwegian; another word stays as it is', () => {
  const as = (cell: string) => relationValue(cell).as;
  expect(['Head', 'Self', 'Husfader', 'Hf.'].map(as)).toEqual(['head', 'head', 'head', 'head']);
  expect(['Wife', 'Hans Kone', 'Hustru', 'spouse'].map(as)).toEqual(['spouse', 'spouse', 'spouse', 'spouse']);
  expect(['Son', 'Dau.', 'Datter', 'Deres Søn'].map(as)).toEqual(['child', 'child', 'child', 'child']);
  expect(['Brother', 'Mother', 'Lodger', 'Tjenestepige'].map(as)).toEqual([
    'sibling',
    'parent',
    'boarder',
    'servant',
  ]);
  expect(relationValue('Mother-in-law')).toEqual({ word: 'mother-in-law', as: 'mother-in-law' });
});

test('signs that the cell above is meant', () => {
  expect(['"', 'do', 'Do.', 'ditto', '〃', '-"-'].every(isDitto)).toBe(true);
  expect(['Dodd', '', '-', 'a"'].some(isDitto)).toBe(false);
});

describe('headings', () => {
  test.each([
    ['Surname', 'name.surname'],
    ['First name', 'name.given'],
    ['Etternavn', 'name.surname'],
    ['Fornavn', 'name.given'],
    ['Full Name', 'name'],
    ['Ship', 'voyage.ship'],
    ['Skip', 'voyage.ship'],
    ['Date of arrival', 'voyage.arrived'],
    ['Ankomst', 'voyage.arrived'],
    ['Bound for', 'voyage.bound'],
    ['Relation to head', 'relation'],
    ['Familiestilling', 'relation'],
    ['Fødested', 'birthplace'],
    ['Alder', 'age'],
    ['Kjønn', 'sex'],
    ['Bosted', 'residence'],
    ['Family no.', 'household'],
    ['Page', 'record.page'],
    ['Witness 2', 'other.witness'],
    ['Far', 'other.father'],
    ['Year of immigration', 'immigrated'],
    ['Est. birth year', 'says.estBirthYear'],
    ['Mother tongue', 'says.motherTongue'],
    ['1850 value', 'says.column1850Value'],
    ['', 'ignore'],
  ])('“%s” is %s', (heading, field) => expect(guessField(heading)).toBe(field));

  test('every guess is a field, and every word of says is one a record takes', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (heading) => {
        expect(typeof fieldOf(guessField(heading))).toBe('string');
        expect(saysWord(heading)).toMatch(/^[a-z][A-Za-z0-9]*$/);
      }),
      { numRuns: 500 },
    );
  });

  test('what is no field is answered with what was meant', () => {
    expect(fieldOf('voyage.shipp')).toMatchObject({
      problem: expect.stringContaining('Did you mean voyage.ship?') as string,
    });
  });
});
