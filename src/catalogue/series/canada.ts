import { commonPractice, libraryAndArchivesCanada } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries, OriginDepth } from './types.ts';

/** The records of Canada in outline: many who settled in the United States came by Quebec, or stayed there first. */
const person = ['name', 'sex', 'age', 'residence', 'household', 'occupation', 'birthplace', 'religion'];
const later = [...person, 'relations', 'ancestry'];
const prairies = { of: 'manitoba', alsoOf: ['saskatchewan', 'alberta'] };

// prettier-ignore
const censusRows: readonly (readonly [year: number, fields: readonly string[], origin: OriginDepth, note?: string])[] = [
  [1851, person, 'country', 'Taken in January 1852 in Canada East and West, in 1851 in New Brunswick and Nova Scotia; many townships are lost.'],
  [1861, person, 'country', 'Each colony on its own day; Nova Scotia names heads only.'],
  [1871, [...person, 'ancestry'], 'country'],
  [1881, [...person, 'ancestry'], 'country'],
  [1891, [...person, 'relations', 'parents-birthplace'], 'country'],
  [1901, [...later, 'born', 'immigrated', 'year-naturalized', 'mother-tongue'], 'country'],
  [1906, [...person.slice(0, 5), 'birthplace', 'relations', 'immigrated'], 'country', 'Manitoba, Saskatchewan and Alberta.'],
  [1911, [...later, 'born', 'immigrated', 'year-naturalized'], 'country'],
  [1916, [...later, 'immigrated', 'naturalized', 'mother-tongue'], 'country', 'Manitoba, Saskatchewan and Alberta.'],
  [1921, [...later, 'parents-birthplace', 'immigrated', 'year-naturalized', 'mother-tongue'], 'country'],
];

export const canadaSeries: readonly BuiltInSeries[] = [
  ...censusRows.map(([year, fields, origin, note]) =>
    series({
      id: `canada-census-${year}`,
      title: `Census of Canada, ${year}`,
      ...(year === 1906 || year === 1916 ? prairies : { of: 'canada' }),
      kind: 'census',
      from: year === 1851 ? '1851' : String(year),
      to: year === 1851 ? '1852' : String(year),
      tells: [{ fields, origin }],
      source: libraryAndArchivesCanada,
      note,
    }),
  ),
  series({
    id: 'canada-passenger-lists-1865-1922',
    title: 'Passenger lists, Canadian ports',
    of: 'canada',
    kind: 'passenger',
    from: '1865',
    to: '1922',
    tells: [
      {
        to: '1905',
        fields: ['name', 'age', 'sex', 'occupation', 'nationality', 'destination', 'voyage'],
        origin: 'country',
      },
      {
        from: '1906',
        to: '1918',
        fields: ['name', 'age', 'sex', 'occupation', 'nationality', 'destination', 'voyage', 'religion'],
        origin: 'country',
      },
      {
        from: '1919',
        fields: [
          'name',
          'age',
          'sex',
          'occupation',
          'birthplace',
          'lastResidence',
          'nearest',
          'joining',
          'destination',
          'voyage',
        ],
        origin: 'parish',
      },
    ],
    source: `${libraryAndArchivesCanada} (from memory)`,
    note: 'Quebec from 1865, Halifax from 1881, Saint John from 1900. No lists of the Famine years were kept in one series.',
  }),
  series({
    id: 'us-canada-border-crossings',
    title: 'Border crossings from Canada into the United States',
    of: 'united-states',
    chance: 0.1,
    kind: 'passenger',
    from: '1895',
    to: '1956',
    tells: [
      {
        fields: [
          'name',
          'age',
          'sex',
          'occupation',
          'birthplace',
          'lastResidence',
          'joining',
          'nearest',
          'voyage',
        ],
        origin: 'parish',
      },
    ],
    source: 'US National Archives, guide to border crossing records (from memory)',
    note: 'For those who sailed to Quebec or Halifax and went on by rail.',
  }),
  series({
    id: 'canada-catholic-parish-registers',
    title: 'Catholic parish registers, Canada',
    of: 'canada',
    kind: 'church',
    from: '1621',
    tells: [
      {
        fields: ['name', 'event', 'residence', 'relations', 'parents-names', 'maiden-name'],
        origin: 'varies',
      },
    ],
    source: commonPractice,
    note: 'Marriages of Irish immigrants may name the parish and county of the parents.',
  }),
  series({
    id: 'ontario-civil-registration',
    title: 'Civil registration of births, marriages and deaths, Ontario',
    of: 'ontario',
    kind: 'vital',
    from: '1869-07-01',
    tells: [
      {
        fields: [
          'name',
          'age',
          'born',
          'birthplace',
          'event',
          'residence',
          'relations',
          'parents-names',
          'maiden-name',
        ],
        origin: 'varies',
      },
    ],
    source: 'Ontario, registration act of 1869 (from memory)',
    note: 'Marriages name both sets of parents and the birthplace.',
  }),
  series({
    id: 'canada-gravestones',
    title: 'Gravestones, Canada',
    of: 'canada',
    kind: 'cemetery',
    from: '1760',
    tells: [{ fields: ['name', 'age', 'born', 'birthplace', 'event', 'relations'], origin: 'varies' }],
    source: commonPractice,
  }),
];
