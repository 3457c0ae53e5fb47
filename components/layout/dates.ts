/** Dates as pages say them: EDTF in words, spans of a birth, years of a life. */
import { dateInWords as ofCitation } from '../../src/citations/date-words.ts';
import { intervalParts, isJulian, julianDate } from '../../src/model/julian-date.ts';

/**
 * A date as a reader would say it: `1871-04-11` is “11 April 1871”, `1840~` “about 1840”, `../1850` “by 1850”. Of an
 * event, `1838/1842` is “between 1838 and 1842”; a citation, which may date a run of papers, says “1838 to 1842”.
 */
export function dateInWords(date: string): string {
  const parts = intervalParts(date.trim());
  return parts && !parts.some((part) => part === '' || part === '..')
    ? `between ${ofCitation(parts[0])} and ${ofCitation(parts[1])}`
    : ofCitation(date);
}

/** A stretch of years as a series or search has it: `1863/1865` is “1863–1865”, `1867/..` “1867 onward”. */
export function yearsInWords(from: string | undefined, to: string | undefined): string {
  const open = (part: string | undefined) => part === undefined || part === '' || part === '..';
  if (open(from) && open(to)) return 'all years';
  if (open(from)) return `to ${dateInWords(to!)}`;
  if (open(to)) return `${dateInWords(from!)} onward`;
  return from === to ? dateInWords(from!) : `${dateInWords(from!)}–${dateInWords(to!)}`;
}

/** The years a search covered: `1863/1865` is “1863–1865”. */
export function coverageInWords(date: string): string {
  const parts = intervalParts(date);
  return parts ? yearsInWords(...parts) : dateInWords(date);
}

/** A birth span: “between 2 June 1839 and 11 April 1841”, “on 14 March 1818”, or “not known”. */
export function spanInWords(span: { earliest: string | null; latest: string | null }): string {
  const { earliest, latest } = span;
  if (earliest === null && latest === null) return 'not known';
  if (earliest === null) return `by ${dateInWords(latest!)}`;
  if (latest === null) return `${dateInWords(earliest)} or later`;
  return earliest === latest
    ? `on ${dateInWords(earliest)}`
    : `between ${dateInWords(earliest)} and ${dateInWords(latest)}`;
}

/** Whether a record gives a date by the Old Style. */
export function isOldStyle(date: string | undefined): boolean {
  return date !== undefined && date.includes('julian ');
}

/** A birth span, said to be of the New Style where it was reckoned from a date of the Old. */
export function spanInNewStyle(
  span: { earliest: string | null; latest: string | null },
  reckoned: boolean,
): string {
  return reckoned ? `${spanInWords(span)} (New Style)` : spanInWords(span);
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

/** Years of a life for a heading: “1840–1903”, “about 1840–1903”, “–1903”, or nothing. */
export function lifeYears(born: string | undefined, died: string | undefined): string {
  const short = (date: string | undefined) =>
    date === undefined ? '' : `${/[~?%]/.test(date) ? 'about ' : ''}${yearOf(date)}`;
  const [from, to] = [short(born), short(died)];
  if (from && to) return `${from}–${to}`;
  if (from) return `born ${from}`;
  return to ? `died ${to}` : '';
}
