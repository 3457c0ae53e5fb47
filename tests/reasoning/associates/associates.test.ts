import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { english } from '../../../src/interface/index.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { worded } from '../../../src/model/said.ts';
import { associatesOf, caseFamilies } from '../../../src/reasoning/associates/associates.ts';
import { independentOf } from '../../../src/reasoning/associates/independent.ts';
import { kindsOf } from '../../../src/reasoning/associates/role-kinds.ts';
import { lineNumber } from '../../../src/reasoning/associates/shape.ts';
import type { Associate } from '../../../src/reasoning/associates/types.ts';
import { facts, type RawFacts, type RawRecord } from '../../twin/facts.ts';

const places: NonNullable<RawFacts['places']> = [
  { id: 'ireland', name: 'Ireland', kind: 'country' },
  { id: 'united-states', name: 'United States', kind: 'country' },
  { id: 'co-waterford', name: 'County Waterford', kind: 'county', within: ['ireland'] },
  { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['co-waterford'] },
  { id: 'michigan', name: 'Michigan', kind: 'state', within: ['united-states'] },
  { id: 'hancock', name: 'Hancock', kind: 'city', within: ['michigan'] },
];
const people: NonNullable<RawFacts['people']> = [
  { id: 'maurice', name: 'Maurice Phelan', sex: 'M', mentions: [] },
  { id: 'johanna', name: 'Johanna Kirwan', sex: 'F', spouses: ['maurice'], mentions: [] },
];
const cases: NonNullable<RawFacts['cases']> = [
  {
    id: 'phelan',
    subject: 'maurice',
    evidence: [{ id: 'e1', from: 'r#m1', states: 'birthplace', place: 'ireland', kind: 'direct' }],
  },
];

/** A content in which `maurice` owns the mention m1 of every record that has one, `johanna` m2 where she is named so. */
function content(records: RawRecord[], more: Partial<RawFacts> = {}): Facts {
  const own = (id: string, test: (name: string) => boolean) =>
    records.flatMap((record) =>
      (record.mentions ?? []).flatMap((mention) =>
        mention.id === id && test(mention.name ?? '') ? [`${record.id}#${id}`] : [],
      ),
    );
  const mine = own('m1', (name) => name.includes('Phelan'));
  const hers = own('m2', (name) => name.includes('Johanna'));
  return facts({
    places,
    cases,
    records,
    ...more,
    people: [{ ...people[0]!, mentions: mine }, { ...people[1]!, mentions: hers }, ...(more.people ?? [])],
  });
}

const besides = (all: Facts) => associatesOf(all, 'maurice');
const named = (all: Facts, name: string): Associate => {
  const found = besides(all).associates.filter((one) => one.names.includes(name));
  expect(
    found.map((one) => one.name),
    name,
  ).toHaveLength(1);
  return found[0]!;
};
const said = (as: Associate['sightings'][number]['as']) => worded(as, english.associates.parts);
const parts = (all: Facts) =>
  Object.fromEntries(
    besides(all).associates.flatMap(({ name, sightings }) =>
      sightings.map(({ role, as }) => [name, `${role}: ${said(as)}`]),
    ),
  );

describe('words for parts', () => {
  test.each([
    ['witness', ['witness']],
    ['father of bride', ['kin']],
    ['wife of witness', ['kin']],
    ['wife’s father', ['kin']],
    ['bride’s father and bondsman', ['kin', 'bondsman']],
    ['immediate lessor', ['grantor']],
    ['owner of the adjoining lot', ['neighbour']],
    ['lodger next door', ['neighbour']],
    ['next of kin', ['kin']],
    ['parish priest', ['official']],
    ['informant, son', ['informant', 'kin']],
    ['bearer of news', []],
    ['subject of the sketch', []],
  ])('%s', (word, kinds) => {
    expect([...kindsOf(word)].sort()).toEqual([...kinds].sort());
  });
  test('a word of ten thousand letters does no harm', () => {
    expect(kindsOf('of '.repeat(4000))).toEqual([]);
    expect(kindsOf(`${'x'.repeat(10_000)} witness`)).toEqual([]);
  });
  test('lines with a letter stand between whole ones', () => {
    expect(lineNumber('7b')! > lineNumber('7')! && lineNumber('7b')! < lineNumber('8')!).toBe(true);
    expect(lineNumber('front')).toBeUndefined();
  });
});

