import { describe, expect, test } from 'vitest';
import { crowdOf, priorOf } from '../../../src/reasoning/identity/crowd.ts';
import { identityHints } from '../../../src/reasoning/identity/hints.ts';
import { kinWithin, sexOf } from '../../../src/reasoning/identity/kin-words.ts';
import { linkOf } from '../../../src/reasoning/identity/link.ts';
import { mentionRows } from '../../../src/reasoning/identity/mention-row.ts';
import { placesAgree } from '../../../src/reasoning/identity/place-agreement.ts';
import { facts, type RawFacts, type RawRecord } from '../../twin/facts.ts';

const places: NonNullable<RawFacts['places']> = [
  { id: 'ireland', name: 'Ireland', kind: 'country' },
  { id: 'united-states', name: 'United States', kind: 'country' },
  { id: 'co-waterford', name: 'County Waterford', kind: 'county', within: ['ireland'] },
  { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['co-waterford'] },
  { id: 'knockmahon', name: 'Knockmahon', kind: 'townland', within: ['kill'] },
  { id: 'kilmurrin', name: 'Kilmurrin', kind: 'townland', within: ['kill'] },
  { id: 'michigan', name: 'Michigan', kind: 'state', within: ['united-states'] },
  { id: 'hancock', name: 'Hancock', kind: 'city', within: ['michigan'] },
];
const census: RawRecord = {
  id: 'census',
  made: '1880-06-08',
  place: 'hancock',
  mentions: [
    { id: 'm1', name: 'Maurice Phelan', role: 'head', sex: 'M', age: 38, birthplace: 'Ireland' },
    { id: 'm2', name: 'Johanna', role: 'wife', sex: 'F', relations: [{ as: 'spouse', of: 'm1' }] },
    { id: 'm3', name: 'Patrick', role: 'son', relations: [{ as: 'child', of: 'm1' }] },
    { id: 'm4', name: 'Ole Johannesen', role: 'boarder', sex: 'M' },
    { id: 'm5', name: 'Brita', role: 'daughter', relations: [{ as: 'child', of: 'm4' }] },
    { id: 'm6', name: 'Mrs. T. A. Berdahl', sex: 'F' },
    { id: 'm7', name: 'John Do', alsoRead: ['John Phelan'], relations: [{ as: 'sibling', of: 'm1' }] },
    { id: 'm8', name: 'poor Mary', relations: [{ as: 'sibling', of: 'm1' }] },
    { id: 'm9', name: 'Ole Johannesen Hove', sex: 'M' },
  ],
};
const names = (ref: string, raw: RawFacts = { places, records: [census] }) =>
  mentionRows(facts(raw), ref).map(({ given, surname }) => `${given ?? '–'} / ${surname ?? '–'}`);

describe('a mention as it is compared', () => {
  /* Common practice in census schedules: the surname stands once, for everybody below it. */
  test('a wife and a child named without a surname have the one beside them', () => {
    expect(names('census#m2')).toEqual(['Johanna / Phelan']);
    expect(names('census#m3')).toEqual(['Patrick / Phelan']);
  });
  /* Common practice: a patronymic is the father's own. */
  test('a patronymic is not handed on; a farm stands beside it', () => {
    expect(names('census#m5')).toEqual(['Brita / –']);
    expect(names('census#m9')).toEqual(['Ole / Johannesen', 'Ole / Hove']);
    expect(
      mentionRows(facts({ places, records: [census] }), 'census#m9').map((row) => row.surnameIs),
    ).toEqual(['patronymic', 'other']);
  });
  test('a husband’s initials are no name of hers', () => expect(names('census#m6')).toEqual(['– / Berdahl']));
  test('every reading of a name is compared, and “ditto” is none', () =>
    expect(names('census#m7')).toEqual(['John / –', 'John / Phelan']));
  test('“poor” is not a name', () => expect(names('census#m8')).toEqual(['Mary / –']));
  test('kin by name, from whichever side the relation was noted', () => {
    const [row] = mentionRows(facts({ places, records: [census] }), 'census#m1');
    expect(row).toMatchObject({ spouse: 'Johanna', children: ['Patrick'], sex: 'M' });
    const record = facts({ records: [census] }).records.get('census')!;
    expect(
      kinWithin(record)
        .get('m3')!
        .fathers.map(({ id }) => id),
    ).toEqual(['m1']);
  });
  test('no such mention has no rows', () => expect(names('census#m99')).toEqual([]));
  test.each([
    ['father of bride', 'M'],
    ['wife’s mother', 'F'],
    ['mother of the groom', 'F'],
    ['son-in-law', 'M'],
    ['witness', undefined],
  ])('the role “%s” says the sex: %s', (role, sex) => {
    const record = facts({ records: [{ id: 'r', mentions: [{ id: 'm1', role }] }] }).records.get('r')!;
    expect(sexOf(record.mentions[0]!)).toBe(sex);
  });
});

