/**
 * Small cases worked by hand, one for each sentence most easily misread. Every one concludes for Glen, a townland of
 * the old country; records are made in Newland unless they say otherwise, and item `e1` reads mention `a#m`, `e2`
 * `b#m`, and so on.
 */
import type { Facts } from '../../src/model/facts.ts';
import { facts } from './facts.ts';
import type { RawCase, RawPerson, RawRecord } from './facts.ts';
import { gazetteer } from './gazetteer.ts';
import type { TwinCase } from './twin.ts';

export interface HandCase {
  title: string;
  facts: Facts;
  expected: Partial<TwinCase>;
}

type RawEvidence = NonNullable<RawCase['evidence']>[number];
interface Plan {
  records: Record<string, Partial<RawRecord>>;
  /** Whose mention each record holds; the subject's unless listed, nobody's when null. */
  owners?: Record<string, string | null>;
  people?: Record<string, Partial<RawPerson>>;
  /** What differs from the usual item of each record; `false` for no item. */
  items?: Record<string, Partial<RawEvidence> | false>;
  more?: RawEvidence[];
  place?: string;
  rest?: Partial<RawCase>;
}

const clerk = { clerk: { described: 'the clerk', knowledge: 'primary' as const } };
const said = (person: string, knowledge?: 'primary' | 'secondary' | 'undetermined') => ({
  self: { person, knowledge },
});

function planned({
  records,
  owners = {},
  people = {},
  items = {},
  more = [],
  place = 'glen',
  rest = {},
}: Plan): Facts {
  const ids = Object.keys(records);
  const ownerOf = (record: string) => (record in owners ? owners[record] : 'p');
  const evidence: RawEvidence[] = ids.flatMap((id, i) => {
    const item = items[id];
    if (item === false) return [];
    return [
      { id: `e${i + 1}`, from: `${id}#m`, states: 'birthplace', place, kind: 'direct' as const, ...item },
    ];
  });
  evidence.push(...more);
  const everybody = ['p', 'wife', 'child', 'other', ...Object.keys(people)];
  return facts({
    records: ids.map((id) => ({
      id,
      place: 'port',
      mentions: [{ id: 'm', birthplace: 'Glin' }],
      ...records[id],
    })),
    people: [...new Set(everybody)].map((id) => ({
      id,
      ...(id === 'wife' ? { spouses: ['p'] } : {}),
      ...(id === 'child' ? { parents: ['p', 'wife'] } : {}),
      ...people[id],
      mentions: ids.filter((record) => ownerOf(record) === id).map((record) => `${record}#m`),
    })),
    places: gazetteer([], []),
    searches: [{ id: 's1' }],
    cases: [
      {
        id: 'hand',
        subject: 'p',
        evidence,
        conclusion: {
          place,
          claim: 'probable',
          cites: evidence.map((item) => item.id),
          because: 'They agree.',
        },
        ...rest,
      },
    ],
  });
}

const known = (key: string) => ({ key, known: true, viaPerhaps: false });
const possible = (key: string) => ({ key, known: false, viaPerhaps: false });
const perhaps = (key: string) => ({ key, known: false, viaPerhaps: true });

