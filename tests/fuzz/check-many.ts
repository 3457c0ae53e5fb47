/** Many mutated folders through the check, in a thread that is watched. */
import { Worker } from 'node:worker_threads';
import type { CheckAnswer, CheckOrder, Counts } from './check-thread.ts';

export interface ManyOrder {
  cases: number;
  seed: number;
  from: number;
  image: Uint8Array;
  say: (line: string) => void;
}

/** No check of a small folder may take longer, in seconds. */
export const longest = 10;

/** Checks the folders of an order; says which broke a promise, and counts. */
export async function checkMany({ cases, seed, from, image, say }: ManyOrder) {
  const counts: Counts & { tooLong: number } = { refused: 0, withErrors: 0, fine: 0, tooLong: 0 };
  let found = 0;
  let next = from;
  while (next < from + cases) {
    const chunk = Math.min(from + cases - next, 2000);
    const now = new Int32Array(new SharedArrayBuffer(8));
    const order: CheckOrder = { seed, from: next, cases: chunk, image, now };
    next = await new Promise<number>((resolve) => {
      const thread = new Worker(new URL('./check-thread.ts', import.meta.url), {
        workerData: order,
        resourceLimits: { maxYoungGenerationSizeMb: 64 },
      });
      const end = (after: number) => {
        clearInterval(watch);
        void thread.terminate();
        resolve(after);
      };
      const bad = (number: number, why: string) => {
        found++;
        say(`seed ${seed}, number ${number}: ${why}`);
      };
      const watch = setInterval(() => {
        const began = Atomics.load(now, 1);
        if (began === 0 || (Math.floor(Date.now() / 1000) % 1_000_000_000) - began <= longest) return;
        counts.tooLong++;
        bad(Atomics.load(now, 0), `the check took more than ${longest} seconds`);
        end(Atomics.load(now, 0) + 1);
      }, 500);
      thread.on('message', (answer: CheckAnswer) => {
        if ('broken' in answer)
          bad(answer.number, `${answer.broken.join('\n  ')}\n  (${answer.changed.join(', ')})`);
        else {
          for (const key of ['refused', 'withErrors', 'fine'] as const) counts[key] += answer.counts[key];
          end(order.from + chunk);
        }
      });
      thread.on('error', (error) => {
        bad(Atomics.load(now, 0), `the thread ended: ${String(error)}`);
        end(Atomics.load(now, 0) + 1);
      });
    });
    say(`… ${next - from} folders`);
  }
  return { found, counts };
}
