/**
 * Births from entries of births and baptisms. That an infant is brought to the font within the year, and that grown
 * people were baptised too, is common practice; the days are counted by hand.
 */
import { describe, expect, test } from 'vitest';
import { isoDay } from '../../src/model/days.ts';
import { recordFile } from '../../src/model/record.ts';
import { birthInterval } from '../../src/reasoning/ages.ts';

function birth(mention: object, made: string | undefined = '1862-03-02') {
  const record = recordFile.parse({
    title: 'R',
    form: 'original',
    made,
    mentions: [{ id: 'm', ...mention }],
  });
  const found = birthInterval({ ...record, id: 'r', body: '' }, record.mentions[0]!);
  return found && [isoDay(found.first), isoDay(found.last), found.fixes];
}
const baptism = { kind: 'baptism', date: '1862-03-02' };

describe('a baptism', () => {
  test.each<[string, object, [string, string, boolean]]>([
    ['without more is of an infant', { event: baptism }, ['1861-03-03', '1862-03-02', true]],
    [
      'whatever capital it has',
      { event: { ...baptism, kind: 'Christening' } },
      ['1861-03-03', '1862-03-02', true],
    ],
    ['of a child of twelve days', { event: baptism, age: '12d' }, ['1862-02-18', '1862-02-18', true]],
    ['of one of two months', { event: baptism, age: '2m' }, ['1861-12-03', '1862-01-02', true]],
    [
      'of a man of 22 does not fix his birth',
      { event: baptism, age: 22 },
      ['1839-03-03', '1840-03-02', false],
    ],
    ['that states the birth', { event: baptism, born: '1862-02-27' }, ['1862-02-27', '1862-02-27', true]],
    [
      'two years after the birth it states',
      { event: baptism, born: '1860-03-02' },
      ['1860-03-02', '1860-03-02', true],
    ],
    ['and a day later', { event: baptism, born: '1860-03-01' }, ['1860-03-01', '1860-03-01', false]],
  ])('%s', (_, mention, expected) => expect(birth(mention)).toEqual(expected));
  test('entered in a register begun three years later fixes nothing', () =>
    expect(birth({ event: baptism }, '1865-03-02')).toEqual(['1861-03-03', '1862-03-02', false]));
});

test('a birth has its day, whatever age stands beside it', () =>
  expect(birth({ event: { kind: 'Birth', date: '1862-03-02' }, age: 3 })).toEqual([
    '1862-03-02',
    '1862-03-02',
    true,
  ]));
