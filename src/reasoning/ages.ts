/**
 * When a person was born, from what records say of their age.
 *
 * Age *a* stated on day *d* puts the birth after *d − (a+1) years* up to *d − a years*. A record of the birth or
 * baptism made within two years of the birth fixes the interval: the baptism of a grown man does not. Without one the
 * records vote: the largest group for which some day lies within the tolerance of every interval, and its hull is the
 * span. Ages wobble in every series, so a mention that falls outside is an outlier, not a contradiction (*common
 * practice*).
 */
import { censusDay, type AgeRule } from '../catalogue/census-days.ts';
import { readAge } from '../model/age.ts';
import { addMonths, addYears, civil } from '../model/days.ts';
import { daySpan, type DaySpan } from '../model/edtf.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import { containmentOf } from './containment.ts';
import { birthOrBaptism } from './event-kinds.ts';
import { isBirth } from './items.ts';

/** The first and last day of a birth, both included, as day numbers. */
export interface BirthInterval {
  ref: string;
  first: number;
  last: number;
  /** What it is reckoned from: a record of the birth or baptism, a birth stated elsewhere, or an age. */
  from: 'event' | 'born' | 'age';
  /** From a record of the birth or baptism made within two years. */
  fixes: boolean;
  /** The record is an original, which is believed before a copy. */
  original: boolean;
}

export interface BirthSpan {
  first: number | null;
  last: number | null;
  /** Mentions that fall outside: of a fixed birth, farther from it than the tolerance; else, not in the largest group. */
  outliers: string[];
  intervals: BirthInterval[];
}

/** The birth span of a person, with the mentions that fall outside it. */
export function birthSpan(facts: Facts, personId: string): BirthSpan {
  const person = facts.people.get(personId);
  const intervals: BirthInterval[] = [];
  for (const ref of person?.mentions ?? []) {
    const at = mentionAt(facts, ref);
    const interval = at && birthInterval(at.record, at.mention, facts);
    if (at && interval) intervals.push({ ref, ...interval, original: at.record.form === 'original' });
  }
  const tolerance = facts.site.ageTolerance;
  const fixed = intervals
    .filter((interval) => interval.fixes)
    .sort((a, b) => Number(b.original) - Number(a.original) || narrowerThenEarlier(a, b))[0];
  if (fixed) {
    const outliers = intervals.filter((i) => !near(i, fixed, tolerance)).map((i) => i.ref);
    return { first: fixed.first, last: fixed.last, outliers, intervals };
  }
  const group = largestGroup(intervals, tolerance);
  if (group.length === 0) {
    const stated = person?.born?.date === undefined ? { first: null, last: null } : daySpan(person.born.date);
    return { ...stated, outliers: [], intervals };
  }
  const inGroup = new Set(group);
  return {
    ...hull(group),
    outliers: intervals.filter((i) => !inGroup.has(i)).map((i) => i.ref),
    intervals,
  };
}

/**
 * The days of birth one mention allows, if it says anything of it. With `facts`, the place of a record tells on which
 * of several days its part of the country took the census.
 */
export function birthInterval(
  record: SourceRecord,
  mention: Mention,
  facts?: Facts,
): Omit<BirthInterval, 'ref' | 'original'> | undefined {
  const { event } = mention;
  const madeBy = record.made === undefined ? null : daySpan(record.made).last;
  if (event && isBirth(event) && event.date !== undefined) {
    const day = daySpan(event.date);
    if (day.first !== null && day.last !== null) {
      const born = bornBy(record, mention, { first: day.first, last: day.last }, facts);
      const fixes = madeBy !== null && madeBy <= addYears(born.last, 2);
      return { ...born, from: 'event', fixes };
    }
  }
  if (mention.born !== undefined) {
    const stated = closed(daySpan(mention.born));
    if (stated) return { ...stated, from: 'born', fixes: false };
  }
  if (mention.age === undefined) return undefined;
  const on = dayOfAge(record, mention, facts);
  const births = on && fromAge(mention.age, on);
  return births && { ...births, from: 'age', fixes: false };
}

/**
 * The births that an entry of a birth or baptism allows: as it states them; else, of a birth, its days; else as the age
 * at the font has it. An infant is brought to the font within the year unless the register says otherwise (*common
 * practice*), so that an age under that only narrows it.
 */
function bornBy(
  record: SourceRecord,
  mention: Mention,
  day: { first: number; last: number },
  facts: Facts | undefined,
): { first: number; last: number } {
  const stated = mention.born === undefined ? undefined : closed(daySpan(mention.born));
  if (stated) return stated;
  if (birthOrBaptism(mention.event!.kind) === 'birth') return day;
  const infant = { first: addYears(day.first, -1) + 1, last: day.last };
  const on = mention.age === undefined ? undefined : dayOfAge(record, mention, facts);
  const aged = on && fromAge(mention.age!, on);
  if (!aged) return infant;
  const narrowed = { first: Math.max(aged.first, infant.first), last: Math.min(aged.last, infant.last) };
  return narrowed.first <= narrowed.last ? narrowed : aged;
}

