/**
 * What the cells of a table of people say: ages, years, dates, sex, and that nothing is known.
 *
 * Rule (common practice): lists write dates in every way there is. What cannot be a date, or an age, is told and left out.
 */
const nothing = new Set(
  'na n/a n.a. n.a null none nil nan unknown unk unkn unbekannt ukjent okand inconnu onbekend notstated notgiven n.k. nk n.n. nn \\n missing blank ? ?? ??? - -- --- – — . .. … * 0000-00-00'.split(
    ' ',
  ),
);

/** A cell without what stands for nothing, in one line. */
export function stated(cell: string): string {
  const text = cell.trim();
  if (text === '') return '';
  return text.length < 14 && nothing.has(text.toLowerCase().replace(/ /g, '')) ? '' : text;
}

/** Years of age, 0 for months, weeks and days; nothing where it is not an age of anybody. */
export function ageOf(cell: string): number | undefined {
  const text = cell.trim().toLowerCase().slice(0, 40);
  if (/^infant$/.test(text)) return 0;
  const parts =
    /^(?:abt|about|c|ca|circa|~)?[. ]*(\d{1,3})(?:[.,]\d+)?\s*([a-zæøåäö]*)\.?(?:[ ,]+\d{1,2}\s*[a-z]+\.?)*\s*(?:[½¼¾?~+]|\d\/\d+)?$/.exec(
      text,
    );
  if (!parts) return /^\d{1,2}\/12$/.test(text) ? 0 : undefined;
  const [, number, unit] = parts;
  if (/^(?:m|mo|mos|month|months|mon|w|wk|wks|week|weeks|d|day|days|tage?|mdr?|uger?|dage?)$/.test(unit!))
    return 0;
  if (!/^(?:|y|yr|yrs|year|years|j|jahre?|aar|ar|ans?|a|jaar)$/.test(unit!)) return undefined;
  const age = Number(number);
  return age <= 120 ? age : undefined;
}

/** 1 male, 2 female. */
export function sexOf(cell: string): number | undefined {
  const text = cell.trim().toLowerCase().replace(/\.$/, '');
  if (
    /^(?:m|male|man|boy|1|mann|männlich|maennlich|mand|h|homme|hombre|masculin|masculino|maschio)$/.test(text)
  )
    return 1;
  if (
    /^(?:f|female|woman|girl|2|w|weiblich|frau|k|kvinne|kvinde|kvinna|femme|mujer|féminin|feminin|femenino|v|vrouw)$/.test(
      text,
    )
  )
    return 2;
  return undefined;
}

export interface DateParts {
  year?: number;
  month?: number;
  day?: number;
}

/** Whether days stand before months in dates of numbers (true), or after (false). */
export type DayFirst = boolean | undefined;

const months = new Map<string, number>();
`jan januar january janvier januari ener enero gennaio janv
feb februar february fevrier februari febrero febbraio fev febr
mar marz march mars maart marzo mch mrz maerz
apr april avril abril aprile avr
may mai mei mayo maggio maj
jun june juni juin junio giugno
jul july juli juillet julio luglio
aug august aout augustus agosto
sep sept september septembre septiembre settembre 7ber
oct okt october oktober octobre octubre ottobre 8ber
nov november novembre noviembre 9ber
dec dez des december dezember desember decembre diciembre dicembre xber 10ber`
  .split('\n')
  .forEach((line, at) => line.split(' ').forEach((word) => months.set(word, at + 1)));

/** The date of a cell, as far as it goes; nothing where it is none. `dayFirst` decides 4/5/1840; without it the day is first. */
export function dateOf(cell: string, dayFirst: DayFirst): DateParts | undefined {
  const text = cell
    .trim()
    .slice(0, 60)
    .toLowerCase()
    .replace(
      /^(?:abt|about|abt|circa|ca|c|est|calc|bef|before|aft|after|um|omkr|vers|~|bap|bapt|chr|b)[. ]+/,
      '',
    )
    .replace(/(?<![?~%])[?~%]+$/, '')
    .replace(/(?:t|(?<!\s)\s+)\d\d:\d\d.*$/, '');
  let parts =
    /^(\d{4})(?:[-/.](\d{1,2})(?:[-/.](\d{1,2}))?)?$/.exec(text) ?? /^(\d{4})(\d\d)(\d\d)$/.exec(text);
  if (parts) return checked(Number(parts[1]), Number(parts[2] ?? 0), Number(parts[3] ?? 0));
  parts = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})$/.exec(text);
  if (parts) {
    const [one, other] = [Number(parts[1]), Number(parts[2])];
    return (dayFirst ?? true) && other <= 12
      ? checked(Number(parts[3]), other, one)
      : one <= 12
        ? checked(Number(parts[3]), one, other)
        : checked(Number(parts[3]), other, one);
  }
  const tokens = text.split(/[\s,./-]+/).filter((token) => token !== '' && token !== 'of' && token !== 'de');
  if (tokens.length > 4) return undefined;
  let month: number | undefined;
  let year: number | undefined;
  let day: number | undefined;
  for (const token of tokens) {
    const number = /^(\d{1,4})(?:st|nd|rd|th|er)?$/.exec(token);
    const named = months.get(token.normalize('NFD').replace(/[\u0300-\u036f]/g, ''));
    if (named && month === undefined) month = named;
    else if (number && number[1]!.length === 4 && year === undefined) year = Number(number[1]);
    else if (number && number[1]!.length < 3 && day === undefined) day = Number(number[1]);
    else return undefined;
  }
  return year === undefined || (day !== undefined && month === undefined)
    ? undefined
    : checked(year, month ?? 0, day ?? 0);
}

/** A year of the times that records are of. */
export function yearOf(cell: string): number | undefined {
  const date = dateOf(cell.replace(/\.0+$/, ''), undefined);
  return date?.year;
}

/** A whole number in a range, months also by name. */
export function numberOf(cell: string, least: number, most: number): number | undefined {
  const text = cell.trim().replace(/\.0+$/, '');
  const number = /^\d{1,4}$/.test(text)
    ? Number(text)
    : (months.get(text.toLowerCase().replace(/\.$/, '')) ?? NaN);
  return number >= least && number <= most ? number : undefined;
}

/** What a column of dates such as 4/13/1840 says of the order: true with days first, false with months first. */
export function dayFirstIn(cells: Iterable<string>): DayFirst {
  let daysFirst = 0;
  let monthsFirst = 0;
  for (const cell of cells) {
    const parts = /^\s*(\d{1,2})[-/. ](\d{1,2})[-/. ]\d{4}\s*$/.exec(cell);
    if (!parts) continue;
    if (Number(parts[1]) > 12) daysFirst++;
    if (Number(parts[2]) > 12) monthsFirst++;
  }
  return daysFirst === monthsFirst ? undefined : daysFirst > monthsFirst;
}

/** A date with what can't be left out, its year kept. */
function checked(year: number, month: number, day: number): DateParts | undefined {
  if (year < 1000 || year > 2100) return undefined;
  if (month < 1 || month > 12) return { year };
  return day < 1 || day > 31 ? { year, month } : { year, month, day };
}
