/** Hands pages to the thread that writes them, and keeps what it answers. */
import { Worker } from 'node:worker_threads';
import type { PageAnswer, PageOrder, PageProblem, PageToWrite } from './page-thread.ts';
import { MustNotPublish, TellsOfLiving } from './problems.ts';

export interface PageWriter {
  /** Takes a page. The promise holds back whoever makes pages faster than they are written; throws what went wrong. */
  take(path: string, html: Uint8Array): Promise<void>;
  /** Waits until everything is written, and ends the thread: path → SHA-256. Throws the first thing that went wrong. */
  finish(): Promise<ReadonlyMap<string, string>>;
  /** Ends the thread when it has done what it was given. */
  stop(): Promise<void>;
}

const together = 16;

/** At most `most` pages wait to be written, and more than go together. */
export function pageWriter(order: PageOrder, most = 64): PageWriter {
  const thread = new Worker(new URL('./page-thread.ts', import.meta.url), { workerData: order });
  const digests = new Map<string, string>();
  let underWay = 0;
  let failed: Error | undefined;
  // The thread is asked to end, not cut off: one that is cut off while it begins can take the process with it.
  const ended = new Promise<void>((resolve) => thread.once('exit', () => resolve()));
  const end = () => {
    thread.postMessage('end');
    return ended;
  };
  let waiting: (() => void)[] = [];
  const change = () => new Promise<void>((resolve) => waiting.push(resolve));
  const changed = () => {
    const told = waiting;
    waiting = [];
    for (const resolve of told) resolve();
  };
  thread.on('message', (answers: PageAnswer[]) => {
    underWay -= answers.length;
    for (const answer of answers)
      if ('sha256' in answer) digests.set(answer.path, answer.sha256);
      else failed ??= problemOf(answer);
    changed();
  });
  thread.on('error', (error) => {
    failed ??= error as Error;
    underWay = 0;
    changed();
  });
  // Waking a thread costs more than a page does, so some go together.
  let some: PageToWrite[] = [];
  const send = () => {
    if (some.length === 0) return;
    // Bytes that share their memory with others are copied, all others handed over.
    const own = some.filter(({ html }) => html.byteLength === html.buffer.byteLength);
    thread.postMessage(
      some,
      own.map(({ html }) => html.buffer as ArrayBuffer),
    );
    some = [];
  };
  const demandNoFailure = () => {
    if (failed) throw failed;
  };
  return {
    async take(path, html) {
      demandNoFailure();
      underWay++;
      some.push({ path, html });
      if (some.length >= together) send();
      while (underWay > most) await change();
      demandNoFailure();
    },
    async finish() {
      send();
      while (underWay > 0) await change();
      await end();
      demandNoFailure();
      return digests;
    },
    stop: end,
  };
}

function problemOf({ problem, mustNotPublish, tells, stack }: PageProblem): Error {
  if (tells) return new TellsOfLiving(tells.path, tells.hit);
  if (mustNotPublish) return new MustNotPublish(problem);
  const error = new Error(problem);
  if (stack !== undefined) error.stack = stack;
  return error;
}
