/**
 * What a search is worth to a case: the chance that the record exists and names the person, times the chance that it
 * then names a place, times how much nearer that is than what the case has, times how far it holds for the subject.
 * The factors are estimates of *common practice* and only put searches in order.
 */
import {
  confessionOf,
  depthChances,
  reaches,
  reachWorth,
  reachOfKind,
  type Reach,
} from '../../catalogue/series-kinds.ts';
import { addYears } from '../../model/days.ts';
import type { Case } from '../../model/case.ts';
import type { Facts } from '../../model/facts.ts';
import type { CaseResult } from '../types.ts';
import type { Member } from './circle.ts';
import type { Coverage, Covered } from './coverage.ts';
import type { Presence } from './presence.ts';
import { countryOf } from './seen.ts';

/** How near a case has come: where any item reaches, and where two independent ones do. */
export interface Known {
  reached: Reach | null;
  settled: Reach | null;
  /** The country it looks to. */
  country: string | undefined;
  /** The years in which records over there bear on the origin: from before the birth to the departure. */
  there: { first: number; last: number };
  /** Confessions that the family's church records are of, as `country confession`. */
  churches: ReadonlySet<string>;
}

/** Parents married, and elder children were born, so many years before at the most (common practice). */
const before = 15;

/** How near a case has come, from its evidence and, where it is computed, its support. */
export function knownOf(
  facts: Facts,
  c: Case,
  result: CaseResult | null,
  { presence }: Coverage,
  churches: ReadonlySet<string>,
): Known {
  const reach = (place: string): Reach | null => {
    const found = facts.places.get(place);
    return found ? reachOfKind(found.kind) : null;
  };
  const deepest = (all: readonly (Reach | null)[]) =>
    all.reduce((best, one) => (rank(one) > rank(best) ? one : best), null);
  const places = c.evidence.flatMap(({ kind, place }) =>
    kind === 'negative' || place === undefined ? [] : [place],
  );
  const answer = c.conclusion?.place ?? c.hypothesis?.place;
  const born = facts.people.get(c.subject)?.born?.place;
  const from = answer ?? born ?? places[0];
  return {
    reached: deepest(places.map(reach)),
    settled: deepest(
      (result?.support ?? []).filter(({ independent }) => independent >= 2).map(({ place }) => reach(place)),
    ),
    country: from === undefined ? presence.origin?.country : countryOf(facts, from),
    there: {
      first: presence.born ? addYears(presence.born.first, -before) : -Infinity,
      last: presence.arrivals[0] ? addYears(presence.arrivals[0].last, 1) : Infinity,
    },
    churches,
  };
}

/** 0 for nothing, then 1 for a country up to 4 for the smallest ground. */
export function rank(reach: Reach | null): number {
  return reach === null ? 0 : reaches.indexOf(reach) + 1;
}

export interface Worth {
  /** The product of the factors: 0 to 1. */
  gain: number;
  there: number;
  tells: number;
  nearer: number;
  close: number;
  /** The levels the record reaches, each with its chance, where it names the person. */
  reach: Readonly<Record<Reach, number>>;
  fields: readonly string[];
}

/** What an entry that is still open is worth. */
export function worthOf(
  facts: Facts,
  known: Known,
  member: Member,
  presence: Presence,
  entry: Covered,
): Worth {
  const { series } = entry;
  const { reach, fields } = tellsIn(entry);
  const church = otherChurch(facts, known, entry) ? 0.1 : 1;
  const there = Math.min(
    1,
    church *
      series.chance *
      entry.sure *
      (entry.gap ? 0.4 : 1) *
      singledOut(facts, known, entry) *
      unsearched(entry),
  );
  const own = speaksOfOrigin(known, presence, entry, fields);
  let named = 0;
  let gained = 0;
  for (const level of reaches) {
    const chance = reach[level];
    named += chance;
    gained += chance * reachWorth[level] * newness(known, level);
  }
  const tells = Math.min(1, named) * own;
  const nearer = named > 0 ? gained / named : 0;
  const close = closeness(facts, known, member, presence, entry);
  return { gain: there * tells * nearer * close, there, tells, nearer, close, reach, fields };
}

