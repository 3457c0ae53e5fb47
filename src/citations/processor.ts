/**
 * The CSL processor, given all records at once. An engine keeps state, and after a fault it cannot be trusted, so
 * every batch has its own. Items get plain ids of ours, since ids land in HTML unescaped.
 */
import CSL from 'citeproc';
import type { Citation } from '../model/citation.ts';
import { gather } from '../model/multimap.ts';
import { cslItem } from './csl-json.ts';
import { dateInWords } from './date-words.ts';
import { guard, hyphen, sealed } from './escape.ts';
import { divider } from './note-macros.ts';
import { fitted } from './fitted-style.ts';
import { entryMark, noteStyle } from './note-style.ts';
import { readStyleXml } from './style-xml.ts';
import { noteLocale } from './note-locale.ts';

/** Full note in its two parts, short note and entry of the source list, as HTML without a final full stop. */
export interface Formatted {
  item: string;
  held: string;
  short: string;
  entry: string;
  /** Its place in the source list, where the style sorts the list. */
  rank?: number;
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
  const made = withoutFaults([...fresh.values()], batch);
  [...fresh.keys()].forEach((text, i) => {
    known.set(text, made[i]!);
    before.set(text, made[i]!);
  });
  return texts.map((text) => known.get(text)!);
}

/** Formats by `batch`, and without a style what the processor trips over: it must not cost the others their notes. */
export function withoutFaults(
  citations: readonly Citation[],
  batch: (citations: readonly Citation[]) => Formatted[],
): Formatted[] {
  if (citations.length === 0) return [];
  try {
    return batch(citations);
  } catch {
    if (citations.length === 1) return [plainly(citations[0]!)];
    const middle = citations.length >> 1;
    return [
      ...withoutFaults(citations.slice(0, middle), batch),
      ...withoutFaults(citations.slice(middle), batch),
    ];
  }
}

/** In one engine for each type of source, with as much of the style as the citations of the type can print. */
function batch(citations: readonly Citation[]): Formatted[] {
  const made: Formatted[] = [];
  const byType = new Map<string, number[]>();
  citations.forEach(({ type }, i) => gather(byType, type, i));
  for (const [type, places] of byType) {
    const some = ofOneType(
      type,
      places.map((i) => citations[i]!),
    );
    places.forEach((i, n) => (made[i] = some[n]!));
  }
  return made;
}

function ofOneType(type: string, citations: readonly Citation[]): Formatted[] {
  const items = new Map(
    citations.map((cite, i) => {
      const item = cslItem(cite, `r${i}`, inWords);
      // The processor asks how a citation would read beside others; the style answers that one with its key.
      return [item.id, { ...item, 'citation-key': item.id }];
    }),
  );
  const variables = new Set([...items.values()].flatMap((item) => Object.keys(item)));
  const engine = new CSL.Engine(
    { retrieveLocale: () => structuredClone(localeRoot), retrieveItem: (id) => items.get(id)! },
    structuredClone(fitted(styleRoot, type, variables)),
    'en-US',
    true,
  );
  prepare(engine);
  const ids = [...items.keys()];
  engine.updateItems(ids, true);

  const entries = entriesById(engine);
  return ids.map((id) => {
    const [item = '', held = ''] = engine.makeCitationCluster([{ id, position: 0 }]).split(divider);
    const short = engine.makeCitationCluster([{ id, position: 1 }]);
    return { item: tidy(item), held: tidy(held), short: tidy(short), entry: entries.get(id)?.html ?? '' };
  });
}

const styleRoot = readStyleXml(noteStyle).root!;
const localeRoot = readStyleXml(noteLocale).root!;

/** Settles how an engine reads sealed values and what it makes of them. */
export function prepare(engine: CSL.Engine): void {
  engine.setOutputFormat('html');
  // An author’s note is a note, even when its first line looks like “archive: …”.
  engine.opt.development_extensions['field_hack'] = false;
  // Keyed by words of the citations, and “constructor” is a word.
  Object.setPrototypeOf(engine.registry.ambigcites, null);
  const reader = engine.fun.flipflopper;
  const readTags = reader.processTags.bind(reader);
  reader.processTags = (value) => {
    if (!plain.test(value.blobs)) readTags(value);
  };
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

/** Entries of the source list by item, without the element around each, with their place in the list. */
export function entriesById(engine: CSL.Engine): Map<string, { html: string; rank: number }> {
  const [details, entries] = engine.makeBibliography() || [{ entry_ids: [] }, []];
  return new Map(
    entries.map((entry, rank) => {
      const html = entry
        .replace(/^\s*<div class="csl-entry">/, '')
        .replace(/<\/div>\s*$/, '')
        .replace(entryMark, '');
      return [details.entry_ids[rank]![0]!, { html: tidy(html), rank }];
    }),
  );
}

/**
 * Line ends in values are folded, and a ship’s name inside an italic title gets a class: pages hold no inline
 * styles. A processor with nothing to print prints a remark of its own, which nobody should read.
 */
export function tidy(html: string): string {
  if (html.includes('[CSL STYLE ERROR')) return '';
  return html
    .replaceAll('<span style="font-style:normal;">', '<span class="upright">')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Values sealed for the processor. */
export const sealedValues = {
  text: (value: string, variable: string): string =>
    variable === 'page' ? sealedPage(value) : sealed(value),
  name: sealedName,
};

/** Our own style takes dates in finished words. */
const inWords = {
  ...sealedValues,
  date: (edtf: string): { literal: string } => ({ literal: sealed(dateInWords(edtf)) }),
};

/** “11-C” is a sheet, not the pages from 11 to C. */
function sealedPage(page: string): string {
  const sheet = /^(\d+)-([A-Za-z]\w*)$/.exec(page.trim());
  return sheet ? `${guard}p. ${sheet[1]}${hyphen}${sheet[2]}` : sealed(page);
}

/** The processor keys its table of names by their words, in a plain object. */
function sealedName(name: string): string {
  const text = sealed(name);
  return text in {} ? guard + text : text;
}
