/**
 * Files of a content folder, read and written whole.
 *
 * Rule: a file is there whole or not at all, whenever the process that writes it ends. Its text is written beside it
 * under a hidden name, which no check reads, and takes its place in one renaming.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { CannotRun } from '../corpus/types.ts';

/** The text of a file, or nothing where there is none. Throws `CannotRun` where it can’t be read. */
export function readWhole(content: string, file: string): string | undefined {
  const path = join(content, file);
  if (!existsSync(path)) return undefined;
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new CannotRun(`${path} can’t be read: ${(error as Error).message}.`);
  }
}

/** Writes a file, over one that is there. Throws `CannotRun` where that can’t be done; what was there stays then. */
export function writeWhole(content: string, file: string, text: string | Buffer): void {
  const path = join(content, file);
  const part = join(dirname(path), `.${basename(path)}.part`);
  try {
    try {
      writeFileSync(part, text);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(part, text);
    }
    renameSync(part, path);
  } catch (error) {
    takeAway(part);
    throw new CannotRun(`${path} can’t be written: ${(error as Error).message}.`);
  }
}

function takeAway(part: string): void {
  try {
    rmSync(part, { force: true });
  } catch {
    // Why the file can’t be written is told already; that its hidden part stays is nothing to it.
  }
}
