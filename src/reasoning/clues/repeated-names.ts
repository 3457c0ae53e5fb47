/**
 * Given names that come back among grandchildren.
 *
 * Rule (*common practice*): grandchildren were named for forebears, so that a name which returns in several of the
 * families may be a forebear's. Since brothers and sisters seldom bear one name, each family of cousins is one trial: it
 * has the name with the chance 1 − (1 − share)^children; the number of families that have it by accident is then
 * Poisson-binomial (`atLeast`). A name nobody looked for beforehand had as many chances as there are names to look at.
 */
import { anyOf, atLeast } from '../chance.ts';
import { gather } from '../../model/multimap.ts';
import type { ClueChance } from '../../model/clue-said.ts';
import type { Facts } from '../../model/facts.ts';
import type { Reason } from '../../model/reason.ts';
import { familyOf, type Family } from '../kinship/family.ts';
import { givenOf, givenShown, type Commonness } from './names.ts';
import type { Found } from './types.ts';

type Sex = 'M' | 'F';

/** Clues from the grandchildren of the people given: a subject's parents, the subject, the spouse's parents. */
export function repeatedNames(facts: Facts, elders: readonly string[], common: Commonness): Found[] {
  const seen = new Set<string>();
  return elders.flatMap((elder) => {
    const sets = grandchildrenOf(familyOf(facts), elder);
    // A couple has the same grandchildren: they are asked about once.
    const key = sets.flat().sort().join(' ');
    if (seen.has(key)) return [];
    seen.add(key);
    return (['M', 'F'] as const).flatMap((sex) => repeatedIn(facts, elder, sets, sex, common));
  });
}

/** Grandchildren by the child of the elder they descend from. */
function grandchildrenOf(family: Family, elder: string): string[][] {
  const counted = new Set<string>();
  const sets: string[][] = [];
  for (const child of family.children(elder)) {
    const own = family.children(child).filter((one) => !counted.has(one));
    for (const one of own) counted.add(one);
    if (own.length > 0) sets.push([...own]);
  }
  return sets;
}

function repeatedIn(
  facts: Facts,
  elder: string,
  sets: readonly string[][],
  sex: Sex,
  common: Commonness,
): Found[] {
  const family = familyOf(facts);
  const named = sets
    .map((set) =>
      set
        .filter((id) => family.sex(id) === sex)
        .map((id) => ({ id, given: givenOf(facts, id) }))
        .filter(({ given }) => given !== ''),
    )
    .filter((set) => set.length > 0);
  const bearers = new Map<string, string[]>();
  const families = new Map<string, number>();
  for (const set of named)
    for (const given of new Set(set.map((one) => one.given))) {
      families.set(given, (families.get(given) ?? 0) + 1);
      for (const one of set) if (one.given === given) gather(bearers, given, one.id);
    }
  const forebears = forebearsOf(facts, elder, sex);
  return [...families]
    .filter(([, times]) => times > 1)
    .map(([given, times]) => {
      const { share, reason } = common.given(given, sex);
      const chances = named.map((set) => anyOf(set.length, share));
      const forebear = forebears.find((one) => one.given === given);
      const looks = forebear ? Math.max(1, new Set(forebears.map((one) => one.given)).size) : families.size;
      return clueOf(facts, {
        elder,
        sex,
        given,
        times,
        families: named.length,
        children: named.reduce((sum, set) => sum + set.length, 0),
        bearers: bearers.get(given)!,
        forebear: forebear?.id,
        looks,
        rarity: reason,
        chance: {
          expected: chances.reduce((sum, chance) => sum + chance, 0),
          probability: anyOf(looks, atLeast(times, chances)),
        },
      });
    });
}

/** The elder, their spouses and the forebears known above them, of one sex, with their given names. */
function forebearsOf(facts: Facts, elder: string, sex: Sex): { id: string; given: string }[] {
  const family = familyOf(facts);
  const found = new Set<string>();
  let above = [elder, ...family.spouses(elder)];
  for (let up = 0; up < 3; up++) {
    for (const id of above) found.add(id);
    above = above.flatMap((id) => family.parents(id)).filter((id) => !found.has(id));
  }
  return [...found]
    .filter((id) => family.sex(id) === sex)
    .map((id) => ({ id, given: givenOf(facts, id) }))
    .filter(({ given }) => given !== '');
}

interface Repeated {
  elder: string;
  sex: Sex;
  given: string;
  times: number;
  families: number;
  children: number;
  bearers: readonly string[];
  forebear: string | undefined;
  looks: number;
  rarity: Reason;
  chance: ClueChance;
}

function clueOf(facts: Facts, { elder, given, bearers, forebear, chance, ...values }: Repeated): Found {
  const name = (id: string) => facts.people.get(id)!.name;
  const forms = givenShown(facts, forebear === undefined ? bearers : [forebear]);
  return {
    kind: 'repeated-name',
    said: {
      key: 'name-repeated',
      elder: name(elder),
      forms: forms.length > 0 ? forms : [given],
      whose:
        forebear === undefined
          ? { is: 'nobody' }
          : forebear === elder
            ? { is: 'own' }
            : { is: 'forebear', name: name(forebear) },
      ...values,
      ...chance,
    },
    chance,
    refs: bearers.flatMap((id) => facts.people.get(id)!.mentions.slice(0, 1)),
    telling: [],
    people: [...bearers.slice(0, 12), ...(forebear === undefined ? [] : [forebear])],
  };
}
