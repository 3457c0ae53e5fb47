/** What to turn to where a series is lost: *common practice*. Ids are of the built-in series. */
import { commonPractice } from './sources.ts';

export interface Substitute {
  lost: string;
  use: readonly string[];
  because: string;
  source: string;
}

const row = (lost: string, use: readonly string[], because: string): Substitute => ({
  lost,
  use,
  because,
  source: commonPractice,
});

export const substitutes: readonly Substitute[] = [
  row(
    'ireland-census-1821-1851',
    [
      'ireland-tithe-applotment',
      'ireland-primary-valuation',
      'ireland-estate-records',
      'ireland-catholic-parish-registers',
    ],
    'They name householders by townland in the years of the lost returns; extracts made for old-age pensions after 1908 give single households of 1841 and 1851.',
  ),
  row(
    'ireland-census-1861-1891',
    [
      'ireland-valuation-revisions',
      'ireland-civil-births',
      'ireland-civil-marriages',
      'ireland-civil-deaths',
      'ireland-catholic-parish-registers',
    ],
    'The revision books follow a holding from hand to hand, and registration gives the townland of every birth.',
  ),
  row(
    'ireland-church-of-ireland-registers',
    ['ireland-wills', 'ireland-registry-of-deeds', 'ireland-primary-valuation'],
    'Where the books burnt, abstracts, deeds and the valuation name the families.',
  ),
  row(
    'ireland-wills',
    ['ireland-registry-of-deeds', 'ireland-valuation-revisions', 'ireland-gravestones'],
    'Indexes and calendars say that there was a will; deeds recite what was in many, and the holding changed hands.',
  ),
  row(
    'us-federal-census-1890',
    ['us-city-directories', 'us-deeds', 'us-county-histories'],
    'Directories and deeds place a family between 1880 and 1900, as do the state censuses of 1885 and 1895.',
  ),
  row(
    'norway-church-books',
    ['norway-clerk-duplicates', 'norway-probate'],
    'The clerk kept a second book, and probate names the heirs.',
  ),
];

/** What stands in for a lost series, if the catalogue knows something. */
export function substituteFor(series: string): Substitute | undefined {
  return substitutes.find((entry) => entry.lost === series);
}
