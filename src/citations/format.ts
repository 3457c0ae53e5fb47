/**
 * Records as reference notes, short notes and the source list.
 *
 * What a record is and where it is kept comes from its `cite` block through the note style; how the author saw it
 * and what it copies is added here, since no citation variable says so. Common practice: a citation tells the
 * reader which form of a source was used, and a derivative names its exemplar.
 */
import type { Citation } from '../model/citation.ts';
import type { Derivation, SourceRecord } from '../model/record.ts';
import { citationOf } from './csl-json.ts';
import { escapeHtml, plainHtml, unsealed, wordsIn } from './escape.ts';
import { divider } from './note-macros.ts';
import { inStyle, type InStyle } from './other-style.ts';
import { format, type Formatted, type FormattedBefore } from './processor.ts';
import { wordsOf } from './words.ts';

/** The notes of one record, as HTML without a final full stop. */
export interface ReferenceNote {
  /** `item` followed by `held`. */
  full: string;
  short: string;
  /** What the source is. A locator follows it. */
  item: string;
  /** Where it is kept, how it was seen and what it copies; begins with its own “; ” unless empty. */
  held: string;
  /** How the record was seen and what it copies, each as HTML. */
  added: readonly string[];
  /** The note with a locator, where a style other than our own decides how it looks. */
  at?(locator: string, form: 'full' | 'short'): string;
}

export interface FormattedCitations {
  notes: Map<string, ReferenceNote>;
  /** Every record, in the order of the source list, as HTML. */
  sources: { record: string; html: string }[];
}

/**
 * Formats all records in one batch; a record without `cite` is named by its title. `before` spares citations that have
 * been formatted already, and changes nothing in what comes out. `style` is the XML of another style for notes, one of
 * which `styleProblem` has nothing to say; what it leaves without words is set in our own.
 */
export function formatCitations(
  records: Iterable<SourceRecord>,
  options: { language: string; before?: FormattedBefore | undefined; style?: string | undefined },
): FormattedCitations {
  const all = [...records];
  const titles = new Map(all.map((record) => [record.id, record.title]));
  const { formatted, at } = inAStyle(all.map(citationOf), options);
  const shorts = tellApart(
    all,
    formatted.map((one, i) => finished(one.short, all[i]!) || plainHtml(all[i]!.title)),
  );

  const notes = new Map<string, ReferenceNote>();
  const sources: { record: string; html: string; rank: number; key: string }[] = [];
  all.forEach((record, i) => {
    const one = formatted[i]!;
    const added = addedWords(record, titles, options.language);
    const item = finished(one.item, record) || plainHtml(record.title);
    const held = following([finished(one.held, record), ...added]);
    const note: ReferenceNote = { full: item + held, short: shorts[i]!, item, held, added };
    if (at)
      note.at = (locator, form) => finished(at(i, locator, form), record) + (form === 'full' ? held : '');
    notes.set(record.id, note);
    const sentences = finished(one.entry, record)
      .split(divider)
      .map((part) => part.trim())
      .filter((part) => part !== '');
    if (sentences.length === 0) sentences.push(item);
    const html = [...sentences, ...added].map(sentence).join(' ');
    sources.push({
      record: record.id,
      html,
      rank: one.rank ?? Number.MAX_SAFE_INTEGER,
      key: sortKey(sentences.join(' ')),
    });
  });
  sources.sort((a, b) => a.rank - b.rank || order(a.key, b.key) || order(a.record, b.record));
  return { notes, sources: sources.map(({ record, html }) => ({ record, html })) };
}

/** In the author’s style, and in our own where it says nothing: some have no source list, some no words for a type. */
function inAStyle(
  citations: readonly Citation[],
  { style, language, before }: Parameters<typeof formatCitations>[1],
): { formatted: Formatted[]; at?: InStyle['at'] } {
  if (style === undefined) return { formatted: format(citations, before) };
  const { formatted, at } = inStyle(style, citations, { language, before });
  if (formatted.every(({ item, short, entry }) => item && short && entry)) return { formatted, at };
  const own = format(citations, before);
  return {
    formatted: formatted.map((one, i) => ({
      ...one,
      ...(one.item ? {} : { item: own[i]!.item, held: own[i]!.held }),
      ...(one.short ? {} : { short: own[i]!.short }),
      ...(one.entry ? {} : { entry: own[i]!.entry }),
    })),
    at,
  };
}

function following(parts: readonly string[]): string {
  return parts
    .filter((part) => part !== '')
    .map((part) => `; ${part}`)
    .join('');
}

function finished(html: string, record: SourceRecord): string {
  const text = unsealed(html);
  const url = record.cite?.URL;
  if (url === undefined || !/^https?:\/\/\S+$/i.test(url)) return text;
  const written = escapeHtml(url);
  const at = text.indexOf(written);
  if (at < 0) return text;
  const link = `<a href="${written}" rel="noreferrer noopener external">${written}</a>`;
  return text.slice(0, at) + link + text.slice(at + written.length);
}

/** How the record was seen and what it derives from. */
function addedWords(record: SourceRecord, titles: ReadonlyMap<string, string>, language: string): string[] {
  const words = wordsOf(language);
  const titleOf = (id: string) => plainHtml(titles.get(id) ?? id);
  const name = (source: Derivation): string => {
    if (typeof source === 'string') return titleOf(source);
    return 'unseen' in source ? `${plainHtml(source.unseen)} ${words.notSeen}` : titleOf(source.perhaps);
  };
  const isPerhaps = (source: Derivation) => typeof source === 'object' && 'perhaps' in source;
  const certain = record.derivedFrom.filter((source) => !isPerhaps(source)).map(name);
  const possible = record.derivedFrom.filter(isPerhaps).map(name);
  const authored = record.form === 'authored';
  const list = (names: string[]) =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${words.and} ${names.at(-1)}`;
  return [
    record.seen === undefined ? '' : words.seen[record.seen],
    certain.length === 0 ? '' : `${authored ? words.drawingOn : words.copying} ${list(certain)}`,
    possible.length === 0
      ? ''
      : `${authored ? words.perhapsDrawingOn : words.perhapsCopying} ${list(possible)}`,
  ].filter((part) => part !== '');
}

/** Short notes that would read alike get the record’s own title in brackets. */
function tellApart(records: readonly SourceRecord[], shorts: string[]): string[] {
  const count = new Map<string, number>();
  for (const short of shorts) count.set(short, (count.get(short) ?? 0) + 1);
  return shorts.map((short, i) => {
    const title = plainHtml(records[i]!.title);
    return count.get(short)! > 1 && wordsIn(title) !== wordsIn(short) ? `${short} (${title})` : short;
  });
}

/** A capital letter and a full stop, which stands inside closing quotation marks. */
function sentence(html: string): string {
  const text = html.charAt(0).toUpperCase() + html.slice(1);
  const words = wordsIn(text);
  if (/[.!?…][”’")\]]*$/.test(words)) return text;
  return /[”’]$/.test(text) ? `${text.slice(0, -1)}.${text.slice(-1)}` : `${text}.`;
}

/** Letters and digits only, accents and case aside, so that the list is in the order a reader expects. */
function sortKey(html: string): string {
  return wordsIn(html)
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
