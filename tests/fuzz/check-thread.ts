/** Checks one mutated folder after another in a thread of its own, which its keeper ends when a check takes too long. */
import { parentPort, workerData } from 'node:worker_threads';
import { changingFolder } from './folder.ts';
import { mutated } from './mutate.ts';
import { checkFolder } from './promises.ts';

export interface CheckOrder {
  seed: number;
  from: number;
  cases: number;
  image: Uint8Array;
  /** The number being checked, and the second it began in: shared with the keeper. */
  now: Int32Array;
}

/** Told of a number whose promises are broken, and at the end. */
export type CheckAnswer =
  { number: number; broken: string[]; changed: readonly string[] } | { done: true; counts: Counts };
/** How many were refused whole, had errors, and were fine. */
export interface Counts {
  refused: number;
  withErrors: number;
  fine: number;
}

const { seed, from, cases, image, now } = workerData as CheckOrder;
const folder = changingFolder();
const counts: Counts = { refused: 0, withErrors: 0, fine: 0 };
for (let number = from; number < from + cases; number++) {
  Atomics.store(now, 1, Math.floor(Date.now() / 1000) % 1_000_000_000);
  Atomics.store(now, 0, number);
  const { files, changed } = mutated(seed, number, image);
  folder.hold(files);
  const { examination, broken } = checkFolder(folder.path);
  if (broken.length > 0) parentPort!.postMessage({ number, broken, changed } satisfies CheckAnswer);
  if (!examination) counts.refused++;
  else if (examination.ok) counts.fine++;
  else counts.withErrors++;
}
folder.remove();
parentPort!.postMessage({ done: true, counts } satisfies CheckAnswer);
