/**
 * The one word the content contract adds to EDTF: a date that follows `julian` is a day of the Julian calendar (Old
 * Style) with the year begun on 1 January. EDTF itself knows the Gregorian calendar alone; the open interchange
 * standard GEDCOM 7.0 marks a date of another calendar by the same word before it.
 *
 * `julian 1649-01-30` is one day; `julian 1648/49-01-30` the same day with the double year as the record has it, since
 * the legal year of England and Ireland began on 25 March until 1752 (Calendar (New Style) Act 1750). `julian 1690-07`
 * and `julian 1690` say less. A span has the word before both its dates.
 */
import { julianDayNumber, lastDayOfJulianMonth } from './julian.ts';

/** A date of the Julian calendar. */
export interface JulianDate {
  /** The year as begun on 1 January. */
  year: number;
  month?: number;
  day?: number;
  /** The year as the record writes it: “1648/9”, “1699/1700”, “1690”. */
  written: string;
  /** `?` uncertain, `~` approximate, `%` both, or nothing. */
  mark: string;
  /** First and last day it may mean, as day numbers. */
  first: number;
  last: number;
}

/** Whether a date begins with a calendar's word of its own. */
export function isJulian(date: string): boolean {
  return date.startsWith('julian ');
}

/** Reads `julian …`; a sentence when it cannot be read. */
export function julianDate(text: string): JulianDate | string {
  const parts = /^julian (\d{4})(?:\/(\d{1,4}))?(?:-(\d\d)(?:-(\d\d))?)?([?~%]?)$/.exec(text);
  if (!parts)
    return `“${text}” is not a date; after the word julian write year-month-day, such as julian 1649-01-30, or less of it.`;
  const [, first = '', second, m, d, mark = ''] = parts;
  const month = m === undefined ? undefined : Number(m);
  const day = d === undefined ? undefined : Number(d);
  const problem = doubleYearProblem(text, first, second, month, day);
  if (problem) return problem;
  const year = Number(first) + (second === undefined ? 0 : 1);
  if (month !== undefined && (month < 1 || month > 12))
    return `“${text}” has no such month; months run from 01 to 12.`;
  const end = month === undefined ? 31 : lastDayOfJulianMonth(year, month);
  if (day !== undefined && (day < 1 || day > end))
    return `“${text}” has no such day; that month has ${end} days in the Julian calendar.`;
  return {
    year,
    ...(month === undefined ? {} : { month }),
    ...(day === undefined ? {} : { day }),
    written: second === undefined ? first : `${first}/${shortYear(year)}`,
    mark,
    first: julianDayNumber(year, month ?? 1, day ?? 1),
    last: julianDayNumber(year, month ?? 12, day ?? end),
  };
}

function doubleYearProblem(
  text: string,
  first: string,
  second: string | undefined,
  month: number | undefined,
  day: number | undefined,
): string | undefined {
  if (second === undefined) return undefined;
  if (month === undefined)
    return `“${text}” has a double year but no month; a double year belongs to a day from 1 January to 24 March. For a span of years write the word before both: julian ${first}/julian ${Number(first) + 1}.`;
  const next = Number(first) + 1;
  if (second.length === 3 || Number(second) !== next % 10 ** second.length)
    return `The years of “${text}” do not follow each other; the year after ${first} is written ${first}/${shortYear(next)}.`;
  if (month > 3 || (month === 3 && day !== undefined && day > 24))
    return `“${text}” has a double year on a day from 25 March to 31 December, when there was no doubt of the year; write the one year.`;
  return undefined;
}

/** “9” of 1649, “00” of 1700: the second year of a double year as clerks wrote it. */
function shortYear(year: number): string {
  return year % 100 === 0 ? String(year) : year % 10 === 0 ? String(year % 100) : String(year % 10);
}

/** The two sides of an interval, or `undefined` for a date without one. The slash of a double year is no interval. */
export function intervalParts(date: string): [from: string, to: string] | undefined {
  const slash = date.indexOf('/', doubleYearEnd(date));
  if (slash < 0) return undefined;
  const to = date.slice(slash + 1);
  return to.includes('/', doubleYearEnd(to)) ? undefined : [date.slice(0, slash), to];
}

/** How far a double year at the head of a date reaches. */
function doubleYearEnd(date: string): number {
  return /^julian \d{4}\/\d{1,4}(?=-)/.exec(date)?.[0].length ?? 0;
}
