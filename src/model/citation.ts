/** The citation of a record: CSL 1.0.2 item types and variables (schema `csl-data.json`), with dates in EDTF. */
import { z } from 'zod';
import { edtfDate, text, textOrNumber } from './common.ts';

/** Item types of CSL 1.0.2. */
export const cslTypes = [
  'article', 'article-journal', 'article-magazine', 'article-newspaper', 'bill', 'book', 'broadcast', 'chapter', 'classic',
  'collection', 'dataset', 'document', 'entry', 'entry-dictionary', 'entry-encyclopedia', 'event', 'figure', 'graphic',
  'hearing', 'interview', 'legal_case', 'legislation', 'manuscript', 'map', 'motion_picture', 'musical_score', 'pamphlet',
  'paper-conference', 'patent', 'performance', 'periodical', 'personal_communication', 'post', 'post-weblog', 'regulation',
  'report', 'review', 'review-book', 'software', 'song', 'speech', 'standard', 'thesis', 'treaty', 'webpage',
] as const;

const standardVariables = [
  'abstract', 'annote', 'archive', 'archive_collection', 'archive_location', 'archive-place', 'authority', 'call-number',
  'citation-key', 'citation-label', 'collection-title', 'container-title', 'container-title-short', 'dimensions', 'division',
  'DOI', 'event-place', 'event-title', 'genre', 'ISBN', 'ISSN', 'jurisdiction', 'keyword', 'language', 'license', 'medium',
  'note', 'original-publisher', 'original-publisher-place', 'original-title', 'part-title', 'PMCID', 'PMID', 'publisher',
  'publisher-place', 'references', 'reviewed-genre', 'reviewed-title', 'scale', 'source', 'status', 'title', 'title-short',
  'URL', 'volume-title', 'year-suffix',
] as const;

const numberVariables = [
  'chapter-number', 'citation-number', 'collection-number', 'edition', 'first-reference-note-number', 'issue', 'locator',
  'number', 'number-of-pages', 'number-of-volumes', 'page', 'page-first', 'part-number', 'printing-number', 'section',
  'supplement-number', 'version', 'volume',
] as const;

/** Date variables of CSL 1.0.2; each is an EDTF date here. */
export const cslDateVariables = ['accessed', 'available-date', 'event-date', 'issued', 'original-date', 'submitted'] as const;

/** Name variables of CSL 1.0.2. */
export const cslNameVariables = [
  'author', 'chair', 'collection-editor', 'compiler', 'composer', 'container-author', 'contributor', 'curator', 'director',
  'editor', 'editorial-director', 'executive-producer', 'guest', 'host', 'illustrator', 'interviewer', 'narrator', 'organizer',
  'original-author', 'performer', 'producer', 'recipient', 'reviewed-author', 'script-writer', 'series-creator', 'translator',
] as const;

const name = z.strictObject({
  family: text.optional(),
  given: text.optional(),
  literal: text.optional(),
  suffix: text.optional(),
  'dropping-particle': text.optional(),
  'non-dropping-particle': text.optional(),
});
export type CslName = z.output<typeof name>;

function optional<K extends string, T extends z.ZodType>(keys: readonly K[], schema: T) {
  return Object.fromEntries(keys.map((key) => [key, schema.optional()])) as unknown as { [key in K]: z.ZodOptional<T> };
}

/** The `cite` block of a record. */
export const citation = z.strictObject({
  type: z.enum(cslTypes),
  ...optional(standardVariables, textOrNumber),
  ...optional(numberVariables, textOrNumber),
  ...optional(cslDateVariables, edtfDate),
  ...optional(cslNameVariables, z.array(name)),
});
export type Citation = z.output<typeof citation>;
