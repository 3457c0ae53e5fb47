/**
 * Who came over when, from where to where, as far as anything says.
 *
 * Rule (common practice): the day is that of the list or the year told later; the place of origin is what a record of the
 * traveller states, or what the author concluded; the destination is where they were bound, else where the first record
 * made after the arrival has them. A place no narrower than a country says nothing.
 */
import type { Facts } from '../../model/facts.ts';
import type { Mention, SourceRecord } from '../../model/record.ts';
import { gather } from '../../model/multimap.ts';
import { containmentOf } from '../containment.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { kinOf } from '../kin.ts';
import { daysOf } from '../life-facts.ts';
import { once } from '../once.ts';
import { isTraveller, travellersOf } from './lists.ts';
import { voyagesOf } from './voyages.ts';

/** One traveller who came over: a person, or a mention that belongs to nobody yet. */
export interface Arrival {
  /** The person’s id, else `record#mention`. */
  who: string;
  person?: string;
  name: string;
  /** Days between which they came. */
  first: number;
  last: number;
  /** What dates it: a list of the journey, or a year told later. */
  from: 'list' | 'told';
  /** The journey, where a list of it is there. */
  voyage?: string;
  origin: Whereabouts;
  destination: Whereabouts;
  /** Mentions that say so, the dating one first. */
  refs: string[];
  /** Every mention of theirs on a list of travellers. */
  listed: string[];
}

/** A place and what says it. */
export interface Whereabouts {
  place: string;
  /** From the place outward, its country left out. */
  chain: readonly string[];
  country?: string;
  says: 'stated' | 'concluded' | 'bound' | 'later record' | 'person file';
  ref?: string;
}

/** Everyone who is known to have come from a place narrower than a country to another country, in order of time. */
export const arrivalsOf: (facts: Facts) => readonly Arrival[] = once((facts: Facts): readonly Arrival[] => {
  const voyageOfRecord = new Map(
    voyagesOf(facts).flatMap(({ id, records }) => records.map((record) => [record, id])),
  );
  const standsFor = sameOnTwoLists(facts);
  const mentions = new Map<string, { record: SourceRecord; mention: Mention; ref: string }[]>();
  const kin = kinOf(facts);
  for (const record of facts.records.values()) {
    const listed = new Set(travellersOf(facts, record).map(({ id }) => id));
    for (const mention of record.mentions) {
      const ref = `${record.id}#${mention.id}`;
      const person = kin.owner(ref);
      if (person === undefined && !listed.has(mention.id)) continue;
      gather(mentions, person ?? standsFor.get(ref) ?? ref, { record, mention, ref });
    }
  }
  const found: Arrival[] = [];
  for (const [who, all] of mentions) {
    const crossing = crossingOf(facts, all);
    if (!crossing) continue;
    const origin = originOf(facts, who, all);
    const destination = origin && destinationOf(facts, all, origin, crossing);
    if (!origin || !destination) continue;
    const person = facts.people.get(who);
    const voyage = voyageOfRecord.get(crossing.record);
    found.push({
      who,
      ...(person ? { person: who } : {}),
      name:
        person?.name ??
        all.find(({ mention }) => mention.name !== undefined)?.mention.name ??
        'no name given',
      first: crossing.first,
      last: crossing.last,
      from: crossing.from,
      ...(voyage === undefined || crossing.from === 'told' ? {} : { voyage }),
      origin,
      destination,
      refs: [...new Set([crossing.ref, origin.ref, destination.ref].filter((ref) => ref !== undefined))],
      listed: all.filter(({ record, mention }) => isTraveller(facts, record, mention)).map(({ ref }) => ref),
    });
  }
  return found.sort((a, b) => a.first - b.first || a.last - b.last || (a.who < b.who ? -1 : 1));
});

type Seen = { record: SourceRecord; mention: Mention; ref: string };

/** Mentions of nobody yet that two lists of one journey share are one traveller. */
function sameOnTwoLists(facts: Facts): Map<string, string> {
  const kin = kinOf(facts);
  const same = new Map<string, string>();
  for (const { joins } of voyagesOf(facts))
    for (const join of joins)
      for (const [one, other] of join.same) {
        const person = kin.owner(one) ?? kin.owner(other);
        same.set(one, person ?? one);
        same.set(other, person ?? same.get(one) ?? one);
      }
  return same;
}

function crossingOf(facts: Facts, all: readonly Seen[]) {
  let best: { first: number; last: number; from: Arrival['from']; ref: string; record: string } | undefined;
  for (const { record, mention, ref } of all) {
    const listed = isTraveller(facts, record, mention);
    const abroad = listed && !staysAtHome(facts, record, mention);
    const date =
      mention.voyage?.arrived ??
      (abroad ? (listDate(facts, record) ?? mention.voyage?.sailed ?? record.made) : undefined) ??
      mention.voyage?.sailed ??
      mention.immigrated;
    if (date === undefined || !mention.present) continue;
    const { first, last } = daysOf(date);
    if (!Number.isFinite(first) || !Number.isFinite(last)) continue;
    const one = { first, last, from: listed ? ('list' as const) : ('told' as const), ref, record: record.id };
    const better =
      !best ||
      (one.from === 'list' && best.from === 'told') ||
      // Of two lists of one journey that of the landing dates it.
      (one.from === best.from && last - first < best.last - best.first) ||
      (one.from === best.from && one.from === 'list' && mention.voyage?.arrived !== undefined);
    if (better) best = one;
  }
  return best;
}

