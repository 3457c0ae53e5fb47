/**
 * How often a name would come back beside a family by accident.
 *
 * The model. Grant that the name was met once. Every further place for a name beside the family (in record *r* there
 * are *n_r*, for the named people who are not kin) is filled, independently, by somebody of that name with probability
 * *s*: the share of the given name times the share of the surname, as common as where the record was made or as in the
 * country the family came from, whichever is more; never less than one in the people of the place, since of so many
 * somebody has to stand there; and never less than the share in which one long list names several people alike. A record
 * holds the name with probability 1 − (1 − s)^n_r. *Expected* is the sum of n_r · s over the family's other independent
 * records, and *chance* the probability that as many of them hold the name as do, or more: the Poisson binomial
 * distribution, or for many records the Poisson distribution (see `chance.ts`). Of the records that do hold the name
 * the one that says least is the one granted.
 *
 * Among hundreds of names some come back by accident. How many is the sum, over all names met, of the probability that
 * two records or more hold a name that one does; it stands beside the number that did. (Summed over the names met, and
 * each met with the probability that one record holds it, that is the number of all names that two hold.)
 */
import type { Facts } from '../../model/facts.ts';
import { anyOf, atLeast, poissonAtLeast } from '../chance.ts';
import { comparisonAt } from '../identity/context.ts';
import { crowdOf, type Crowd } from '../identity/crowd.ts';
import type { Share } from '../identity/compare-rows.ts';
import type { Rarity } from './types.ts';

/** One independent record of the family: where it was made, and how many names beside the family it holds. */
export interface Occasion {
  record: string;
  places: number;
}

export interface NameMet {
  given: string;
  surname: string;
  /** The share in which some list names several people so, not counting the first; 0 where none does. */
  alike: number;
}

type Sourced = Share & { source?: string };

/** How common names are in one place, and of how many people anybody is one. */
interface PlaceShares {
  given(value: string): Sourced;
  surname(value: string): Sourced;
  crowd: Crowd;
}

export interface ChanceModel {
  /** How common a name is where a record was made. */
  rarity(name: NameMet, record: string): Rarity;
  /** The rarity where it is most common, expected number and chance, for a name held by these independent records. */
  of(name: NameMet, held: readonly string[]): { rarity: Rarity; expected: number; chance: number };
  /** The probability that two records hold a name that one holds. */
  again(name: NameMet): number;
}

/** With more records than this the Poisson distribution stands for the exact one. */
const manyRecords = 200;

