/**
 * Out of how many people a record's person could be another of the name: the size of the candidate set, from which the
 * prior of a comparison follows (I. P. Fellegi and A. B. Sunter, JASA 64 (1969); one true match among N candidates).
 */
import { populations, populationUnknown } from '../../catalogue/populations.ts';
import type { Facts } from '../../model/facts.ts';
import type { Reason } from '../../model/reason.ts';
import { containmentOf } from '../containment.ts';
import { once } from '../once.ts';
import { priorBits } from './weight.ts';

export interface Crowd {
  /** At least 2. */
  people: number;
  /** Why so many, for the ledger. */
  reason: Reason;
  source: string;
}

/**
 * The crowd of a record: the author's own count of the smallest place above it that has one, else the usual size of the
 * smallest place whose kind is known.
 */
export function crowdOf(facts: Facts, record: string): Crowd {
  const place = facts.records.get(record)?.place;
  return place === undefined
    ? unknown({ key: 'no-place-said', people: populationUnknown })
    : crowdIn(facts, place);
}

/** The crowd of a place, by the same rule. */
export function crowdIn(facts: Facts, place: string): Crowd {
  let crowd = crowds(facts).get(place);
  if (!crowd) crowds(facts).set(place, (crowd = crowdAt(facts, place)));
  return crowd;
}

/** log₂ odds that one of the crowd, taken at hand, is the person meant: −log₂(N − 1). */
export function priorOf(crowd: Crowd): number {
  return priorBits(1, crowd.people);
}

const crowds = once((_facts: Facts) => new Map<string, Crowd>());

const counted = once((facts: Facts) => {
  const totals = new Map<string, { total: number; source: string }>();
  for (const { place, total, source } of facts.nameCounts)
    if (place !== undefined && total !== undefined && total > (totals.get(place)?.total ?? 0))
      totals.set(place, { total, source });
  return totals;
});

function crowdAt(facts: Facts, place: string): Crowd {
  const containment = containmentOf(facts);
  const country = containment.countries(place)[0];
  for (const id of containment.outward(place)) {
    const name = facts.places.get(id)?.name ?? id;
    const own = counted(facts).get(id);
    if (own)
      return {
        people: Math.max(2, own.total),
        reason: { key: 'people-counted', people: own.total, place: name },
        source: own.source,
      };
    const kind = facts.places.get(id)?.kind;
    const row = populations.find(
      (one) => one.kind === kind && (one.country === undefined || one.country === country),
    );
    if (row)
      return {
        people: row.people,
        reason: { key: 'people-usual', people: row.people, kind: row.kind, place: name },
        source: row.source,
      };
  }
  const name = facts.places.get(place)?.name ?? place;
  return unknown({ key: 'size-not-known', people: populationUnknown, place: name });
}

function unknown(reason: Reason): Crowd {
  return { people: populationUnknown, reason, source: 'common practice' };
}
