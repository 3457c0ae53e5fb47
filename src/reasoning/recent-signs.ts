/**
 * What shows that somebody may be of our own time, whatever else would have them older. A year is easily written 1874
 * for 1974, and a register is bound with another; where two dates of one person can’t both be true nobody knows which
 * is wrong, so the later one decides: when in doubt, living.
 *
 * - a birth date in the person’s own entry or in a mention of theirs, or a record’s birth or baptism of them;
 * - an age, counted back from the day it was stated;
 * - having written, signed or told a record: whoever did was alive then, which no bound of another century undoes.
 */
import { readAge } from '../model/age.ts';
import { addYears } from '../model/days.ts';
import { mentionAt, type Facts } from '../model/facts.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import { birthOrBaptism } from './event-kinds.ts';
import { lastDay, yearsSince, type Bound } from './latest-birth.ts';

/** What people do to a record who must be alive for it (*common practice*). */
const makers = new Set(
  (
    'writer author correspondent sender signer signatory informant declarant deponent affiant interviewee narrator ' +
    'compiler transcriber indexer editor translator photographer contributor owner collector researcher reporter ' +
    'donor custodian recipient addressee'
  ).split(' '),
);

/**
 * The last of the signs that put somebody’s birth so late that they would count as living on a day: `bound` is what
 * everything else says of them. `who` is a person’s id or, of a mention of nobody’s, `record#mention`.
 */
export function recentSign(
  facts: Facts,
  who: string,
  bound: Bound | undefined,
  isLate: (day: number) => boolean,
): Bound | undefined {
  const person = facts.people.get(who);
  let latest: Bound | undefined;
  const take = (sign: Bound | undefined) => {
    if (sign && isLate(sign.day) && (!latest || sign.day > latest.day)) latest = sign;
  };
  const born = person?.born?.date;
  const day = born === undefined ? null : lastDay(born);
  if (born !== undefined && day !== null) take({ day, fact: { kind: 'born', date: born } });
  for (const ref of person?.mentions ?? (who.includes('#') ? [who] : [])) {
    const at = mentionAt(facts, ref);
    if (!at) continue;
    for (const sign of birthsIn(facts, at.record, at.mention, ref)) take(sign);
    const made = madeOn(at.record, at.mention);
    if (made && bound && made.day > addYears(bound.day, facts.site.livingYears))
      take({ day: made.day, fact: { kind: 'named', date: made.date, ref } });
  }
  return latest;
}

function* birthsIn(facts: Facts, record: SourceRecord, mention: Mention, ref: string): Generator<Bound> {
  const { born, event, age } = mention;
  for (const date of [born, event && birthOrBaptism(event.kind) ? event.date : undefined]) {
    const day = date === undefined ? null : lastDay(date);
    if (date !== undefined && day !== null) yield { day, fact: { kind: 'born', date, ref } };
  }
  const read = age === undefined ? undefined : readAge(age);
  if (read === undefined || typeof read === 'string') return;
  // Of a copy only the day it was copied may be known, which says nothing of the age.
  const stated = event?.date ?? (record.form === 'derivative' ? undefined : record.made);
  const day = stated === undefined ? null : lastDay(stated);
  if (stated === undefined || day === null) return;
  yield {
    day: addYears(day, -yearsSince(facts, read)),
    fact: { kind: 'age', date: stated, ref },
  };
}

/** The day on which somebody made a record or had a part in making it, if that is what the mention says. */
function madeOn(record: SourceRecord, mention: Mention): { day: number; date: string } | undefined {
  const date = record.made ?? record.cite?.issued;
  if (date === undefined || !mention.present || !makers.has(mention.role?.trim().toLowerCase() ?? ''))
    return undefined;
  const day = lastDay(date);
  return day === null ? undefined : { day, date };
}
