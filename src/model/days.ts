/** Days of the (proleptic) Gregorian calendar as whole numbers counted from 1970-01-01. No clock, no time zone. */

/** Days before 1 March of year 0 in this count, and the days of 400 Gregorian years. */
const marchOfYear0 = -719_468;
const fourCenturies = 146_097;

/**
 * The number of a day; months from 1, years astronomical (0 is 1 BC). A day past the end of its month is counted on
 * into the next, as 30 February is 1 or 2 March.
 */
export function dayNumber(year: number, month: number, day: number): number {
  // With the year begun in March the leap day comes last, and each month begins at a fixed distance.
  const fromMarch = month > 2 ? month - 3 : month + 9;
  const y = month > 2 ? year : year - 1;
  const leapDays = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return marchOfYear0 + 365 * y + leapDays + Math.floor((153 * fromMarch + 2) / 5) + day - 1;
}

/** The last day of a month: 28 to 31. */
export function lastDayOfMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Year, month and day of a day number. */
export function civil(day: number): { year: number; month: number; day: number } {
  const cycle = Math.floor((day - marchOfYear0) / fourCenturies);
  const inCycle = day - marchOfYear0 - cycle * fourCenturies;
  const yearOfCycle = Math.floor(
    (inCycle - Math.floor(inCycle / 1460) + Math.floor(inCycle / 36_524) - Math.floor(inCycle / 146_096)) /
      365,
  );
  const inYear = inCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return {
    year: cycle * 400 + yearOfCycle + (month <= 2 ? 1 : 0),
    month,
    day: inYear - Math.floor((153 * fromMarch + 2) / 5) + 1,
  };
}

/** A day as `YYYY-MM-DD`. */
export function isoDay(day: number): string {
  const { year, month, day: d } = civil(day);
  const sign = year < 0 ? '-' : '';
  return `${sign}${String(Math.abs(year)).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(d).padStart(2, '0')}`;
}

/** The same day some years on or back; 29 February becomes 28 in common years. */
export function addYears(day: number, years: number): number {
  const date = civil(day);
  const year = date.year + years;
  return dayNumber(year, date.month, Math.min(date.day, lastDayOfMonth(year, date.month)));
}

/** The same day of the month some months on or back, or the month's last day where it has no such day. */
export function addMonths(day: number, months: number): number {
  const date = civil(day);
  const index = date.year * 12 + (date.month - 1) + months;
  const year = Math.floor(index / 12);
  const month = index - year * 12 + 1;
  return dayNumber(year, month, Math.min(date.day, lastDayOfMonth(year, month)));
}
