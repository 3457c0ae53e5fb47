/** One build at a time into one folder, by a file beside it that names the process. */
import { closeSync, openSync, readFileSync, renameSync, rmSync, writeSync } from 'node:fs';
import { hostname } from 'node:os';
import { CannotWrite } from './problems.ts';

interface Holder {
  pid: number;
  host: string;
}

/**
 * Takes the lock, and returns what gives it back. A lock whose process is gone is taken over. Throws a `CannotWrite`
 * when another build holds it.
 */
export function takeLock(file: string): () => void {
  const mine = JSON.stringify({ pid: process.pid, host: hostname() } satisfies Holder);
  for (let attempt = 0; attempt < 3; attempt++) {
    if (create(file, mine)) return () => release(file, mine);
    const found = read(file);
    if (found === undefined) continue;
    const holder = parse(found);
    if (!holder && isBeingWritten(file, found)) continue;
    if (holder && isAlive(holder))
      throw new CannotWrite(
        `Another build into the same folder is running (process ${holder.pid} on ${holder.host}). Wait until it has finished; if there is none, delete ${file}.`,
      );
    setAside(file, found);
  }
  throw new CannotWrite(
    `The lock ${file} can’t be taken: other builds keep taking it. Try again when they have finished.`,
  );
}

function create(file: string, text: string): boolean {
  let handle: number;
  try {
    handle = openSync(file, 'wx');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw new CannotWrite(`Nothing can be written beside the site: ${(error as Error).message}.`);
  }
  writeSync(handle, text);
  closeSync(handle);
  return true;
}

/** A lock without a holder may be one that another build has made and not yet filled. */
function isBeingWritten(file: string, found: string): boolean {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  return read(file) !== found;
}

/** Removes a stale lock. Whoever renames it has it; if another build’s new lock came away instead, it is put back. */
function setAside(file: string, stale: string): void {
  const aside = `${file}.${process.pid}`;
  try {
    renameSync(file, aside);
  } catch {
    return;
  }
  if (read(aside) === stale) rmSync(aside, { force: true });
  else renameSync(aside, file);
}

function release(file: string, mine: string): void {
  if (read(file) === mine) rmSync(file, { force: true });
}

function read(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

function parse(text: string): Holder | undefined {
  try {
    const { pid, host } = JSON.parse(text) as Partial<Holder>;
    return typeof pid === 'number' && typeof host === 'string' ? { pid, host } : undefined;
  } catch {
    return undefined;
  }
}

/** Of another machine nothing can be known, so its process counts as running. */
function isAlive({ pid, host }: Holder): boolean {
  return host !== hostname() || isRunning(pid);
}

/** Whether another process of this machine has this number. */
export function isRunning(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
