/** Where an export is written: a file that is whole or not there at all, or standard output. */
import { existsSync, mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { Option } from 'commander';
import { CannotRun } from '../../corpus/types.ts';
import { isWithin, realPath } from '../../exports/site/target.ts';
import { fromCaller } from './paths.ts';
import { readersMayStop } from './output.ts';

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

/** Writes a text to a file, or prints it. */
export function writeOut(path: string | undefined, content: string, text: string): void {
  if (path === undefined) {
    readersMayStop();
    process.stdout.write(text);
    return;
  }
  demandOutsideContent(path, content);
  if (existsSync(path) && statSync(path).isDirectory())
    throw new CannotRun(`${path} is a folder; name the file itself with --out.`);
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(`${path}.part`, text);
    renameSync(`${path}.part`, path);
  } catch (error) {
    rmSync(`${path}.part`, { force: true });
    throw new CannotRun(`${path} can’t be written: ${(error as Error).message}.`);
  }
  process.stderr.write(`Written: ${shown(path)}\n`);
}

/** A path as the caller would write it. */
export function shown(path: string): string {
  const here = relative(process.env['INIT_CWD'] ?? process.cwd(), path);
  return here === '' ? '.' : here.startsWith(join('..', '..')) ? path : here;
}
