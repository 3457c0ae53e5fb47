/**
 * How many families of a place agree as well by accident.
 *
 * Rule (standard algebra): of N families, each with independent traits of shares p₁, p₂ …, N · p₁ · p₂ … are expected to
 * have them all, and at least one does with the chance 1 − (1 − p)^N. The surname of a family is counted once, since
 * the children share it. A child of a name and age is found in a family of n children with the chance 1 − (1 − p)^n;
 * of k children out of those known, at least k are, each with its own chance (Poisson binomial).
 *
 * Its uncertainty: every factor is off by a factor of its own, independent of the others, so that the logarithm of the
 * number is about normal, its variance the sum of (∂ ln E / ∂ ln x)² · var(ln x) (the delta method); the interval holds
 * it nine times in ten.
 */
import { childrenOfAMarriage, factors, householdSizes } from '../../catalogue/families.ts';
import { populations } from '../../catalogue/populations.ts';
import type { Facts } from '../../model/facts.ts';
import type { Reason } from '../../model/reason.ts';
import type { TraitSaid } from '../../model/trait.ts';
import { anyOf, atLeast } from '../chance.ts';
import { containmentOf } from '../containment.ts';
import { crowdIn } from '../identity/crowd.ts';
import { anyByChance, expectedByChance } from '../identity/weight.ts';
import { spreadOf, z90, type TraitShare } from './shares.ts';
import type { ByChance, Estimate } from './types.ts';

/** One agreement: what of families have it, as a function of the shares of names it rests on. */
export interface Trait {
  what: TraitSaid;
  because: readonly Reason[];
  names: readonly TraitShare[];
  /** The share of families, given the shares of `names` in their order. */
  of: (shares: readonly number[]) => number;
}

/** A trait whose share is that of one name. */
export function nameTrait(what: TraitSaid, name: TraitShare): Trait {
  return { what, because: name.because, names: [name], of: ([share = 0]) => share };
}

/** A child of a name, and of an age where `years` are told: born within so many years of the one sought. */
export interface ChildSought {
  name: TraitShare;
  sex: 'M' | 'F' | undefined;
  /** How many years the birth may fall in; absent where no age is known. */
  years?: number;
  /** What more is known of the child, such as the day of birth. */
  also?: number;
}

/** The chance that a family taken at hand has such a child. */
export function childByChance({ sex, years, also = 1 }: ChildSought, share: number): number {
  const { children, years: span } = childrenOfAMarriage;
  const ages = years === undefined ? 1 : Math.min(1, years / span);
  return anyOf(sex ? children / 2 : children, Math.min(1, share * ages * also));
}

/** At least `k` of these children. */
export function childrenTrait(what: TraitSaid, sought: readonly ChildSought[], k: number): Trait {
  return {
    what,
    because: sought.flatMap(({ name }) => name.because),
    names: sought.map(({ name }) => name),
    of: (shares) =>
      atLeast(
        k,
        sought.map((one, i) => childByChance(one, shares[i]!)),
      ),
  };
}

/** The families of a place. */
export interface Households {
  value: number;
  /** Standard deviation of the natural logarithm. */
  spread: number;
  because: Reason;
}

/** How many households a place has: the author's own count of them, else its people by the usual number of people. */
export function householdsOf(facts: Facts, place: string): Households {
  const country = containmentOf(facts).countries(place)[0];
  const usual = householdSizes.find((one) => one.country === undefined || one.country === country)!;
  const { people, reason: crowd, source } = crowdIn(facts, place);
  const counted = facts.nameCounts.some((row) => row.source === source && row.total === people);
  if (counted && /househ|occupier|ratepayer|famil/i.test(source))
    return {
      value: people,
      spread: spreadOf(factors.householdsCounted),
      because: { key: 'households-counted', crowd, source },
    };
  return {
    value: Math.max(1, people / usual.people),
    spread: spreadOf(counted ? factors.householdsCounted : factors.householdsUsual),
    because: { key: 'households-reckoned', crowd, each: usual.people, source },
  };
}

/** Smaller than this, a place is no community whose families one would search. */
const leastPeople = 400;

/**
 * The place whose families a candidate is one of: the parish of its records, or, where the new country's records agree
 * with it only in something wider (`claim`), that.
 */
export function communityOf(facts: Facts, place: string, claim: string | undefined): string {
  const { outward, above } = containmentOf(facts);
  const chain = outward(place);
  const parish = chain.find((id) => crowdIn(facts, id).people >= leastPeople) ?? place;
  if (claim === undefined || !above(parish).has(claim)) return parish;
  const sized = new Set(populations.map(({ kind }) => kind));
  const inside = outward(parish).filter(
    (id) => (id === claim || above(id).has(claim)) && sized.has(facts.places.get(id)?.kind ?? ''),
  );
  return inside.reduce(
    (largest, id) => (crowdIn(facts, id).people > crowdIn(facts, largest).people ? id : largest),
    parish,
  );
}

/** The number of families expected to have all the traits, with its interval. */
export function familiesByChance(
  facts: Facts,
  place: string,
  households: Households,
  traits: readonly Trait[],
): ByChance {
  const all = new Map<string, TraitShare>();
  for (const { names } of traits) for (const name of names) if (!all.has(name.key)) all.set(name.key, name);
  const shareIn = (trait: Trait, key?: string, factor = 1) =>
    trait.of(trait.names.map((name) => Math.min(1, name.share * (name.key === key ? factor : 1))));
  const shares = traits.map((trait) => shareIn(trait));
  let variance = households.spread ** 2;
  const step = 1e-4;
  for (const { key, spread } of all.values()) {
    const slope = traits.reduce((sum, trait) => {
      if (!trait.names.some((name) => name.key === key)) return sum;
      const low = shareIn(trait, key, Math.exp(-step));
      const high = shareIn(trait, key, Math.exp(step));
      return low > 0 ? sum + (Math.log(high) - Math.log(low)) / (2 * step) : sum;
    }, 0);
    variance += (slope * spread) ** 2;
  }
  return {
    place,
    placeName: facts.places.get(place)?.name ?? place,
    placeKind: facts.places.get(place)?.kind ?? '',
    households: around(households.value, households.spread),
    householdsBecause: households.because,
    expected: around(expectedByChance(households.value, shares), Math.sqrt(variance)),
    any: anyByChance(households.value, shares),
    parts: traits.map(({ what, because }, i) => ({ what, share: shares[i]!, because })),
  };
}

/** A number whose logarithm has a spread, with the interval it lies in nine times in ten. */
export function around(value: number, spread: number): Estimate {
  const factor = Math.exp(z90 * spread);
  return { value, low: value / factor, high: value * factor };
}
