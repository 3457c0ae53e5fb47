/**
 * Dates as the content contract has them: EDTF, ISO 8601-2 (levels 0–2), reduced to the first and last day they may
 * mean, and days of the Julian calendar after the word `julian`. Days are whole numbers counted from 1970-01-01.
 *
 * The grammar of a date is the `edtf` library's. Sets, spans, seasons, years beyond four digits and significant digits
 * are taken apart here, where the library's bounds are not the standard's: it takes the end of a set from the first
 * day of its last member, and passes over `S`. Source: Library of Congress, Extended Date/Time Format (EDTF)
 * Specification, 4 February 2019.
 */
import edtf from 'edtf';
import { dateAdvice } from './date-advice.ts';
import { dayNumber, lastDayOfMonth } from './days.ts';
import { intervalParts, isJulian, julianDate } from './julian-date.ts';
import { partOfYear } from './parts-of-year.ts';

/** The first and last day a date may mean; `null` where it is open or unknown on that side. */
export interface DaySpan {
  first: number | null;
  last: number | null;
}

/** Longer text is no date, whatever it says; a set may list many. */
const longest = { date: 80, set: 2000 };

/** Years are counted this far either way; beyond lies nothing that people have dated. */
const farthestYear = 1e12;

const spans = new Map<string, DaySpan | string>();

/** The days a date may mean. Throws a RangeError with a sentence for text that is not a date. */
export function daySpan(date: string): DaySpan {
  const span = read(date);
  if (typeof span === 'string') throw new RangeError(span);
  return span;
}

/** What is wrong with a date, in one sentence, or `undefined` if it is EDTF or a day after the word `julian`. */
export function edtfProblem(date: string): string | undefined {
  const span = read(date);
  return typeof span === 'string' ? span : undefined;
}

function read(date: string): DaySpan | string {
  if (date.length > longest.set) return tooLong;
  let span = spans.get(date);
  if (span === undefined) {
    span = plain(date) ?? whole(date.trim());
    spans.set(date, span);
  }
  return span;
}

const tooLong =
  'This is too long to be a date; write it in EDTF, such as 1871-04-11, and put the rest in a note.';

/** Year, year-month and day are most of what authors write; they need no grammar. */
function plain(date: string): DaySpan | undefined {
  const parts = /^(\d{4})(?:-(\d\d)(?:-(\d\d))?)?$/.exec(date);
  if (!parts) return undefined;
  const year = Number(parts[1]);
  if (parts[2] === undefined) return { first: dayNumber(year, 1, 1), last: dayNumber(year, 12, 31) };
  const month = Number(parts[2]);
  if (month < 1 || month > 12) return undefined;
  if (parts[3] === undefined)
    return { first: dayNumber(year, month, 1), last: dayNumber(year, month, lastDayOfMonth(year, month)) };
  const day = Number(parts[3]);
  if (day < 1 || day > lastDayOfMonth(year, month)) return undefined;
  return { first: dayNumber(year, month, day), last: dayNumber(year, month, day) };
}

function whole(text: string): DaySpan | string {
  if (text === '..' || text === '../..') return { first: null, last: null };
  const set = /^(?:\[(.*)\]|\{(.*)\})$/s.exec(text);
  if (set) return ofSet(text, (set[1] ?? set[2])!);
  if (text.length > longest.date) return tooLong;
  const interval = intervalParts(text);
  return interval ? ofInterval(text, ...interval) : single(text, text);
}

function ofInterval(text: string, from: string, to: string): DaySpan | string {
  const open = (side: string) => side === '' || side === '..';
  if (from === '' && to === '') return 'A slash alone says nothing; write .. for an unknown date.';
  if (/^julian \d{4}\/\d{1,4}$/.test(text)) return single(text, text);
  if (!open(from) && !open(to) && isJulian(from) !== isJulian(to))
    return `“${text}” has a calendar before one of its dates only; write the word julian before both, or reckon both by the Gregorian calendar.`;
  const first = open(from) ? { first: null, last: null } : single(from, text);
  if (typeof first === 'string') return first;
  const last = open(to) ? { first: null, last: null } : single(to, text);
  if (typeof last === 'string') return last;
  if (endsBefore(from, first, to, last))
    return `“${text}” ends before it begins; write the earlier date first.`;
  return { first: first.first, last: last.last };
}

function endsBefore(from: string, first: DaySpan, to: string, last: DaySpan): boolean {
  if (first.first === null || last.last === null) return false;
  // Seasons of one year are told apart by their numbers, since winter is at either end of it.
  const season = /^(\d{4})-(\d\d)/;
  const [, year, part] = season.exec(from) ?? [];
  const [, other, end] = season.exec(to) ?? [];
  if (year !== undefined && year === other && Number(part) > 12 && Number(end) > 12)
    return Number(part) > Number(end);
  return first.first > last.last;
}

