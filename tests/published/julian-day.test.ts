import { describe, expect, test } from 'vitest';
import { civil, dayNumber, isoDay } from '../../src/model/days.ts';
import { daySpan } from '../../src/model/edtf.ts';
import { easter, julianCivil, julianDay, julianDayNumber } from '../../src/model/julian.ts';

type Moment = readonly [year: number, month: number, day: number, julianDay: number];

/*
 * Source: J. Meeus, Astronomical Algorithms (2nd ed. 1998), chapter 7, examples 7.a to 7.c and the table on page 62.
 * Days with their fraction; years astronomical. 1858-11-17 and 1970-01-01 are the epochs of two well-known counts.
 */
const gregorian: readonly Moment[] = [
  [1957, 10, 4.81, 2436116.31],
  [2000, 1, 1.5, 2451545.0],
  [1999, 1, 1.0, 2451179.5],
  [1987, 1, 27.0, 2446822.5],
  [1987, 6, 19.5, 2446966.0],
  [1988, 1, 27.0, 2447187.5],
  [1988, 6, 19.5, 2447332.0],
  [1900, 1, 1.0, 2415020.5],
  [1600, 1, 1.0, 2305447.5],
  [1600, 12, 31.0, 2305812.5],
  [1858, 11, 17.0, 2400000.5],
  [1970, 1, 1.0, 2440587.5],
];
const julian: readonly Moment[] = [
  [333, 1, 27.5, 1842713.0],
  [837, 4, 10.3, 2026871.8],
  [-123, 12, 31.0, 1676496.5],
  [-122, 1, 1.0, 1676497.5],
  [-1000, 7, 12.5, 1356001.0],
  [-1000, 2, 29.0, 1355866.5],
  [-1001, 8, 17.9, 1355671.4],
  [-4712, 1, 1.5, 0.0],
  [-584, 5, 28.63, 1507900.13],
];

describe('Julian Days', () => {
  test.each(gregorian)('Gregorian %i-%i-%f is %f', (year, month, day, jd) => {
    const whole = Math.floor(day);
    expect(julianDay(dayNumber(year, month, whole)) + day - whole).toBeCloseTo(jd, 5);
    expect(civil(Math.floor(jd - 2440587.5))).toEqual({ year, month, day: whole });
  });

  test.each(julian)('Julian %i-%i-%f is %f', (year, month, day, jd) => {
    const whole = Math.floor(day);
    expect(julianDay(julianDayNumber(year, month, whole)) + day - whole).toBeCloseTo(jd, 5);
    expect(julianCivil(Math.floor(jd - 2440587.5))).toEqual({ year, month, day: whole });
  });
});

describe('Old Style and New Style', () => {
  /*
   * Source: the difference of the two calendars by the Calendar (New Style) Act 1750 (24 Geo. II c. 23); Julian Day
   * numbers at noon and weekdays worked out from Meeus.
   */
  test.each([
    ['1582-10-04', 2299160, 'Thu', '1582-10-14'],
    ['1600-02-29', 2305517, 'Fri', '1600-03-10'],
    ['1649-01-30', 2323385, 'Tue', '1649-02-09'],
    ['1690-07-01', 2338512, 'Tue', '1690-07-11'],
    ['1691-07-12', 2338888, 'Sun', '1691-07-22'],
    ['1700-02-28', 2342041, 'Wed', '1700-03-10'],
    ['1700-02-29', 2342042, 'Thu', '1700-03-11'],
    ['1732-02-11', 2353712, 'Fri', '1732-02-22'],
    ['1751-12-31', 2360975, 'Tue', '1752-01-11'],
    ['1752-09-02', 2361221, 'Wed', '1752-09-13'],
  ])('%s Old Style is day %i, a %s, %s New Style', (oldStyle, noon, weekday, newStyle) => {
    const { first, last } = daySpan(`julian ${oldStyle}`);
    expect(first).toBe(last);
    expect(isoDay(first!)).toBe(newStyle);
    expect(julianDay(first!) + 0.5).toBe(noon);
    expect(['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'][noon % 7]).toBe(weekday);
    const { year, month, day } = julianCivil(first!);
    expect([year, month, day]).toEqual(oldStyle.split('-').map(Number));
  });

  /* Source: the same Act, section 1: Wednesday 2 September was followed by Thursday 14 September. */
  test('2 September 1752 was followed by the 14th', () => {
    expect(daySpan('julian 1752-09-02').first! + 1).toBe(daySpan('1752-09-14').first);
    expect(julianDay(daySpan('1752-09-14').first!) + 0.5).toBe(2361222);
  });

  /* Source: dual dating as the Act describes it; written double in the record, the later year counts. */
  test.each([
    ['julian 1648/9-01-30', '1649-02-09'],
    ['julian 1648/49-01-30', '1649-02-09'],
    ['julian 1731/2-02-11', '1732-02-22'],
    ['julian 1699/00-03-24', '1700-04-04'],
  ])('%s is %s New Style', (written, newStyle) => {
    expect(isoDay(daySpan(written).first!)).toBe(newStyle);
  });
});

describe('every day of many centuries', () => {
  test('both calendars count on by one, and back again', () => {
    let day = dayNumber(-401, 1, 1);
    const end = dayNumber(2400, 12, 31);
    let before = { gregorian: '', julian: '' };
    for (; day <= end; day += 1) {
      const g = civil(day);
      const j = julianCivil(day);
      if (dayNumber(g.year, g.month, g.day) !== day || julianDayNumber(j.year, j.month, j.day) !== day)
        expect.fail(`day ${day}`);
      const now = { gregorian: JSON.stringify(g), julian: JSON.stringify(j) };
      if (now.gregorian === before.gregorian || now.julian === before.julian) expect.fail(`day ${day} twice`);
      before = now;
    }
  });

  /* Source: the calendar of ECMAScript (ECMA-262, Time Values), which is the proleptic Gregorian of ISO 8601. */
  test('the Gregorian days are those of the platform', () => {
    for (let day = -900_000; day < 900_000; day += 97)
      expect(isoDay(day).replace(/^-/, '-00')).toBe(
        new Date(day * 86_400_000).toISOString().slice(0, day < -719_528 ? 13 : 10),
      );
  });
});

describe('Easter', () => {
  /* Source: J. Meeus, Astronomical Algorithms, chapter 8 (from memory, worked out again). */
  test.each([
    [1991, '1991-03-31'],
    [1992, '1992-04-19'],
    [1993, '1993-04-11'],
    [1954, '1954-04-18'],
    [2000, '2000-04-23'],
    [1818, '1818-03-22'],
    [1753, '1753-04-22'],
    [1761, '1761-03-22'],
    [1798, '1798-04-08'],
    [1845, '1845-03-23'],
    [1847, '1847-04-04'],
    [1859, '1859-04-24'],
    [1886, '1886-04-25'],
    [1913, '1913-03-23'],
    [1916, '1916-04-23'],
    [1943, '1943-04-25'],
    [2008, '2008-03-23'],
    [2024, '2024-03-31'],
    [2025, '2025-04-20'],
  ])('Gregorian %i: %s', (year, day) => expect(isoDay(easter(year, 'gregorian'))).toBe(day));

  test.each([
    [179, 4, 12],
    [711, 4, 12],
    [1243, 4, 12],
    [1641, 4, 25],
    [1690, 4, 20],
    [1750, 4, 15],
    [1751, 4, 7],
    [1752, 3, 29],
  ])('Julian %i: %i-%i', (year, month, day) =>
    expect(julianCivil(easter(year, 'julian'))).toEqual({ year, month, day }),
  );
});
