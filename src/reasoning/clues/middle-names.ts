/**
 * Surnames among given names. Rule (*common practice*): a surname given as a middle name, or as a forename, may be the
 * mother's or a grandmother's maiden name, or a sponsor's: a clue only.
 */
import type { Facts } from '../../model/facts.ts';
import type { KinSex } from '../../model/kin-term.ts';
import { familyOf, type Family } from '../kinship/family.ts';
import { foldName } from '../names/fold.ts';
import { givenFormsOf, surnameFormsOf } from '../names/lookup.ts';
import { patronymicOf } from '../names/patronymic.ts';
import { preparedSurname } from '../names/prepared.ts';
import { maidenNames, namingsIn, sameSurname, surnameOf, type Commonness } from './names.ts';
import type { Found } from './types.ts';
import type { Attendant } from './witnesses.ts';

interface Carried {
  word: string;
  /** Stands where the first given name stands. */
  first: boolean;
  refs: string[];
}

/** Clues in the given names of people of a family. `attendants` are the witnesses and sponsors beside them. */
export function surnamesCarried(
  facts: Facts,
  kin: readonly string[],
  common: Commonness,
  attendants: readonly Attendant[],
): Found[] {
  return kin.flatMap((id) => {
    const women = womenAbove(familyOf(facts), id).flatMap(({ person, way }) =>
      maidenNames(facts, person).map(({ surname }) => ({ person, way, surname })),
    );
    return carriedBy(
      facts,
      id,
      women.map(({ surname }) => surname),
    ).map((carried) => clueOf(facts, id, carried, women, common, attendants));
  });
}

interface Woman {
  person: string;
  way: readonly KinSex[];
  surname: string;
}

/** The mother and the grandmothers, each with the sexes of those on the way up to her. */
function womenAbove(family: Family, id: string): { person: string; way: KinSex[] }[] {
  const ways = new Map<string, KinSex[]>();
  let above = [id];
  for (let up = 1; up <= 2; up++) {
    const next = new Set<string>();
    for (const below of above)
      for (const person of family.parents(below)) {
        next.add(person);
        if (!ways.has(person)) ways.set(person, [...(ways.get(below) ?? []), family.sex(person)]);
      }
    above = [...next];
  }
  return [...ways].flatMap(([person, way]) => (way.at(-1) === 'F' ? [{ person, way }] : []));
}

/** The surnames among a person's given names, each with the mentions that have it. */
function carriedBy(facts: Facts, id: string, women: readonly string[]): Carried[] {
  const family = familyOf(facts);
  const own = [id, ...family.parents(id).filter((one) => family.sex(one) === 'M'), ...family.spouses(id)]
    .map((one) => surnameOf(facts, one))
    .filter((surname) => surname !== '');
  const found: Carried[] = [];
  for (const { ref, parts } of namingsIn(facts, id)) {
    if (parts.husbands || parts.surname === '' || parts.patronymic) continue;
    // What is read as a second surname may be a middle name; of a married woman it is the name she was born with.
    const behind = family.spouses(id).length === 0 && parts.title === '' ? parts.otherSurnames : [];
    const words = [
      ...parts.given.split(/\s+/u).map((word, i) => ({ word, first: i === 0 })),
      ...behind.map((word) => ({ word, first: false })),
    ];
    for (const { word, first } of words) {
      if (!isSurname(word, women) || own.some((surname) => sameSurname(surname, word))) continue;
      const known = found.find((one) => sameSurname(one.word, word));
      const refs = ref === undefined ? [] : [ref];
      if (known) known.refs.push(...refs);
      else found.push({ word, first, refs });
    }
  }
  return found;
}

/** A word that the catalogue knows as a surname and not as a given name, or that is the surname of a mother or grandmother. */
function isSurname(word: string, women: readonly string[]): boolean {
  const folded = foldName(word);
  if (folded.length < 3 || patronymicOf(folded) !== undefined) return false;
  const known = givenFormsOf(folded).length > 0;
  if (women.some((surname) => sameSurname(surname, word))) return true;
  const { text, stem } = preparedSurname(word);
  return !known && surnameFormsOf(text, stem).length > 0;
}

function clueOf(
  facts: Facts,
  id: string,
  { word, first, refs }: Carried,
  women: readonly Woman[],
  common: Commonness,
  attendants: readonly Attendant[],
): Found {
  const family = familyOf(facts);
  const name = facts.people.get(id)!.name;
  const bearer = { bearer: name, sex: family.sex(id), word, first };
  const base = { kind: first ? ('forename' as const) : ('middle-name' as const), refs, telling: refs };
  const owner = women.find(({ surname }) => sameSurname(surname, word));
  if (owner) {
    const shares = distinct(women.map(({ surname }) => surname)).map((one) => common.surname(one).share);
    const expected = Math.min(
      1,
      shares.reduce((sum, share) => sum + share, 0),
    );
    const chance = { expected, probability: expected };
    return {
      ...base,
      said: {
        key: 'surname-of-a-forebear',
        ...bearer,
        owner: facts.people.get(owner.person)!.name,
        surname: owner.surname,
        way: owner.way,
        rarity: common.surname(word).reason,
        ...chance,
      },
      chance,
      people: [id, owner.person],
    };
  }
  const sponsor = attendants.find(
    (one) => one.kin.includes(id) && one.surname !== '' && sameSurname(one.surname, word),
  );
  if (sponsor)
    return {
      ...base,
      said: { key: 'surname-of-an-attendant', ...bearer, attendant: sponsor.name, part: sponsor.part },
      refs: [...refs, sponsor.ref],
      people: [id],
    };
  const mothers = family.parents(id).filter((one) => family.sex(one) === 'F');
  const maidenNameKnown = mothers.some((one) => maidenNames(facts, one).length > 0);
  return { ...base, said: { key: 'surname-of-nobody', ...bearer, maidenNameKnown }, people: [id] };
}

const distinct = (surnames: readonly string[]): string[] =>
  surnames.filter((one, at) => surnames.findIndex((other) => sameSurname(one, other)) === at);
