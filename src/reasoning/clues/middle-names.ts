/**
 * Surnames among given names. Rule (*common practice*): a surname given as a middle name, or as a forename, may be the
 * mother's or a grandmother's maiden name, or a sponsor's: a clue only.
 */
import type { Facts } from '../../model/facts.ts';
import { familyOf, type Family } from '../kinship/family.ts';
import { bloodWord } from '../kinship/words.ts';
import { foldName } from '../names/fold.ts';
import { givenFormsOf, surnameFormsOf } from '../names/lookup.ts';
import { patronymicOf } from '../names/patronymic.ts';
import { preparedSurname } from '../names/prepared.ts';
import { perThousand } from '../names/rarity-words.ts';
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
    const women = womenAbove(familyOf(facts), id).flatMap(({ person, words }) =>
      maidenNames(facts, person).map(({ surname }) => ({ person, words, surname })),
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
  words: string;
  surname: string;
}

/** The mother and the grandmothers, with what each is to the person. */
function womenAbove(family: Family, id: string): { person: string; words: string }[] {
  const found: { person: string; words: string }[] = [];
  let above = [id];
  for (const up of [1, 2]) {
    above = [...new Set(above.flatMap((one) => family.parents(one)))];
    for (const person of above)
      if (family.sex(person) === 'F') found.push({ person, words: bloodWord(up, 0, 'F') });
  }
  return found;
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
  const his = { M: 'his', F: 'her' }[family.sex(id) as string] ?? 'their';
  const where = first ? 'as forename' : 'as middle name';
  const kind = first ? ('forename' as const) : ('middle-name' as const);
  const base = { kind, refs, telling: refs };
  const because =
    'A surname among the given names is often the mother’s or a grandmother’s maiden name, or that of a sponsor or a friend.';
  const owner = women.find(({ surname }) => sameSurname(surname, word));
  if (owner) {
    const shares = distinct(women.map(({ surname }) => surname)).map((one) => common.surname(one).share);
    const expected = Math.min(
      1,
      shares.reduce((sum, share) => sum + share, 0),
    );
    const whose = facts.people.get(owner.person)!.name;
    return {
      ...base,
      says: `${name} has ${word} ${where}, the surname of ${his} ${owner.words}, ${whose}.`,
      because,
      suggests: `It may have been given for her family: then the ${owner.surname} kin stood near, and their records are worth asking.`,
      chance: {
        expected,
        probability: expected,
        because: `A surname taken at random would be that of ${his} mother or a grandmother, as far as these are known, in about ${perThousand(expected)} cases. ${common.surname(word).because}`,
      },
      people: [id, owner.person],
    };
  }
  const sponsor = attendants.find(
    (one) => one.kin.includes(id) && one.surname !== '' && sameSurname(one.surname, word),
  );
  if (sponsor)
    return {
      ...base,
      says: `${name} has ${word} ${where}, and ${sponsor.name} is a ${sponsor.part} in a record that names ${his === 'their' ? 'them' : his === 'her' ? 'her' : 'him'}.`,
      because,
      suggests: `Ask who ${sponsor.name} was: perhaps kin of the mother, for whom the child was named.`,
      refs: [...refs, sponsor.ref],
      telling: refs,
      people: [id],
    };
  const unknown = family.parents(id).filter((one) => family.sex(one) === 'F');
  const noMaiden = unknown.length === 0 || unknown.every((one) => maidenNames(facts, one).length === 0);
  return {
    ...base,
    says: `${name} has ${word} ${where}, and nobody known of the family is called so.`,
    because,
    suggests: noMaiden
      ? `The mother’s maiden name is not known: it may be ${word}. Look for a marriage with a bride of that name.`
      : `It may be the maiden name of a grandmother or great-grandmother not yet found, or come from a sponsor: ask of ${word} families beside this one.`,
    people: [id],
  };
}

const distinct = (surnames: readonly string[]): string[] =>
  surnames.filter((one, at) => surnames.findIndex((other) => sameSurname(one, other)) === at);
