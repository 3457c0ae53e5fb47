import { commonPractice } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries } from './types.ts';

/**
 * Births, marriages and deaths registered by the states. A death certificate names a birthplace and parents on the
 * word of whoever reported it, seldom more than a country. The first years are those of registration throughout the
 * state; county and town books often begin earlier. Years are from memory.
 */
const parents = ['parents-names', 'maiden-name'];
const certificate = [
  'name',
  'sex',
  'age',
  'born',
  'birthplace',
  'residence',
  'occupation',
  'event',
  'relations',
  ...parents,
  'parents-birthplace',
  'burial',
];

const michigan: readonly BuiltInSeries[] = [
  series({
    id: 'michigan-births',
    title: 'Births registered in Michigan',
    of: 'michigan',
    entries: ['birth'],
    kind: 'vital',
    from: '1867-04-05',
    tells: [
      {
        fields: [
          'name',
          'sex',
          'born',
          'birthplace',
          'event',
          'relations',
          'parents-names',
          'parents-birthplace',
        ],
        origin: 'country',
      },
    ],
    source: 'Michigan, act 194 of 1867 (from memory)',
    note: 'Returned by township supervisors once a year until 1906; many births are missing.',
  }),
  series({
    id: 'michigan-marriages',
    title: 'Marriages registered in Michigan',
    of: 'michigan',
    entries: ['marriage'],
    kind: 'vital',
    from: '1867-04-05',
    tells: [
      {
        to: '1886',
        fields: ['name', 'age', 'birthplace', 'residence', 'occupation', 'event', 'relations'],
        origin: 'country',
      },
      {
        from: '1887',
        fields: ['name', 'age', 'birthplace', 'residence', 'occupation', 'event', 'relations', ...parents],
        origin: 'country',
      },
    ],
    source: 'Michigan, act 194 of 1867 and marriage licence act of 1887 (from memory)',
    note: 'Names two witnesses.',
  }),
  series({
    id: 'michigan-deaths',
    title: 'Deaths registered in Michigan',
    of: 'michigan',
    entries: ['death'],
    kind: 'vital',
    from: '1867-04-05',
    tells: [
      {
        to: '1897-08-28',
        fields: ['name', 'sex', 'age', 'birthplace', 'residence', 'occupation', 'event', 'parents-names'],
        origin: 'country',
      },
      { from: '1897-08-29', fields: certificate, origin: 'country' },
    ],
    source: 'Michigan, act 194 of 1867 and act 217 of 1897 (from memory)',
  }),
];

const wisconsin: readonly BuiltInSeries[] = [
  series({
    id: 'wisconsin-births',
    title: 'Births registered in Wisconsin',
    of: 'wisconsin',
    entries: ['birth'],
    kind: 'vital',
    from: '1852',
    tells: [
      {
        fields: ['name', 'sex', 'born', 'event', 'relations', ...parents, 'parents-birthplace'],
        origin: 'varies',
      },
    ],
    source: 'Wisconsin, registration acts of 1852, 1878 and 1907 (from memory)',
    note: "Patchy before 1907; parents' birthplaces sometimes name the parish.",
  }),
  series({
    id: 'wisconsin-marriages',
    title: 'Marriages registered in Wisconsin',
    of: 'wisconsin',
    entries: ['marriage'],
    kind: 'vital',
    from: '1836',
    tells: [
      { to: '1851', fields: ['name', 'event'], origin: 'none' },
      {
        from: '1852',
        fields: ['name', 'birthplace', 'residence', 'occupation', 'event', 'relations', ...parents],
        origin: 'varies',
      },
    ],
    source: 'Wisconsin, registration acts of 1852, 1878 and 1907 (from memory)',
    note: 'Names witnesses; birthplaces are often a town or parish.',
  }),
  series({
    id: 'wisconsin-deaths',
    title: 'Deaths registered in Wisconsin',
    of: 'wisconsin',
    entries: ['death'],
    kind: 'vital',
    from: '1852',
    tells: [
      {
        to: '1907-09-30',
        fields: [
          'name',
          'sex',
          'age',
          'birthplace',
          'occupation',
          'event',
          'relations',
          'parents-names',
          'burial',
        ],
        origin: 'country',
      },
      { from: '1907-10-01', fields: certificate, origin: 'country' },
    ],
    source: 'Wisconsin, registration acts of 1852, 1878 and 1907 (from memory)',
    note: 'Patchy before 1907.',
  }),
];