/** What the records of the days tell, and how near they come, each period by its share of the days. */
export function tellsIn({ series, first, last }: Pick<Covered, 'series' | 'first' | 'last'>): {
  reach: Record<Reach, number>;
  fields: readonly string[];
} {
  const reach: Record<Reach, number> = { country: 0, county: 0, parish: 0, townland: 0 };
  const fields = new Set<string>();
  for (const told of series.tells) {
    const from = Math.max(first, told.first);
    const to = Math.min(last, told.last);
    if (to < from) continue;
    const share = Number.isFinite(last - first) ? (to - from + 1) / (last - first + 1) : 1;
    for (const level of reaches) reach[level] += share * depthChances[told.origin][level];
    for (const field of told.fields) fields.add(field);
  }
  return { reach, fields: [...fields] };
}

/** A level the case has already, with two independent items, gains little; one item still wants its second. */
function newness({ reached, settled }: Known, level: Reach): number {
  if (rank(level) > rank(reached)) return 1;
  return rank(level) > rank(settled) ? 0.6 : 0.1;
}

/** In the old country a name without a parish is anybody's: the nearer the case has come, the surer the entry is theirs. */
function singledOut(facts: Facts, known: Known, { series, place }: Covered): number {
  if (known.country === undefined || countryOf(facts, series.of[0]!) !== known.country) return 1;
  const here = reachOfKind(facts.places.get(place)?.kind ?? 'country');
  switch (rank(here) < rank(known.reached) ? here : known.reached) {
    case null:
    case 'country':
      return series.local ? 0.02 : 0.1;
    case 'county':
      return series.local ? 0.2 : 0.35;
    case 'parish':
      return 0.7;
    case 'townland':
      return 0.85;
  }
}

/** The family's church records over there, or over here, are of another confession. */
function otherChurch(facts: Facts, { churches }: Known, { series, place }: Covered): boolean {
  const confession = series.kind === 'church' ? confessionOf(series.title) : undefined;
  const country = countryOf(facts, place);
  if (confession === undefined || country === undefined || churches.has(`${country} ${confession}`))
    return false;
  return [...churches].some((one) => one.startsWith(`${country} `));
}

/** Somebody looked into a part of the years already. */
function unsearched({ searches }: Covered): number {
  return searches.length > 0 ? 0.5 : 1;
}

const tellsOfParents = new Set(['church', 'newspaper', 'history', 'family', 'cemetery', 'probate']);

/** Of those born in the new country only what a record says of their parents bears on the origin. */
function speaksOfOrigin(
  known: Known,
  { origin }: Presence,
  { series, first, last }: Covered,
  fields: readonly string[],
): number {
  if (!origin) return 0.6;
  if (known.country === undefined || origin.country === known.country) {
    const overThere = known.country !== undefined && series.of.includes(known.country);
    // Where kin lived long after says less of where the family was at the birth.
    return overThere && (last < known.there.first || first > known.there.last) ? 0.4 : 1;
  }
  if (series.of.includes(known.country)) return 0.5;
  if (fields.includes('parents-birthplace')) return 0.5;
  return tellsOfParents.has(series.kind) ? 0.15 : 0.02;
}

function closeness(
  facts: Facts,
  known: Known,
  { closeness: close, kind }: Member,
  { origin }: Presence,
  { series }: Covered,
): number {
  if (kind !== 'associate' && close > byMarriage) return close;
  // Whoever married in, or stood by, and came from another country has nothing to say of this one.
  const elsewhere = known.country !== undefined && origin !== undefined && origin.country !== known.country;
  if (elsewhere) return close * 0.05;
  // Their own books over there name their own place, which need not be that of the family.
  const overThere = known.country !== undefined && countryOf(facts, series.of[0]!) === known.country;
  return overThere ? close * 0.3 : close;
}

/** Nobody joined by marriage alone is closer. */
const byMarriage = 0.35;