export const handCases: HandCase[] = [
  {
    title: 'two records with first-hand clerks are two independent items',
    facts: planned({ records: { b: { informants: clerk }, a: { informants: clerk } } }),
    expected: {
      standing: 'meets',
      independent: 2,
      margin: 1,
      criticalRecords: ['a', 'b'],
      dependence: [],
      undetermined: [],
    },
  },
  {
    title: 'one informant behind two records is one body of evidence',
    facts: planned({
      records: { a: { informants: said('p', 'secondary') }, b: { informants: said('p', 'primary') } },
    }),
    expected: {
      standing: 'short',
      independent: 1,
      dependence: [['e1', 'e2']],
      margin: 0,
      criticalRecords: [],
    },
  },
  {
    title: 'a child without first-hand knowledge may only repeat what the parent said',
    facts: planned({
      records: { a: { informants: said('child', 'secondary') }, b: { informants: said('p', 'secondary') } },
    }),
    expected: {
      independent: 1,
      undetermined: [['e1', 'e2']],
      roots: { e1: [known('person:child'), possible('person:p')], e2: [known('person:p')] },
    },
  },
  {
    title: 'a wife is found from either entry, and an argument lifts the pair',
    facts: planned({
      records: { a: { informants: said('wife', 'secondary') }, b: { informants: said('p', 'secondary') } },
      rest: { independence: [{ between: ['e1', 'e2'], because: 'She grew up next door.' }] },
    }),
    expected: { standing: 'meets', independent: 2, undetermined: [], argued: [['e1', 'e2']], margin: 1 },
  },
  {
    title: 'knowledge not given leaves somebody unknown behind a named informant',
    facts: planned({ records: { a: { informants: said('other') }, b: { informants: clerk } } }),
    expected: {
      independent: 1,
      undetermined: [['e1', 'e2']],
      roots: { e1: [known('person:other'), possible('unknown:a')], e2: [known('described:b/clerk')] },
    },
  },
  {
    title: 'toldBy stands in for the informant',
    facts: planned({
      records: {
        a: { informants: { self: { person: 'child', toldBy: ['p'] } } },
        b: { informants: said('p', 'primary') },
      },
    }),
    expected: { dependence: [['e1', 'e2']], roots: { e1: [known('person:p')], e2: [known('person:p')] } },
  },
  {
    title: 'a copy has the roots of what it copies, and depends on it',
    facts: planned({
      records: {
        a: { informants: clerk },
        b: { derivedFrom: ['a'], mentions: [{ id: 'm', birthplace: 'Glin', copies: 'a#m' }] },
      },
    }),
    expected: {
      dependence: [['e1', 'e2']],
      roots: { e1: [known('described:a/clerk')], e2: [known('described:a/clerk')] },
    },
  },
  {
    title: 'what the copied mention does not say is the copying record’s own',
    facts: planned({
      records: {
        a: { informants: clerk, mentions: [{ id: 'm', name: 'M. F.' }] },
        b: { derivedFrom: ['a'], mentions: [{ id: 'm', birthplace: 'Glin', copies: 'a#m' }] },
      },
      items: { a: false },
    }),
    expected: { roots: { e2: [possible('unknown:b')] } },
  },
  {
    title:
      'an exemplar not examined is a root by its words; without an informant somebody unknown stands behind',
    facts: planned({
      records: {
        a: { derivedFrom: [{ unseen: 'the register' }] },
        b: { derivedFrom: [{ unseen: 'the register' }], informants: clerk },
      },
    }),
    expected: {
      dependence: [['e1', 'e2']],
      roots: {
        e1: [possible('unknown:a'), known('unseen:the register')],
        e2: [known('described:b/clerk'), known('unseen:the register')],
      },
    },
  },
  {
    title: 'going round a circle of perhaps adds nothing',
    facts: planned({
      records: {
        a: { derivedFrom: [{ perhaps: 'b' }], informants: clerk },
        b: { derivedFrom: ['a'] },
        c: { informants: clerk },
      },
      items: { b: false },
    }),
    expected: {
      standing: 'meets',
      independent: 2,
      roots: { e1: [known('described:a/clerk')], e3: [known('described:c/clerk')] },
    },
  },
  {
    title: 'only perhaps gave roots, so the record’s own unknown root stays',
    facts: planned({ records: { a: { derivedFrom: [{ perhaps: 'b' }] }, b: { informants: clerk } } }),
    expected: {
      undetermined: [['e1', 'e2']],
      roots: { e1: [perhaps('described:b/clerk'), possible('unknown:a')], e2: [known('described:b/clerk')] },
    },
  },
  {
    title: 'an authored account whose informant is not in it may come from anybody',
    facts: planned({
      records: {
        a: { form: 'authored', informants: said('other', 'primary') },
        b: { form: 'authored', informants: said('p', 'primary') },
      },
    }),
    expected: {
      undetermined: [['e1', 'e2']],
      roots: { e1: [known('person:other'), possible('unknown:a')], e2: [known('person:p')] },
    },
  },
  {
    title: 'entries of one volume are not independent by themselves',
    facts: planned({
      records: { a: { informants: clerk, volume: 'book-2' }, b: { informants: clerk, volume: 'book-2' } },
    }),
    expected: { standing: 'short', undetermined: [['e1', 'e2']] },
  },
  {
    title: 'a record of the old country counts only when tied',
    facts: planned({ records: { a: { informants: clerk, place: 'glen' }, b: { informants: clerk } } }),
    expected: { standing: 'short', independent: 1, untied: ['e1'], counting: ['e2'] },
  },
  {
    title: 'a copy made over here of a register over there needs a tie as well',
    facts: planned({
      records: {
        a: { informants: clerk, place: 'glen' },
        b: { derivedFrom: ['a'] },
        c: { informants: clerk },
      },
      items: { a: false, b: { tiedBy: ['e3'] } },
    }),
    expected: { standing: 'meets', independent: 2, margin: 1, criticalRecords: ['a', 'b', 'c'], untied: [] },
  },
  {
    title: 'ties in a circle hold nothing up',
    facts: planned({
      records: { a: { informants: clerk }, b: { informants: clerk }, c: { informants: clerk } },
      items: { a: { tiedBy: ['e2'] }, b: { tiedBy: ['e1', ['e1', 'e3']] } },
    }),
    expected: { independent: 1, counting: ['e3'], holds: { e1: false, e2: false, e3: true } },
  },
  {
    title: 'a tie needs neither a place, nor to be cited, nor a tie of its own',
    facts: planned({
      records: { a: { informants: clerk, place: 'glen' }, b: { informants: clerk }, t: { place: 'glen' } },
      owners: { t: null },
      items: { a: { tiedBy: ['t'] }, t: false },
      more: [{ id: 't', from: 't#m', kind: 'indirect' }],
      rest: { conclusion: { place: 'glen', claim: 'probable', cites: ['e1', 'e2'], because: 'They agree.' } },
    }),
    expected: { standing: 'meets', untied: ['t'], margin: 1, criticalRecords: ['a', 'b', 't'] },
  },
  {
    title: 'a broader place counts from its own level up',
    facts: planned({
      records: { a: { informants: clerk }, b: { informants: clerk } },
      items: { b: { place: 'mainland' } },
    }),
    expected: {
      standing: 'short',
      independent: 1,
      conflicts: [],
      support: [
        { place: 'glen', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'abbey-parish', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'moor-parish', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'west-shire', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'uplands', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'z-barony', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'east-shire', independent: 1, evidence: ['e1'], witnesses: ['e1'] },
        { place: 'mainland', independent: 2, evidence: ['e1', 'e2'], witnesses: ['e1', 'e2'] },
        { place: 'union', independent: 2, evidence: ['e1', 'e2'], witnesses: ['e1', 'e2'] },
      ],
    },
  },
  {
    title: 'another place conflicts, cited or not, until it is answered',
    facts: planned({
      records: { a: { informants: clerk }, b: { informants: clerk }, c: {}, d: {} },
      items: { c: { place: 'knoll' }, d: { place: 'bog' } },
      rest: {
        conclusion: { place: 'glen', claim: 'probable', cites: ['e1', 'e2'], because: 'They agree.' },
        rejected: [{ place: 'bog', because: 'Another family.' }],
      },
    }),
    expected: {
      standing: 'contested',
      independent: 2,
      conflicts: [
        { evidence: 'e3', answered: false },
        { evidence: 'e4', answered: true },
      ],
    },
  },
  {
    title: 'a negative item conflicts below the place it speaks against and is answered only under conflicts',
    facts: planned({
      records: { a: { informants: clerk }, b: { informants: clerk } },
      more: [{ id: 'n', from: 'search:s1', kind: 'negative', against: 'moor-parish' }],
      rest: { rejected: [{ place: 'bog', because: 'Another family.' }] },
    }),
    expected: {
      standing: 'contested',
      independent: 2,
      conflicts: [{ evidence: 'n', answered: false }],
      counting: ['e1', 'e2'],
    },
  },
  {
    title: 'a hypothesis is worked out in the same way and stays open',
    facts: planned({
      records: { a: { informants: clerk }, b: { informants: clerk } },
      rest: { conclusion: undefined, hypothesis: { place: 'glen', cites: ['e1', 'e2'] } },
    }),
    expected: { standing: 'open', place: 'glen', independent: 2, margin: 1 },
  },
  {
    title: 'without conclusion or hypothesis there is no place and every list is empty',
    facts: planned({ records: { a: { place: undefined }, b: {} }, rest: { conclusion: undefined } }),
    expected: {
      standing: 'open',
      place: null,
      independent: 0,
      support: [],
      undetermined: [],
      untied: [],
      conflicts: [],
      margin: 0,
    },
  },
];
