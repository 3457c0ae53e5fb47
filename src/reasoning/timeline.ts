/**
 * Lives that contradict themselves: arrived before born, naturalized before arrival, two arrivals, a child born
 * abroad after the arrival, baptized before birth, married or dead before birth, alive after death, a mother too young or too old.
 *
 * Two dates contradict each other only when the earliest day of the one that should come first is after the latest
 * day of the other, so that nothing they may mean can be true of both. Years that somebody remembered, and births
 * known from ages alone, may be off by the tolerance for ages (*common practice*).
 */
import { addYears } from '../model/days.ts';
import { mentionIndex, type Facts } from '../model/facts.ts';
import type { Person } from '../model/person.ts';
import { gather } from '../model/multimap.ts';
import type { BirthSpan } from './ages.ts';
import { containmentOf } from './containment.ts';
import { daysOf, lifeFacts, type LifeFact } from './life-facts.ts';

/** A contradiction between two dated things, of one person or of a parent and a child. */
export interface TimelineProblem {
  rule:
    | 'arrival-follows-birth'
    | 'naturalization-follows-arrival'
    | 'one-arrival'
    | 'children-born-where-parents-live'
    | 'baptism-follows-birth'
    | 'life-begins-with-birth'
    | 'life-ends-with-death'
    | 'mother-of-childbearing-age';
  /** Weaker than its rule is as a whole. */
  hint: boolean;
  person: string;
  /** The child, where the contradiction is between two lives. */
  child?: string;
  /** The one that should come first, then the other. */
  facts: [LifeFact, LifeFact];
}

/** Mothers were not younger or older than this at a birth, but for the rarest of cases (common practice). */
const bearing = { youngest: 12, oldest: 55 };

/** A child may be born so many days after its father left. */
const pregnancy = 300;

/** Two arrivals so near each other are one, dated twice: no ship went and came again in the time. */
const oneCrossing = 31;

/** All contradictions of the people of a corpus, in the order of the person files. */
export function timelineProblems(facts: Facts, births: ReadonlyMap<string, BirthSpan>): TimelineProblem[] {
  const children = new Map<string, Person[]>();
  for (const child of facts.people.values())
    for (const { person: parent } of child.parents) gather(children, parent, child);
  const problems: TimelineProblem[] = [];
  for (const person of facts.people.values()) {
    const life = lifeFacts(facts, person);
    const born = birthFact(facts, person, births.get(person.id), life);
    problems.push(...ofOneLife(facts, person, life, born));
    for (const child of children.get(person.id) ?? []) {
      const childBorn = birthFact(facts, child, births.get(child.id), []);
      if (!childBorn) continue;
      problems.push(
        ...bornAbroad(facts, person, child, life, childBorn),
        ...motherAge(person, child, born, childBorn),
      );
    }
  }
  return problems;
}

function ofOneLife(
  facts: Facts,
  person: Person,
  life: readonly LifeFact[],
  born: LifeFact | undefined,
): TimelineProblem[] {
  const of = (what: LifeFact['what']) => life.filter((fact) => fact.what === what);
  const problems: TimelineProblem[] = [];
  const add = (rule: TimelineProblem['rule'], first: LifeFact, second: LifeFact, hint = false) =>
    problems.push({ rule, hint, person: person.id, facts: [first, second] });
  const arrivals = of('arrival');
  const tolerance = facts.site.ageTolerance;

  for (const arrival of arrivals)
    if (born && sureBefore(arrival, born, tolerance)) add('arrival-follows-birth', born, arrival);

  // Before every arrival is before the first that is remembered and the first that is not.
  const firstArrival = least(arrivals, (fact) => fact.first);
  const firsts = [true, false].flatMap(
    (told) =>
      least(
        arrivals.filter((fact) => fact.remembered === told),
        (fact) => fact.first,
      ) ?? [],
  );
  if (firstArrival)
    for (const paper of of('naturalization'))
      if (firsts.every((arrival) => sureBefore(paper, arrival, tolerance)))
        add('naturalization-follows-arrival', firstArrival, paper);

  const registered = least(
    of('birth').filter((birth) => !birth.remembered),
    (birth) => -birth.first,
  );
  const beside = new Map(of('birth').map((birth) => [birth.ref, birth]));
  for (const baptism of of('baptism')) {
    const sure = [beside.get(baptism.ref), registered].find(
      (birth) => birth !== undefined && baptism.last < birth.first,
    );
    if (sure) add('baptism-follows-birth', sure, baptism);
  }

  const births = [born, statedBirth(person)].filter((fact) => fact !== undefined);
  for (const fact of life)
    if (['alive', 'naturalization', 'death'].includes(fact.what)) {
      const sure = births.find((birth) => sureBefore(fact, birth, tolerance));
      if (sure) add('life-begins-with-birth', sure, fact);
    }

  // Of deaths that disagree the last counts: a notice may be days late, and a burial follows.
  const death = least(of('death'), (fact) => -fact.last);
  if (death)
    for (const later of life)
      if (['alive', 'naturalization', 'baptism', 'arrival'].includes(later.what))
        if (later.first > death.last && !later.remembered) add('life-ends-with-death', later, death);

  for (const [first, second] of twoArrivals(arrivals, tolerance)) add('one-arrival', first, second);
  return problems;
}

