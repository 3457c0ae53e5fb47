import { isAbsolute, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project’s own folder: where `astro.config.mjs` and the demo content are. */
export const projectRoot = fileURLToPath(new URL('../../../', import.meta.url)).replace(/[\\/]$/, '');

/** The content that is taken when none is named: the project’s own. */
export const defaultContent = resolve(projectRoot, 'content');

/** Where a site is written when no folder is named. */
export const defaultOut = resolve(projectRoot, 'dist');

/**
 * The absolute path of one given on the command line. npm runs scripts in the project’s folder and leaves the one the
 * author stood in in `INIT_CWD`; relative paths are meant from there. What can’t be meant, and a folder that is gone, is
 * answered in a sentence, and ends the process with exit code 2.
 */
export function fromCaller(path: string): string {
  if (path === '~' || /^~[\\/]/.test(path))
    return refuse(
      `${path} begins with ~, which stands for your own folder only without quotes and after a space, as in --out ~/site. Write it so, or the folder in full; for one that is really called ~ write ./${path}.`,
    );
  if (isAbsolute(path)) return resolve(path);
  const folder = callerFolder();
  return folder === undefined
    ? refuse('The folder you stand in is gone. Change into one that is there (cd ~), and try again.')
    : resolve(folder, path);
}

/** A path as the author would write it from where they stand; `.` for that very folder. */
export function asCalled(path: string): string {
  const folder = callerFolder();
  return folder === undefined ? path : relative(folder, path) || '.';
}

function callerFolder(): string | undefined {
  try {
    return process.env['INIT_CWD'] ?? process.cwd();
  } catch {
    return undefined;
  }
}

function refuse(why: string): never {
  process.stderr.write(`${why}\n`);
  process.exit(2);
}
