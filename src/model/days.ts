/** Days of the (proleptic) Gregorian calendar as whole numbers counted from 1970-01-01. No clock, no time zone. */

/** The number of a day; months from 1. */
export function dayNumber(year: number, month: number, day: number): number {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  return Math.round(date.getTime() / 86_400_000);
}

/** The last day of a month: 28 to 31. */
export function lastDayOfMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Year, month and day of a day number. */
export function civil(day: number): { year: number; month: number; day: number } {
  const date = new Date(day * 86_400_000);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
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
