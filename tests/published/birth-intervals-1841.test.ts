import { describe, expect, test } from 'vitest';
import { builtInPlaces } from '../../src/catalogue/places/index.ts';
import { isoDay } from '../../src/model/days.ts';
import type { Facts } from '../../src/model/facts.ts';
import { recordFile } from '../../src/model/record.ts';
import { birthInterval } from '../../src/reasoning/ages.ts';

const births = (series: string, age: number | string, made?: string) => {
  const record = recordFile.parse({
    title: 'A census',
    form: 'original',
    series,
    ...(made === undefined ? {} : { made }),
    mentions: [{ id: 'm', age }],
  });
  const interval = birthInterval({ ...record, id: 'census', body: '' }, record.mentions[0]!)!;
  return [isoDay(interval.first), isoDay(interval.last)];
};

describe('ages in the census of Great Britain of 1841', () => {
  /*
   * Source: the enumerators' Directions of 1841: under 15 the age as stated, from 15 on the lowest of the term of five
   * years. The days are worked out from the census day, 6 June 1841.
   */
  test.each([
    [15, '1821-06-07', '1826-06-06'],
    [40, '1796-06-07', '1801-06-06'],
    [12, '1828-06-07', '1829-06-06'],
    // Not a multiple of five: the enumerator passed over the rule, and the age is exact.
    [37, '1803-06-07', '1804-06-06'],
    [20, '1816-06-07', '1821-06-06'],
    [10, '1830-06-07', '1831-06-06'],
    [0, '1840-06-07', '1841-06-06'],
    ['7m', '1840-10-07', '1840-11-06'],
  ])('recorded %s: born %s to %s', (age, first, last) => {
    expect(births('england-wales-census-1841', age)).toEqual([first, last]);
    expect(births('scotland-census-1841', age)).toEqual([first, last]);
  });

  /* From memory: Ireland asked exact ages on the same night. */
  test('the rule is not Ireland’s', () =>
    expect(births('ireland-census-1821-1851', 40, '1841')).toEqual(['1800-06-07', '1801-06-06']));

  test('nor that of any other census of Britain', () =>
    expect(births('england-wales-census-1851', 40)).toEqual(['1810-03-31', '1811-03-30']));
});

describe('ages at the next birthday', () => {
  /* Source: Library and Archives Canada: Canada East and West, 12 January 1852 and 14 January 1861, next birthday. */
  test.each([
    ['canada-census-1851', 30, '1822-01-13', '1823-01-12'],
    ['canada-census-1851', 1, '1851-01-13', '1852-01-12'],
    ['canada-census-1861', 30, '1831-01-15', '1832-01-14'],
    // A child not yet born again a year older cannot be nothing at the next birthday: read as an infant.
    ['canada-census-1861', 0, '1860-01-15', '1861-01-14'],
  ])('%s, %i: born %s to %s', (series, age, first, last) =>
    expect(births(series, age)).toEqual([first, last]),
  );

  /* The lists of 1851 were filled in after New Year; the census is still that of 1851. */
  test('whatever day the list was made', () => {
    expect(births('canada-census-1851', 30, '1852-02-03')).toEqual(['1822-01-13', '1823-01-12']);
    expect(births('norway-census-1865', 30, '1866-01-05')).toEqual(['1836-01-01', '1836-12-31']);
  });

  /* From memory: Norway asked the age at the next birthday in 1865, and years of birth later. */
  test('Norway, 31 December 1865', () =>
    expect(births('norway-census-1865', 30)).toEqual(['1836-01-01', '1836-12-31']));
});

describe('parts of a country that took a census on days of their own', () => {
  /* Source: Library and Archives Canada: Nova Scotia 30 March 1861, exact ages; Canada West 14 January, next birthday. */
  test.each([
    ['nova-scotia', '1830-03-31', '1831-03-30'],
    ['new-brunswick', '1830-08-16', '1831-08-15'],
    ['ontario', '1831-01-15', '1832-01-14'],
  ])('1861, %s: born %s to %s', (province, first, last) => {
    const record = {
      ...recordFile.parse({
        title: 'A census',
        form: 'original',
        series: 'canada-census-1861',
        made: '1861',
        place: 'a-town',
        mentions: [{ id: 'm', age: 30 }],
      }),
      id: 'census',
      body: '',
    };
    const town = { id: 'a-town', name: 'A town', kind: 'town', within: [{ place: province }] };
    const places = new Map([...builtInPlaces, town].map((place) => [place.id, place]));
    const interval = birthInterval(record, record.mentions[0]!, { places } as unknown as Facts)!;
    expect([isoDay(interval.first), isoDay(interval.last)]).toEqual([first, last]);
  });
});

describe('ages in months and days, as of a census day', () => {
  /* Source: Measuring America (2002): as of 1 June 1880, 1 June 1860. Fractions of infants are common practice. */
  test.each([
    ['us-federal-census-1880', '5/12', '1879-12-02', '1880-01-01'],
    ['us-federal-census-1880', '5m', '1879-12-02', '1880-01-01'],
    ['us-federal-census-1860', '9/30', '1860-05-23', '1860-05-23'],
    ['us-federal-census-1860', '3w', '1860-05-05', '1860-05-11'],
    ['us-federal-census-1860', '1 3/12', '1859-02-02', '1859-03-01'],
    ['us-federal-census-1860', '1y6m', '1858-11-02', '1858-12-01'],
    ['us-federal-census-1860', '31y 4m', '1829-01-02', '1829-02-01'],
    ['us-federal-census-1860', '63y 2m 12d', '1797-03-20', '1797-03-20'],
    ['us-federal-census-1860', 31, '1828-06-02', '1829-06-01'],
  ])('%s, %s: born %s to %s', (series, age, first, last) =>
    expect(births(series, age)).toEqual([first, last]),
  );

  /* Taking off the days before the months or after can lead to different days; both count. */
  test('an age in years, months and days on a day late in its month', () => {
    const record = recordFile.parse({
      title: 'A stone',
      form: 'original',
      mentions: [{ id: 'm', age: '60y 3m 10d', event: { kind: 'death', date: '1871-05-31' } }],
    });
    const { first, last } = birthInterval({ ...record, id: 'stone', body: '' }, record.mentions[0]!)!;
    expect([isoDay(first), isoDay(last)]).toEqual(['1811-02-18', '1811-02-21']);
  });
});