describe('the crowd a record’s person is taken from', () => {
  const records: RawRecord[] = [{ id: 'a', place: 'knockmahon' }, { id: 'b', place: 'kill' }, { id: 'c' }];
  /* 8,175,124 people of 1841 (from memory) over 2,508 civil parishes are about 3,300. */
  test('is the usual size of the smallest place, in the order of the census of 1841', () => {
    const known = facts({ places, records });
    expect(crowdOf(known, 'a').people).toBe(130);
    expect(crowdOf(known, 'b').people).toBe(3300);
    expect(8_175_124 / 2_508).toBeCloseTo(3300, -2);
    expect(crowdOf(known, 'c').reason.key).toBe('no-place-said');
  });
  test('is the author’s own count where there is one, of the place or the nearest above it', () => {
    const own = {
      ...facts({ places, records }),
      nameCounts: [
        { name: 'Power', part: 'surname' as const, count: 40, total: 1412, place: 'kill', source: 'x' },
      ],
    };
    expect(crowdOf(own, 'b').people).toBe(1412);
  });
  /* One true match among N candidates: odds 1 to N − 1. */
  test('gives the prior odds of one among so many', () =>
    expect(priorOf({ people: 1025, reason: { key: 'spellings-alike' }, source: '' })).toBeCloseTo(-10, 6));
});

describe('places in a comparison', () => {
  const known = facts({ places, records: [] });
  const level = (a: string, b: string, field: 'birthplace' | 'residence' = 'birthplace') =>
    placesAgree(known, field, a, b)?.[0];
  test('one place in two spellings is one place', () =>
    expect(level('Knockmahon', 'Nockmahon, Kill')).toBe('exact'));
  test('a place and what it lies in are part of one another', () =>
    expect(level('Knockmahon, Kill', 'Ireland')).toBe('part'));
  test('two that name only a country agree in little', () =>
    expect(level('Ireland', 'Ireland')).toBe('part'));
  test('neighbours are near', () => expect(level('Knockmahon', 'Kilmurrin')).toBe('near'));
  test('a birthplace in another country contradicts', () =>
    expect(level('Knockmahon', 'Michigan')).toBe('different'));
  test('a residence in another country does not: people migrate', () =>
    expect(level('Knockmahon', 'Hancock', 'residence')).toBe('missing'));
  test('what no gazetteer knows is left to its letters', () =>
    expect(level('Xyzzyplugh', 'Ireland')).toBe(undefined));
});

const marriage: RawRecord = {
  id: 'marriage',
  made: '1866-02-13',
  place: 'hancock',
  mentions: [
    {
      id: 'm1',
      name: 'Mauritius Phelan',
      sex: 'M',
      relations: [
        { as: 'child', of: 'm3' },
        { as: 'spouse', of: 'm2' },
      ],
    },
    { id: 'm2', name: 'Joanna Kirwan', sex: 'F' },
    { id: 'm3', name: 'Maria Power', sex: 'F' },
  ],
};
const baptism: RawRecord = {
  id: 'baptism',
  made: '1840-03-02',
  place: 'kill',
  mentions: [
    {
      id: 'm1',
      name: 'Maurice',
      sex: 'M',
      event: { kind: 'baptism', date: '1840-03-02' },
      relations: [
        { as: 'child', of: 'm2' },
        { as: 'child', of: 'm3' },
      ],
    },
    { id: 'm2', name: 'Patt Phelan', sex: 'M' },
    { id: 'm3', name: 'Mary Power', sex: 'F' },
  ],
};
const maurice = (mentions: string[]) => ({ id: 'maurice', name: 'Maurice Phelan', mentions });

