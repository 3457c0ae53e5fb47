import { describe, expect, test } from 'vitest';
import { dateInWords } from '../../src/citations/date-words.ts';
import { edtfProblem } from '../../src/model/edtf.ts';

/*
 * Source of the forms and of what they mean: Library of Congress, Extended Date/Time Format (EDTF) Specification,
 * 4 February 2019, levels 0 to 2, whose examples nearly all of these are, and ISO 8601-2:2019. The English words are ours.
 */
describe('EDTF dates in words', () => {
  test.each([
    // Level 0
    ['1985-04-12', '12 April 1985'],
    ['1985-04', 'April 1985'],
    ['1985', '1985'],
    ['1985-04-12T23:20:30Z', '12 April 1985'],
    ['1964/2008', '1964 to 2008'],
    ['2004-06/2006-08', 'June 2004 to August 2006'],
    ['2004-02-01/2005', '1 February 2004 to 2005'],
    // Level 1
    ['Y170000002', '170000002'],
    ['Y-170000002', '170000003 BC'],
    ['2001-21', 'spring 2001'],
    ['1984?', 'probably 1984'],
    ['2004-06~', 'about June 2004'],
    ['2004-06-11%', 'probably about 11 June 2004'],
    ['201X', 'the 2010s'],
    ['20XX', '2000 to 2099'],
    ['2004-XX', '2004, month unknown'],
    ['1985-04-XX', 'April 1985, day unknown'],
    ['1985-XX-XX', '1985, month and day unknown'],
    ['1985-04-12/..', '12 April 1985 or later'],
    ['1985/', '1985 to an unknown date'],
    ['../1985-04-12', 'by 12 April 1985'],
    ['/1985', 'an unknown date to 1985'],
    ['-1985', '1986 BC'],
    ['1984~/2004-06', 'about 1984 to June 2004'],
    // Level 2
    ['2001-34', 'second quarter of 2001'],
    ['[1667,1668,1670..1672]', '1667, 1668 or 1670 to 1672'],
    ['[1846..1848]', 'between 1846 and 1848'],
    ['Y-17E7', '170000001 BC'],
    ['1950S2', '1950, to 2 significant digits'],
    ['1XXX-12', 'December 1000 to 1999'],
    ['0000', '1 BC'],
    ['[..1760-12-03]', '3 December 1760 or earlier'],
    ['[1760-12..]', 'December 1760 or later'],
    ['[1667,1760-12]', '1667 or December 1760'],
    ['{1960,1961-12}', '1960 and December 1961'],
    ['156X-12-25', '25 December the 1560s'],
    ['15XX-12-XX', 'December 1500 to 1599, day unknown'],
    ['XXXX-12-XX', 'December, year unknown, day unknown'],
    ['1984-1X', '1984, month 10 to 12'],
    ['2004-06~-11', '11 June 2004 (year and month approximate)'],
    ['2004?-06-11', '11 June 2004 (year uncertain)'],
    ['?2004-06-~11', '11 June 2004 (year uncertain, day approximate)'],
    ['2004-%06-11', '11 June 2004 (month uncertain and approximate)'],
    ['2004-06-~01/2004-06-~20', '1 June 2004 (day approximate) to 20 June 2004 (day approximate)'],
  ])('%s is “%s”', (date, words) => {
    expect(edtfProblem(date)).toBeUndefined();
    expect(dateInWords(date)).toBe(words);
  });

  test.each([
    ['1871-04-11', '11 April 1871'],
    ['1840~', 'about 1840'],
    ['1840?', 'probably 1840'],
    ['1838/1842', '1838 to 1842'],
    ['../1900', 'by 1900'],
    ['1900/..', '1900 or later'],
    ['..', 'date unknown'],
    ['[1850,1852]', '1850 or 1852'],
    ['[1850,1852,1855]', '1850, 1852 or 1855'],
  ])('%s, as authors write it, is “%s”', (date, words) => {
    expect(dateInWords(date)).toBe(words);
  });

  /* Source: the difference of the two calendars by the Calendar (New Style) Act 1750; the English words are ours. */
  test.each([
    ['julian 1648/9-01-30', '30 January 1648/9 (Old Style; 9 February 1649 New Style)'],
    ['julian 1648/49-01-30', '30 January 1648/9 (Old Style; 9 February 1649 New Style)'],
    ['julian 1649-01-30', '30 January 1649 (Old Style; 9 February 1649 New Style)'],
    ['julian 1699/1700-03-01', '1 March 1699/1700 (Old Style; 12 March 1700 New Style)'],
    ['julian 1690-07', 'July 1690 (Old Style; 11 July to 10 August 1690 New Style)'],
    ['julian 1690-12', 'December 1690 (Old Style; 11 December 1690 to 10 January 1691 New Style)'],
    ['julian 1690~', 'about 1690 (Old Style)'],
    ['julian 1690/julian 1691', '1690 (Old Style) to 1691 (Old Style)'],
    ['../julian 1648/9-01-30', 'by 30 January 1648/9 (Old Style; 9 February 1649 New Style)'],
    ['[julian 1690,julian 1692]', '1690 (Old Style) or 1692 (Old Style)'],
  ])('%s, a day of the Julian calendar, is “%s”', (date, words) => {
    expect(edtfProblem(date)).toBeUndefined();
    expect(dateInWords(date)).toBe(words);
  });

  test('uncertain and approximate are told apart, and a set loses no member', () => {
    expect(dateInWords('1850?')).not.toBe(dateInWords('1850~'));
    for (const year of ['1850', '1852', '1861']) expect(dateInWords('[1850,1852,1861]')).toContain(year);
  });

  test('text that is no date comes back as it is', () => {
    expect(dateInWords('Easter 1840')).toBe('Easter 1840');
    expect(dateInWords('')).toBe('');
  });
});