describe('who stands beside a family', () => {
  const marriage: RawRecord = {
    id: 'marriage',
    made: '1866-02-13',
    place: 'hancock',
    mentions: [
      { id: 'm1', name: 'Maurice Phelan', role: 'groom', relations: [{ as: 'spouse', of: 'm2' }] },
      { id: 'm2', name: 'Johanna Kirwan', role: 'bride' },
      { id: 'm3', name: 'Patrick Phelan', role: 'father of groom', present: false },
      { id: 'm4', name: 'Michael Kirwan', role: 'father of bride' },
      { id: 'm5', name: 'Laurence Casey', role: 'witness', relations: [{ as: 'witness', of: 'm1' }] },
      { id: 'm6', name: 'Ellen Drohan', role: 'witness' },
      { id: 'm7', name: 'Martin Fallon', role: 'priest' },
      { id: 'm8', name: 'Quincy Mining Company', role: 'employer' },
      { id: 'm9', name: 'John Tobin', role: 'landlord', present: false },
    ],
  };
  test('the family, its unknown kin, officials, companies and the absent are not beside it', () => {
    expect(parts(content([marriage]))).toEqual({
      'Laurence Casey': 'witness: witness for Maurice Phelan',
      'Ellen Drohan': 'witness: witness',
    });
  });
  test('an official who also acts otherwise is', () => {
    const asWitness = structuredClone(marriage);
    asWitness.mentions![6]!.relations = [{ as: 'witness', of: 'm2' }];
    expect(parts(content([asWitness]))).toMatchObject({
      'Martin Fallon': 'witness: witness for Johanna Kirwan',
    });
  });
  test('where the family stands sponsor, those whom the record is about are beside it', () => {
    const baptism: RawRecord = {
      id: 'baptism',
      mentions: [
        { id: 'm1', name: 'Maurice Phelan', role: 'sponsor' },
        { id: 'm3', name: 'Mary Casey', role: 'child' },
        { id: 'm4', name: 'Laurence Casey', role: 'father' },
      ],
    };
    expect(parts(content([baptism]))).toEqual({
      'Mary Casey': 'sponsor: child, where Maurice Phelan was sponsor',
      'Laurence Casey': 'sponsor: father, where Maurice Phelan was sponsor',
    });
  });
  test('on a schedule: the household, and neighbours by lines or households; farther ones only if met elsewhere', () => {
    const row = (line: number, household: number, name: string, role = 'head') => ({
      id: line === 20 ? 'm1' : `x${line}`,
      name,
      role,
      line,
      household,
    });
    const census: RawRecord = {
      id: 'census',
      made: '1870',
      mentions: [
        row(5, 152, 'James Crotty'),
        row(18, 159, 'William Uren'),
        row(20, 160, 'Maurice Phelan'),
        row(21, 160, 'Patrick Power', 'boarder'),
        row(22, 161, 'John Hurley'),
        row(23, 161, 'Thomas Flynn', 'boarder'),
        row(60, 162, 'Anton Kessler'),
        row(61, 180, 'Ellen Drohan'),
        row(62, 180, 'Peter Tobin'),
      ],
    };
    expect(parts(content([census]))).toEqual({
      'William Uren': 'neighbour: neighbour, 2 lines off',
      'Patrick Power': 'household: boarder',
      'John Hurley': 'neighbour: neighbour, 2 lines off',
      'Thomas Flynn': 'neighbour: neighbour, 3 lines off',
      'Anton Kessler': 'neighbour: neighbour, 2 households off',
    });
    const both = content([marriage, census]);
    expect(named(both, 'Ellen Drohan').sightings.map(({ as }) => said(as))).toEqual([
      'witness',
      'neighbour, 41 lines off',
    ]);
  });
  test('a tie written in another record, and the same ship on the same day', () => {
    const list: RawRecord = {
      id: 'list',
      mentions: [
        { id: 'm1', name: 'Maurice Phelan', voyage: { ship: 'Harvest Home', arrived: '1864-05-02' } },
      ],
    };
    const oath: RawRecord = {
      id: 'oath',
      mentions: [{ id: 'w', name: 'Laurence Casey', relations: [{ as: 'witness', of: 'list#m1' }] }],
    };
    const his: RawRecord = {
      id: 'his',
      mentions: [
        { id: 'x', name: 'Edmund Flynn', voyage: { ship: 'HARVEST HOME', arrived: '1864-05-02' } },
        { id: 'y', name: 'Peter Tobin', voyage: { ship: 'Harvest Home', arrived: '1865-05-02' } },
      ],
    };
    expect(parts(content([list, oath, his]))).toEqual({
      'Laurence Casey': 'witness: witness for Maurice Phelan',
      'Edmund Flynn': 'fellow-passenger: came on the Harvest Home, the family’s ship',
    });
  });
  test('whom the family was joining, and who informed without being named', () => {
    const list: RawRecord = {
      id: 'list',
      informants: { casey: { person: 'casey' }, self: { person: 'maurice' } },
      mentions: [
        {
          id: 'm1',
          name: 'Maurice Phelan',
          joining: { name: 'John Tobin', relation: 'friend', address: 'Hancock' },
        },
        { id: 'm2', name: 'Johanna Phelan', joining: { name: 'Mary Foley', relation: 'aunt' } },
      ],
    };
    const all = content([list], { people: [{ id: 'casey', name: 'Laurence Casey' }] });
    expect(parts(all)).toEqual({
      'John Tobin': 'other: friend whom they were joining, at Hancock',
      'Laurence Casey': 'informant: gave the information',
    });
  });
});

