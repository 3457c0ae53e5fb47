import { describe, expect, test } from 'vitest';
import { edtfProblem } from '../../src/model/edtf.ts';
import { monthNumbered } from '../../src/model/numbered-months.ts';

/*
 * Source: Library of the Society of Friends, guide to the Quaker calendar, for the names of the months and the two
 * years of the Eleventh and Twelfth; Calendar (New Style) Act 1750 (24 Geo. II c. 23) for the length of 1751 and the
 * gap of 1752. The days are worked out from them.
 */
describe('months by their numbers', () => {
  test.each([
    ['12th mo. 12, 1676', ['julian 1676/77-02-12']],
    ['12mo 12 1676/7', ['julian 1676/77-02-12']],
    ['the 12th day of the Twelfth Month 1676', ['julian 1676/77-02-12']],
    ['1st mo. 25, 1702', ['julian 1702-03-25']],
    ['4th mo. 9, 1731', ['julian 1731-06-09']],
    ['9 d. 4 mo. 1731', ['julian 1731-06-09']],
    ['4th mo. 9, 1753', ['1753-04-09']],
    ['4th mo. 9, 1752', ['julian 1752-04-09']],
    ['9th mo. 14, 1752', ['1752-09-14']],
    ['1st mo. 18, 1752', ['julian 1752-01-18']],
    ['10th mo. 1701', ['julian 1701-12']],
    ['11th mo. 1699', ['julian 1699/00-01']],
    // Both readings of the first 24 days of a First Month, and of a First Month without a day.
    ['1st mo. 18, 1702', ['julian 1702/03-03-18', 'julian 1701/02-03-18']],
    ['1st mo. 1702', ['julian 1702-03', 'julian 1703-03']],
    ['1st mo. 18, 1702/3', ['julian 1702/03-03-18']],
  ])('%s is %j', (text, readings) => {
    expect(monthNumbered(text)?.readings).toEqual(readings);
    for (const reading of readings) {
      expect(edtfProblem(reading)).toBeUndefined();
      expect(edtfProblem(text)).toContain(reading);
    }
  });

  test.each([
    ['11th mo. 12, 1751', 'ended on 31 December'],
    ['12th mo. 1751', 'ended on 31 December'],
    ['9th mo. 5, 1752', 'left out of the calendar'],
    ['12th mo. 30, 1676', 'February had no day 30'],
    ['2nd mo. 31, 1801', 'February had no day 31'],
  ])('%s is impossible: it %s', (text, why) => {
    expect(monthNumbered(text)).toMatchObject({ readings: [], impossible: expect.stringContaining(why) });
    expect(edtfProblem(text)).toContain(why);
  });

  test.each(['12 May 1676', 'mo', '1st mo.', '13th mo. 1, 1700', '4 months old in 1700'])(
    '%s numbers no month',
    (text) => expect(monthNumbered(text)).toBeUndefined(),
  );
});

describe('other old forms are told what to write', () => {
  /* Quarters: ISO 8601-2:2019, 4.8. Feasts: common practice; Easter after Meeus, chapter 8. The words are ours. */
  test.each([
    ['Mar. quarter 1866', '1866-33'],
    ['June quarter, 1877', '1877-34'],
    ['Q3 1866', '1866-35'],
    ['1866Q4', '1866-36'],
    ['Jan-Feb-Mar 1866', '1866-33'],
    ['third quarter of 1870', '1870-35'],
    ['Easter 1847', '1847-04-04'],
    ['Shrove Tuesday 1845', '1845-02-04'],
    ['Easter 1752', 'julian 1752-03-29'],
    ['Michaelmas 1720', 'julian 1720-09-29'],
    ['Michaelmas 1820', '1820-09-29'],
    ['Candlemas 1720', 'julian 1721-02-02'],
    ['30 January 1648/9', 'julian 1648/9-01-30'],
    ['30 Jan 1648/9 O.S.', 'julian 1648/9-01-30'],
    ['1648/9-01-30', 'julian 1648/9-01-30'],
    ['JULIAN 1649-01-30', 'julian 1649-01-30'],
    ['24 Geo. II', 'years of a reign'],
    ['in the fifth year of the reign of King George', 'years of a reign'],
    ['hebrew 5600', 'calendar that is not reckoned'],
    ['french 12', 'calendar that is not reckoned'],
    ['gregorian 1840', 'leave the word out'],
    ['1648/9', 'julian 1648/9-01-30'],
    ['1648/9', 'span of years write 1648/1649'],
    ['1840/45', 'span of years write 1840/1845'],
    ['julian 1648/49', 'no month'],
    ['julian 1648/50-01-30', 'do not follow each other'],
    ['julian 1648/49-03-25', 'no doubt of the year'],
    ['julian 1690-07/1700', 'before both'],
    ['julian 1701-02-29', '28 days in the Julian calendar'],
    ['julian 1690-13', 'months run from 01 to 12'],
    ['julian 1690-07-0', 'after the word julian'],
  ])('%s: %s', (text, said) => {
    const problem = edtfProblem(text)!;
    expect(problem).toContain(said);
    if (/^(?:julian )?\d{4}[-/\d]+$/.test(said)) expect(edtfProblem(said)).toBeUndefined();
  });
});
