/**
 * What a citation needs so that a reader can find the record again, by kind of item: a title, a date, and where it is
 * held or published. The elements are those of archival and published citation in general (*common practice*); the
 * names of types and variables are CSL 1.0.2's.
 */
import type { Citation } from '../model/citation.ts';

interface Need {
  /** Any of these variables answers it. */
  anyOf: readonly (keyof Citation)[];
  /** The element in words. */
  words: string;
}

const title: Need = { anyOf: ['title', 'genre'], words: 'a title' };
const dated: Need = { anyOf: ['issued', 'event-date', 'original-date', 'submitted', 'accessed', 'available-date'], words: 'its date' };
const held: Need = { anyOf: ['archive', 'authority', 'source', 'URL', 'publisher'], words: 'the archive or office that holds it' };
const heldWhere: Need = { anyOf: ['archive-place', 'publisher-place', 'event-place', 'jurisdiction', 'URL'], words: 'where that is' };
const author: Need = { anyOf: ['author', 'editor', 'compiler', 'authority'], words: 'its author' };
const publisher: Need = { anyOf: ['publisher', 'publisher-place', 'URL', 'archive'], words: 'its publisher' };
const container: Need = { anyOf: ['container-title', 'collection-title'], words: 'what it appeared in' };

const unpublished = [title, dated, held, heldWhere];
const article = [title, dated, container];
const book = [title, dated, publisher];

const needsByType: Partial<Record<Citation['type'], readonly Need[]>> = {
  'article-newspaper': article,
  'article-journal': [...article, author],
  'article-magazine': article,
  book: [...book, author],
  chapter: [...book, container],
  'entry-encyclopedia': article,
  'entry-dictionary': article,
  pamphlet: book,
  report: book,
  thesis: [title, dated, author],
  webpage: [title, { anyOf: ['URL'], words: 'its address (URL)' }, { anyOf: ['accessed', 'issued'], words: 'when it was seen' }],
  interview: [dated, { anyOf: ['author', 'title'], words: 'who spoke' }],
  personal_communication: [dated, { anyOf: ['author', 'title'], words: 'who wrote it' }, held],
};

/** The elements a citation lacks, in words; empty when it has all it needs. A record without a citation lacks one. */
export function missingElements(cite: Citation | undefined): string[] {
  if (!cite) return ['a citation'];
  const needs = needsByType[cite.type] ?? unpublished;
  return needs.filter(({ anyOf }) => !anyOf.some((variable) => cite[variable] !== undefined)).map(({ words }) => words);
}
