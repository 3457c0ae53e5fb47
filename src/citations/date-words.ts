/** Dates in citations, which are worded in English whatever language the site speaks. */
import { dates } from '../interface/en/dates.ts';
import { sayDate } from '../interface/say-date.ts';

/** A date in words. Text that is not EDTF comes back as it is. */
export function dateInWords(date: string): string {
  return sayDate(date, dates);
}
