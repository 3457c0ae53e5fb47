import { describe, expect, test } from 'vitest';
import { censusDay, censusDays } from '../../src/catalogue/census-days.ts';

const weekday = (day: string): string =>
  ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][new Date(`${day}T00:00:00Z`).getUTCDay()] ?? '';

describe('the census days of the United States', () => {
  /*
   * Source: US Census Bureau, Measuring America: The Decennial Censuses From 1790 to 2000 (2002). The weekdays are
   * worked out; 1890 is given as 2 June there because the first was a Sunday.
   */
  test.each([
    [1790, '1790-08-02', 'Mon'],
    [1800, '1800-08-04', 'Mon'],
    [1810, '1810-08-06', 'Mon'],
    [1820, '1820-08-07', 'Mon'],
    [1830, '1830-06-01', 'Tue'],
    [1840, '1840-06-01', 'Mon'],
    [1850, '1850-06-01', 'Sat'],
    [1860, '1860-06-01', 'Fri'],
    [1870, '1870-06-01', 'Wed'],
    [1880, '1880-06-01', 'Tue'],
    [1890, '1890-06-02', 'Mon'],
    [1900, '1900-06-01', 'Fri'],
    [1910, '1910-04-15', 'Fri'],
    [1920, '1920-01-01', 'Thu'],
    [1930, '1930-04-01', 'Tue'],
    [1940, '1940-04-01', 'Mon'],
    [1950, '1950-04-01', 'Sat'],
  ])('%i is as of %s, a %s', (year, day, name) => {
    expect(censusDay(`us-federal-census-${year}`)).toMatchObject({ day, ageRule: 'exact' });
    expect(censusDay({ country: 'united-states', year })?.day).toBe(day);
    expect(weekday(day)).toBe(name);
  });

  /* From memory: winter travel put Alaska half a year ahead. */
  test('1930 is as of 1 October 1929 in Alaska alone', () => {
    expect(censusDay('us-federal-census-1930', { at: 'alaska' })?.day).toBe('1929-10-01');
    expect(censusDay('us-federal-census-1930', { at: 'michigan' })?.day).toBe('1930-04-01');
  });

  test('an unknown series has no day', () => {
    expect(censusDay('us-gravestones')).toBeUndefined();
    expect(censusDay({ country: 'united-states', year: 1895 })).toBeUndefined();
  });

  /* Source: the census acts of 1790 to 1820 set the first Monday of August. */
  test.each([1790, 1800, 1810, 1820])('%i is the first Monday of August', (year) => {
    const first = [1, 2, 3, 4, 5, 6, 7]
      .map((date) => `${year}-08-0${date}`)
      .find((day) => weekday(day) === 'Mon');
    expect(censusDay(`us-federal-census-${year}`)?.day).toBe(first);
  });
});

describe('the census nights of Britain and Ireland', () => {
  /* Source: published lists of the census nights, all of them Sundays. */
  test.each([
    [1841, '1841-06-06'],
    [1851, '1851-03-30'],
    [1861, '1861-04-07'],
    [1871, '1871-04-02'],
    [1881, '1881-04-03'],
    [1891, '1891-04-05'],
    [1901, '1901-03-31'],
    [1911, '1911-04-02'],
    [1921, '1921-06-19'],
  ])('%i was the Sunday %s', (year, day) => {
    expect(weekday(day)).toBe('Sun');
    expect(censusDay(`england-wales-census-${year}`)?.day).toBe(day);
    expect(censusDay(`scotland-census-${year}`)?.day).toBe(day);
    for (const country of ['england', 'wales', 'scotland'])
      expect(censusDay({ country, year })?.day).toBe(day);
  });

  /* Source: Directions to enumerators, 1841. Ireland asked exact ages (from memory). */
  test('1841 brings ages down to five years in Britain and not in Ireland', () => {
    expect(censusDay({ country: 'england', year: 1841 })?.ageRule).toBe('five-year-floor');
    expect(censusDay({ country: 'scotland', year: 1841 })?.ageRule).toBe('five-year-floor');
    expect(censusDay({ country: 'england', year: 1851 })?.ageRule).toBe('exact');
    expect(censusDay({ country: 'ireland', year: 1841 })?.ageRule).toBe('exact');
  });

  /* Source: National Archives of Ireland for 1821; the later nights are those of Britain (from memory). */
  test('the lost censuses of Ireland need their year', () => {
    expect(censusDay('ireland-census-1821-1851')).toBeUndefined();
    expect(censusDay('ireland-census-1821-1851', { year: 1821 })?.day).toBe('1821-05-28');
    expect(censusDay('ireland-census-1821-1851', { year: 1831 })).toBeUndefined();
    expect(censusDay('ireland-census-1861-1891', { year: 1871 })?.day).toBe('1871-04-02');
    expect(censusDay('ireland-census-1901')?.day).toBe('1901-03-31');
    expect(censusDay('ireland-census-1911')?.day).toBe('1911-04-02');
  });
});

describe('the census days of Canada', () => {
  /* Source: Library and Archives Canada, notes on each census. */
  test.each([
    [1871, '1871-04-02'],
    [1881, '1881-04-04'],
    [1891, '1891-04-06'],
    [1901, '1901-03-31'],
    [1911, '1911-06-01'],
    [1921, '1921-06-01'],
  ])('%i is as of %s', (year, day) => {
    expect(censusDay(`canada-census-${year}`)).toMatchObject({ day, ageRule: 'exact' });
  });

  test('1851 was taken in January 1852 and 1861 on a day of each colony, ages at next birthday in the Canadas', () => {
    expect(censusDay('canada-census-1851')).toMatchObject({ day: '1852-01-12', ageRule: 'next-birthday' });
    expect(censusDay('canada-census-1861')).toMatchObject({ day: '1861-01-14', ageRule: 'next-birthday' });
    expect(censusDay('canada-census-1861', { at: 'ontario' })?.day).toBe('1861-01-14');
    expect(censusDay('canada-census-1861', { at: 'nova-scotia' })?.day).toBe('1861-03-30');
    expect(censusDay({ country: 'new-brunswick', year: 1861 })?.day).toBe('1861-08-15');
    expect(censusDay('canada-census-1851', { at: 'new-brunswick' })).toBeUndefined();
    expect(censusDay('canada-census-1861', { at: 'prince-edward-island' })).toBeUndefined();
  });
});

describe('the census days of Norway', () => {
  /*
   * Sources: rescript of 28 November 1800 (a Sunday); recommendation of 27 September 1865 and form of 1875 ("31st
   * December"); National Archives of Norway for 1891; office report on 1900 (a Monday). 1910 from memory.
   */
  test.each([
    [1801, '1801-02-01', 'Sun'],
    [1865, '1865-12-31', 'Sun'],
    [1875, '1875-12-31', 'Fri'],
    [1891, '1891-01-01', 'Thu'],
    [1900, '1900-12-03', 'Mon'],
    [1910, '1910-12-01', 'Thu'],
  ])('%i is as of %s, a %s', (year, day, name) => {
    expect(censusDay(`norway-census-${year}`)?.day).toBe(day);
    expect(weekday(day)).toBe(name);
  });
});

describe('the state censuses', () => {
  test('every day of the table is a day of the calendar', () => {
    for (const { day } of censusDays)
      expect(new Date(`${day}T00:00:00Z`).toISOString().slice(0, 10)).toBe(day);
  });
});