const baptism = (
  id: string,
  sponsor: string,
  rest: Partial<RawRecord> = {},
  more: object = {},
): RawRecord => ({
  id,
  made: '1866',
  place: 'hancock',
  mentions: [
    { id: 'm1', name: 'Maurice Phelan', role: 'father' },
    { id: 'm3', name: sponsor, role: 'sponsor', ...more },
  ],
  ...rest,
});

describe('individuals', () => {
  test('spellings of one name come together; the commonest is its name', () => {
    const all = content([
      baptism('a', 'Laurence Casey'),
      baptism('b', 'Laurence Casey'),
      baptism('c', 'Laurentius Casey'),
    ]);
    const casey = named(all, 'Laurence Casey');
    expect(casey).toMatchObject({
      id: 'laurence-casey',
      records: 3,
      names: ['Laurence Casey', 'Laurentius Casey'],
    });
    expect(casey.byName).toEqual(['a#m3', 'b#m3', 'c#m3']);
  });
  test.each([
    ['another sex', { sex: 'M' }, { sex: 'F' }, '1870'],
    ['births eleven years apart', { born: 1840 }, { born: 1851 }, '1870'],
    ['sixty-one years between', {}, {}, '1927'],
  ])('two people: %s', (_, one, two, made) => {
    const all = content([
      baptism('a', 'Francis Casey', {}, one),
      baptism('b', 'Francis Casey', { made }, two),
    ]);
    expect(besides(all).associates.map(({ id, records }) => [id, records])).toEqual([
      ['francis-casey', 1],
      ['francis-casey-2', 1],
    ]);
  });
  test('two of one name in one record are two people', () => {
    const twice = baptism('a', 'John Casey');
    twice.mentions!.push({ id: 'm4', name: 'John Casey', role: 'witness' });
    expect(besides(content([twice])).met).toBe(2);
  });
  test('a mention of nobody yet goes to the one person of the name, and to neither of two', () => {
    const records = [baptism('a', 'John Casey'), baptism('b', 'John Casey'), baptism('c', 'John Casey')];
    const one = content(records, { people: [{ id: 'john', name: 'John Casey', mentions: ['a#m3'] }] });
    expect(named(one, 'John Casey')).toMatchObject({ person: 'john', records: 3, byName: ['b#m3', 'c#m3'] });
    const two = content(records, {
      people: [
        { id: 'john', name: 'John Casey', mentions: ['a#m3'] },
        { id: 'other', name: 'John Casey', mentions: ['b#m3'] },
      ],
    });
    expect(besides(two).associates.map(({ records: n }) => n)).toEqual([1, 1, 1]);
  });
});

