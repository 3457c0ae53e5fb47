/**
 * The family of a case's subject as the new country's own records know it: the yardstick for every candidate.
 */
import { sourcesOf, type Case } from '../../model/case.ts';
import { mentionAt, statementOf, type Facts } from '../../model/facts.ts';
import { kinOf } from '../kin.ts';
import { kinWithin } from '../identity/kin-words.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { childrenOf, eachOnce, namings, relativeOf, sexOfPerson, spousesOf } from './family.ts';
import type { Shores } from './shores.ts';
import type { Family, FamilyPlace, Naming, Relative } from './types.ts';

/** Brothers and sisters beyond which no more are compared. */
export const mostSiblings = 40;

/** The family as known here; `leftOut` is how many brothers and sisters stand beyond those compared. */
export function familyHere(facts: Facts, c: Case, shores: Shores): { family: Family; leftOut: number } {
  const here = (id: string) =>
    (facts.people.get(id)?.mentions ?? []).filter((ref) => {
      const record = mentionAt(facts, ref)?.record;
      return record !== undefined && shores.isHere(record);
    });
  const own = here(c.subject);
  const subject = facts.people.get(c.subject);
  const parents = (subject?.parents ?? []).map(({ person }) => person);
  const siblings = siblingsHere(facts, c.subject, parents, own, here);
  const father: Naming[] = [];
  const mother: Naming[] = [];
  const occupation: { text: string; ref: string }[] = [];
  const fathersRefs: string[] = [];
  for (const parent of parents) {
    const refs = here(parent);
    const sex = sexOfPerson(facts, parent, refs);
    if (sex === 'M') fathersRefs.push(...refs);
    const named = refs.flatMap((ref) => namings(facts, ref));
    if (sex === 'M') father.push(...named);
    if (sex === 'F') mother.push(...named);
  }
  for (const ref of [...own, ...siblings.flatMap(({ refs }) => refs)]) {
    const at = mentionAt(facts, ref)!;
    const kin = kinWithin(at.record).get(at.mention.id);
    for (const one of kin?.fathers ?? []) fathersRefs.push(`${at.record.id}#${one.id}`);
    for (const one of kin?.mothers ?? []) mother.push(...namings(facts, `${at.record.id}#${one.id}`));
  }
  for (const ref of new Set(fathersRefs)) {
    father.push(...namings(facts, ref));
    const text = mentionAt(facts, ref)?.mention.occupation;
    if (text !== undefined) occupation.push({ text, ref });
  }
  const spouse = [...new Set(spousesOf(facts).get(c.subject))].flatMap((id) =>
    here(id).flatMap((ref) => namings(facts, ref)),
  );
  for (const ref of own) {
    const at = mentionAt(facts, ref)!;
    for (const one of kinWithin(at.record).get(at.mention.id)?.spouses ?? [])
      spouse.push(...namings(facts, `${at.record.id}#${one.id}`));
  }
  return {
    family: {
      child: relativeOf(facts, own, c.subject),
      father: distinct(father),
      mother: distinct(mother),
      siblings: siblings.slice(0, mostSiblings),
      spouse: distinct(spouse),
      places: placesHere(facts, c, own, shores),
      occupation,
    },
    leftOut: Math.max(0, siblings.length - mostSiblings),
  };
}

/** Each naming once. */
export function distinct(all: readonly Naming[]): Naming[] {
  return [...new Map(all.map((one) => [`${one.ref} ${one.given}/${one.surname}`, one])).values()];
}

function siblingsHere(
  facts: Facts,
  subject: string,
  parents: readonly string[],
  own: readonly string[],
  here: (id: string) => string[],
): Relative[] {
  const kin = kinOf(facts);
  const known = new Set(parents.flatMap((parent) => childrenOf(facts).get(parent) ?? []));
  known.delete(subject);
  const people = [...known].flatMap((id) => {
    const refs = here(id);
    return refs.length > 0 ? [relativeOf(facts, refs, id)] : [];
  });
  const loose = new Set<string>();
  for (const ref of own) {
    const { record, mention } = mentionAt(facts, ref)!;
    const put = (id: string) => {
      const other = `${record.id}#${id}`;
      if (id !== mention.id && kin.owner(other) === undefined) loose.add(other);
    };
    for (const { as, of } of mention.relations)
      if (as.toLowerCase() === 'sibling' && !of.includes('#')) put(of);
    for (const one of record.mentions)
      for (const { as, of } of one.relations)
        if (as.toLowerCase() === 'sibling' && of === mention.id) put(one.id);
    const beside = kinWithin(record);
    const mine = beside.get(mention.id);
    for (const parent of [...(mine?.fathers ?? []), ...(mine?.mothers ?? [])])
      for (const child of beside.get(parent.id)?.children ?? []) put(child.id);
  }
  return eachOnce(
    people,
    [...loose].filter((ref) => mentionAt(facts, ref)).map((ref) => relativeOf(facts, [ref])),
  );
}

/** Places over there that the new country's records name: as the author reads them in the evidence, else as written. */
function placesHere(facts: Facts, c: Case, own: readonly string[], shores: Shores): FamilyPlace[] {
  const found = new Map<string, FamilyPlace>();
  const read = new Set<string>();
  for (const item of c.evidence) {
    const { mentions } = sourcesOf(item);
    const all = mentions.map((ref) => ({ ref, at: mentionAt(facts, ref) }));
    if (item.kind === 'negative' || all.length === 0) continue;
    if (!all.every(({ at }) => at && shores.isHere(at.record))) continue;
    for (const { ref, at } of all) {
      read.add(`${ref} ${item.states ?? ''}`);
      const said = item.states === undefined ? undefined : statementOf(at!.mention, item.states);
      if (item.place !== undefined && facts.places.has(item.place) && !found.has(item.place))
        found.set(item.place, {
          place: item.place,
          reading: typeof said === 'string' ? said : '',
          ref,
        });
    }
  }
  for (const ref of own) {
    const { mention } = mentionAt(facts, ref)!;
    for (const key of ['birthplace', 'lastResidence'] as const) {
      const reading = mention[key];
      if (reading === undefined || read.has(`${ref} ${key}`)) continue;
      const [place] = placesMeant(facts, reading);
      if (place !== undefined && !found.has(place)) found.set(place, { place, reading, ref });
    }
  }
  return [...found.values()];
}
