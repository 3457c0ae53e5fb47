/** Dates, spans and years in words. What is handed in is said already, but for the numbers. */
import { monthNames } from '../../model/numbered-months.ts';

/** Seasons and parts of years, ISO 8601-2 section 4.8; quarters are what civil registration counts by. */
const seasons: Readonly<Record<number, string>> = {
  21: 'spring',
  22: 'summer',
  23: 'autumn',
  24: 'winter',
  25: 'spring',
  26: 'summer',
  27: 'autumn',
  28: 'winter',
  29: 'southern spring',
  30: 'southern summer',
  31: 'southern autumn',
  32: 'southern winter',
  33: 'first quarter of',
  34: 'second quarter of',
  35: 'third quarter of',
  36: 'fourth quarter of',
  37: 'first third of',
  38: 'second third of',
  39: 'last third of',
  40: 'first half of',
  41: 'second half of',
};
const parts = { year: 'year', month: 'month', day: 'day' };
const doubts = { '?': 'uncertain', '~': 'approximate', '%': 'uncertain and approximate' };

export const dates = {
  /** “April”; 1 is January. */
  month: (number: number): string => monthNames[number - 1]!,
  dayOfMonth: (day: number, month: string): string => `${day} ${month}`,
  ofYear: (monthOrDay: string, year: string): string => `${monthOrDay} ${year}`,
  /** A season or part of a year by its number in the standard; nothing where there is none. */
  season: (number: number, year: string): string | undefined =>
    seasons[number] === undefined ? undefined : `${seasons[number]} ${year}`,
  decade: (year: number): string => `the ${year}s`,
  beforeChrist: (year: number): string => `${year} BC`,
  significant: (year: string, digits: number): string =>
    `${year}, to ${digits === 1 ? 'one significant digit' : `${digits} significant digits`}`,
  monthNumber: (number: string): string => `month ${number}`,
  dayNumber: (number: string): string => `day ${number}`,
  yearUnknown: 'year unknown',
  monthUnknown: 'month unknown',
  dayUnknown: 'day unknown',
  monthAndDayUnknown: 'month and day unknown',
  someYear: 'an unknown year',
  someDate: 'an unknown date',
  unknown: 'date unknown',
  /** How sure a whole date is: ? uncertain, ~ approximate, % both. */
  sure: {
    '?': (date: string): string => `probably ${date}`,
    '~': (date: string): string => `about ${date}`,
    '%': (date: string): string => `probably about ${date}`,
  },
  /** How sure some parts of a date are: “year and month approximate”. */
  doubt: (of: readonly ('year' | 'month' | 'day')[], mark: '?' | '~' | '%'): string =>
    `${of.map((part) => parts[part]).join(' and ')} ${doubts[mark]}`,
  and: ' and ',
  or: ' or ',
  between: (from: string, to: string): string => `between ${from} and ${to}`,
  fromTo: (from: string, to: string): string => `${from} to ${to}`,
  by: (date: string): string => `by ${date}`,
  orEarlier: (date: string): string => `${date} or earlier`,
  orLater: (date: string): string => `${date} or later`,
  /** A date of the Julian calendar, with what it is by the Gregorian where that is one day or a run of days. */
  oldStyle: (date: string, gregorian?: string): string =>
    gregorian === undefined ? `${date} (Old Style)` : `${date} (Old Style; ${gregorian} New Style)`,
  newStyle: (span: string): string => `${span} (New Style)`,
  /** A date with the word that puts something at it: “on 2 May 1864”, “in 1864”, “about 1840”. */
  at: (date: string): string =>
    /^\d{1,2} [A-Z]/.test(date)
      ? `on ${date}`
      : /^(?:[A-Z\d]|the |spring|summer|autumn|winter)/.test(date)
        ? `in ${date}`
        : date,
  /** A birth known to the day. */
  on: (date: string): string => `on ${date}`,
  notKnown: 'not known',
  allYears: 'all years',
  upTo: (date: string): string => `to ${date}`,
  onward: (date: string): string => `${date} onward`,
  /** A year that is not sure, in the years of a life. */
  aboutYear: (year: string): string => `about ${year}`,
  born: (year: string): string => `born ${year}`,
  died: (year: string): string => `died ${year}`,
};
