import {
  enumerators1841,
  libraryAndArchivesCanada,
  measuringAmerica,
  norwegianCensusOrders,
} from './sources.ts';

/**
 * How a census reckons ages. `exact`: whole years already lived. `five-year-floor`: ages of 15 and over brought down
 * to the lowest of their five years (15, 20, 25 …), younger ones exact. `next-birthday`: the age the person would
 * reach at the next birthday, one more than the years lived.
 */
export type AgeRule = 'exact' | 'five-year-floor' | 'next-birthday';

/** The day a census speaks of, whenever the enumerator called, and how it reckons ages. */
export interface CensusDay {
  /** YYYY-MM-DD, Gregorian. */
  day: string;
  ageRule: AgeRule;
  source: string;
}

/** The day of one census, with the series it belongs to and the built-in places where that day held. */
export interface CensusDayRow extends CensusDay {
  series: string;
  /** Built-in place ids; the first row of a series gives its usual day. */
  of: readonly string[];
  /** The year the census is called by, which need not be the year of the day. */
  year: number;
}

type DayOfYear = readonly [year: number, day: string];

const rows = (
  days: readonly DayOfYear[],
  series: (year: number) => string,
  of: readonly string[],
  source: string,
  ageRule: (year: number) => AgeRule = () => 'exact',
): CensusDayRow[] =>
  days.map(([year, day]) => ({ series: series(year), of, year, day, ageRule: ageRule(year), source }));

/** 1790 to 1820 began on the first Monday of August; 1 June 1890 was a Sunday, and some lists give it all the same. */
// prettier-ignore
const unitedStates: readonly DayOfYear[] = [
  [1790, '1790-08-02'], [1800, '1800-08-04'], [1810, '1810-08-06'], [1820, '1820-08-07'],
  [1830, '1830-06-01'], [1840, '1840-06-01'], [1850, '1850-06-01'], [1860, '1860-06-01'],
  [1870, '1870-06-01'], [1880, '1880-06-01'], [1890, '1890-06-02'], [1900, '1900-06-01'],
  [1910, '1910-04-15'], [1920, '1920-01-01'], [1930, '1930-04-01'], [1940, '1940-04-01'],
  [1950, '1950-04-01'],
];

/** The Sunday whose midnight counted. */
// prettier-ignore
const greatBritain: readonly DayOfYear[] = [
  [1841, '1841-06-06'], [1851, '1851-03-30'], [1861, '1861-04-07'], [1871, '1871-04-02'], [1881, '1881-04-03'],
  [1891, '1891-04-05'], [1901, '1901-03-31'], [1911, '1911-04-02'], [1921, '1921-06-19'],
];

const britishSource = 'Census acts of Great Britain, night of the census (several published lists agree)';
const britishRule = (year: number): AgeRule => (year === 1841 ? 'five-year-floor' : 'exact');
const britishDays = (series: string, of: readonly string[]): CensusDayRow[] =>
  greatBritain.flatMap((day) =>
    rows(
      [day],
      (year) => `${series}-census-${year}`,
      of,
      day[0] === 1841 ? `${britishSource}; ${enumerators1841}` : britishSource,
      britishRule,
    ),
  );

/** Ireland was counted on the same nights as Britain but kept exact ages in 1841. 1831 had no one day. */
// prettier-ignore
const irelandEarly: readonly DayOfYear[] = [[1821, '1821-05-28'], [1841, '1841-06-06'], [1851, '1851-03-30']];
// prettier-ignore
const irelandLost: readonly DayOfYear[] = [
  [1861, '1861-04-07'], [1871, '1871-04-02'], [1881, '1881-04-03'], [1891, '1891-04-05'],
];
const irelandKept: readonly DayOfYear[] = [
  [1901, '1901-03-31'],
  [1911, '1911-04-02'],
];
const irishSource =
  'National Archives of Ireland for 1821; same nights as Great Britain for the rest (from memory)';

/** 1851 was taken in January 1852; one list puts 1906 on 28 June. */
// prettier-ignore
const canada: readonly DayOfYear[] = [
  [1871, '1871-04-02'], [1881, '1881-04-04'], [1891, '1891-04-06'], [1901, '1901-03-31'],
  [1911, '1911-06-01'], [1921, '1921-06-01'],
];
// prettier-ignore
const prairies: readonly DayOfYear[] = [[1906, '1906-06-24'], [1916, '1916-06-01']];

/** The counting took weeks; ages and households are as on these days. */
// prettier-ignore
const norway: readonly DayOfYear[] = [
  [1801, '1801-02-01'], [1865, '1865-12-31'], [1875, '1875-12-31'], [1891, '1891-01-01'],
  [1900, '1900-12-03'], [1910, '1910-12-01'],
];

const stateLaw = 'State census law (from memory)';
const stateDays = (state: string, days: readonly DayOfYear[], source: string): CensusDayRow[] =>
  rows(days, (year) => `${state}-state-census-${year}`, [state], source);

const sponsored1885 = (series: string, of: readonly string[]): CensusDayRow => ({
  series,
  of,
  year: 1885,
  day: '1885-06-01',
  ageRule: 'exact',
  source: 'Act of 3 March 1879 (20 Stat. 480), as of 1 June 1885 (from memory)',
});