describe('independent records', () => {
  test('a copy counts with what it copies, and two copies of one exemplar once', () => {
    const all = content([
      baptism('a', 'John Casey'),
      baptism('copy', 'John Casey', { derivedFrom: ['a'] }),
      baptism('again', 'John Casey', { derivedFrom: [{ perhaps: 'a' }] }),
      baptism('b', 'John Casey'),
    ]);
    expect(named(all, 'John Casey')).toMatchObject({ records: 2 });
    expect(independentOf(all, ['copy', 'again']).chosen).toHaveLength(1);
  });
  test('a book that copies two records leaves them two', () => {
    const all = content([
      baptism('a', 'John Casey'),
      baptism('b', 'John Casey'),
      baptism('book', 'John Casey', { derivedFrom: ['a', 'b'] }),
    ]);
    expect(independentOf(all, ['book', 'b', 'a']).chosen).toEqual(['a', 'b']);
  });
});

test('origins: a country is none, and what lies in the country of the case leads', () => {
  const all = content([
    baptism('a', 'John Casey', {}, { birthplace: 'Ireland' }),
    baptism('b', 'John Casey', {}, { birthplace: 'Michigan' }),
    baptism('c', 'John Casey', {}, { lastResidence: 'Kill, Co. Waterford' }),
    { id: 'd', mentions: [{ id: 'z', name: 'John Casey', birthplace: 'Co. Waterford' }] },
  ]);
  expect(
    named(all, 'John Casey').origins.map(({ reading, place, lead, ref }) => [reading, place, lead, ref]),
  ).toEqual([
    ['Kill, Co. Waterford', 'kill', true, 'c#m3'],
    ['Co. Waterford', 'co-waterford', true, 'd#z'],
    ['Michigan', 'michigan', false, 'b#m3'],
  ]);
});

test('surnames: several of one, in how many records, and whether it is the family’s own', () => {
  const all = content([
    baptism('a', 'John Casey'),
    baptism('b', 'Mary Casey'),
    baptism('c', 'Ellen Kirwan'),
    baptism('d', 'James Kerwan'),
    baptism('e', 'Peter Tobin'),
  ]);
  expect(besides(all).surnames.map(({ surname, records, ofFamily }) => [surname, records, ofFamily])).toEqual(
    [
      ['Casey', 2, false],
      ['Kirwan', 2, true],
    ],
  );
});

