/*
 * That such names are clues, and the order of the custom, is common practice; chances are checked against closed forms
 * and a seeded simulation in chances.test.ts. The families are invented.
 */
import { describe, expect, test } from 'vitest';
import type { ClueTold } from '../../../src/interface/en/clues.ts';
import { english } from '../../../src/interface/index.ts';
import type { ClueKind } from '../../../src/model/clue-said.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { cluesOf, mostClues } from '../../../src/reasoning/clues/clues.ts';
import type { Clue } from '../../../src/reasoning/clues/types.ts';
import { facts, type RawFacts } from '../../twin/facts.ts';

const ireland = [
  { id: 'ireland', name: 'Ireland', kind: 'country' },
  { id: 'kill', name: 'Kill', kind: 'civil parish', within: ['ireland'] },
];

function family(raw: RawFacts, evidence: object[] = []): Facts {
  return facts({
    places: ireland,
    cases: [
      { id: 'c', subject: 'maurice', evidence: evidence as never, hypothesis: { place: 'kill', cites: [] } },
    ],
    ...raw,
  });
}
const clues = (content: Facts, kind?: ClueKind): Clue[] =>
  cluesOf(content, content.cases.get('c')!).clues.filter((clue) => kind === undefined || clue.kind === kind);

/** A clue in English. */
const told = (clue: Clue | undefined): ClueTold => english.clues.told(clue!.said);

const couple = [
  { id: 'maurice', name: 'Maurice Phelan', sex: 'M' as const, spouses: ['johanna'] },
  { id: 'johanna', name: 'Johanna Kirwan', sex: 'F' as const },
];
const child = (id: string, name: string, more: object = {}) => ({
  id,
  name,
  sex: 'M' as const,
  parents: ['maurice', 'johanna'],
  ...more,
});

describe('surnames among given names', () => {
  test('a mother’s maiden name as a middle name', () => {
    const [clue, ...others] = clues(
      family({ people: [...couple, child('mk', 'Maurice Kirwan Phelan')] }),
      'middle-name',
    );
    expect(others).toEqual([]);
    expect(told(clue).says).toBe(
      'Maurice Kirwan Phelan has Kirwan as middle name, the surname of his mother, Johanna Kirwan.',
    );
    expect(clue!.people).toEqual(['mk', 'johanna']);
    expect(clue!.weak).toBe(false);
  });
  test('a grandmother’s', () => {
    const people = [
      ...couple.map((one) => (one.id === 'johanna' ? { ...one, parents: ['margaret'] } : one)),
      { id: 'margaret', name: 'Margaret Foley', sex: 'F' as const },
      child('mf', 'Michael Foley Phelan'),
    ];
    expect(clues(family({ people }), 'middle-name').map((clue) => told(clue).says)).toEqual([
      'Michael Foley Phelan has Foley as middle name, the surname of his grandmother, Margaret Foley.',
    ]);
  });
  test('as a forename, and of nobody known', () => {
    const [clue] = clues(family({ people: [...couple, child('mp', 'Power Phelan')] }), 'forename');
    expect(told(clue).says).toBe(
      'Power Phelan has Power as forename, and nobody known of the family is called so.',
    );
    expect(told(clue).suggests).toContain('grandmother');
  });
  test('the name of a sponsor', () => {
    const content = family({
      people: [...couple, child('mp', 'Michael Power Phelan', { mentions: ['font#a'] })],
      records: [
        {
          id: 'font',
          mentions: [
            { id: 'a', name: 'Michael Power Phelan', role: 'child' },
            { id: 'b', name: 'Thos Power', role: 'sponsor', relations: [{ as: 'sponsor', of: 'a' }] },
          ],
        },
      ],
    });
    expect(told(clues(content, 'middle-name')[0]).says).toBe(
      'Michael Power Phelan has Power as middle name, and Thos Power is a sponsor in a record that names him.',
    );
  });
  test('no clue: ordinary names, initials, the family’s own name, a wife’s maiden name in her married name', () => {
    const people = [
      ...couple,
      child('a', 'Maurice Patrick Phelan'),
      child('b', 'John P. Phelan'),
      child('c', 'Thomas Phelan Phelan'),
      {
        id: 'd',
        name: 'Bridget Phelan Crotty',
        sex: 'F' as const,
        parents: ['maurice', 'johanna'],
        spouses: ['e'],
      },
      { id: 'e', name: 'William Crotty', sex: 'M' as const },
    ];
    expect(
      clues(family({ people })).filter(({ kind }) => kind === 'middle-name' || kind === 'forename'),
    ).toEqual([]);
  });
});

