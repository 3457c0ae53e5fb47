/** The exchange of an earlier site for a new one: at every moment one of them is whole in its place. */
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { sha256 } from './files-under.ts';
import { manifestName, readManifest } from './manifest.ts';
import { CannotWrite } from './problems.ts';
import type { Target } from './target.ts';

/** The steps that touch the disk, so that a test can make each of them fail. */
export interface Disk {
  rename(from: string, to: string): void;
  copy(from: string, to: string): void;
  remove(path: string): void;
}

export const disk: Disk = {
  rename: renameSync,
  copy: (from, to) => cpSync(from, to, { recursive: true }),
  remove: removeSite,
};

/** Removes a folder, its list of files last: by it, what a power cut leaves of the folder is known as ours. */
function removeSite(path: string): void {
  const away = { recursive: true, force: true, maxRetries: 3 };
  if (existsSync(path))
    for (const name of readdirSync(path)) if (name !== manifestName) rmSync(join(path, name), away);
  rmSync(path, away);
}

/** What some desktops leave in every folder they show. */
const litter = new Set(['.DS_Store', 'Thumbs.db', 'desktop.ini']);

/**
 * Puts the finished site in `made` into its place. Returns the files of the earlier folder that were not the site’s
 * own (a `CNAME`, a `.git`): they are kept. If the exchange fails, the earlier site is in its place afterwards.
 */
export function swapIn(made: string, target: Target, io: Disk = disk): string[] {
  mkdirSync(dirname(target.folder), { recursive: true });
  const inTheWay = [target.next, target.previous].find((place) => existsSync(place));
  if (inTheWay !== undefined)
    throw new CannotWrite(
      `${inTheWay}, which is needed while the site is written, came to be in the meantime. Move it away; nothing was changed.`,
    );
  writeFileSync(target.sign, 'A site of Whence is being put into its place.\n');
  try {
    return exchange(made, target, io);
  } finally {
    takeDown(target);
  }
}

function exchange(made: string, target: Target, io: Disk): string[] {
  try {
    moveBeside(made, target.next, io);
  } catch (error) {
    io.remove(target.next);
    throw error;
  }
  const strangers = existsSync(target.folder) ? strangersIn(target.folder) : [];
  const replaced = (path: string) => existsSync(join(target.next, path));
  const clash = strangers.find(({ path, isListed }) => !isListed && replaced(path));
  if (clash !== undefined) {
    io.remove(target.next);
    throw new CannotWrite(
      `${join(target.folder, clash.path)} is not a file of the earlier site, and the new one has a file of that name. Move it away first; nothing was changed.`,
    );
  }
  const kept = strangers.map(({ path }) => path).filter((path) => !replaced(path));
  const had = existsSync(target.folder);
  if (had) {
    try {
      io.rename(target.folder, target.previous);
    } catch (error) {
      io.remove(target.next);
      throw notReplaced(target, error);
    }
  }
  try {
    io.rename(target.next, target.folder);
  } catch (error) {
    if (had) io.rename(target.previous, target.folder);
    io.remove(target.next);
    throw notReplaced(target, error);
  }
  if (had) {
    try {
      clear(target, io);
    } catch (error) {
      throw new CannotWrite(
        `The new site is in ${target.folder}, but the earlier one could not be cleared away from ${target.previous}: ${(error as Error).message}. The next build tries again.`,
      );
    }
  }
  return kept;
}

/**
 * Mends what an interrupted exchange left: an earlier site set aside comes back if nothing took its place, and
 * files set aside with it come back otherwise. Without the sign of an exchange nothing is taken away.
 */
export function mend(target: Target, io: Disk = disk): void {
  if (existsSync(target.previous) && !existsSync(target.folder)) io.rename(target.previous, target.folder);
  if (!existsSync(target.sign)) return;
  if (existsSync(target.previous)) clear(target, io);
  if (existsSync(target.next)) io.remove(target.next);
  takeDown(target);
}

/** The sign of an exchange goes when nothing of it is left. */
function takeDown({ next, previous, sign }: Target): void {
  if (!existsSync(next) && !existsSync(previous)) rmSync(sign, { force: true });
}

/** Brings back what was not the earlier site’s own, then lets the earlier site go. */
function clear({ folder, previous }: Target, io: Disk): void {
  for (const { path } of strangersIn(previous)) {
    if (existsSync(join(folder, path))) continue;
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    io.rename(join(previous, path), join(folder, path));
  }
  io.remove(previous);
}

/**
 * What in a folder is not the site’s: files that its manifest doesn’t list, or lists with other bytes (somebody has
 * changed them, or the list is not true), and folders without any file of the site in them.
 */
function strangersIn(folder: string): { path: string; isListed: boolean }[] {
  const own = new Map(readManifest(folder)?.files.map((file) => [file.path, file.sha256]));
  const ownFolders = new Set([...own.keys()].flatMap((path) => parents(path)));
  const found: { path: string; isListed: boolean }[] = [];
  const walk = (at: string) => {
    for (const entry of readdirSync(join(folder, at), { withFileTypes: true })) {
      const path = at ? `${at}/${entry.name}` : entry.name;
      if (path === manifestName || litter.has(entry.name)) continue;
      if (entry.isDirectory() && ownFolders.has(path)) walk(path);
      else if (!entry.isFile() || sha256Of(join(folder, path), own.get(path)) !== own.get(path))
        found.push({ path, isListed: own.has(path) });
    }
  };
  walk('');
  return found.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** The SHA-256 of a file that is expected to have one; of others nothing is asked. */
function sha256Of(file: string, expected: string | undefined): string | null {
  return expected === undefined ? null : sha256(readFileSync(file));
}

function parents(path: string): string[] {
  const steps = path.split('/').slice(0, -1);
  return steps.map((_step, i) => steps.slice(0, i + 1).join('/'));
}

function moveBeside(made: string, next: string, io: Disk): void {
  try {
    io.rename(made, next);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    // The list of files goes first: by it, a copy that was cut off is known as ours.
    io.copy(join(made, manifestName), join(next, manifestName));
    io.copy(made, next);
  }
}

function notReplaced({ folder }: Target, error: unknown): CannotWrite {
  const code = (error as NodeJS.ErrnoException).code;
  const isMount = existsSync(folder) && statSync(folder).dev !== statSync(dirname(folder)).dev;
  const why = isMount
    ? 'it is a disk of its own; name a folder in it instead'
    : code === 'EBUSY' || code === 'EPERM' || code === 'EACCES'
      ? 'another program has it open, or it may not be renamed'
      : (error as Error).message;
  return new CannotWrite(`${folder} can’t be replaced: ${why}. What was there is as it was.`);
}
