/**
 * Dates of GEDCOM. The forms are those of the date grammar of GEDCOM 7.0 (section on the Date data type: calendars,
 * periods, ranges, approximations, epochs) and the escapes and phrases of GEDCOM 5.5.1, chapter 2; what each becomes in
 * EDTF follows the Library of Congress specification of 4 February 2019.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isoDay } from '../../src/model/days.ts';
import { daySpan, edtfProblem } from '../../src/model/edtf.ts';
import { readInterchangeDate, writeInterchangeDate } from '../../src/model/interchange-date.ts';
import { frenchDays, hebrewDays, hebrewMonths } from '../../src/model/other-calendars.ts';

/** Payload, EDTF, and whether the words are kept as well. */
const table: readonly (readonly [payload: string, edtf: string | undefined, words?: boolean])[] = [
  ['20 JAN 2022', '2022-01-20'],
  ['JAN 2022', '2022-01'],
  ['2022', '2022'],
  ['GREGORIAN 20 JAN 2022', '2022-01-20'],
  ['44 BCE', '-0043'],
  ['1 BCE', '0000'],
  ['15 MAR 44 BCE', '-0043-03-15'],
  ['1 FEB 31', '0031-02-01'],
  ['12000', 'Y12000'],
  ['JULIAN 30 JAN 1649', 'julian 1649-01-30'],
  ['JULIAN 1649', 'julian 1649'],
  ['JULIAN 29 FEB 1700', 'julian 1700-02-29'],
  // Reckoned to the proleptic Gregorian calendar: two days apart in the first century before Christ.
  ['JULIAN 15 MAR 44 BCE', '-0043-03-13', true],
  ['FROM 1670 TO 1800', '1670/1800'],
  ['FROM 1670', '1670/..'],
  ['TO 1800', '../1800'],
  ['FROM JAN 1670 TO 3 FEB 1670', '1670-01/1670-02-03'],
  // The keyword binds to the next date only.
  ['FROM JULIAN 1670 TO 1800', '1670-01-11/1800', true],
  ['FROM JULIAN 1670 TO JULIAN 1700', 'julian 1670/julian 1700'],
  ['BET 1846 AND 1848', '[1846..1848]'],
  ['BET 1 JAN 1846 AND MAR 1848', '[1846-01-01..1848-03]'],
  ['BEF 1846', '[..1846]'],
  ['AFT 1846', '[1846..]'],
  ['AFT JULIAN 1690', '[julian 1690..]'],
  ['BET 1900 AND 1880', '[1880..1900]', true],
  ['ABT 1840', '1840~'],
  ['CAL 2 MAR 1840', '1840-03-02~'],
  ['EST JULIAN 1690', 'julian 1690~'],
  ['FRENCH_R 1 VEND 1', '1792-09-22', true],
  ['FRENCH_R 18 BRUM 8', '1799-11-09', true],
  ['FRENCH_R 9 THER 2', '1794-07-27', true],
  ['FRENCH_R 6 COMP 3', '1795-09-22', true],
  ['FRENCH_R VEND 12', '[1803-09-24..1803-10-23]', true],
  ['FRENCH_R 12', '[1803-09-24..1804-09-22]', true],
  ['FRENCH_R 6 COMP 4', undefined],
  ['HEBREW 1 TSH 5784', '2023-09-16', true],
  ['HEBREW 15 NSN 5708', '1948-04-24', true],
  ['HEBREW 5 IYR 5708', '1948-05-14', true],
  ['_ROMAN 12 XII 3', undefined],
  ['31 FEB 1900', undefined],
  ['29 FEB 1900', undefined],
  ['12 FOO 1900', undefined],
  ['0 JAN 1900', undefined],
  ['', undefined, false],
  // GEDCOM 5.5.1
  ['@#DGREGORIAN@ 5 MAY 1800', '1800-05-05'],
  ['@#DJULIAN@ 25 MAR 1700', 'julian 1700-03-25'],
  ['@#DFRENCH R@ 1 VEND 2', '1793-09-22', true],
  ['@#DHEBREW@ 1 TSH 5784', '2023-09-16', true],
  ['@#DROMAN@ KAL IAN', undefined],
  ['44 B.C.', '-0043'],
  ['30 JAN 1648/9', 'julian 1648/9-01-30'],
  ['30 JAN 1648/49', 'julian 1648/49-01-30'],
  ['11 FEB 1699/1700', 'julian 1699/1700-02-11'],
  ['1648/49', '[1648,1649]', true],
  ['5 MAY 1648/49', undefined],
  // As programs write them all the same
  ['abt 1840', '1840~'],
  ['c. 1840', '1840~'],
  ['5 Jan. 1840', '1840-01-05'],
  ['5 January 1840', '1840-01-05'],
  ['1840-01-05', '1840-01-05'],
];

