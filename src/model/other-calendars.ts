/**
 * Days of the two calendars besides the Julian that the open interchange standard GEDCOM 7.0 names.
 *
 * French Republican: the year began on 22 September 1792 and on the days that follow from the leap years kept while
 * the calendar was the law, the third, seventh and eleventh; it ended with 10 Nivôse of the year 14 (*common practice*).
 * Hebrew: the fixed calendar, after N. Dershowitz and E. M. Reingold, Calendrical Calculations (from memory; the tests
 * compare it with the Unicode consortium's ICU).
 */

/** Day numbers, from 1970-01-01, of the first and the last day a date may mean. */
export type FirstAndLast = readonly [first: number, last: number];

/** Codes of the months in GEDCOM, in the order of the year. */
export const frenchMonths = [
  'VEND',
  'BRUM',
  'FRIM',
  'NIVO',
  'PLUV',
  'VENT',
  'GERM',
  'FLOR',
  'PRAI',
  'MESS',
  'THER',
  'FRUC',
  'COMP',
];
export const hebrewMonths = [
  'TSH',
  'CSH',
  'KSL',
  'TVT',
  'SHV',
  'ADR',
  'ADS',
  'NSN',
  'IYR',
  'SVN',
  'TMZ',
  'AAV',
  'ELL',
];

/** 22 September 1792. */
const firstVendemiaire = -64_748;
const lastFrenchYear = 14;

/** The days of a date of the Republic; months and days from 1. `undefined` for what never was. */
export function frenchDays(year: number, month?: number, day?: number): FirstAndLast | undefined {
  if (year < 1 || year > lastFrenchYear) return undefined;
  const begin = firstVendemiaire + 365 * (year - 1) + Math.floor(year / 4);
  const extra = year % 4 === 3 ? 6 : 5;
  if (month === undefined) return [begin, begin + 360 + extra - 1];
  if (month > 13) return undefined;
  const first = begin + (month - 1) * 30;
  const length = month === 13 ? extra : 30;
  return within(first, length, day);
}

/** The days of a Hebrew date, the month counted in the order of `hebrewMonths`. `undefined` for what never was. */
export function hebrewDays(year: number, month?: number, day?: number): FirstAndLast | undefined {
  if (year < 1 || year > 9999) return undefined;
  const begin = newYear(year);
  const length = newYear(year + 1) - begin;
  if (month === undefined) return [begin, begin + length - 1];
  const lengths = monthLengths(length);
  // In a common year Adar is one month, whichever of the two names it goes by.
  const index = month === 7 && lengths[6] === 0 ? 5 : month - 1;
  const before = lengths.slice(0, index).reduce((sum, days) => sum + days, 0);
  return within(begin + before, lengths[index]!, day);
}

function within(first: number, length: number, day: number | undefined): FirstAndLast | undefined {
  if (day === undefined) return [first, first + length - 1];
  return day >= 1 && day <= length ? [first + day - 1, first + day - 1] : undefined;
}

/** 1 Tishri of the year 1, in days from 1970-01-01. */
const hebrewEpoch = -1_373_427 - 719_163;

function elapsedDays(year: number): number {
  const months = Math.floor((235 * year - 234) / 19);
  const parts = 12_084 + 13_753 * months;
  const day = 29 * months + Math.floor(parts / 25_920);
  return (3 * (day + 1)) % 7 < 3 ? day + 1 : day;
}

function newYear(year: number): number {
  const [before, own, after] = [elapsedDays(year - 1), elapsedDays(year), elapsedDays(year + 1)];
  const delay = after - own === 356 ? 2 : own - before === 382 ? 1 : 0;
  return hebrewEpoch + own + delay;
}

function monthLengths(yearLength: number): number[] {
  const leap = yearLength > 380;
  const long = yearLength % 10 === 5;
  const short = yearLength % 10 === 3;
  return [30, long ? 30 : 29, short ? 29 : 30, 29, 30, leap ? 30 : 29, leap ? 29 : 0, 30, 29, 30, 29, 30, 29];
}
