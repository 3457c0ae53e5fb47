import { describe, expect, test } from 'vitest';
import { candidatesIn, candidatesOf, posterior } from '../../../src/reasoning/candidates/candidates.ts';
import { candidateProblems } from '../../../src/reasoning/candidates/problems.ts';
import type { FamilyField } from '../../../src/reasoning/candidates/types.ts';
import type { Facts } from '../../../src/model/facts.ts';
import { caseOf, type Told } from './family-facts.ts';

const compared = (facts: Facts) => candidatesOf(facts, facts.cases.get('c')!);
const rowOf = (facts: Facts, field: FamilyField, at = 0) =>
  compared(facts)[at]!.rows.find((row) => row.field === field);

const here: Told = {
  child: { name: 'Maurice Phelan', born: '1840' },
  father: 'Patrick Phelan',
  mother: 'Mary Power',
  siblings: [
    { name: 'Thomas Phelan', born: '1835' },
    { name: 'Bridget Phelan', born: '1843', sex: 'F' },
  ],
  place: 'Kill, Co. Waterford',
};
const right: Told = {
  child: { name: 'Maurice', born: '1840-03-02' },
  father: 'Patt Whelan',
  mother: 'Mary Powers',
  siblings: [
    { name: 'Thos', born: '1834-11-23' },
    { name: 'Bridget', born: '1843-09-17', sex: 'F' },
  ],
  place: 'Knockmahon',
};
const wrong: Told = {
  child: { name: 'Mauritius', born: '1841-01-31' },
  father: 'Joannes Whelan',
  mother: 'Catharina Hurly',
  place: 'Newtown',
};