/** Every census day known to the catalogue. */
// prettier-ignore
export const censusDays: readonly CensusDayRow[] = [
  ...rows(unitedStates, (year) => `us-federal-census-${year}`, ['united-states'], measuringAmerica),
  ...rows([[1930, '1929-10-01']], (year) => `us-federal-census-${year}`, ['alaska'], `${measuringAmerica} (Alaska from memory)`),

  ...stateDays('iowa', [[1885, '1885-01-01'], [1915, '1915-01-01'], [1925, '1925-01-01']], stateLaw),
  ...stateDays('kansas', [
    [1865, '1865-05-01'], [1875, '1875-03-01'], [1885, '1885-03-01'], [1895, '1895-03-01'], [1905, '1905-03-01'],
    [1915, '1915-03-01'], [1925, '1925-03-01'],
  ], stateLaw),
  ...stateDays('michigan', [[1884, '1884-06-01'], [1894, '1894-06-01']], stateLaw),
  ...stateDays('minnesota', [[1857, '1857-09-21']], 'Minnesota enabling act of 1857 (from memory)'),
  ...stateDays('new-york', [
    [1855, '1855-06-01'], [1865, '1865-06-01'], [1875, '1875-06-01'], [1892, '1892-02-16'], [1905, '1905-06-01'],
    [1915, '1915-06-01'], [1925, '1925-06-01'],
  ], stateLaw),
  ...stateDays('rhode-island', [[1865, '1865-06-01'], [1875, '1875-06-01'], [1885, '1885-06-01']], stateLaw),
  ...stateDays('wisconsin', [
    [1855, '1855-06-01'], [1875, '1875-06-01'], [1885, '1885-06-20'], [1895, '1895-06-20'], [1905, '1905-06-01'],
  ], stateLaw),
  sponsored1885('colorado-state-census-1885', ['colorado']),
  sponsored1885('dakota-territory-census-1885', ['north-dakota', 'south-dakota']),
  sponsored1885('florida-state-census-1885', ['florida']),
  sponsored1885('nebraska-state-census-1885', ['nebraska']),
  sponsored1885('new-mexico-territory-census-1885', ['new-mexico']),

  ...britishDays('england-wales', ['england', 'wales', 'isle-of-man', 'channel-islands']),
  ...britishDays('scotland', ['scotland']),

  ...rows(irelandEarly, () => 'ireland-census-1821-1851', ['ireland'], irishSource),
  ...rows(irelandLost, () => 'ireland-census-1861-1891', ['ireland'], irishSource),
  ...rows(irelandKept, (year) => `ireland-census-${year}`, ['ireland'], irishSource),

  { series: 'canada-census-1851', of: ['canada', 'ontario', 'quebec'], year: 1851, day: '1852-01-12', ageRule: 'next-birthday', source: libraryAndArchivesCanada },
  { series: 'canada-census-1861', of: ['canada', 'ontario', 'quebec'], year: 1861, day: '1861-01-14', ageRule: 'next-birthday', source: libraryAndArchivesCanada },
  { series: 'canada-census-1861', of: ['nova-scotia'], year: 1861, day: '1861-03-30', ageRule: 'exact', source: libraryAndArchivesCanada },
  { series: 'canada-census-1861', of: ['new-brunswick'], year: 1861, day: '1861-08-15', ageRule: 'exact', source: libraryAndArchivesCanada },
  ...rows(canada, (year) => `canada-census-${year}`, ['canada'], libraryAndArchivesCanada),
  ...rows(prairies, (year) => `canada-census-${year}`, ['manitoba', 'saskatchewan', 'alberta'], `${libraryAndArchivesCanada} (from memory)`),

  ...rows(norway, (year) => `norway-census-${year}`, ['norway'], `${norwegianCensusOrders}; age rule and the day of 1910 from memory`,
    (year) => (year < 1875 ? 'next-birthday' : 'exact')),
];

/** Places that took a census on a day of their own which is not known: the series' usual day would be wrong there. */
const dayUnknown: readonly { series: string; at: readonly string[] }[] = [
  { series: 'canada-census-1851', at: ['new-brunswick', 'nova-scotia', 'prince-edward-island'] },
  { series: 'canada-census-1861', at: ['prince-edward-island'] },
];

/** What a record says of the census it belongs to, beyond the series. */
export interface CensusHint {
  /** For a series of several censuses: which of them. Passed over for a series of one, which may be made a year later. */
  year?: number;
  /** Built-in place, or the chain of places it lies in, for a census that parts of a country took on other days. */
  at?: string | readonly string[];
}

/**
 * The day ages and households of a census are as of, and how it reckons ages.
 *
 * @param census the id of a built-in series, or the place and the year the census is called by
 * @param hint for a series, the year where it holds several censuses, and the place where days differ
 * @returns the day, or undefined where the catalogue knows none, or where a series of several censuses came without
 *   a year; a place without a day of its own has the series' usual one
 */
export function censusDay(
  census: string | { country: string; year: number },
  hint: CensusHint = {},
): CensusDay | undefined {
  if (typeof census !== 'string') {
    return bare(censusDays.find((row) => row.year === census.year && row.of.includes(census.country)));
  }
  const ofSeries = censusDays.filter((row) => row.series === census);
  const years = new Set(ofSeries.map((row) => row.year));
  const year = years.size === 1 ? ofSeries[0]?.year : hint.year;
  const ofYear = ofSeries.filter((row) => row.year === year);
  const at = new Set(typeof hint.at === 'string' ? [hint.at] : hint.at);
  if (dayUnknown.some((row) => row.series === census && row.at.some((place) => at.has(place))))
    return undefined;
  // The row of the whole country comes first; one of a part of it holds there alone.
  const [usual] = ofYear;
  return bare(ofYear.find((row) => row !== usual && row.of.some((place) => at.has(place))) ?? usual);
}

function bare(row: CensusDayRow | undefined): CensusDay | undefined {
  return row && { day: row.day, ageRule: row.ageRule, source: row.source };
}
