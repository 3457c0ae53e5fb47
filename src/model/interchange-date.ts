/**
 * Dates of GEDCOM 7.0 and 5.5.1 as EDTF, and EDTF as dates of GEDCOM 7.0.
 *
 * Source: the date grammar of GEDCOM 7.0, with the escapes, the phrases and the double years of 5.5.1. `BEF`, `AFT` and
 * `BET … AND` tell of one day that is not known, and so become sets; `FROM … TO` tells of what lasted, and becomes an
 * interval. `ABT`, `CAL` and `EST` all become `~`. The Julian calendar has its word in the content contract; days of the
 * Hebrew and the Republican calendar are reckoned over. What EDTF can't say is given back as words.
 */
import { dayNumber, isoDay, lastDayOfMonth } from './days.ts';
import { daySpan, edtfProblem } from './edtf.ts';
import { intervalParts, isJulian, julianDate } from './julian-date.ts';
import { julianDayNumber } from './julian.ts';
import { frenchDays, frenchMonths, hebrewDays, hebrewMonths } from './other-calendars.ts';

/** What a date of GEDCOM says. */
export interface SaidDate {
  /** As EDTF; absent where EDTF can’t say it. */
  date?: string;
  /** Words to keep: a phrase, or the whole date as written where EDTF says it otherwise or not at all. */
  words?: string;
}

const months = ['JAN', 'FEB', 'MAR', 'APR', 'MAY', 'JUN', 'JUL', 'AUG', 'SEP', 'OCT', 'NOV', 'DEC'];

interface Single {
  calendar: 'GREGORIAN' | 'JULIAN' | 'FRENCH_R' | 'HEBREW';
  /** Astronomical in the Gregorian and Julian calendars: 0 is 1 BC. */
  year: number;
  month?: number;
  day?: number;
  /** The second of two years, as written: `1648/49`. */
  double?: string;
}

/** Reads the payload of a `DATE` and the `PHRASE` beside it. */
export function readInterchangeDate(payload: string, phrase?: string): SaidDate {
  const text = payload.replace(/\s+/g, ' ').trim();
  const beside = phrase?.trim() || undefined;
  if (text.length > 400) return { words: joined(text, beside) };
  const said = /^(?:INT (.*?) )?\((.*?)\)?$/i.exec(text);
  if (said) {
    const words = joined(said[2]!.trim(), beside);
    return said[1] === undefined ? kept(undefined, words) : kept(readWhole(said[1]!).date, words);
  }
  // A phrase that is EDTF itself says more exactly what the payload says; so dates of the contract come back whole.
  if (
    beside !== undefined &&
    beside.length < 100 &&
    edtfProblem(beside) === undefined &&
    writeInterchangeDate(beside).payload === text
  )
    return { date: beside };
  if (text === '') return kept(undefined, beside);
  const read = readWhole(text);
  return read.date === undefined || read.inWordsToo
    ? kept(read.date, joined(text, beside))
    : kept(read.date, beside);
}

function kept(date: string | undefined, words: string | undefined): SaidDate {
  return {
    ...(date === undefined ? {} : { date }),
    ...(words === undefined || words === '' ? {} : { words }),
  };
}

function joined(text: string, phrase: string | undefined): string {
  return phrase === undefined || phrase === text ? text : `${text} (${phrase})`;
}

interface Read {
  date?: string | undefined;
  /** The date says a little less than what was written, or says it by another calendar. */
  inWordsToo?: boolean;
}

const before = 'BEF|BEFORE|BEF\\.|BY';
const after = 'AFT|AFTER|SINCE';
const about = 'ABT|ABOUT|CIRCA|CIR|CA|C|CAL|CALC|CALCULATED|EST|ESTIMATED|APPROX';

