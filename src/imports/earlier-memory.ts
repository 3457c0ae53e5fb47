/**
 * What earlier versions of the tool remembered of imports, in two other places and shapes. It is taken over when an
 * import of its name writes next, so that what they wrote is still known to be an import’s.
 *
 * - `imports/<name>.json`: a GEDCOM import; a digest for each place, of what was written or, where the import was cut
 *   off, was to be.
 * - `.imported/files.json`: tables and gazetteers together; the SHA-256 of each file, in hexadecimal.
 */
import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Kept, MemoryName } from './memory.ts';
import { readWhole, writeWhole } from './whole-file.ts';

const filesFile = '.imported/files.json';
const folder = 'imports';

/** Which files of the shared memory are whose: tables made records, and gazetteers lists of places. */
const shares = { tables: 'records/', gazetteers: 'places/' } as const;

export interface EarlierMemory {
  /** Where it lies, relative to the content folder. */
  file: string;
  /** What it says; nothing where it can’t be read. */
  kept: Kept | undefined;
}

/** What an earlier version remembered under a name, if it did. */
export function earlierMemory(content: string, name: MemoryName): EarlierMemory | undefined {
  const file = fileOf(name);
  const text = readWhole(content, file);
  if (text === undefined) return undefined;
  try {
    return { file, kept: isShared(name) ? ofFiles(text, shares[name]) : ofGedcom(text) };
  } catch {
    return { file, kept: undefined };
  }
}

/** The names of GEDCOM imports that an earlier version remembered. */
export function earlierNames(content: string): string[] {
  try {
    return readdirSync(join(content, folder)).flatMap((file) => /^([^.].*)\.json$/.exec(file)?.[1] ?? []);
  } catch {
    return [];
  }
}

/** Takes away what has been taken over; of the shared memory, what is of this name. */
export function forgetEarlier(content: string, name: MemoryName): void {
  const file = fileOf(name);
  const text = readWhole(content, file);
  if (text === undefined) return;
  const others = isShared(name)
    ? Object.entries(filesIn(text)).filter(([path]) => !path.startsWith(shares[name]))
    : [];
  if (others.length === 0) rmSync(join(content, file), { force: true });
  else
    writeWhole(
      content,
      file,
      `${JSON.stringify({ version: 1, files: Object.fromEntries(others) }, null, 1)}\n`,
    );
}

function fileOf(name: MemoryName): string {
  return isShared(name) ? filesFile : `${folder}/${name.slice(name.indexOf('/') + 1)}.json`;
}

function isShared(name: MemoryName): name is keyof typeof shares {
  return Object.hasOwn(shares, name);
}

function ofFiles(text: string, share: string): Kept {
  const own = Object.entries(filesIn(text)).filter(([file]) => file.startsWith(share));
  return { written: Object.fromEntries(own.map(([file, hex]) => [file, shortened(hex)])) };
}

/** The files of the shared memory. Throws where the text says otherwise. */
function filesIn(text: string): Record<string, string> {
  const { files } = JSON.parse(text) as { files: Record<string, unknown> };
  return Object.fromEntries(
    Object.entries(files).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
}

/** A SHA-256 in the form in which digests are remembered now. */
function shortened(hex: string): string {
  return Buffer.from(hex, 'hex').toString('base64url').slice(0, 16);
}

function ofGedcom(text: string): Kept {
  const { version, file, digest, complete, given, written } = JSON.parse(text) as {
    version: number;
    file: string;
    digest: string;
    complete: boolean;
    given: Record<string, unknown>;
    written: Record<string, string>;
  };
  if (version !== 1 || typeof given !== 'object' || typeof written !== 'object')
    throw new Error('another file');
  const of = { file, digest, given };
  return complete ? { of, written } : { of, writing: written, written: {} };
}
