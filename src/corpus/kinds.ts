import type { z } from 'zod';
import { caseFile } from '../model/case.ts';
import { personEntry, personFile } from '../model/person.ts';
import { placeEntry } from '../model/place.ts';
import { recordFile } from '../model/record.ts';
import { repliesFile, repliesName, reviewFile } from '../model/review.ts';
import { search } from '../model/search.ts';
import { series } from '../model/series.ts';
import { signatureEndings } from './signatures/endings.ts';
import type { EntryKind } from './types.ts';

/** What one folder of the content holds. */
export interface FolderKind {
  kind: EntryKind;
  folder: string;
  /** The schema of a Markdown file’s front matter, and the endings of such files; absent where none are expected. */
  markdown?: { schema: z.ZodType; endings: readonly string[] };
  /** The schema of one entry of a list in a .yaml file. */
  list?: z.ZodType;
  /**
   * Of .yaml files that hold one entry each, in folders named after a case: the schema, the kind and schema of a file
   * with a name of its own, and the endings of what may stand beside a file.
   */
  perCase?: {
    schema: z.ZodType;
    named: Readonly<Record<string, { kind: EntryKind; schema: z.ZodType }>>;
    beside: readonly string[];
  };
  /** What belongs into the folder, for messages. */
  expected: string;
}

/** The folders of a content folder, in the order in which they are read. */
export const folderKinds: readonly FolderKind[] = [
  {
    kind: 'case',
    folder: 'cases',
    markdown: { schema: caseFile, endings: ['.md', '.mdx'] },
    expected: '.md and .mdx files',
  },
  {
    kind: 'record',
    folder: 'records',
    markdown: { schema: recordFile, endings: ['.md'] },
    expected: '.md files',
  },
  {
    kind: 'person',
    folder: 'people',
    markdown: { schema: personFile, endings: ['.md'] },
    list: personEntry,
    expected: '.md files and .yaml lists',
  },
  { kind: 'place', folder: 'places', list: placeEntry, expected: '.yaml lists' },
  { kind: 'series', folder: 'series', list: series, expected: '.yaml lists' },
  { kind: 'search', folder: 'searches', list: search, expected: '.yaml lists' },
  {
    kind: 'review',
    folder: 'reviews',
    perCase: {
      schema: reviewFile,
      named: { [repliesName]: { kind: 'replies', schema: repliesFile } },
      beside: signatureEndings,
    },
    expected: 'folders named after a case, with .yaml files',
  },
];

/** The list of those whose signatures the author knows, at the top of the folder. */
export const reviewersName = 'reviewers.yaml';

/** Folders that are not read as entries: scans, lists of names, styles of citation, and what imports report. */
export const otherFolders = ['media', 'names', 'styles', 'imports'];