/** The model for a family's independent records. `country` is where the family came from, if that is known. */
export function chanceModel(facts: Facts, occasions: readonly Occasion[], country?: string): ChanceModel {
  const placed = new Map<string, string>();
  const placeOf = (record: string) => {
    let place = placed.get(record);
    if (place === undefined) placed.set(record, (place = facts.records.get(record)?.place ?? ''));
    return place;
  };
  /** Occasions by place and number of names, since these alone matter: how many there are of each. */
  const alike = new Map<string, { record: string; places: number; times: number }>();
  const totals = new Map<string, { record: string; places: number }>();
  const sizes = new Map<string, number>();
  for (const { record, places } of occasions) {
    const place = placeOf(record);
    sizes.set(record, places);
    const key = `${places} ${place}`;
    const known = alike.get(key);
    if (known) known.times += 1;
    else alike.set(key, { record, places, times: 1 });
    const total = totals.get(place);
    if (total) total.places += places;
    else totals.set(place, { record, places });
  }
  const abroad = country === undefined ? undefined : comparisonAt(facts, '', country);
  const at = new Map<string, PlaceShares>();

  /** The commoner of a name here and in the country the family came from; each name and place is asked once. */
  const sharesIn = (record: string): PlaceShares => {
    const place = placeOf(record);
    let found = at.get(place);
    if (!found) {
      const here = comparisonAt(facts, record);
      const commoner = (part: 'given' | 'surname') => {
        const known = new Map<string, Sourced>();
        return (value: string) => {
          let one = known.get(value);
          if (!one) {
            one = here.shares!(part, value)!;
            const other = abroad?.shares!(part, value);
            if (other && other.share > one.share) one = other;
            known.set(value, one);
          }
          return one;
        };
      };
      found = { given: commoner('given'), surname: commoner('surname'), crowd: crowdOf(facts, record) };
      at.set(place, found);
    }
    return found;
  };
  /** Shares of one name by place: asked for again and again while it is weighed, then for the next. */
  const byPlace = new Map<string, number>();
  let weighed: NameMet | undefined;
  const share = (name: NameMet, record: string): number => {
    if (weighed !== name) {
      byPlace.clear();
      weighed = name;
    }
    const place = placeOf(record);
    let found = byPlace.get(place);
    if (found === undefined) {
      const { given, surname, crowd } = sharesIn(record);
      const both = given(name.given).share * surname(name.surname).share;
      byPlace.set(place, (found = Math.max(both, 1 / crowd.people, name.alike)));
    }
    return found;
  };
  const rarity = (name: NameMet, record: string): Rarity => {
    const { crowd, ...of } = sharesIn(record);
    const given = of.given(name.given);
    const surname = of.surname(name.surname);
    const largest = share(name, record);
    if (largest === given.share * surname.share) {
      const source = [...new Set([surname.source, given.source])].filter(Boolean).join('; ');
      const because = { of: 'names', surname: surname.reason, given: given.reason } as const;
      return { share: largest, because, source };
    }
    return largest === name.alike
      ? {
          share: largest,
          because: { of: 'list' },
          source: 'the record itself',
        }
      : {
          share: largest,
          because: { of: 'crowd', people: crowd.people, reason: crowd.reason },
          source: crowd.source,
        };
  };

  const expectedIn = (name: NameMet, record: string) => (sizes.get(record) ?? 0) * share(name, record);
  const expectedAll = (name: NameMet) =>
    sum([...totals.values()], ({ record, places }) => places * share(name, record));

  return {
    rarity,
    of(name, held) {
      const granted =
        held.length === 1
          ? held[0]!
          : held.reduce((least, one) => (expectedIn(name, one) < expectedIn(name, least) ? one : least));
      const expected = Math.max(0, expectedAll(name) - expectedIn(name, granted));
      const most = held.reduce((a, b) => (share(name, b) > share(name, a) ? b : a));
      return { rarity: rarity(name, most), expected, chance: chanceOf(held.length - 1, name, granted) };
    },
    again(name) {
      const q = (record: string) => Math.log1p(-Math.min(share(name, record), 1 - 1e-9));
      // ∏ (1 − s)^n: no place at all is filled so.
      const none = sum([...totals.values()], ({ record, places }) => places * q(record));
      const some = -Math.expm1(none);
      if (some <= 0) return 0;
      // Exactly one record: the sum of p ÷ (1 − p), times none. Of very many records, exactly one place.
      const odds =
        alike.size > manyRecords
          ? -none
          : sum([...alike.values()], ({ record, places, times }) => times * Math.expm1(-places * q(record)));
      return Math.min(1, Math.max(0, (some - Math.exp(none) * odds) / some));
    },
  };

  function chanceOf(others: number, name: NameMet, granted: string): number {
    if (others <= 0) return 1;
    const left = (key: string, times: number) =>
      key === `${sizes.get(granted)} ${placeOf(granted)}` ? times - 1 : times;
    if (occasions.length > manyRecords) {
      const mean = sum(
        [...alike],
        ([key, { record, places, times }]) => left(key, times) * anyOf(places, share(name, record)),
      );
      return poissonAtLeast(others, mean);
    }
    const chances = [...alike].flatMap(([key, { record, places, times }]) =>
      Array.from({ length: left(key, times) }, () => anyOf(places, share(name, record))),
    );
    return atLeast(others, chances);
  }
}

function sum<T>(list: readonly T[], value: (one: T) => number): number {
  return list.reduce((total, one) => total + value(one), 0);
}
