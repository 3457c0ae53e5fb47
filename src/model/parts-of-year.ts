/**
 * Seasons, quarters and other parts of a year, ISO 8601-2 section 4.8: `1866-33` is the first quarter of 1866. The
 * numbers 21 to 24 are seasons “independent of location”, so the days are those that any northern reckoning counts
 * to them, by the calendar, the sun or the farming year (*common practice*); the winter of a year may be the one that
 * ends in it or the one that begins in it.
 */
import { dayNumber, lastDayOfMonth } from './days.ts';

type MonthDay = readonly [month: number, day: number];

const spring: readonly [MonthDay, MonthDay] = [
  [2, 1],
  [6, 21],
];
const summer: readonly [MonthDay, MonthDay] = [
  [5, 1],
  [9, 23],
];
const autumn: readonly [MonthDay, MonthDay] = [
  [8, 1],
  [12, 22],
];
/** The second day is in the year after. */
const acrossNewYear: readonly [MonthDay, MonthDay] = [
  [1, 1],
  [15, 21],
];

const seasons = new Map([
  [21, spring],
  [22, summer],
  [23, autumn],
  [24, acrossNewYear],
  [25, spring],
  [26, summer],
  [27, autumn],
  [28, acrossNewYear],
  [29, autumn],
  [30, acrossNewYear],
  [31, spring],
  [32, summer],
]);

/** Which months of the year the other parts are, the first and the last. */
const months = new Map<number, readonly [number, number]>([
  [33, [1, 3]],
  [34, [4, 6]],
  [35, [7, 9]],
  [36, [10, 12]],
  [37, [1, 4]],
  [38, [5, 8]],
  [39, [9, 12]],
  [40, [1, 6]],
  [41, [7, 12]],
]);

/** The days of `year-21` to `year-41`, with or without a mark of doubt; `undefined` for any other text. */
export function partOfYear(text: string): { first: number; last: number } | undefined {
  const parts = /^[?~%]?(-?\d{4})-(\d\d)[?~%]?$/.exec(text);
  if (!parts || parts[1] === '-0000') return undefined;
  const year = Number(parts[1]);
  const season = seasons.get(Number(parts[2]));
  if (season) {
    const [[m1, d1], [m2, d2]] = season;
    return {
      first: dayNumber(year, m1, d1),
      last: m2 > 12 ? dayNumber(year + 1, m2 - 12, d2) : dayNumber(year, m2, d2),
    };
  }
  const range = months.get(Number(parts[2]));
  return (
    range && {
      first: dayNumber(year, range[0], 1),
      last: dayNumber(year, range[1], lastDayOfMonth(year, range[1])),
    }
  );
}