describe('a link between a mention and a person', () => {
  const known = facts({
    places,
    records: [census, marriage, baptism],
    people: [
      maurice(['census#m1', 'marriage#m1', 'baptism#m1']),
      { id: 'johanna', name: 'Johanna Kirwan', mentions: ['census#m2', 'marriage#m2'] },
    ],
  });
  const link = linkOf(known, 'baptism#m1', 'maurice')!;
  const row = (field: string, of = link) => of.rows.find((one) => one.field === field);

  test('says field by field what agrees, with which record, and adds up', () => {
    expect(row('given')).toMatchObject({ a: 'Maurice', agreement: 'exact' });
    expect(row('mother')).toMatchObject({
      a: 'Mary Power',
      b: 'Maria Power',
      agreement: 'same',
      with: 'marriage#m1',
    });
    expect(link.rows.reduce((sum, one) => sum + one.weight, 0)).toBeCloseTo(link.weight, 9);
    expect(link.probability).toBeCloseTo(1 / (1 + 2 ** -(link.weight + link.prior)), 9);
  });
  /* Common practice: a common name becomes nearly unique with the mother's maiden name. */
  test('a mother’s maiden name that agrees weighs more than her given name alone', () => {
    const without = facts({
      places,
      records: [
        census,
        marriage,
        { ...baptism, mentions: baptism.mentions!.map((m) => (m.id === 'm3' ? { ...m, name: 'Mary' } : m)) },
      ],
      people: [maurice(['census#m1', 'marriage#m1', 'baptism#m1'])],
    });
    expect(row('mother')!.weight).toBeGreaterThan(
      row('mother', linkOf(without, 'baptism#m1', 'maurice')!)!.weight + 2,
    );
  });
  test('a woman’s surnames before and after a marriage do not contradict', () =>
    expect(row('surname', linkOf(known, 'census#m2', 'johanna')!)).toMatchObject({
      agreement: 'missing',
      weight: 0,
    }));
  test('what only one of the two says weighs nothing', () =>
    expect(link.rows.filter((one) => one.a === '' || one.b === '').every((one) => one.weight === 0)).toBe(
      true,
    ));

  test('a copy of the mention’s own record is no second witness', () => {
    const index: RawRecord = {
      id: 'index',
      derivedFrom: ['baptism'],
      mentions: [{ id: 'm1', name: 'Maurice Phelan', copies: 'baptism#m1' }],
    };
    const copied = facts({
      places,
      records: [census, baptism, index],
      people: [maurice(['baptism#m1', 'index#m1', 'census#m1'])],
    });
    const found = linkOf(copied, 'baptism#m1', 'maurice')!;
    expect(found.leftOut).toEqual(['index#m1']);
    expect(found.against).toEqual(['census#m1']);
    const alone = facts({ places, records: [baptism, index], people: [maurice(['baptism#m1', 'index#m1'])] });
    expect(linkOf(alone, 'baptism#m1', 'maurice')).toBe(undefined);
  });
  test('a common name weighs less where the author counted it to be common', () => {
    const raw = {
      places,
      records: [census, baptism, marriage],
      people: [maurice(['census#m1', 'baptism#m1', 'marriage#m1'])],
    };
    const count = (bearers: number) => ({
      ...facts(raw),
      nameCounts: [
        {
          name: 'Phelan',
          part: 'surname' as const,
          count: bearers,
          total: 10_000,
          place: 'hancock',
          source: 'x',
        },
      ],
    });
    const weight = (bearers: number) =>
      row('surname', linkOf(count(bearers), 'census#m1', 'maurice')!)!.weight;
    expect(weight(10)).toBeGreaterThan(weight(100) + 2);
    expect(weight(100)).toBeGreaterThan(weight(1000) + 2);
  });
});

