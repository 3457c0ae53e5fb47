/**
 * Where a person was, and in which years.
 *
 * The rule (*common practice*): two sightings in one country place somebody in that country between them, and at one
 * place where both are there. Before the arrival they were at their origin, after it in the country they came to.
 * Nobody is put anywhere after the last sighting and before a death that is not known.
 */
import { addYears } from '../../model/days.ts';
import { daySpan } from '../../model/edtf.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { birthSpan } from '../ages.ts';
import { containmentOf } from '../containment.ts';
import { eventWord } from '../event-kinds.ts';
import { placesMeant } from '../identity/place-agreement.ts';
import { closed, countryOf, seenBy, type Seen } from './seen.ts';
import { familiesOf, type Life } from './life.ts';

/** A stretch of a life at one place. */
export interface Stay {
  place: string;
  country: string;
  first: number;
  last: number;
  how: 'seen' | 'between' | 'presumed';
  /** The mentions that show it. */
  refs: string[];
}

export interface Arrival {
  country: string;
  first: number;
  last: number;
  /** Said years afterwards. */
  remembered: boolean;
  ref?: string;
}

export interface Presence {
  life: Life;
  /** The days the birth lies between, or `null` where nothing tells. */
  born: { first: number; last: number } | null;
  /** Where they came from: the author's own entry, the case's answer, or the country that records state. */
  origin: { place: string; country: string } | undefined;
  died: { first: number; last: number; place: string | undefined } | null;
  arrivals: Arrival[];
  /** In order of time. */
  seen: Seen[];
  stays: Stay[];
}

/** A year that somebody remembered may be off by so many (*common practice*). */
const memory = 2;

/**
 * Where a person was in which years.
 *
 * @param origin the place the case concludes, or works with, for its subject
 */
export function presenceOf(facts: Facts, life: Life, origin?: string): Presence {
  const born = birthOf(facts, life);
  const from = originOf(facts, life, origin);
  const arrivals: Arrival[] = [];
  const seen: Seen[] = [];
  let died = deathIn(life);
  for (const ref of life.refs) {
    const at = mentionAt(facts, ref);
    if (!at) continue;
    const one = seenBy(facts, at.record, at.mention, ref);
    if (one) seen.push(one);
    arrivals.push(...arrivalsIn(facts, ref));
    const { event } = at.mention;
    if (
      !died &&
      event?.date !== undefined &&
      ['death', 'burial', 'funeral'].includes(eventWord(event.kind))
    ) {
      const day = closed(event.date);
      if (day) died = { ...day, place: one?.place };
    }
  }
  seen.push(...ownEntries(facts, life, born));
  const end = died?.last ?? Infinity;
  const start = born?.first ?? -Infinity;
  const alive = seen.filter((one) => one.first <= end && one.last >= start).sort(bySpan);
  const came = arrivalsOnce(arrivals);
  return {
    life,
    born,
    origin: from,
    died,
    arrivals: came,
    seen: alive,
    stays: staysOf(facts, alive, came, born, from, died),
  };
}

function bySpan(a: Seen, b: Seen): number {
  return (
    a.first - b.first ||
    a.last - b.last ||
    (a.place < b.place ? -1 : a.place > b.place ? 1 : 0) ||
    ((a.ref ?? '') < (b.ref ?? '') ? -1 : 1)
  );
}

function birthOf(facts: Facts, life: Life): Presence['born'] {
  if (!life.person) return null;
  const { first, last } = birthSpan(facts, life.id);
  return first === null || last === null ? null : { first, last };
}

function deathIn(life: Life): Presence['died'] {
  const { died } = life.person ?? {};
  if (died?.date === undefined) return null;
  const { first, last } = daySpan(died.date);
  return first === null || last === null ? null : { first, last, place: died.place };
}

function originOf(facts: Facts, life: Life, concluded: string | undefined): Presence['origin'] {
  for (const place of [concluded, life.person?.born?.place]) {
    const country = place === undefined ? undefined : countryOf(facts, place);
    if (place !== undefined && country !== undefined) return { place, country };
  }
  const said = new Map<string, number>();
  for (const ref of life.refs) {
    const reading = mentionAt(facts, ref)?.mention.birthplace;
    if (reading === undefined) continue;
    const countries = new Set(
      placesMeant(facts, reading).flatMap((id) => containmentOf(facts).countries(id)),
    );
    // A reading that fits places of several countries names none.
    if (countries.size === 1) for (const one of countries) said.set(one, (said.get(one) ?? 0) + 1);
  }
  const best = [...said].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))[0]?.[0];
  return best === undefined ? undefined : { place: best, country: best };
}

