/**
 * Which entries a life should have left: for each series that takes in the place, whose run meets the years, and whose
 * kind makes an entry of what happened there. A series whose run doesn't cover the years is never among them.
 */
import { censusDays } from '../../catalogue/census-days.ts';
import { confessions } from '../../catalogue/series-kinds.ts';
import type { EntryEvent } from '../../catalogue/series/types.ts';
import { addYears, civil, dayNumber } from '../../model/days.ts';
import { daySpan } from '../../model/edtf.ts';
import type { Facts } from '../../model/facts.ts';
import { gather } from '../../model/multimap.ts';
import { containmentOf } from '../containment.ts';
import { lifeEntries, petitionFrom, isCountry, type LifeEntry } from './life-entries.ts';
import type { Presence, Stay } from './presence.ts';
import { seriesAt, type KnownSeries } from './series-at.ts';

/** An entry that a series should have of somebody. */
export interface Expected {
  series: KnownSeries;
  event: EntryEvent;
  place: string;
  first: number;
  last: number;
  how: Stay['how'];
  /** How sure that they were there, are whom it takes in, and that this is the series for it: 0 to 1. */
  sure: number;
  /** Of a census: what stands beside the day. */
  stay?: Stay;
}

/** The days of each census, with where they held. */
const censusRows = new Map<string, { of: readonly string[]; year: number; day: number }[]>();
for (const { series, of, year, day } of censusDays)
  gather(censusRows, series, { of, year, day: daySpan(day).first! });

/** Every entry a life should have left, once for each series and happening, in the order of the series of a place. */
export function expectedOf(facts: Facts, presence: Presence): Expected[] {
  return [...censuses(facts, presence), ...happenings(facts, presence)];
}

function censuses(facts: Facts, presence: Presence): Expected[] {
  const found = new Map<string, Expected>();
  const order = ['seen', 'between', 'presumed'];
  for (const stay of presence.stays)
    for (const series of around(facts, stay.place)) {
      if (series.first > stay.last || series.last + 400 < stay.first) continue;
      if (!series.entries.includes('census')) continue;
      for (const on of daysOf(facts, series, stay)) {
        if (on < stay.first || on > stay.last || on < series.first || on > series.last + 400) continue;
        if (!takesIn(series, presence, stay.place, on)) continue;
        const key = `${series.id} ${on}`;
        const known = found.get(key);
        if (known && order.indexOf(known.how) <= order.indexOf(stay.how)) continue;
        const sure = stay.how === 'seen' ? 1 : stay.how === 'between' ? 0.95 : 0.7;
        found.set(key, {
          series,
          event: 'census',
          place: stay.place,
          first: on,
          last: on,
          how: stay.how,
          sure: sure * groundFit(facts, series, stay.place),
          stay,
        });
      }
    }
  return [...found.values()];
}

/** The days on which a census was taken at a place of a stay; the middle of its year where the day is not known. */
function daysOf(facts: Facts, series: KnownSeries, stay: Stay): number[] {
  const rows = censusRows.get(series.id);
  if (!rows) {
    if (!Number.isFinite(series.first) || series.last - series.first > 800) return [];
    return [dayNumber(civil(series.first).year, 6, 1)];
  }
  const { within } = containmentOf(facts);
  const byYear = new Map<number, number>();
  for (const row of rows) {
    const here = row.of.some((place) => within(stay.place, place));
    // The first row of a year is that of the whole country; a part of it may have a day of its own.
    if (here || !byYear.has(row.year)) byYear.set(row.year, row.day);
  }
  return [...byYear.values()];
}

