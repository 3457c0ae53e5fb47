/**
 * What records and the person's own entry date in one life: arrivals, papers of naturalization, baptisms, deaths and
 * the days someone was seen alive. Each with its days, how far a memory may have them wrong, and where the author
 * wrote it.
 */
import { censusDay } from '../catalogue/census-days.ts';
import { addYears, civil } from '../model/days.ts';
import { daySpan } from '../model/edtf.ts';
import { mentionIndex, type Facts } from '../model/facts.ts';
import type { ValuePath } from '../model/finding.ts';
import type { Person } from '../model/person.ts';
import type { Mention, SourceRecord } from '../model/record.ts';
import { birthOrBaptism, eventWord } from './event-kinds.ts';

/** One dated thing of a life. */
export interface LifeFact {
  what: 'arrival' | 'naturalization' | 'birth' | 'baptism' | 'death' | 'alive';
  /** The author's word for it, or what the record is: “declaration”, “marriage”, “census”. */
  kind: string;
  /** The date as written; a census may give none but that of its day. */
  date: string;
  /** First and last day it may mean; infinite where open. */
  first: number;
  last: number;
  /** Said years afterwards, so that the year may be off. */
  remembered: boolean;
  /** `record#mention`, or `undefined` where the person's own entry says it. */
  ref: string | undefined;
  /** Where it is written: the entry and the path of the value in it. */
  entry: `record:${string}` | `person:${string}`;
  path: ValuePath;
  mention: Mention | undefined;
}

/** Dates an author marks as about or perhaps are taken so many years wider each way (common practice). */
const aboutYears = 5;

/** First and last day of a date, infinite where open, wider where it is marked as doubtful. */
export function daysOf(date: string): { first: number; last: number } {
  const { first, last } = daySpan(date);
  const wider = /[?~%]/.test(date) ? aboutYears : 0;
  return {
    first: first === null ? -Infinity : addYears(first, -wider),
    last: last === null ? Infinity : addYears(last, wider),
  };
}

/** Everything dated of a person, in the order of their mentions, what the person's own entry says last. */
export function lifeFacts(facts: Facts, person: Person): LifeFact[] {
  const found: LifeFact[] = [];
  for (const ref of person.mentions) {
    const at = ref.indexOf('#');
    const record = facts.records.get(ref.slice(0, at));
    const index = record ? mentionIndex(record, ref.slice(at + 1)) : -1;
    if (record && index >= 0) found.push(...ofMention(facts, record, index));
  }
  person.spouses.forEach(({ married }, index) => {
    if (married !== undefined)
      found.push({
        what: 'alive',
        kind: 'marriage',
        date: married,
        ...daysOf(married),
        remembered: false,
        ref: undefined,
        entry: `person:${person.id}`,
        path: ['spouses', index, 'married'],
        mention: undefined,
      });
  });
  if (person.died?.date !== undefined)
    found.push({
      what: 'death',
      kind: 'death',
      date: person.died.date,
      ...daysOf(person.died.date),
      remembered: false,
      ref: undefined,
      entry: `person:${person.id}`,
      path: ['died', 'date'],
      mention: undefined,
    });
  return found;
}

const naturalizing = /naturali[sz]|citizenship|denization|intention|(?:first|second|final) papers/;
/** Words that a court of another kind uses too. */
const oath = /declaration|petition|oath/;
const deaths = new Set(['death', 'burial', 'funeral', 'cremation', 'inquest']);
/** Events that only the living take part in. */
const alive = new Set(['marriage', 'confirmation', 'licence', 'banns', 'enlistment', 'muster', 'arrival']);

function ofMention(facts: Facts, record: SourceRecord, index: number): LifeFact[] {
  const mention = record.mentions[index]!;
  const made = record.made === undefined ? undefined : daySpan(record.made).first;
  const fact = (
    what: LifeFact['what'],
    kind: string,
    date: string,
    path: ValuePath,
    remembered = false,
  ): LifeFact => ({
    what,
    kind,
    date,
    ...daysOf(date),
    remembered,
    ref: `${record.id}#${mention.id}`,
    entry: `record:${record.id}`,
    path: ['mentions', index, ...path],
    mention,
  });
  const found: LifeFact[] = [];
  const { voyage, immigrated, event } = mention;
  if (voyage?.arrived !== undefined && voyage.arrived !== '..') {
    const { last } = daySpan(voyage.arrived);
    const late = made === undefined || made === null || (last !== null && made > last + 366);
    found.push(fact('arrival', 'arrival', voyage.arrived, ['voyage', 'arrived'], late));
  } else if (immigrated !== undefined)
    found.push(fact('arrival', 'immigration', immigrated, ['immigrated'], true));

  if (event?.date !== undefined) {
    const kind = eventWord(event.kind);
    const what = deaths.has(kind)
      ? 'death'
      : (birthOrBaptism(kind) ??
        (isNaturalization(facts, record, kind) ? 'naturalization' : alive.has(kind) ? 'alive' : undefined));
    if (what !== undefined) found.push(fact(what, event.kind, event.date, ['event', 'date']));
  }
  if (mention.born !== undefined) found.push(fact('birth', 'birth', mention.born, ['born'], true));
  const census = counted(facts, record, mention, made ?? undefined);
  if (census !== undefined) found.push({ ...fact('alive', 'census', census, ['age']) });
  return found;
}

function isNaturalization(facts: Facts, record: SourceRecord, kind: string): boolean {
  if (naturalizing.test(kind)) return true;
  if (!oath.test(kind)) return false;
  return record.series === undefined || facts.series.get(record.series)?.kind === 'naturalization';
}

/** The day on which a census that gives someone's age counted them among the living. */
function counted(
  facts: Facts,
  record: SourceRecord,
  mention: Mention,
  made: number | undefined,
): string | undefined {
  if (record.series === undefined || mention.age === undefined || !mention.present) return undefined;
  if (facts.series.get(record.series)?.kind !== 'census') return undefined;
  return censusDay(record.series, made === undefined ? {} : { year: civil(made).year })?.day ?? record.made;
}
