/**
 * What an import writes into a content folder, and what it may touch there.
 *
 * Rule: an import owns only what it wrote itself and nobody has edited since. It remembers a digest of each text it
 * wrote, in `imports/<name>.json` of the content folder. A text whose digest is another by now is the author’s, and
 * stays; so does one that the author moved or deleted. Lists are taken apart at the entries that begin at the left
 * margin, so that one entry edited is one entry left alone.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { CannotRun } from '../corpus/types.ts';

/** A text that an import makes: a file of its own, or one entry of a list. */
export interface Piece {
  /** Relative to the content folder, with forward slashes. */
  file: string;
  /** The id of an entry of a list; absent for a whole file. */
  entry?: string;
  text: string;
  /** What it holds, such as `person:maurice-phelan`: nothing is made that stands elsewhere already. */
  key: string;
}

/** What an import remembers. */
export interface ImportMemory {
  version: 1;
  /** The name of the file that was read. */
  file: string;
  /** SHA-256 of its bytes. */
  digest: string;
  /** False while the files are being written: what is missing then was cut off, not deleted. */
  complete: boolean;
  /** Whatever the kind of import wants to know again, such as ids it gave. */
  given: Record<string, unknown>;
  /** The digest of each piece written, by `file` or `file#entry`. */
  written: Record<string, string>;
}

export type Fate = 'new' | 'changed' | 'same' | 'edited' | 'deleted' | 'elsewhere' | 'gone';

export interface PlannedChange {
  /** `file` or `file#entry`. */
  place: string;
  fate: Fate;
}

export interface ChangePlan {
  changes: PlannedChange[];
  /** The whole new text of each file that changes. */
  files: Map<string, string>;
  written: Record<string, string>;
}

/** The folder of a content folder that holds what imports remember and report. */
export const importsFolder = 'imports';

/** What an earlier import of this name remembers, if there was one. */
export function readMemory(content: string, name: string): ImportMemory | undefined {
  const path = join(content, importsFolder, `${name}.json`);
  if (!existsSync(path)) return undefined;
  try {
    const value = JSON.parse(readFileSync(path, 'utf8')) as ImportMemory;
    if (value.version === 1 && typeof value.written === 'object' && typeof value.given === 'object')
      return value;
  } catch {
    // Told below: whatever is wrong with it, the way out is the same.
  }
  throw new CannotRun(
    `${importsFolder}/${name}.json can’t be read as what an earlier import remembers. Put it back from a copy, or import under another name with --name.`,
  );
}

/** Works out what would become of each piece. `elsewhere` says whether the content has a key in another place. */
export function planChanges(
  content: string,
  pieces: readonly Piece[],
  memory: ImportMemory | undefined,
  elsewhere: (key: string, file: string) => boolean,
): ChangePlan {
  const changes: PlannedChange[] = [];
  const files = new Map<string, string>();
  const written: Record<string, string> = {};
  const before = memory?.written ?? {};
  for (const [file, own] of byFile(pieces)) {
    const path = join(content, file);
    const there = existsSync(path) ? readFileSync(path, 'utf8') : undefined;
    const list = own[0]!.entry !== undefined;
    const parts =
      there === undefined ? new Map<string, string>() : list ? partsOf(there) : new Map([['', there]]);
    if (there === undefined && list) parts.set('', listHead);
    let changed = false;
    for (const piece of own) {
      const place = placeOf(piece);
      const digest = digestOf(piece.text);
      const current = there === undefined ? undefined : parts.get(piece.entry ?? '');
      const mine = before[place];
      let fate: Fate;
      if (current === undefined) {
        if (mine !== undefined && memory!.complete)
          fate = elsewhere(piece.key, file) ? 'elsewhere' : 'deleted';
        else fate = elsewhere(piece.key, file) ? 'elsewhere' : 'new';
      } else if (digestOf(current) === digest) fate = 'same';
      else fate = mine === digestOf(current) ? 'changed' : 'edited';
      if (fate === 'new' || fate === 'changed') {
        changed = true;
        parts.set(piece.entry ?? '', piece.text);
        written[place] = digest;
      } else if (mine !== undefined) written[place] = mine;
      else if (fate === 'same') written[place] = digest;
      changes.push({ place, fate });
    }
    if (!changed) continue;
    files.set(
      file,
      [...parts.values()].map((part) => (part === '' || part.endsWith('\n') ? part : `${part}\n`)).join(''),
    );
  }
  const placed = new Set(changes.map(({ place }) => place));
  for (const [place, digest] of Object.entries(before)) {
    if (Object.hasOwn(written, place) || placed.has(place)) continue;
    written[place] = digest;
    changes.push({ place, fate: 'gone' });
  }
  return { changes, files, written };
}

function byFile(pieces: readonly Piece[]): Map<string, Piece[]> {
  const files = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const list = files.get(piece.file);
    if (list) list.push(piece);
    else files.set(piece.file, [piece]);
  }
  return files;
}

function placeOf({ file, entry }: Piece): string {
  return entry === undefined ? file : `${file}#${entry}`;
}

/** The entries of a list by their ids, and what stands before the first under an empty id. */
function partsOf(text: string): Map<string, string> {
  const parts = new Map<string, string>();
  const starts = [...text.matchAll(/^- /gm)].map(({ index }) => index);
  parts.set('', text.slice(0, starts[0] ?? text.length));
  starts.forEach((start, i) => {
    const part = text.slice(start, starts[i + 1] ?? text.length);
    const id =
      /^- {1,4}(?:\{ {0,4})?id: {0,4}['"]?([a-z0-9-]+)/.exec(part)?.[1] ??
      /^ {2}id: *['"]?([a-z0-9-]+)/m.exec(part)?.[1] ??
      `at ${start}`;
    parts.set(parts.has(id) ? `${id} at ${start}` : id, part);
  });
  return parts;
}

/** What a list that an import begins says of itself. */
const listHead =
  '# Written by an import. An entry that you edit stays as you leave it when a newer file is imported.\n';

function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 16);
}

/** Writes the files of a plan. What the import remembers is written first, and said to be whole last. */
export function writeChanges(
  content: string,
  name: string,
  plan: ChangePlan,
  memory: Omit<ImportMemory, 'version' | 'complete' | 'written'>,
): void {
  const remembered = (complete: boolean): string =>
    `${JSON.stringify({ version: 1, ...memory, complete, written: plan.written })}\n`;
  const path = `${importsFolder}/${name}.json`;
  writeWhole(content, path, remembered(false));
  for (const [file, text] of plan.files) writeWhole(content, file, text);
  writeWhole(content, path, remembered(true));
}

const made = new Set<string>();

/** A file is there whole or not at all. */
export function writeWhole(content: string, file: string, text: string | Buffer): void {
  const path = join(content, file);
  const folder = dirname(path);
  if (!made.has(folder)) {
    mkdirSync(folder, { recursive: true });
    made.add(folder);
  }
  const part = `${path}.part`;
  try {
    writeFileSync(path, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw cannotWrite(path, error);
    try {
      writeFileSync(part, text);
      renameSync(part, path);
    } catch (problem) {
      rmSync(part, { force: true });
      throw cannotWrite(path, problem);
    }
  }
}

function cannotWrite(path: string, error: unknown): CannotRun {
  return new CannotRun(`${path} can’t be written: ${(error as Error).message}.`);
}
