/** A subject in Michigan and families in Waterford, in memory: what each shore says is chosen by the test. */
import type { NameCount } from '../../../src/model/name-count.ts';
import type { Facts } from '../../../src/model/facts.ts';
import {
  facts,
  type RawCase,
  type RawPerson,
  type RawPlace,
  type RawRecord,
  type RawSearch,
} from '../../twin/facts.ts';

export const places: RawPlace[] = [
  { id: 'ireland', name: 'Ireland', kind: 'country' },
  { id: 'norway', name: 'Norway', kind: 'country' },
  { id: 'united-states', name: 'United States', kind: 'country' },
  { id: 'co-waterford', name: 'County Waterford', kind: 'county', within: ['ireland'] },
  { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['co-waterford'] },
  { id: 'newtown', name: 'Newtown', kind: 'civil parish', within: ['co-waterford'] },
  { id: 'knockmahon', name: 'Knockmahon', kind: 'townland', within: ['kill'] },
  { id: 'vik', name: 'Vik', kind: 'clerical district', within: ['norway'] },
  { id: 'hove', name: 'Hove', kind: 'farm', within: ['vik'] },
  { id: 'michigan', name: 'Michigan', kind: 'state', within: ['united-states'] },
  { id: 'hancock', name: 'Hancock', kind: 'city', within: ['michigan'] },
];

export interface Child {
  name: string;
  born?: string;
  sex?: 'M' | 'F';
}

/** What one shore says of a family. */
export interface Told {
  child: Child;
  father?: string;
  mother?: string;
  siblings?: Child[];
  place?: string;
  occupation?: string;
}

/** A baptism for every child, with the parents beside it, as a candidate's records. */
export function registerOf(
  id: string,
  at: string,
  { child, father, mother, siblings, place, occupation }: Told,
): RawRecord[] {
  return [child, ...(siblings ?? [])].map((one, i) => ({
    id: `${id}-${i}`,
    made: one.born ?? '1840',
    place: at,
    mentions: [
      {
        id: 'm1',
        ...(one.name === '' ? {} : { name: one.name }),
        role: 'child',
        sex: one.sex ?? 'M',
        event: {
          kind: 'baptism',
          ...(one.born === undefined ? {} : { date: one.born }),
          ...(place === undefined ? {} : { place }),
        },
        relations: [
          ...(father === undefined ? [] : [{ as: 'child', of: 'm2' }]),
          ...(mother === undefined ? [] : [{ as: 'child', of: 'm3' }]),
        ],
      },
      ...(father === undefined
        ? []
        : [
            {
              id: 'm2',
              name: father,
              role: 'father',
              sex: 'M' as const,
              ...(occupation === undefined ? {} : { occupation }),
            },
          ]),
      ...(mother === undefined ? [] : [{ id: 'm3', name: mother, role: 'mother', sex: 'F' as const }]),
    ],
  }));
}

/** The new country's records of the subject, and a person file for each brother and sister. */
export function hereOf({ child, father, mother, siblings = [], place, occupation }: Told): {
  records: RawRecord[];
  people: RawPerson[];
} {
  const parents = [...(father === undefined ? [] : ['father']), ...(mother === undefined ? [] : ['mother'])];
  return {
    records: [
      {
        id: 'death',
        made: '1900-01-02',
        place: 'hancock',
        mentions: [
          {
            id: 'm1',
            name: child.name,
            role: 'deceased',
            sex: child.sex ?? 'M',
            ...(child.born === undefined ? {} : { born: child.born }),
            ...(place === undefined ? {} : { birthplace: place }),
            relations: [
              ...(father === undefined ? [] : [{ as: 'child', of: 'm2' }]),
              ...(mother === undefined ? [] : [{ as: 'child', of: 'm3' }]),
            ],
          },
          ...(father === undefined
            ? []
            : [
                {
                  id: 'm2',
                  name: father,
                  role: 'father',
                  sex: 'M' as const,
                  present: false,
                  ...(occupation === undefined ? {} : { occupation }),
                },
              ]),
          ...(mother === undefined
            ? []
            : [{ id: 'm3', name: mother, role: 'mother', sex: 'F' as const, present: false }]),
        ],
      },
      {
        id: 'landing',
        made: '1864-05-02',
        place: 'hancock',
        mentions: [{ id: 'm1', name: child.name, role: 'passenger', voyage: { arrived: '1864-05-02' } }],
      },
      ...siblings.map((one, i) => ({
        id: `sibling-${i}`,
        made: '1880',
        place: 'hancock',
        mentions: [
          {
            id: 'm1',
            name: one.name,
            sex: one.sex ?? ('M' as const),
            ...(one.born === undefined ? {} : { born: one.born }),
          },
        ],
      })),
    ],
    people: [
      {
        id: 'subject',
        name: child.name,
        sex: child.sex ?? 'M',
        parents,
        mentions: ['death#m1', 'landing#m1'],
      },
      ...(father === undefined
        ? []
        : [{ id: 'father', name: father, sex: 'M' as const, mentions: ['death#m2'] }]),
      ...(mother === undefined
        ? []
        : [{ id: 'mother', name: mother, sex: 'F' as const, mentions: ['death#m3'] }]),
      ...(parents.length === 0
        ? []
        : siblings.map((one, i) => ({
            id: `sibling-${i}`,
            name: one.name,
            sex: one.sex ?? ('M' as const),
            parents,
            mentions: [`sibling-${i}#m1`],
          }))),
    ],
  };
}

/** A case with its candidates, by the letters a, b, c …; each has a register of its own in a parish. */
export function caseOf(
  here: Told,
  candidates: readonly (Told & { at?: string })[],
  more: {
    records?: RawRecord[];
    people?: RawPerson[];
    searches?: RawSearch[];
    counts?: NameCount[];
    case?: Partial<RawCase>;
    candidate?: (id: string, records: string[]) => object;
  } = {},
): Facts {
  const own = hereOf(here);
  const registers = candidates.map((one, i) => registerOf('abcdef'.charAt(i), one.at ?? 'kill', one));
  const made = facts({
    places,
    records: [...own.records, ...registers.flat(), ...(more.records ?? [])],
    people: [...own.people, ...(more.people ?? [])],
    searches: more.searches ?? [],
    cases: [
      {
        id: 'c',
        subject: 'subject',
        candidates: registers.map((records, i) => {
          const id = 'abcdef'.charAt(i);
          const ids = records.map((one) => one.id);
          return { id, records: ids, ...more.candidate?.(id, ids) };
        }),
        ...more.case,
      },
    ],
  });
  return { ...made, nameCounts: more.counts ?? [] };
}