/** Years of registration throughout other states: births, deaths. */
// prettier-ignore
const elsewhere: readonly (readonly [state: string, name: string, births: string, deaths: string])[] = [
  ['california', 'California', '1905', '1905'],
  ['connecticut', 'Connecticut', '1897', '1897'],
  ['illinois', 'Illinois', '1916', '1916'],
  ['indiana', 'Indiana', '1907', '1900'],
  ['iowa', 'Iowa', '1880', '1880'],
  ['maine', 'Maine', '1892', '1892'],
  ['massachusetts', 'Massachusetts', '1841', '1841'],
  ['minnesota', 'Minnesota', '1900', '1908'],
  ['missouri', 'Missouri', '1910', '1910'],
  ['montana', 'Montana', '1907', '1907'],
  ['new-jersey', 'New Jersey', '1848', '1848'],
  ['new-york', 'New York', '1880', '1880'],
  ['ohio', 'Ohio', '1908', '1908'],
  ['pennsylvania', 'Pennsylvania', '1906', '1906'],
  ['rhode-island', 'Rhode Island', '1853', '1853'],
  ['vermont', 'Vermont', '1857', '1857'],
  ['washington', 'Washington', '1907', '1907'],
];

/**
 * County and town registers of births and deaths from before the state's own: the years of the laws that asked for
 * them, all from memory.
 */
// prettier-ignore
const countyBooks: readonly (readonly [state: string, name: string, from: string, to: string])[] = [
  ['illinois', 'Illinois', '1877', '1915'],
  ['indiana', 'Indiana', '1882', '1907'],
  ['minnesota', 'Minnesota', '1870', '1907'],
  ['missouri', 'Missouri', '1883', '1893'],
  ['new-york', 'New York', '1847', '1849'],
  ['ohio', 'Ohio', '1867', '1908'],
  ['pennsylvania', 'Pennsylvania', '1893', '1905'],
];

/** Marriages registered throughout a state, where not by the county clerk alone; all from memory. */
// prettier-ignore
const stateMarriages: readonly (readonly [state: string, name: string, from: string])[] = [
  ['connecticut', 'Connecticut', '1897'],
  ['iowa', 'Iowa', '1880'],
  ['massachusetts', 'Massachusetts', '1841'],
  ['new-jersey', 'New Jersey', '1848'],
  ['new-york', 'New York', '1880'],
  ['rhode-island', 'Rhode Island', '1853'],
  ['vermont', 'Vermont', '1857'],
];

export const usVital: readonly BuiltInSeries[] = [
  ...michigan,
  ...wisconsin,
  ...elsewhere.flatMap(([state, name, births, deaths]) => [
    series({
      id: `${state}-births`,
      title: `Births registered in ${name}`,
      of: state,
      entries: ['birth'],
      kind: 'vital',
      from: births,
      tells: [
        {
          fields: ['name', 'sex', 'born', 'event', 'relations', ...parents, 'parents-birthplace'],
          origin: 'country',
        },
      ],
      source: `State registration law (from memory)`,
    }),
    series({
      id: `${state}-deaths`,
      title: `Deaths registered in ${name}`,
      of: state,
      entries: ['death'],
      kind: 'vital',
      from: deaths,
      tells: [{ fields: certificate, origin: 'country' }],
      source: `State registration law (from memory)`,
    }),
  ]),
  ...countyBooks.map(([state, name, from, to]) =>
    series({
      id: `${state}-county-births-deaths`,
      title: `Births and deaths in county books, ${name}`,
      of: state,
      entries: ['birth', 'death'],
      chance: 0.45,
      kind: 'vital',
      from,
      to,
      tells: [
        {
          fields: ['name', 'sex', 'age', 'birthplace', 'event', 'relations', 'parents-names'],
          origin: 'country',
        },
      ],
      source: 'State law on returns to the county (from memory)',
      note: 'Patchy; many births and deaths were never returned.',
    }),
  ),
  ...stateMarriages.map(([state, name, from]) =>
    series({
      id: `${state}-marriages`,
      title: `Marriages registered in ${name}`,
      of: state,
      entries: ['marriage'],
      kind: 'vital',
      from,
      tells: [
        {
          fields: ['name', 'age', 'residence', 'birthplace', 'occupation', 'event', 'relations', ...parents],
          origin: 'country',
        },
      ],
      source: 'State registration law (from memory)',
      note: 'Those born abroad mostly give the country, now and then the town.',
    }),
  ),
  series({
    id: 'us-county-marriages',
    title: 'Marriage licences and returns, county clerks of the United States',
    of: 'united-states',
    entries: ['marriage'],
    kind: 'vital',
    from: '1789',
    tells: [
      {
        fields: ['name', 'age', 'residence', 'birthplace', 'event', 'relations', ...parents],
        origin: 'varies',
      },
    ],
    source: commonPractice,
    note: 'Witnesses are often in-laws. What is asked differs by state and year.',
  }),
];
