import { describe, expect, test } from 'vitest';
import { associateHints, mostHints } from '../../../src/reasoning/associates/hints.ts';
import { facts, type RawFacts, type RawRecord } from '../../twin/facts.ts';

const places: NonNullable<RawFacts['places']> = [
  { id: 'ireland', name: 'Ireland', kind: 'country' },
  { id: 'co-waterford', name: 'County Waterford', kind: 'county', within: ['ireland'] },
  { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['co-waterford'] },
  { id: 'hancock', name: 'Hancock', kind: 'city' },
];
const openCase = {
  id: 'phelan',
  subject: 'maurice',
  evidence: [{ id: 'e1', from: 'r1#m1', states: 'birthplace', place: 'ireland', kind: 'direct' as const }],
};
const baptism = (id: string, made: string, mention: object, others: object[] = []): RawRecord => ({
  id,
  made,
  place: 'hancock',
  mentions: [
    { id: 'm1', name: 'Maurice Quillfeather', role: 'father' },
    { id: 'm2', role: 'sponsor', ...mention },
    ...(others as NonNullable<RawRecord['mentions']>),
  ],
});
const hintsOf = (records: RawRecord[], more: Partial<RawFacts> = {}) => {
  const all = facts({
    places,
    cases: [openCase],
    records,
    ...more,
    people: [
      {
        id: 'maurice',
        name: 'Maurice Quillfeather',
        spouses: ['johanna'],
        mentions: records.flatMap((r) => (r.mentions?.some(({ id }) => id === 'm1') ? [`${r.id}#m1`] : [])),
      },
      { id: 'johanna', name: 'Johanna Inkpen', sex: 'F' },
      ...(more.people ?? []),
    ],
  });
  return associateHints(all).hints.map((hint) => [hint.kind, hint.ref, hint.associate.name]);
};
const casey = { name: 'Laurence Casey' };

describe('an origin stated', () => {
  const his: RawRecord = {
    id: 'oath',
    made: '1876',
    mentions: [{ id: 'x', name: 'Laurence Casey', birthplace: 'Kill, Co. Waterford' }],
  };
  const twice = [baptism('r1', '1866', casey), baptism('r2', '1873', casey), his];
  test('of somebody who comes back is a hint at the record that states it, one hint for one person', () => {
    expect(hintsOf(twice)).toEqual([['origin', 'oath#x', 'Laurence Casey']]);
  });
  test('is none when a case uses it, when it is only a county, or when the case is concluded', () => {
    const evidence = [
      ...openCase.evidence,
      { id: 'e2', from: 'oath#x', states: 'birthplace', place: 'kill', kind: 'indirect' as const },
    ];
    expect(hintsOf(twice, { cases: [{ ...openCase, evidence }] })).toEqual([]);
    const county = structuredClone(his);
    county.mentions![0]!.birthplace = 'Co. Waterford';
    expect(hintsOf([...twice.slice(0, 2), county])).toEqual([]);
    const conclusion = { place: 'kill', claim: 'probable' as const, cites: ['e1'], because: 'So it is.' };
    expect(hintsOf(twice, { cases: [{ ...openCase, conclusion }] })).toEqual([]);
  });
  test('of somebody met once is none', () => {
    expect(hintsOf([twice[0]!, his])).toEqual([]);
  });
});

describe('names without a file', () => {
  const list: RawRecord = {
    id: 'r0',
    made: '1864-05-02',
    place: 'hancock',
    mentions: [
      { id: 'm1', name: 'Maurice Quillfeather', role: 'passenger', line: 4 },
      { id: 'm2', name: 'Laurence Casey', role: 'passenger', line: 5 },
    ],
  };
  test('a shipmate who stands sponsor later', () => {
    expect(hintsOf([list, baptism('r1', '1866', casey)])).toEqual([['shipmate', 'r1#m2', 'Laurence Casey']]);
  });
  test('a sponsor who came on the same ship again is no shipmate who stayed', () => {
    expect(hintsOf([{ ...list, made: '1870' }, baptism('r1', '1866', casey)])).toEqual([]);
  });
  test('three records, but not two', () => {
    const three = ['1866', '1868', '1871'].map((year, i) => baptism(`r${i}`, year, casey));
    expect(hintsOf(three)).toEqual([['recurs', 'r2#m2', 'Laurence Casey']]);
    expect(hintsOf(three.slice(1))).toEqual([]);
    const known = [{ id: 'casey', name: 'Laurence Casey', mentions: ['r0#m2', 'r1#m2', 'r2#m2'] }];
    expect(hintsOf(three, { people: known })).toEqual([]);
  });
  test('of many only a few are told, and how many more there are', () => {
    const names = ['Abel Dorrell', 'Enoch Fendlow', 'Hugh Gartshore', 'Jude Lomthwaite', 'Silas Kexby'];
    const records = names.flatMap((name, i) =>
      ['1866', '1868', '1871'].map((year, j) => baptism(`r${i}-${j}`, year, { name })),
    );
    expect(hintsOf(records)).toHaveLength(mostHints);
  });
});

describe('a maiden name', () => {
  const wife = (name: string) => [{ id: 'w', name, sex: 'F', relations: [{ as: 'spouse', of: 'm2' }] }];
  test('of a sponsor’s wife that is the wife’s own, if the name is rare', () => {
    expect(hintsOf([baptism('r1', '1866', casey, wife('Ellen Inkpen'))])).toEqual([
      ['maiden-name', 'r1#m2', 'Laurence Casey'],
    ]);
    expect(hintsOf([baptism('r1', '1866', casey, wife('Ellen Dorrell'))])).toEqual([]);
  });
  test('of a mother, from the person files', () => {
    const more = {
      people: [
        { id: 'casey', name: 'Laurence Casey', parents: ['mother'], mentions: ['r1#m2'] },
        { id: 'mother', name: 'Anne Inkpen', sex: 'F' as const },
      ],
    };
    expect(hintsOf([baptism('r1', '1866', casey)], more)).toEqual([
      ['maiden-name', 'r1#m2', 'Laurence Casey'],
    ]);
  });
});
