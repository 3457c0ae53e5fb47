/**
 * The clues in a case's family. They point at what to ask next; none is evidence, and one whose like is met by accident
 * nearly always is left out.
 */
import type { Case, Evidence } from '../../model/case.ts';
import type { Facts } from '../../model/facts.ts';
import { sourcesOf } from '../../model/case.ts';
import { gather } from '../../model/multimap.ts';
import { answerOf } from '../items.ts';
import { familyOf } from '../kinship/family.ts';
import { mostKin } from '../kinship/collateral.ts';
import { relationsFrom } from '../kinship/relations.ts';
import { surnamesCarried } from './middle-names.ts';
import { unlikeMaidenNames } from './mothers.ts';
import { commonnessFor } from './names.ts';
import { namingCustom } from './naming-custom.ts';
import { repeatedNames } from './repeated-names.ts';
import { noneFrom, weakFrom, type Clue, type Found } from './types.ts';
import { attendantsOf, sharedSurnames } from './witnesses.ts';

export interface Clues {
  /** The telling first: by their chance, weak ones after, those already evidence last. */
  clues: Clue[];
  /** Clues beyond `mostClues`, which are left out. */
  left: number;
}

/** Clues given of one case. */
export const mostClues = 60;

/** The clues in the family of a case's subject, the nearest kin of a large one. */
export function cluesOf(facts: Facts, c: Case): Clues {
  const kin = [...relationsFrom(facts, c.subject).values()]
    .filter(({ kind }) => kind !== 'connected')
    .map(({ to }) => to)
    .slice(0, mostKin);
  const answer = answerOf(c)?.place;
  const place = answer !== undefined && facts.places.has(answer) ? answer : undefined;
  const common = commonnessFor(facts, c.subject, place);
  const family = familyOf(facts);
  const attendants = attendantsOf(facts, new Set(kin));
  const spouses = family.spouses(c.subject);
  const parents = [c.subject, ...spouses].flatMap((id) => family.parents(id));

  const found: Found[] = [
    ...surnamesCarried(facts, kin, common, attendants),
    ...repeatedNames(facts, [...parents, c.subject], common),
    ...namingCustom(facts, couplesOf(facts, c.subject), common),
    ...sharedSurnames(facts, attendants, common),
    ...unlikeMaidenNames(facts, kin),
  ];
  const used = itemsByMention(c);
  const clues = found
    .filter(({ chance }) => chance === undefined || chance.probability < noneFrom)
    .map(({ telling, ...clue }): Clue => ({
      ...clue,
      weak: (clue.chance?.probability ?? 0) >= weakFrom,
      evidence: evidenceOn(clue.kind, telling, used),
    }))
    .sort(
      (a, b) =>
        Number(a.evidence.length > 0) - Number(b.evidence.length > 0) ||
        Number(a.weak) - Number(b.weak) ||
        (a.chance?.probability ?? 0.1) - (b.chance?.probability ?? 0.1) ||
        (JSON.stringify(a.said) < JSON.stringify(b.said) ? -1 : 1),
    );
  return { clues: clues.slice(0, mostClues), left: Math.max(0, clues.length - mostClues) };
}

/** Husband and wife, or father and mother: the subject's own marriages and both sides' parents. */
function couplesOf(facts: Facts, subject: string): [string, string][] {
  const family = familyOf(facts);
  const couples = new Map<string, [string, string]>();
  const add = (one: string, other: string) => {
    const [man, woman] = family.sex(one) === 'F' ? [other, one] : [one, other];
    if (family.sex(man) !== 'F' && family.sex(woman) === 'F') couples.set(`${man} ${woman}`, [man, woman]);
  };
  const people = [subject, ...family.spouses(subject)];
  for (const spouse of family.spouses(subject)) add(subject, spouse);
  for (const id of people) {
    const [one, other] = family.parents(id);
    if (one !== undefined && other !== undefined) add(one, other);
  }
  return [...couples.values()];
}

/** Items that use a telling mention: any of a witness or mother, but of a name only those that are about the name. */
function evidenceOn(
  kind: Clue['kind'],
  telling: readonly string[],
  used: ReadonlyMap<string, readonly Evidence[]>,
): string[] {
  const items = telling
    .flatMap((ref) => used.get(ref) ?? [])
    .filter(({ states }) => kind === 'witness' || kind === 'mother' || states === 'name');
  return [...new Set(items.map(({ id }) => id))];
}

function itemsByMention(c: Case): Map<string, Evidence[]> {
  const used = new Map<string, Evidence[]>();
  for (const item of c.evidence) for (const ref of sourcesOf(item).mentions) gather(used, ref, item);
  return used;
}
