/**
 * Who is presumed living. A person is presumed living unless a death or burial, or a birth, dated mention, parenthood
 * or marriage that puts the birth more than `livingYears` ago, says otherwise: when in doubt, living. The cut-off of
 * 110 years is the trade's usual one (*common practice*).
 */
import { addYears } from '../model/days.ts';
import { daySpan } from '../model/edtf.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import { birthSpan } from './ages.ts';
import { once } from './once.ts';
import { gather } from '../model/multimap.ts';

/** Nobody is taken to have become a parent, or to have married, younger than this; a low number errs toward living. */
const youngest = 12;

/** Events after which a person is dead. */
const ends = new Set(['death', 'burial', 'funeral', 'probate', 'cremation', 'inquest']);

/** The ids of everyone living or presumed so on a day (a day number). */
export function livingPeople(facts: Facts, today: number): Set<string> {
  const living = new Set<string>();
  for (const person of facts.people.values()) {
    if (person.living ?? presumed(facts, person.id, today)) living.add(person.id);
  }
  return living;
}

function presumed(facts: Facts, id: string, today: number): boolean {
  const person = facts.people.get(id)!;
  if (person.died && (person.died.date !== undefined || person.died.place !== undefined)) return false;
  for (const ref of person.mentions) {
    const event = mentionAt(facts, ref)?.mention.event;
    if (event && ends.has(event.kind) && event.date !== undefined) return false;
  }
  const latest = latestBirth(facts)(id);
  return latest === null || addYears(latest, facts.site.livingYears) >= today;
}

/** The latest day a person can have been born on, or `null` when nothing says. */
const latestBirth = once((facts: Facts) => {
  const children = new Map<string, string[]>();
  const marriages = new Map<string, string[]>();
  for (const person of facts.people.values()) {
    for (const { person: parent } of person.parents) gather(children, parent, person.id);
    for (const { person: spouse, married } of person.spouses) {
      if (married === undefined) continue;
      for (const one of [person.id, spouse]) gather(marriages, one, married);
    }
  }
  const known = new Map<string, number | null>();
  const bound = (id: string, path: ReadonlySet<string>): number | null => {
    const done = known.get(id);
    if (done !== undefined) return done;
    const person = facts.people.get(id);
    if (!person || path.has(id)) return null;
    const bounds: (number | null)[] = [birthSpan(facts, id).last];
    if (person.born?.date !== undefined) bounds.push(daySpan(person.born.date).last);
    for (const ref of person.mentions) {
      const at = mentionAt(facts, ref);
      for (const date of [
        at?.record.made,
        at?.mention.event?.date,
        at?.mention.immigrated,
        at?.mention.voyage?.arrived,
      ])
        if (date !== undefined) bounds.push(daySpan(date).last);
    }
    for (const date of marriages.get(id) ?? []) bounds.push(younger(daySpan(date).last));
    for (const child of children.get(id) ?? []) bounds.push(younger(bound(child, new Set(path).add(id))));
    const given = bounds.filter((day) => day !== null);
    const latest = given.length > 0 ? Math.min(...given) : null;
    known.set(id, latest);
    return latest;
  };
  return (id: string) => bound(id, new Set());
});

function younger(day: number | null): number | null {
  return day === null ? null : addYears(day, -youngest);
}
