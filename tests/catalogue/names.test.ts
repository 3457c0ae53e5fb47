import { describe, expect, test } from 'vitest';
import { formsOf, givenNames } from '../../src/catalogue/names/given-index.ts';
import { givenCounts } from '../../src/catalogue/names/given-counts.ts';
import { latinCases } from '../../src/catalogue/names/latin.ts';
import { surnameCounts } from '../../src/catalogue/names/surname-counts.ts';
import { surnameGroups } from '../../src/catalogue/names/surnames.ts';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import { foldName } from '../../src/reasoning/names/fold.ts';
import { givenFormsOf } from '../../src/reasoning/names/lookup.ts';

describe('the catalogue of names', () => {
  test('every row says where it is from', () => {
    for (const { name, source } of [...givenNames, ...surnameGroups, ...surnameCounts, ...givenCounts])
      expect(source, name).not.toBe('');
  });

  test('a name has one row, and a form stands in a row once', () => {
    for (const rows of [givenNames, surnameGroups]) {
      const names = rows.map(({ name }) => foldName(name));
      expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
    }
    for (const row of surnameGroups) {
      const forms = [row.name, ...row.spellings, ...row.interchangeable];
      expect(
        forms.filter((form, at) => forms.indexOf(form) !== at),
        row.name,
      ).toEqual([]);
    }
  });

  test('every form folds to something that is found again', () => {
    for (const [group, row] of givenNames.entries())
      for (const { form } of formsOf(row))
        expect(
          givenFormsOf(foldName(form)).some((one) => one.group === group),
          `${row.name}: ${form}`,
        ).toBe(true);
  });

  test('every name that is counted is a name of the catalogue', () => {
    for (const { name } of givenCounts)
      expect(
        givenNames.some((row) => row.name === name),
        name,
      ).toBe(true);
  });

  test('names are counted in built-in places', () => {
    const known = new Set(builtInPlaces.map(({ id }) => id));
    for (const { place } of [...surnameCounts, ...givenCounts]) expect(known.has(place ?? '')).toBe(true);
  });

  /* Source: the declensions of any Latin grammar. */
  test.each([
    ['Mauritius', ['Mauritius', 'Mauritii', 'Mauritio', 'Mauritium', 'Mauritie', 'Mauriti']],
    ['Petrus', ['Petrus', 'Petri', 'Petro', 'Petrum', 'Petre']],
    ['Helena', ['Helena', 'Helenae', 'Helenam', 'Helene']],
    ['Thomas', ['Thomas', 'Thomae', 'Thomam', 'Thoma', 'Thome']],
    ['Joannes', ['Joannes', 'Joannis', 'Joannem', 'Joanni', 'Joanne']],
    ['Hugo', ['Hugo', 'Hugonis', 'Hugonem', 'Hugoni', 'Hugone']],
    ['Alexander', ['Alexander', 'Alexandri', 'Alexandro', 'Alexandrum']],
    ['David', ['David']],
  ])('the cases of %s', (nominative, cases) => expect(latinCases(nominative)).toEqual(cases));
});