/** What the person's own entry, and their marriages and children, say of where they were. */
function ownEntries(facts: Facts, life: Life, born: Presence['born']): Seen[] {
  const found: Seen[] = [];
  const add = (place: string | undefined, days: { first: number; last: number } | undefined | null) => {
    const country = place === undefined ? undefined : countryOf(facts, place);
    if (place !== undefined && country !== undefined && days)
      found.push({ place, country, first: days.first, last: days.last });
  };
  const { person } = life;
  if (!person) return found;
  if (born && born.last - born.first < 3700) add(person.born?.place, born);
  if (person.died?.date !== undefined) add(person.died.place, closed(person.died.date));
  const { marriages, children } = familiesOf(facts);
  for (const { married, place } of marriages(life.id)) if (married !== undefined) add(place, closed(married));
  // A mother was where her child was born; a father may have stayed behind.
  if (life.sex === 'F')
    for (const id of children(life.id)) {
      const child = facts.people.get(id)?.born;
      if (child?.date !== undefined) add(child.place, closed(child.date));
    }
  return found;
}

function arrivalsIn(facts: Facts, ref: string): Arrival[] {
  const { record, mention } = mentionAt(facts, ref)!;
  const country = record.place === undefined ? undefined : countryOf(facts, record.place);
  if (country === undefined || !mention.present) return [];
  const made = record.made === undefined ? null : daySpan(record.made).first;
  const { voyage, immigrated } = mention;
  if (voyage?.arrived !== undefined) {
    const day = closed(voyage.arrived);
    if (day) return [{ country, ...day, remembered: made !== null && made > day.last + 366, ref }];
  }
  const year = immigrated === undefined ? undefined : closed(immigrated);
  return year ? [{ country, ...year, remembered: true, ref }] : [];
}

/** The arrivals in each country: the one a ship's list dates, or the span that the memories leave. */
function arrivalsOnce(all: readonly Arrival[]): Arrival[] {
  const countries = [...new Set(all.map((one) => one.country))].sort();
  return countries.flatMap((country) => {
    const here = all.filter((one) => one.country === country);
    const dated = here
      .filter((one) => !one.remembered)
      .sort((a, b) => a.first - b.first || a.last - b.last)[0];
    if (dated) return [dated];
    const years = here.map((one) => one.first).sort((a, b) => a - b);
    const middle = years[(years.length - 1) >> 1]!;
    const told = here.find((one) => one.first === middle)!;
    return [{ ...told, first: addYears(told.first, -memory), last: addYears(told.last, memory) }];
  });
}

/** The smallest place that holds both. */
function common(facts: Facts, a: Seen, b: Seen): string {
  const { outward, within } = containmentOf(facts);
  if (within(b.place, a.place)) return a.place;
  return outward(a.place).find((place) => within(b.place, place)) ?? a.country;
}

function staysOf(
  facts: Facts,
  seen: readonly Seen[],
  arrivals: readonly Arrival[],
  born: Presence['born'],
  origin: Presence['origin'],
  died: Presence['died'],
): Stay[] {
  const stays: Stay[] = [];
  const add = (
    place: string,
    country: string,
    first: number,
    last: number,
    how: Stay['how'],
    refs: (string | undefined)[],
  ) => {
    if (last >= first)
      stays.push({
        place,
        country,
        first,
        last,
        how,
        refs: [...new Set(refs.filter((ref) => ref !== undefined))],
      });
  };
  const arrivalIn = (country: string, after: number, before: number) =>
    arrivals.find((one) => one.country === country && one.last >= after && one.first <= before);
  const first = seen[0];
  if (origin && born) {
    const arrival = arrivals
      .filter((one) => one.country !== origin.country)
      .sort((a, b) => a.first - b.first)[0];
    const until = first && first.country === origin.country ? first.first : arrival?.first;
    // Without an arrival nothing is known but that the life began there.
    add(origin.place, origin.country, born.first, Math.max(born.last, until ?? born.last), 'presumed', [
      arrival?.ref,
    ]);
  }
  if (first && origin?.country !== first.country) {
    const arrival = arrivalIn(first.country, -Infinity, first.last);
    if (arrival)
      add(first.place, first.country, arrival.first, first.first, 'presumed', [arrival.ref, first.ref]);
  }
  seen.forEach((one, i) => {
    add(one.place, one.country, one.first, one.last, 'seen', [one.ref]);
    const next = seen[i + 1];
    if (!next) return;
    if (next.country === one.country) {
      if (next.first > one.last)
        add(common(facts, one, next), one.country, one.last, next.first, 'between', [one.ref, next.ref]);
      return;
    }
    const arrival = arrivalIn(next.country, one.first, next.last);
    if (!arrival) return;
    add(one.place, one.country, one.last, arrival.first, 'presumed', [one.ref, arrival.ref]);
    add(next.place, next.country, arrival.last, next.first, 'presumed', [arrival.ref, next.ref]);
  });
  const last = seen.at(-1);
  if (last && died && died.first > last.last)
    add(last.country, last.country, last.last, died.first, 'presumed', [last.ref]);
  return stays;
}
