/**
 * Pages on their way out, in a thread of their own: while one page is rendered, the one before it is held to the
 * site’s rules, digested and written. `page-writer.ts` starts it and speaks with it.
 */
import { parentPort, workerData } from 'node:worker_threads';
import { filesUnder } from './files-under.ts';
import { livingScan } from './living-scan.ts';
import { pagesPassed } from './passed.ts';
import { MustNotPublish } from './problems.ts';

/** What the thread works by. */
export interface PageOrder {
  into: string;
  base: string;
  names: ReadonlyMap<string, string>;
}

/** Answers, in the order of the pages: the digest of a page written, or why it was not. */
export type PageAnswer = { path: string; sha256: string } | PageProblem;
export interface PageProblem {
  problem: string;
  mustNotPublish: boolean;
  stack: string | undefined;
}

const { into, base, names } = workerData as PageOrder;
const port = parentPort!;
const scan = livingScan(names);
const files = filesUnder(into);
const passed = pagesPassed(base, scan);

port.on('message', ({ path, html }: { path: string; html: Uint8Array }) => {
  let answer: PageAnswer;
  try {
    answer = {
      path,
      sha256: files.writeNow(path, passed(path, Buffer.from(html.buffer, html.byteOffset, html.byteLength))),
    };
  } catch (error) {
    const { message, stack } = error as Error;
    answer = { problem: message, mustNotPublish: error instanceof MustNotPublish, stack };
  }
  port.postMessage(answer);
});