/** Whether `a` is surely before `b`, though one of them may be remembered wrong by so many years. */
function sureBefore(a: LifeFact, b: LifeFact, tolerance: number): boolean {
  return shifted(a.last, a.remembered || b.remembered ? tolerance : 0) < b.first;
}

function shifted(day: number, years: number): number {
  if (!Number.isFinite(day)) return day;
  return Number.isInteger(years) ? addYears(day, years) : day + Math.round(years * 365.2425);
}

function least(facts: readonly LifeFact[], by: (fact: LifeFact) => number): LifeFact | undefined {
  return facts.reduce<LifeFact | undefined>(
    (best, fact) => (best === undefined || by(fact) < by(best) ? fact : best),
    undefined,
  );
}

/** The birth of a person as a dated thing: fixed by its record, agreed by ages, or as the author has it. */
function birthFact(
  facts: Facts,
  person: Person,
  span: BirthSpan | undefined,
  life: readonly LifeFact[],
): LifeFact | undefined {
  const base = { what: 'birth', kind: 'birth', mention: undefined } as const;
  const outside = new Set(span?.outliers);
  const inside = span?.intervals.filter((interval) => !outside.has(interval.ref)) ?? [];
  const source = inside.find((i) => i.fixes && i.first === span!.first && i.last === span!.last) ?? inside[0];
  if (span && source && span.first !== null && span.last !== null) {
    const [record = '', id = ''] = source.ref.split('#');
    const index = mentionIndex(facts.records.get(record)!, id);
    const said = life.find((fact) => fact.ref === source.ref && fact.what === 'birth');
    return {
      ...base,
      date: `${span.first}`,
      first: span.first,
      last: span.last,
      remembered: !source.fixes,
      ref: source.ref,
      entry: `record:${record}`,
      path: said?.path ?? ['mentions', index],
    };
  }
  return statedBirth(person);
}

/** The birth as the person’s own entry has it. */
function statedBirth(person: Person): LifeFact | undefined {
  const stated = person.born?.date;
  return stated === undefined
    ? undefined
    : {
        what: 'birth',
        kind: 'birth',
        mention: undefined,
        date: stated,
        ...daysOf(stated),
        remembered: false,
        ref: undefined,
        entry: `person:${person.id}`,
        path: ['born', 'date'],
      };
}

const wentBack = /\b(?:return(?:s|ed|ing)?|back|again|before|second|visit(?:s|ed|ing)?|formerly)\b/i;

/** Pairs of arrivals that cannot be one, the first arrival with each later one. */
function twoArrivals(arrivals: readonly LifeFact[], tolerance: number): [LifeFact, LifeFact][] {
  if (arrivals.some(saysReturn)) return [];
  const sorted = arrivals
    .filter((fact) => Number.isFinite(fact.first) && Number.isFinite(fact.last))
    .sort((a, b) => a.first - b.first || a.last - b.last || Number(a.remembered) - Number(b.remembered));
  const kept: LifeFact[] = [];
  for (const arrival of sorted) {
    const same = kept.some(
      (other) => arrival.first <= latestSame(other, arrival, tolerance) || isOnward(other, arrival),
    );
    if (!same) kept.push(arrival);
  }
  return kept.slice(1).map((later) => [kept[0]!, later]);
}

