/** Awkward shapes, each with an answer known by argument; none may take long. */
import { describe, expect, test } from 'vitest';
import { computeCase } from '../../src/reasoning/case.ts';
import type { Facts } from '../../src/model/facts.ts';
import { copy, dependencyGraph, item, range, record, shape } from './shapes.ts';

const solved = (facts: Facts) => computeCase(facts, 'shape');
const quickly = 10_000;

describe('long chains', () => {
  test('a chain of 3,000 copies is one body of evidence with its exemplar', { timeout: quickly }, () => {
    const last = 2999;
    const facts = shape({
      records: [
        record('r0'),
        ...range(last).map((i) => copy(`r${i + 1}`, [`r${i}`])),
        record('other'),
      ].reverse(),
      evidence: [item('copy', `r${last}#m`), item('exemplar', 'r0#m'), item('other', 'other#m')],
    });
    const result = solved(facts);
    expect(result).toMatchObject({ independent: 2, dependence: [['copy', 'exemplar']], undetermined: [] });
    expect(result.items[0]?.roots).toMatchObject([
      { key: 'described:r0/clerk', known: true, viaPerhaps: false },
    ]);
    // Losing the exemplar takes both ends of the chain, losing the other record the only second voice; losing a link
    // takes the last copy alone, and the exemplar still stands beside the other.
    expect(result).toMatchObject({ margin: 1, criticalRecords: ['other', 'r0'] });
  });

  test('in a chain of 600 perhaps, each record leaves its own unknown root', { timeout: quickly }, () => {
    const last = 599;
    const facts = shape({
      records: [record('r0'), ...range(last).map((i) => copy(`r${i + 1}`, [{ perhaps: `r${i}` }]))],
      evidence: [item('copy', `r${last}#m`), item('exemplar', 'r0#m')],
    });
    const result = solved(facts);
    expect(result).toMatchObject({ independent: 1, undetermined: [['copy', 'exemplar']], margin: 0 });
    expect(result.items[0]?.roots).toHaveLength(600);
    expect(result.items[0]?.roots.filter((root) => !root.viaPerhaps)).toMatchObject([
      { key: `unknown:r${last}` },
    ]);
  });

  test(
    'a chain of 300 ties holds its last item up, and every link of it is critical',
    { timeout: quickly },
    () => {
      const links = range(300);
      const facts = shape({
        records: [
          record('tied', { place: 'glen' }),
          record('other'),
          ...links.map((i) => record(`t${i}`, { place: 'glen' })),
        ],
        evidence: [
          item('tied', 'tied#m', { tiedBy: ['t0'] }),
          item('other', 'other#m'),
          ...links.map((i) =>
            item(`t${i}`, `t${i}#m`, { place: undefined, ...(i < 299 ? { tiedBy: [`t${i + 1}`] } : {}) }),
          ),
        ],
        cites: ['tied', 'other'],
      });
      const result = solved(facts);
      expect(result).toMatchObject({ independent: 2, margin: 1, untied: ['t299'] });
      expect(result.criticalRecords).toEqual(['tied', 'other', ...links.map((i) => `t${i}`)].sort());
    },
  );

  test('an informant 500 generations down may still repeat what they were told', { timeout: quickly }, () => {
    const facts = shape({
      records: [
        record('old'),
        record('young', { informants: { self: { person: 'd499', knowledge: 'secondary' } } }),
      ],
      evidence: [item('old', 'old#m'), item('young', 'young#m')],
      people: range(500).map((i) => ({ id: `d${i}`, parents: [i === 0 ? 'subject' : `d${i - 1}`] })),
    });
    expect(
      solved(facts)
        .items[1]?.roots.map((root) => [root.key, root.known])
        .sort(),
    ).toEqual([
      ['person:d499', true],
      ['person:subject', false],
    ]);
  });
});

