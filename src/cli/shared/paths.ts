import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project’s own folder: where `astro.config.mjs` and the demo content are. */
export const projectRoot = fileURLToPath(new URL('../../../', import.meta.url)).replace(/[\\/]$/, '');

/** The content that is taken when none is named: the project’s own. */
export const defaultContent = resolve(projectRoot, 'content');

/** Where a site is written when no folder is named. */
export const defaultOut = resolve(projectRoot, 'dist');

/**
 * The absolute path of one given on the command line. npm runs scripts in the project’s folder and leaves the one the
 * author stood in in `INIT_CWD`; relative paths are meant from there.
 */
export function fromCaller(path: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), path);
}
