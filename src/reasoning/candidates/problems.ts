/**
 * A conclusion at the place of a candidate that cannot be told apart from another elsewhere: what points to the one
 * family points to the other as well (common practice).
 */
import { patronymicCountries } from '../../catalogue/families.ts';
import type { Case } from '../../model/case.ts';
import type { Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import type { CaseProblem } from '../types.ts';
import { candidatesIn } from './candidates.ts';
import type { CandidateComparison } from './types.ts';
import { soughtInWords } from './words.ts';

/** What is to be said of the candidates of a concluded case. */
export function candidateProblems(facts: Facts, c: Case): CaseProblem[] {
  const place = c.conclusion?.place;
  if (place === undefined || c.candidates.length < 2) return [];
  const { candidates, overThere } = candidatesIn(facts, c);
  const { within } = containmentOf(facts);
  const isThere = ({ family }: CandidateComparison) =>
    family.places.some((one) => within(one.place, place) || within(place, one.place));
  const norse = overThere.some((id) => patronymicCountries.has(id));
  return candidates.flatMap((one, index): CaseProblem[] => {
    if (!isThere(one)) return [];
    const rivals = one.ties.filter(({ other }) =>
      candidates.some((rival) => rival.id === other && !isThere(rival)),
    );
    if (rivals.length === 0) return [];
    const others = rivals.map(({ other }) => other).join(', ');
    const fields = [...new Set(rivals.flatMap((rival) => rival.fields))];
    const sought = soughtInWords(fields, norse);
    return [
      {
        rule: 'candidates-are-told-apart',
        severity: 'warning',
        path: ['candidates', index],
        message: `Candidate ${one.id} is at the concluded place, but cannot be told apart from candidate ${others}, which is not: what the records say of both weighs within ${rivals[0]!.bits.toFixed(1)} bits.`,
        help: `${sought === '' ? 'Look for what one of them has and the other has not' : `Look for ${sought}`}. Until then, let the conclusion rest on what does not hang on the family, or write a hypothesis.`,
      },
    ];
  });
}
