/**
 * What share of the people of a place bears a name, and how far that share may be off.
 *
 * Rule: of c bearers among n counted, the share has a Beta distribution with the prior that `shareOfSurname` draws it
 * toward, and the variance of its logarithm is ψ₁(a) − ψ₁(a + b) (J. M. Bernardo and A. F. M. Smith, Bayesian Theory
 * (1994), from memory). A share from a table of a wider place, from memory or from no table has a factor of its own.
 */
import { factors } from '../../catalogue/families.ts';
import { givenNames } from '../../catalogue/names/given-index.ts';
import type { Facts } from '../../model/facts.ts';
import type { Reason } from '../../model/reason.ts';
import { nameTables } from '../identity/context.ts';
import { foldName } from '../names/fold.ts';
import { patronymicOf } from '../names/patronymic.ts';
import { borrowedPeople, shareOfGiven, shareOfSurname, type NameShare } from '../names/rarity.ts';

export interface TraitShare {
  /** Shares with one key are one unknown: a name that a father and a son bear is not twice uncertain. */
  key: string;
  share: number;
  /** Standard deviation of the natural logarithm of the share. */
  spread: number;
  /** Nothing where it is taken as given. */
  because: readonly Reason[];
}

/** The standard deviation of a logarithm that lies within a factor, either way, nine times in ten. */
export const spreadOf = (factor: number): number => Math.log(factor) / z90;

/** Standard normal quantile of 95 in 100: half of what is outside on either side. */
export const z90 = 1.6449;

/** The share of a given name in a place, by the chain of places outward from it. */
export function givenShare(
  facts: Facts,
  chain: readonly string[],
  name: string,
  sex: 'M' | 'F' | undefined,
): TraitShare {
  const found = shareOfGiven(nameTables(facts), name, chain, sex);
  return {
    key: `given ${sex ?? ''} ${foldName(name)}`,
    share: found.share,
    spread: spread(facts, found, chain, 'given'),
    because: [found.reason],
  };
}

/** The share of a surname in a place; of a patronymic the share of the father's given name. */
export function surnameShare(
  facts: Facts,
  chain: readonly string[],
  name: string,
  patronymic: boolean,
): TraitShare {
  const father = patronymic ? fathersName(name) : undefined;
  if (father !== undefined) return givenShare(facts, chain, father, 'M');
  const found = shareOfSurname(nameTables(facts), name, chain);
  return {
    key: `surname ${foldName(name)}`,
    share: found.share,
    spread: spread(facts, found, chain, 'surname'),
    because: [found.reason],
  };
}

/** The given name of the father that a patronymic tells, in its usual form; nothing where it tells none. */
export function fathersName(surname: string): string | undefined {
  const fathers = patronymicOf(foldName(surname).split(' ')[0] ?? '')?.fathers ?? [];
  return fathers.map(({ group }) => givenNames[group]!).find(({ sex }) => sex !== 'F')?.name;
}

function spread(facts: Facts, found: NameShare, chain: readonly string[], part: 'given' | 'surname'): number {
  const { share, count, total, place, source } = found;
  const memory = source.includes('from memory');
  if (count === undefined || total === undefined) return spreadOf(factors.unlisted);
  const people = total + borrowedPeople;
  const sampling = memory ? 0 : trigamma(share * people) - trigamma(people);
  const near = place !== undefined && chain.includes(place) && facts.places.get(place)?.kind !== 'country';
  const afar = part === 'given' ? factors.givenFromAfar : factors.surnameFromAfar;
  return Math.sqrt(
    sampling + (memory ? spreadOf(factors.shareFromMemory) ** 2 : 0) + (near ? 0 : spreadOf(afar) ** 2),
  );
}

/** ψ₁, the derivative of the digamma function, for x > 0: by recurrence up to 6, then its asymptotic series. */
export function trigamma(x: number): number {
  let sum = 0;
  let at = x;
  for (; at < 6; at++) sum += 1 / (at * at);
  const s = 1 / (at * at);
  return sum + 1 / at + s / 2 + (s / at) * (1 / 6 - s * (1 / 30 - s * (1 / 42 - s / 30)));
}