function happenings(facts: Facts, presence: Presence): Expected[] {
  const found: Expected[] = [];
  const years = new Map<string, number>();
  for (const entry of lifeEntries(facts, presence))
    for (const series of around(facts, entry.place)) {
      if (!series.entries.includes(entry.event)) continue;
      const [from, to] = window(series, entry);
      const first = Math.max(from, series.first);
      const last = Math.min(to, series.last);
      if (last < first || !takesIn(series, presence, entry.place, first)) continue;
      // A long stretch of which the run meets little makes the entry that much less likely.
      const share =
        to - from > 366 && wide.has(entry.event)
          ? (last - first + 1) / (to - from + 1)
          : entry.event === 'residence'
            ? Math.min(1, (last - first + 1) / settled)
            : 1;
      const sure =
        entry.sure *
        share *
        groundFit(facts, series, entry.place) *
        confession(series, presence) *
        belief(series, presence);
      const one = {
        series,
        event: entry.event,
        place: entry.place,
        first,
        last,
        how: entry.how,
        sure: Math.min(1, sure),
      };
      if (!lasting.has(entry.event)) {
        found.push(one);
        continue;
      }
      // Of years lived, one look into a series serves all the places it takes in.
      const key = `${series.id} ${entry.event}`;
      const before = years.get(key);
      if (before === undefined) {
        years.set(key, found.length);
        found.push(one);
      } else {
        const other = found[before]!;
        const better = longerAt(facts, one, other) ? one : other;
        found[before] = {
          ...better,
          first: Math.min(other.first, first),
          last: Math.max(other.last, last),
          sure: Math.max(other.sure, one.sure),
        };
      }
    }
  return found;
}

/** Somebody has to live at a place for some years before its books are likely to name them (common practice). */
const settled = 5 * 365;

/** Of two places of one life in the same ground, the one where they were longer; a whole country is no such place. */
function longerAt(facts: Facts, one: Expected, other: Expected): boolean {
  const [a, b] = [isCountry(facts, one.place), isCountry(facts, other.place)];
  return a === b ? one.last - one.first > other.last - other.first : b;
}

const lasting: ReadonlySet<EntryEvent> = new Set([
  'residence',
  'childhood',
  'service',
  'biography',
  'naturalization',
]);
const wide: ReadonlySet<EntryEvent> = new Set(['death', 'arrival', 'departure', 'naturalization']);

/** The days an entry may have been made on, which for some kinds lie after what it is of. */
function window(series: KnownSeries, entry: LifeEntry): [number, number] {
  const { first, last } = entry;
  if (entry.event === 'naturalization' && /petition|final papers|admission/i.test(series.title))
    return [Math.min(petitionFrom(first), last), last];
  if (entry.event === 'naturalization' && /declaration|first papers/i.test(series.title))
    return [first, Math.min(last, Math.max(addYears(first, 12), first))];
  // Estates are opened after the death, and the paper comes out after it.
  if (entry.event === 'death' && series.kind === 'probate') return [first, addYears(last, 2)];
  if (entry.event === 'death' && (series.kind === 'newspaper' || series.kind === 'cemetery'))
    return [first, last + 31];
  return [first, last];
}

/** Series whose ground holds the place, and the author's own of smaller ground inside it. */
function around(facts: Facts, place: string): readonly KnownSeries[] {
  const at = seriesAt(facts);
  const inside = at.inside(place);
  return inside.length === 0 ? at.covering(place) : [...at.covering(place), ...inside.slice(0, most)];
}

/** So many series of smaller ground are looked at, where an author has listed hundreds. */
const most = 40;

/** How likely the ground of the series is the one: certain where it holds the place, less where it is a part of it. */
function groundFit(facts: Facts, series: KnownSeries, place: string): number {
  const { within } = containmentOf(facts);
  if (series.of.some((of) => within(place, of))) return 1;
  return isCountry(facts, place) ? 0.15 : 0.5;
}

function takesIn(series: KnownSeries, presence: Presence, place: string, on: number): boolean {
  const { who, heads } = series;
  const { life, born, origin } = presence;
  if (who.sex !== undefined && life.sex !== undefined && life.sex !== who.sex) return false;
  if (who.born && born) {
    const [from, to] = who.born;
    if (civil(born.last).year < from || civil(born.first).year > to) return false;
  }
  if (who.foreignBorn && (!origin || series.of.includes(origin.country) || origin.place === place))
    return false;
  if (heads && (life.sex === 'F' || (born !== null && addYears(born.last, 21) > on))) return false;
  return true;
}

/** What a birth that isn't known leaves of a series that takes in some years of birth only. */
function belief(series: KnownSeries, { born }: Presence): number {
  return series.who.born && !born ? 0.4 : 1;
}

function confession(series: KnownSeries, { origin }: Presence): number {
  if (series.kind !== 'church' || !origin) return 1;
  return (
    confessions.find((one) => one.origin === origin.country && one.title.test(series.title))?.factor ?? 1
  );
}
