/**
 * A candidate: the family that its own records and people make, built without looking at the new country's records.
 *
 * Rule (common practice): of a register page only the entry counts that is the family's; the child who would be the
 * emigrant is the one the author joined to the subject, else a person of the candidate, else a child of an entry whose
 * given name fits.
 */
import type { Case } from '../../model/case.ts';
import { daySpan } from '../../model/edtf.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { isBirth } from '../items.ts';
import { kinOf } from '../kin.ts';
import { kinWithin } from '../identity/kin-words.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { agreeGiven, agreeSurname } from '../names/agree.ts';
import { preparedGiven, preparedSurname } from '../names/prepared.ts';
import { rarityClaimOf } from '../identity/weight.ts';
import { containmentOf } from '../containment.ts';
import {
  childrenOf,
  eachOnce,
  headOfRole,
  namings,
  ownNaming,
  parentsByRole,
  relativeOf,
  sexOfPerson,
} from './family.ts';
import { distinct, mostSiblings } from './here.ts';
import type { Shores } from './shores.ts';
import type { Family, FamilyPlace, Naming, Relative } from './types.ts';

/** Children that nobody has joined to a person, beyond which no more are looked at. */
const mostLoose = 4 * mostSiblings;

export interface Found {
  family: Family;
  /** Every mention of the candidate's records, and those of its people over there. */
  refs: readonly string[];
  /** Mentions of the parents. */
  parents: readonly string[];
  leftOut: number;
  /** Where the records were made that the family was found in. */
  made?: string;
}

/** The family of a candidate, from its records and people. `expected` is the child to look for. */
export function familyThere(
  facts: Facts,
  c: Case,
  candidate: Case['candidates'][number],
  shores: Shores,
  expected: Relative,
): Found {
  const inRecords = [...new Set(candidate.records)].sort().flatMap((id) => {
    const record = facts.records.get(id);
    return record ? record.mentions.map((mention) => `${id}#${mention.id}`) : [];
  });
  const members = [...new Set(candidate.people)].filter((id) => facts.people.has(id)).sort();
  const refs = new Set(inRecords);
  for (const id of members)
    for (const ref of facts.people.get(id)!.mentions) {
      const record = mentionAt(facts, ref)?.record;
      if (record && shores.isThere(record)) refs.add(ref);
    }
  const own = (id: string) => (facts.people.get(id)?.mentions ?? []).filter((ref) => refs.has(ref));
  const child = childOf(facts, c, members, inRecords, own, expected);
  const parents = parentsOf(facts, members, inRecords, own, child);
  const { siblings, leftOut } = siblingsOf(facts, members, own, parents, child);
  const childRefs = child?.refs ?? [];
  const fathers = parents.fathers.flatMap((ref) => mentionAt(facts, ref) ?? []);
  const made = madeAt(facts, childRefs, inRecords);
  return {
    family: {
      ...(child ? { child } : {}),
      father: parents.father,
      mother: parents.mother,
      siblings,
      spouse: distinct(spouseOf(facts, childRefs, shores)),
      places: placesThere(facts, [...childRefs, ...parents.fathers, ...parents.mothers], inRecords),
      occupation: fathers.flatMap(({ record, mention }) =>
        mention.occupation === undefined
          ? []
          : [{ text: mention.occupation, ref: `${record.id}#${mention.id}` }],
      ),
    },
    refs: [...refs],
    parents: [...parents.fathers, ...parents.mothers],
    leftOut,
    ...(made === undefined ? {} : { made }),
  };
}

type Own = (id: string) => string[];

function childOf(
  facts: Facts,
  c: Case,
  members: readonly string[],
  inRecords: readonly string[],
  own: Own,
  expected: Relative,
): Relative | undefined {
  if (own(c.subject).length > 0) return relativeOf(facts, own(c.subject), c.subject);
  const parents = new Set(members.flatMap((id) => facts.people.get(id)!.parents.map(({ person }) => person)));
  const people = members
    .filter((id) => !parents.has(id) && id !== c.subject)
    .map((id) => relativeOf(facts, own(id), id));
  return nearest(people, expected) ?? nearest(looseChildren(facts, members, inRecords, own), expected);
}

/** Children of the entries: those of the candidate's people where there are any. */
function looseChildren(
  facts: Facts,
  members: readonly string[],
  inRecords: readonly string[],
  own: Own,
): Relative[] {
  const kin = kinOf(facts);
  const all = inRecords.flatMap((ref) => {
    const { record, mention } = mentionAt(facts, ref)!;
    const beside = kinWithin(record).get(mention.id)!;
    const parents = [...beside.fathers, ...beside.mothers];
    const byRole = /^(?:child|infant|son|daughter|baptized|baptised|confirmand)$/.test(headOfRole(mention));
    if (parents.length === 0 && !byRole) return [];
    const ours = parents.some(({ id }) => members.includes(kin.owner(`${record.id}#${id}`) ?? ''));
    const owner = kin.owner(ref);
    return [{ ours, relative: relativeOf(facts, owner === undefined ? [ref] : own(owner), owner) }];
  });
  const ours = all.filter((one) => one.ours);
  return (ours.length > 0 ? ours : all).map(({ relative }) => relative);
}

