/**
 * Pages on their way out, in a thread of their own: while one page is rendered, the one before it is held to the
 * site’s rules, digested and written. `page-writer.ts` starts it and speaks with it.
 */
import { parentPort, workerData } from 'node:worker_threads';
import { filesUnder } from './files-under.ts';
import { livingScan } from './living-scan.ts';
import { passedPage } from './passed.ts';
import type { Hit, Telling } from '../../dossier/living-look.ts';
import { MustNotPublish, TellsOfLiving } from './problems.ts';

/** What the thread works by. */
export interface PageOrder {
  into: string;
  base: string;
  tellings: readonly Telling[];
}

/** Answers, in the order of the pages: the digest of a page written, or why it was not. */
export type PageAnswer = { path: string; sha256: string } | PageProblem;
export interface PageProblem {
  problem: string;
  mustNotPublish: boolean;
  /** Where it would tell of someone living. */
  tells?: { path: string; hit: Hit };
  stack: string | undefined;
}

const { into, base, tellings } = workerData as PageOrder;
const port = parentPort!;
const scan = livingScan(tellings);
const files = filesUnder(into);

port.on('message', ({ path, html }: { path: string; html: string }) => {
  let answer: PageAnswer;
  try {
    answer = { path, sha256: files.writeNow(path, passedPage(path, html, base, scan)) };
  } catch (error) {
    const { message, stack } = error as Error;
    answer = {
      problem: message,
      mustNotPublish: error instanceof MustNotPublish,
      ...(error instanceof TellsOfLiving ? { tells: { path: error.path, hit: error.hit } } : {}),
      stack,
    };
  }
  port.postMessage(answer);
});
