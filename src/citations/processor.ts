/**
 * The CSL processor, given all records at once: it keeps state between calls and takes ten milliseconds for each
 * entry asked for alone. Items get plain ids of ours, since ids land in HTML unescaped.
 */
import { plugins } from '@citation-js/core';
import '@citation-js/plugin-csl';
import { cslDateVariables, cslNameVariables, type Citation, type CslName } from '../model/citation.ts';
import { dateInWords } from './date-words.ts';
import { sealed } from './escape.ts';
import { divider, noteStyle } from './note-style.ts';

/** Full note in its two parts, short note and entry of the source list, as HTML without a final full stop. */
export interface Formatted {
  item: string;
  held: string;
  short: string;
  entry: string;
}

interface Engine {
  opt: { development_extensions: Record<string, boolean> };
  updateItems(ids: string[], nosort?: boolean): string[];
  makeCitationCluster(items: { id: string; position: number }[]): string;
  makeBibliography(): [{ entry_ids: string[][] }, string[]] | false;
}

const style = 'whence-notes';
const locale = 'en-US';

/** Formats citations in one batch, in their order. Values come out sealed; see `escape.ts`. */
export function format(citations: readonly Citation[]): Formatted[] {
  if (citations.length === 0) return [];
  const config = plugins.config.get('@csl');
  if (!config.styles.has(style)) config.styles.add(style, noteStyle);
  const items = citations.map(toCslJson);
  const engine = config.engine(items as never, style, locale, 'html') as Engine;
  // An author’s note is a note, even when its first line looks like “archive: …”.
  engine.opt.development_extensions['field_hack'] = false;
  const ids = items.map(({ id }) => id);
  engine.updateItems(ids, true);

  const entries = entriesById(engine);
  return ids.map((id) => {
    const [item = '', held = ''] = engine.makeCitationCluster([{ id, position: 0 }]).split(divider);
    return { item: tidy(item), held: tidy(held), short: tidy(engine.makeCitationCluster([{ id, position: 1 }])), entry: entries.get(id) ?? '' };
  });
}

function entriesById(engine: Engine): Map<string, string> {
  const [details, entries] = engine.makeBibliography() || [{ entry_ids: [] }, []];
  return new Map(
    entries.map((entry, index) => [
      details.entry_ids[index]![0]!,
      tidy(entry.replace(/^\s*<div class="csl-entry">/, '').replace(/<\/div>\s*$/, '')),
    ]),
  );
}

/**
 * Line ends in values are folded, and a ship’s name inside an italic title gets a class: pages hold no inline
 * styles. A processor with nothing to print prints a remark of its own, which nobody should read.
 */
function tidy(html: string): string {
  if (html.includes('[CSL STYLE ERROR')) return '';
  return html.replaceAll('<span style="font-style:normal;">', '<span class="upright">').replace(/\s+/g, ' ').trim();
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
    else item[key] = sealed(value as string);
  }
  return item;
}

function toCslName(name: CslName): Record<string, string> | undefined {
  if (name.literal !== undefined) return { literal: sealed(name.literal) };
  const parts = Object.entries(name).filter(([, value]) => value !== undefined);
  if (parts.length === 0) return undefined;
  if (name.family === undefined) return { literal: sealed(parts.map(([, value]) => value).join(' ')) };
  return Object.fromEntries(parts.map(([key, value]) => [key, sealed(value!)]));
}
