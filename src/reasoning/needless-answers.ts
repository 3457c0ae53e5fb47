/**
 * Answers under `conflicts` to items that do not conflict (*common practice*: a resolution names the contradiction it
 * resolves). They change nothing; but the item may have been meant to conflict, or another item is meant.
 */
import type { Case } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import type { Item } from './items.ts';
import type { CaseProblem, CaseResult } from './types.ts';

/** A hint for each answer to an item of evidence that does not conflict with the place the case names. */
export function needlessAnswers(
  facts: Facts,
  c: Case,
  { place, conflicts }: Pick<CaseResult, 'place' | 'conflicts'>,
  items: readonly Item[],
): CaseProblem[] {
  if (place === null) return [];
  const name = (id: string) => facts.places.get(id)?.name ?? id;
  const conflicting = new Set(conflicts.map((conflict) => conflict.evidence));
  return c.conflicts.flatMap(({ evidence: id }, index): CaseProblem[] => {
    const item = items.find((candidate) => candidate.id === id);
    if (!item || conflicting.has(item.id)) return [];
    return [
      {
        rule: 'answer-is-to-a-conflict',
        severity: 'hint',
        path: ['conflicts', index, 'evidence'],
        message: `${item.id} is answered as a conflict, and it does not conflict with ${name(place)}: ${whyNot(item, c, name)}.`,
        help: 'See whether another item is meant, or whether the item is read as it should be. The answer may stay as an explanation, or be taken out.',
      },
    ];
  });
}

function whyNot({ evidence, mentions, onQuestion }: Item, c: Case, name: (id: string) => string): string {
  if (evidence.kind === 'negative')
    return evidence.against === undefined
      ? 'it names no place that it speaks against'
      : `it speaks against ${name(evidence.against)}, and the case names a place that does not lie there`;
  if (evidence.place === undefined) return 'it names no place';
  if (mentions.some(({ person }) => person !== c.subject)) return 'it is not, or not only, of the subject';
  if (!onQuestion) return `it does not state the ${c.asks} that the case asks for`;
  return `it reads ${name(evidence.place)}, and the two places agree`;
}
