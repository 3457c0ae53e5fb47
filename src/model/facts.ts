import type { Case } from './case.ts';
import type { NameCount } from './name-count.ts';
import type { Person } from './person.ts';
import type { Place } from './place.ts';
import type { Mention, SourceRecord } from './record.ts';
import type { Reply, Review } from './review.ts';
import type { Search } from './search.ts';
import type { Series } from './series.ts';
import type { Site } from './site.ts';

/**
 * What an author's content says, with every reference resolved: all that the reasoning may know.
 * Maps are in file order, then order within the file; built-in places and series are included.
 */
export interface Facts {
  site: Site;
  cases: ReadonlyMap<string, Case>;
  records: ReadonlyMap<string, SourceRecord>;
  people: ReadonlyMap<string, Person>;
  places: ReadonlyMap<string, Place>;
  series: ReadonlyMap<string, Series>;
  searches: ReadonlyMap<string, Search>;
  reviews: readonly Review[];
  /** The author's answers to reviews, in the order of files and entries. */
  replies: readonly Reply[];
  /** The author's own counts of names, in the order of files and rows. */
  nameCounts: readonly NameCount[];
}

/** The mention a `record#mention` reference names, if there is one. */
export function mentionAt(
  facts: Pick<Facts, 'records'>,
  ref: string,
): { record: SourceRecord; mention: Mention } | undefined {
  const at = ref.indexOf('#');
  const record = facts.records.get(ref.slice(0, at));
  const mention = record?.mentions[mentionIndex(record, ref.slice(at + 1))];
  return record && mention ? { record, mention } : undefined;
}

const indices = new WeakMap<SourceRecord, ReadonlyMap<string, number>>();

/** Which mention of a record has an id, counted from 0, or -1. A record may be a list of thousands. */
export function mentionIndex(record: SourceRecord, id: string): number {
  if (record.mentions.length < 16) return record.mentions.findIndex((mention) => mention.id === id);
  let ofRecord = indices.get(record);
  if (!ofRecord) {
    // Of two with one id, which is an error elsewhere, the first is meant.
    ofRecord = new Map(record.mentions.map((mention, i) => [mention.id, i] as const).reverse());
    indices.set(record, ofRecord);
  }
  return ofRecord.get(id) ?? -1;
}

/** What a mention says under a statement key (`birthplace`, `event`, `says.signature` …), or `undefined`. */
export function statementOf(mention: Mention, states: string): unknown {
  if (states.startsWith('says.'))
    return Object.hasOwn(mention.says, states.slice(5)) ? mention.says[states.slice(5)] : undefined;
  if (['id', 'informants', 'inferred', 'copies', 'says'].includes(states) || !Object.hasOwn(mention, states))
    return undefined;
  const value = mention[states as keyof Mention];
  return Array.isArray(value) && value.length === 0 ? undefined : value;
}