const listDates = once((_facts: Facts) => new Map<string, string | undefined>());

/** The day of landing that some entry of a list gives for all. */
function listDate(facts: Facts, record: SourceRecord): string | undefined {
  const known = listDates(facts);
  if (!known.has(record.id))
    known.set(
      record.id,
      record.mentions.find(({ voyage }) => voyage?.arrived !== undefined)?.voyage?.arrived,
    );
  return known.get(record.id);
}

/** On a list of people moved out who only went to another parish. */
function staysAtHome(facts: Facts, record: SourceRecord, { says, voyage }: Mention): boolean {
  const to = voyage?.bound ?? voyage?.to ?? says['destination'];
  if (to === undefined || record.place === undefined) return false;
  const { countries } = containmentOf(facts);
  const home = countries(record.place);
  const meant = placesMeant(facts, to);
  return meant.length > 0 && meant.every((id) => countries(id).some((country) => home.includes(country)));
}

function originOf(facts: Facts, who: string, all: readonly Seen[]): Whereabouts | undefined {
  const stated = all.flatMap(({ mention, ref }) =>
    [mention.lastResidence, mention.birthplace].flatMap((reading) => {
      const place = reading === undefined ? undefined : onePlace(facts, reading);
      return place === undefined ? [] : [{ place, ref }];
    }),
  );
  const foreign = countriesSettled(facts, all);
  const over = (place: string) => {
    const country = containmentOf(facts).countries(place)[0];
    return country === undefined || !foreign.has(country);
  };
  const concluded = concludedPlaces(facts).get(who);
  if (concluded !== undefined) return whereabouts(facts, concluded, 'concluded');
  const narrowest = stated
    .filter(({ place }) => over(place))
    .map(({ place, ref }) => whereabouts(facts, place, 'stated', ref))
    .filter((one) => one !== undefined)
    .sort((a, b) => b.chain.length - a.chain.length)[0];
  if (narrowest) return narrowest;
  const born = facts.people.get(who)?.born?.place;
  return born === undefined || !over(born) ? undefined : whereabouts(facts, born, 'person file');
}

/** The countries a traveller is bound for or later met in; where they came from is none of them. */
function countriesSettled(facts: Facts, all: readonly Seen[]): ReadonlySet<string> {
  const { countries } = containmentOf(facts);
  const found = new Set<string>();
  for (const { mention } of all) {
    for (const reading of [mention.voyage?.to, mention.voyage?.bound]) {
      const place = reading === undefined ? undefined : placesMeant(facts, reading)[0];
      for (const country of place === undefined ? [] : countries(place)) found.add(country);
    }
  }
  return found;
}

const concludedPlaces = once(
  (facts: Facts) =>
    new Map(
      [...facts.cases.values()].flatMap(({ subject, conclusion }) =>
        conclusion ? [[subject, conclusion.place] as const] : [],
      ),
    ),
);

function destinationOf(
  facts: Facts,
  all: readonly Seen[],
  origin: Whereabouts,
  { last, ref: crossing }: { last: number; ref: string },
): Whereabouts | undefined {
  const abroad = (one: Whereabouts | undefined): one is Whereabouts =>
    one !== undefined && one.country !== origin.country;
  for (const { mention, ref } of [...all].sort(
    (a, b) => Number(b.ref === crossing) - Number(a.ref === crossing),
  )) {
    const bound = mention.voyage?.bound;
    const place = bound === undefined ? undefined : onePlace(facts, bound);
    const found = place === undefined ? undefined : whereabouts(facts, place, 'bound', ref);
    if (abroad(found)) return found;
  }
  const after = all
    .flatMap(({ record, mention, ref }) => {
      if (record.place === undefined || record.made === undefined || !mention.present || ref === crossing)
        return [];
      if (isTraveller(facts, record, mention)) return [];
      const day = daysOf(record.made).first;
      if (!Number.isFinite(day) || day < last) return [];
      const place =
        (mention.residence === undefined ? undefined : onePlace(facts, mention.residence)) ?? record.place;
      const found = whereabouts(facts, place, 'later record', ref);
      return abroad(found) ? [{ day, found }] : [];
    })
    .sort((a, b) => a.day - b.day);
  return after[0]?.found;
}

function onePlace(facts: Facts, reading: string): string | undefined {
  const meant = placesMeant(facts, reading);
  if (meant.length === 1) return meant[0];
  const { outward } = containmentOf(facts);
  // Of several that fit as well, only what all lie in is certain.
  return meant.length === 0
    ? undefined
    : outward(meant[0]!).find((id) => meant.every((one) => outward(one).includes(id)));
}

function whereabouts(
  facts: Facts,
  place: string,
  says: Whereabouts['says'],
  ref?: string,
): Whereabouts | undefined {
  const { outward, countries } = containmentOf(facts);
  const chain = outward(place).filter(
    (id) => facts.places.get(id)?.kind !== 'country' && facts.places.has(id),
  );
  if (chain.length === 0) return undefined;
  const [country] = countries(place);
  return {
    place,
    chain,
    ...(country === undefined ? {} : { country }),
    says,
    ...(ref === undefined ? {} : { ref }),
  };
}
