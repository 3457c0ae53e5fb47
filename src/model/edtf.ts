/**
 * Dates as the content contract has them: EDTF, ISO 8601-2 (levels 0–2), read with the `edtf` library and
 * reduced to the first and last day they may mean. Days are whole numbers counted from 1970-01-01.
 */
import edtf from 'edtf';
import { dayNumber, lastDayOfMonth } from './days.ts';

/** The first and last day a date may mean; `null` where it is open or unknown on that side. */
export interface DaySpan {
  first: number | null;
  last: number | null;
}

const spans = new Map<string, DaySpan | string>();

/** The days a date may mean. Throws a RangeError with a sentence for text that is not EDTF. */
export function daySpan(date: string): DaySpan {
  const span = read(date);
  if (typeof span === 'string') throw new RangeError(span);
  return span;
}

/** What is wrong with a date, in one sentence, or `undefined` if it is EDTF. */
export function edtfProblem(date: string): string | undefined {
  const span = read(date);
  return typeof span === 'string' ? span : undefined;
}

function read(date: string): DaySpan | string {
  let span = spans.get(date);
  if (span === undefined) {
    span = plain(date) ?? viaLibrary(date);
    spans.set(date, span);
  }
  return span;
}

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

function viaLibrary(date: string): DaySpan | string {
  const text = date.trim();
  const impossible = impossibleDay(text);
  if (impossible) return impossible;
  if (text === '..' || text === '../..') return { first: null, last: null };
  if (text.length > 80)
    return 'This is too long to be a date; write it in EDTF, such as 1871-04-11, and put the rest in a note.';
  try {
    const parsed = edtf(text) as { min?: number | null; max?: number | null };
    return { first: toDay(parsed.min), last: toDay(parsed.max) };
  } catch {
    return explain(text);
  }
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

function toDay(milliseconds: number | null | undefined): number | null {
  return milliseconds === undefined || milliseconds === null || !Number.isFinite(milliseconds)
    ? null
    : Math.floor(milliseconds / 86_400_000);
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

function explain(date: string): string {
  const suggestion = suggest(date);
  const start = `“${date}” is not a date in EDTF`;
  return suggestion
    ? `${start}; write ${suggestion}.`
    : `${start}; write year-month-day, such as 1871-04-11, or less of it, 1840~ for about 1840, 1838/1842 for between, or .. for unknown.`;
}

function suggest(date: string): string | undefined {
  const text = date.toLowerCase();
  const pad = (n: string | number) => String(n).padStart(2, '0');
  let m = /^(\d{1,2})(?:st|nd|rd|th)?[ .-]+([a-z]{3})[a-z]*\.?,?[ -]+(\d{4})$/.exec(text);
  if (m && months.includes(m[2]!)) return `${m[3]}-${pad(months.indexOf(m[2]!) + 1)}-${pad(m[1]!)}`;
  m = /^([a-z]{3})[a-z]*\.? +(\d{1,2})(?:st|nd|rd|th)?,? +(\d{4})$/.exec(text);
  if (m && months.includes(m[1]!)) return `${m[3]}-${pad(months.indexOf(m[1]!) + 1)}-${pad(m[2]!)}`;
  m = /^([a-z]{3})[a-z]*\.?,? +(\d{4})$/.exec(text);
  if (m && months.includes(m[1]!)) return `${m[2]}-${pad(months.indexOf(m[1]!) + 1)}`;
  m = /^(?:about|abt|circa|ca|c)\.? *(\d{4})$/.exec(text);
  if (m) return `${m[1]}~`;
  m = /^(?:before|bef|by)\.? *(\d{4})$/.exec(text);
  if (m) return `../${m[1]}`;
  m = /^(?:after|aft)\.? *(\d{4})$/.exec(text);
  if (m) return `${m[1]}/..`;
  m = /^(?:between +)?(\d{4}) *(?:-|–|and|to) *(\d{4})$/.exec(text);
  if (m) return `${m[1]}/${m[2]}`;
  m = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  if (m && Number(m[2]) <= 12 && Number(m[3]) <= 31 && (m[2]!.length === 1 || m[3]!.length === 1))
    return `${m[1]}-${pad(m[2]!)}-${pad(m[3]!)}`;
  return undefined;
}
