/**
 * Citations as BibTeX. Names, entry types and signs of TeX are the library’s; what BibTeX has no field for (the
 * office, the court, who was asked) is told in `note`, since a record that cannot be found again is not cited.
 */
import { plugins } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import type { Citation } from '../model/citation.ts';
import type { SourceRecord } from '../model/record.ts';
import { cslDate, type CslDate } from './csl-date.ts';
import { citationOf, cslItem } from './csl-json.ts';
import { dateInWords } from './date-words.ts';

/**
 * One record as a BibTeX entry, with a line end; the key is the record’s id. `seen` says in plain words how the record
 * was seen and what it copies.
 */
export function bibtexOf(record: SourceRecord, seen: readonly string[]): string {
  const settings = plugins.config.get('@bibtex').format;
  settings.useIdAsLabel = true;
  settings.checkLabel = false;
  const cite = citationOf(record);
  const made = (more: object) =>
    plugins.output.format('bibtex', [{ ...cslItem(forBibtex(cite), record.id, values), ...more }], {
      format: 'object',
    })[0]!;
  const said = made({}).properties;
  const note = [...unsaid(cite, said), ...seen].join('; ');
  const { type, properties } = note === '' ? made({}) : made({ note: plain(note) });
  // For a few accents the library knows no command, and says so in the middle of the word.
  const fields = new Map(
    Object.entries(properties).map(([name, value]) => [name, `{${value.replaceAll('\\undefined', '')}}`]),
  );
  if (fields.has('url')) fields.delete('howpublished');
  const date = dateOf(cite);
  if (date !== undefined) for (const [name, value] of dateFields(date)) fields.set(name, value);
  const lines = [...fields].map(([name, value]) => `  ${name} = ${value}`);
  return `@${type}{${record.id},\n${lines.join(',\n')}\n}\n`;
}

/** Dates are written by `dateFields`. */
const values = { text: plain, name: plain, date: (): CslDate => ({ literal: '' }) };

/** What the library knows where to put. */
function forBibtex(cite: Citation): Citation {
  return {
    ...cite,
    ...(cite.title === undefined && cite.genre !== undefined ? { title: cite.genre } : {}),
    note: undefined,
  };
}

/** BibTeX has one date: that of the document, or else that of what it tells of. */
function dateOf(cite: Citation): string | undefined {
  return cite.issued ?? cite['event-date'] ?? cite['original-date'];
}

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** Year, month and day; of a date that has more to it the words, as the year. */
function dateFields(edtf: string): [string, string][] {
  const date = cslDate(edtf);
  const [year, month, day] = 'literal' in date ? [] : date['date-parts'][0]!;
  const isPlain =
    !('literal' in date) && !date.circa && !date.season && date['date-parts'].length === 1 && year! > 0;
  if (!isPlain) return [['year', `{${dateInWords(edtf).replace(/[^\p{L}\p{N} ,;()/.-]/gu, '')}}`]];
  return [
    ['year', `{${year}}`],
    ...(month === undefined ? [] : [['month', months[month - 1]!] as [string, string]]),
    ...(day === undefined ? [] : [['day', `{${day}}`] as [string, string]]),
  ];
}

/** What the citation says and no field of the entry does. */
function unsaid(cite: Citation, fields: Readonly<Record<string, string>>): string[] {
  const people = (list: Citation['author'], before: string) =>
    (list ?? [])
      .map((name) => name.literal ?? [name.given, name.family].filter((part) => part !== undefined).join(' '))
      .filter((name) => name !== '')
      .map((name) => `${before} ${name}`);
  const number = cite.number !== undefined && /^\d/.test(cite.number) ? `no. ${cite.number}` : cite.number;
  const held = [
    cite.archive_collection,
    cite.archive_location,
    cite['call-number'],
    cite.archive,
    cite['archive-place'],
  ].filter((part) => part !== undefined);
  const inSomething = ['journal', 'booktitle', 'series'].some((field) => field in fields);
  return [
    cite.jurisdiction,
    cite.authority,
    cite.division,
    ...people(cite.recipient, 'to'),
    ...people(cite.compiler, 'compiled by'),
    ...people(cite.interviewer, 'interviewed by'),
    ...people(cite.translator, 'translated by'),
    ...people(cite.contributor, 'contributed by'),
    cite.title === undefined || 'type' in fields ? undefined : cite.genre,
    cite.medium,
    inSomething ? undefined : cite['container-title'],
    cite['event-title'],
    cite['event-place'],
    'volume' in fields ? undefined : cite.volume,
    'number' in fields ? undefined : number,
    cite.section,
    cite.status,
    held.length === 0 ? undefined : held.join(', '),
    cite.source,
    cite.accessed === undefined ? undefined : `accessed ${dateInWords(cite.accessed)}`,
    cite.references,
    cite.note,
  ].filter((part) => part !== undefined);
}

/**
 * A value for the library, which reads tags in values (a ship’s italics go) and lets some through as they are: an
 * organisation’s name, a DOI. In those a brace would end the entry and a backslash begin a command.
 */
function plain(text: string): string {
  return text
    .replace(/<\/?(?:i|sup|sub|b)>/g, '')
    .replace(/[{}\\]/g, (sign) => ({ '{': '(', '}': ')' })[sign] ?? '/')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/\p{Surrogate}/gu, '');
}
