/** Where a site may be written: never over anything that is not an earlier site of ours, and never into its own sources. */
import { accessSync, constants, existsSync, lstatSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { manifestName, readManifest } from './manifest.ts';
import { CannotWrite } from './problems.ts';

/** A folder to write a site into, with the names used beside it while that happens. All are absolute real paths. */
export interface Target {
  folder: string;
  /** The finished new site, on its way in. */
  next: string;
  /** The earlier site, on its way out. */
  previous: string;
  /** Stands there while `next` and `previous` are ours: without it, whatever has one of those names is somebody’s. */
  sign: string;
  lock: string;
}

/** What the project is made from. Everything whose name begins with a full stop belongs to it too. */
const sources = ['src', 'components', 'content', 'tests', 'public', 'docs', 'node_modules'];

/**
 * Judges a folder given as `--out`. It must be absent, empty, or hold an earlier site of ours, and neither contain nor
 * lie inside the content folder or the project’s sources. Links are followed before anything is judged. Throws a
 * `CannotWrite`; writes nothing.
 */
export function targetAt(out: string, content: string, project: string): Target {
  const folder = realPath(out);
  const refuse = (why: string): never => {
    throw new CannotWrite(
      `${out} can’t take the site: ${why}. Nothing was written. Name another folder with --out.`,
    );
  };
  demandOutside(folder, content, project, refuse);
  if (isWithin(realPath(content), folder)) refuse('it contains the content folder');
  if (isWithin(realPath(project), folder)) refuse('it contains the project itself');
  const target = beside(folder);
  for (const place of [folder, target.next, target.previous]) {
    const state = stateOf(place);
    const named = place === folder ? 'it' : `${place}, which is needed while the site is written,`;
    if (state === 'file') refuse(`${named} is a file`);
    if (state === 'unreadable') refuse(`${named} can’t be opened: permission is denied`);
    const isOwn = place === folder || existsSync(target.sign) || isSetAside(target, place);
    if (state === 'other' || (state !== 'absent' && !isOwn))
      refuse(
        state === 'other'
          ? `${named} holds files that are no earlier site of Whence (it has no ${manifestName} of ours), and they would be lost`
          : `${named} is there already and was not left by a build; it would be lost`,
      );
  }
  if (folder === dirname(folder)) refuse('it is the root of the disk');
  demandWritable(folder, refuse);
  return target;
}

/** Refuses a real path that lies in the content folder or among the project’s sources. */
export function demandOutside(
  path: string,
  content: string,
  project: string,
  refuse: (why: string) => never,
): void {
  const projectReal = realPath(project);
  if (isWithin(path, realPath(content)))
    refuse('it lies in the content folder, and a site is never written among the files it is made from');
  if (!isWithin(path, projectReal)) return;
  const [first = ''] = relative(projectReal, path).split(sep);
  if (sources.includes(first) || first.startsWith('.'))
    refuse(`it lies among the project’s own files (${first})`);
}

/** Refuses a real path beside which nothing can be written. */
export function demandWritable(path: string, refuse: (why: string) => never): void {
  const ground = nearestExisting(dirname(path));
  if (!statSync(ground).isDirectory()) refuse(`${ground} is a file`);
  try {
    accessSync(ground, constants.W_OK | constants.X_OK);
  } catch {
    refuse(`nothing may be written into ${ground}`);
  }
}

/** The names used beside a folder. */
export function beside(folder: string): Target {
  return {
    folder,
    next: `${folder}.next`,
    previous: `${folder}.previous`,
    sign: join(dirname(folder), `.${basename(folder)}.exchange`),
    lock: join(dirname(folder), `.${basename(folder)}.lock`),
  };
}

type State = 'absent' | 'empty' | 'ours' | 'file' | 'unreadable' | 'other';

/** What stands at a path. A folder begun by us and not finished counts as ours. */
function stateOf(path: string): State {
  if (!existsSync(path)) return 'absent';
  if (!statSync(path).isDirectory()) return 'file';
  try {
    if (readdirSync(path).length === 0) return 'empty';
  } catch {
    return 'unreadable';
  }
  return readManifest(path) ? 'ours' : 'other';
}

/** Whether a place is that of an earlier site in whose place nothing stands: it only wants to go back there. */
function isSetAside({ folder, previous }: Target, place: string): boolean {
  return place === previous && !existsSync(folder);
}

/** A path with every link in it followed, as far as it exists. */
export function realPath(path: string): string {
  const existing = nearestExisting(resolve(path));
  return join(realpathSync(existing), relative(existing, resolve(path)));
}

function nearestExisting(path: string): string {
  let at = path;
  while (!existsSync(at)) {
    if (isLink(at))
      throw new CannotWrite(
        `${at} is a link that leads nowhere. Remove it, or name another folder with --out.`,
      );
    at = dirname(at);
  }
  return at;
}

function isLink(path: string): boolean {
  try {
    return lstatSync(path).isSymbolicLink();
  } catch {
    return false;
  }
}

/** Whether a path is a folder or lies in it. */
export function isWithin(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);
}
