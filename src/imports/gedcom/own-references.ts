/** What records and people of an export of ours refer to, by the ids that everything has now. */
import type { Corpus } from '../../corpus/types.ts';
import type { PersonDraft, RecordDraft } from './drafts.ts';
import type { ImportLog } from './log.ts';
import type { OwnExport } from './own-export.ts';

type Json = Record<string, unknown>;

/** Puts the present ids in place of those of the export. What is not here any more is left out, with a note. */
export function resolveOwn(
  own: OwnExport,
  persons: readonly PersonDraft[],
  corpus: Corpus,
  log: ImportLog,
): void {
  if (own.records.length === 0) return;
  const people = new Map(persons.map((person) => [String(person.rest.id ?? person.id), person.id]));
  const records = new Map(own.records.map((record) => [record.wishes[0] ?? record.id, record.id]));
  const places = new Set([...own.places.values()].map(({ id }) => id));
  const finder = (map: ReadonlyMap<string, string>, there: { has(id: string): boolean }) => (id: string) =>
    map.get(id) ?? (there.has(id) ? id : undefined);
  const look = {
    person: finder(people, corpus.people),
    record: finder(records, corpus.records),
    place: (id: string) => (places.has(id) || corpus.places.has(id) ? id : undefined),
    series: (id: string) => (corpus.series.has(id) ? id : undefined),
  };
  const mention = (ref: string) => {
    const [id = '', of = ''] = ref.split('#');
    const now = look.record(id);
    return now === undefined ? undefined : `${now}#${of}`;
  };
  for (const record of own.records) {
    const lost: string[] = [];
    const one = (holder: Json, key: string, find: (id: string) => string | undefined) => {
      if (typeof holder[key] !== 'string') return;
      const now = find(holder[key]);
      if (now === undefined) {
        lost.push(`${key} ${holder[key]}`);
        delete holder[key];
      } else holder[key] = now;
    };
    one(record as unknown as Json, 'place', look.place);
    one(record.rest, 'series', look.series);
    for (const said of record.mentions) one(said, 'copies', mention);
    const derived = derivations(record.derivedFrom, look.record);
    if (derived === undefined) delete record.derivedFrom;
    else record.derivedFrom = derived;
    informants(record, look.person, lost);
    if (lost.length > 0)
      log.doubts.add(
        record.line,
        `The record ${record.id} refers to what is not here, so that was left out: ${lost.join(', ')}.`,
      );
  }
  for (const person of persons)
    for (const bonds of [person.rest.parents, person.rest.spouses])
      if (Array.isArray(bonds))
        for (const bond of bonds as { from?: string[] }[])
          if (Array.isArray(bond?.from))
            bond.from = bond.from.map(mention).filter((ref) => ref !== undefined);
}

function derivations(from: unknown, record: (id: string) => string | undefined): unknown[] | undefined {
  const list = Array.isArray(from) ? (from as unknown[]) : from === undefined ? [] : [from];
  const now = list.map((one) => {
    if (typeof one === 'string') return record(one) ?? { unseen: one };
    const perhaps = (one as { perhaps?: string }).perhaps;
    return perhaps === undefined ? one : { perhaps: record(perhaps) ?? undefined };
  });
  const whole = now.filter(
    (one) => !(typeof one === 'object' && one !== null && 'perhaps' in one && one.perhaps === undefined),
  );
  return whole.length > 0 ? whole : undefined;
}

function informants(record: RecordDraft, person: (id: string) => string | undefined, lost: string[]): void {
  const all = (record.rest.informants ?? {}) as Record<string, Json>;
  for (const [word, informant] of Object.entries(all)) {
    for (const key of ['oneOf', 'toldBy'] as const) {
      const list = informant[key];
      if (!Array.isArray(list)) continue;
      informant[key] = (list as string[]).map(person).filter((id) => id !== undefined);
      if ((informant[key] as string[]).length === 0) delete informant[key];
    }
    if (typeof informant.person === 'string') {
      const now = person(informant.person);
      if (now === undefined) {
        lost.push(`informant ${informant.person}`);
        informant.described = informant.person;
        delete informant.person;
      } else informant.person = now;
    }
    if (Array.isArray(informant.oneOf) && informant.oneOf.length === 1) {
      informant.person = informant.oneOf[0];
      delete informant.oneOf;
    }
    all[word] = informant;
  }
}
