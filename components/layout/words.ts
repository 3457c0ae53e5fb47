/** The words the pages use for the values of the content contract, so that one value is called one thing everywhere. */
import { readAge } from '../../src/model/age.ts';
import type { Informant, SourceRecord } from '../../src/model/record.ts';
import type { Search } from '../../src/model/search.ts';

export const formWords: Record<SourceRecord['form'], string> = {
  original: 'Original record',
  derivative: 'Derivative: a copy, index or transcript',
  authored: 'Authored: somebody’s own account',
};

export const seenWords: Record<NonNullable<SourceRecord['seen']>, string> = {
  original: 'in the original',
  image: 'as an image',
  film: 'on microfilm',
  transcript: 'in a transcript only',
  report: 'as somebody reported it',
};

export const knowledgeWords: Record<NonNullable<Informant['knowledge']>, string> = {
  primary: 'primary knowledge: was there, or did it',
  secondary: 'secondary knowledge: had it from others',
  undetermined: 'how they knew it is not determined',
};

export const resultWords: Record<Search['result'], string> = {
  found: 'Found',
  'not-found': 'Nothing found',
  unreadable: 'Unreadable',
  unavailable: 'Not available',
};

/** `lastResidence` as “last residence”, `fellow-passenger` as “fellow passenger”. */
export function plainWords(key: string): string {
  return key
    .replace(/^says\./, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/-/g, ' ')
    .toLowerCase();
}

/** “a”, “a and b”, “a, b and c”. */
export function listInWords(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** “1 record”, “3 records”; the plural of a word that does not end in s is given. */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

export { numberWord as numberInWords } from '../../src/dossier/words.ts';

/** An age as the contract has it: `31` stays a number, `7m` is “7 months”, `31y 4m` “31 years and 4 months”. */
export function ageInWords(age: string | number): string {
  const read = readAge(age);
  if (typeof read === 'string') return String(age);
  if (read.unit === 'y') return String(age).replace(/y$/, '');
  const parts = [
    [read.years, 'year'],
    [read.months, 'month'],
    [read.weeks, 'week'],
    [read.days, 'day'],
  ] as const;
  const given = parts.filter(([n]) => n > 0).map(([n, unit]) => count(n, unit));
  return given.length > 0 ? listInWords(given) : count(0, { m: 'month', w: 'week', d: 'day' }[read.unit]);
}

/** The first letter as a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Plain code-unit order, the same on every machine. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * The word a name is filed under: the last before a comma, a parenthesis, “of …” or a suffix. Empty when nothing but
 * a dash stands for the name.
 */
export function surnameOf(name: string): string {
  const words = name
    .replace(/\([^)]*\)/g, ' ')
    .replace(/(?:,| of | later |,? (?:Jr|Sr|II|III)\.?$).*/, '')
    .trim()
    .split(/\s+/);
  return words.at(-1)!.replace(/^[—–-]+$/, '');
}