describe('witnesses and sponsors', () => {
  const record = (mentions: object[]) => ({ id: 'font', place: 'kill', mentions: mentions as never });
  const content = (sponsors: object[], evidence: object[] = []) =>
    family(
      {
        people: [
          ...couple.map((one) => ({ ...one, mentions: [one.id === 'maurice' ? 'font#f' : 'font#m'] })),
          child('pat', 'Patrick Phelan', { mentions: ['font#a'] }),
        ],
        records: [
          record([
            {
              id: 'a',
              name: 'Patrick',
              role: 'child',
              relations: [
                { as: 'child', of: 'f' },
                { as: 'child', of: 'm' },
              ],
            },
            { id: 'f', name: 'Maurice Phelan', role: 'father' },
            { id: 'm', name: 'Johanna Kirwan', role: 'mother' },
            ...sponsors,
          ]),
        ],
      },
      evidence,
    );
  const edward = { id: 's', name: 'Edwd Kerwin', role: 'sponsor', relations: [{ as: 'sponsor', of: 'a' }] };

  test('a sponsor of the mother’s surname, spelled otherwise', () => {
    const [clue] = clues(content([{ ...edward, name: 'Edwd. Kirwan' }]), 'witness');
    expect(told(clue).says).toBe('Edwd. Kirwan (sponsor) shares a surname with Johanna Kirwan.');
    expect(clue!.refs).toEqual(['font#s']);
    expect(clue!.chance!.expected).toBeCloseTo(clue!.chance!.probability, 6);
  });
  test('of another surname, or another child’s sponsor, says nothing', () => {
    expect(clues(content([{ ...edward, name: 'John Drohan' }]), 'witness')).toEqual([]);
    const others = [
      { id: 'x', name: 'Ellen', role: 'child' },
      { ...edward, name: 'Edwd Kirwan', relations: [{ as: 'sponsor', of: 'x' }] },
    ];
    expect(clues(content(others), 'witness')).toEqual([]);
  });
  test('what the case weighs already is said to be evidence', () => {
    const evidence = [{ id: 'e5', from: 'font#s', states: 'role', kind: 'indirect' }];
    const [clue] = clues(content([{ ...edward, name: 'Edwd Kirwan' }], evidence), 'witness');
    expect(clue!.evidence).toEqual(['e5']);
  });
});

describe('given names that come back', () => {
  const elder = [
    { id: 'gf', name: 'Cornelius Phelan', sex: 'M' as const },
    ...[1, 2, 3].map((n) => ({
      id: n === 1 ? 'maurice' : `s${n}`,
      name: `Son${n} Phelan`,
      sex: 'M' as const,
      parents: ['gf'],
    })),
  ];
  const grandson = (id: string, name: string, of: string) => ({ id, name, sex: 'M' as const, parents: [of] });

  test('the grandfather’s own name in every family, set against its frequency', () => {
    const people = [
      ...elder,
      grandson('a', 'Cornelius Phelan', 'maurice'),
      grandson('b', 'Con Phelan', 's2'),
      grandson('c', 'John Phelan', 's3'),
    ];
    const [clue] = clues(family({ people }), 'repeated-name');
    expect(told(clue).says).toBe(
      '2 of the 3 families of Cornelius Phelan’s grandsons have a Cornelius, his own name.',
    );
    expect(told(clue).chance).toContain('in Ireland');
    expect(clue!.weak).toBe(false);
  });
  test('a name of nobody known points to a forebear', () => {
    const people = [
      ...elder,
      grandson('a', 'Florence Phelan', 'maurice'),
      grandson('b', 'Florence Phelan', 's2'),
    ];
    expect(told(clues(family({ people }), 'repeated-name')[0]).suggests).toContain(
      'grandfather of Cornelius Phelan',
    );
  });
  test('a name as common as John among many is no clue', () => {
    const many = Array.from({ length: 40 }, (_, n) => ({
      id: `t${n}`,
      name: `Son Phelan`,
      sex: 'M' as const,
      parents: ['gf'],
    }));
    const people = [
      ...elder,
      ...many,
      ...many.flatMap(({ id }, n) => [
        grandson(`${id}a`, n < 2 ? 'John Phelan' : 'Cornelius Phelan', id),
        grandson(`${id}b`, `Child${n} Phelan`, id),
      ]),
    ];
    expect(
      clues(family({ people }), 'repeated-name').filter((clue) => told(clue).says.includes('a John')),
    ).toEqual([]);
  });
});

