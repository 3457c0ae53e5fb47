/**
 * Which associates an author should look at now: few, each worth it, and one hint for each of them.
 *
 * Rules (common practice): an associate who says where he came from may have named the family's own place; a shipmate
 * who lives next door later came with them and not by accident; whoever is in three records deserves a file; and
 * where a witness's wife or mother bears the family's maiden name, the witness may be kin.
 */
import { mentionAt, type Facts } from '../../model/facts.ts';
import { splitMentionRef } from '../../model/common.ts';
import { kinWithin, sexOf } from '../identity/kin-words.ts';
import { comparisonAt } from '../identity/context.ts';
import { mentionRows } from '../identity/mention-row.ts';
import { containmentOf } from '../containment.ts';
import { parseName } from '../names/parse-name.ts';
import { preparedSurname } from '../names/prepared.ts';
import { isWide } from '../places/gazetteer.ts';
import { caseFamilies } from './associates.ts';
import { dayOf } from './namings.ts';
import { surnameKey } from './surnames.ts';
import type { Associate, FamilyAssociates, Sighting, StatedOrigin } from './types.ts';

export type AssociateHint = {
  /** The mention it stands at. */
  ref: string;
  family: FamilyAssociates;
  associate: Associate;
} & (
  | { kind: 'origin'; origin: StatedOrigin }
  | { kind: 'shipmate'; aboard: Sighting; later: Sighting[] }
  | { kind: 'recurs' }
  | { kind: 'maiden-name'; relation: 'wife' | 'mother'; name: string; surname: string; share: number }
);

/** In how many independent records, and below which chance, somebody without a file is hinted at. */
export const worthAFile = { records: 3, chance: 0.01 } as const;
/** Below which chance an origin, or a passage shared, is no accident to be passed over. */
const telling = 0.1;
/** A surname that more than this share bear says nothing beside a family. */
const commonSurname = 0.005;
/** Hints of one kind for one family; the others stand on the page of associates. */
export const mostHints = 3;

/** The hints on every family that a case is about, by kind, the most telling associate first. */
export function associateHints(facts: Facts): {
  hints: AssociateHint[];
  more: ReadonlyMap<AssociateHint, number>;
} {
  const hints: AssociateHint[] = [];
  const more = new Map<AssociateHint, number>();
  for (const family of caseFamilies(facts)) {
    const found = new Map<AssociateHint['kind'], AssociateHint[]>();
    const open = besideOpenCases(facts, family);
    const maiden = familySurnames(facts, family);
    for (const associate of family.associates) {
      const hint = hintOn(facts, family, associate, open, maiden);
      if (hint) found.set(hint.kind, [...(found.get(hint.kind) ?? []), hint]);
    }
    for (const list of found.values()) {
      hints.push(...list.slice(0, mostHints));
      if (list.length > mostHints) more.set(list[mostHints - 1]!, list.length - mostHints);
    }
  }
  return { hints, more };
}

function hintOn(
  facts: Facts,
  family: FamilyAssociates,
  associate: Associate,
  open: ReadonlySet<string>,
  maiden: ReadonlyMap<string, number>,
): AssociateHint | undefined {
  const base = { family, associate };
  const recurs = associate.records > 1 && associate.chance < telling;
  if (recurs && associate.sightings.some(({ record }) => open.has(record))) {
    const origin = associate.origins.find((one) => one.lead && isNarrow(facts, one.place));
    if (origin && !isUsed(facts, family, associate))
      return { kind: 'origin', ref: origin.ref, ...base, origin };
  }
  const sightings = associate.sightings.filter(({ ref }) => ref.includes('#'));
  const last = sightings.at(-1);
  if (recurs && associate.person === undefined && last) {
    const aboard = sightings.find(({ role }) => role === 'fellow-passenger');
    const sailed = aboard && dayOf(facts, aboard.record);
    const later = sightings.filter(({ record, role }) => {
      const day = dayOf(facts, record);
      return (
        role !== 'fellow-passenger' &&
        role !== 'other' &&
        sailed !== undefined &&
        sailed !== null &&
        day !== null &&
        day > sailed
      );
    });
    if (aboard && later.length > 0)
      return { kind: 'shipmate', ref: later.at(-1)!.ref, ...base, aboard, later };
    if (associate.records >= worthAFile.records && associate.chance < worthAFile.chance)
      return { kind: 'recurs', ref: last.ref, ...base };
  }
  return maidenName(facts, base, maiden);
}

