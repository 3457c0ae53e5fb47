import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPeople } from '../../../src/imports/people-file.ts';
import { preparePeople } from '../../../src/imports/people-table.ts';
import { linkTables, type LinkOptions } from '../../../src/reasoning/identity/bulk/link.ts';
import { germanRegister, irishLists } from '../../bench/compare-data.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-link-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** By keys, as large tables are compared. */
const usual: LinkOptions = { rarity: true, learn: true, rivals: true, oneToOne: false, fewPairs: 0 };

/** Pairs of ids with their probability. */
function compare(a: string, b?: string, options: LinkOptions = usual) {
  const read = (name: string, csv: string) => {
    writeFileSync(join(work, name), csv);
    return readPeople(join(work, name), name, { map: [], withoutHeadings: false });
  };
  const one = read('a.csv', a);
  const other = b === undefined ? undefined : read('b.csv', b);
  const result = linkTables(preparePeople(one, other, {}).tables, options);
  const pairs = new Map(
    result.pairs.map((pair) => [`${one.ids[pair.a]} ${(other ?? one).ids[pair.b]}`, pair.probability]),
  );
  return { pairs, result };
}

function measure(pairs: ReadonlyMap<string, number>, truth: ReadonlySet<string>) {
  const found = [...pairs.keys()].filter((pair) => truth.has(pair)).length;
  return {
    precision: found / pairs.size,
    recall: found / truth.size,
    f: (2 * found) / (pairs.size + truth.size),
  };
}

/** The largest recall at a precision, pairs taken from the likeliest on. */
function recallAt(precision: number, pairs: ReadonlyMap<string, number>, truth: ReadonlySet<string>): number {
  let found = 0;
  let seen = 0;
  let best = 0;
  for (const pair of pairs.keys()) {
    seen++;
    if (truth.has(pair)) found++;
    if (found / seen >= precision) best = found / truth.size;
  }
  return best;
}

const lists = irishLists({ rowsA: 900, rowsB: 900, shared: 450, county: true, seed: 11 });

