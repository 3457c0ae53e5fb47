/**
 * Travelling parties in invented lists whose parties are known, and what must hold of any list.
 *
 * Checked against: C(n, k) and Cayley’s k^(k − 2) (A. Cayley, Quarterly Journal of Mathematics 23 (1889)); the number of falls
 * of a random order, mean (n − 1)/2 and variance (n + 1)/12 (D. E. Knuth, The Art of Computer Programming 3, §5.1, from
 * memory); simulation.
 */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { isAlphabetical } from '../../../src/reasoning/migration/order.ts';
import { partiesAmong } from '../../../src/reasoning/migration/parties.ts';
import type { ListEntry } from '../../../src/reasoning/migration/types.ts';
import { seeded } from '../../bench/random.ts';
import { foundParties, pairScore, settings, voyage } from '../../bench/voyages.ts';

const setting = (name: string) => settings.find((one) => one.name.startsWith(name))!;
const members = (entries: readonly ListEntry[]) =>
  partiesAmong(entries).parties.map((party) => party.members.map(({ ref }) => ref));

describe('parties of invented lists', () => {
  // Seeds that no threshold was chosen by.
  const heldOut = [501, 502, 503];
  // Least F1; a list of names and ages in alphabetical order cannot tell parties from namesakes.
  const least: Record<string, number> = { alphabetical: 0, 'without tickets': 0.1 };
  it.each(settings.map((one) => [one.name, one] as const))('%s', (name, one) => {
    const scores = heldOut.map((seed) => {
      const { entries, party } = voyage({ ...one, seed });
      return pairScore(party, foundParties(entries, partiesAmong(entries).parties));
    });
    const mean = (key: 'precision' | 'f1') =>
      scores.reduce((sum, score) => sum + score[key], 0) / scores.length;
    if (name !== 'names and ages only, alphabetical') {
      expect(mean('precision')).toBeGreaterThanOrEqual(0.85);
      const known = Object.keys(least).find((key) => name.includes(key) && !name.includes('tickets, formal'));
      expect(mean('f1')).toBeGreaterThanOrEqual(known === undefined ? 0.8 : least[known]!);
    }
  });

  // What is known of common surnames in general keeps the Murphys apart (invented shares).
  const commonest = new Set('Murphy Kelly Sullivan Walsh Smith Brien Byrne Ryan Connor Neill'.split(' '));
  const generalShare = (surname: string) => (commonest.has(surname) ? 0.02 : undefined);

  it.each([120, 400])('names and ages alone, alphabetical, many surnames: %i entries', (entries) => {
    const scores = heldOut.map((seed) => {
      const list = voyage({
        ...setting('names and ages only, alphabetical'),
        entries,
        surnames: 2700,
        seed,
      });
      const { parties } = partiesAmong(list.entries, { generalShare });
      return pairScore(list.party, foundParties(list.entries, parties));
    });
    for (const { precision, recall } of scores) {
      expect(precision).toBeGreaterThanOrEqual(0.85);
      expect(recall).toBeGreaterThanOrEqual(0.2);
    }
  });

  it('does not take namesakes for families where children find no parent of their name', () => {
    const random = seeded(11);
    let found = 0;
    for (let list = 0; list < 10; list++) {
      const entries = voyage({
        ...setting('names and ages only, alphabetical'),
        entries: 200,
        alone: 10,
        surnames: 2700,
        seed: 40 + list,
      }).entries.map((entry) => ({ ...entry, age: random.below(60) }));
      found += partiesAmong(entries, { generalShare }).parties.flatMap(({ members: all }) => all).length;
    }
    expect(found / 2000).toBeLessThan(0.03);
  });

  it('finds next to nobody among strangers', () => {
    const name = 'tickets, formal names, shuffled';
    let wrong = 0;
    let all = 0;
    for (let seed = 0; seed < 20; seed++) {
      const { entries } = voyage({ ...setting(name), entries: 300, alone: 10, seed });
      wrong += members(entries).flat().length;
      all += entries.length;
    }
    expect(wrong / all).toBeLessThan(0.02);
  });
});

