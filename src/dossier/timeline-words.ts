/** Contradictions of dated lives in sentences, each naming both records. */
import { dateInWords } from '../citations/date-words.ts';
import { isoDay } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import type { LifeFact } from '../reasoning/life-facts.ts';
import type { TimelineProblem } from '../reasoning/timeline.ts';

/** What contradicts what, and what to do about it. */
export function timelineWords(facts: Facts, problem: TimelineProblem): { message: string; help: string } {
  const name = nameOf(facts, problem.person);
  const [first, second] = problem.facts;
  const child = problem.child === undefined ? '' : nameOf(facts, problem.child);
  const at = (fact: LifeFact) => `${when(fact)} (${where(facts, fact)})`;
  switch (problem.rule) {
    case 'arrival-follows-birth':
      return {
        message: `${name} arrives ${at(second)}, but is born ${at(first)}.`,
        help: 'Read both again; if they are two people, take one of the mentions from this person.',
      };
    case 'naturalization-follows-arrival':
      return {
        message: `${name} takes out papers, ${second.kind}, ${at(second)}, but first arrives ${at(first)}.`,
        help: 'Compare signatures, ages and addresses: the papers or the arrival may be a namesake’s.',
      };
    case 'one-arrival':
      return {
        message: `${name} arrives ${at(first)} and again ${at(second)}. Many went home and came again; or these are two people.`,
        help: 'If one person came twice, say so in the later mention, such as says: { journey: returning }.',
      };
    case 'children-born-where-parents-live':
      return problem.hint
        ? {
            message: `${child} is born abroad ${at(second)}, though the parent ${name} had arrived ${at(first)}. If the mother had stayed behind and the father gone back, that can be.`,
            help: 'Look for the mother’s own arrival, and for a journey home; or the child or the arrival is another family’s.',
          }
        : {
            message: `${child} is born abroad ${at(second)}, though the mother, ${name}, had arrived ${at(first)}.`,
            help: 'Look again at the arrival, the child’s birthplace and whose child it is; if she went back, say so in the mention of her return.',
          };
    case 'baptism-follows-birth':
      return {
        message: `${name} is baptized ${at(second)}, but born ${at(first)}.`,
        help: 'Look at the register again, and for an elder child of the same name.',
      };
    case 'life-begins-with-birth':
      return {
        message: `${name} is born ${at(first)}, but there is ${second.what === 'death' ? 'a death' : `${/^[aeiou]/.test(second.kind) ? 'an' : 'a'} ${second.kind}`} ${at(second)}.`,
        help: 'Look for a mistyped year; or decide whose record it is, and take the mention from the other person.',
      };
    case 'life-ends-with-death':
      return {
        message: `${name} is dead ${at(second)}, but there is ${first.kind === 'arrival' ? 'an arrival' : `a later ${first.kind}`} ${at(first)}.`,
        help: 'Decide whose record it is, and take the mention from the other person.',
      };
    case 'mother-of-childbearing-age':
      return {
        message: `${child} is born ${at(second)}, and the mother, ${name}, ${at(first)}: too far from the usual for a mother and her child.`,
        help: 'Look for another wife or another generation, and at how either age is known.',
      };
  }
}

function nameOf(facts: Facts, person: string): string {
  return facts.people.get(person)?.name ?? person;
}

/** “on 2 May 1864”, “in 1864”, “between … and …”. */
function when(fact: LifeFact): string {
  if (fact.what === 'birth' && fact.ref !== undefined) {
    const [first, last] = [isoDay(fact.first), isoDay(fact.last)];
    return first === last
      ? `on ${dateInWords(first)}`
      : `between ${dateInWords(first)} and ${dateInWords(last)}`;
  }
  const words = dateInWords(fact.date);
  return /^\d{1,2} [A-Z]/.test(words) ? `on ${words}` : /^[A-Z\d]/.test(words) ? `in ${words}` : words;
}

function where(facts: Facts, fact: LifeFact): string {
  if (fact.ref === undefined) return 'by the person’s own entry';
  const title = facts.records.get(fact.ref.split('#')[0]!)?.title;
  return `${fact.remembered ? 'as remembered in' : 'by'} ${fact.ref}${title === undefined ? '' : `, “${title}”`}`;
}
