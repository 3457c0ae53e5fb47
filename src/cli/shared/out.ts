/** Where an export is written: a file that is whole or not there at all, or standard output. */
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Option } from 'commander';
import { CannotRun } from '../../corpus/types.ts';
import { isWithin, realPath } from '../../exports/site/target.ts';
import { demandEarlier, type Mark } from './earlier.ts';
import { asCalled, fromCaller } from './paths.ts';

/** `--out FILE`. */
export function outOption(what = 'the file it is written to; without it, standard output'): Option {
  return new Option('--out <path>', what).argParser(fromCaller);
}

/** Refuses a file or folder that lies in the content it is made from. */
export function demandOutsideContent(path: string, content: string): void {
  if (isWithin(realPath(path), realPath(content)))
    throw new CannotRun(
      `${path} lies in the content folder, where it would be read as content. Name another place with --out.`,
    );
}

export interface Out {
  /** Without it, standard output. */
  path: string | undefined;
  content: string;
  /** Tells an earlier export of the same kind, which is written over. */
  isOurs: Mark;
  force: boolean;
}

/** Throws `CannotRun` where an export may not be written. */
export function demandPlace({ path, content, isOurs, force }: Out): void {
  if (path === undefined) return;
  demandOutsideContent(path, content);
  demandEarlier(path, isOurs, force);
}

/** Writes a text to a file, or prints it. */
export function writeOut(out: Out, text: string): void {
  if (out.path === undefined) {
    process.stdout.write(text);
    return;
  }
  demandPlace(out);
  writeFile(out.path, (part) => writeFileSync(part, text, { flag: 'wx' }));
  process.stderr.write(`Written: ${shown(out.path)}\n`);
}

/**
 * Makes a file that is whole or not there at all: `write` makes it anew under a hidden name beside its place, and must
 * not write into what is there. Folders above it are made. Throws `CannotRun` where that can’t be done.
 */
export function writeFile(path: string, write: (part: string) => void): void {
  let part: string | undefined;
  try {
    mkdirSync(dirname(path), { recursive: true });
    part = freeNameBeside(path);
    write(part);
    renameSync(part, path);
  } catch (error) {
    if (part !== undefined) rmSync(part, { force: true });
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    throw new CannotRun(`${path} can’t be written: ${message}.`);
  }
}

function freeNameBeside(path: string): string {
  for (let n = 0; ; n++) {
    const part = join(dirname(path), `.${basename(path)}.${process.pid}-${n}.part`);
    if (!existsSync(part)) return part;
  }
}

/** A path as the caller would write it. */
export function shown(path: string): string {
  const here = asCalled(path);
  return here.startsWith(join('..', '..')) ? path : here;
}
