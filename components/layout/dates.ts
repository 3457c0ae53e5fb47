/** EDTF dates (ISO 8601-2) in plain English words. */

const months = [
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
const seasons: Record<string, string> = { 21: 'spring', 22: 'summer', 23: 'autumn', 24: 'winter' };

/**
 * A date as a reader would say it: `1871-04-11` is “11 April 1871”, `1840~` “about 1840”, `1838/1842` “between 1838
 * and 1842”, `../1850` “by 1850”. A form no rule below knows is given as it stands.
 */
export function dateInWords(date: string): string {
  const text = date.trim();
  if (text === '' || text === '..' || text === '../..' || text === 'XXXX') return 'date unknown';
  const interval = /^([^/]*)\/([^/]*)$/.exec(text);
  if (interval) return intervalInWords(interval[1]!, interval[2]!);
  const set = /^[[{](.+)[\]}]$/.exec(text);
  if (set)
    return set[1]!
      .split(',')
      .map((part) => dateInWords(part.replace('..', '/')))
      .join(text.startsWith('[') ? ' or ' : ' and ');
  return oneDate(text) ?? text;
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
  const [from, to] = date.split('/');
  return to === undefined ? dateInWords(date) : yearsInWords(from, to);
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

/** The year a date is best filed under, or an empty string. */
export function yearOf(date: string | undefined): string {
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

function intervalInWords(from: string, to: string): string {
  const open = (part: string) => part === '' || part === '..';
  if (open(from)) return `by ${dateInWords(to)}`;
  if (open(to)) return `${dateInWords(from)} or later`;
  return `between ${dateInWords(from)} and ${dateInWords(to)}`;
}

function oneDate(text: string): string | undefined {
  const parts = /^([+-]?\d{4}|\d{2}XX|\d{3}X)(?:-(\d\d|XX))?(?:-(\d\d|XX))?([~?%])?$/.exec(
    text.replace(/^Y/, ''),
  );
  if (!parts) return undefined;
  const [, year, month, day, mark] = parts;
  let words: string;
  if (year!.endsWith('XX')) words = `the ${year!.slice(0, 2)}00s`;
  else if (year!.endsWith('X')) words = `the ${year!.slice(0, 3)}0s`;
  else words = year!;
  if (month !== undefined && month !== 'XX') {
    const name = months[Number(month) - 1] ?? seasons[month];
    if (!name) return undefined;
    words = `${name} ${words}`;
    if (day !== undefined && day !== 'XX') words = `${Number(day)} ${words}`;
  }
  if (mark === '~') return `about ${words}`;
  if (mark === '?') return `perhaps ${words}`;
  return mark === '%' ? `perhaps about ${words}` : words;
}
