/**
 * The CSL processor, given all records at once. An engine keeps state, and after a fault it cannot be trusted, so
 * every batch has its own. Items get plain ids of ours, since ids land in HTML unescaped.
 */
import CSL from 'citeproc';
import { cslDateVariables, cslNameVariables, type Citation, type CslName } from '../model/citation.ts';
import { dateInWords } from './date-words.ts';
import { guard, hyphen, sealed } from './escape.ts';
import { divider } from './note-macros.ts';
import { entryMark, noteStyle } from './note-style.ts';
import { noteLocale } from './note-locale.ts';

/** Full note in its two parts, short note and entry of the source list, as HTML without a final full stop. */
export interface Formatted {
  item: string;
  held: string;
  short: string;
  entry: string;
}

/** What has been formatted before, by the text of the citation. A `Map` will do. */
export interface FormattedBefore {
  get(citation: string): Formatted | undefined;
  set(citation: string, formatted: Formatted): unknown;
}

/**
 * Formats citations in one batch, in their order. Values come out sealed; see `escape.ts`. Never throws.
 *
 * The style looks at one citation at a time, so what a citation becomes does not depend on the others: each is
 * formatted once, and what `before` knows not at all.
 */
export function format(citations: readonly Citation[], before: FormattedBefore = new Map()): Formatted[] {
  const texts = citations.map((cite) => JSON.stringify(cite));
  const known = new Map<string, Formatted>();
  const fresh = new Map<string, Citation>();
  texts.forEach((text, i) => {
    const formatted = known.get(text) ?? before.get(text);
    if (formatted) known.set(text, formatted);
    else fresh.set(text, citations[i]!);
  });
  const made = formatAll([...fresh.values()]);
  [...fresh.keys()].forEach((text, i) => {
    known.set(text, made[i]!);
    before.set(text, made[i]!);
  });
  return texts.map((text) => known.get(text)!);
}

function formatAll(citations: readonly Citation[]): Formatted[] {
  if (citations.length === 0) return [];
  try {
    return batch(citations);
  } catch {
    // A value the processor trips over must not cost the others their notes: look for it, and do without style there.
    if (citations.length === 1) return [plainly(citations[0]!)];
    const middle = citations.length >> 1;
    return [...formatAll(citations.slice(0, middle)), ...formatAll(citations.slice(middle))];
  }
}

function batch(citations: readonly Citation[]): Formatted[] {
  const items = new Map(citations.map(toCslJson).map((item) => [item.id, item]));
  const engine = new CSL.Engine(
    { retrieveLocale: () => noteLocale, retrieveItem: (id) => items.get(id)! },
    noteStyle,
    'en-US',
    true,
  );
  engine.setOutputFormat('html');
  // An author’s note is a note, even when its first line looks like “archive: …”.
  engine.opt.development_extensions['field_hack'] = false;
  // Keyed by words of the citations, and “constructor” is a word.
  engine.registry.ambigcites = Object.create(null) as object;
  const reader = engine.fun.flipflopper;
  const readTags = reader.processTags.bind(reader);
  reader.processTags = (value) => {
    if (!plain.test(value.blobs)) readTags(value);
  };
  const ids = [...items.keys()];
  engine.updateItems(ids, true);

  const entries = entriesById(engine);
  return ids.map((id) => {
    const [item = '', held = ''] = engine.makeCitationCluster([{ id, position: 0 }]).split(divider);
    const short = engine.makeCitationCluster([{ id, position: 1 }]);
    return { item: tidy(item), held: tidy(held), short: tidy(short), entry: entries.get(id) ?? '' };
  });
}

/**
 * A value without quotation marks, apostrophes or tags. The processor looks for them at length in every value, and
 * leaves one that has none as it is.
 */
const plain = /^[A-Za-z0-9 .,;:/\u00C0-\u024F\uE000-\uE0FF–-]*$/;

/** Title, date and archive without a style. */
function plainly(cite: Citation): Formatted {
  const title = sealed(cite.title ?? cite.genre ?? '');
  const item = [title, cite.issued === undefined ? '' : dateInWords(cite.issued)]
    .filter((part) => part !== '')
    .join(', ');
  const held = [cite.archive, cite['archive-place']]
    .filter((part) => part !== undefined)
    .map(sealed)
    .join(', ');
  return {
    item: tidy(item),
    held: tidy(held),
    short: tidy(title),
    entry: tidy([item, held].filter((part) => part !== '').join(divider)),
  };
}

function entriesById(engine: CSL.Engine): Map<string, string> {
  const [details, entries] = engine.makeBibliography() || [{ entry_ids: [] }, []];
  return new Map(
    entries.map((entry, index) => [
      details.entry_ids[index]![0]!,
      tidy(
        entry
          .replace(/^\s*<div class="csl-entry">/, '')
          .replace(/<\/div>\s*$/, '')
          .replace(entryMark, ''),
      ),
    ]),
  );
}

/**
 * Line ends in values are folded, and a ship’s name inside an italic title gets a class: pages hold no inline
 * styles. A processor with nothing to print prints a remark of its own, which nobody should read.
 */
function tidy(html: string): string {
  if (html.includes('[CSL STYLE ERROR')) return '';
  return html
    .replaceAll('<span style="font-style:normal;">', '<span class="upright">')
    .replace(/\s+/g, ' ')
    .trim();
}

const dates: ReadonlySet<string> = new Set(cslDateVariables);
const names: ReadonlySet<string> = new Set(cslNameVariables);

function toCslJson(cite: Citation, index: number): Record<string, unknown> & { id: string } {
  const item: Record<string, unknown> & { id: string } = { id: `r${index}`, type: cite.type };
  for (const [key, value] of Object.entries(cite)) {
    if (value === undefined || key === 'type') continue;
    if (names.has(key)) {
      const list = (value as CslName[]).map(toCslName).filter((name) => name !== undefined);
      if (list.length > 0) item[key] = list;
    } else if (dates.has(key)) item[key] = { literal: sealed(dateInWords(value as string)) };
    else item[key] = key === 'page' ? sealedPage(value as string) : sealed(value as string);
  }
  return item;
}

/** “11-C” is a sheet, not the pages from 11 to C. */
function sealedPage(page: string): string {
  const sheet = /^(\d+)-([A-Za-z]\w*)$/.exec(page.trim());
  return sheet ? `${guard}p. ${sheet[1]}${hyphen}${sheet[2]}` : sealed(page);
}

function toCslName(name: CslName): Record<string, string> | undefined {
  if (name.literal !== undefined) return { literal: sealedName(name.literal) };
  const parts = Object.entries(name).filter(([, value]) => value !== undefined);
  if (parts.length === 0) return undefined;
  if (name.family === undefined) return { literal: sealedName(parts.map(([, value]) => value).join(' ')) };
  return Object.fromEntries(parts.map(([key, value]) => [key, sealedName(value!)]));
}

/** The processor keys its table of names by their words, in a plain object. */
function sealedName(name: string): string {
  const text = sealed(name);
  return text in {} ? guard + text : text;
}
