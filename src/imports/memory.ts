/**
 * What imports wrote into a content folder, so that a later import of the same file touches only what its author has
 * not edited since. It stands in a hidden file of the folder, which no check reads: the SHA-256 of every file written.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const memoryFile = '.imported/files.json';

/** What stands in the way of a file, or doesn’t. */
export type Standing =
  | 'new'
  /** The file is there, word for word. */
  | 'same'
  /** An import wrote the file, nobody has edited it, and it would now be another. */
  | 'changed'
  /** An import wrote the file, and it has been edited since. */
  | 'edited'
  /** No import wrote the file that is there. */
  | 'taken'
  /** An import wrote the file, and it has been taken away since. */
  | 'removed';

export interface Plan {
  file: string;
  text: string;
  standing: Standing;
  /** What the file says now, where it would be another. */
  before?: string;
}

/** Files an import would write, each with what stands in its way. Nothing is written. */
export function planFiles(content: string, files: readonly { file: string; text: string }[]): Plan[] {
  const remembered = read(content);
  return files.map(({ file, text }) => {
    const path = join(content, file);
    const known = remembered.get(file);
    if (!existsSync(path)) return { file, text, standing: known === undefined ? 'new' : 'removed' };
    const bytes = readFileSync(path);
    const there = digest(bytes);
    if (there === digest(text)) return { file, text, standing: 'same' };
    if (known === undefined) return { file, text, standing: 'taken' };
    return {
      file,
      text,
      standing: known === there ? 'changed' : 'edited',
      before: bytes.toString('utf8'),
    };
  });
}

/** Writes what is new or unedited, each file whole, and remembers it. Gives the files written. */
export function writePlanned(content: string, plans: readonly Plan[]): string[] {
  const remembered = read(content);
  const written: string[] = [];
  for (const { file, text, standing } of plans) {
    if (standing === 'same') remembered.set(file, digest(text));
    if (standing !== 'new' && standing !== 'changed') continue;
    const path = join(content, file);
    mkdirSync(dirname(path), { recursive: true });
    if (standing === 'new') writeFileSync(path, text, { flag: 'wx' });
    else {
      writeFileSync(`${path}.part`, text);
      renameSync(`${path}.part`, path);
    }
    remembered.set(file, digest(text));
    written.push(file);
  }
  if (written.length > 0) {
    const path = join(content, memoryFile);
    mkdirSync(dirname(path), { recursive: true });
    const files = Object.fromEntries([...remembered].sort(([a], [b]) => (a < b ? -1 : 1)));
    writeFileSync(path, `${JSON.stringify({ version: 1, files }, null, 1)}\n`);
  }
  return written;
}

function read(content: string): Map<string, string> {
  try {
    const { files } = JSON.parse(readFileSync(join(content, memoryFile), 'utf8')) as {
      files: Record<string, string>;
    };
    return new Map(Object.entries(files).filter(([, sum]) => typeof sum === 'string'));
  } catch {
    // Without a memory nothing is known to be ours, and nothing is written over.
    return new Map();
  }
}

const digest = (content: Buffer | string) => createHash('sha256').update(content).digest('hex');