/** The last day an arrival may have and still be the same as an earlier one; each memory may be off by itself. */
function latestSame(a: LifeFact, b: LifeFact, tolerance: number): number {
  const told = Number(a.remembered) + Number(b.remembered);
  return told > 0 ? shifted(a.last, told * tolerance) : a.last + oneCrossing;
}

/** The record itself says that they had gone back, or been over before. */
function saysReturn({ mention }: LifeFact): boolean {
  if (!mention) return false;
  const { voyage, role, says, event } = mention;
  const texts = [role, event?.kind, voyage?.bound, ...Object.keys(says), ...Object.values(says)];
  return texts.some((text) => text !== undefined && wentBack.test(text.slice(0, 500)));
}

/** The second is a leg of the same journey, or the voyage home. */
function isOnward(a: LifeFact, b: LifeFact): boolean {
  const plain = (text: string | undefined) => text?.trim().toLowerCase();
  const [from, to] = [plain(b.mention?.voyage?.from), plain(b.mention?.voyage?.to)];
  const [before, after] = [plain(a.mention?.voyage?.from), plain(a.mention?.voyage?.to)];
  if (to !== undefined && to === before) return true;
  return from !== undefined && from === after && b.first <= a.last + 366;
}

/**
 * A child born in another country than the one in which the parent, already arrived, then lived. A father may have
 * left his wife behind: of him it is only a hint, and a child that was on the way when he left is none.
 */
function bornAbroad(
  facts: Facts,
  parent: Person,
  child: Person,
  life: readonly LifeFact[],
  born: LifeFact,
): TimelineProblem[] {
  const place = child.born?.place;
  const arrivals = life.filter((fact) => fact.what === 'arrival');
  const arrival = least(arrivals, (fact) => fact.last);
  if (place === undefined || !arrival || parent.placeholder) return [];
  const mother = parent.sex === 'F';
  const tolerance = arrival.remembered || born.remembered ? facts.site.ageTolerance : 0;
  const settled = shifted(arrival.last, tolerance) + (mother ? 0 : pregnancy);
  if (!(settled < born.first)) return [];
  // Having come again after the birth, they were over there for it.
  if (arrivals.some((other) => other.last >= born.first)) return [];
  if (arrivals.some(saysReturn)) return [];
  const { countries } = containmentOf(facts);
  const there = countries(place);
  const here = countriesLivedIn(facts, parent, arrival);
  const home = parent.born?.place === undefined ? [] : countries(parent.born.place);
  const abroad =
    here.size > 0 ? !there.some((country) => here.has(country)) : there.some((c) => home.includes(c));
  return there.length > 0 && abroad
    ? [
        {
          rule: 'children-born-where-parents-live',
          hint: !mother,
          person: parent.id,
          child: child.id,
          facts: [arrival, born],
        },
      ]
    : [];
}

/** The countries in which records made since the arrival have someone, and in which they died. */
function countriesLivedIn(facts: Facts, person: Person, arrival: LifeFact): ReadonlySet<string> {
  const { countries } = containmentOf(facts);
  const found = new Set<string>(person.died?.place === undefined ? [] : countries(person.died.place));
  for (const ref of person.mentions) {
    const [id = '', mentionId = ''] = ref.split('#');
    const record = facts.records.get(id);
    if (record?.place === undefined || record.made === undefined) continue;
    if (record.mentions[mentionIndex(record, mentionId)]?.present === false) continue;
    if (daysOf(record.made).last >= arrival.first) for (const c of countries(record.place)) found.add(c);
  }
  return found;
}

function motherAge(
  mother: Person,
  child: Person,
  born: LifeFact | undefined,
  childBorn: LifeFact,
): TimelineProblem[] {
  if (mother.sex !== 'F' || !born || mother.placeholder) return [];
  const oldest = shifted(born.first, bearing.youngest);
  const youngest = shifted(born.last, bearing.oldest + 1);
  return childBorn.last < oldest || childBorn.first >= youngest
    ? [
        {
          rule: 'mother-of-childbearing-age',
          hint: true,
          person: mother.id,
          child: child.id,
          facts: [born, childBorn],
        },
      ]
    : [];
}
