/**
 * The latest day on which somebody can have been born: of a person, and of each mention that belongs to nobody.
 *
 * What bounds a birth, each by itself:
 * - a birth date, widened where it is marked as about or perhaps; a birth or baptism in a record;
 * - being named: whoever a record names was born when it was made, or when it was published, or when its series ends;
 * - an age, counted back from the last day on which the record can have been made, with the tolerance of the site on
 *   top, since ages wobble;
 * - a marriage, or standing as bride, groom, wife, husband or head: at least 16 years before (the age archives assume
 *   for an adult of unknown age; for marriages, our choice of it);
 * - a child: at least 13 years before the child, or before the record that calls them a parent;
 * - a parent: at most 60 years after the mother was born, 80 after the father or one whose sex is not given, and not
 *   more than a year after the parent’s death;
 * - a spouse: whoever married somebody was 16 within that one’s life, which is taken to last `livingYears`.
 *
 * Parents, children and spouses are those of the person files, and those that a record’s mentions say of each other:
 * a stated relation is as good as the record’s word for anything else. Other relations (siblings, neighbours,
 * grandchildren) are not used: they bound little, and mean much less surely one thing. The years are *common practice,
 * from memory*, and chosen so that a doubt leaves people living.
 */
import { readAge, type Age } from '../model/age.ts';
import { addYears, dayNumber } from '../model/days.ts';
import { daySpan } from '../model/edtf.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import { endsLife } from './event-kinds.ts';
import { closestKin, kinOf } from './kin.ts';
import { daysOf } from './life-facts.ts';
import { once } from './once.ts';

/** What a bound rests on, with the date and the record where there are any. */
export interface BoundFact {
  kind:
    | 'born'
    | 'died'
    | 'named'
    | 'age'
    | 'event'
    | 'arrived'
    | 'adult'
    | 'married'
    | 'parent-in-record'
    | 'spouse-in-record'
    | 'child-of'
    | 'parent-of'
    | 'spouse-of'
    | 'parent-died'
    | 'spouse-died';
  date?: string;
  /** `record#mention` */
  ref?: string;
}

/** The latest day of a birth (a day number) and what it follows from; `via` is the relative whose bound it rests on. */
export interface Bound {
  day: number;
  fact: BoundFact;
  via?: { who: string; bound?: Bound };
}

/** Ages that are assumed where none is known; see the head of this file. */
export const assumedAges = {
  married: 16,
  adult: 16,
  parent: 13,
  oldestMother: 60,
  oldestFather: 80,
} as const;

/** No immigrant's papers lead back further. */
const registersBegin = dayNumber(1400, 1, 1);

const adults = new Set([
  'head',
  'head of family',
  'head of household',
  'householder',
  'wife',
  'husband',
  'widow',
  'widower',
  'bride',
  'groom',
  'bridegroom',
]);

/** What leads from the bound of one to that of another. */
interface Edge {
  to: string;
  years: number;
  fact: BoundFact;
}

