import type { BodyContext, BodyProblem } from '../../src/markdown/types.ts';

export const records = ['declaration-1871', 'census-1880', 'nor-vik-1838'];

/** What the bodies of these tests may refer to. */
export function context(changes: Partial<BodyContext> = {}): BodyContext {
  return {
    kind: 'case',
    mdx: false,
    hasRecord: (id) => records.includes(id),
    recordIds: () => records,
    evidenceIds: ['e1', 'e2', 'e10'],
    hasPerson: (id) => id === 'maurice-phelan',
    evidenceHref: (id) => `/cases/phelan/proof.html#${id}`,
    note: (id) => ({
      full: `Full ${id}; Office`,
      item: `Full ${id}`,
      held: '; Office',
      short: `Short ${id}`,
    }),
    ...changes,
  };
}

/** A body with `‸` where a problem is expected: the body without the marks, and their offsets. */
export function marked(text: string): { body: string; offsets: number[] } {
  const offsets: number[] = [];
  let body = '';
  for (const piece of text.split('‸')) {
    body += piece;
    offsets.push(body.length);
  }
  return { body, offsets: offsets.slice(0, -1) };
}

/** A problem as `rule`, or `rule (warning)`. */
export function brief({ rule, severity }: BodyProblem): string {
  return severity === 'error' ? rule : `${rule} (${severity})`;
}