describe('hints', () => {
  const witness = (id: string, made: string, name = 'Cornelius Tworkey', more: object = {}): RawRecord => ({
    id,
    made,
    place: 'kill',
    mentions: [{ id: 'm1', name, sex: 'M', ...more }],
  });
  const of = (records: RawRecord[], people: RawFacts['people'] = []) =>
    identityHints(facts({ places, records, people }));

  test('a name of nobody yet that comes back is told once, at the latest record', () => {
    expect(of([witness('a', '1851'), witness('b', '1847', 'Corns. Tworkey'), witness('c', '1860')])).toEqual([
      { kind: 'seen', ref: 'c#m1', others: ['a#m1', 'b#m1'] },
    ]);
  });
  test('not where a lifetime lies between, nor in copies of one record, nor for the other sex', () => {
    expect(of([witness('a', '1829'), witness('b', '1901')])).toEqual([]);
    expect(of([witness('a', '1851'), { ...witness('b', '1900'), derivedFrom: ['a'] }])).toEqual([]);
    expect(of([witness('a', '1851'), witness('b', '1852', 'Cornelius Tworkey', { sex: 'F' })])).toEqual([]);
  });
  test('a mention that is likely somebody known is told to be', () => {
    const rich = { age: 30, occupation: 'cooper', birthplace: 'Knockmahon' };
    const hints = of(
      [witness('a', '1851-04-01', undefined, rich), witness('b', '1851-09-01', undefined, rich)],
      [{ id: 'con', name: 'Cornelius Tworkey', mentions: ['a#m1'] }],
    );
    expect(hints).toMatchObject([{ kind: 'same', ref: 'b#m1', person: 'con' }]);
  });
  test('two people who fit equally well leave both in doubt', () => {
    const rich = { age: 30, occupation: 'cooper', birthplace: 'Knockmahon' };
    const hints = of(
      ['a', 'b', 'c'].map((id) => witness(id, `1851-04-0${'abc'.indexOf(id) + 1}`, undefined, rich)),
      [
        { id: 'con', name: 'Cornelius Tworkey', mentions: ['a#m1'] },
        { id: 'con-junior', name: 'Cornelius Tworkey', mentions: ['b#m1'] },
      ],
    );
    expect(hints).toEqual([]);
  });
  test('a mention taken for a person against all it says is questioned', () => {
    const hints = of(
      [
        witness('a', '1851-04-01', 'Cornelius Tworkey', { age: 30, birthplace: 'Knockmahon' }),
        witness('b', '1852-04-01', 'Terence Gallagher', { age: 60, birthplace: 'Michigan' }),
      ],
      [{ id: 'con', name: 'Cornelius Tworkey', mentions: ['a#m1', 'b#m1'] }],
    );
    expect(hints.map((hint) => hint.kind)).toEqual(['unlikely', 'unlikely']);
  });
  /* In hand-linked records of Irish-born men a third of the ages differ by more than two years. */
  test('a wobble of five years alone questions nothing', () => {
    const hints = of(
      [
        witness('a', '1851-04-01', 'Cornelius Tworkey', { age: 30 }),
        witness('b', '1861-04-01', 'Con Tworkey', { age: 35 }),
      ],
      [{ id: 'con', name: 'Cornelius Tworkey', mentions: ['a#m1', 'b#m1'] }],
    );
    expect(hints).toEqual([]);
  });
  test('a crowd of one name stays within bounds', () => {
    const records = Array.from({ length: 40 }, (_, page) => ({
      id: `list-${page}`,
      made: '1851',
      place: 'kill',
      mentions: Array.from({ length: 50 }, (_each, line) => ({
        id: `m${line}`,
        name: 'John Murphy',
        sex: 'M' as const,
      })),
    }));
    expect(of(records)).toEqual([]);
  });
});
