/** How the verbs that need a finished site have one made: in a process of its own, into a private folder. */
import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isRunning } from '../../exports/site/lock.ts';
import type { SiteOrder } from './make-site.ts';
import { projectRoot } from './paths.ts';
import type { ExitCode } from './run.ts';

/**
 * Where this process may make a site before anybody sees it. The folder itself is left to be made; those of others
 * that were cut off and could not take theirs away are taken away.
 */
export function privateFolder(): string {
  const shared = join(projectRoot, 'node_modules', '.whence');
  clearAbandoned(shared);
  return join(shared, String(process.pid));
}

function clearAbandoned(folder: string): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder))
    if (/^\d+$/.test(name) && !isRunning(Number(name)))
      rmSync(join(folder, name), { recursive: true, force: true });
}

/** With a nursery of 64 MB the many short-lived strings of a page are gone before anybody has to look after them. */
const roomToWork = ['--max-semi-space-size=64'];

/** Starts the process that checks the content and makes the site of an order. */
export function startMaking(order: SiteOrder): ChildProcess {
  const program = fileURLToPath(new URL('./make-site.ts', import.meta.url));
  return spawn(process.execPath, [...roomToWork, program, JSON.stringify(order)], {
    cwd: projectRoot,
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    // What Node makes of the modules is kept, as for a check, by this process and by its threads.
    env: { ...process.env, NODE_COMPILE_CACHE: join(projectRoot, 'node_modules', '.whence', 'compiled') },
  });
}

/**
 * Ends the making of a site when its verb is interrupted, and waits for it to be gone, so that the private folder can
 * be cleared. The process then says what was `stopped` and ends by the signal’s usual code.
 */
export function interruptible(stopped: string): {
  guard(child: ChildProcess): Promise<ExitCode>;
  end(finished: boolean): void;
} {
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
        process.stderr.write(`${stopped}\n`);
        process.kill(process.pid, signalled);
      }
    },
  };
}
