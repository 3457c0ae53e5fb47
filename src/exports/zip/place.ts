/** Where a zip of the site may be written, and how it gets there: whole or not at all, and over nothing but one of ours. */
import {
  closeSync,
  copyFileSync,
  existsSync,
  openSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { CannotWrite } from '../site/problems.ts';
import { demandOutside, demandWritable, isWithin, realPath } from '../site/target.ts';
import { zipEnding } from './portable.ts';

/** A zip with the names used beside it. */
export interface ZipPlace {
  file: string;
  /** The SHA-256 of the zip, in the format of `sha256sum`. */
  sum: string;
  /** The finished zip on its way in. */
  next: string;
  lock: string;
}

/**
 * Judges a file given as `--portable`: it must be absent or an earlier zip of ours, and lie neither in the site’s own
 * folder nor among what the site is made from. Throws a `CannotWrite`; writes nothing.
 */
export function zipPlace(zip: string, site: string, content: string, project: string): ZipPlace {
  const refuse = (why: string): never => {
    throw new CannotWrite(
      `${zip} can’t take the zip: ${why}. Nothing was written. Name another file with --portable.`,
    );
  };
  const file = realPath(zip);
  demandOutside(file, content, project, refuse);
  if (isWithin(file, realPath(site))) refuse('it lies in the folder of the site itself');
  demandWritable(file, refuse);
  const place: ZipPlace = {
    file,
    sum: `${file}.sha256`,
    next: join(dirname(file), `.${basename(file)}.next`),
    lock: join(dirname(file), `.${basename(file)}.lock`),
  };
  if (existsSync(file)) {
    if (!statSync(file).isFile()) refuse('it is a folder');
    if (!isOurs(file)) refuse('it is a file that is no earlier zip of Whence, and it would be lost');
  }
  if (existsSync(place.sum) && !isSumOf(place))
    refuse(`${place.sum} beside it is no checksum of it, and it would be lost`);
  return place;
}

/** Brings a finished zip beside its place. */
export function stageZip(made: string, { next }: ZipPlace): void {
  try {
    renameSync(made, next);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    copyFileSync(made, next);
  }
}

/** Puts the zip brought beside its place into it. A checksum that is missing for a moment is better than a wrong one. */
export function placeZip({ file, sum, next }: ZipPlace, sha256: string): void {
  rmSync(sum, { force: true });
  renameSync(next, file);
  writeFileSync(sum, `${sha256}  ${basename(file)}\n`);
}

/** Takes away what is left beside the place of a zip that did not get there. */
export function clearZip({ next }: ZipPlace): void {
  rmSync(next, { force: true });
}

/** A zip of ours begins as any zip does and says at its very end whose it is. */
function isOurs(file: string): boolean {
  const size = statSync(file).size;
  const head = Buffer.alloc(4);
  const tail = Buffer.alloc(Math.min(size, 128));
  let handle: number;
  try {
    handle = openSync(file, 'r');
  } catch {
    return false;
  }
  try {
    readSync(handle, head, 0, 4, 0);
    readSync(handle, tail, 0, tail.length, size - tail.length);
  } finally {
    closeSync(handle);
  }
  return head.toString('latin1') === 'PK\x03\x04' && zipEnding.test(tail.toString('latin1'));
}

function isSumOf({ file, sum }: ZipPlace): boolean {
  try {
    const text = readFileSync(sum, 'utf8');
    return /^[0-9a-f]{64} {2}/.test(text) && text.slice(66) === `${basename(file)}\n`;
  } catch {
    return false;
  }
}