/**
 * The births that an age stated between two days allows. On a partial date the outer days count. An age in several
 * units may be up to one of the smallest more; whether days are taken off before months or after is not known, so
 * both ways count.
 */
function fromAge(
  age: number | string,
  on: { first: number; last: number; ageRule: AgeRule },
): { first: number; last: number } | undefined {
  const read = readAge(age);
  if (typeof read === 'string') return undefined;
  if (read.unit === 'y') {
    const [least, most] = yearsLived(read.years, on.ageRule);
    return { first: addYears(on.first, -(most + 1)) + 1, last: addYears(on.last, -least) };
  }
  const months = 12 * read.years + read.months;
  const days = 7 * read.weeks + read.days;
  const before = (day: number, m: number, d: number) => [addMonths(day, -m) - d, addMonths(day - d, -m)];
  const latest = Math.max(...before(on.last, months, days));
  const earliest =
    read.unit === 'm'
      ? Math.min(...before(on.first, months + 1, days)) + 1
      : Math.min(...before(on.first, months, days + (read.unit === 'w' ? 7 : 1))) + 1;
  return { first: earliest, last: latest };
}

/** The fewest and the most years that someone had lived whose age a census gave as so many. */
function yearsLived(stated: number, rule: AgeRule): [least: number, most: number] {
  if (rule === 'next-birthday') return [Math.max(0, stated - 1), Math.max(0, stated - 1)];
  return rule === 'five-year-floor' && stated >= 15 && stated % 5 === 0
    ? [stated, stated + 4]
    : [stated, stated];
}

/** The day an age is as of: a census's own day, else the event's, the arrival's, or that of the record. */
function dayOfAge(
  record: SourceRecord,
  mention: Mention,
  facts: Facts | undefined,
): { first: number; last: number; ageRule: AgeRule } | undefined {
  const made = record.made === undefined ? null : daySpan(record.made).first;
  const { place } = record;
  const at = facts && place !== undefined ? [place, ...containmentOf(facts).above(place)] : [];
  const census =
    record.series === undefined
      ? undefined
      : censusDay(record.series, { at, ...(made === null ? {} : { year: civil(made).year }) });
  if (census) {
    const day = closed(daySpan(census.day));
    return day && { ...day, ageRule: census.ageRule };
  }
  for (const date of [
    mention.event?.date,
    mention.voyage?.arrived,
    record.form === 'derivative' ? undefined : record.made,
  ]) {
    const day = date === undefined ? undefined : closed(daySpan(date));
    if (day) return { ...day, ageRule: 'exact' };
  }
  return undefined;
}

function closed(span: DaySpan): { first: number; last: number } | undefined {
  return span.first === null || span.last === null ? undefined : { first: span.first, last: span.last };
}

/** Whether two intervals lie within the tolerance, in years, of each other. */
function near(a: BirthInterval, b: BirthInterval, tolerance: number): boolean {
  return back(a.first, tolerance) <= b.last && b.first <= on(a.last, tolerance);
}

function back(day: number, years: number): number {
  return Number.isInteger(years) ? addYears(day, -years) : day - Math.round(years * 365.2425);
}

function on(day: number, years: number): number {
  return Number.isInteger(years) ? addYears(day, years) : day + Math.round(years * 365.2425);
}

/**
 * The largest group of intervals for which some day lies within the tolerance of each; of several, the one with the
 * narrower hull, then the earlier. A sweep over the days on which a widened interval begins: some largest group has
 * its day there.
 */
function largestGroup(intervals: readonly BirthInterval[], tolerance: number): BirthInterval[] {
  const widened = intervals.map((interval) => ({
    interval,
    from: back(interval.first, tolerance),
    to: on(interval.last, tolerance),
  }));
  let best: BirthInterval[] = [];
  for (const day of [...new Set(widened.map((w) => w.from))].sort((a, b) => a - b)) {
    const group = widened.filter((w) => w.from <= day && day <= w.to).map((w) => w.interval);
    if (
      group.length > best.length ||
      (group.length === best.length && group.length > 0 && narrowerThenEarlier(hull(group), hull(best)) < 0)
    )
      best = group;
  }
  return best;
}

function hull(group: readonly { first: number; last: number }[]): { first: number; last: number } {
  return { first: Math.min(...group.map((i) => i.first)), last: Math.max(...group.map((i) => i.last)) };
}

function narrowerThenEarlier(a: { first: number; last: number }, b: { first: number; last: number }): number {
  return a.last - a.first - (b.last - b.first) || a.first - b.first;
}