/** The bounds of all people and of all mentions that belong to nobody, worked out once for a corpus. */
export const latestBirths: (facts: Facts) => ReadonlyMap<string, Bound> = once((facts: Facts) => {
  const bounds = new Map<string, Bound>();
  const edges = new Map<string, Edge[]>();
  const diedBy = new Map<string, { day: number; date: string }>();
  const { owner } = kinOf(facts);
  const bound = (who: string, date: number | null, years: number, fact: BoundFact, via?: Bound['via']) => {
    // A year before the parish registers is sooner mistyped, 1085 for 1985, than the year of anybody's mention.
    if (date === null || date < registersBegin) return;
    const known = bounds.get(who);
    // Years are taken off a day only where that can make it the earliest.
    if (known !== undefined && date - 366 * Math.max(0, -years) > known.day) return;
    const day = years === 0 ? date : addYears(date, years);
    if (known === undefined || day < known.day) bounds.set(who, { day, fact, ...(via ? { via } : {}) });
  };
  const edge = (from: string, to: string, years: number, fact: BoundFact) => {
    if (from === to) return;
    const list = edges.get(from);
    if (list) list.push({ to, years, fact });
    else edges.set(from, [{ to, years, fact }]);
  };
  const isMother = (who: string) => facts.people.get(who)?.sex === 'F';
  const parentAndChild = (parent: string, child: string, ref?: string) => {
    const at = ref === undefined ? {} : { ref };
    edge(child, parent, -assumedAges.parent, { kind: 'parent-of', ...at });
    const oldest = isMother(parent) ? assumedAges.oldestMother : assumedAges.oldestFather;
    edge(parent, child, oldest, { kind: 'child-of', ...at });
  };
  const spouses = (one: string, other: string, ref?: string) => {
    const at = ref === undefined ? {} : { ref };
    const years = facts.site.livingYears - assumedAges.married;
    edge(one, other, years, { kind: 'spouse-of', ...at });
    edge(other, one, years, { kind: 'spouse-of', ...at });
  };

  for (const person of facts.people.values()) {
    const { id, born, died } = person;
    if (born?.date !== undefined) bound(id, lastDay(born.date), 0, { kind: 'born', date: born.date });
    if (died?.date !== undefined) {
      dies(diedBy, id, died.date);
      // Whoever died, and be it in or after a year, was born by then.
      bound(id, daySpan(died.date).last ?? lastDayOfStart(died.date), 0, { kind: 'died', date: died.date });
    }
    for (const { person: parent } of person.parents) parentAndChild(parent, id);
    for (const { person: spouse, married } of person.spouses) {
      spouses(id, spouse);
      if (married === undefined) continue;
      for (const one of [id, spouse])
        bound(one, lastDay(married), -assumedAges.married, { kind: 'married', date: married });
    }
  }
  for (const record of facts.records.values()) {
    const made = madeBy(facts, record);
    const said = made.date === undefined ? {} : { date: made.date };
    for (const mention of record.mentions) {
      const ref = `${record.id}#${mention.id}`;
      const who = owner(ref) ?? ref;
      ofMention(facts, mention, made, (day, years, kind, date) => {
        const known = bounds.get(who);
        if (day === null || (known !== undefined && years >= 0 && day >= known.day)) return;
        bound(who, day, years, { kind, ...(date === undefined ? {} : { date }), ref });
      });
      if (mention.event?.date !== undefined && endsLife(mention.event.kind))
        dies(diedBy, who, mention.event.date);
      for (const { as, of } of mention.relations) {
        const other = of.includes('#') ? of : `${record.id}#${of}`;
        if (!mentionAt(facts, other)) continue;
        const them = owner(other) ?? other;
        const kind = closestKin(as);
        const [parent, child] = kind === 'parent' ? [who, them] : kind === 'child' ? [them, who] : [];
        if (parent !== undefined && child !== undefined) {
          parentAndChild(parent, child, ref);
          bound(parent, made.day, -assumedAges.parent, { kind: 'parent-in-record', ...said, ref });
        } else if (kind === 'spouse') {
          spouses(who, them, ref);
          for (const one of [who, them])
            bound(one, made.day, -assumedAges.married, { kind: 'spouse-in-record', ...said, ref });
        }
      }
      if (mention.copies !== undefined)
        edge(owner(mention.copies) ?? mention.copies, who, 0, { kind: 'named', ref });
    }
  }
  for (const [who, { day, date }] of diedBy)
    for (const { to, fact } of edges.get(who) ?? []) {
      if (fact.kind === 'child-of') bound(to, day, 1, { kind: 'parent-died', date }, { who });
      if (fact.kind === 'spouse-of')
        bound(to, day, -assumedAges.married, { kind: 'spouse-died', date }, { who });
    }
  carry(bounds, edges);
  return bounds;
});

/**
 * Carries the bounds along the relations until none gets earlier. Nobody’s bound rests on their own: where parents go
 * round in a circle, which is an error, going round it again would make everybody older without end.
 */
