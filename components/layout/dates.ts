/** Dates as pages say them, in the site’s language: EDTF in words, spans of a birth, years of a life. */
import {
  sayCoverage,
  sayEventDate,
  sayLifeYears,
  saySpan,
  sayYears,
  type Span,
} from '../../src/interface/say-date.ts';
import { wording } from './wording.ts';

export { yearOf } from '../../src/interface/say-date.ts';

/** A date as a reader would say it: `1871-04-11` is “11 April 1871”, `1840~` “about 1840”, `../1850` “by 1850”. */
export function dateInWords(date: string): string {
  return sayEventDate(date, wording().dates);
}

/** A stretch of years as a series or search has it: `1863/1865` is “1863–1865”, `1867/..` “1867 onward”. */
export function yearsInWords(from: string | undefined, to: string | undefined): string {
  return sayYears(from, to, wording().dates);
}

/** The years a search covered: `1863/1865` is “1863–1865”. */
export function coverageInWords(date: string): string {
  return sayCoverage(date, wording().dates);
}

/** A birth span: “between 2 June 1839 and 11 April 1841”, “on 14 March 1818”, or “not known”. */
export function spanInWords(span: Span): string {
  return saySpan(span, wording().dates);
}

/** Whether a record gives a date by the Old Style. */
export function isOldStyle(date: string | undefined): boolean {
  return date !== undefined && date.includes('julian ');
}

/** A birth span, said to be of the New Style where it was reckoned from a date of the Old. */
export function spanInNewStyle(span: Span, reckoned: boolean): string {
  return reckoned ? wording().dates.newStyle(spanInWords(span)) : spanInWords(span);
}

/** Years of a life for a heading: “1840–1903”, “about 1840–1903”, “died 1903”, or nothing. */
export function lifeYears(born: string | undefined, died: string | undefined): string {
  return sayLifeYears(born, died, wording().dates);
}
