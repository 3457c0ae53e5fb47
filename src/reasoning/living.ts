/**
 * Who is presumed living. A person is presumed living unless a death or burial, or something that puts the birth more
 * than `livingYears` ago, says otherwise: when in doubt, living. The cut-off of 110 years where nothing else is known
 * is the trade’s usual one (*common practice, from memory*); archives take a span of 100 for closing records.
 *
 * Each statement bounds the birth by itself and the earliest bound decides, so that saying less never makes anybody
 * count as dead; nothing but the day they were born bounds anybody, so that a later today never makes anybody live
 * again. What is not certain is widened toward the later birth. How a bound follows from a statement, and from the
 * bounds of relatives, stands in `latest-birth.ts`.
 *
 * One thing is stronger than a bound: what shows that they are of a later time (`recent-signs.ts`).
 *
 * A mention that belongs to nobody is judged in the same way: on a record of last year it may well name somebody alive.
 */
import { addYears } from '../model/days.ts';
import { daySpan } from '../model/edtf.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention } from '../model/record.ts';
import { endsLife, eventWord } from './event-kinds.ts';
import { kinOf } from './kin.ts';
import { latestBirths, type Bound } from './latest-birth.ts';
import { recentSign } from './recent-signs.ts';

/** Why somebody counts as dead or living. */
export type LivingFact =
  /** The author says so in the person’s entry. */
  | { kind: 'said' }
  /** The person’s entry tells of the death. */
  | { kind: 'died'; date: string | undefined }
  /** A record tells of it: of the death or burial, or that they had died. */
  | { kind: 'end'; ref: string; what: string; date: string | undefined }
  /** The latest day on which they can have been born decides. */
  | { kind: 'born-by'; bound: Bound }
  /** A sign of our own time decides, though something else would have them older: `against`. */
  | { kind: 'recent'; bound: Bound; against?: Bound }
  /** Nothing says when they lived. */
  | { kind: 'nothing' };

export interface Presumption {
  living: boolean;
  because: LivingFact;
  /** The last day (a day number) on which they count as living by what is known now; `null` where none can be told. */
  until: number | null;
}

/**
 * Parts in such a record that are not the dead one’s: an author may have given the event to everybody the record names
 * (*common practice*). Of old records it makes no difference, since being named in them is enough.
 */
const others =
  /\b(?:informant|undertaker|witness|mourner|survivor|survived by|heir|executor|executrix|physician|doctor|registrar|clerk|priest|minister|vicar|curate|sexton|reporter|declarant|owner|writer|donor|(?:grand|step|half-)?(?:son|daughter|child|father|mother|parent|brother|sister|sibling)s?(?:-in-law)?|husband|wife|widow|widower|spouse|niece|nephew|cousin|aunt|uncle|friend|neighbou?r)\b/i;
/** Events after a death that concern the heirs and witnesses as well. */
const afterEnds = new Set(['probate', 'inquest', 'funeral']);
/** What the dead are called in such records (*common practice*). */
const theDead = new Set([
  'deceased',
  'the deceased',
  'decedent',
  'testator',
  'testatrix',
  'intestate',
  'dead',
  'buried',
]);

/** Whether a person or a mention of nobody’s (`record#mention`) is presumed living on a day (a day number), and why. */
export function presumptionOf(facts: Facts, who: string, today: number): Presumption {
  const person = facts.people.get(who);
  if (person?.living !== undefined) return { living: person.living, because: { kind: 'said' }, until: null };
  const death = deathOf(facts, who, today);
  if (death) return { living: false, because: death, until: null };
  const bound = latestBirths(facts).get(who);
  if (bound && untilOf(facts, bound.day) < today) {
    const recent = recentSign(facts, who, bound, (day) => untilOf(facts, day) >= today);
    if (recent)
      return {
        living: true,
        because: { kind: 'recent', bound: recent, against: bound },
        until: untilOf(facts, recent.day),
      };
  }
  if (!bound) return { living: true, because: { kind: 'nothing' }, until: null };
  const until = untilOf(facts, bound.day);
  return { living: until >= today, because: { kind: 'born-by', bound }, until };
}

const untilOf = (facts: Facts, born: number) => addYears(born, facts.site.livingYears);

/** The ids of everyone living or presumed so on a day (a day number). */
export function livingPeople(facts: Facts, today: number): Set<string> {
  return new Set([...facts.people.keys()].filter((id) => presumptionOf(facts, id, today).living));
}

/** The mentions that belong to nobody and may name somebody living on a day, as `record#mention`. */
export function livingMentions(facts: Facts, today: number): Set<string> {
  const { owner } = kinOf(facts);
  const living = new Set<string>();
  for (const record of facts.records.values())
    for (const { id } of record.mentions) {
      const ref = `${record.id}#${id}`;
      if (owner(ref) === undefined && presumptionOf(facts, ref, today).living) living.add(ref);
    }
  return living;
}

function deathOf(facts: Facts, who: string, today: number): LivingFact | undefined {
  const person = facts.people.get(who);
  const died = person?.died;
  if (died && (died.date !== undefined || died.place !== undefined) && hasCome(died.date, today))
    return { kind: 'died', date: died.date };
  for (const ref of person?.mentions ?? (who.includes('#') ? [who] : [])) {
    const at = mentionAt(facts, ref);
    const end = at && endOf(at.mention);
    if (!end) continue;
    const date = at.mention.event?.date ?? at.record.made;
    if (hasCome(date, today)) return { kind: 'end', ref, what: end, date };
  }
  return undefined;
}

/** What of a mention says that it is of somebody dead. */
function endOf({ event, role }: Mention): string | undefined {
  const kind = event && eventWord(event.kind);
  const isTheDead = role !== undefined && theDead.has(role.trim().toLowerCase());
  if (kind !== undefined && endsLife(kind) && event!.date !== undefined)
    return isTheDead || role === undefined || !others.test(role) ? kind : undefined;
  if (!isTheDead) return undefined;
  return kind !== undefined && afterEnds.has(kind) ? kind : role;
}

/**
 * Whether a death has come: one that lies ahead has not, whoever wrote it down, and “in 2005 or after” says only that
 * they were alive then, as an open date on a gravestone says that the stone waits for them.
 */
function hasCome(date: string | undefined, today: number): boolean {
  if (date === undefined) return true;
  const { first, last } = daySpan(date);
  return last !== null && (last <= today || (first !== null && first <= today));
}