describe('properties', () => {
  const givens = ['John', 'Mary', 'Patrick', 'Ellen'];
  const surnames = ['Casey', 'Tobin', 'Foley'];
  const outline = fc.array(
    fc.record({
      names: fc.array(fc.tuple(fc.nat({ max: 3 }), fc.nat({ max: 2 })), { minLength: 1, maxLength: 4 }),
      year: fc.integer({ min: 1850, max: 1870 }),
      copies: fc.option(fc.nat({ max: 8 })),
    }),
    { minLength: 1, maxLength: 8 },
  );
  const records = (plan: ReturnType<typeof outline.generate>['value']): RawRecord[] =>
    plan.map(({ names, year, copies }, i) => ({
      id: `r${i}`,
      made: String(year),
      place: 'hancock',
      ...(copies !== null && copies < i ? { derivedFrom: [`r${copies}`] } : {}),
      mentions: [
        { id: 'm1', name: 'Maurice Phelan', role: 'father' },
        ...names.map(([g, s], j) => ({ id: `x${j}`, name: `${givens[g]} ${surnames[s]}`, role: 'sponsor' })),
      ],
    }));
  const told = (all: Facts) => {
    const { associates, expectedByAccident, family: _, records: seen, ...rest } = besides(all);
    return {
      ...rest,
      seen: seen.toSorted(),
      expected: expectedByAccident.toFixed(9),
      associates: associates.map(({ expected, ...one }) => ({ ...one, expected: expected.toFixed(9) })),
    };
  };

  test('the order of the files makes no difference', () => {
    fc.assert(
      fc.property(outline, (plan) => {
        const list = records(plan);
        expect(told(content(list.toReversed()))).toEqual(told(content(list)));
      }),
      { numRuns: 60 },
    );
  });
  test('a record of others changes nothing', () => {
    fc.assert(
      fc.property(outline, (plan) => {
        const list = records(plan);
        const other: RawRecord = { id: 'other', mentions: [{ id: 'm7', name: 'John Casey' }] };
        expect(told(content([...list, other]))).toEqual(told(content(list)));
      }),
      { numRuns: 60 },
    );
  });
  test('a copy of a record raises nobody’s count of records', () => {
    fc.assert(
      fc.property(outline, fc.nat({ max: 7 }), (plan, which) => {
        const list = records(plan);
        const source = list[which % list.length]!;
        const copy = {
          ...structuredClone(source),
          id: 'z-copy',
          derivedFrom: [source.id],
          made: source.made,
        };
        const most = (all: Facts) =>
          besides(all)
            .associates.map(({ records: n }) => n)
            .toSorted((a, b) => b - a);
        const before = most(content(list));
        const after = most(content([...list, copy]));
        // Of two alike in one record the copy may be put to either, which makes no third.
        expect(Math.max(...after)).toBeLessThanOrEqual(Math.max(...before));
        expect(after.filter((n) => n > 1).length).toBeLessThanOrEqual(before.filter((n) => n > 1).length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('degenerate shapes', () => {
  test('a case whose subject has no file, and one without records', () => {
    expect(caseFamilies(facts({ cases: [{ id: 'c', subject: 'nobody' }] }))).toMatchObject([
      { subjects: ['nobody'], associates: [], met: 0, expectedByAccident: 0 },
    ]);
    expect(besides(content([])).associates).toEqual([]);
  });
  test('a list of two thousand: nobody is beside the family who is not tied to it or near', () => {
    const list: RawRecord = {
      id: 'list',
      mentions: Array.from({ length: 2000 }, (_, i) => ({
        id: i === 0 ? 'm1' : `x${i}`,
        name: i === 0 ? 'Maurice Phelan' : `John ${'abcdefghij'[i % 10]}${'klmno'[i % 5]}son`,
        ...(i === 7 ? { relations: [{ as: 'witness', of: 'm1' }] } : {}),
      })),
    };
    expect(besides(content([list])).met).toBe(1);
    const numbered = structuredClone(list);
    for (const [i, mention] of numbered.mentions!.entries()) mention.line = i + 1;
    expect(besides(content([numbered])).met).toBe(10);
  });
  test('everyone named alike: nobody is put together, and it is said', () => {
    const all = content(Array.from({ length: 200 }, (_, i) => baptism(`b${i}`, 'John Casey')));
    expect(besides(all)).toMatchObject({ met: 200, recurring: 0, tooCommon: ['John Casey'] });
  });
  test('names of nothing but signs', () => {
    const all = content([baptism('a', '—'), baptism('b', '?'), baptism('c', 'Маша Петрова')]);
    expect(besides(all).recurring).toBe(0);
    expect(new Set(besides(all).associates.map(({ id }) => id)).size).toBe(besides(all).associates.length);
  });
});
