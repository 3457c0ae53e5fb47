import { commonPractice } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries } from './types.ts';

/**
 * What presses, armies, employers, societies and families of the United States left. Where no law is named, what they
 * tell is common practice; a run of a newspaper must cover the years before a search in it means anything.
 */
const source = commonPractice;
const of = 'united-states';

const printed: readonly BuiltInSeries[] = [
  series({
    id: 'us-newspapers',
    title: 'Newspapers, United States',
    of,
    kind: 'newspaper',
    from: '1820',
    tells: [{ fields: ['name', 'age', 'birthplace', 'residence', 'event', 'relations'], origin: 'varies' }],
    source,
    note: 'Death notices, obituaries, visits home. A run must cover the years before a search in it means anything.',
  }),
  series({
    id: 'us-immigrant-newspapers',
    title: 'Newspapers for immigrants of one country, United States',
    of,
    entries: ['residence'],
    who: { foreignBorn: true },
    chance: 0.08,
    kind: 'newspaper',
    from: '1830',
    tells: [
      { fields: ['name', 'birthplace', 'lastResidence', 'voyage', 'event', 'relations'], origin: 'parish' },
    ],
    source,
    note: 'Print notices looking for lost kin with parish and ship, and news from home by county or parish.',
  }),
  series({
    id: 'us-county-histories',
    title: 'County and town histories with biographies, United States',
    of,
    kind: 'history',
    from: '1876',
    to: '1930',
    tells: [
      {
        fields: [
          'name',
          'born',
          'birthplace',
          'immigrated',
          'residence',
          'occupation',
          'relations',
          'parents-names',
        ],
        origin: 'varies',
      },
    ],
    source,
    note: 'The biography of a nephew or a neighbour may name the place.',
  }),
  series({
    id: 'us-city-directories',
    title: 'City directories, United States',
    of,
    kind: 'directory',
    from: '1785',
    to: '1990',
    tells: [{ fields: ['name', 'residence', 'occupation'], origin: 'none' }],
    source,
    note: 'Fix years of residence and show who shared an address.',
  }),
];

const military: readonly BuiltInSeries[] = [
  series({
    id: 'us-civil-war-draft',
    title: 'Civil War draft registration',
    of,
    who: { sex: 'M', born: [1818, 1845] },
    chance: 0.5,
    kind: 'military',
    from: '1863',
    to: '1865',
    tells: [{ fields: ['name', 'age', 'residence', 'occupation', 'birthplace'], origin: 'country' }],
    source: 'Enrollment Act of 3 March 1863, 12 Stat. 731 (from memory)',
    note: 'Men of 20 to 45, those who had declared an intention to be citizens included.',
  }),
  series({
    id: 'us-civil-war-pensions',
    title: 'Civil War pension files',
    of,
    who: { sex: 'M', born: [1800, 1850] },
    chance: 0.1,
    kind: 'military',
    from: '1861',
    to: '1934',
    tells: [
      {
        fields: [
          'name',
          'age',
          'born',
          'birthplace',
          'residence',
          'event',
          'relations',
          'maiden-name',
          'children',
          'signature',
        ],
        origin: 'varies',
      },
    ],
    source: 'Pension acts from 14 July 1862, 12 Stat. 566 (from memory)',
    note: 'Affidavits of comrades, neighbours and kin; a widow had to prove her marriage wherever it was made.',
  }),
  series({
    id: 'us-draft-registration-1917-1918',
    title: 'Draft registration cards, 1917–1918',
    of,
    who: { sex: 'M', born: [1872, 1900] },
    chance: 0.9,
    kind: 'military',
    from: '1917-06-05',
    to: '1918-09-12',
    tells: [
      {
        to: '1918-09-11',
        fields: ['name', 'age', 'born', 'birthplace', 'residence', 'occupation', 'naturalized', 'signature'],
        origin: 'parish',
      },
      {
        from: '1918-09-12',
        fields: ['name', 'age', 'born', 'residence', 'occupation', 'naturalized', 'nearest', 'signature'],
        origin: 'country',
      },
    ],
    source: 'Selective Service Act of 18 May 1917, 40 Stat. 76 (from memory)',
    note: 'Men born 1872 to 1900. The third form, of 12 September 1918, names the nearest relative but no birthplace.',
  }),
  series({
    id: 'us-draft-registration-1942',
    title: 'Draft registration cards of older men, 1942',
    of,
    who: { sex: 'M', born: [1877, 1897] },
    chance: 0.9,
    kind: 'military',
    from: '1942-04-27',
    to: '1942-04-27',
    tells: [
      {
        fields: ['name', 'age', 'born', 'birthplace', 'residence', 'occupation', 'nearest', 'signature'],
        origin: 'parish',
      },
    ],
    source: 'Selective Training and Service Act of 1940, fourth registration (from memory)',
    note: 'Men born 28 April 1877 to 16 February 1897.',
  }),
];

const employersAndFamilies: readonly BuiltInSeries[] = [
  series({
    id: 'us-social-security-applications',
    title: 'Applications for a Social Security number',
    of,
    who: { born: [1870, 1950] },
    chance: 0.4,
    kind: 'registration',
    from: '1936-11',
    tells: [
      {
        fields: [
          'name',
          'born',
          'birthplace',
          'residence',
          'occupation',
          'parents-names',
          'maiden-name',
          'signature',
        ],
        origin: 'parish',
      },
    ],
    source: 'Social Security Act of 14 August 1935, 49 Stat. 620 (from memory)',
  }),
  series({
    id: 'us-company-records',
    title: 'Records of mines, railways, mills and other employers, United States',
    of,
    kind: 'company',
    from: '1840',
    tells: [
      { fields: ['name', 'age', 'birthplace', 'residence', 'occupation', 'nearest'], origin: 'varies' },
    ],
    source,
  }),
  series({
    id: 'us-lodge-and-society-records',
    title: 'Records of lodges, insurance brotherhoods and county societies, United States',
    of,
    kind: 'society',
    from: '1840',
    tells: [{ fields: ['name', 'age', 'born', 'birthplace', 'residence', 'relations'], origin: 'varies' }],
    source,
    note: 'Societies of people from one county, and insurance papers with proof of age.',
  }),
  series({
    id: 'us-family-papers',
    title: 'Papers kept in the family: Bibles, letters, photographs, memorial cards',
    of,
    kind: 'family',
    from: '1789',
    tells: [
      { fields: ['name', 'born', 'birthplace', 'lastResidence', 'event', 'relations'], origin: 'varies' },
    ],
    source,
    note: "Kin of collateral lines may hold what the family's own line has lost.",
  }),
];

export const usPressAndService: readonly BuiltInSeries[] = [...printed, ...military, ...employersAndFamilies];