describe('a date of GEDCOM', () => {
  test.each(
    table.map(([payload, edtf, words]) => ({
      payload,
      edtf,
      words: words ?? (edtf === undefined && payload !== ''),
    })),
  )('$payload is $edtf', ({ payload, edtf, words }) => {
    const said = readInterchangeDate(payload);
    expect(said.date).toBe(edtf);
    expect(said.words).toBe(words ? payload : undefined);
    if (edtf !== undefined) expect(edtfProblem(edtf)).toBeUndefined();
  });

  test('a phrase is kept beside its date, or instead of one', () => {
    expect(readInterchangeDate('30 JAN 1649', '30 January 1648/49')).toEqual({
      date: '1649-01-30',
      words: '30 January 1648/49',
    });
    expect(readInterchangeDate('', 'about Easter')).toEqual({ words: 'about Easter' });
    expect(readInterchangeDate('(about Easter)')).toEqual({ words: 'about Easter' });
    expect(readInterchangeDate('INT 31 DEC 1648 (so the Bible)')).toEqual({
      date: '1648-12-31',
      words: 'so the Bible',
    });
  });

  test('any text at all is answered', () =>
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.stringMatching(/^(?:(?:FROM|TO|BET|AND|ABT|JULIAN|HEBREW|JAN|\d{1,4}|\/\d|BCE|\(x\)) ?){0,6}$/),
        ),
        (text) => {
          const { date } = readInterchangeDate(text);
          if (date !== undefined) expect(edtfProblem(date)).toBeUndefined();
        },
      ),
    ));
});

describe('an EDTF date goes out and comes back', () => {
  const year = fc.integer({ min: 1, max: 9999 }).map((n) => String(n).padStart(4, '0'));
  const day = fc.integer({ min: -600_000, max: 2_000_000 }).map(isoDay);
  const one = fc.oneof(
    year,
    day,
    year.map((y) => `${y}-03`),
  );
  const edtf = fc.oneof(
    one,
    fc.tuple(one, fc.constantFrom('~', '?', '%')).map(([d, mark]) => d + mark),
    fc.tuple(year, year).map((pair) => `[${pair.toSorted().join('..')}]`),
    fc.tuple(year, year).map((pair) => pair.toSorted().join('/')),
    one.map((d) => `[..${d}]`),
    one.map((d) => `${d}/..`),
    year.map((y) => `${y.slice(0, 3)}X`),
    year.map((y) => `${y}-${21 + (Number(y) % 4)}`),
    year.map((y) => `julian ${y}-02-03`),
    fc.constantFrom('..', 'julian 1648/49-01-30', '[1846,1847]', '1846/', '{1840,1841}', 'Y17000'),
  );
  test('with a phrase where GEDCOM says less', () =>
    fc.assert(
      fc.property(edtf, (text) => {
        const { payload, phrase } = writeInterchangeDate(text);
        expect(readInterchangeDate(payload, phrase)).toEqual({ date: text });
        // The payload alone, as other programs read it, leaves no day out that the date may mean.
        const alone = readInterchangeDate(payload).date;
        if (alone === undefined) return;
        const [a, b] = [daySpan(text), daySpan(alone)];
        if (a.first !== null) expect(b.first ?? -Infinity).toBeLessThanOrEqual(a.first);
        if (a.last !== null) expect(b.last ?? Infinity).toBeGreaterThanOrEqual(a.last);
      }),
    ));
});

test('the Hebrew calendar is that of the Unicode consortium’s ICU', () => {
  const format = new Intl.DateTimeFormat('en-u-ca-hebrew', {
    timeZone: 'UTC',
    year: 'numeric',
    month: 'long',
    day: 'numeric',
  });
  const names: Readonly<Record<string, string>> = {
    Tishri: 'TSH',
    Heshvan: 'CSH',
    Kislev: 'KSL',
    Tevet: 'TVT',
    Shevat: 'SHV',
    Adar: 'ADR',
    'Adar I': 'ADR',
    'Adar II': 'ADS',
    Nisan: 'NSN',
    Iyar: 'IYR',
    Sivan: 'SVN',
    Tamuz: 'TMZ',
    Av: 'AAV',
    Elul: 'ELL',
  };
  for (let day = -60_000; day < 30_000; day += 173) {
    const parts = Object.fromEntries(
      format.formatToParts(day * 86_400_000).map(({ type, value }) => [type, value]),
    );
    const month = hebrewMonths.indexOf(names[parts.month!]!) + 1;
    expect(hebrewDays(Number(parts.year), month, Number(parts.day))).toEqual([day, day]);
  }
});

test('the Republic’s days follow one another', () => {
  for (let year = 1; year < 14; year++) expect(frenchDays(year)![1] + 1).toBe(frenchDays(year + 1)![0]);
});
