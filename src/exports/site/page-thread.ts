/**
 * Pages on their way out, in a thread of their own: while one page is rendered, the one before it is held to the
 * site’s rules, digested and written. `page-writer.ts` starts it and speaks with it.
 */
import { parentPort, workerData } from 'node:worker_threads';
import { filesUnder } from './files-under.ts';
import { livingScan } from './living-scan.ts';
import type { Hit, Telling } from '../../dossier/living-look.ts';
import { pagesPassed } from './passed.ts';
import { MustNotPublish, TellsOfLiving } from './problems.ts';

/** What the thread works by. */
export interface PageOrder {
  into: string;
  base: string;
  tellings: readonly Telling[];
}

/** Pages come some at a time. */
export interface PageToWrite {
  path: string;
  html: Uint8Array;
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
const passed = pagesPassed(base, scan);

port.on('message', (message: PageToWrite[] | 'end') => {
  if (message === 'end') port.close();
  else port.postMessage(message.map(written));
});

function written({ path, html }: PageToWrite): PageAnswer {
  try {
    const page = passed(path, Buffer.from(html.buffer, html.byteOffset, html.byteLength));
    return { path, sha256: files.writeNow(path, page) };
  } catch (error) {
    const { message, stack } = error as Error;
    return {
      problem: message,
      mustNotPublish: error instanceof MustNotPublish,
      ...(error instanceof TellsOfLiving ? { tells: { path: error.path, hit: error.hit } } : {}),
      stack,
    };
  }
}
