import { describe, expect, test } from 'vitest';
import { jaro, jaroWinkler } from '../../src/reasoning/names/jaro-winkler.ts';

/*
 * Source: W. E. Winkler, Advanced Methods for Record Linkage (US Census Bureau RR94/05, 1994), table 2.1. The paper
 * prints 0.000 for HARDIN, ITMAN, JON/JAN and 1ST; here stands what its formula gives.
 */
const table: readonly (readonly [string, string, number, number])[] = [
  ['SHACKLEFORD', 'SHACKELFORD', 0.97, 0.982],
  ['DUNNINGHAM', 'CUNNIGHAM', 0.896, 0.896],
  ['NICHLESON', 'NICHULSON', 0.926, 0.956],
  ['JONES', 'JOHNSON', 0.79, 0.832],
  ['MASSEY', 'MASSIE', 0.889, 0.933],
  ['ABROMS', 'ABRAMS', 0.889, 0.922],
  ['HARDIN', 'MARTINEZ', 0.722, 0.722],
  ['ITMAN', 'SMITH', 0.467, 0.467],
  ['JERALDINE', 'GERALDINE', 0.926, 0.926],
  ['MARHTA', 'MARTHA', 0.944, 0.961],
  ['MICHELLE', 'MICHAEL', 0.869, 0.921],
  ['JULIES', 'JULIUS', 0.889, 0.933],
  ['TANYA', 'TONYA', 0.867, 0.88],
  ['DWAYNE', 'DUANE', 0.822, 0.84],
  ['SEAN', 'SUSAN', 0.783, 0.805],
  ['JON', 'JOHN', 0.917, 0.933],
  ['JON', 'JAN', 0.778, 0.8],
  ['BROOKHAVEN', 'BRROKHAVEN', 0.933, 0.947],
  ['BROOK HALLOW', 'BROOK HLLW', 0.944, 0.967],
  ['DECATUR', 'DECATIR', 0.905, 0.943],
  ['FITZRUREITER', 'FITZENREITER', 0.856, 0.913],
  ['HIGBEE', 'HIGHEE', 0.889, 0.922],
  ['HIGBEE', 'HIGVEE', 0.889, 0.922],
  ['LACURA', 'LOCURA', 0.889, 0.9],
  ['IOWA', 'IONA', 0.833, 0.867],
  ['1ST', 'IST', 0.778, 0.778],
  ['DIXON', 'DICKSONX', 0.767, 0.813],
];

/* Source: W. E. Winkler, RR93/08 (1993), table 5, the column of Jaro. */
const earlier: readonly (readonly [string, string, number])[] = [
  ['billy', 'billy', 1],
  ['billy', 'bill', 0.933],
  ['billy', 'blily', 0.933],
  ['massie', 'massey', 0.889],
  ['yvette', 'yevett', 0.889],
  ['billy', 'bolly', 0.867],
  ['dwayne', 'duane', 0.822],
  ['dixon', 'dickson', 0.79],
  ['billy', 'susan', 0],
];

describe('likeness of spelling', () => {
  test.each(table)('%s and %s', (a, b, plain, winkler) => {
    // A published cell may be cut off where ours is rounded: one in the third place.
    expect(Math.abs(jaro(a, b) - plain)).toBeLessThanOrEqual(0.0006);
    expect(Math.abs(jaroWinkler(a, b) - winkler)).toBeLessThanOrEqual(0.0006);
    expect(jaroWinkler(b, a)).toBe(jaroWinkler(a, b));
  });
  test.each(earlier)('%s and %s, plain', (a, b, plain) =>
    expect(Math.abs(jaro(a, b) - plain)).toBeLessThanOrEqual(0.0006),
  );

  /* Worked out in fractions from the formula. */
  test('in fractions', () => {
    expect(jaro('MARTHA', 'MARHTA')).toBeCloseTo(17 / 18, 12);
    expect(jaroWinkler('MARTHA', 'MARHTA')).toBeCloseTo(173 / 180, 12);
    expect(jaro('DWAYNE', 'DUANE')).toBeCloseTo(37 / 45, 12);
    expect(jaroWinkler('DWAYNE', 'DUANE')).toBeCloseTo(21 / 25, 12);
    expect(jaro('DIXON', 'DICKSONX')).toBeCloseTo(23 / 30, 12);
    expect(jaroWinkler('DIXON', 'DICKSONX')).toBeCloseTo(61 / 75, 12);
  });

  /* By the formula: three of six matched letters out of order are one and a half transpositions, not one. */
  test('half a transposition counts', () =>
    expect(jaro('abcdefgh', 'abdecfgh')).toBeCloseTo((1 + 1 + (8 - 1.5) / 8) / 3, 12));

  test('empty and one-letter texts', () => {
    expect(jaroWinkler('', '')).toBe(1);
    expect(jaroWinkler('', 'a')).toBe(0);
    expect(jaroWinkler('a', 'b')).toBe(0);
    expect(jaroWinkler('a', 'a')).toBe(1);
  });

  test('a text of ten thousand letters takes no time', () => {
    const start = performance.now();
    for (let i = 0; i < 100; i++) jaroWinkler('ab'.repeat(5000), 'ba'.repeat(5000) + String(i));
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