/** The one whose name and age fit best; none where no name fits. */
function nearest(all: readonly Relative[], expected: Relative): Relative | undefined {
  let best: { one: Relative; score: number } | undefined;
  for (const one of all) {
    if (one.sex && expected.sex && one.sex !== expected.sex) continue;
    const claim = Math.max(0, ...one.names.flatMap((mine) => expected.names.map((its) => fit(mine, its))));
    if (claim === 0) continue;
    const apart =
      one.birth && expected.birth
        ? Math.abs(one.birth.first + one.birth.last - expected.birth.first - expected.birth.last) / 730
        : 10;
    const score = 100 * claim - apart;
    if (!best || score > best.score || (score === best.score && one.key < best.one.key))
      best = { one, score };
  }
  return best?.one;
}

const fit = (a: Naming, b: Naming) =>
  a.given === '' || b.given === ''
    ? 0
    : rarityClaimOf(agreeGiven(preparedGiven(a.given), preparedGiven(b.given)).level);

interface Parents {
  /** People, where the author has named them. */
  people: readonly string[];
  fathers: readonly string[];
  mothers: readonly string[];
  father: readonly Naming[];
  mother: readonly Naming[];
}

function parentsOf(
  facts: Facts,
  members: readonly string[],
  inRecords: readonly string[],
  own: Own,
  child: Relative | undefined,
): Parents {
  const kin = kinOf(facts);
  const fathers = new Set<string>();
  const mothers = new Set<string>();
  const people = new Set<string>();
  const file = child && facts.people.get(child.key);
  for (const { person } of file?.parents ?? [])
    if (members.includes(person) || own(person).length > 0) people.add(person);
  const beside = (refs: readonly string[]) => {
    for (const ref of refs) {
      const { record, mention } = mentionAt(facts, ref)!;
      const near = kinWithin(record).get(mention.id)!;
      for (const { id } of near.fathers) fathers.add(`${record.id}#${id}`);
      for (const { id } of near.mothers) mothers.add(`${record.id}#${id}`);
      if (near.fathers.length + near.mothers.length > 0) continue;
      const { father, mother } = parentsByRole(record, mention);
      if (father) fathers.add(`${record.id}#${father.id}`);
      if (mother) mothers.add(`${record.id}#${mother.id}`);
    }
  };
  if (child) beside(child.refs);
  if (people.size + fathers.size + mothers.size === 0) {
    const above = new Set(members.flatMap((id) => facts.people.get(id)!.parents.map(({ person }) => person)));
    for (const id of members) if (above.has(id)) people.add(id);
    if (people.size === 0)
      for (const id of members) if ((childrenOf(facts).get(id)?.length ?? 0) > 0) people.add(id);
  }
  if (people.size + fathers.size + mothers.size === 0 && !child) {
    const first = inRecords.find((ref) => {
      const { record, mention } = mentionAt(facts, ref)!;
      const near = kinWithin(record).get(mention.id)!;
      return near.fathers.length + near.mothers.length > 0;
    });
    if (first !== undefined) beside([first]);
  }
  for (const ref of inRecords) otherEntry(facts, ref, fathers, mothers);
  for (const ref of [...fathers, ...mothers]) {
    const person = kin.owner(ref);
    if (person !== undefined) people.add(person);
  }
  const father: Naming[] = [];
  const mother: Naming[] = [];
  for (const id of [...people].sort()) {
    const refs = own(id);
    const sex = sexOfPerson(facts, id, refs);
    const named = refs.flatMap((ref) => namings(facts, ref));
    // A name that only the new country's records give would make the candidate agree with itself.
    const all =
      named.length > 0 || (facts.people.get(id)?.mentions.length ?? 0) > 0 ? named : ownNaming(facts, id);
    if (sex === 'M') father.push(...all);
    if (sex === 'F') mother.push(...all);
    for (const ref of refs) (sex === 'M' ? fathers : sex === 'F' ? mothers : new Set<string>()).add(ref);
  }
  for (const ref of fathers) father.push(...namings(facts, ref));
  for (const ref of mothers) mother.push(...namings(facts, ref));
  return {
    people: [...people],
    fathers: [...fathers],
    mothers: [...mothers],
    father: distinct(father),
    mother: distinct(mother),
  };
}

/** Adds the parents of another entry of the candidate's records where both are named as those known already. */
function otherEntry(facts: Facts, ref: string, fathers: Set<string>, mothers: Set<string>): void {
  const { record, mention } = mentionAt(facts, ref)!;
  const beside = kinWithin(record).get(mention.id)!;
  const told = [
    [beside.fathers, fathers],
    [beside.mothers, mothers],
  ] as const;
  const judged = told.map(([mentions, known]) => {
    const mine = mentions.flatMap(({ id }) => namings(facts, `${record.id}#${id}`));
    const its = [...known].slice(0, 4).flatMap((one) => namings(facts, one));
    return mine.length === 0 || its.length === 0
      ? undefined
      : mine.some((x) => its.some((y) => oneName(x, y)));
  });
  // One parent alone is too little where the other is told.
  if (judged.includes(false) || !judged.includes(true)) return;
  for (const [mentions, known] of told) for (const { id } of mentions) known.add(`${record.id}#${id}`);
}

