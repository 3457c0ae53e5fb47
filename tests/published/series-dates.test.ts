/**
 * Dates of laws and of series of records against what was published of them. The source stands beside each; where only
 * memory was at hand for a date, the check says so.
 */
import { describe, expect, test } from 'vitest';
import { builtInSeries } from '../../src/catalogue/series/index.ts';
import { substitutes } from '../../src/catalogue/series-substitutes.ts';

const series = (id: string) => {
  const found = builtInSeries.find((one) => one.id === id);
  if (!found) throw new Error(`There is no series ${id}.`);
  return found;
};
const toldFrom = (id: string, field: string) =>
  series(id).tells.find(({ fields }) => fields.includes(field))?.from;
const toldOn = (id: string, day: string) =>
  series(id).tells.find(({ from, to }) => from <= day && (to === '..' || day <= `${to}-99`.slice(0, 10)));

describe('laws of the United States', () => {
  test.each([
    // Act of 2 March 1819, 3 Stat. 488, in force 1 January 1820.
    ['lists of passengers', 'us-passenger-lists-1820-1891', '1820-01-01'],
    // Act of 29 March 1790, 1 Stat. 103: the first on naturalization (from memory for the page).
    ['naturalization', 'us-naturalization-petition', '1790'],
    // Act of 29 January 1795, 1 Stat. 414: a declaration three years before (from memory for the page).
    ['declarations', 'us-declaration-of-intention', '1795'],
    // Homestead Act of 20 May 1862, 12 Stat. 392, in force 1 January 1863 (from memory).
    ['homesteads', 'us-homestead-files', '1863-01-01'],
    // Alien Registration Act of 28 June 1940, 54 Stat. 670; registration began 27 August 1940 (from memory).
    ['alien registration', 'us-alien-registration-1940', '1940-08-27'],
    // Selective Service Act of 18 May 1917: the first registration was on 5 June 1917 (from memory).
    ['the draft of 1917', 'us-draft-registration-1917-1918', '1917-06-05'],
  ])('%s: %s from %s', (_what, id, from) => expect(series(id).from).toBe(from));

  // Acts of 3 March 1893 (27 Stat. 569, section 1), 29 June 1906 (34 Stat. 596) and 20 February 1907 (34 Stat. 898,
  // section 12, in force 1 July 1907).
  test.each([
    ['lastResidence', '1893-03-03'],
    ['joining', '1893-03-03'],
    ['birthplace', '1906-06-29'],
    ['nearest', '1907-07-01'],
  ])('lists of passengers ask %s from %s', (field, from) =>
    expect(toldFrom('us-passenger-lists-1891-1957', field)).toBe(from),
  );

  // Passenger Act of 2 August 1882, 22 Stat. 186, in force 31 October 1882; no town before 1893.
  test('no customs list asks a town', () =>
    expect(series('us-passenger-lists-1820-1891').tells.map(({ from, origin }) => [from, origin])).toEqual([
      ['1820-01-01', 'country'],
      ['1882-10-31', 'country'],
    ]));

  // Act of 29 June 1906, ch. 3592, 34 Stat. 596, in force 27 September 1906.
  test.each(['us-declaration-of-intention', 'us-naturalization-petition'])(
    '%s: no town until 26 September 1906',
    (id) => {
      expect(toldOn(id, '1906-09-26')?.origin).toBe('country');
      expect(toldOn(id, '1906-09-27')?.origin).toBe('parish');
    },
  );

  // US Census Bureau, Measuring America (2002): birthplace from 1850, parents' birthplaces from 1880, the year of
  // immigration 1900 to 1930.
  test('what the federal censuses ask', () => {
    const asked = (field: string) =>
      builtInSeries
        .filter(({ id }) => id.startsWith('us-federal-census-'))
        .filter(({ tells }) => tells.some(({ fields }) => fields.includes(field)))
        .map(({ from }) => Number(from));
    expect(asked('birthplace')[0]).toBe(1850);
    expect(asked('parents-birthplace')[0]).toBe(1880);
    expect(asked('immigrated')).toEqual([1900, 1910, 1920, 1930]);
    expect(
      builtInSeries
        .filter(({ id, names }) => id.startsWith('us-federal') && names === 'heads')
        .map(({ from }) => from),
    ).toEqual(['1790', '1800', '1810', '1820', '1830', '1840']);
  });

  // Common practice: county and town histories with biographies were printed from 1876 to about 1930.
  test('county histories', () =>
    expect(series('us-county-histories')).toMatchObject({ from: '1876', to: '1930' }));

  // Common practice: state death certificates mostly begin shortly after 1900. Each year from memory.
  test.each([
    ['massachusetts-deaths', '1841'],
    ['new-jersey-deaths', '1848'],
    ['new-york-deaths', '1880'],
    ['iowa-deaths', '1880'],
    ['connecticut-deaths', '1897'],
    ['california-deaths', '1905'],
    ['pennsylvania-deaths', '1906'],
    ['minnesota-deaths', '1908'],
    ['ohio-deaths', '1908'],
    ['missouri-deaths', '1910'],
    ['illinois-deaths', '1916'],
  ])('%s from %s', (id, from) => expect(series(id).from).toBe(from));
});

