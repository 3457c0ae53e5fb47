/**
 * Words for the usual values of the content: roles, kinds, statements, forms. A value the language has no word of its
 * own for stays the author’s; so does every one that is equal to what the author wrote.
 */
import { readAge } from '../../model/age.ts';
import type { Evidence } from '../../model/case.ts';
import type { Informant, SourceRecord } from '../../model/record.ts';
import type { Search } from '../../model/search.ts';
import { plainWords } from '../plain-words.ts';

type Form = SourceRecord['form'];
type Seen = NonNullable<SourceRecord['seen']>;
type Knowledge = NonNullable<Informant['knowledge']>;
type Result = Search['result'];

const forms: Record<Form, string> = {
  original: 'Original record',
  derivative: 'Derivative: a copy, index or transcript',
  authored: 'Authored: somebody’s own account',
};
const seenAs: Record<Seen, string> = {
  original: 'in the original',
  image: 'as an image',
  film: 'on microfilm',
  transcript: 'in a transcript only',
  report: 'as somebody reported it',
};
const knowledges: Record<Knowledge, string> = {
  primary: 'primary knowledge: was there, or did it',
  secondary: 'secondary knowledge: had it from others',
  undetermined: 'how they knew it is not determined',
};
const results: Record<Result, string> = {
  found: 'Found',
  'not-found': 'Nothing found',
  unreadable: 'Unreadable',
  unavailable: 'Not available',
};

/** What stands above a list that can be narrowed and put in another order. */
const controls = {
  /** The name of the group of controls. */
  group: 'Narrow or reorder the list',
  find: 'Narrow the list',
  order: 'Order',
  /** The page’s own order, where it has no better name. */
  listed: 'as listed',
  /** The choice that narrows nothing. */
  all: 'all',
  clear: 'Show all',
  /** How many are shown; the numbers are already figures. */
  shown: (shown: string, all: string): string => `${shown} of ${all} shown`,
  none: 'Nothing here fits.',
};

const units = ['year', 'month', 'week', 'day'] as const;

export const words = {
  controls,
  /** A role, “father of bride”. */
  role: (role: string): string => role,
  /** A kind of place, “townland”. */
  placeKind: (kind: string): string => kind,
  /** A key of a mention, or `says.` with a name of the author’s: `lastResidence` is “last residence”. */
  statement: (key: string): string => plainWords(key),
  /** A kind of event, “baptism”. */
  eventKind: (kind: string): string => kind,
  /** How one stands to another: `fellow-passenger` is “fellow passenger”. */
  relation: (as: string): string => plainWords(as),
  /** “child of Johannes Olsen”. */
  relationTo: (as: string, name: string): string => `${plainWords(as)} of ${name}`,
  /** A kind of record series, “vital”. */
  seriesKind: (kind: string): string => kind,
  /** The form of a record, said in full. */
  form: (form: Form): string => forms[form],
  /** The form of a record in one word, small: “original”. */
  formShort: (form: Form): string => form,
  /** How the author saw a record. */
  seen: (seen: Seen): string => seenAs[seen],
  /** What an informant’s knowledge rests on. */
  knowledge: (knowledge: Knowledge): string => knowledges[knowledge],
  /** What came of a search. */
  result: (result: Result): string => results[result],
  /** “direct evidence”. */
  evidenceKind: (kind: Evidence['kind']): string => `${kind} evidence`,
  /** An age: `31` stays a number, `7m` is “7 months”, `31y 4m` “31 years and 4 months”. */
  age: (age: string | number): string => {
    const read = readAge(age);
    if (typeof read === 'string') return String(age);
    if (read.unit === 'y') return String(age).replace(/y$/, '');
    const said = (n: number, unit: string) => `${n} ${unit}${n === 1 ? '' : 's'}`;
    const given = [read.years, read.months, read.weeks, read.days].flatMap((n, i) =>
      n > 0 ? [said(n, units[i]!)] : [],
    );
    if (given.length === 0) return said(0, { m: 'month', w: 'week', d: 'day' }[read.unit]);
    return given.length < 2 ? given[0]! : `${given.slice(0, -1).join(', ')} and ${given.at(-1)}`;
  },
};
