/** Following an author’s folder while they write in it. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { HookParameters } from 'astro';

type DevServer = HookParameters<'astro:server:setup'>['server'];

/** Editors write a file in several steps; the content is looked at once they have finished. In milliseconds. */
const patience = 60;

/** Somebody who never stops saving is shown something all the same: the longest that is waited. In milliseconds. */
const longestPatience = 400;

/**
 * Watchers miss a change now and then, as when a folder stands in the place of a file for a moment; so the files are
 * looked over this often. A large folder is looked over more seldom, in a fortieth of the time at most.
 */
const lookingOver = 2000;

/** How often a folder that went away is looked for. */
const waiting = 500;

/**
 * Calls `changed` after every change in a folder, once for changes that come together. A folder that goes away is
 * waited for.
 */
export function watchFolder(
  { watcher, httpServer }: Pick<DevServer, 'watcher' | 'httpServer'>,
  folder: string,
  changed: () => void,
): void {
  watcher.add(folder);
  let timer: NodeJS.Timeout | undefined;
  let since: number | undefined;
  const later = (work: () => void, wait: number) => {
    clearTimeout(timer);
    timer = setTimeout(work, wait);
  };
  let seen = stateOf(folder);
  const look = () => {
    since = undefined;
    seen = stateOf(folder);
    if (existsSync(folder)) changed();
    else later(comeBack, waiting);
  };
  const comeBack = () => {
    if (!existsSync(folder)) return later(comeBack, waiting);
    // What was watched is another folder now, even under the same name.
    watcher.unwatch(folder);
    watcher.add(folder);
    seen = stateOf(folder);
    changed();
  };
  let over: NodeJS.Timeout;
  const lookOver = () => {
    const began = performance.now();
    if (since === undefined && existsSync(folder) && stateOf(folder) !== seen) look();
    over = setTimeout(lookOver, Math.max(lookingOver, 40 * (performance.now() - began)));
  };
  over = setTimeout(lookOver, lookingOver);
  watcher.on('all', (_event, path) => {
    if (path !== folder && !path.startsWith(folder + sep)) return;
    // What begins with a dot is never content: an editor’s settings, its swap files, a repository.
    if (path.slice(folder.length).includes(`${sep}.`)) return;
    since ??= performance.now();
    later(look, Math.max(0, Math.min(patience, since + longestPatience - performance.now())));
  });
  httpServer?.once('close', () => {
    clearTimeout(timer);
    clearTimeout(over);
  });
}

/** Which files a folder holds, of what size and age; what begins with a dot is no content. */
function stateOf(folder: string): string {
  try {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => !path.startsWith('.') && !path.includes(`${sep}.`))
      .map((path) => {
        const { mtimeMs, size } = statSync(join(folder, path));
        return `${path} ${size} ${mtimeMs}`;
      })
      .sort()
      .join('\n');
  } catch {
    // Something went away while it was looked at: another state than any other.
    return `${performance.now()}`;
  }
}