describe('Ireland', () => {
  test.each([
    // Marriages (Ireland) Act 1844, 7 & 8 Vict. c. 81: marriages that are not Catholic, from 1 April 1845.
    ['ireland-civil-marriages', '1845-04-01'],
    // Registration Acts of 1863: births, deaths and all marriages from 1 January 1864.
    ['ireland-civil-births', '1864-01-01'],
    ['ireland-civil-deaths', '1864-01-01'],
    // National Archives of Ireland: Tithe Applotment Books 1823–37.
    ['ireland-tithe-applotment', '1823'],
    // Published 1847–64.
    ['ireland-primary-valuation', '1847'],
    // Registry of Deeds, from 1708 (from memory).
    ['ireland-registry-of-deeds', '1708'],
  ])('%s from %s', (id, from) => expect(series(id).from).toBe(from));

  // National Archives of Ireland: 1821–51 lost in 1922 but for parts; 1861 and 1871 destroyed soon after they were
  // taken; 1881 and 1891 pulped in the First World War; 1901 and 1911 complete.
  test('which censuses are lost', () => {
    const lost = (id: string) => series(id).gaps.map(({ from, to }) => `${from}–${to}`);
    expect(lost('ireland-census-1821-1851')).toEqual(['1821–1851']);
    expect(lost('ireland-census-1861-1891')).toEqual(['1861–1871', '1881–1891']);
    expect([...lost('ireland-census-1901'), ...lost('ireland-census-1911')]).toEqual([]);
    expect(series('ireland-census-1821-1851').gaps[0]!.why).toContain('30 June 1922');
  });

  // Not in the fire: Catholic, Presbyterian and civil registers, the valuation, the tithe books, the Registry of Deeds.
  test.each([
    'ireland-catholic-parish-registers',
    'ireland-presbyterian-registers',
    'ireland-civil-births',
    'ireland-primary-valuation',
    'ireland-tithe-applotment',
    'ireland-registry-of-deeds',
  ])('%s has no gap', (id) => expect(series(id).gaps).toEqual([]));
});

describe('elsewhere', () => {
  test.each([
    // Births and Deaths Registration Act 1836, 6 & 7 Will. IV c. 86, in force 1 July 1837 (from memory).
    ['england-wales-civil-registration', '1837-07-01'],
    // Registration (Scotland) Act 1854, 17 & 18 Vict. c. 80, in force 1 January 1855 (from memory).
    ['scotland-civil-registration', '1855-01-01'],
    // Ontario: from 1 July 1869 (from memory).
    ['ontario-civil-registration', '1869-07-01'],
    // Norway: protocols of Christiania from 1867 (from memory).
    ['norway-emigrant-protocols', '1867'],
  ])('%s from %s', (id, from) => expect(series(id).from).toBe(from));
});

test('what stands in for a lost series is a series, and another one', () => {
  const ids = new Set(builtInSeries.map(({ id }) => id));
  for (const { lost, use } of substitutes) {
    expect(ids).toContain(lost);
    expect(use.filter((id) => !ids.has(id) || id === lost)).toEqual([]);
  }
});
