import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { identityFields } from '../../../src/catalogue/identity.ts';
import { dayNumber } from '../../../src/model/days.ts';
import { yearsApart } from '../../../src/reasoning/identity/agreement.ts';
import {
  compareRows,
  sharedProvenance,
  usualParameters,
} from '../../../src/reasoning/identity/compare-rows.ts';
import type { Reason } from '../../../src/model/reason.ts';
import type { IdentityRow } from '../../../src/reasoning/identity/row.ts';
import { levelWeight, priorBits } from '../../../src/reasoning/identity/weight.ts';

const year = (year: number) => ({ first: dayNumber(year, 1, 1), last: dayNumber(year, 12, 31) });
const day = (y: number, m: number, d: number) => ({ first: dayNumber(y, m, d), last: dayNumber(y, m, d) });
const context = { parameters: usualParameters, prior: priorBits(1, 1200) };
const named = (given: string, surname: string, rest: Partial<IdentityRow> = {}): IdentityRow => ({
  ref: 'r',
  given,
  surname,
  ...rest,
});

test('shares of each field add up to one', () => {
  for (const [field, { levels }] of Object.entries(identityFields)) {
    const sum = (pick: (one: { m: number; u: number }) => number) =>
      levels.reduce((total, one) => total + pick(one), 0);
    expect([field, sum((one) => one.m).toFixed(6), sum((one) => one.u).toFixed(6)]).toEqual([
      field,
      '1.000000',
      '1.000000',
    ]);
  }
});

test('a gap of five years is weaker agreement, never a contradiction', () => {
  for (const { level, ...shares } of identityFields.birth.levels)
    if (!/10/.test(level)) expect(levelWeight(shares), level).toBeGreaterThan(0);
});

describe('a ledger', () => {
  test('shows each field that one of the two states, and adds up', () => {
    const ledger = compareRows(
      named('Patk', 'Whelan', { sex: 'M', birth: year(1840), spouse: 'Mary Power' }),
      named('Patrick', 'Phelan', { sex: 'M', birth: year(1843), birthplace: 'Kill' }),
      context,
    );
    expect(ledger.rows.map(({ field, a, b, agreement }) => [field, a, b, agreement])).toEqual([
      ['given', 'Patk', 'Patrick', 'same'],
      ['surname', 'Whelan', 'Phelan', expect.stringMatching(/same|variant/)],
      ['sex', 'M', 'M', 'same'],
      ['birth', '1840', '1843', 'within 3 years'],
      ['birthplace', '', 'Kill', 'missing'],
      ['spouse', 'Mary Power', '', 'missing'],
    ]);
    expect(ledger.weight).toBeCloseTo(
      ledger.prior + ledger.rows.reduce((sum, { weight }) => sum + weight, 0),
    );
    expect(ledger.probability).toBeCloseTo(2 ** ledger.weight / (1 + 2 ** ledger.weight));
  });
  test('what is missing weighs nothing', () => {
    const full = named('John', 'Kirwan', { sex: 'M', birth: year(1840) });
    const bare = named('John', 'Kirwan');
    const withMore = compareRows(full, bare, context);
    expect(withMore.weight).toBeCloseTo(compareRows(bare, bare, context).weight);
    expect(
      withMore.rows.filter(({ agreement }) => agreement === 'missing').map(({ weight }) => weight),
    ).toEqual([0, 0]);
  });
  test('a common name weighs less than a rare one, and says why', () => {
    const borne = (text: string): Reason => ({ key: 'borne-from-memory', name: text, place: '', share: 0 });
    const shares = (_: string, value: string) =>
      value === 'Murphy'
        ? { share: 0.0133, reason: borne('common'), because: '' }
        : { share: 0.0006, reason: borne('rare'), because: '' };
    const murphy = compareRows(named('John', 'Murphy'), named('John', 'Murphy'), { ...context, shares });
    const kirwan = compareRows(named('John', 'Kirwan'), named('John', 'Kirwan'), { ...context, shares });
    expect(kirwan.weight - murphy.weight).toBeCloseTo(Math.log2(0.0133 / 0.0006), 6);
    expect(murphy.rows[1]!.because).toEqual([borne('common')]);
    // Sum of m ÷ share: the shares of the parameters have no say in an exact agreement.
    expect(murphy.rows[1]!.weight).toBeCloseTo(Math.log2(0.62 / 0.0133), 6);
  });
  test('days of birth are compared as birthdays', () => {
    const agreement = (a: IdentityRow['birth'], b: IdentityRow['birth']) =>
      compareRows(named('A', 'B', { birth: a! }), named('A', 'B', { birth: b! }), context).rows.find(
        ({ field }) => field === 'birthday',
      )?.agreement;
    expect(agreement(day(1840, 4, 11), day(1840, 4, 11))).toBe('same');
    expect(agreement(day(1840, 4, 11), day(1840, 11, 4))).toBe('close');
    expect(agreement(day(1840, 4, 11), day(1840, 5, 12))).toBe('different');
    expect(agreement(day(1840, 4, 11), year(1840))).toBeUndefined();
  });
  test('the household speaks for a match', () => {
    const alone = compareRows(named('John', 'Murphy'), named('John', 'Murphy'), context);
    const together = compareRows(
      named('John', 'Murphy', { spouse: 'Biddy Power', children: ['Wm', 'Johanna', 'Thos'] }),
      named('John', 'Murphy', { spouse: 'Bridget', children: ['Thomas', 'William'] }),
      context,
    );
    expect(together.weight).toBeGreaterThan(alone.weight + 5);
  });
});

describe('years apart', () => {
  test.each([
    [year(1840), year(1842), 2],
    [year(1840), day(1840, 12, 31), 0],
    [{ first: dayNumber(1838, 1, 1), last: dayNumber(1842, 12, 31) }, year(1845), 3],
  ])('case %#', (a, b, apart) => expect(yearsApart(a, b)).toBe(apart));
});

describe('rows of one provenance', () => {
  const of = (ref: string, ...provenance: string[]) => ({ ref, provenance });
  test('the roots two rows share are named', () =>
    expect(sharedProvenance(of('a', 'x', 'y'), of('b', 'y', 'z'))).toEqual(['y']));
});

test('it does not matter which of the two comes first', () => {
  const rows = fc.record(
    {
      ref: fc.constant('r'),
      given: fc.constantFrom('John', 'Jno', 'Patk', 'Biddy', 'J', 'Mary Ann', '', 'Ó'),
      surname: fc.constantFrom('Murphy', 'O’Brien', 'Brien', 'Whelan', 'Phelan', '', 'x'.repeat(300)),
      sex: fc.constantFrom('M' as const, 'F' as const),
      birth: fc.constantFrom(year(1840), year(1846), day(1840, 4, 11), day(1840, 11, 4)),
      birthplace: fc.constantFrom('Kill, Co. Waterford', 'Kill', 'Waterford', '12', '13'),
      children: fc.array(fc.constantFrom('John', 'Mary', 'Wm')),
      spouse: fc.constantFrom('Mary', 'Mary Power', 'Kate'),
    },
    { requiredKeys: ['ref'] },
  );
  fc.assert(
    fc.property(rows, rows, (a, b) => {
      const one = compareRows(a, b, context);
      const other = compareRows(b, a, context);
      expect(other.weight).toBeCloseTo(one.weight, 9);
      expect(other.rows.map(({ agreement }) => agreement)).toEqual(
        one.rows.map(({ agreement }) => agreement),
      );
    }),
  );
});
