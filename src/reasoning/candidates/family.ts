/** What mentions say of the members of a family, in the shape in which two families are compared. */
import { mentionAt, mentionIndex, type Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { birthInterval } from '../ages.ts';
import { kinWithin, sexOf } from '../identity/kin-words.ts';
import { mentionRows } from '../identity/mention-row.ts';
import { agreeGiven } from '../names/agree.ts';
import { parseName } from '../names/parse-name.ts';
import { preparedGiven } from '../names/prepared.ts';
import { once } from '../once.ts';
import type { Family, Naming, Relative } from './types.ts';

/** Mentions of one person beyond which the rest say nothing new. */
const mostMentions = 60;

/** Children of each person, by the people files, in file order. */
export const childrenOf = once((facts: Facts) => {
  const children = new Map<string, string[]>();
  for (const person of facts.people.values())
    for (const { person: parent } of person.parents) gather(children, parent, person.id);
  return children;
});

/** Everybody's husbands and wives, from either one's entry. */
export const spousesOf = once((facts: Facts) => {
  const spouses = new Map<string, string[]>();
  for (const person of facts.people.values())
    for (const { person: spouse } of person.spouses) {
      gather(spouses, person.id, spouse);
      gather(spouses, spouse, person.id);
    }
  return spouses;
});

/** The ways a mention names somebody; none where it gives no name. */
export function namings(facts: Facts, ref: string): Naming[] {
  const written = mentionAt(facts, ref)?.mention.name ?? '';
  return mentionRows(facts, ref).map(({ given, surname, surnameIs }) => ({
    given: given ?? '',
    surname: surname ?? '',
    patronymic: surnameIs === 'patronymic',
    written,
    ref,
  }));
}

/** A person's name as their own file has it; none of a placeholder. */
export function ownNaming(facts: Facts, id: string): Naming[] {
  const person = facts.people.get(id);
  if (!person || person.placeholder) return [];
  const { given, surname, patronymic } = parseName(person.name);
  return [{ given, surname, patronymic, written: person.name, ref: '' }];
}

/** The sex of a person: their file's, else what one of the mentions says. */
export function sexOfPerson(facts: Facts, id: string, refs: readonly string[]): 'M' | 'F' | undefined {
  const stated = facts.people.get(id)?.sex;
  if (stated === 'M' || stated === 'F') return stated;
  for (const ref of refs) {
    const mention = mentionAt(facts, ref)?.mention;
    const sex = mention && sexOf(mention);
    if (sex) return sex;
  }
  return undefined;
}

/** One child of a family from the mentions that name them; `person` where an author has joined the mentions. */
export function relativeOf(facts: Facts, refs: readonly string[], person?: string): Relative {
  const told = refs.slice(0, mostMentions);
  const births = told.flatMap((ref) => {
    const at = mentionAt(facts, ref);
    const interval = at && birthInterval(at.record, at.mention, facts);
    return interval ? [{ ref, ...interval, original: at.record.form === 'original' }] : [];
  });
  const names = told.flatMap((ref) => namings(facts, ref));
  const sex = person === undefined ? sexOfMentions(facts, told) : sexOfPerson(facts, person, told);
  // A record of the birth goes before an age, and a register before its copy, as for a person's own birth.
  const fixed = births.filter(({ fixes }) => fixes);
  const originals = fixed.filter(({ original }) => original);
  const birth = middle(originals.length > 0 ? originals : fixed.length > 0 ? fixed : births);
  return {
    key: person ?? refs[0] ?? '',
    names: names.length > 0 || person === undefined ? names : ownNaming(facts, person),
    ...(sex ? { sex } : {}),
    ...(birth ? { birth: { first: birth.first, last: birth.last, ref: birth.ref } } : {}),
    births: shownBirths(birth, births),
    birthdays: births.flatMap(({ first, last, ref }) => (first === last ? [{ day: first, ref }] : [])),
    refs,
    listed: told.flatMap((ref) => listed(facts, ref)),
  };
}

/** Births told to the month, each once, the one that is reckoned with first. */
function shownBirths<T extends { first: number; last: number; ref: string }>(
  birth: T | undefined,
  all: readonly T[],
): T[] {
  if (!birth) return [];
  const exact = all.filter(({ first, last }) => last - first <= 31);
  return [birth, ...exact.filter((one) => one.first !== birth.first || one.last !== birth.last)];
}

/** Where a mention stands among the children of a parent beside it. */
function listed(facts: Facts, ref: string): Relative['listed'] {
  const at = mentionAt(facts, ref);
  if (!at) return [];
  const kin = kinWithin(at.record);
  const mine = kin.get(at.mention.id)!;
  return [...mine.fathers, ...mine.mothers].map((parent) => ({
    list: `${at.record.id}#${parent.id}`,
    at: mentionIndex(at.record, at.mention.id),
  }));
}

/** The fullest of somebody's given names: “Thomas” before “T.”. */
export function fullest(names: readonly Naming[]): Naming | undefined {
  return names.reduce<Naming | undefined>(
    (best, one) => (one.given.length > (best?.given.length ?? 0) ? one : best),
    undefined,
  );
}

function sexOfMentions(facts: Facts, refs: readonly string[]): 'M' | 'F' | undefined {
  for (const ref of refs) {
    const mention = mentionAt(facts, ref)?.mention;
    const sex = mention && sexOf(mention);
    if (sex) return sex;
  }
  return undefined;
}

/**
 * Of several births the one in the middle, of those that are told to the month where there are any: ages wobble either
 * way (common practice).
 */
function middle<T extends { first: number; last: number; ref: string }>(births: readonly T[]): T | undefined {
  const exact = births.filter(({ first, last }) => last - first <= 31);
  const chosen = (exact.length > 0 ? exact : births).toSorted(
    (a, b) => a.first + a.last - b.first - b.last || (a.ref < b.ref ? -1 : 1),
  );
  return chosen[(chosen.length - 1) >> 1];
}

/** Whether two namings may be one child's: the given names fit, and births known of both are within two years. */
export function sameChild(a: Relative, b: Relative): boolean {
  if (a.sex && b.sex && a.sex !== b.sex) return false;
  const fits = a.names.some((one) =>
    b.names.some((other) => {
      const { level } = agreeGiven(preparedGiven(one.given), preparedGiven(other.given));
      return level === 'exact' || level === 'same' || level === 'variant';
    }),
  );
  if (!fits || !a.birth || !b.birth) return fits;
  return Math.abs(a.birth.first + a.birth.last - b.birth.first - b.birth.last) / 2 <= 731;
}

/** Children told by several records, each once. Those an author has joined to a person stand for the loose mentions. */
export function eachOnce(people: readonly Relative[], loose: readonly Relative[]): Relative[] {
  const all = [...people];
  for (const one of loose) if (!all.some((other) => sameChild(one, other))) all.push(one);
  return all.sort(
    (a, b) => (a.birth?.first ?? Infinity) - (b.birth?.first ?? Infinity) || (a.key < b.key ? -1 : 1),
  );
}

/** The head of a role in small letters: “father” of “Father of bride”. */
export function headOfRole(mention: Mention): string {
  return (mention.role ?? '')
    .toLowerCase()
    .split(/\bof\b|,/)[0]!
    .trim();
}

/** Parents that a record names by their roles alone: its one father and one mother, beside its one child. */
export function parentsByRole(record: SourceRecord, child: Mention): { father?: Mention; mother?: Mention } {
  const only = (words: readonly string[]) => {
    const found = record.mentions.filter((mention) => words.includes(headOfRole(mention)));
    return found.length === 1 ? found[0] : undefined;
  };
  if (only(['child', 'infant', 'baptized', 'baptised', 'deceased', 'confirmand']) !== child) return {};
  const father = only(['father']);
  const mother = only(['mother']);
  return { ...(father ? { father } : {}), ...(mother ? { mother } : {}) };
}

export const noFamily: Family = {
  father: [],
  mother: [],
  siblings: [],
  spouse: [],
  places: [],
  occupation: [],
};
