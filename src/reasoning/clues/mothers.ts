/**
 * Mothers to whom records give different maiden names. Rule (*common practice*): either one is a slip, or there were
 * two wives, or a surname by an earlier marriage has been taken for a maiden name.
 */
import type { Facts } from '../../model/facts.ts';
import { familyOf } from '../kinship/family.ts';
import { maidenNames, mayBeOneSurname } from './names.ts';
import type { Found } from './types.ts';

/** Clues from the maiden names that records give the mothers of a family. */
export function unlikeMaidenNames(facts: Facts, kin: readonly string[]): Found[] {
  const family = familyOf(facts);
  return kin.flatMap((id) => {
    if (family.sex(id) !== 'F' || family.children(id).length === 0) return [];
    const groups: { surname: string; refs: string[] }[] = [];
    for (const { surname, refs } of maidenNames(facts, id)) {
      if (refs.length === 0) continue;
      const known = groups.find((one) => mayBeOneSurname(one.surname, surname));
      if (known) known.refs.push(...refs);
      else groups.push({ surname, refs: [...refs] });
    }
    if (groups.length < 2) return [];
    return [
      {
        kind: 'mother' as const,
        said: {
          key: 'maiden-names-differ' as const,
          woman: facts.people.get(id)!.name,
          surnames: groups.map(({ surname, refs }) => ({ surname, records: refs.length })),
        },
        refs: groups.map(({ refs }) => refs[0]!),
        telling: groups.slice(1).flatMap(({ refs }) => refs),
        people: [id],
      },
    ];
  });
}
