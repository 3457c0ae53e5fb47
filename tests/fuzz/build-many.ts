/** Many mutated folders through the making of a site, in a process that is watched. */
import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { BuildAnswer, BuildOrder } from './build-process.ts';
import { longest, type ManyOrder } from './check-many.ts';

/** Makes the sites of an order; says which broke a promise, and counts. Folders with errors count for nothing. */
export async function buildMany(order: Omit<ManyOrder, 'image'> & Pick<BuildOrder, 'given'>) {
  const { cases, seed, from, say, given } = order;
  const counts = { built: 0, refused: 0, tooLong: 0 };
  let found = 0;
  let next = from;
  const bad = (number: number | string, why: string) => {
    found++;
    say(`seed ${seed}, number ${number}: ${why}`);
  };
  let done = false;
  while (!done && counts.built < cases) {
    done = await new Promise<boolean>((resolve) => {
      const sites = Math.min(cases - counts.built, 500);
      const child = fork(
        fileURLToPath(new URL('./build-process.ts', import.meta.url)),
        [JSON.stringify({ seed, from: next, sites, ...(given ? { given } : {}) } satisfies BuildOrder)],
        {
          execArgv: ['--max-semi-space-size=64'],
          env: { ...process.env, VITEST: undefined, NODE_ENV: 'production' },
        },
      );
      let at: number | string = next;
      let began = Infinity;
      let finished = false;
      const watch = setInterval(() => {
        if ((Date.now() - began) / 1000 <= longest * 3) return;
        clearInterval(watch);
        counts.tooLong++;
        bad(at, `making the site took more than ${longest * 3} seconds`);
        child.kill('SIGKILL');
      }, 500);
      child.on('message', (answer: BuildAnswer) => {
        if ('began' in answer) {
          at = answer.began;
          began = Date.now();
          if (typeof at === 'number') next = at + 1;
        } else if ('broken' in answer)
          bad(answer.number, `${answer.broken.join('\n  ')}\n  (${answer.changed.join(', ')})`);
        else if ('built' in answer) {
          counts.built++;
          if (answer.refused) counts.refused++;
          if (counts.built % 50 === 0) say(`… ${counts.built} sites`);
        } else finished = true;
      });
      child.on('exit', (code, signal) => {
        clearInterval(watch);
        if (!finished && signal !== 'SIGKILL') bad(at, `the process ended with ${signal ?? `code ${code}`}`);
        resolve(given !== undefined || (!finished && began === Infinity));
      });
    });
  }
  return { found, counts };
}
