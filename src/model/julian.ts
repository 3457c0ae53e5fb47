/**
 * Days of the Julian calendar (Old Style), which Britain, Ireland and the colonies kept until 2 September 1752. The
 * year is taken to begin on 1 January. Days are the whole numbers of `days.ts`, counted from 1970-01-01 Gregorian.
 *
 * Source: J. Meeus, Astronomical Algorithms (2nd ed. 1998), chapter 7, for Julian Day numbers; Calendar (New Style)
 * Act 1750 (24 Geo. II c. 23) for the law.
 */
import { dayNumber } from './days.ts';

/** Days before 1 March of year 0 of the Julian calendar. */
const marchOfYear0 = -719_470;

/** The Julian Day of the midnight that begins day 0, 1970-01-01. */
const julianDayOfDayZero = 2_440_587.5;

/** The day number of a day of the Julian calendar; months from 1, years astronomical (0 is 1 BC). */
export function julianDayNumber(year: number, month: number, day: number): number {
  const fromMarch = month > 2 ? month - 3 : month + 9;
  const y = month > 2 ? year : year - 1;
  return marchOfYear0 + 365 * y + Math.floor(y / 4) + Math.floor((153 * fromMarch + 2) / 5) + day - 1;
}

/** Year, month and day that the Julian calendar gives a day number. */
export function julianCivil(day: number): { year: number; month: number; day: number } {
  const sinceMarch = day - marchOfYear0;
  // A Julian four-year cycle has 1461 days.
  const cycle = Math.floor(sinceMarch / 1461);
  const inCycle = sinceMarch - cycle * 1461;
  const yearOfCycle = Math.min(3, Math.floor(inCycle / 365));
  const inYear = inCycle - 365 * yearOfCycle;
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return {
    year: cycle * 4 + yearOfCycle + (month <= 2 ? 1 : 0),
    month,
    day: inYear - Math.floor((153 * fromMarch + 2) / 5) + 1,
  };
}

/** The last day of a month of the Julian calendar: every fourth year is a leap year, 1700 too. */
export function lastDayOfJulianMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** The Julian Day, as astronomers count, of the midnight that begins a day number. */
export function julianDay(day: number): number {
  return day + julianDayOfDayZero;
}

/** Whether a civil day was left out of the calendar of Britain, Ireland and the colonies: 3 to 13 September 1752. */
export function inTheGapOf1752(year: number, month: number, day: number): boolean {
  return year === 1752 && month === 9 && day >= 3 && day <= 13;
}

/**
 * Easter Sunday as a day number. Source: J. Meeus, Astronomical Algorithms, chapter 8.
 *
 * @param calendar whose rule is used: the Julian held in Britain and Ireland up to 1752
 */
export function easter(year: number, calendar: 'gregorian' | 'julian'): number {
  if (calendar === 'julian') {
    const d = (19 * (year % 19) + 15) % 30;
    const e = (2 * (year % 4) + 4 * (year % 7) - d + 34) % 7;
    const n = d + e + 114;
    return julianDayNumber(year, Math.floor(n / 31), (n % 31) + 1);
  }
  const a = year % 19;
  const b = Math.floor(year / 100);
  const c = year % 100;
  const f = Math.floor((b + 8) / 25);
  const g = Math.floor((b - f + 1) / 3);
  const h = (19 * a + b - Math.floor(b / 4) - g + 15) % 30;
  const l = (32 + 2 * (b % 4) + 2 * Math.floor(c / 4) - h - (c % 4)) % 7;
  const m = Math.floor((a + 11 * h + 22 * l) / 451);
  const n = h + l - 7 * m + 114;
  return dayNumber(year, Math.floor(n / 31), (n % 31) + 1);
}
