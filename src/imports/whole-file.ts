/**
 * Files of a content folder, read and written whole.
 *
 * Rule: a file is there whole or not at all, whenever the process that writes it ends. Its text is written beside it
 * under a hidden name, which no check reads, and takes its place in one renaming.
 */
import { isUtf8 } from 'node:buffer';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { CannotRun } from '../corpus/types.ts';
import { demandPlainFile } from './plain-file.ts';

/** The text of a file, or nothing where there is none. Throws `CannotRun` where it can’t be read. */
export function readWhole(content: string, file: string): string | undefined {
  const path = join(content, file);
  if (!existsSync(path)) return undefined;
  demandPlainFile(path);
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new CannotRun(`${path} can’t be read: ${reasonOf(error)}.`);
  }
}

/** Throws `CannotRun` where a file is not UTF-8: its text would not be the same when it is written again. */
export function demandUtf8(content: string, file: string): void {
  if (!isUtf8(readFileSync(join(content, file))))
    throw new CannotRun(
      `${file} is not UTF-8 text, so nothing can be put into it surely. Open it in a text editor, save it again with the encoding UTF-8, and import again.`,
    );
}

/** Writes a file, over one that is there. Throws `CannotRun` where that can’t be done; what was there stays then. */
export function writeWhole(content: string, file: string, text: string | Buffer): void {
  const path = join(content, file);
  const part = join(dirname(path), `.${basename(path)}.part`);
  try {
    writePart(part, text);
    renameSync(part, path);
  } catch (error) {
    takeAway(part);
    throw new CannotRun(
      `${path} can’t be written: ${reasonOf(error)}. What was written before is whole; when that is mended, import again, and it goes on from there.`,
    );
  }
}

/** The part is always a new file: one that was left, or a link that somebody laid there, is not written into. */
function writePart(part: string, text: string | Buffer): void {
  try {
    writeFileSync(part, text, { flag: 'wx' });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') mkdirSync(dirname(part), { recursive: true });
    else if (code === 'EEXIST') rmSync(part);
    else throw error;
    writeFileSync(part, text, { flag: 'wx' });
  }
}

function takeAway(part: string): void {
  try {
    rmSync(part, { force: true });
  } catch {
    // Why the file can’t be written is told already; that its hidden part stays is nothing to it.
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'there is no room left on the disk',
  EDQUOT: 'the room allotted to you on the disk is used up',
  EROFS: 'the disk can only be read',
  EACCES: 'permission is denied',
  EPERM: 'permission is denied',
};

function reasonOf(error: unknown): string {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return reasons[code] ?? message;
}
