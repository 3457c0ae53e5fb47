/**
 * What a dossier needs that depends on one text alone, made in a thread of its own while the content is examined:
 * citations, and bodies that refer to nothing. It fills what is kept, so the dossier finds it there, and changes
 * nothing else: whatever the thread could not make is made when it is asked for.
 */
import { Worker } from 'node:worker_threads';
import { citationOf } from '../citations/csl-json.ts';
import type { Formatted } from '../citations/processor.ts';
import type { Corpus } from '../corpus/types.ts';
import { bodyKey, standsAlone } from '../markdown/alone.ts';
import { plainBody } from '../markdown/plain.ts';
import type { Rendered } from '../markdown/types.ts';
import type { Citation } from '../model/citation.ts';
import type { Site } from '../model/site.ts';
import type { KeptParts } from './kept.ts';
import { voiceIn } from './voice.ts';

/** What the thread is to make. */
export interface AheadOrder {
  site: Pick<Site, 'language' | 'interface'>;
  citations: Citation[];
  bodies: string[];
}

/** What it has made, each by the text it is kept under. */
export interface AheadAnswer {
  citations: [string, Formatted][];
  bodies: [string, Rendered][];
}

/** Fewer texts than this are made in less time than a thread takes to start. */
const least = 300;

/**
 * Begins to make what `kept` does not hold yet. The promise is kept once it does; it never fails. `stop` ends the work.
 */
export function makeAhead(corpus: Corpus, kept: KeptParts): { done: Promise<void>; stop(): void } {
  const order = orderOf(corpus, kept);
  if (order.citations.length + order.bodies.length < least)
    return { done: Promise.resolve(), stop: () => {} };
  const thread = new Worker(new URL('./ahead-thread.ts', import.meta.url), { workerData: order });
  const done = new Promise<void>((resolve) => {
    thread.once('message', ({ citations, bodies }: AheadAnswer) => {
      for (const [text, formatted] of citations) kept.citations.set(text, formatted);
      for (const [text, rendered] of bodies) kept.bodies.set(text, rendered);
      resolve();
    });
    thread.once('error', () => resolve());
    thread.once('exit', () => resolve());
  });
  return { done, stop: () => void thread.terminate() };
}

function orderOf(corpus: Corpus, kept: KeptParts): AheadOrder {
  const { site } = corpus;
  const voice = voiceIn(site);
  const bodies = new Set<string>();
  for (const { body, language } of corpus.records.values())
    if (body && (language === undefined || language === site.language)) bodies.add(body);
  for (const { body } of corpus.people.values()) if (body) bodies.add(body);
  const citations = new Map<string, Citation>();
  if (corpus.citationStyle === undefined)
    for (const record of corpus.records.values()) {
      const citation = citationOf(record);
      citations.set(JSON.stringify(citation), citation);
    }
  return {
    site: { language: site.language, interface: site.interface },
    citations: [...citations].filter(([text]) => !kept.citations.get(text)).map(([, citation]) => citation),
    bodies: [...bodies].filter(
      (body) =>
        standsAlone(body, { mdx: false }) &&
        !plainBody(body, voice) &&
        !kept.bodies.get(bodyKey(body, voice)),
    ),
  };
}
