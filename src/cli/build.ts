/** `build`: the check, then the whole site into a folder. With errors nothing is written and the earlier site stays. */
import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, rmdirSync, rmSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { InvalidArgumentError, Option } from 'commander';
import { isRunning, takeLock } from '../exports/site/lock.ts';
import { mend, swapIn } from '../exports/site/swap.ts';
import { targetAt } from '../exports/site/target.ts';
import type { SiteOrder } from './shared/make-site.ts';
import { contentOption, todayOption, verb } from './shared/options.ts';
import { defaultOut, fromCaller, projectRoot } from './shared/paths.ts';
import { exitWith, type ExitCode } from './shared/run.ts';

const options = verb(
  'npm run build --',
  'Checks the content and writes the whole site. With errors nothing is written and the earlier site stays.',
)
  .addOption(contentOption())
  .addOption(
    new Option('--out <dir>', 'the folder to write the site into')
      .argParser(fromCaller)
      .default(defaultOut, 'dist/ of the project'),
  )
  .addOption(
    new Option('--base <path>', 'the path the site will be served under').argParser(basePath).default('/'),
  )
  .addOption(todayOption())
  .parse()
  .opts<{ content: string; out: string; base: string; today: string }>();

await exitWith(async () => {
  const target = targetAt(options.out, options.content, projectRoot);
  const unmake = makeParents(dirname(target.folder));
  const unlock = takeLock(target.lock);
  const work = join(projectRoot, 'node_modules', '.whence', String(process.pid));
  const interruption = interruptible();
  let finished = false;
  try {
    mend(target);
    clearAbandoned(dirname(work));
    mkdirSync(work, { recursive: true });
    const code = await interruption.guard(
      startMaking({ content: options.content, today: options.today, base: options.base, work }),
    );
    if (code !== 0) return code;
    const kept = swapIn(join(work, 'site'), target);
    finished = true;
    if (kept.length > 0)
      process.stdout.write(`Kept in the folder, though not of the site: ${kept.join(', ')}.\n`);
    process.stdout.write(`The site is in ${shortest(target.folder)}\n`);
    return 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
    unlock();
    unmake();
    interruption.end(finished);
  }
});

/** `/path/`, also where a slash was left out. */
function basePath(value: string): string {
  const path = `/${value}/`.replace(/\/{2,}/g, '/');
  if (!/^\/(?:[A-Za-z0-9._~-]+\/)*$/.test(path) || /\/\.{1,2}\//.test(path))
    throw new InvalidArgumentError('A base is the path of an address, such as /family/.');
  return path;
}

/** Takes away the private folders of builds that were cut off and could not do so themselves. */
function clearAbandoned(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder))
    if (/^\d+$/.test(name) && !isRunning(Number(name)))
      rmSync(join(folder, name), { recursive: true, force: true });
}

function startMaking(order: SiteOrder): ChildProcess {
  const program = fileURLToPath(new URL('./shared/make-site.ts', import.meta.url));
  return spawn(process.execPath, [program, JSON.stringify(order)], {
    cwd: projectRoot,
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
}

/**
 * Ends the making of a site when the build is interrupted, and waits for it to be gone, so that the private folder can
 * be cleared. The process then ends by the signal’s usual code.
 */
function interruptible(): { guard(child: ChildProcess): Promise<ExitCode>; end(finished: boolean): void } {
  let signalled: NodeJS.Signals | undefined;
  let child: ChildProcess | undefined;
  const stop = (signal: NodeJS.Signals) => {
    signalled = signal;
    child?.kill('SIGKILL');
  };
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  for (const signal of signals) process.on(signal, stop);
  return {
    guard(started) {
      child = started;
      return new Promise((resolve, reject) => {
        started.once('error', reject);
        started.once('close', (code, signal) => {
          if (code === 0 || code === 1 || code === 2) resolve(signalled ? 2 : code);
          else if (signalled) resolve(2);
          else
            reject(
              new Error(
                `The pages could not be made: the process that makes them ended with ${signal ?? `code ${code}`}.`,
              ),
            );
        });
      });
    },
    end(finished) {
      for (const signal of signals) process.off(signal, stop);
      if (signalled && !finished) {
        process.stderr.write(
          'Stopped. Nothing was written; the earlier site, if there is one, is as it was.\n',
        );
        process.kill(process.pid, signalled);
      }
    },
  };
}

/** Makes the folders a site will stand in. Returns what takes those away again that are still empty. */
function makeParents(folder: string): () => void {
  const made: string[] = [];
  for (let at = folder; !existsSync(at); at = dirname(at)) made.push(at);
  mkdirSync(folder, { recursive: true });
  return () => {
    for (const at of made)
      try {
        rmdirSync(at);
      } catch {
        return; // not empty: it holds the site
      }
  };
}

function shortest(folder: string): string {
  const near = relative(process.env.INIT_CWD ?? process.cwd(), folder);
  return near === '' || near.startsWith('..') ? folder : near;
}
