/**
 * EDTF dates (ISO 8601-2, levels 0 to 2) in words, for notes and pages: “11 April 1871”, “about 1840”, “1838 to
 * 1842”. A set shows every member. English month names, day before month. A day of the Julian calendar is said as the
 * record has it, with the day it is by the Gregorian: “30 January 1648/9 (Old Style; 9 February 1649 New Style)”.
 */
import { civil } from '../model/days.ts';
import { intervalParts, isJulian, julianDate } from '../model/julian-date.ts';
import { monthNames as months } from '../model/numbered-months.ts';

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

/** A date in words. Text that is not EDTF comes back as it is. */
export function dateInWords(date: string): string {
  const text = date.trim();
  const set = /^([[{])(.*)[\]}]$/.exec(text);
  const between = /^\[([^,.]+)\.\.([^,.]+)\]$/.exec(text);
  if (between) return `between ${one(between[1]!.trim())} and ${one(between[2]!.trim())}`;
  if (set)
    return listed(
      set[2]!.split(',').map((member) => range(member.trim())),
      set[1] === '[' ? 'or' : 'and',
    );
  if (text === '..' || text === '../..') return 'date unknown';
  const parts = intervalParts(text);
  return parts ? interval(...parts) : one(text);
}

function interval(from: string, to: string): string {
  if (from === '..') return to === '' ? 'date unknown' : `by ${one(to)}`;
  if (to === '..') return from === '' ? 'date unknown' : `${one(from)} or later`;
  return `${from === '' ? 'an unknown date' : one(from)} to ${to === '' ? 'an unknown date' : one(to)}`;
}

/** A member of a set: `1670..1672`, `..1760` or a date. */
function range(member: string): string {
  const dots = member.indexOf('..');
  if (dots < 0) return one(member);
  const from = member.slice(0, dots);
  const to = member.slice(dots + 2);
  if (from === '') return `${one(to)} or earlier`;
  return to === '' ? `${one(from)} or later` : `${one(from)} to ${one(to)}`;
}

function listed(members: string[], joined: 'or' | 'and'): string {
  return members.length < 2
    ? members.join('')
    : `${members.slice(0, -1).join(', ')} ${joined} ${members.at(-1)}`;
}

type Part = 'year' | 'month' | 'day';
const partNames: readonly Part[] = ['year', 'month', 'day'];
const sure = { '': '', '?': 'probably', '~': 'about', '%': 'probably about' } as const;
const doubts = { '': '', '?': 'uncertain', '~': 'approximate', '%': 'uncertain and approximate' } as const;
type Mark = keyof typeof sure;

function one(text: string): string {
  if (isJulian(text)) return oldStyle(text);
  const day = text.replace(/T.*$/, '');
  const longYear = /^Y(-?\d+(?:E\d+)?)(?:S(\d+))?$/.exec(day) ?? /^(-?\d{4})S(\d+)$/.exec(day);
  if (longYear)
    return `${year(String(Number(longYear[1])))}${longYear[2] ? `, to ${longYear[2]} significant digits` : ''}`;

  const match =
    /^([?~%]?)(-?[\dX]{2,4})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?))?)?$/.exec(
      day,
    );
  if (!match) return text;
  const [, yBefore, y, yAfter, mBefore, m, mAfter, dBefore, d, dAfter] = match;
  const given = partNames.slice(0, d ? 3 : m ? 2 : 1);
  // A mark after a part holds for it and all before it; a mark before a part for that part alone.
  const after = [yAfter, mAfter, dAfter];
  const before = [yBefore, mBefore, dBefore];
  const marks = given.map(
    (_, i) => (before[i] || after.slice(i, given.length).find((mark) => mark) || '') as Mark,
  );
  const words = calendar(y!, m, d);
  if (marks.every((mark) => mark === marks[0]))
    return marks[0] === '' ? words : `${sure[marks[0]!]} ${words}`;
  const doubtful = (Object.keys(doubts) as Mark[])
    .filter((mark) => mark !== '' && marks.includes(mark))
    .map(
      (mark) =>
        `${listed(
          given.filter((_, i) => marks[i] === mark),
          'and',
        )} ${doubts[mark]}`,
    );
  return `${words} (${doubtful.join(', ')})`;
}

/** A day or month in both styles; a whole year lies in two of the other style, and is named in its own alone. */
function oldStyle(text: string): string {
  const date = julianDate(text);
  if (typeof date === 'string') return text;
  const doubt = date.mark === '' ? '' : `${sure[date.mark as Mark]} `;
  if (date.month === undefined) return `${doubt}${date.written} (Old Style)`;
  const month = `${months[date.month - 1]!} ${date.written}`;
  const from = civil(date.first);
  if (date.day !== undefined) return `${doubt}${date.day} ${month} (Old Style; ${spoken(from)} New Style)`;
  const to = civil(date.last);
  const start = from.year === to.year ? `${from.day} ${months[from.month - 1]!}` : spoken(from);
  return `${doubt}${month} (Old Style; ${start} to ${spoken(to)} New Style)`;
}

function spoken({ year: y, month, day }: { year: number; month: number; day: number }): string {
  return `${day} ${months[month - 1]!} ${y}`;
}

function calendar(y: string, m: string | undefined, d: string | undefined): string {
  const inYear = year(y);
  if (m === undefined) return inYear;
  const unknownYear = /^-?X+$/.test(y);
  const season = seasons[Number(m)];
  if (season !== undefined) return `${season} ${unknownYear ? 'an unknown year' : inYear}`;

  const month = months[Number(m) - 1];
  const ofYear = unknownYear ? ', year unknown' : ` ${inYear}`;
  if (d === undefined) {
    if (month !== undefined) return `${month}${ofYear}`;
    return m === 'XX' ? `${inYear}, month unknown` : `${inYear}, month ${digits(m, 1, 12)}`;
  }
  if (month !== undefined) {
    if (!d.includes('X')) return `${Number(d)} ${month}${ofYear}`;
    return `${month}${ofYear}, day ${d === 'XX' ? 'unknown' : digits(d, 1, 31)}`;
  }
  const inMonth = m === 'XX' ? 'month unknown' : `month ${digits(m, 1, 12)}`;
  if (d === 'XX')
    return `${inYear}, ${inMonth === 'month unknown' ? 'month and day unknown' : `${inMonth}, day unknown`}`;
  return `${inYear}, ${inMonth}, day ${d.includes('X') ? digits(d, 1, 31) : Number(d)}`;
}

/** What digits with unknown ones among them may be, inside the calendar’s bounds. */
function digits(text: string, least: number, most: number): string {
  const from = Math.max(least, Number(text.replaceAll('X', '0')));
  const to = Math.min(most, Number(text.replaceAll('X', '9')));
  return from === to ? String(from) : `${from} to ${to}`;
}

function year(text: string): string {
  if (/^-?X+$/.test(text)) return 'year unknown';
  if (/^\d{3}X$/.test(text)) return `the ${text.slice(0, 3)}0s`;
  if (/X/.test(text)) return `${text.replaceAll('X', '0')} to ${text.replaceAll('X', '9')}`;
  if (/^\d{2}$/.test(text)) return `${text}00 to ${text}99`;
  if (/^\d{3}$/.test(text)) return `the ${text}0s`;
  const number = Number(text);
  // Year 0 is 1 BC.
  return number <= 0 ? `${1 - number} BC` : String(number);
}