/** One of several dates, or all of them: from the first day of any to the last day of any. */
function ofSet(text: string, inside: string): DaySpan | string {
  if (/\s/.test(inside) && !inside.includes('julian '))
    return `“${shown(text)}” has a space in it; a set is written without, such as [1667,1668].`;
  const members = inside.split(',');
  let first: number | null = Infinity;
  let last: number | null = -Infinity;
  for (const [i, member] of members.entries()) {
    if (member.length > longest.date) return tooLong;
    const dots = member.indexOf('..');
    const from = dots < 0 ? member : member.slice(0, dots);
    const to = dots < 0 ? member : member.slice(dots + 2);
    if ((from === '' && i > 0) || (to === '' && i < members.length - 1) || (from === '' && to === ''))
      return `“${shown(text)}” is not a set in EDTF; list its dates with commas, such as [1667,1668] or [1670..1672].`;
    const begin = from === '' ? null : single(from, shown(text));
    if (typeof begin === 'string') return begin;
    const end = to === '' ? null : single(to, shown(text));
    if (typeof end === 'string') return end;
    if (begin && end && begin.first !== null && end.last !== null && begin.first > end.last)
      return `“${member}” ends before it begins; write the earlier date first.`;
    first = begin === null || begin.first === null || first === null ? null : Math.min(first, begin.first);
    last = end === null || end.last === null || last === null ? null : Math.max(last, end.last);
  }
  return { first, last };
}

function shown(text: string): string {
  return text.length > longest.date ? `${text.slice(0, longest.date)}…` : text;
}

/** A date that is no set and no span. `whole` is what the author wrote, for the message. */
function single(text: string, whole: string): DaySpan | string {
  if (isJulian(text)) {
    const date = julianDate(text);
    return typeof date === 'string' ? date : { first: date.first, last: date.last };
  }
  const easy = plain(text);
  if (easy) return easy;
  const impossible = impossibleDay(text);
  if (impossible) return impossible;
  const short = /^[?~%]?(-?)(\d{1,3})[?~%]?$/.exec(text);
  if (short) return whole === text ? tooFewDigits(text, short[1]!, short[2]!) : dateAdvice(whole);
  // The library takes a long number for the seconds of a clock.
  if (/^-?\d{5,}$/.test(text) || text === '') return dateAdvice(whole);
  const part = partOfYear(text);
  if (part) return part;
  try {
    const parsed = edtf(text);
    return farYear(text) ?? leapDays(text) ?? ofDay(text) ?? bounds(parsed);
  } catch {
    return dateAdvice(whole);
  }
}

function bounds(parsed: { min?: number | null; max?: number | null }): DaySpan {
  return { first: toDay(parsed.min), last: toDay(parsed.max) };
}

function toDay(milliseconds: number | null | undefined): number | null {
  return milliseconds === undefined || milliseconds === null || !Number.isFinite(milliseconds)
    ? null
    : Math.floor(milliseconds / 86_400_000);
}

/** A time of day is read and passed over: the day is the one the record names, in whatever zone. */
function ofDay(text: string): DaySpan | undefined {
  const at = text.indexOf('T');
  return at < 0 ? undefined : plain(text.slice(0, at));
}

/** Years after the letter Y, and years of which only some digits are significant. */
function farYear(text: string): DaySpan | string | undefined {
  const parts = /^Y(-?)(\d+)(?:E(\d+))?(?:S(\d+))?$/.exec(text) ?? /^(-?)(\d{4})()S(\d+)$/.exec(text);
  if (!parts) return undefined;
  const year = Number(parts[2]) * 10 ** Number(parts[3] || 0);
  if (!(year <= farthestYear)) return `“${text}” is a year beyond all reckoning.`;
  const unit = parts[4] === undefined ? 1 : 10 ** Math.max(0, String(year).length - Number(parts[4]));
  const least = Math.floor(year / unit) * unit;
  const [from, to] = parts[1] === '-' ? [-(least + unit - 1), -least] : [least, least + unit - 1];
  return { first: dayNumber(from, 1, 1), last: dayNumber(to, 12, 31) };
}

/** 29 February of a year with unknown digits is in the first and the last leap year it may be. */
function leapDays(text: string): DaySpan | string | undefined {
  const year = /^[?~%]?([\dX]{4})[?~%]?-[?~%]?02[?~%]?-[?~%]?29[?~%]?$/.exec(text)?.[1];
  if (!year?.includes('X')) return undefined;
  const unknown = new RegExp(`^${year.replaceAll('X', '\\d')}$`);
  const leap = (y: number) => lastDayOfMonth(y, 2) === 29 && unknown.test(String(y).padStart(4, '0'));
  let from = Number(year.replaceAll('X', '0'));
  let to = Number(year.replaceAll('X', '9'));
  while (from <= to && !leap(from)) from += 1;
  while (to >= from && !leap(to)) to -= 1;
  return from > to
    ? `“${text}” has no such day; none of those years is a leap year.`
    : { first: dayNumber(from, 2, 29), last: dayNumber(to, 2, 29) };
}

/** The library rolls 30 February over into March; a record that says so has been misread. */
function impossibleDay(text: string): string | undefined {
  for (const [found, year, month, day] of text.matchAll(/(?<![\dX-])(\d{4})-(\d\d)(?:-(\d\d))?(?![\dX])/g)) {
    const m = Number(month);
    if (m >= 21 && m <= 41 && day === undefined) continue; // seasons and quarters
    if (m < 1 || m > 12) return `“${found}” has no such month; months run from 01 to 12.`;
    if (day !== undefined && (Number(day) < 1 || Number(day) > lastDayOfMonth(Number(year), m)))
      return `“${found}” has no such day; that month has ${lastDayOfMonth(Number(year), m)} days.`;
  }
  return undefined;
}

function tooFewDigits(text: string, sign: string, digits: string): string {
  const year = `${sign}${digits.padStart(4, '0')}`;
  const run = sign === '' && digits.length > 1 ? `${digits.padEnd(4, 'X')} for those years or ` : '';
  return `“${text}” has too few digits for a year; write ${run}${year} for the year itself.`;
}