describe('a candidate beside the family as the new country knows it', () => {
  /* Common practice: names in Latin and in abbreviation, and spellings of a surname, make no other family. */
  test('names agree through their forms, and each agreement is shown with its records', () => {
    const facts = caseOf(here, [right]);
    expect(compared(facts)[0]!.rows.map(({ field, verdict }) => `${field} ${verdict}`)).toEqual([
      'given agrees',
      'birth agrees',
      'surname agrees',
      'father agrees',
      'mother agrees',
      'maiden agrees',
      'sibling agrees',
      'sibling agrees',
      'order agrees',
      'place agrees',
      'afterwards unsaid',
    ]);
    expect(rowOf(facts, 'maiden')).toMatchObject({
      a: 'Power',
      b: 'Powers',
      aFrom: [{ text: 'Power', ref: 'death#m3' }],
      bFrom: [{ text: 'Powers', ref: 'a-0#m3' }],
    });
  });

  test('the weight is the sum of the ledger', () => {
    for (const one of compared(caseOf(here, [right, wrong])))
      expect(one.rows.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(one.weight, 10);
  });

  test('other parents speak against a child of the right name', () => {
    const [a, b] = compared(caseOf(here, [right, { ...wrong, at: 'newtown' }]));
    expect(a!.weight).toBeGreaterThan(b!.weight + 15);
    expect(b!.rows.filter(({ verdict }) => verdict === 'differs').map(({ field }) => field)).toEqual([
      'father',
      'mother',
      'maiden',
      'place',
    ]);
  });

  test('what a candidate’s records say does not slip into the yardstick', () => {
    // The author has joined the subject and the father to the register: the mother's name stands only there.
    const facts = caseOf({ ...here, mother: undefined as never, siblings: [] }, [right], {
      candidate: (_, records) => ({ records, people: ['subject', 'father'] }),
    });
    const joined: Facts = {
      ...facts,
      people: new Map(
        [...facts.people].map(([id, person]) => [
          id,
          id === 'subject'
            ? { ...person, mentions: [...person.mentions, 'a-0#m1'] }
            : { ...person, mentions: [...person.mentions, 'a-0#m2'] },
        ]),
      ),
    };
    const { expected } = candidatesIn(joined, joined.cases.get('c')!);
    expect(expected.mother).toEqual([]);
    expect(expected.child!.birth!.ref).toBe('death#m1');
    expect(compared(joined)[0]!.child).toBe('subject');
    expect(rowOf(joined, 'mother')).toMatchObject({ verdict: 'unsaid', a: '', b: 'Mary', weight: 0 });
  });

  /* Common practice: of a page of a register only the family's own entry counts. */
  test('other entries of the page are no part of the family', () => {
    const facts = caseOf(here, [right], {
      records: [],
    });
    const page = facts.records.get('a-0')!;
    page.mentions.push(
      { ...page.mentions[0]!, id: 'n1', name: 'Ellen', sex: 'F', relations: [{ as: 'child', of: 'n2' }] },
      { ...page.mentions[1]!, id: 'n2', name: 'Jas Drohan' },
    );
    const [a] = compared(facts);
    expect(a!.family.father.map(({ given }) => given)).not.toContain('Jas');
    expect(a!.family.siblings.map(({ names }) => names[0]!.given)).toEqual(['Thos', 'Bridget']);
  });

  test('brothers and sisters are matched one to one, and only by fitting ages', () => {
    const twins = {
      ...here,
      siblings: [
        { name: 'John Phelan', born: '1836' },
        { name: 'John Phelan', born: '1846' },
      ],
    };
    const facts = caseOf(twins, [{ ...right, siblings: [{ name: 'John', born: '1846-01-01' }] }]);
    const siblings = compared(facts)[0]!.rows.filter(({ field }) => field === 'sibling');
    expect(siblings.map(({ a, b, verdict }) => [a, b, verdict])).toEqual([
      ['John, 1836', '', 'unsaid'],
      ['John, 1846', 'John, 1845–1846', 'agrees'],
    ]);
  });

  test('a family whose known children are all others speaks against it; one with some of them does not', () => {
    const others = [
      { name: 'Denis', born: '1836-01-01' },
      { name: 'Honora', born: '1838-01-01', sex: 'F' as const },
    ];
    const none = caseOf(here, [{ ...right, siblings: others }]);
    expect(
      compared(none)[0]!
        .rows.filter(({ field }) => field === 'sibling')
        .map(({ verdict }) => verdict),
    ).toEqual(['differs', 'differs']);
    const some = caseOf(here, [{ ...right, siblings: [...others, right.siblings![0]!] }]);
    expect(
      compared(some)[0]!
        .rows.filter(({ field }) => field === 'sibling')
        .map(({ verdict }) => verdict),
    ).toEqual(['agrees', 'unsaid']);
  });

  test('children in another order speak against it', () => {
    const turned = {
      ...right,
      siblings: [
        { name: 'Thos', born: '1844-11-23' },
        { name: 'Bridget', born: '1835-09-17', sex: 'F' as const },
      ],
    };
    const facts = caseOf(
      {
        ...here,
        siblings: [
          { name: 'Thomas Phelan', born: '1837' },
          { name: 'Bridget Phelan', born: '1843', sex: 'F' },
        ],
      },
      [turned],
    );
    expect(rowOf(facts, 'order')).toMatchObject({ agreement: 'another order', verdict: 'differs' });
    expect(rowOf(facts, 'order')!.weight).toBeLessThan(-3);
  });

  /* Common practice in Norway: the surname says the father's given name, and changes with the farm. */
  test('a patronymic speaks for the father and is not counted as a surname', () => {
    const facts = caseOf({ child: { name: 'Synneva Larsdatter', born: '1835', sex: 'F' } }, [
      {
        at: 'vik',
        child: { name: 'Synneve', born: '1835-05-09', sex: 'F' },
        father: 'Lars Tollefsen',
        mother: 'Anna Botolfsdatter',
        place: 'Hove',
      },
    ]);
    expect(rowOf(facts, 'surname')).toBeUndefined();
    expect(rowOf(facts, 'father')).toMatchObject({ verdict: 'agrees', b: 'Lars' });
    expect(rowOf(facts, 'father-patronymic')).toMatchObject({ verdict: 'unsaid', b: 'Tollefsen' });
    expect(rowOf(facts, 'maiden')).toMatchObject({ verdict: 'unsaid', b: 'Botolfsdatter' });
  });
});

describe('after the departure', () => {
  const census = (who: object[]): Parameters<typeof caseOf>[2] => ({
    records: [
      { id: 'census', made: '1871-04-02', place: 'kill', series: 'parish-registers', mentions: who as never },
    ],
    candidate: (_, records) => ({ records: [...records, 'census'] }),
  });
  test('a child who marries at home afterwards is somebody else', () => {
    const facts = caseOf(
      here,
      [right],
      census([{ id: 'm1', name: 'Maurice Whelan', role: 'groom', sex: 'M', age: 31 }]),
    );
    expect(rowOf(facts, 'afterwards')).toMatchObject({
      agreement: 'still there',
      verdict: 'differs',
      bFrom: [{ text: 'Record census', ref: 'census#m1' }],
    });
    expect(rowOf(facts, 'afterwards')!.weight).toBeCloseTo(Math.log2(0.015 / 0.5), 10);
  });
  test('a namesake of another age is not taken for the child', () => {
    const facts = caseOf(here, [right], census([{ id: 'm1', name: 'Maurice Whelan', sex: 'M', age: 55 }]));
    expect(rowOf(facts, 'afterwards')).toMatchObject({ verdict: 'unsaid', weight: 0 });
  });
  test('a record that has them abroad supports most', () => {
    const facts = caseOf(here, [right], {
      people: [{ id: 'theirs', name: 'Maurice', sex: 'M', mentions: ['a-0#m1', 'will#m1'] }],
      records: [
        {
          id: 'will',
          made: '1870',
          place: 'kill',
          mentions: [{ id: 'm1', name: 'Maurice Whelan', present: false, residence: 'Michigan' }],
        },
      ],
      candidate: (_, records) => ({ records: [...records, 'will'], people: ['theirs'] }),
    });
    expect(rowOf(facts, 'afterwards')).toMatchObject({ agreement: 'said to have left', b: 'Michigan' });
  });
  test('a search there with nothing found supports a little, if it covers years after the departure', () => {
    const search = (coverage: string) =>
      caseOf(here, [right], {
        searches: [
          {
            id: 's1',
            date: '2025-01-02',
            for: ['subject'],
            series: 'parish-registers',
            coverage,
            result: 'not-found',
          },
        ],
      });
    expect(rowOf(search('1865/1880'), 'afterwards')).toMatchObject({
      agreement: 'not there',
      b: 's1',
    });
    expect(rowOf(search('1865/1880'), 'afterwards')!.weight).toBeCloseTo(Math.log2(0.685 / 0.47), 10);
    expect(rowOf(search('1831/1858'), 'afterwards')!.verdict).toBe('unsaid');
  });
});

describe('candidates against one another', () => {
  test('two of the same family are not told apart, and it is said so', () => {
    const [a, b] = compared(caseOf(here, [right, right]));
    expect(a!.weight).toBeCloseTo(b!.weight, 10);
    expect(a!.ties).toEqual([{ other: 'b', bits: 0, fields: ['afterwards'] }]);
    expect(b!.ties).toEqual([{ other: 'a', bits: 0, fields: ['afterwards'] }]);
  });
  test('what one lacks and what nobody here has said would tell them apart', () => {
    const short = { ...here, mother: undefined as never };
    const [a] = compared(caseOf(short, [right, { ...right, mother: 'Ellen Foley' }]));
    expect(a!.ties[0]!.fields).toEqual(['maiden', 'mother', 'afterwards']);
    const [c] = compared(
      caseOf({ ...here, siblings: [] }, [
        { ...right, mother: undefined as never, siblings: [] },
        { ...right, mother: 'Mary', siblings: [] },
      ]),
    );
    expect(c!.ties[0]!.fields).toContain('maiden');
  });
  test('a rival far behind is no tie', () => {
    for (const one of compared(caseOf(here, [right, wrong]))) expect(one.ties).toEqual([]);
  });
  /* Bayes: three families of a thousand, ratios of likelihood 1,000, 1,000 and 1, half a chance that it is there at all. */
  test('the probabilities of all and of none make one', () => {
    const { each, none } = posterior([1000, 1000, 1], 1000);
    const prior = 0.5 / 1000;
    const all = 1000 * prior * 2 + prior + (1 - 3 * prior);
    expect(each[0]).toBeCloseTo((1000 * prior) / all, 12);
    expect(each.reduce((sum, one) => sum + one, none)).toBeCloseTo(1, 12);
    const facts = caseOf(here, [right, wrong, right]);
    const result = candidatesIn(facts, facts.cases.get('c')!);
    expect(result.candidates.reduce((sum, one) => sum + one.probability, result.none)).toBeCloseTo(1, 12);
  });
});

describe('a conclusion where a candidate is', () => {
  const concluded = (theirs: Told[], place = 'kill') => {
    const made = caseOf(here, theirs, {
      case: { conclusion: { place, claim: 'probable', cites: ['e1'], because: 'It agrees.' } },
    });
    return candidateProblems(made, made.cases.get('c')!);
  };
  const elsewhere: Told & { at: string } = { ...right, at: 'newtown', place: 'Newtown' };
  test('is warned of where another family elsewhere fits as well', () => {
    const bare = { ...here, place: 'Co. Waterford' };
    const made = caseOf(bare, [{ ...right, place: 'Kill' }, elsewhere], {
      case: { conclusion: { place: 'kill', claim: 'probable', cites: ['e1'], because: 'It agrees.' } },
    });
    const [problem, ...others] = candidateProblems(made, made.cases.get('c')!);
    expect(others).toEqual([]);
    expect(problem).toMatchObject({
      rule: 'candidates-are-told-apart',
      severity: 'warning',
      path: ['candidates', 0],
    });
    expect(problem!.message).toContain('candidate b');
  });
  test('is not, where the other is behind, at the same place, or the case is open', () => {
    expect(concluded([right, { ...wrong, at: 'newtown' } as Told])).toEqual([]);
    expect(concluded([right, right])).toEqual([]);
    expect(concluded([right])).toEqual([]);
    const open = caseOf(here, [right, elsewhere]);
    expect(candidateProblems(open, open.cases.get('c')!)).toEqual([]);
  });
});

describe('anything may be missing', () => {
  const bare: Told = { child: { name: 'Maurice' } };
  test.each<[string, Told, Told[]]>([
    ['no parents', bare, [bare]],
    ['no name over there', here, [{ child: { name: '' } }]],
    ['no name here', { child: { name: '—' } }, [right]],
    ['nothing over there', here, []],
  ])('%s', (_, mine, theirs) => {
    const facts = caseOf(mine, theirs);
    for (const one of compared(facts)) {
      expect(Number.isFinite(one.weight)).toBe(true);
      expect(one.probability).toBeGreaterThanOrEqual(0);
    }
  });
  test('records and people that are not there, a subject that is not', () => {
    const facts = caseOf(here, [right], { candidate: () => ({ records: ['gone'], people: ['nobody'] }) });
    expect(compared(facts)[0]!.rows.every(({ weight }) => weight === 0)).toBe(true);
    const orphan = caseOf(here, [right], { case: { subject: 'nobody' } });
    expect(compared(orphan)).toEqual([]);
  });
  test('placeholders have no name to agree with', () => {
    const facts = caseOf(here, [{ child: { name: 'Maurice', born: '1840' } }], {
      people: [
        { id: 'da', name: '— Phelan', placeholder: true, sex: 'M' },
        { id: 'theirs', name: 'Maurice', sex: 'M', parents: ['da'], mentions: ['a-0#m1'] },
      ],
      candidate: (_, records) => ({ records, people: ['da', 'theirs'] }),
    });
    expect(rowOf(facts, 'father')).toMatchObject({ verdict: 'unsaid', b: '' });
  });
});
