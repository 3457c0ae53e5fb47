/**
 * The custom of naming the eldest children for their grandparents. Rule (*common practice*): in Ireland, Scotland and
 * Norway the first son after the father's father, the second after the mother's father; in Ireland and Scotland the
 * first daughter after the mother's mother, the second after the father's mother. Many families kept to it and many did not: where a
 * grandparent is not known by name, it suggests one to look for.
 */
import { atLeast } from '../chance.ts';
import type { Facts } from '../../model/facts.ts';
import { birthSpan } from '../ages.ts';
import { familyOf } from '../kinship/family.ts';
import { patronymicOf } from '../names/patronymic.ts';
import { foldName } from '../names/fold.ts';
import { givenOf, givenShown, namingsIn, type Commonness } from './names.ts';
import type { Found } from './types.ts';

/** Countries where the custom is known, by id. Of daughters the order differed in Norway from place to place. */
const ofSonsAndDaughters = ['ireland', 'scotland'];
const ofSons = ['norway'];

interface Place {
  /** Which of the sons or daughters, from 0. */
  at: 0 | 1;
  sex: 'M' | 'F';
  /** Which of the couple's parents. */
  of: 'M' | 'F';
}

const custom: readonly Place[] = [
  { at: 0, sex: 'M', of: 'M' },
  { at: 1, sex: 'M', of: 'F' },
  { at: 0, sex: 'F', of: 'F' },
  { at: 1, sex: 'F', of: 'M' },
];

/** Clues to grandparents whose names are not known, from the eldest children of couples of the family. */
export function namingCustom(
  facts: Facts,
  couples: readonly (readonly [string, string])[],
  common: Commonness,
): Found[] {
  const kept = (countries: readonly string[]) => countries.some((country) => common.countries.has(country));
  const order = kept(ofSonsAndDaughters)
    ? custom
    : kept(ofSons)
      ? custom.filter(({ sex }) => sex === 'M')
      : [];
  return couples.flatMap(([father, mother]) => ofCouple(facts, father, mother, order, common));
}

function ofCouple(
  facts: Facts,
  father: string,
  mother: string,
  order: readonly Place[],
  common: Commonness,
): Found[] {
  const family = familyOf(facts);
  const children = family.children(father).filter((id) => family.parents(id).includes(mother));
  const kept: { agrees: boolean; share: number }[] = [];
  const open: { place: Place; child: string; parent: string }[] = [];
  for (const place of order) {
    const child = eldest(facts, children, place);
    const given = child === undefined ? '' : givenOf(facts, child);
    if (child === undefined || given === '') continue;
    const parent = place.of === 'M' ? father : mother;
    const grandparent = family.parents(parent).find((id) => family.sex(id) === place.sex);
    const theirs = grandparent === undefined ? '' : givenOf(facts, grandparent);
    if (theirs !== '') kept.push({ agrees: theirs === given, share: common.given(theirs, place.sex).share });
    else if (!(place.sex === 'M' && fatherSaid(facts, parent))) open.push({ place, child, parent });
  }
  if (open.length === 0) return [];
  const agreeing = kept.filter(({ agrees }) => agrees).length;
  const name = (id: string) => facts.people.get(id)!.name;
  const names = open.map(({ place, child, parent }) => ({
    forms: givenShown(facts, [child]),
    sex: place.sex,
    of: name(parent),
  }));
  const expected = kept.reduce((sum, { share }) => sum + share, 0);
  const refs = open.flatMap(({ child }) => facts.people.get(child)!.mentions.slice(0, 1));
  return [
    {
      kind: 'naming-custom',
      said: {
        key: 'named-by-custom',
        father: name(father),
        mother: name(mother),
        names,
        order: order.length > 2 ? 'sons-and-daughters' : 'sons',
        compared: kept.length,
        agreeing,
        expected,
      },
      ...(kept.length === 0
        ? {}
        : {
            chance: {
              expected,
              probability: atLeast(
                agreeing,
                kept.map(({ share }) => share),
              ),
            },
          }),
      refs,
      telling: [],
      people: [father, mother, ...open.map(({ child }) => child)],
    },
  ];
}

/** The first or second son or daughter. None where somebody’s birth is not known well enough to say. */
function eldest(facts: Facts, children: readonly string[], { at, sex }: Place): string | undefined {
  const family = familyOf(facts);
  const dated = children
    .filter((id) => family.sex(id) === sex)
    .map((id) => ({ id, ...birthSpan(facts, id) }));
  if (dated.some(({ first, last }) => first === null || last === null)) return undefined;
  dated.sort((a, b) => a.first! - b.first! || a.last! - b.last!);
  const one = dated[at];
  const next = dated[at + 1];
  // Two whose births overlap may have come in the other order.
  if (!one || (next && next.first! <= one.last!)) return undefined;
  const before = dated[at - 1];
  return before && one.first! <= before.last! ? undefined : one.id;
}

/** A patronymic says the father's name outright. */
function fatherSaid(facts: Facts, id: string): boolean {
  return namingsIn(facts, id).some(
    ({ parts }) => parts.patronymic && patronymicOf(foldName(parts.surname)) !== undefined,
  );
}