describe('many ways round', () => {
  // From the top of 40 layers there are 2^40 ways down.
  const layers = 40;
  const lattice = (link: (id: string) => string | { perhaps: string }) => [
    record('r0-a'),
    record('r0-b'),
    ...range(layers).flatMap((i) =>
      ['a', 'b'].map((side) => copy(`r${i + 1}-${side}`, [link(`r${i}-a`), link(`r${i}-b`)])),
    ),
  ];

  test('copies of two exemplars through 40 layers', { timeout: quickly }, () => {
    const facts = shape({
      records: lattice((id) => id),
      evidence: [item('top', `r${layers}-a#m`), item('a', 'r0-a#m'), item('b', 'r0-b#m')],
    });
    expect(solved(facts)).toMatchObject({
      independent: 2,
      dependence: [
        ['top', 'a'],
        ['top', 'b'],
      ],
      margin: 1,
      criticalRecords: ['r0-a', 'r0-b'],
    });
  });

  test('the same where each step is only likely', { timeout: quickly }, () => {
    const facts = shape({
      records: lattice((id) => ({ perhaps: id })),
      evidence: [item('top', `r${layers}-a#m`), item('a', 'r0-a#m'), item('b', 'r0-b#m')],
    });
    expect(solved(facts)).toMatchObject({
      independent: 2,
      dependence: [],
      undetermined: [
        ['top', 'a'],
        ['top', 'b'],
      ],
    });
  });

  test('ten records that may each copy any other', { timeout: quickly }, () => {
    const others = (i: number) =>
      range(10)
        .filter((j) => j !== i)
        .map((j) => ({ perhaps: `r${j}` }));
    const facts = shape({
      records: range(10).map((i) => record(`r${i}`, { derivedFrom: others(i) })),
      evidence: range(10).map((i) => item(`e${i}`, `r${i}#m`)),
    });
    const result = solved(facts);
    expect(result).toMatchObject({ independent: 1, dependence: [], margin: 0 });
    expect(result.undetermined).toHaveLength(45);
    for (const { id, roots } of result.items) {
      // Its own clerk known, the nine others possible, nobody unknown.
      expect(roots.filter((root) => root.known).map((root) => root.key)).toEqual([
        `described:r${id.slice(1)}/clerk`,
      ]);
      expect(
        roots.filter((root) => !root.known && root.viaPerhaps && root.kind === 'described'),
      ).toHaveLength(9);
      expect(roots).toHaveLength(10);
    }
  });

  test('a place inside several others, which meet again above', { timeout: quickly }, () => {
    // Glen lies in parishes a and b; both lie in barony z and county m; and so on for 20 layers.
    const places = range(20).flatMap((i) =>
      ['a', 'b'].map((side) => ({
        id: `x${i}-${side}`,
        within: i === 0 ? ['there'] : [`x${i - 1}-a`, `x${i - 1}-b`],
      })),
    );
    const facts = shape({
      records: [record('one'), record('two'), record('three')],
      evidence: [
        item('one', 'one#m'),
        item('two', 'two#m', { place: 'x19-a' }),
        item('three', 'three#m', { place: 'x19-b' }),
      ],
      places: [
        { id: 'glen', within: ['x19-b', 'x19-a'] },
        ...places,
        { id: 'there', kind: 'country' },
        { id: 'here', kind: 'country' },
      ],
    });
    const result = solved(facts);
    expect(result.support.map((level) => level.place)).toEqual([
      'glen',
      ...range(20).flatMap((i) => [`x${19 - i}-a`, `x${19 - i}-b`]),
      'there',
    ]);
    expect(result.support.slice(0, 4).map((level) => [level.independent, level.evidence])).toEqual([
      [1, ['one']],
      [2, ['one', 'two']],
      [2, ['one', 'three']],
      [3, ['one', 'two', 'three']],
    ]);
    expect(result.conflicts).toEqual([]);
  });
});