const forms: readonly [RegExp, (...parts: Single[]) => Read][] = [
  [/^FROM (.+) TO (.+)$/, (a, b) => lasting(a, b)],
  [/^FROM (.+)$/, (a) => lasting(a, undefined)],
  [/^TO (.+)$/, (a) => lasting(undefined, a)],
  [/^(?:BET|BETWEEN|BTW) (.+?) (?:AND|&) (.+)$/, (a, b) => between(a, b)],
  [new RegExp(`^(?:${before}) (.+)$`), (a) => between(undefined, a)],
  [new RegExp(`^(?:${after}) (.+)$`), (a) => between(a, undefined)],
  [new RegExp(`^(?:${about}) (.+)$`), (a) => approximate(a)],
  [/^(.+)$/, (a) => alone(a)],
];

function readWhole(written: string): Read {
  const text = written
    .replace(/@#D([A-Z_ ]+)@/gi, (_, calendar: string) => ` ${calendar.trim().replace(/ /g, '_')} `)
    .toUpperCase()
    .replace(/(?<=[A-Z])\.(?=\s|$|\d)|(?<=\bB)\.(?=C)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  for (const [form, make] of forms) {
    const parts = form.exec(text);
    if (!parts) continue;
    const singles = parts.slice(1).map(readSingle);
    if (singles.includes(undefined)) continue;
    const read = make(...(singles as Single[]));
    return read.date === undefined || edtfProblem(read.date) !== undefined ? {} : read;
  }
  return {};
}

function readSingle(text: string): Single | undefined {
  const iso = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  if (iso)
    return real({ calendar: 'GREGORIAN', year: Number(iso[1]), month: Number(iso[2]), day: Number(iso[3]) });
  const parts =
    /^(?:(GREGORIAN|JULIAN|FRENCH_R|HEBREW) )?(?:(?:(\d{1,2}) )?([A-Z]{3,9}) )?(\d{1,7})(?:\/(\d{1,4}))?( BCE| B ?C)?$/.exec(
      text,
    );
  if (!parts) return undefined;
  const calendar = (parts[1] ?? 'GREGORIAN') as Single['calendar'];
  const names = calendar === 'FRENCH_R' ? frenchMonths : calendar === 'HEBREW' ? hebrewMonths : months;
  const named = parts[3];
  const month =
    named === undefined
      ? undefined
      : monthOf(named, names, calendar === 'GREGORIAN' || calendar === 'JULIAN');
  if (named !== undefined && month === undefined) return undefined;
  const number = Number(parts[4]);
  if (number === 0) return undefined;
  const bce = parts[6] !== undefined;
  if (bce && (calendar === 'FRENCH_R' || calendar === 'HEBREW')) return undefined;
  return real({
    calendar,
    year: bce ? 1 - number : number,
    ...(month === undefined ? {} : { month }),
    ...(parts[2] === undefined ? {} : { day: Number(parts[2]) }),
    ...(parts[5] === undefined ? {} : { double: parts[5] }),
  });
}

const wholeMonths = [
  'JANUARY',
  'FEBRUARY',
  'MARCH',
  'APRIL',
  'MAY',
  'JUNE',
  'JULY',
  'AUGUST',
  'SEPTEMBER',
  'OCTOBER',
  'NOVEMBER',
  'DECEMBER',
];

function monthOf(name: string, names: readonly string[], spelledOut: boolean): number | undefined {
  const at = names.indexOf(name);
  if (at >= 0) return at + 1;
  const whole = spelledOut
    ? wholeMonths.findIndex((month) => month === name || (name === 'SEPT' && month === 'SEPTEMBER'))
    : -1;
  return whole < 0 ? undefined : whole + 1;
}

/** A date whose day its month has. */
function real(date: Single): Single | undefined {
  const { calendar, year, month, day, double } = date;
  if (double !== undefined && (calendar === 'FRENCH_R' || calendar === 'HEBREW' || year < 1))
    return undefined;
  if (double !== undefined && (double.length === 3 || Number(double) !== (year + 1) % 10 ** double.length))
    return undefined;
  if (calendar === 'FRENCH_R') return frenchDays(year, month, day) && date;
  if (calendar === 'HEBREW') return hebrewDays(year, month, day) && date;
  if (month !== undefined && (month < 1 || month > 12)) return undefined;
  if (month === undefined || day === undefined) return date;
  const own = double === undefined ? year : year + 1;
  const last =
    calendar === 'GREGORIAN' && double === undefined
      ? lastDayOfMonth(own, month)
      : month === 2
        ? own % 4 === 0
          ? 29
          : 28
        : lastDayOfMonth(own, month);
  return day >= 1 && day <= last ? date : undefined;
}

/** Whether EDTF can say the date in its own calendar, and how. */
function plain(date: Single): string | undefined {
  const { calendar, year, month, day, double } = date;
  if (calendar === 'FRENCH_R' || calendar === 'HEBREW') return undefined;
  const rest = `${month === undefined ? '' : `-${two(month)}`}${day === undefined ? '' : `-${two(day)}`}`;
  if (double !== undefined) {
    // A double year belongs to the months in which the two reckonings differed; elsewhere it is a span of two years.
    const doubtful = month !== undefined && (month < 3 || (month === 3 && (day === undefined || day < 25)));
    if (doubtful) return year > 9998 ? undefined : `julian ${four(year)}/${double}${rest}`;
    return undefined;
  }
  if (calendar === 'JULIAN') return year < 0 || year > 9999 ? undefined : `julian ${four(year)}${rest}`;
  if (year > 9999) return month === undefined ? `Y${year}` : undefined;
  if (year < -9999) return month === undefined ? `Y${year}` : undefined;
  return `${year < 0 ? '-' : ''}${four(Math.abs(year))}${rest}`;
}

/** First and last day a date may mean. */
function bounds(date: Single): readonly [number, number] {
  const { calendar, year, month, day } = date;
  if (calendar === 'FRENCH_R') return frenchDays(year, month, day)!;
  if (calendar === 'HEBREW') return hebrewDays(year, month, day)!;
  const own = date.double === undefined ? year : year + 1;
  const number = calendar === 'JULIAN' || date.double !== undefined ? julianDayNumber : dayNumber;
  const length = (m: number) =>
    number === julianDayNumber && m === 2 ? (own % 4 === 0 ? 29 : 28) : lastDayOfMonth(own, m);
  return [number(own, month ?? 1, day ?? 1), number(own, month ?? 12, day ?? length(month ?? 12))];
}

/** A date by the Gregorian calendar, to the day, where its own calendar can’t be written. */
function reckoned(date: Single): string | undefined {
  const [first, last] = bounds(date);
  return first === last ? isoDay(first) : undefined;
}

function alone(date: Single): Read {
  const own = plain(date);
  if (own !== undefined) return { date: own };
  if (date.double !== undefined) {
    if (date.month === undefined)
      return { date: `[${four(date.year)},${four(date.year + 1)}]`, inWordsToo: true };
    return {};
  }
  const [first, last] = bounds(date);
  return { date: first === last ? isoDay(first) : `[${isoDay(first)}..${isoDay(last)}]`, inWordsToo: true };
}

function approximate(date: Single): Read {
  const own = plain(date);
  if (own !== undefined && !own.startsWith('Y')) return { date: `${own}~` };
  const day = reckoned(date);
  return day === undefined ? {} : { date: `${day}~`, inWordsToo: true };
}

/** Both ends in one calendar that EDTF or the contract can write; days of others are reckoned over. */
function ends(
  a: Single | undefined,
  b: Single | undefined,
): { from: string | undefined; to: string | undefined; over: boolean } | undefined {
  const own = [a, b].map((date) => date && plain(date));
  const fits = [a, b].every((date, i) => date === undefined || own[i] !== undefined);
  const mixed = own[0] !== undefined && own[1] !== undefined && isJulian(own[0]) !== isJulian(own[1]);
  if (fits && !mixed) return { from: own[0], to: own[1], over: false };
  const from = a && (isGregorian(a) ? own[0] : isoDay(bounds(a)[0]));
  const to = b && (isGregorian(b) ? own[1] : isoDay(bounds(b)[1]));
  return (a && from === undefined) || (b && to === undefined) ? undefined : { from, to, over: true };
}

function isGregorian(date: Single): boolean {
  return date.calendar === 'GREGORIAN' && date.double === undefined;
}

function lasting(a: Single | undefined, b: Single | undefined): Read {
  const both = ends(a, b);
  if (!both) return {};
  return { date: `${both.from ?? '..'}/${both.to ?? '..'}`, inWordsToo: both.over };
}

function between(a: Single | undefined, b: Single | undefined): Read {
  // Two dates in the wrong order are one slip of the pen (GEDCOM 7.0 wants the earlier first).
  const turned = a && b && bounds(a)[0] > bounds(b)[0];
  const both = turned ? ends(b, a) : ends(a, b);
  if (!both) return {};
  return { date: `[${both.from ?? ''}..${both.to ?? ''}]`, inWordsToo: both.over || turned === true };
}

function two(n: number): string {
  return String(n).padStart(2, '0');
}

function four(n: number): string {
  return String(n).padStart(4, '0');
}

/** A date of GEDCOM 7.0. */
export interface InterchangeDate {
  /** The payload of `DATE`; empty where only the phrase says it. */
  payload: string;
  /** What the payload says less exactly. */
  phrase?: string;
}

/** An EDTF date of the content contract as GEDCOM 7.0 says it; with a phrase where that is less or something else. */
export function writeInterchangeDate(edtf: string): InterchangeDate {
  const text = edtf.trim();
  const payload = exactly(text);
  if (payload !== undefined && readWhole(payload).date === text) return { payload };
  return { payload: payload ?? byDays(text), phrase: text };
}

function exactly(text: string): string | undefined {
  const set = /^\[([^,]*)\]$/.exec(text)?.[1];
  if (set !== undefined && set.includes('..')) {
    const [from = '', to = ''] = set.split('..');
    const [a, b] = [from && one(from), to && one(to)];
    if (a === undefined || b === undefined) return undefined;
    return a && b ? `BET ${a} AND ${b}` : a ? `AFT ${a}` : `BEF ${b}`;
  }
  const sides = intervalParts(text);
  if (sides) {
    const [a, b] = sides.map((side) => (side === '' || side === '..' ? '' : one(side)));
    if (a === undefined || b === undefined || (a === '' && b === '')) return undefined;
    return a && b ? `FROM ${a} TO ${b}` : a ? `FROM ${a}` : `TO ${b}`;
  }
  const marked = /^(.*?)([?~%])?$/.exec(text)!;
  const date = one(marked[1]!);
  return date === undefined ? undefined : marked[2] === undefined || marked[2] === '?' ? date : `ABT ${date}`;
}

/** One date without a mark. */
function one(text: string): string | undefined {
  if (isJulian(text)) {
    const date = julianDate(text);
    if (typeof date === 'string' || date.mark !== '' || date.year < 1) return undefined;
    return `JULIAN ${dayMonth(date.month, date.day)}${date.year}`;
  }
  const parts = /^(-?)(\d{4})(?:-(\d\d)(?:-(\d\d))?)?$/.exec(text) ?? /^Y(-?)(\d{5,7})()()$/.exec(text);
  if (!parts) return undefined;
  const month = parts[3] ? Number(parts[3]) : undefined;
  if (month !== undefined && month > 12) return undefined;
  const year = Number(parts[2]);
  const own = parts[1] === '-' || year === 0 ? `${year + 1} BCE` : String(year);
  return `${dayMonth(month, parts[4] ? Number(parts[4]) : undefined)}${own}`;
}

function dayMonth(month: number | undefined, day: number | undefined): string {
  return month === undefined ? '' : `${day === undefined ? '' : `${day} `}${months[month - 1]} `;
}

/** The days between which an unusual date lies. */
function byDays(text: string): string {
  if (edtfProblem(text) !== undefined) return '';
  const { first, last } = daySpan(text);
  const [a, b] = [first, last].map((day) => (day === null ? '' : (one(isoDay(day)) ?? '')));
  if (a && b) return a === b ? a : `BET ${a} AND ${b}`;
  return a ? `AFT ${a}` : b ? `BEF ${b}` : '';
}
