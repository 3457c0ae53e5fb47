/** What to write instead of text that is not a date: sentences for the author, and a suggestion where one is sure. */
import { julianDate } from './julian-date.ts';
import { oldForm } from './old-forms.ts';

/** Why text is not a date and what to write, in a sentence or two. Takes time in proportion to the text. */
export function dateAdvice(date: string): string {
  if (date.length > 80) return `“${date.slice(0, 80)}…” is not a date in EDTF; ${generally}`;
  const start = `“${date}” is not a date in EDTF`;
  const years = /^(\d{4})\/(\d{1,2})$/.exec(date);
  if (years) return `“${date}” ${twoYears(date, years[1]!, years[2]!)}`;
  const suggestion = suggest(date);
  if (suggestion) return `${start}; write ${suggestion}.`;
  const old = oldForm(date);
  return old === undefined ? `${start}; ${generally}` : `“${date}” ${old}`;
}

const generally =
  'write year-month-day, such as 1871-04-11, or less of it, 1840~ for about 1840, 1838/1842 for between, or .. for unknown.';

/** “1648/9” is a double year when the second follows the first, and else a span cut short. */
function twoYears(date: string, first: string, end: string): string {
  const second = `${first.slice(0, -end.length)}${end}`;
  const span = `for a span of years write ${first}/${Number(second) > Number(first) ? second : Number(first) + 1}`;
  return (Number(first) + 1) % 10 ** end.length === Number(end)
    ? `may be a double year; with its month and day write julian ${date}-01-30, and ${span}.`
    : `has a year of too few digits; ${span}.`;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

function suggest(date: string): string | undefined {
  const text = date.toLowerCase();
  const pad = (n: string | number) => String(n).padStart(2, '0');
  const month = (name: string) => pad(months.indexOf(name) + 1);
  const old = oldStyle(text, month, pad);
  if (old !== undefined && typeof julianDate(old) !== 'string') return old;
  let m = /^(\d{1,2})(?:st|nd|rd|th)?[ .-]+([a-z]{3})[a-z]*\.?,?[ -]+(\d{4})$/.exec(text);
  if (m && months.includes(m[2]!)) return `${m[3]}-${month(m[2]!)}-${pad(m[1]!)}`;
  m = /^([a-z]{3})[a-z]*\.? +(\d{1,2})(?:st|nd|rd|th)?,? +(\d{4})$/.exec(text);
  if (m && months.includes(m[1]!)) return `${m[3]}-${month(m[1]!)}-${pad(m[2]!)}`;
  m = /^([a-z]{3})[a-z]*\.?,? +(\d{4})$/.exec(text);
  if (m && months.includes(m[1]!)) return `${m[2]}-${month(m[1]!)}`;
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

/** Double years and the letters O.S., which say that a day is of the Julian calendar. */
function oldStyle(
  text: string,
  month: (name: string) => string,
  pad: (n: string) => string,
): string | undefined {
  const marked = /(?<! ) *\(?(?:o\.? ?s\.?|old style|julian(?: calendar)?)\)?\.?$/;
  const bare = text.replace(marked, '').replace(/^(?:julian|o\.?s\.?|old style):? +/, '');
  let m = /^(\d{4}(?:\/\d{1,4})?)(?:-(\d\d)(?:-(\d\d))?)?$/.exec(bare);
  if (m && (bare !== text || (m[1]!.includes('/') && m[2] !== undefined))) return `julian ${bare}`;
  m = /^(\d{1,2})(?:st|nd|rd|th)? +(?:of +)?([a-z]{3})[a-z]*\.?,? +(\d{4}(?:\/\d{1,4})?)$/.exec(bare);
  const [day, name, year] = m
    ? [m[1], m[2], m[3]]
    : (/^([a-z]{3})[a-z]*\.? +(\d{1,2})(?:st|nd|rd|th)?,? +(\d{4}(?:\/\d{1,4})?)$/.exec(bare) ?? [])
        .slice(1)
        .map((_, i, all) => all[[1, 0, 2][i]!]);
  if (day === undefined || !months.includes(name!) || (bare === text && !year!.includes('/')))
    return undefined;
  return `julian ${year}-${month(name!)}-${pad(day)}`;
}
