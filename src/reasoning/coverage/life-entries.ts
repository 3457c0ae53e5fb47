/**
 * What in a life makes entries in records: birth, marriages, death, arrival, naturalization, and the years somebody
 * lived at a place; each with the days it lies between and how sure it is that they were there then.
 */
import type { EntryEvent } from '../../catalogue/series/types.ts';
import { addYears, dayNumber } from '../../model/days.ts';
import { mentionAt, type Facts } from '../../model/facts.ts';
import { containmentOf } from '../containment.ts';
import { eventWord } from '../event-kinds.ts';
import { familiesOf } from './life.ts';
import type { Presence, Stay } from './presence.ts';
import { closed } from './seen.ts';

export interface LifeEntry {
  event: EntryEvent;
  place: string;
  first: number;
  last: number;
  how: Stay['how'];
  /** How sure it is that they were there then: 0 to 1. */
  sure: number;
}

const sureOf: Readonly<Record<Stay['how'], number>> = { seen: 1, between: 0.95, presumed: 0.75 };

/** Of a death that no record dates: so old did hardly anybody become. */
const longLife = 95;
/** Whoever was born later may be alive, and no death is looked for. */
const beyondMemory = dayNumber(1915, 1, 1);
/** Five years' residence before citizenship, from the act of 14 April 1802 on. */
const residenceYears = 5;
/** Most who became citizens had done so by then (common practice). */
const mostNaturalized = 25;
/** Ages: of oaths and land, of schooling, of bearing arms (common practice). */
const grown = 21;
const schooling = [5, 15] as const;
const arms = [18, 45] as const;
/** The Cable Act: from 22 September 1922 a wife had to be naturalized herself. */
const wivesThemselves = dayNumber(1922, 9, 22);

/** Everything in a life that makes an entry, but for censuses, which follow from the stays. */
export function lifeEntries(facts: Facts, presence: Presence): LifeEntry[] {
  return [
    ...births(presence),
    ...marriages(facts, presence),
    ...deaths(presence),
    ...crossings(presence),
    ...naturalizations(facts, presence),
    ...years(facts, presence),
  ];
}

function births({ born, stays }: Presence): LifeEntry[] {
  const first = stays[0];
  if (!born || !first || born.last - born.first > 3700 || first.first > born.last) return [];
  return [{ event: 'birth', place: first.place, ...born, how: first.how, sure: sureOf[first.how] }];
}

function marriages(facts: Facts, { life, stays }: Presence): LifeEntry[] {
  const { marriages: all, children } = familiesOf(facts);
  return all(life.id).flatMap(({ spouse, married, place }): LifeEntry[] => {
    const known = married === undefined ? undefined : closed(married);
    if (known) {
      const stay = stayAt(stays, known.first);
      const at = place ?? stay?.place;
      return at === undefined
        ? []
        : [{ event: 'marriage', place: at, ...known, how: stay?.how ?? 'presumed', sure: 1 }];
    }
    const theirs = new Set(children(spouse));
    const born = children(life.id)
      .filter((child) => theirs.has(child))
      .flatMap((child) => {
        const date = facts.people.get(child)?.born?.date;
        return date === undefined ? [] : [closed(date)];
      })
      .filter((days) => days !== undefined)
      .sort((a, b) => a.first - b.first)[0];
    const stay = born && (place === undefined ? stayAt(stays, born.first) : undefined);
    const at = place ?? stay?.place;
    return born && at !== undefined
      ? [
          {
            event: 'marriage',
            place: at,
            first: addYears(born.first, -4),
            last: born.last,
            how: 'presumed',
            sure: 0.5,
          },
        ]
      : [];
  });
}

function stayAt(stays: readonly Stay[], day: number): Stay | undefined {
  return (
    stays.findLast((stay) => stay.how === 'seen' && stay.first <= day && day <= stay.last) ??
    stays.find((stay) => stay.first <= day && day <= stay.last)
  );
}

function deaths({ life, born, died, seen, stays }: Presence): LifeEntry[] {
  const last = seen.at(-1);
  if (died) {
    const place = died.place ?? last?.place ?? stays.at(-1)?.place;
    return place === undefined
      ? []
      : [
          {
            event: 'death',
            place,
            first: died.first,
            last: died.last,
            how: died.place === undefined ? 'presumed' : 'seen',
            sure: died.place === undefined ? 0.75 : 1,
          },
        ];
  }
  if (!last || !born || born.last >= beyondMemory || life.person?.living === true) return [];
  return [
    {
      event: 'death',
      place: last.place,
      first: last.last,
      last: Math.max(last.last, addYears(born.last, longLife)),
      how: 'presumed',
      sure: 0.35,
    },
  ];
}

