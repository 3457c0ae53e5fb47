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
import type { Facts } from '../../model/facts.ts';
import { familyOf, type Family } from '../kinship/family.ts';
import { bloodWord } from '../kinship/words.ts';
import { expectedWords, oddsWords } from './chance-words.ts';
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
      const { share, because } = common.given(given, sex);
      const chances = named.map((set) => anyOf(set.length, share));
      const forebear = forebears.find((one) => one.given === given);
      const looks = forebear ? Math.max(1, new Set(forebears.map((one) => one.given)).size) : families.size;
      const probability = anyOf(looks, atLeast(times, chances));
      const expected = chances.reduce((sum, chance) => sum + chance, 0);
      return clueOf(facts, {
        elder,
        sex,
        given,
        times,
        of: named.length,
        children: named.reduce((sum, set) => sum + set.length, 0),
        bearers: bearers.get(given)!,
        forebear: forebear?.id,
        chance: {
          expected,
          probability,
          because:
            `${capital(because)} Of ${named.length} families with ${named.reduce((sum, set) => sum + set.length, 0)} ${sex === 'M' ? 'sons' : 'daughters'}, ` +
            `${expectedWords(expected)} would have the name by accident, and as many as ${times} would ${oddsWords(probability)}` +
            (looks > 1 ? `, ${looks} names having been looked at.` : '.'),
        },
      });
    });
}

const article = (name: string): string => (/^[aeiou]/i.test(name) ? 'an' : 'a');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

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
  of: number;
  children: number;
  bearers: readonly string[];
  forebear: string | undefined;
  chance: { expected: number; probability: number; because: string };
}

function clueOf(facts: Facts, { elder, sex, given, times, of, bearers, forebear, chance }: Repeated): Found {
  const name = (id: string) => facts.people.get(id)!.name;
  const who = sex === 'M' ? 'grandsons' : 'granddaughters';
  const refs = bearers.flatMap((id) => facts.people.get(id)!.mentions.slice(0, 1));
  const called =
    forebear === undefined
      ? ', and no forebear known is called so'
      : forebear === elder
        ? `, ${sex === 'M' ? 'his' : 'her'} own name`
        : `, the name of ${name(forebear)}`;
  const form = givenShown(facts, forebear === undefined ? bearers : [forebear]) || given;
  return {
    kind: 'repeated-name',
    says: `${times < of ? `${times} of the ${of}` : of === 2 ? 'Both' : `All ${of}`} families of ${name(elder)}’s ${who} have ${article(form)} ${form}${called}.`,
    because: 'Grandchildren were often named for their forebears.',
    suggests:
      forebear === undefined
        ? `A ${bloodWord(1, 0, sex)} or ${bloodWord(2, 0, sex)} of ${name(elder)} may have been called ${form}: look for the name in the register of the place.`
        : `Of families over there, one that has ${article(form)} ${form} among its elders fits better than one that has none.`,
    chance,
    refs,
    telling: [],
    people: [...bearers.slice(0, 12), ...(forebear === undefined ? [] : [forebear])],
  };
}
