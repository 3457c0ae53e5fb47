/**
 * Weights and probabilities against published tables and worked examples. The rule: I. P. Fellegi and A. B. Sunter,
 * “A Theory for Record Linkage”, JASA 64 (1969) 1183–1210.
 */
import { describe, expect, test } from 'vitest';
import { identityFields, type LevelShares } from '../../src/catalogue/identity.ts';
import {
  agreementByChance,
  anyByChance,
  expectedByChance,
  levelWeight,
  priorBits,
  probabilityOf,
  rarityBits,
  weightForProbability,
} from '../../src/reasoning/identity/weight.ts';

// Australian Bureau of Statistics, cat. 3302.0.55.004, Linking Death Registrations to the 2011 Census, Appendix C,
// table C.1: m and u of agreeing, disagreeing and missing; the weights are log₂(m/u), worked out to three places.
describe('ABS, table C.1', () => {
  test.each([
    ['First name', [0.839, 0.006, 7.128], [0.158, 0.989, -2.646], [0.003, 0.005, -0.737]],
    ['Surname', [0.954, 0.007, 7.09], [0.041, 0.987, -4.589], [0.006, 0.007, -0.222]],
    ['Sex', [0.966, 0.512, 0.916], [0.017, 0.476, -4.807], [0.017, 0.012, 0.503]],
    ['Day of birth', [0.903, 0.03, 4.912], [0.039, 0.89, -4.512], [0.058, 0.08, -0.464]],
    ['Month of birth', [0.923, 0.077, 3.583], [0.019, 0.844, -5.473], [0.058, 0.08, -0.464]],
    ['Age', [0.975, 0.051, 4.257], [0.019, 0.942, -5.632], [0.006, 0.007, -0.222]],
    ['Birthplace', [0.9, 0.525, 0.778], [0.015, 0.414, -4.787], [0.085, 0.061, 0.479]],
    ['Year of arrival', [0.079, 0.002, 5.304], [0.02, 0.036, -0.848], [0.901, 0.962, -0.095]],
    ['Marital status', [0.879, 0.293, 1.585], [0.069, 0.534, -2.952], [0.052, 0.173, -1.734]],
  ] as const)('%s', (_, ...levels) => {
    for (const [m, u, weight] of levels as readonly (readonly [number, number, number])[])
      expect(levelWeight({ m, u })).toBeCloseTo(weight, 2);
  });
  // Of those where it is stated: 0.966 ÷ (0.966 + 0.017) and 0.512 ÷ (0.512 + 0.476).
  test('the shares of sex are those of the table', () => {
    const [same, different] = [...identityFields.sex.levels] as [LevelShares, LevelShares];
    expect(same.m).toBeCloseTo(0.966 / 0.983, 3);
    expect(same.u).toBeCloseTo(0.512 / 0.988, 3);
    expect(same.m + different.m).toBeCloseTo(1);
  });
});

// ESRI, geocoding technical FAQ: m = 0.9, u = 0.01 gives 6.49; the weight of disagreement follows by the formula.
test('ESRI: 0.9 and 0.01', () => {
  expect(levelWeight({ m: 0.9, u: 0.01 })).toBeCloseTo(6.49, 2);
  expect(levelWeight({ m: 0.1, u: 0.99 })).toBeCloseTo(-3.307, 3);
});

// UK Ministry of Justice, guide to the Fellegi–Sunter model in the documentation of its open linkage library.
describe('Ministry of Justice guide', () => {
  test('the worked sum: printed as 9.48 and 0.999 (the printed terms add up to 9.47)', () => {
    const sum = -6.67 + 4.74 + 6.49 - 1.97 - 1.12 + 8.0;
    expect(sum).toBeCloseTo(9.47, 2);
    expect(probabilityOf(sum)).toBeCloseTo(0.999, 3);
    expect(priorBits(0.00972, 1)).toBeCloseTo(-6.67, 2);
  });
  test.each([
    [0, 0.5],
    [2, 0.8],
    [3, 0.889],
    [4, 0.941],
    [7, 0.992],
  ])('weight %d is probability %d', (weight, probability) =>
    expect(probabilityOf(weight)).toBeCloseTo(probability, 3),
  );
  test('20 rows are 190 pairs, of which 77 agree in the first name: u = 0.405', () =>
    // Names borne by 12, 5, 2 and 1 of the rows: 66 + 10 + 1 pairs.
    expect(agreementByChance([12, 5, 2, 1])).toBeCloseTo(0.405, 3));
});

// Value-specific weights, log₂(1/f): W. E. Winkler, Census RR2000/06; W. E. Yancey, Census RR2000/07. The shares are
// R. E. Matheson’s, Special Report on Surnames in Ireland (1894, 1909): 13.3, 11.8 and 9.2 in 1,000; 105,254 births.
describe('shares of surnames in Ireland', () => {
  test.each([
    ['Murphy', 13.3 / 1000, 6.23],
    ['Kelly', 11.8 / 1000, 6.41],
    ['Sullivan', 9.2 / 1000, 6.76],
    ['a name of five births', 5 / 105_254, 14.36],
  ])('%s', (_, share, bits) => {
    const average = 0.004;
    const exact = levelWeight({ m: 1, u: average });
    expect(exact + rarityBits('exact', [share, share], average, 0)).toBeCloseTo(bits, 2);
  });
  test('of two shares the larger counts, and none below the least', () => {
    expect(rarityBits('exact', [0.0001, 0.0133], 0.004, 0.001)).toBeCloseTo(Math.log2(0.004 / 0.0133));
    expect(rarityBits('exact', [0.00001, 0.00001], 0.004, 0.001)).toBeCloseTo(2);
    expect(rarityBits('different', [0.00001, 0.00001], 0.004, 0.001)).toBe(0);
  });
});

// Standard algebra: N candidates, independent traits; and two files (W = log₂(P/(1 − P)) − log₂(E/(A·B − E))).
describe('chance', () => {
  const traits = [0.0133, 0.02, 0.1];
  test('1,200 people and three traits', () => {
    expect(expectedByChance(1200, traits)).toBeCloseTo(0.03192, 6);
    expect(anyByChance(1200, traits)).toBeCloseTo(0.031416, 6);
    expect(-Math.expm1(-expectedByChance(1200, traits))).toBeCloseTo(0.031414, 5);
  });
  test('one match among N candidates has odds of 1 to N − 1', () =>
    expect(priorBits(1, 1200)).toBeCloseTo(-Math.log2(1199), 9));
  // R. Cook and others, Methods of Information in Medicine 40 (2001) 196–203 (the rule from memory).
  test('files of 10,000 and 1,000 with 500 matches: 18.536 bits for 0.95', () =>
    expect(weightForProbability(0.95, 500, 10_000 * 1_000)).toBeCloseTo(18.536, 2));
});

// Recorded ages of hand-linked Irish-born men: 53 % agree within 2 years, 67 % within 3, 81 % within 5, 95 % within 10.
test('the shares of birth are those of hand-linked men', () => {
  let sum = 0;
  const within = identityFields.birth.levels.map(({ m }) => (sum += m));
  expect(within.map((share) => Number(share.toFixed(2)))).toEqual([0.18, 0.38, 0.53, 0.67, 0.81, 0.95, 1]);
});
