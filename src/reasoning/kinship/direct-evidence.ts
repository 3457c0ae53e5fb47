/**
 * Evidence about a relative is indirect for the subject: what it states is direct only of the one it is about
 * (*common practice*; the terms direct and indirect are those of the proof standard). An item called direct whose
 * mentions all belong to others is wrongly called so.
 */
import type { Case } from '../../model/case.ts';
import type { Facts } from '../../model/facts.ts';
import type { Item } from '../items.ts';
import type { CaseProblem } from '../types.ts';
import { relationsBetween } from './relations.ts';
import { possessive } from './words.ts';

/** Items of a case called direct though every mention of them belongs to somebody other than its subject. */
export function directOfOthers(facts: Facts, c: Case, items: readonly Item[]): CaseProblem[] {
  const subject = facts.people.get(c.subject)?.name ?? c.subject;
  return items.flatMap(({ id, index, evidence, mentions }) => {
    if (evidence.kind !== 'direct' || mentions.length === 0) return [];
    const others = mentions.flatMap(({ person }) =>
      person === null || person === c.subject ? [] : [person],
    );
    // A mention that belongs to nobody yet may be the subject's.
    if (others.length < mentions.length) return [];
    const shown = mentions
      .slice(0, mostNamed)
      .map(({ ref, person }) => `${ref} is ${whoIs(facts, c.subject, person!)}`);
    if (mentions.length > mostNamed) shown.push(`${mentions.length - mostNamed} more are others’ too`);
    const them = new Set(others).size > 1 ? 'them' : pronoun(facts, others[0]!);
    return [
      {
        rule: 'direct-evidence-is-of-the-subject',
        severity: 'warning' as const,
        path: ['evidence', index, 'kind'],
        message: `${id} is called direct, but ${shown.join('; ')}: what it states is direct of ${them} and at most indirect of ${subject}.`,
        help: 'Write kind: indirect, and name under tiedBy the evidence that joins it to the subject.',
      },
    ];
  });
}

const mostNamed = 3;

/** “Bridget Phelan, Maurice Phelan’s sister”, or that no kinship is known. */
function whoIs(facts: Facts, subject: string, person: string): string {
  const name = (id: string) => facts.people.get(id)?.name ?? id;
  const [relation] = relationsBetween(facts, subject, person);
  return relation
    ? `${name(person)}, ${possessive(name(subject))} ${relation.words}`
    : `${name(person)}, not known to be kin`;
}

function pronoun(facts: Facts, person: string): string {
  return { M: 'him', F: 'her' }[facts.people.get(person)?.sex as string] ?? 'them';
}
