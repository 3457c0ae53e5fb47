import { describe, expect, test } from 'vitest';
import { english, wordingIn } from '../../src/interface/index.ts';
import {
  sayCoverage,
  sayEventDate,
  sayLifeYears,
  saySpan,
  sayWhen,
  sayYears,
} from '../../src/interface/say-date.ts';
import { edtfProblem } from '../../src/model/edtf.ts';

const norwegian = wordingIn('nb').dates;

describe('a date in English and in Norwegian', () => {
  test.each([
    ['1871-04-11', '11 April 1871', '11. april 1871'],
    ['1871-04', 'April 1871', 'april 1871'],
    ['1871', '1871', '1871'],
    ['1840~', 'about 1840', 'omkring 1840'],
    ['1840?', 'probably 1840', 'trolig 1840'],
    ['1840-05-01%', 'probably about 1 May 1840', 'trolig omkring 1. mai 1840'],
    ['1838/1842', 'between 1838 and 1842', 'mellom 1838 og 1842'],
    ['1840-03/1840-05-17', 'between March 1840 and 17 May 1840', 'mellom mars 1840 og 17. mai 1840'],
    ['[1838..1842]', 'between 1838 and 1842', 'mellom 1838 og 1842'],
    ['../1850', 'by 1850', 'senest 1850'],
    ['1850/..', '1850 or later', '1850 eller senere'],
    ['1850/', '1850 to an unknown date', '1850 til en ukjent dato'],
    ['[..1760]', '1760 or earlier', '1760 eller tidligere'],
    ['184X', 'the 1840s', '1840-årene'],
    ['18XX', '1800 to 1899', '1800 til 1899'],
    ['184X-12-25', '25 December the 1840s', '25. desember i 1840-årene'],
    ['1840-21', 'spring 1840', 'våren 1840'],
    ['1840-24', 'winter 1840', 'vinteren 1840'],
    ['1870-34', 'second quarter of 1870', 'andre kvartal 1870'],
    ['1870-41', 'second half of 1870', 'andre halvdel av 1870'],
    ['[1843,1845]', '1843 or 1845', '1843 eller 1845'],
    ['{1843,1845,1847-02}', '1843, 1845 and February 1847', '1843, 1845 og februar 1847'],
    ['1840-XX', '1840, month unknown', '1840, ukjent måned'],
    ['1840-06-XX', 'June 1840, day unknown', 'juni 1840, ukjent dag'],
    ['1840-XX-XX', '1840, month and day unknown', '1840, ukjent måned og dag'],
    ['XXXX-12-24', '24 December, year unknown', '24. desember, ukjent år'],
    ['1840-1X', '1840, month 10 to 12', '1840, måned 10 til 12'],
    ['1840?-06-11', '11 June 1840 (year uncertain)', '11. juni 1840 (usikkert år)'],
    [
      '?1840-06-~11',
      '11 June 1840 (year uncertain, day approximate)',
      '11. juni 1840 (usikkert år, omtrentlig dag)',
    ],
    ['-0043', '44 BC', '44 f.Kr.'],
    ['..', 'date unknown', 'ukjent dato'],
    [
      'julian 1648/49-01-30',
      '30 January 1648/9 (Old Style; 9 February 1649 New Style)',
      '30. januar 1648/9 etter gammel stil (9. februar 1649 etter ny stil)',
    ],
    [
      'julian 1699-06',
      'June 1699 (Old Style; 11 June to 10 July 1699 New Style)',
      'juni 1699 etter gammel stil (11. juni til 10. juli 1699 etter ny stil)',
    ],
    ['julian 1690~', 'about 1690 (Old Style)', 'omkring 1690 etter gammel stil'],
  ])('%s is “%s”, «%s»', (date, inEnglish, inNorwegian) => {
    expect(edtfProblem(date)).toBeUndefined();
    expect(sayEventDate(date, english.dates)).toBe(inEnglish);
    expect(sayEventDate(date, norwegian)).toBe(inNorwegian);
  });

  test.each([
    ['1864-05-02', 'on 2 May 1864', 'den 2. mai 1864'],
    ['1864-05', 'in May 1864', 'i mai 1864'],
    ['1864', 'in 1864', 'i 1864'],
    ['186X', 'in the 1860s', 'i 1860-årene'],
    ['1864-21', 'in spring 1864', 'våren 1864'],
    ['1864-33', 'first quarter of 1864', 'i første kvartal 1864'],
    ['1864~', 'about 1864', 'omkring 1864'],
    ['1863/1865', 'between 1863 and 1865', 'mellom 1863 og 1865'],
    ['../1865', 'by 1865', 'senest 1865'],
  ])('something happened %s: “%s”, «%s»', (date, inEnglish, inNorwegian) => {
    expect(sayWhen(date, english.dates)).toBe(inEnglish);
    expect(sayWhen(date, norwegian)).toBe(inNorwegian);
  });
});

describe('stretches of years, spans and lives', () => {
  test.each([
    ['1863', '1865', '1863–1865', '1863–1865'],
    ['1863', '1863', '1863', '1863'],
    ['1867', '..', '1867 onward', 'fra 1867'],
    [undefined, '1867-06', 'to June 1867', 'til juni 1867'],
    ['..', undefined, 'all years', 'alle år'],
  ])('%s to %s is “%s”, «%s»', (from, to, inEnglish, inNorwegian) => {
    expect(sayYears(from, to, english.dates)).toBe(inEnglish);
    expect(sayYears(from, to, norwegian)).toBe(inNorwegian);
  });

  test('the coverage of a search', () => {
    expect(sayCoverage('1863/..', english.dates)).toBe('1863 onward');
    expect(sayCoverage('1863/1865', norwegian)).toBe('1863–1865');
    expect(sayCoverage('1863~', norwegian)).toBe('omkring 1863');
  });

  test.each([
    [null, null, 'not known', 'ikke kjent'],
    ['1818-03-14', '1818-03-14', 'on 14 March 1818', 'den 14. mars 1818'],
    [
      '1839-06-02',
      '1841-04-11',
      'between 2 June 1839 and 11 April 1841',
      'mellom 2. juni 1839 og 11. april 1841',
    ],
    [null, '1841-04-11', 'by 11 April 1841', 'senest 11. april 1841'],
    ['1839-06-02', null, '2 June 1839 or later', '2. juni 1839 eller senere'],
  ])('a birth from %s to %s is “%s”, «%s»', (earliest, latest, inEnglish, inNorwegian) => {
    expect(saySpan({ earliest, latest }, english.dates)).toBe(inEnglish);
    expect(saySpan({ earliest, latest }, norwegian)).toBe(inNorwegian);
  });

  test.each([
    ['1840-03-02', '1903-06-02', '1840–1903', '1840–1903'],
    ['1840~', '1903', 'about 1840–1903', 'ca. 1840–1903'],
    ['1840', undefined, 'born 1840', 'født 1840'],
    [undefined, '190X', 'died 1900', 'død 1900'],
    ['..', undefined, '', ''],
    ['julian 1648/49-01-30', '1690?', '1649–about 1690', '1649–ca. 1690'],
  ])('a life from %s to %s is “%s”, «%s»', (born, died, inEnglish, inNorwegian) => {
    expect(sayLifeYears(born, died, english.dates)).toBe(inEnglish);
    expect(sayLifeYears(born, died, norwegian)).toBe(inNorwegian);
  });
});
