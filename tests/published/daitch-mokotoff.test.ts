import { describe, expect, test } from 'vitest';
import { daitchMokotoff } from '../../src/reasoning/names/daitch-mokotoff.ts';

/*
 * Source: G. Mokotoff, "Soundexing and Genealogy", as quoted by the public tests of Apache commons-codec
 * (DaitchMokotoffSoundexTest) and PostgreSQL (contrib/fuzzystrmatch/expected).
 */
const published: readonly (readonly [name: string, codes: string])[] = [
  ['Golden', '583600'],
  ['Peters', '734000 739400'],
  ['Alpert', '087930'],
  ['Peterson', '734600 739460'],
  ['Breuer', '791900'],
  ['Moskowitz', '645740'],
  ['Moskovitz', '645740'],
  ['Haber', '579000'],
  ['Auerbach', '097400 097500'],
  ['Ohrbach', '097400 097500'],
  ['Mannheim', '665600'],
  ['Jackson', '145460 154600 445460 454600'],
  ['Mintz', '664000'],
  ['Lipshitz', '874400'],
  ['Topf', '370000'],
  ['Lippszyc', '874400 874500'],
  ['Kleinmann', '586660'],
  ['Lewinsky', '876450'],
  ['Levinski', '876450'],
  ['Ben Aron', '769600'],
  ['Szlamawicz', '486740'],
  ['Shlamovitz', '486740'],
  ['Ceniow', '467000 567000'],
  ['Tsenyuv', '467000'],
  ['Holubica', '587400 587500'],
  ['Golubitsa', '587400'],
  ['Przemysl', '746480 794648'],
  ['Pshemeshil', '746480'],
  ['Rosochowaciec', '944744 944745 944754 944755 945744 945745 945754 945755'],
  ['Rosokhovatsets', '945744'],
  ["O'Brien", '079600'],
  ['O’Brien', '079600'],
  ['Washington', '746536'],
  ['Straßburg', '294795'],
  ['George', '595000'],
  ['AKSSOL', '054800'],
  ['John', '160000 460000'],
  ['GERSCHFELD', '545783 547830 594578 594783'],
  ['Kingsmith', '565463'],
];

/* Worked out from the rule by hand for names of Ireland; not published. */
const fromTheRule: readonly (readonly [name: string, codes: string])[] = [
  ['Murphy', '697000'],
  ['Gallagher', '585900'],
  ['Gallaher', '585900'],
  ['Doherty', '359300'],
  ['Dougherty', '359300'],
  ['Callaghan', '485600 585600'],
  ['Callahan', '485600 585600'],
  ['Keogh', '550000'],
  ['Kehoe', '550000'],
  ['Reilly', '980000'],
  ['Riley', '980000'],
  ['Cavanagh', '476500 576500'],
  ['Kavanagh', '576500'],
  ['Byrne', '796000'],
  ['Burns', '796400'],
  ['McCarthy', '645930 649300 654930 659300'],
];

describe('Daitch–Mokotoff codes', () => {
  test.each(published)('%s is %s, as published', (name, codes) =>
    expect(daitchMokotoff(name).join(' ')).toBe(codes),
  );
  test.each(fromTheRule)('%s is %s, by the rule', (name, codes) =>
    expect(daitchMokotoff(name).join(' ')).toBe(codes),
  );

  /* Source: the table of rules in commons-codec: t with a cedilla or a comma is 3 or 4; a and e with a tail are 6 or nothing. */
  test('letters with codes of their own', () => {
    expect(daitchMokotoff('ţamas')).toEqual(['364000', '464000']);
    expect(daitchMokotoff('țamas')).toEqual(['364000', '464000']);
    expect(daitchMokotoff('Wąs')).toEqual(['740000', '764000']);
  });

  test('nothing to code', () => {
    expect(daitchMokotoff('')).toEqual([]);
    expect(daitchMokotoff('— ?')).toEqual([]);
    expect(daitchMokotoff('Мерфи')).toEqual([]);
  });

  test('a name of many branches stays small', () => {
    const codes = daitchMokotoff('CJ'.repeat(5000));
    expect(codes.length).toBeGreaterThan(1);
    expect(codes.length).toBeLessThan(800);
    expect(codes.every((code) => /^\d{6}$/.test(code))).toBe(true);
  });
});