/** Arrivals that are known, or the years between the last sighting over there and the first over here. */
function crossings({ origin, arrivals, seen, born }: Presence): LifeEntry[] {
  if (!origin) return [];
  const found: LifeEntry[] = [];
  const add = (country: string, first: number, last: number) => {
    const years = (last - first) / 365.25;
    const sure = years <= 1.1 ? 1 : years <= 5.1 ? 0.8 : years <= 12 ? 0.55 : 0.3;
    found.push({ event: 'arrival', place: country, first, last, how: 'presumed', sure });
    found.push({
      event: 'departure',
      place: origin.place,
      first: addYears(first, -1),
      last,
      how: 'presumed',
      sure,
    });
  };
  const known = arrivals.filter((one) => one.country !== origin.country);
  for (const { country, first, last } of known) add(country, first, last);
  const here = seen.find((one) => one.country !== origin.country);
  if (known.length === 0 && here) {
    const after =
      seen.findLast((one) => one.country === origin.country && one.last <= here.first)?.last ?? born?.first;
    if (after !== undefined && here.first - after < 40 * 366) add(here.country, after, here.first);
  }
  return found;
}

const oaths = /naturali[sz]|declaration|intention|petition|citizenship|first papers|final papers|oath/i;

function naturalizations(facts: Facts, presence: Presence): LifeEntry[] {
  const { life, origin, arrivals, born, stays, died } = presence;
  if (!origin) return [];
  const oath = life.refs
    .flatMap((ref) => {
      const event = mentionAt(facts, ref)?.mention.event;
      return event?.date !== undefined && oaths.test(eventWord(event.kind)) ? [closed(event.date)] : [];
    })
    .filter((days) => days !== undefined)
    .sort((a, b) => b.last - a.last)[0];
  const here = stays.filter((stay) => stay.country !== origin.country);
  return [...new Set(here.map((stay) => stay.country))].sort().flatMap((country): LifeEntry[] => {
    const there = here.filter((stay) => stay.country === country);
    const came = arrivals.find((one) => one.country === country);
    const from = Math.max(
      came?.first ?? there[0]!.first,
      born ? addYears(born.first, grown) : -Infinity,
      life.sex === 'F' ? wivesThemselves : -Infinity,
    );
    const until = Math.min(
      addYears(came?.last ?? there[0]!.first, mostNaturalized),
      died?.last ?? Infinity,
      there.at(-1)!.last + 366,
    );
    const last = oath && oath.last >= from ? Math.min(oath.last, until) : until;
    if (last <= from || !Number.isFinite(from)) return [];
    const at = there.find((stay) => stay.how === 'seen') ?? there[0]!;
    // Who came as a child became a citizen through the father more often than not.
    const child = born && came && came.first < addYears(born.first, 18);
    const sure = (came ? 1 : 0.8) * (child ? 0.4 : 1) * (life.sex === 'F' ? 0.5 : 1) * (oath ? 1.4 : 1);
    return [
      { event: 'naturalization', place: at.place, first: from, last, how: at.how, sure: Math.min(1, sure) },
    ];
  });
}

/** When a petition could be made at the earliest, after a declaration or an arrival. */
export function petitionFrom(first: number): number {
  return addYears(first, residenceYears);
}

/** The years at each place: as a grown person, at school, of an age to serve, and as somebody a history may tell of. */
function years(facts: Facts, { life, born, stays, died }: Presence): LifeEntry[] {
  const found: LifeEntry[] = [];
  for (const stay of longestAtEach(stays)) {
    const { place, how } = stay;
    const add = (event: EntryEvent, from: number, to: number) => {
      const first = Math.max(stay.first, from);
      const last = Math.min(stay.last, to);
      if (last >= first) found.push({ event, place, first, last, how, sure: sureOf[how] });
    };
    const aged = (age: number, side: 'first' | 'last') =>
      born ? addYears(born[side], age) : side === 'first' ? -Infinity : Infinity;
    add('residence', aged(grown, 'first'), Infinity);
    if (born) add('childhood', aged(schooling[0], 'first'), aged(schooling[1], 'last'));
    if (life.sex !== 'F') add('service', aged(arms[0], 'first'), aged(arms[1], 'last'));
    add('biography', aged(grown, 'first'), Infinity);
  }
  // A history tells of the pioneers too, on the word of their children.
  const last = stays.at(-1);
  if (died && last && familiesOf(facts).children(life.id).length > 0)
    found.push({
      event: 'biography',
      place: last.place,
      first: died.last,
      last: addYears(died.last, 40),
      how: 'presumed',
      sure: 0.4,
    });
  return found;
}

/** The stays of each place as one, from the first day to the last, with the surest of them. */
function longestAtEach(stays: readonly Stay[]): Stay[] {
  const order = ['seen', 'between', 'presumed'] as const;
  const byPlace = new Map<string, Stay>();
  for (const stay of stays) {
    const known = byPlace.get(stay.place);
    byPlace.set(
      stay.place,
      known
        ? {
            ...known,
            first: Math.min(known.first, stay.first),
            last: Math.max(known.last, stay.last),
            how: order.find((how) => known.how === how || stay.how === how)!,
          }
        : stay,
    );
  }
  return [...byPlace.values()];
}

/** Whether a place is a whole country, so that no county or parish of it is known. */
export function isCountry(facts: Facts, place: string): boolean {
  return containmentOf(facts).countries(place).includes(place);
}
