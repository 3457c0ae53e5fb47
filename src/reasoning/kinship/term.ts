/** A relation as plain data to word in any language: the lines of blood and the marriages that it goes by. */
import type { BloodTerm, KinTerm } from '../../model/kin-term.ts';
import type { Family } from './family.ts';
import { sharingOf } from './sharing.ts';
import type { Relationship } from './types.ts';

/** The way of a relation, with the sex of everyone on it. */
export function kinTerm(family: Family, relation: Relationship): KinTerm {
  const { kind, up, down, to, through } = relation;
  const way: (BloodTerm | { spouse: ReturnType<Family['sex']> })[] = [];
  let oneKnown = false;
  let at = 0;
  while (at < through.length - 1) {
    const start = at;
    while (at < through.length - 1 && family.parents(through[at]!).includes(through[at + 1]!)) at++;
    const top = at;
    while (at < through.length - 1 && family.parents(through[at + 1]!).includes(through[at]!)) at++;
    if (at === start) {
      at++;
      way.push({ spouse: family.sex(through[at]!) });
      continue;
    }
    const sharing =
      top > start && at > top ? sharingOf(family, through[top - 1]!, through[top + 1]!) : 'direct';
    if (kind === 'blood' && sharing === 'one-known') oneKnown = true;
    const sexes = through.slice(start + 1, at + 1).map((id) => family.sex(id));
    way.push({ up: top - start, down: at - top, sexes, half: sharing === 'half' });
  }
  return { kind, up, down, sex: family.sex(to), way, oneKnown };
}
