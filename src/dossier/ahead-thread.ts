/** The thread of `ahead.ts`. */
import { parentPort, workerData } from 'node:worker_threads';
import { format, type Formatted } from '../citations/processor.ts';
import { renderedBefore } from '../markdown/alone.ts';
import type { BodyContext, Rendered } from '../markdown/types.ts';
import type { AheadAnswer, AheadOrder } from './ahead.ts';
import { voiceIn } from './voice.ts';

const { site, citations, bodies } = workerData as AheadOrder;

/** A body that stands alone asks none of these. */
const ctx: BodyContext = {
  kind: 'record',
  mdx: false,
  hasRecord: () => false,
  recordIds: () => [],
  evidenceIds: [],
  hasPerson: () => false,
  evidenceHref: () => '',
  note: () => ({ full: '', short: '' }),
  voice: voiceIn(site),
};
const rendered = new Map<string, Rendered>();
for (const body of bodies) renderedBefore(body, ctx, rendered);
const formatted = new Map<string, Formatted>();
format(citations, formatted);
parentPort!.postMessage({ citations: [...formatted], bodies: [...rendered] } satisfies AheadAnswer);
