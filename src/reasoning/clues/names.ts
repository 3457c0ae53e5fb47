/** The names of a family, as their entries and their records have them. */
import { mentionAt, type Facts } from '../../model/facts.ts';
import type { Person } from '../../model/person.ts';
import { containmentOf } from '../containment.ts';
import { nameTables } from '../identity/context.ts';
import { ditto } from '../identity/mention-row.ts';
import { familyOf } from '../kinship/family.ts';
import { countriesOfOrigin } from '../kinship/origins.ts';
import { agreeSurname } from '../names/agree.ts';
import { foldName } from '../names/fold.ts';
import { givenFormsOf, givenNameOf } from '../names/lookup.ts';
import { parseName } from '../names/parse-name.ts';
import { patronymicOf } from '../names/patronymic.ts';
import { preparedSurname } from '../names/prepared.ts';
import { soundexCodes } from '../names/soundex.ts';
import { shareOfGiven, shareOfSurname, type NameShare } from '../names/rarity.ts';
import type { NameParts } from '../names/types.ts';
import { once } from '../once.ts';

/** One way a person is named, with the mention that names them so; without one where it is their entry. */
export interface Naming {
  ref: string | undefined;
  parts: NameParts;
}

const namingsOf = once((_facts: Facts) => new Map<string, readonly Naming[]>());

/** The names of a person: that of their entry first, then as each record writes it. A placeholder's entry is no name. */
export function namingsIn(facts: Facts, id: string): readonly Naming[] {
  const known = namingsOf(facts);
  let found = known.get(id);
  if (!found) {
    const person = facts.people.get(id);
    const own: Naming[] =
      person && !person.placeholder ? [{ ref: undefined, parts: parseName(person.name) }] : [];
    for (const ref of person?.mentions ?? []) {
      const mention = mentionAt(facts, ref)?.mention;
      for (const name of mention?.name === undefined ? [] : [mention.name, ...mention.alsoRead])
        own.push({ ref, parts: parseName(name) });
    }
    known.set(id, (found = own));
  }
  return found;
}

/** Whether two surnames are one name, spelled as it may be. */
export function sameSurname(a: string, b: string): boolean {
  const { level } = agreeSurname(preparedSurname(a), preparedSurname(b));
  return level === 'exact' || level === 'same';
}

/** Whether two may be one name as different clerks wrote it. */
export function mayBeOneSurname(a: string, b: string): boolean {
  if (!['different', 'initial'].includes(agreeSurname(preparedSurname(a), preparedSurname(b)).level))
    return true;
  const codes = soundexCodes(a);
  return soundexCodes(b).some((code) => codes.includes(code));
}

/** The first given name of a naming under the name the catalogue files it by; empty where none is written out. */
export function firstGiven(given: string): string {
  const first = foldName(given).split(' ')[0] ?? '';
  if (first.length < 2) return '';
  const forms = givenFormsOf(first);
  // “Britha” is Brita spelt otherwise before it is a translation of Bridget.
  const plain =
    forms.find(({ kind }) => kind === 'name') ??
    forms.find(({ kind }) => kind === 'spelling') ??
    forms.find(({ kind }) => kind !== 'interchangeable');
  return plain ? foldName(givenNameOf(plain.group)) : first;
}

/** The given name a person goes by, filed as `firstGiven` does: that of their entry, else of their first record. */
export function givenOf(facts: Facts, id: string): string {
  for (const { parts } of namingsIn(facts, id))
    if (!parts.husbands && parts.given !== '') {
      const given = firstGiven(parts.given);
      if (given !== '') return given;
    }
  return '';
}

/** The given names of people as their entries or records write them, each once, the first three. */
export function givenShown(facts: Facts, ids: readonly string[]): string[] {
  const written = ids.flatMap((id) => {
    const naming = namingsIn(facts, id).find(
      ({ parts }) => !parts.husbands && firstGiven(parts.given) !== '',
    );
    return naming ? [naming.parts.given.split(/\s+/u)[0]!] : [];
  });
  return [...new Set(written)].slice(0, 3);
}

const isFamilyName = (word: string): boolean =>
  word !== '' && !ditto.test(word) && patronymicOf(foldName(word)) === undefined;

/** The surname of a person's entry, where it is one that is handed on: no patronymic, and somebody's own. */
export function surnameOf(facts: Facts, id: string): string {
  const person = facts.people.get(id);
  if (!person || person.placeholder) return placeholderSurname(person);
  const { surname, patronymic, farm } = parseName(person.name);
  if (patronymic || !isFamilyName(surname)) return farm;
  return surname;
}

/** “— Phelan”: of a placeholder the surname may be all that is known. */
function placeholderSurname(person: Person | undefined): string {
  const match = /^[—–-]+\s+([\p{L}’' -]{1,60})$/u.exec(person?.name ?? '');
  return match ? match[1]!.trim() : '';
}

/**
 * The surnames a woman may have been born with: that of her entry and those that records give her, but for the
 * surnames of her husbands and children. Each with the mentions that give it.
 */
export function maidenNames(facts: Facts, id: string): readonly MaidenName[] {
  const known = maidens(facts);
  let found = known.get(id);
  if (!found) known.set(id, (found = maidenNamesOf(facts, id)));
  return found;
}

export interface MaidenName {
  surname: string;
  refs: string[];
}

const maidens = once((_facts: Facts) => new Map<string, readonly MaidenName[]>());

function maidenNamesOf(facts: Facts, id: string): MaidenName[] {
  const entry = facts.people.get(id);
  // Behind a patronymic stands the farm, which is an address and not a family's name.
  if (entry && !entry.placeholder && parseName(entry.name).patronymic) return [];
  const family = familyOf(facts);
  const married = [...family.spouses(id), ...family.children(id)]
    .map((other) => surnameOf(facts, other))
    .filter((surname) => surname !== '');
  const fathers = family
    .parents(id)
    .map((parent) => surnameOf(facts, parent))
    .filter((surname) => surname !== '');
  const found: MaidenName[] = [];
  for (const { ref, parts } of namingsIn(facts, id)) {
    if (parts.patronymic) continue;
    for (const surname of [parts.surname, ...parts.otherSurnames]) {
      if (!isFamilyName(surname)) continue;
      const marriedName = married.some((other) => mayBeOneSurname(other, surname));
      // A woman may marry a man of her own name: then her father’s says so.
      if (marriedName && !fathers.some((other) => sameSurname(other, surname))) continue;
      const known = found.find((one) => sameSurname(one.surname, surname));
      if (known) known.refs.push(...(ref === undefined ? [] : [ref]));
      else found.push({ surname, refs: ref === undefined ? [] : [ref] });
    }
  }
  return found;
}

/** How common names are where a family is from. */
export interface Commonness {
  surname(name: string): NameShare;
  given(name: string, sex: 'M' | 'F' | undefined): NameShare;
  /** The place of origin, where the case names one. */
  place: string | undefined;
  /** Countries of origin, by id. */
  countries: ReadonlySet<string>;
}

/** Frequencies for a subject: at the place given, or where the subject's records say they were from. */
export function commonnessFor(facts: Facts, subject: string, place?: string): Commonness {
  const containment = containmentOf(facts);
  const countries =
    place === undefined ? countriesOfOrigin(facts, subject) : new Set(containment.countries(place));
  const chain = place === undefined ? [...countries] : containment.outward(place);
  const tables = nameTables(facts);
  return {
    surname: (name) => shareOfSurname(tables, name, chain),
    given: (name, sex) => shareOfGiven(tables, name, chain, sex),
    place,
    countries,
  };
}