describe('two lists of men', () => {
  test('most are found, and few in vain', () => {
    const { pairs, result } = compare(lists.a, lists.b);
    expect(result.learned).toBe(true);
    expect(measure(pairs, lists.truth).f).toBeGreaterThan(0.82);
  });
  test('names weighed by their frequency find more than names all alike', () => {
    const at = (rarity: boolean) => compare(lists.a, lists.b, { ...usual, rarity, threshold: 0.001 }).pairs;
    expect(recallAt(0.9, at(true), lists.truth)).toBeGreaterThan(recallAt(0.9, at(false), lists.truth));
  });
  test('in small tables every pair is looked at, and more is found than by keys', () => {
    const { pairs, result } = compare(lists.a, lists.b, { ...usual, fewPairs: 1_000_000 });
    expect(result.looked).toBe(900 * 900);
    expect(result.passes).toEqual([]);
    const f = (found: ReadonlyMap<string, number>) => measure(found, lists.truth).f;
    expect(f(pairs)).toBeGreaterThan(f(compare(lists.a, lists.b).pairs));
  });
  test('the order of the rows does not matter', () => {
    const turned = (csv: string) => {
      const [head, ...rows] = csv.trimEnd().split('\n');
      return `${[head, ...rows.reverse()].join('\n')}\n`;
    };
    const straight = compare(lists.a, lists.b).pairs;
    const reversed = compare(turned(lists.a), turned(lists.b)).pairs;
    for (const [pair, probability] of straight)
      // What chance agrees in is counted in pairs at random, and other ones come to hand: near the middle it shows.
      if (probability > 0.8) expect(reversed.get(pair), pair).toBeGreaterThan(0.6);
  });
  test('the first and the second list may change places', () => {
    const straight = compare(lists.a, lists.b).pairs;
    const swapped = compare(lists.b, lists.a).pairs;
    for (const [pair, probability] of straight)
      if (probability > 0.6)
        expect(Math.abs(swapped.get(pair.split(' ').reverse().join(' '))! - probability), pair).toBeLessThan(
          0.15,
        );
  });
  test('people who have nothing to do with it do not turn a clear pair', () => {
    const strangers = Array.from({ length: 200 }, (_, at) => `z${at},Ole,Knutsen,${1600 + (at % 100)},`).join(
      '\n',
    );
    const straight = compare(lists.a, lists.b).pairs;
    const more = compare(lists.a, `${lists.b}${strangers}\n`).pairs;
    for (const [pair, probability] of straight)
      if (probability > 0.95) expect(more.get(pair) ?? 0, pair).toBeGreaterThan(0.5);
  });
  test('one to one, each row stands once', () => {
    const { pairs } = compare(lists.a, lists.b, { ...usual, oneToOne: true, threshold: 0.05 });
    for (const side of [0, 1]) {
      const ids = [...pairs.keys()].map((pair) => pair.split(' ')[side]);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
  test('the ledger adds up to the weight', () => {
    const { result } = compare(lists.a, lists.b);
    for (const pair of result.pairs.slice(0, 50)) {
      const sum = result.ledgerOf(pair.a, pair.b).reduce((total, { weight }) => total + weight, result.prior);
      expect(sum).toBeCloseTo(pair.weight, 3);
    }
  });
});

describe('a register with duplicates', () => {
  const register = germanRegister(3000, 300, 5);
  test('nearly all are found, and hardly any in vain', () => {
    const { pairs } = compare(register.csv);
    expect(measure(pairs, register.truth).f).toBeGreaterThan(0.95);
  });
  test('the keys find hardly less than looking at every pair does', () => {
    const { result } = compare(register.csv, undefined, { ...usual, threshold: 0.001 });
    const found = new Set(result.pairs.map(({ a, b }) => `${a + 1} ${b + 1}`));
    const missed = [...register.truth].filter((pair) => !found.has(pair));
    expect(missed.length / register.truth.size).toBeLessThan(0.02);
    expect(result.looked).toBeLessThan(result.possible / 50);
  });
});

// The first set of the FEBRL generator (Australian National University, BSD-3-Clause): 500 people, each with one altered
// row; the truth is the number in rec_id. It is no part of the project: without it, the register above stands in.
const febrl = resolve(import.meta.dirname, '../../../../shared/data/linkage-febrl1.csv');
test.skipIf(!existsSync(febrl))('FEBRL set 1, where it lies beside the project', () => {
  const { pairs } = compare(readFileSync(febrl, 'utf8'));
  const truth = new Set([...pairs.keys()].filter((pair) => new Set(pair.match(/\d+(?=-)/g)).size === 1));
  expect(truth.size).toBeGreaterThan(495);
  expect(truth.size / pairs.size).toBeGreaterThan(0.99);
});

test('two equally good candidates leave both doubtful', () => {
  const { pairs } = compare(
    'id,given,surname,born\na,Thomas,Tuohill,1840\n',
    'id,given,surname,born\nx,Thomas,Tuohill,1840\ny,Thomas,Tuohill,1840\n',
    { ...usual, threshold: 0 },
  );
  expect(pairs.get('a x')).toBeCloseTo(pairs.get('a y')!, 6);
  expect(pairs.get('a x')!).toBeLessThan(0.51);
});

test('keys that very many rows share are made narrower, and the pairs in them still found', () => {
  const people = Array.from({ length: 4000 }, (_, at) => `John,Murphy,${1800 + (at % 80)},place${at % 997}`);
  const csv = `given,surname,birth year,townland\n${people.join('\n')}\nJohn,Murphy,1833,placexyz\nJohn,Murphy,1833,placexyz\n`;
  const { result, pairs } = compare(csv, undefined, { ...usual, threshold: 0.01 });
  expect(result.looked).toBeLessThan(result.possible);
  expect([...pairs.keys()]).toContain('4001 4002');
});
