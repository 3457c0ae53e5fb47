/**
 * What clerks and typists write into cells, as a record holds it: ages, dates, sexes, relations to the head of a
 * household. What cannot be said in the form of a record is not guessed at: it gives `undefined`, and is kept as it stands.
 *
 * Rule (common practice): the units and abbreviations of census and passenger schedules, English and Norwegian.
 */
import { ageProblem } from '../../model/age.ts';
import { edtfProblem } from '../../model/edtf.ts';
import { dateOf, sexOf, type DayFirst } from '../people-values.ts';

/** An age in the form of a record (`31`, `7m`, `1y 6m`), or `undefined` where it is not plainly one. */
export function ageValue(cell: string): number | string | undefined {
  const text = cell.toLowerCase().replaceAll(',', ' ').replace(/\s+/g, ' ').trim();
  if (/^\d{1,3}(?:\.0+)?$/.test(text)) return checked(Number(text));
  const plain = text
    .replace(/ ?(?:of age|old|gl|gammel)\.?$/, '')
    .replace(/(\d)\s*(?:years?|yrs?\.?|y\.?|aar|år|ar)(?![a-z])/g, '$1y')
    .replace(/(\d)\s*(?:months?|mos?\.?|mths?\.?|mnd\.?|måneder|maaneder|mdr?\.?|m\.?)(?![a-z])/g, '$1m')
    .replace(/(\d)\s*(?:weeks?|wks?\.?|uker?|uger?|w\.?)(?![a-z])/g, '$1w')
    .replace(/(\d)\s*(?:days?|dys?\.?|dager?|dage|d\.?)(?![a-z])/g, '$1d')
    .replace(/ ?(?:and|&|og) ?/g, ' ')
    .replace(/(\d{1,2}\/12)m$/, '$1')
    .replace(/^½ ?y?$/, '6m')
    .replace(/^(\d{1,2}) ?½y?$/, '$1y 6m')
    .trim();
  if (/^\d{1,3}y$/.test(plain)) return checked(Number(plain.slice(0, -1)));
  return checked(plain);
}

const checked = (age: number | string) => (ageProblem(age) === undefined ? age : undefined);

/** An age whose months or days stand in columns of their own. */
export function joinedAge(years: string, months: string, days: string): number | string | undefined {
  if (months === '' && days === '') return ageValue(years);
  const parts = [
    [years, 'y'],
    [months, 'm'],
    [days, 'd'],
  ].filter(([cell]) => cell !== '' && cell !== '0');
  if (parts.length === 0) return undefined;
  if (parts.some(([cell]) => !/^\d{1,3}$/.test(cell!))) return undefined;
  return checked(parts.map(([cell, unit]) => `${cell}${unit}`).join(' '));
}

/** `M` or `F`, or `undefined`. */
export function sexValue(cell: string): 'M' | 'F' | undefined {
  const sex = sexOf(cell.replace(/^(?:fem|masc)\.?$/i, (word) => (/^f/i.test(word) ? 'f' : 'm')));
  return sex === 1 ? 'M' : sex === 2 ? 'F' : undefined;
}

const two = (n: number) => String(n).padStart(2, '0');

/**
 * A date as EDTF: what is EDTF already, and dates as lists write them. `undefined` for what is no date, has a year of
 * two digits, is a day the calendar has not, or could be read in two ways (4/5/1864, where `dayFirst` is not known).
 */
export function dateValue(cell: string, dayFirst: DayFirst): string | undefined {
  const text = cell.trim();
  const said = /^(abt|about|circa|ca|c|um|omkr|omkring|cirka|est)\b[. ]*/i.exec(text);
  const limit = /^(bef|before|før|aft|after|etter)\b[. ]*/i.exec(text);
  const range =
    /^(?:bet(?:ween)?\.? )?(\d{4}) ?(?:-|–|and|to|og|til) ?(\d{4}|\d\d)$/i.exec(text) ??
    /^(\d{4})\/(\d{4})$/.exec(text);
  if (range) {
    const to = range[2]!.length === 2 ? range[1]!.slice(0, 2) + range[2]! : range[2]!;
    return Number(to) > Number(range[1]) ? valid(`${range[1]!}/${to}`) : undefined;
  }
  if (/^\d{4}(?:-\d\d){0,2}[~?%]?$/.test(text)) return valid(text);
  if (/^julian /.test(text)) return valid(text);
  const doubtful = /\?$/.test(text);
  const bare = text
    .slice((said ?? limit)?.[0].length ?? 0)
    .replace(/\?{1,9}$/, '')
    .trim();
  const numbers = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})$/.exec(bare);
  if (numbers && dayFirst === undefined) {
    const [one, other] = [Number(numbers[1]), Number(numbers[2])];
    if (one <= 12 && other <= 12 && one !== other) return undefined;
  }
  const date = dateOf(bare, dayFirst);
  if (date?.year === undefined) return undefined;
  // A month or a day that was written and could not be read is not passed over.
  const figures = (/\d+/g[Symbol.match](bare) ?? []).length + (/[\p{L}]{3,}/u.test(bare) ? 1 : 0);
  const parts = [date.year, date.month, date.day].filter((part) => part !== undefined).length;
  if (figures > parts) return undefined;
  const edtf = [
    String(date.year),
    ...(date.month === undefined ? [] : [two(date.month)]),
    ...(date.day === undefined ? [] : [two(date.day)]),
  ].join('-');
  if (limit) return valid(/^(?:bef|før)/i.test(limit[1]!) ? `../${edtf}` : `${edtf}/..`);
  return valid(edtf + (said ? (doubtful ? '%' : '~') : doubtful ? '?' : ''));
}

const valid = (date: string) => (edtfProblem(date) === undefined ? date : undefined);

/** How somebody stands to the head of their household. `head` where they are the head. */
export interface HeadRelation {
  /** The word of the list, in small letters. */
  word: string;
  as: string;
}

const relationWords: Record<string, string> = {
  head: 'head self householder hh hf husfader husfar hovedperson husmor huseier proprietor',
  spouse: 'wife husband spouse hustru kone mand mann ektefelle frue',
  child: 'son daughter child children dau dtr sonn son datter barn infant',
  parent: 'father mother far mor fader moder parent',
  sibling: 'brother sister bror broder soster sibling',
  boarder: 'boarder lodger roomer losjerende logerende leieboer',
  servant: 'servant domestic maid tjener tjenestepike tjenestepige tjenestejente dreng tjenestegutt',
  visitor: 'visitor guest besokende',
};
const relations = new Map<string, string>();
for (const [as, list] of Object.entries(relationWords))
  for (const word of list.split(' ')) if (!relations.has(word)) relations.set(word, as);

/** The relation a cell says; the word itself where it is none of the usual ones. */
export function relationValue(cell: string): HeadRelation {
  const word = cell.trim().toLowerCase().replace(/\.$/, '').replace(/\s+/g, ' ');
  const folded = word
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replaceAll('ø', 'o')
    .replace(/^(?:his|her|their|hans|hendes|hennes|deres) /, '')
    .replace(/ (?:of|to|of the) (?:head|household|family|house)$/, '');
  return { word, as: relations.get(folded) ?? word };
}

/** A sign that the cell above is meant. */
export function isDitto(cell: string): boolean {
  return /^(?:"|''|”|“|„|〃|,,|do\.?|d[o°]\.|ditto\.?|dto\.?|-"-|-”-|- ?" ?-)$/i.test(cell.trim());
}