function carry(bounds: Map<string, Bound>, edges: ReadonlyMap<string, readonly Edge[]>): void {
  const waiting = [...bounds].sort(([, a], [, b]) => a.day - b.day).map(([who]) => who);
  const queued = new Set(waiting);
  for (let next = 0; next < waiting.length; next++) {
    const who = waiting[next]!;
    queued.delete(who);
    const own = bounds.get(who)!;
    for (const { to, years, fact } of edges.get(who) ?? []) {
      const day = years === 0 ? own.day : addYears(own.day, years);
      const known = bounds.get(to);
      if ((known && known.day <= day) || restsOn(own, to)) continue;
      bounds.set(to, { day, fact, via: { who, bound: own } });
      if (queued.has(to)) continue;
      queued.add(to);
      waiting.push(to);
    }
  }
}

/** Chains of relatives longer than this say nothing any more. */
const longest = 40;

function restsOn(bound: Bound, who: string): boolean {
  let steps = 0;
  for (let at: Bound['via'] = bound.via; at; at = at.bound?.via)
    if (at.who === who || ++steps > longest) return true;
  return false;
}

/** What one mention says by itself. */
function ofMention(
  facts: Facts,
  mention: Mention,
  made: Made,
  take: (day: number | null, years: number, kind: BoundFact['kind'], date: string | undefined) => void,
): void {
  take(made.day, 0, 'named', made.date);
  const { event, voyage, immigrated, born } = mention;
  if (event?.date !== undefined) {
    take(lastDay(event.date), 0, 'event', event.date);
    if (isWedding(event.kind) && isAdult(mention))
      take(lastDay(event.date), -assumedAges.married, 'married', event.date);
  }
  for (const date of [immigrated, voyage?.sailed, voyage?.arrived])
    if (date !== undefined) take(lastDay(date), 0, 'arrived', date);
  if (born !== undefined) take(lastDay(born), 0, 'born', born);
  if (isAdult(mention)) take(made.day, -assumedAges.adult, 'adult', made.date);
  const age = mention.age === undefined ? undefined : readAge(mention.age);
  if (age === undefined || typeof age === 'string') return;
  take(made.day, -yearsSince(facts, age), 'age', made.date);
}

/** The fewest years that somebody of a stated age has surely lived, ages wobbling as far as the site lets them. */
export function yearsSince(facts: Facts, age: Age): number {
  const years = age.unit === 'y' ? age.years : Math.max(age.years, Math.floor(age.months / 12));
  return years - Math.ceil(facts.site.ageTolerance);
}

function isWedding(kind: string): boolean {
  return /^(?:marriage|wedding)$/i.test(kind);
}

function isAdult({ role }: Mention): boolean {
  return role !== undefined && adults.has(role.trim().toLowerCase());
}

interface Made {
  day: number | null;
  date: string | undefined;
}

/**
 * The last day on which a record can have been made: what the author says of it, else when it came out, else when its
 * series ends. A copy names no later people than what it was made from, so of a copy the earlier of the two counts.
 */
function madeBy(facts: Facts, record: SourceRecord): Made {
  const said: Made[] = [record.made, record.cite?.issued].flatMap((date) => {
    const day = date === undefined ? null : lastDay(date);
    return day === null ? [] : [{ day, date }];
  });
  if (said.length > 1 && record.form === 'derivative') said.sort((a, b) => a.day! - b.day!);
  const series = record.series === undefined ? undefined : facts.series.get(record.series);
  const end = series?.to === undefined ? null : lastDay(series.to);
  return said[0] ?? (end === null ? { day: null, date: undefined } : { day: end, date: series!.to });
}

/** Of a date that is open at its end, the last day of what it begins with; `null` of any other. */
function lastDayOfStart(date: string): number | null {
  const start = /^([^/[\]]+)\/(?:\.\.)?$/.exec(date)?.[1];
  return start === undefined ? null : lastDay(start);
}

/** The last day of a date, later where it is marked as doubtful; `null` where it is open. */
export function lastDay(date: string): number | null {
  const { last } = daysOf(date);
  return Number.isFinite(last) ? last : null;
}

function dies(diedBy: Map<string, { day: number; date: string }>, who: string, date: string): void {
  const last = lastDay(date);
  const known = diedBy.get(who);
  if (last !== null && (!known || last < known.day)) diedBy.set(who, { day: last, date });
}
