import { describe, expect, test } from 'vitest';
import { cslDate } from '../../src/citations/csl-date.ts';

/*
 * Sources: EDTF, ISO 8601-2:2019 (its own examples); dates of CSL-JSON, schema csl-data.json of CSL 1.0.2,
 * `date-variable`: date-parts, season 1 to 4, circa, literal.
 */
describe('a date in parts', () => {
  test.each([
    ['1871-04-11', { 'date-parts': [[1871, 4, 11]] }],
    ['1871-04', { 'date-parts': [[1871, 4]] }],
    ['1871', { 'date-parts': [[1871]] }],
    ['1985-04-12T23:20:30Z', { 'date-parts': [[1985, 4, 12]] }],
    ['1840~', { 'date-parts': [[1840]], circa: true }],
    ['2004-06-11~', { 'date-parts': [[2004, 6, 11]], circa: true }],
    ['1964/2008', { 'date-parts': [[1964], [2008]] }],
    [
      '2004-02-01/2005-02',
      {
        'date-parts': [
          [2004, 2, 1],
          [2005, 2],
        ],
      },
    ],
    ['1838~/1842~', { 'date-parts': [[1838], [1842]], circa: true }],
    ['2001-21', { 'date-parts': [[2001]], season: 1 }],
    ['2001-24', { 'date-parts': [[2001]], season: 4 }],
    ['-0044', { 'date-parts': [[-45]] }],
    ['0000', { 'date-parts': [[-1]] }],
  ])('%s', (edtf, expected) => expect(cslDate(edtf)).toEqual(expected));
});

describe('in words, because CSL has no part for it', () => {
  test.each([
    ['1894?', 'probably 1894'],
    ['2004-06-11%', 'probably about 11 June 2004'],
    ['2004-06~-11', '11 June 2004 (year and month approximate)'],
    ['1838~/1842', 'about 1838 to 1842'],
    ['[1850,1852]', '1850 or 1852'],
    ['{1667,1668,1670..1672}', '1667, 1668 and 1670 to 1672'],
    ['[1846..1848]', 'between 1846 and 1848'],
    ['201X', 'the 2010s'],
    ['1985-04-XX', 'April 1985, day unknown'],
    ['1985-04-12/..', '12 April 1985 or later'],
    ['../1985', 'by 1985'],
    ['/1985', 'an unknown date to 1985'],
    ['2001-34', 'second quarter of 2001'],
    ['2001-21/2001-22', 'spring 2001 to summer 2001'],
    ['..', 'date unknown'],
    ['julian 1648/49-01-30', '30 January 1648/9 (Old Style; 9 February 1649 New Style)'],
    ['no date at all', 'no date at all'],
    ['', ''],
  ])('%s', (edtf, literal) => expect(cslDate(edtf)).toEqual({ literal }));
});
