import type { Facts } from '../model/facts.ts';
import type { Finding, Position, ValuePath } from '../model/finding.ts';
import type { Signature } from '../model/review.ts';

export type EntryKind =
  | 'site'
  | 'case'
  | 'record'
  | 'person'
  | 'place'
  | 'series'
  | 'search'
  | 'review'
  /** The author’s answers to the reviews of a case. */
  | 'replies'
  /** Somebody whose signature the author knows. */
  | 'reviewer';

/** Names one thing the author wrote: `record:declaration-1871`, `person:maurice-phelan`, `site:site`. */
export type EntryKey = `${EntryKind}:${string}`;

/** How many of each the content holds, as `check --format json` reports them (built-in places are not counted). */
export interface Counts {
  cases: number;
  records: number;
  mentions: number;
  people: number;
  places: number;
  searches: number;
}

/** A content folder, parsed, with its references resolved and a position for every value. */
export interface Corpus extends Facts {
  /** The absolute path of the content folder. */
  root: string;
  counts: Counts;
  /** The style of citation that the author has brought, as it stands in its file; absent where it cannot be had. */
  citationStyle: { file: string; text: string } | undefined;
  /** What the signature of a review shows, by the id of the review; absent where it has none, or a bad one. */
  signatures: ReadonlyMap<string, Signature>;
  /** Everything found wrong while reading: form, references, encodings. Sorted by file, line, column. */
  findings: Finding[];
  /** Entries that could not be read or whose form or references are wrong. They may be missing from the maps. */
  broken: ReadonlySet<EntryKey>;
  /** The file an entry stands in, relative to the content folder, with forward slashes. */
  fileOf(entry: EntryKey): string | undefined;
  /**
   * Where a value stands: the value itself, or its key with `key: true`. Falls back to the nearest enclosing value
   * that exists, and to the head of the file.
   */
  locate(entry: EntryKey, path: ValuePath, options?: { key?: boolean }): Position;
  /** Where a character of an entry's Markdown body stands, by its offset in the body. */
  locateInBody(entry: EntryKey, offset: number): Position;
  /** The text of a source file (BOM removed, line ends as LF), for excerpts. */
  source(file: string): string;
}

/** The content cannot be looked at all (no such folder, no permission …): exit code 2. */
export class CannotRun extends Error {
  override name = 'CannotRun';
}
