/**
 * EDTF dates (ISO 8601-2, levels 0 to 2) in the words of a language: “11 April 1871”, “omkring 1840”, “1838 to 1842”.
 * A set shows every member; the day stands before the month. A day of the Julian calendar is said as the record has
 * it, with the day it is by the Gregorian: “30 January 1648/9 (Old Style; 9 February 1649 New Style)”.
 */
import { civil } from '../model/days.ts';
import { intervalParts, isJulian, julianDate } from '../model/julian-date.ts';
import type { dates } from './en/dates.ts';

/** The words a language has for dates. */
export type DateWords = typeof dates;

/** First and last day of a birth, as ISO dates. */
export interface Span {
  earliest: string | null;
  latest: string | null;
}

/** A date in words. Text that is not EDTF comes back as it is. */
export function sayDate(date: string, words: DateWords): string {
  const text = date.trim();
  const between = /^\[([^,.]+)\.\.([^,.]+)\]$/.exec(text);
  if (between) return words.between(one(between[1]!.trim(), words), one(between[2]!.trim(), words));
  const set = /^([[{])(.*)[\]}]$/.exec(text);
  if (set)
    return listed(
      set[2]!.split(',').map((member) => range(member.trim(), words)),
      set[1] === '[' ? words.or : words.and,
    );
  if (text === '..' || text === '../..') return words.unknown;
  const parts = intervalParts(text);
  return parts ? interval(...parts, words) : one(text, words);
}

/**
 * The date of an event in words: `1838/1842` is “between 1838 and 1842”, where a citation, which may date a run of
 * papers, says “1838 to 1842”.
 */
export function sayEventDate(date: string, words: DateWords): string {
  let said = known.get(words);
  if (!said) known.set(words, (said = new Map()));
  let text = said.get(date);
  if (text === undefined) said.set(date, (text = eventDate(date, words)));
  return text;
}

/** The same few dates stand on many pages. */
const known = new WeakMap<DateWords, Map<string, string>>();

function eventDate(date: string, words: DateWords): string {
  const parts = intervalParts(date.trim());
  return parts && !parts.some((part) => part === '' || part === '..')
    ? words.between(sayDate(parts[0], words), sayDate(parts[1], words))
    : sayDate(date, words);
}

/** The date of an event with the word that puts something at it: “on 2 May 1864”, “in 1864”, “about 1840”. */
export function sayWhen(date: string, words: DateWords): string {
  return words.at(sayEventDate(date, words));
}

/** A stretch of years as a series or search has it: `1863/1865` is “1863–1865”, `1867/..` “1867 onward”. */
export function sayYears(from: string | undefined, to: string | undefined, words: DateWords): string {
  const open = (part: string | undefined) => part === undefined || part === '' || part === '..';
  if (open(from) && open(to)) return words.allYears;
  if (open(from)) return words.upTo(sayEventDate(to!, words));
  if (open(to)) return words.onward(sayEventDate(from!, words));
  const start = sayEventDate(from!, words);
  return from === to ? start : `${start}–${sayEventDate(to!, words)}`;
}

/** The years a search covered: `1863/1865` is “1863–1865”. */
export function sayCoverage(date: string, words: DateWords): string {
  const parts = intervalParts(date);
  return parts ? sayYears(...parts, words) : sayEventDate(date, words);
}

/** A birth span: “between 2 June 1839 and 11 April 1841”, “on 14 March 1818”, or “not known”. */
export function saySpan({ earliest, latest }: Span, words: DateWords): string {
  if (earliest === null) return latest === null ? words.notKnown : words.by(sayEventDate(latest, words));
  const from = sayEventDate(earliest, words);
  if (latest === null) return words.orLater(from);
  return earliest === latest ? words.on(from) : words.between(from, sayEventDate(latest, words));
}

/** Years of a life for a heading: “1840–1903”, “about 1840–1903”, “died 1903”, or nothing. */
export function sayLifeYears(born: string | undefined, died: string | undefined, words: DateWords): string {
  const short = (date: string | undefined) => {
    const year = yearOf(date);
    return year !== '' && /[~?%]/.test(date ?? '') ? words.aboutYear(year) : year;
  };
  const [from, to] = [short(born), short(died)];
  if (from && to) return `${from}–${to}`;
  if (from) return words.born(from);
  return to ? words.died(to) : '';
}

/** The year a date is best filed under, or an empty string. */
export function yearOf(date: string | undefined): string {
  if (date !== undefined && isJulian(date)) {
    const from = julianDate((intervalParts(date) ?? [date])[0]);
    if (typeof from !== 'string') return String(from.year).padStart(4, '0');
  }
  return (
    /(?<!\d)\d{4}(?!\d)/.exec(date ?? '')?.[0] ??
    /\d{2,3}X{1,2}/.exec(date ?? '')?.[0]?.replace(/X/g, '0') ??
    ''
  );
}

function interval(from: string, to: string, words: DateWords): string {
  if (from === '..') return to === '' ? words.unknown : words.by(one(to, words));
  if (to === '..') return from === '' ? words.unknown : words.orLater(one(from, words));
  const side = (date: string) => (date === '' ? words.someDate : one(date, words));
  return words.fromTo(side(from), side(to));
}

/** A member of a set: `1670..1672`, `..1760` or a date. */
function range(member: string, words: DateWords): string {
  const dots = member.indexOf('..');
  if (dots < 0) return one(member, words);
  const from = member.slice(0, dots);
  const to = member.slice(dots + 2);
  if (from === '') return words.orEarlier(one(to, words));
  return to === '' ? words.orLater(one(from, words)) : words.fromTo(one(from, words), one(to, words));
}

