/** Small corpora in memory: raw entries as an author writes them, completed by the schemas of the content contract. */
import type { z } from 'zod';
import { caseFile } from '../../src/model/case.ts';
import type { Case } from '../../src/model/case.ts';
import type { Facts } from '../../src/model/facts.ts';
import { personEntry } from '../../src/model/person.ts';
import type { Person } from '../../src/model/person.ts';
import { placeEntry } from '../../src/model/place.ts';
import type { Place } from '../../src/model/place.ts';
import { recordFile } from '../../src/model/record.ts';
import type { SourceRecord } from '../../src/model/record.ts';
import { search } from '../../src/model/search.ts';
import type { Search } from '../../src/model/search.ts';
import { siteFile } from '../../src/model/site.ts';

type WithId<T> = T & { id: string };
export type RawRecord = WithId<Partial<z.input<typeof recordFile>>>;
export type RawPerson = WithId<Partial<z.input<typeof personEntry>>>;
export type RawPlace = z.input<typeof placeEntry>;
export type RawCase = WithId<Partial<z.input<typeof caseFile>>>;
export type RawSearch = WithId<Partial<z.input<typeof search>>>;

export interface RawFacts {
  records?: RawRecord[];
  people?: RawPerson[];
  places?: RawPlace[];
  cases?: RawCase[];
  searches?: RawSearch[];
}

/** Facts from raw entries in the order given; titles, names, questions and dates are filled in where left out. */
export function facts(raw: RawFacts): Facts {
  const records = (raw.records ?? []).map(({ id, ...rest }): SourceRecord => ({
    ...recordFile.parse({
      title: `Record ${id}`,
      form: rest.derivedFrom ? 'derivative' : 'original',
      ...rest,
    }),
    id,
    body: '',
  }));
  const people = (raw.people ?? []).map((one): Person => ({
    ...personEntry.parse({ name: `Person ${one.id}`, ...one }),
    body: '',
  }));
  const places = (raw.places ?? []).map((one): Place => ({
    ...placeEntry.parse(one),
    name: one.name ?? one.id,
    kind: one.kind ?? 'locality',
    builtIn: false,
  }));
  const cases = (raw.cases ?? []).map(({ id, ...rest }): Case => ({
    ...caseFile.parse({ question: 'Born where?', subject: 'nobody', ...rest }),
    id,
    body: '',
  }));
  const searches = (raw.searches ?? []).map((one): Search =>
    search.parse({ date: '2025-03-02', for: [], series: 'parish-registers', result: 'not-found', ...one }),
  );
  return {
    site: siteFile.parse({}),
    cases: byId(cases),
    records: byId(records),
    people: byId(people),
    places: byId(places),
    series: byId([
      {
        id: 'parish-registers',
        title: 'Parish registers',
        of: places[0]?.id ?? 'nowhere',
        kind: 'church',
        from: '1800',
        to: '1900',
        gaps: [],
        tells: [],
        builtIn: false,
      },
    ]),
    searches: byId(searches),
    reviews: [],
    replies: [],
    nameCounts: [],
  };
}

function byId<T extends { id: string }>(entries: T[]): Map<string, T> {
  return new Map(entries.map((entry) => [entry.id, entry]));
}
