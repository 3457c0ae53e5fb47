/**
 * What imports remember of what they wrote into a content folder.
 *
 * Rule: an import owns only what it wrote itself and nobody has edited since. It remembers a digest of each text it
 * wrote, by its place, in a hidden folder that no check reads. A text whose digest is another by now is the author’s.
 * Before an import writes, its memory says what it is about to write; what was written it says when all of it is there.
 * So an import that was cut off is taken up where it ended: what it had not come to is not taken for deleted, and what
 * it had yet to change is not taken for edited.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { CannotRun } from '../corpus/types.ts';
import { earlierMemory, earlierNames, forgetEarlier } from './earlier-memory.ts';
import { digestOf, TextsNow } from './texts.ts';
import { readWhole, writeWhole } from './whole-file.ts';

/**
 * Whose memory it is. Each name of a GEDCOM import has its own; tables share one, and gazetteers another, since a
 * record made of one table may be made of a newer one of another name.
 */
export type MemoryName = 'tables' | 'gazetteers' | `gedcom/${string}`;

/** Digests of texts by their places. */
export type Digests = ReadonlyMap<string, string>;

export interface ImportMemory {
  /** The file that was read last; absent of a memory that imports of many files share. */
  of?: FileRead;
  written: Digests;
}

export interface FileRead {
  /** The file’s name. */
  file: string;
  /** SHA-256 of its bytes. */
  digest: string;
  /** Whatever the import wants to know again, such as ids it gave. */
  given: Readonly<Record<string, unknown>>;
}

/** A memory as it lies in its file. */
export interface Kept {
  of?: FileRead;
  /** What was about to be written when this was; absent when all of it is there. */
  writing?: Record<string, string>;
  written: Record<string, string>;
}

const version = 2;
const folder = '.imported';

/** Where a memory is, relative to the content folder. */
export function memoryFile(name: MemoryName): string {
  return `${folder}/${name}.json`;
}

/** The names under which GEDCOM files were imported into a content folder, sorted. */
export function gedcomNames(content: string): string[] {
  const names = namesIn(join(content, folder, 'gedcom'));
  return [...new Set([...names, ...earlierNames(content)])].sort();
}

function namesIn(path: string): string[] {
  try {
    return readdirSync(path).flatMap((file) => /^([^.].*)\.json$/.exec(file)?.[1] ?? []);
  } catch {
    // Nothing was imported yet.
    return [];
  }
}

/**
 * What earlier imports remember under a name, if there were any. Throws `CannotRun` where it can’t be read: nothing
 * would be known to be theirs.
 */
export function readMemory(content: string, name: MemoryName): ImportMemory | undefined {
  const file = memoryFile(name);
  const text = readWhole(content, file);
  const own = text === undefined ? undefined : keptIn(text);
  const earlier = earlierMemory(content, name);
  if (text !== undefined && !own) throw unreadable(file, name);
  if (earlier && !earlier.kept) throw unreadable(earlier.file, name);
  const kept = own ?? earlier?.kept;
  if (!kept) return undefined;
  // What an earlier version remembers for many files is taken over file by file.
  const before = kept.of ? {} : earlier?.kept?.written;
  return {
    ...(kept.of ? { of: kept.of } : {}),
    written: settled(content, { ...kept, written: { ...before, ...kept.written } }),
  };
}

function unreadable(file: string, name: MemoryName): CannotRun {
  return new CannotRun(
    `${file} can’t be read as what earlier imports remember. Put it back from a copy, or ${
      name.startsWith('gedcom/')
        ? 'import under another name with --name.'
        : 'delete it: then whatever is there counts as yours, and stays as it is.'
    }`,
  );
}

/** A memory from the text of its file, or nothing. */
function keptIn(text: string): Kept | undefined {
  try {
    // Authors are told to take lines out, and the comma before the last of them may stay.
    const value = JSON.parse(text.replace(/,(?=\r?\n\})/g, '')) as Kept & { version: number };
    const { of, writing, written } = value;
    const sound =
      value.version === version &&
      isDigests(written) &&
      (writing === undefined || isDigests(writing)) &&
      (of === undefined || (typeof of === 'object' && typeof of.given === 'object'));
    return sound ? value : undefined;
  } catch {
    return undefined;
  }
}

function isDigests(value: unknown): boolean {
  return (
    typeof value === 'object' &&
    value !== null &&
    !Array.isArray(value) &&
    Object.values(value).every((digest) => typeof digest === 'string')
  );
}

/** What was written by an import that may have been cut off, as the texts themselves show. */
function settled(content: string, { written, writing }: Kept): Digests {
  const known = new Map(Object.entries(written));
  const texts = new TextsNow(content);
  for (const [place, digest] of Object.entries(writing ?? {})) {
    const there = texts.at(place);
    // It had not come to be written; or it is as it was before.
    if (there === undefined || digestOf(there) === known.get(place)) continue;
    known.set(place, digest);
  }
  return known;
}

/** Remembers what is about to be written, beside what was written before. */
export function rememberBefore(
  content: string,
  name: MemoryName,
  memory: ImportMemory,
  writing: Digests,
): void {
  writeWhole(content, memoryFile(name), textOf(memory, writing));
}

/** Remembers what is written. Nothing is touched where that is remembered already. */
export function remember(content: string, name: MemoryName, memory: ImportMemory): void {
  const text = textOf(memory);
  if (readWhole(content, memoryFile(name)) !== text) writeWhole(content, memoryFile(name), text);
  forgetEarlier(content, name);
}

/** A line for each place, sorted, so that a line can be taken out and two versions be compared. */
function textOf({ of, written }: ImportMemory, writing?: Digests): string {
  const lines = (digests: Digests) =>
    `{${[...digests]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([place, digest]) => `\n${JSON.stringify(place)}: ${JSON.stringify(digest)}`)
      .join(',')}\n}`;
  return [
    `{"version": ${version}`,
    ...(of ? [`"of": ${JSON.stringify(of)}`] : []),
    ...(writing ? [`"writing": ${lines(writing)}`] : []),
    `"written": ${lines(written)}}\n`,
  ].join(',\n');
}