describe('many items', () => {
  test('30 items of 30 first-hand clerks are 30 independent items', { timeout: quickly }, () => {
    const facts = shape({
      records: range(30).map((i) => record(`r${i}`)),
      evidence: range(30).map((i) => item(`e${i}`, `r${i}#m`)),
    });
    // All but one must go before fewer than two are left.
    expect(solved(facts)).toMatchObject({
      standing: 'meets',
      independent: 30,
      margin: 29,
      criticalRecords: [],
    });
  });

  test('40 items of one informant are one item', { timeout: quickly }, () => {
    const facts = shape({
      records: range(40).map((i) =>
        record(`r${i}`, { informants: { self: { person: 'subject', knowledge: 'primary' } } }),
      ),
      evidence: range(40).map((i) => item(`e${i}`, `r${i}#m`)),
    });
    const result = solved(facts);
    expect(result).toMatchObject({
      standing: 'short',
      independent: 1,
      margin: 0,
      criticalRecords: [],
      weakest: [],
    });
    expect(result.dependence).toHaveLength(780);
  });

  test('two informants with 12 and 8 records: all the fewer must go', { timeout: quickly }, () => {
    const facts = dependencyGraph(20, (a, b) => a < 12 === b < 12);
    expect(solved(facts)).toMatchObject({ independent: 2, margin: 8, criticalRecords: [] });
  });

  test('three informants with 5, 4 and 3 records: all but the most must go', { timeout: quickly }, () => {
    const group = (i: number) => (i < 5 ? 0 : i < 9 ? 1 : 2);
    const facts = dependencyGraph(12, (a, b) => group(a) === group(b));
    expect(solved(facts)).toMatchObject({ independent: 3, margin: 7, criticalRecords: [] });
  });

  test('20 items copied from two exemplars fall with either', { timeout: quickly }, () => {
    const facts = shape({
      records: [record('x'), record('y'), ...range(20).map((i) => copy(`r${i}`, [i < 10 ? 'x' : 'y']))],
      evidence: range(20).map((i) => item(`e${i}`, `r${i}#m`)),
    });
    expect(solved(facts)).toMatchObject({ independent: 2, margin: 1, criticalRecords: ['x', 'y'] });
  });

  test('a star: ten independent items that one record ties to the subject', { timeout: quickly }, () => {
    const facts = shape({
      records: [record('hub'), ...range(10).map((i) => record(`r${i}`))],
      evidence: [
        item('hub', 'hub#m', { place: undefined }),
        ...range(10).map((i) => item(`e${i}`, `r${i}#m`, { tiedBy: ['hub'] })),
      ],
      strangers: range(10).map((i) => `r${i}#m`),
    });
    expect(solved(facts)).toMatchObject({
      independent: 10,
      margin: 1,
      criticalRecords: ['hub'],
      weakest: ['hub'],
      untied: [],
    });
  });

  test('a star with two hubs, either of which is enough', { timeout: quickly }, () => {
    const facts = shape({
      records: [record('hub-a'), record('hub-b'), ...range(10).map((i) => record(`r${i}`))],
      evidence: [
        item('a', 'hub-a#m', { place: undefined }),
        item('b', 'hub-b#m', { place: undefined }),
        ...range(10).map((i) => item(`e${i}`, `r${i}#m`, { tiedBy: ['a', 'b'] })),
      ],
      strangers: range(10).map((i) => `r${i}#m`),
    });
    expect(solved(facts)).toMatchObject({
      independent: 10,
      margin: 2,
      criticalRecords: [],
      weakest: ['hub-a', 'hub-b'],
    });
  });

  test('one item from 500 mentions, and a record of 2,000', { timeout: quickly }, () => {
    const crowd = range(2000).map((i) => ({ id: `m${i}`, birthplace: 'Glin' }));
    const facts = shape({
      records: [
        record('crowd', { mentions: crowd }),
        record('other'),
        ...range(500).map((i) => record(`r${i}`)),
      ],
      evidence: [
        item('crowd', 'crowd#m1999'),
        item('other', 'other#m'),
        item(
          'all',
          range(500).map((i) => `r${i}#m`),
        ),
        item('both', ['crowd#m0', 'other#m']),
      ],
    });
    const result = solved(facts);
    // `both` depends on the first two; those and the one of 500 roots are independent.
    expect(result).toMatchObject({
      independent: 3,
      dependence: [
        ['crowd', 'both'],
        ['other', 'both'],
      ],
      margin: 2,
    });
    expect(result.items[2]?.roots).toHaveLength(500);
  });
});

/**
 * Graphs whose largest independent sets and cliques are known; an edge is a dependent pair. As each item has a record
 * of its own, what can be left with fewer than two independent items is a clique, so the margin is the number of
 * items less the largest clique.
 */
describe('graphs with known numbers', () => {
  const cycle = (n: number) => (a: number, b: number) => b - a === 1 || b - a === n - 1;

  test.each([
    { n: 5, independent: 2, clique: 2 },
    { n: 7, independent: 3, clique: 2 },
    { n: 25, independent: 12, clique: 2 },
  ])('a ring of $n: every second one', ({ n, independent, clique }) => {
    expect(solved(dependencyGraph(n, cycle(n)))).toMatchObject({ independent, margin: n - clique });
  });

  test('the Petersen graph: 4, and no three in a clique', () => {
    // Pairs out of five, joined when they have nothing in common: Kneser graph K(5,2), from memory; its independence
    // number is 4 by the theorem of Erdős, Ko and Rado (all pairs with one element in common).
    const pairs = range(5).flatMap((a) => range(5).flatMap((b) => (a < b ? [[a, b]] : [])));
    const apart = (a: number, b: number) => !pairs[a]?.some((one) => pairs[b]?.includes(one));
    expect(solved(dependencyGraph(10, apart))).toMatchObject({ independent: 4, margin: 8 });
  });

  test.each([
    { q: 13, number: 3 },
    { q: 17, number: 3 },
    { q: 29, number: 4 },
    { q: 37, number: 4 },
  ])('the Paley graph of $q: $number both ways', { timeout: quickly }, ({ q, number }) => {
    // Joined when the difference is a square modulo q. Self-complementary, so both numbers are equal; 3 for 13 and 17
    // (the latter shows R(4,4) > 17: Greenwood and Gleason, 1955), 4 for 29 and 37 (from memory; checked by trying all sets).
    const squares = new Set(
      range(q)
        .slice(1)
        .map((x) => (x * x) % q),
    );
    expect(solved(dependencyGraph(q, (a, b) => squares.has(b - a)))).toMatchObject({
      independent: number,
      margin: q - number,
    });
  });
});