/** Records in which the subject of a case without a conclusion stands: there an associate’s origin is wanted most. */
function besideOpenCases(facts: Facts, { family }: FamilyAssociates): ReadonlySet<string> {
  const open = [...facts.cases.values()].filter(
    ({ subject, conclusion }) => family.has(subject) && !conclusion,
  );
  return new Set(
    open.flatMap(({ subject }) =>
      (facts.people.get(subject)?.mentions ?? []).map((ref) => splitMentionRef(ref).record),
    ),
  );
}

/** A place that is no county and no part of a country of many parishes, and lies in a county. */
function isNarrow(facts: Facts, place: string | undefined): boolean {
  if (place === undefined || isWide(facts.places.get(place)?.kind ?? '')) return false;
  return [...containmentOf(facts).above(place)].some((id) => facts.places.get(id)?.kind === 'county');
}

/** Whether a case of the family rests on a mention of the associate. */
function isUsed(facts: Facts, { family }: FamilyAssociates, associate: Associate): boolean {
  const own = new Set([
    ...associate.sightings.map(({ ref }) => ref),
    ...associate.origins.map(({ ref }) => ref),
    ...((associate.person === undefined ? undefined : facts.people.get(associate.person)?.mentions) ?? []),
  ]);
  return [...facts.cases.values()].some(
    ({ subject, evidence }) =>
      family.has(subject) && evidence.some(({ from }) => from.some((ref) => own.has(ref))),
  );
}

/** Rare surnames of the subjects, their wives and husbands and their parents, with how common each is. */
function familySurnames(facts: Facts, { subjects, country }: FamilyAssociates): Map<string, number> {
  const kin = subjects.flatMap((id) => {
    const person = facts.people.get(id);
    return person
      ? [id, ...person.spouses.map((one) => one.person), ...person.parents.map((one) => one.person)]
      : [];
  });
  const shares = comparisonAt(facts, '', country);
  const found = new Map<string, number>();
  for (const id of kin) {
    const { surname, patronymic } = parseName(facts.people.get(id)?.name ?? '');
    if (surname === '' || patronymic || preparedSurname(surname).patronymic) continue;
    const { share } = shares.shares!('surname', surname)!;
    if (share <= commonSurname) found.set(surnameKey(surname), share);
  }
  return found;
}

/** The wife or mother of somebody who stood by the family, by a surname of the family's. */
function maidenName(
  facts: Facts,
  base: { family: FamilyAssociates; associate: Associate },
  family: ReadonlyMap<string, number>,
): AssociateHint | undefined {
  const { associate } = base;
  if (family.size === 0 || !associate.roles.some((role) => role !== 'other' && role !== 'fellow-passenger'))
    return undefined;
  const ownKey = surnameKey(associate.surname);
  // Whoever bears the surname himself is among the surnames of the page; here it is the women's that are easily missed.
  if (family.has(ownKey)) return undefined;
  for (const { relation, name, surnames, ref } of womenOf(facts, associate))
    for (const surname of surnames) {
      const key = surnameKey(surname);
      const share = key === ownKey ? undefined : family.get(key);
      if (share !== undefined) return { kind: 'maiden-name', ref, ...base, relation, name, surname, share };
    }
  return undefined;
}

/** Wives and mothers of an associate, from the person files and from the records. */
function* womenOf(
  facts: Facts,
  { person, sightings }: Associate,
): Generator<{ relation: 'wife' | 'mother'; name: string; surnames: string[]; ref: string }> {
  const last = sightings.findLast(({ ref }) => ref.includes('#'))?.ref;
  if (person !== undefined && last !== undefined) {
    const file = facts.people.get(person);
    const women = [
      ...(file?.spouses ?? []).map((one) => ['wife', one.person] as const),
      ...(file?.parents ?? []).map((one) => ['mother', one.person] as const),
    ];
    for (const [relation, id] of women) {
      const woman = facts.people.get(id);
      if (woman?.sex === 'F')
        yield {
          relation,
          name: woman.name,
          surnames: [parseName(woman.name).surname].filter(Boolean),
          ref: last,
        };
    }
  }
  for (const { ref } of sightings) {
    const at = ref.includes('#') ? mentionAt(facts, ref) : undefined;
    const kin = at && kinWithin(at.record).get(at.mention.id);
    if (!kin) continue;
    const { record } = splitMentionRef(ref);
    const wives = kin.spouses.filter((one) => sexOf(one) === 'F');
    for (const [relation, list] of [
      ['wife', wives],
      ['mother', kin.mothers],
    ] as const)
      for (const woman of list) {
        const surnames = mentionRows(facts, `${record}#${woman.id}`).flatMap(({ surname }) => surname ?? []);
        if (woman.name !== undefined) yield { relation, name: woman.name, surnames, ref };
      }
  }
}