describe('the custom of naming', () => {
  const born = (year: number) => ({ born: { date: String(year) } });
  const parents = [
    { id: 'father', name: 'Patrick Phelan', sex: 'M' as const, spouses: ['mother'] },
    { id: 'mother', name: 'Mary Power', sex: 'F' as const },
  ];
  const of = (id: string, name: string, sex: 'M' | 'F', year: number) => ({
    id,
    name,
    sex,
    parents: ['father', 'mother'],
    ...born(year),
  });
  const children = [
    of('t', 'Thomas Phelan', 'M', 1834),
    of('ellen', 'Ellen Phelan', 'F', 1837),
    of('maurice', 'Maurice Phelan', 'M', 1840),
    of('b', 'Bridget Phelan', 'F', 1843),
  ];
  test('suggests grandparents not known by name', () => {
    const [clue] = clues(family({ people: [...parents, ...children] }), 'naming-custom');
    expect(told(clue).says).toBe(
      'If Patrick Phelan and Mary Power kept to the custom, their eldest children were named Thomas for the father of Patrick Phelan, Maurice for the father of Mary Power, Ellen for the mother of Mary Power and Bridget for the mother of Patrick Phelan: names not known otherwise.',
    );
    expect(clue!.chance).toBeUndefined();
  });
  test('says how far the couple kept to it where that is known, and nothing where it did not', () => {
    const known = (name: string) => [
      ...parents.map((one) => (one.id === 'father' ? { ...one, parents: ['gf'] } : one)),
      { id: 'gf', name, sex: 'M' as const },
      ...children,
    ];
    const [clue] = clues(family({ people: known('Thomas Phelan') }), 'naming-custom');
    expect(told(clue).because).toContain('Of the one name of theirs that can be compared, 1 keeps to it.');
    expect(told(clue).says).not.toContain('father of Patrick Phelan');
    expect(clues(family({ people: known('Denis Phelan') }), 'naming-custom')).toEqual([]);
  });
  test('only where the custom was, and where the order of the children is known', () => {
    const people = [...parents, ...children];
    const elsewhere = family({
      people,
      places: ireland.map((one) =>
        one.id === 'ireland' ? { ...one, id: 'france' } : { ...one, within: ['france'] },
      ),
    });
    expect(clues(elsewhere, 'naming-custom')).toEqual([]);
    const undated = [
      ...people,
      { id: 'u', name: 'John Phelan', sex: 'M' as const, parents: ['father', 'mother'] },
    ];
    expect(told(clues(family({ people: undated }), 'naming-custom')[0]).says).not.toContain('Thomas');
  });
});

describe('mothers of several maiden names', () => {
  const content = (...names: string[]) =>
    family({
      people: [
        couple[0]!,
        { ...couple[1]!, mentions: names.map((_, n) => `r${n}#m`) },
        child('pat', 'Patrick Phelan'),
      ],
      records: names.map((name, n) => ({ id: `r${n}`, mentions: [{ id: 'm', name }] })),
    });
  test('are told', () => {
    const [clue] = clues(content('Johanna Kirwan', 'Hannah Foley', 'Johanna Kirwan'), 'mother');
    expect(told(clue).says).toBe(
      'Records give Johanna Kirwan different surnames that are not her husband’s: Kirwan (2 records), Foley (1 record).',
    );
  });
  test('but not spellings of one name, her married name, or a ditto', () => {
    expect(
      clues(content('Johanna Kirwan', 'Johanna Kerwin', 'Johanna Phelan', 'Johanna do'), 'mother'),
    ).toEqual([]);
  });
});

test('a family of thousands stays within bounds', () => {
  const people = Array.from({ length: 4000 }, (_, n) => ({
    id: n === 0 ? 'maurice' : `p${n}`,
    name: n % 2 ? 'Mary Power Phelan' : 'Patrick Power Phelan',
    sex: n % 2 ? ('F' as const) : ('M' as const),
    parents: n === 0 ? [] : [n < 8 ? 'maurice' : `p${Math.floor(n / 8)}`],
    mentions: [`list#m${n}`],
  }));
  const mentions = Array.from({ length: 6000 }, (_, n) => ({
    id: `m${n}`,
    name: 'Patrick Power',
    ...(n < 4000 ? {} : { role: 'witness' }),
  }));
  const content = family({ people, records: [{ id: 'list', mentions }] });
  const start = performance.now();
  const { clues: found, left } = cluesOf(content, content.cases.get('c')!);
  expect(performance.now() - start).toBeLessThan(5000);
  expect(found.length).toBeLessThanOrEqual(mostClues);
  expect(left).toBeGreaterThan(0);
});