describe('evidence', () => {
  const crowd = (count: number, more: (i: number) => Partial<ListEntry>): ListEntry[] => {
    const { entries } = voyage({
      ...setting('tickets, formal names, shuffled'),
      entries: count,
      alone: 10,
      seed: 7,
    });
    return entries.map((entry, i) => ({ ...entry, ...more(i) }));
  };
  const at = (entries: ListEntry[], some: Record<number, Partial<ListEntry>>) =>
    entries.map((entry, i) => ({ ...entry, ...some[i] }));

  it('takes a ticket few hold for a party’s, under any surnames', () => {
    const list = at(
      crowd(300, () => ({})),
      {
        10: { name: 'Abelson, Mr. Hugh', ticket: 'PC 17599', port: 'a' },
        200: { name: 'Zimmer, Miss. Rose', ticket: 'PC 17599', port: 'a' },
      },
    );
    expect(members(list)).toContainEqual(['m11', 'm201']);
  });

  it('takes a word that many hold for no ticket of a party', () => {
    const list = crowd(300, (i) => (i % 10 === 0 ? { ticket: 'LINE' } : {}));
    const holders = new Set(list.flatMap(({ ticket, ref }) => (ticket === 'LINE' ? [ref] : [])));
    const together = members(list).filter((party) => party.filter((ref) => holders.has(ref)).length > 2);
    expect(together).toEqual([]);
  });

  it('puts a wife beside the husband whose names she is listed under', () => {
    const list = at(
      crowd(200, () => ({ age: 30 })),
      {
        3: { name: 'Quillman, Mr. Thomas Henry', sex: 'M', age: 31, ticket: '900001', port: 'a' },
        150: {
          name: 'Quillman, Mrs. Thomas Henry (Rose Albrand)',
          sex: 'F',
          age: 29,
          ticket: '950777',
          port: 'a',
        },
      },
    );
    expect(members(list)).toContainEqual(['m4', 'm151']);
  });

  it('never takes an origin from standing side by side', () => {
    for (const name of ['names and ages only, as embarked', 'whom they join, last residence']) {
      const { entries } = voyage({ ...setting(name), seed: 3 });
      const byRef = new Map(entries.map((entry) => [entry.ref, entry]));
      for (const { origin, members: of } of partiesAmong(entries).parties) {
        const stating = of.filter(({ ref }) => byRef.get(ref)!.origin !== undefined);
        if (origin) {
          expect(stating.length).toBeGreaterThan(1);
          for (const { ref } of stating) expect(byRef.get(ref)!.origin).toContain(origin.place);
        }
        if (stating.length < 2) expect(origin).toBeUndefined();
      }
    }
  });

  it('reckons what strangers would show as C(n, 2) times the chances', () => {
    const list: ListEntry[] = Array.from({ length: 40 }, (_, i) => ({
      ref: `p${i}`,
      name: `${'ABCDEFGH'[i % 8]}q${'abcdefgh'[i >> 3]}lor, Mr. Hugh`,
    }));
    const stated: ListEntry[] = list.map((entry, i) =>
      i === 5 ? { ...entry, stated: [{ as: 'spouse', of: 'p30', kin: true }] } : entry,
    );
    const [party] = partiesAmong(stated).parties.filter(({ members: of }) =>
      of.some(({ ref }) => ref === 'p5'),
    );
    const other = party!.members[0]!.why.reduce(
      (product, { kind }) => product * (kind === 'kin' ? 1e-5 : 1),
      1,
    );
    expect(party!.members).toHaveLength(2);
    expect(party!.expected).toBeCloseTo(((40 * 39) / 2) * other, 8);
    expect(party!.chance).toBeCloseTo(1 - Math.exp(-party!.expected), 8);
  });
});

describe('the order of a list', () => {
  it('is alphabetical where it rises throughout, and seldom by accident', () => {
    const letters = Array.from({ length: 60 }, (_, i) => String.fromCharCode(97 + Math.floor(i / 3)));
    expect(isAlphabetical(letters)).toBe(true);
    const random = seeded(9);
    let taken = 0;
    for (let round = 0; round < 2000; round++)
      if (isAlphabetical(Array.from({ length: 40 }, () => String.fromCharCode(97 + random.below(26)))))
        taken++;
    // Above three deviations lies 0.00135 of the normal distribution.
    expect(taken / 2000).toBeLessThan(0.004);
  });
});

describe('any list', () => {
  const entry = fc.record(
    {
      name: fc.oneof(
        fc.string(),
        fc.constantFrom('Do', 'Mary Do', '" Ann', 'Kelly, Mrs. John (Mary Byrne)', ''),
      ),
      sex: fc.constantFrom('M' as const, 'F' as const),
      age: fc.oneof(fc.integer({ min: -5, max: 200 }), fc.constant(NaN)),
      line: fc.oneof(fc.integer({ min: 0, max: 50 }), fc.constant(Infinity)),
      ticket: fc.oneof(fc.constantFrom('1', 'A/5 21171', 'LINE', '99999999999999999999'), fc.string()),
      household: fc.constantFrom('1', '2'),
      origin: fc.array(fc.constantFrom('a', 'b', 'c'), { maxLength: 3 }),
      bound: fc.array(fc.constantFrom('x', 'y'), { maxLength: 2 }),
      joining: fc.array(fc.string(), { maxLength: 2 }),
      stated: fc.array(
        fc.record({
          as: fc.constant('spouse'),
          of: fc.constantFrom('r0', 'r1', 'nobody'),
          kin: fc.boolean(),
        }),
        { maxLength: 2 },
      ),
    },
    { requiredKeys: [] },
  );
  it('is read without failing, each entry in one party at most, every number in its bounds', () => {
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 25 }), (some) => {
        const list = some.map((one, i) => ({ ...one, ref: `r${i}` })) as ListEntry[];
        const { parties } = partiesAmong(list);
        const refs = parties.flatMap((party) => party.members.map(({ ref }) => ref));
        expect(new Set(refs).size).toBe(refs.length);
        for (const party of parties) {
          expect(party.chance).toBeGreaterThanOrEqual(0);
          expect(party.chance).toBeLessThanOrEqual(1);
          for (const { probability } of party.members)
            expect(probability >= 0 && probability <= 1).toBe(true);
          for (const { chance } of party.shared) expect(chance >= 0 && chance <= 1).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('has the same parties whatever its entries are called', () => {
    const { entries } = voyage({ ...setting('tickets, formal names, shuffled'), entries: 200, seed: 4 });
    const renamed = entries.map((one) => ({ ...one, ref: `x-${one.ref}` }));
    expect(members(renamed)).toEqual(members(entries).map((refs) => refs.map((ref) => `x-${ref}`)));
  });

  it('takes bounded time where everybody is alike', () => {
    const list: ListEntry[] = Array.from({ length: 2000 }, (_, i) => ({
      ref: `r${i}`,
      name: 'John Murphy',
      ticket: '1',
      origin: ['a'],
      bound: ['b'],
      age: 20,
    }));
    const start = performance.now();
    partiesAmong(list);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
