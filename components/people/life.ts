/**
 * A life as one dated line: what the author takes to have happened, with the records that say so, and beside it what
 * else the records say happened. Everything that is not dated, and who somebody merely stood beside, is left to the
 * list of records.
 */
import type { Dossier, PersonView } from '../../src/dossier/types.ts';
import type { Mention } from '../../src/model/record.ts';
import { dateOf, sortableDate } from '../layout/lookup.ts';
import { byText } from '../layout/words.ts';
import { byBirth } from './kinfolk.ts';

type MentionOf = PersonView['mentions'][number];

/** A record that says something of a step of a life. */
export interface Source {
  ref: string;
  record: string;
  title: string;
  language: string | undefined;
}

export interface LifeStep {
  kind: 'born' | 'married' | 'child' | 'died' | 'event' | 'voyage' | 'lived';
  date: string | undefined;
  /** The author's own entry says it; else a record alone. */
  isOwn: boolean;
  /** Where, by id, and where only a record says it, as that spells it. */
  place: string | undefined;
  reading: string | undefined;
  /** Of a marriage the husband or wife, of a birth the child. */
  other: string | undefined;
  /** The mention a step comes from that no entry says: its event, voyage, age and occupation. */
  mention: Mention | undefined;
  /** The age and occupation of the mention are those of this day, not of a later one it was told on. */
  asThen: boolean;
  sources: Source[];
}

const births = /^birth$/i;
const baptisms = /^(?:baptism|christening)$/i;
const marriages = /^marriage$/i;
const deaths = /^death$/i;

/** The steps of a life, earliest first. */
export function lifeOf(dossier: Dossier, view: PersonView): LifeStep[] {
  const steps: LifeStep[] = [];
  const add = (step: Pick<LifeStep, 'kind' | 'date'> & Partial<LifeStep>): LifeStep => {
    const whole = {
      isOwn: false,
      place: undefined,
      reading: undefined,
      other: undefined,
      mention: undefined,
      asThen: true,
      sources: [],
      ...step,
    };
    steps.push(whole);
    return whole;
  };
  const { person } = view;
  const born = person.born && add({ kind: 'born', isOwn: true, ...lifeEnd(person.born) });
  const died = person.died && add({ kind: 'died', isOwn: true, ...lifeEnd(person.died) });
  const married = view.spouses
    .filter((spouse) => dossier.people.has(spouse.person))
    .map((spouse) =>
      add({ kind: 'married', isOwn: true, date: spouse.married, place: spouse.place, other: spouse.person }),
    );
  // The record of a child's birth or baptism says of the parent that the child was born.
  const ofChildren = new Map<string, LifeStep>();
  for (const id of byBirth(dossier, view.children)) {
    const child = dossier.people.get(id)!;
    const at = child.mentions.filter(
      ({ mention: { event } }) => event && (births.test(event.kind) || baptisms.test(event.kind)),
    );
    const date =
      child.person.born?.date ?? at.find(({ mention }) => mention.event?.date)?.mention.event?.date;
    if (date === undefined) continue;
    const step = add({ kind: 'child', isOwn: true, date, place: child.person.born?.place, other: id });
    for (const one of at) {
      step.sources.push(...sourceOf(dossier, one));
      if (!ofChildren.has(one.record)) ofChildren.set(one.record, step);
    }
  }
  const events = new Map<string, LifeStep>();
  for (const one of view.mentions) {
    const { mention, record } = one;
    const found = dossier.records.get(record);
    if (!found) continue;
    const source = sourceOf(dossier, one);
    const { event, voyage } = mention;
    const kind = event?.kind.trim().toLowerCase() ?? '';
    const known = births.test(kind)
      ? born
      : deaths.test(kind)
        ? died
        : marriages.test(kind)
          ? marriageOf(married, event?.date)
          : undefined;
    if (known) known.sources.push(...source);
    if (event && !known) {
      const step = { kind: 'event' as const, date: event.date, reading: event.place };
      once(events, `${kind} ${event.date ?? record}`, () => add({ ...step, mention })).sources.push(
        ...source,
      );
    }
    if (voyage) {
      const date = voyage.arrived ?? voyage.sailed ?? dateOf(found);
      // A mention with an event of its own, such as an oath, gives the age at that.
      const asThen = event?.date === undefined;
      once(events, `voyage ${date ?? record}`, () =>
        add({ kind: 'voyage', date, mention, asThen }),
      ).sources.push(...source);
    }
    if (event || voyage || !mention.present || ofChildren.has(record)) continue;
    if (mention.residence === undefined && mention.household === undefined) continue;
    add({
      kind: 'lived',
      date: dateOf(found),
      place: mention.residence === undefined ? found.record.place : undefined,
      reading: mention.residence,
      mention,
      sources: source,
    });
  }
  const rank = (step: LifeStep) => (step.kind === 'born' ? 0 : step.kind === 'died' ? 2 : 1);
  return steps
    .filter((step) => step.date !== undefined || step.isOwn)
    .sort(
      (a, b) =>
        // Born first and died before what came after, whatever is known of the dates.
        Number(rank(b) === 0) - Number(rank(a) === 0) ||
        byText(sortableDate(a.date), sortableDate(b.date)) ||
        rank(a) - rank(b),
    );
}

const lifeEnd = ({ date, place }: { date?: string | undefined; place?: string | undefined }) => ({
  date,
  place,
});

function once(known: Map<string, LifeStep>, key: string, make: () => LifeStep): LifeStep {
  const step = known.get(key) ?? make();
  known.set(key, step);
  return step;
}

/** The marriage an event of a record means: that of its year, or the only one. */
function marriageOf(married: readonly LifeStep[], date: string | undefined): LifeStep | undefined {
  const year = sortableDate(date).slice(0, 4);
  const sameYear = married.filter(
    (one) => one.date !== undefined && sortableDate(one.date).slice(0, 4) === year,
  );
  if (sameYear.length > 0 || date !== undefined) return sameYear[0];
  return married.length === 1 ? married[0] : undefined;
}

function sourceOf(dossier: Dossier, { ref, record }: MentionOf): Source[] {
  const found = dossier.records.get(record)?.record;
  return found ? [{ ref, record, title: found.title, language: found.language }] : [];
}

/** A name as records write it, with where it stands. */
export interface WrittenName {
  name: string;
  at: { ref: string; title: string; date: string | undefined; language: string | undefined }[];
}

/** The names records give somebody, the commonest first, and how many records give none. */
export function writtenNames(dossier: Dossier, view: PersonView): { names: WrittenName[]; unnamed: number } {
  const names = new Map<string, WrittenName>(view.readings.map((name) => [name, { name, at: [] }]));
  let unnamed = 0;
  for (const { ref, record, mention } of view.mentions) {
    const found = dossier.records.get(record);
    if (!found) continue;
    if (mention.name === undefined) unnamed += 1;
    else {
      const { title, language } = found.record;
      names.get(mention.name)!.at.push({ ref, title, date: mention.event?.date ?? dateOf(found), language });
    }
  }
  for (const { at } of names.values())
    at.sort((a, b) => byText(sortableDate(a.date), sortableDate(b.date)) || byText(a.ref, b.ref));
  return { names: [...names.values()], unnamed };
}