function listed(members: string[], last: string): string {
  return members.length < 2 ? members.join('') : `${members.slice(0, -1).join(', ')}${last}${members.at(-1)}`;
}

const partNames = ['year', 'month', 'day'] as const;
type Mark = keyof DateWords['sure'];
const marks: readonly Mark[] = ['?', '~', '%'];

function one(text: string, words: DateWords): string {
  if (isJulian(text)) return oldStyle(text, words);
  const date = text.split('T', 1)[0]!;
  const longYear = /^Y(-?\d+(?:E\d+)?)(?:S(\d+))?$/.exec(date) ?? /^(-?\d{4})S(\d+)$/.exec(date);
  if (longYear) {
    const said = yearIn(String(Number(longYear[1])), words);
    return longYear[2] ? words.significant(said, Number(longYear[2])) : said;
  }
  const match =
    /^([?~%]?)(-?[\dX]{2,4})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?))?)?$/.exec(
      date,
    );
  if (!match) return text;
  const [, yBefore, y, yAfter, mBefore, m, mAfter, dBefore, d, dAfter] = match;
  const given = partNames.slice(0, d ? 3 : m ? 2 : 1);
  // A mark after a part holds for it and all before it; a mark before a part for that part alone.
  const after = [yAfter, mAfter, dAfter];
  const before = [yBefore, mBefore, dBefore];
  const marked = given.map(
    (_, i) => (before[i] || after.slice(i, given.length).find((mark) => mark) || '') as Mark | '',
  );
  const said = calendar(y!, m, d, words);
  const [first] = marked;
  if (marked.every((mark) => mark === first)) return first ? words.sure[first](said) : said;
  const doubtful = marks
    .filter((mark) => marked.includes(mark))
    .map((mark) =>
      words.doubt(
        given.filter((_, i) => marked[i] === mark),
        mark,
      ),
    );
  return `${said} (${doubtful.join(', ')})`;
}

/** A day or month in both styles; a whole year lies in two of the other style, and is named in its own alone. */
function oldStyle(text: string, words: DateWords): string {
  const date = julianDate(text);
  if (typeof date === 'string') return text;
  const sure = (said: string) => (date.mark === '' ? said : words.sure[date.mark as Mark](said));
  if (date.month === undefined) return sure(words.oldStyle(date.written));
  const month = words.month(date.month);
  const from = civil(date.first);
  if (date.day !== undefined)
    return sure(
      words.oldStyle(words.ofYear(words.dayOfMonth(date.day, month), date.written), fullDay(from, words)),
    );
  const to = civil(date.last);
  const start =
    from.year === to.year ? words.dayOfMonth(from.day, words.month(from.month)) : fullDay(from, words);
  return sure(words.oldStyle(words.ofYear(month, date.written), words.fromTo(start, fullDay(to, words))));
}

function fullDay(
  { year, month, day }: { year: number; month: number; day: number },
  words: DateWords,
): string {
  return words.ofYear(words.dayOfMonth(day, words.month(month)), String(year));
}

function calendar(y: string, m: string | undefined, d: string | undefined, words: DateWords): string {
  const inYear = yearIn(y, words);
  if (m === undefined) return inYear;
  const unknownYear = /^-?X+$/.test(y);
  const season = words.season(Number(m), unknownYear ? words.someYear : inYear);
  if (season !== undefined) return season;

  const month = /^(?:0[1-9]|1[0-2])$/.test(m) ? words.month(Number(m)) : undefined;
  const ofYear = (said: string) =>
    unknownYear ? `${said}, ${words.yearUnknown}` : words.ofYear(said, inYear);
  if (d === undefined) {
    if (month !== undefined) return ofYear(month);
    return `${inYear}, ${m === 'XX' ? words.monthUnknown : words.monthNumber(digits(m, 1, 12, words))}`;
  }
  const day = () => (d === 'XX' ? words.dayUnknown : words.dayNumber(digits(d, 1, 31, words)));
  if (month !== undefined)
    return d.includes('X') ? `${ofYear(month)}, ${day()}` : ofYear(words.dayOfMonth(Number(d), month));
  if (m === 'XX' && d === 'XX') return `${inYear}, ${words.monthAndDayUnknown}`;
  const inMonth = m === 'XX' ? words.monthUnknown : words.monthNumber(digits(m, 1, 12, words));
  return `${inYear}, ${inMonth}, ${day()}`;
}

/** What digits with unknown ones among them may be, inside the calendar’s bounds. */
function digits(text: string, least: number, most: number, words: DateWords): string {
  const from = Math.max(least, Number(text.replaceAll('X', '0')));
  const to = Math.min(most, Number(text.replaceAll('X', '9')));
  return from === to ? String(from) : words.fromTo(String(from), String(to));
}

function yearIn(text: string, words: DateWords): string {
  if (/^-?X+$/.test(text)) return words.yearUnknown;
  if (/^\d{3}X?$/.test(text)) return words.decade(Number(text.slice(0, 3)) * 10);
  if (/X/.test(text)) return words.fromTo(text.replaceAll('X', '0'), text.replaceAll('X', '9'));
  if (/^\d{2}$/.test(text)) return words.fromTo(`${text}00`, `${text}99`);
  const number = Number(text);
  // Year 0 is 1 BC.
  return number <= 0 ? words.beforeChrist(1 - number) : String(number);
}
