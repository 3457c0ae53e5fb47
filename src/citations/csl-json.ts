/** A record’s citation as an item of CSL-JSON, for the processor and for readers’ own reference managers. */
import { cslDateVariables, cslNameVariables, type Citation, type CslName } from '../model/citation.ts';
import type { SourceRecord } from '../model/record.ts';
import { cslDate, type CslDate } from './csl-date.ts';

export type CslItem = Record<string, unknown> & { id: string; type: string };

/** How values are written down. */
interface Writing {
  text(value: string, variable: string): string;
  name(value: string): string;
  date(edtf: string): CslDate;
}

const asGiven: Writing = { text: (value) => value, name: (value) => value, date: cslDate };

const dates: ReadonlySet<string> = new Set(cslDateVariables);
const names: ReadonlySet<string> = new Set(cslNameVariables);

/** A citation as an item of CSL-JSON; names that say nothing are left out. */
export function cslItem(cite: Citation, id: string, { text, name, date }: Writing = asGiven): CslItem {
  const item: CslItem = { id, type: cite.type };
  for (const [key, value] of Object.entries(cite)) {
    if (value === undefined || key === 'type') continue;
    if (names.has(key)) {
      const list = (value as CslName[]).map((one) => cslName(one, name)).filter((one) => one !== undefined);
      if (list.length > 0) item[key] = list;
    } else item[key] = dates.has(key) ? date(value as string) : text(value as string, key);
  }
  return item;
}

/** A record as an item of CSL-JSON; its note ends in `seen`: how it was seen and what it copies, in plain words. */
export function cslItemOf(record: SourceRecord, seen: readonly string[]): CslItem {
  const item = cslItem(citationOf(record), record.id);
  const note = [...(record.cite?.note === undefined ? [] : [record.cite.note]), ...seen];
  return note.length === 0 ? item : { ...item, note: note.join('; ') };
}

/** Variables that say what a source is without a title: a letter from one to another, an untitled notice. */
const naming = ['title', 'author', 'recipient', 'container-title', 'genre'] as const;

/** The citation of a record; one that says nothing of what the source is takes the record’s title. */
export function citationOf(record: SourceRecord): Citation {
  const cite = record.cite ?? { type: 'document' as const };
  return naming.some((variable) => cite[variable] !== undefined) ? cite : { ...cite, title: record.title };
}

function cslName(name: CslName, write: (value: string) => string): Record<string, string> | undefined {
  if (name.literal !== undefined) return { literal: write(name.literal) };
  const parts = Object.entries(name).filter(([, value]) => value !== undefined);
  if (parts.length === 0) return undefined;
  if (name.family === undefined) return { literal: write(parts.map(([, value]) => value).join(' ')) };
  return Object.fromEntries(parts.map(([key, value]) => [key, write(value!)]));
}
