/**
 * Months by their numbers, as Friends wrote them: “12th mo. 12, 1676”. Up to 1751 the First Month was March, and the
 * Eleventh and Twelfth were the January and February at the end of the same legal year; from 1752 the First is
 * January. The legal year 1751 ended on 31 December, so it had no Eleventh or Twelfth Month. The days 1 to 24 of a
 * First Month before 1752 stand at the end of the legal year that is named, unless the clerk turned the year with the
 * month: both readings are returned.
 *
 * Source: Library of the Society of Friends, guide to the Quaker calendar; Calendar (New Style) Act 1750.
 */
import { inTheGapOf1752, lastDayOfJulianMonth } from './julian.ts';

/** What text with a numbered month may mean. */
export interface NumberedMonth {
  /** Dates of the content contract; two where the year is in doubt, none where the day cannot be. */
  readings: string[];
  /** Which month it is, in a clause. */
  because: string;
  /** Why there is no such day, as the end of a sentence. */
  impossible?: string;
}

const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
];
/** The months by name, January first. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** Reads a date with a numbered month: “12th mo. 12, 1676”, “18th of the 1st month 1702”, “9 d. 4 mo. 1731”. */
export function monthNumbered(text: string): NumberedMonth | undefined {
  if (text.length > 80) return undefined;
  const parts = partsOf(text);
  if (!parts) return undefined;
  const { number, day, year, nextYear } = parts;
  const newOrder = year >= 1752;
  const month = newOrder ? number : ((number + 1) % 12) + 1;
  const nth = `${ordinals[number - 1]!.replace(/^./, (c) => c.toUpperCase())} Month`;
  const because = newOrder
    ? `from 1752 the ${nth} is ${monthNames[month - 1]!}`
    : `before 1752 the ${nth} was ${monthNames[month - 1]!}`;
  const impossible = (why: string): NumberedMonth => ({ readings: [], because, impossible: why });

  if (!newOrder && year === 1751 && number > 10)
    return impossible('the legal year 1751 ended on 31 December, before its Eleventh Month; read it again.');
  if (day !== undefined && inTheGapOf1752(year, month, day))
    return impossible('3 to 13 September 1752 were left out of the calendar; read it again.');
  if (
    day !== undefined &&
    (day < 1 || day > lastDayOfJulianMonth(number > 10 || newOrder ? year + (newOrder ? 0 : 1) : year, month))
  )
    return impossible(`${monthNames[month - 1]!} had no day ${day}; read it again.`);

  const rest = `-${two(month)}${day === undefined ? '' : `-${two(day)}`}`;
  if (newOrder) {
    const julian = year === 1752 && (month < 9 || (month === 9 && (day ?? 30) < 3));
    return { readings: [`${julian ? 'julian ' : ''}${year}${rest}`], because };
  }
  if (number > 10) return { readings: [`julian ${year}/${two((year + 1) % 100)}${rest}`], because };
  if (number > 1 || (day !== undefined && day > 24)) return { readings: [`julian ${year}${rest}`], because };
  const double = (first: number) => `julian ${first}/${two((first + 1) % 100)}${rest}`;
  if (nextYear) return { readings: [double(year)], because };
  if (day === undefined) return { readings: [`julian ${year}${rest}`, `julian ${year + 1}${rest}`], because };
  return {
    readings: [double(year), double(year - 1)],
    because: `${because}, and its first 24 days end the legal year unless the clerk turned the year with the month`,
  };
}

interface Parts {
  number: number;
  day: number | undefined;
  /** The legal year, the first of a double one. */
  year: number;
  /** The record writes the double year itself. */
  nextYear: boolean;
}

/** The number of the month stands before the word; of the rest, four digits are the year and one or two the day. */
function partsOf(text: string): Parts | undefined {
  const tokens = text
    .toLowerCase()
    .replace(/(\d)(?:st|nd|rd|th|d)\b/g, '$1')
    .replace(/(\d)(?=[a-z])/g, '$1 ')
    .split(/[\s.,;:-]+/)
    .filter(
      (token) =>
        !['', 'the', 'of', 'day', 'da', 'd', 'in', 'on', 'ye', 'called', 'os', 'o', 's'].includes(token),
    );
  const at = tokens.findIndex((token) => /^(?:mo|month|mon|mth|m)$/.test(token));
  if (at < 1) return undefined;
  const number = ordinals.indexOf(tokens[at - 1]!) + 1 || Number(tokens[at - 1]);
  if (!Number.isInteger(number) || number < 1 || number > 12) return undefined;
  const others = [...tokens.slice(0, at - 1), ...tokens.slice(at + 1)];
  if (others.length > 2) return undefined;
  const written = others.map((token) => /^(\d{4})(?:\/(\d{1,4}))?$/.exec(token)).find((found) => found);
  if (!written) return undefined;
  const left = others.filter((token) => token !== written[0]);
  const day = left[0] === undefined ? undefined : Number(left[0]);
  if (left.length > 1 || (day !== undefined && !(Number.isInteger(day) && left[0]!.length <= 2)))
    return undefined;
  return { number, day, year: Number(written[1]), nextYear: written[2] !== undefined };
}

function two(n: number): string {
  return String(n).padStart(2, '0');
}