/** Whether two namings fit as one person's: the given names, and the surnames where both have one. */
function oneName(a: Naming, b: Naming): boolean {
  if (fit(a, b) === 0) return false;
  if (a.surname === '' || b.surname === '') return true;
  return rarityClaimOf(agreeSurname(preparedSurname(a.surname), preparedSurname(b.surname)).level) > 0;
}

function siblingsOf(
  facts: Facts,
  members: readonly string[],
  own: Own,
  parents: Parents,
  child: Relative | undefined,
): { siblings: Relative[]; leftOut: number } {
  const kin = kinOf(facts);
  const known = new Set(parents.people.flatMap((id) => childrenOf(facts).get(id) ?? []));
  const loose = new Set<string>();
  for (const ref of [...parents.fathers, ...parents.mothers]) {
    const { record, mention } = mentionAt(facts, ref)!;
    for (const { id } of kinWithin(record).get(mention.id)!.children) {
      const other = `${record.id}#${id}`;
      const owner = kin.owner(other);
      if (owner === undefined) loose.add(other);
      else known.add(owner);
    }
  }
  if (child) known.delete(child.key);
  const people = [...known].flatMap((id) => {
    const refs = own(id);
    const onlyNamed = members.includes(id) && (facts.people.get(id)?.mentions.length ?? 0) === 0;
    return refs.length > 0 || onlyNamed ? [relativeOf(facts, refs, id)] : [];
  });
  const childRefs = new Set(child?.refs);
  const others = [...loose].filter((ref) => !childRefs.has(ref)).sort();
  const told = others.slice(0, mostLoose).map((ref) => relativeOf(facts, [ref]));
  const all = eachOnce(people, child ? told.filter((one) => !sameEntry(child, one)) : told);
  return {
    siblings: all.slice(0, mostSiblings),
    leftOut: Math.max(0, all.length - mostSiblings) + Math.max(0, others.length - mostLoose),
  };
}

/** A loose mention that is the child itself in a copy of the same entry. */
function sameEntry(child: Relative, one: Relative): boolean {
  return eachOnce([child], [one]).length === 1;
}

/** Husbands and wives over there, of marriages before the subject had left. */
function spouseOf(facts: Facts, childRefs: readonly string[], shores: Shores): Naming[] {
  return childRefs.flatMap((ref) => {
    const { record, mention } = mentionAt(facts, ref)!;
    const date = mention.event?.date ?? record.made;
    const first = date === undefined ? null : daySpan(date).first;
    if (shores.hereBy && first !== null && first > shores.hereBy.day) return [];
    return kinWithin(record)
      .get(mention.id)!
      .spouses.flatMap((one) => namings(facts, `${record.id}#${one.id}`));
  });
}

/**
 * Where the family was: what the candidate's entries say, read inside the place of the record, else the place of the
 * record; the entry of the birth or baptism first. A place that holds another of them says no more than that one.
 */
function placesThere(facts: Facts, members: readonly string[], inRecords: readonly string[]): FamilyPlace[] {
  const { within, above, overlap, outward } = containmentOf(facts);
  const own = new Set(inRecords);
  const told = members.filter((ref) => own.has(ref));
  const born = (ref: string) => {
    const event = mentionAt(facts, ref)!.mention.event;
    return event && isBirth(event) ? 0 : 1;
  };
  const refs = [...new Set(told.length > 0 ? told : members.length > 0 ? members : inRecords)];
  const found = new Map<string, FamilyPlace>();
  for (const ref of refs.toSorted((a, b) => born(a) - born(b))) {
    const { record, mention } = mentionAt(facts, ref)!;
    const made = record.place;
    const readings = [mention.event?.place, mention.residence, mention.birthplace].filter(
      (text) => text !== undefined,
    );
    for (const reading of readings) {
      const place = placesMeant(facts, reading).find(
        (id) =>
          made === undefined ||
          within(id, made) ||
          within(made, id) ||
          outward(id).some((one) => overlap(one, made)),
      );
      if (place !== undefined && !found.has(place)) found.set(place, { place, reading, ref });
    }
    if (made !== undefined && !found.has(made)) found.set(made, { place: made, reading: '', ref });
  }
  const holders = new Set([...found.keys()].flatMap((id) => [...above(id)]));
  return [...found.values()].filter(({ place }) => !holders.has(place));
}

/** The place of the records that a family was found in: of the child's birth or baptism first. */
function madeAt(facts: Facts, refs: readonly string[], inRecords: readonly string[]): string | undefined {
  const own = new Set(inRecords);
  let first: string | undefined;
  for (const ref of [...refs, ...inRecords]) {
    if (!own.has(ref)) continue;
    const { record, mention } = mentionAt(facts, ref)!;
    if (record.place === undefined) continue;
    if (mention.event && isBirth(mention.event) && refs.includes(ref)) return record.place;
    first ??= record.place;
  }
  return first;
}
