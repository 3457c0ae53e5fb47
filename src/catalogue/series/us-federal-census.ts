import { measuringAmerica, schedulesLostIn1921 } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries, OriginDepth } from './types.ts';

/**
 * The federal censuses of the United States, 1790 to 1950: what each asked that bears on where somebody came from.
 * Before 1850 only the head of a household is named.
 */
type CensusRow = readonly [year: number, fields: readonly string[], origin: OriginDepth, note?: string];

const heads = ['name', 'residence'];
const everybody = ['name', 'sex', 'age', 'residence', 'household', 'occupation', 'birthplace'];

const rows: readonly CensusRow[] = [
  [
    1790,
    heads,
    'none',
    'The schedules of Delaware, Georgia, Kentucky, New Jersey, Tennessee and Virginia are lost (from memory).',
  ],
  [1800, heads, 'none', 'Several states and territories are lost in whole or part (from memory).'],
  [1810, heads, 'none', 'Several states and territories are lost in whole or part (from memory).'],
  [1820, heads, 'none', 'Counts foreigners not naturalized, without naming them.'],
  [1830, heads, 'none', 'Counts foreigners not naturalized, without naming them.'],
  [1840, heads, 'none'],
  [1850, everybody, 'country', 'Birthplace is the state, territory or country.'],
  [1860, everybody, 'country'],
  [
    1870,
    [...everybody, 'naturalized'],
    'country',
    'Ticks whether father and mother were of foreign birth; male citizens of 21 and over are marked.',
  ],
  [1880, [...everybody, 'relations', 'parents-birthplace'], 'country'],
  [
    1890,
    [...everybody, 'relations', 'parents-birthplace', 'years-in-country', 'naturalized'],
    'country',
    'Fragments naming some six thousand people survive, and part of the special list of Union veterans and widows.',
  ],
  [
    1900,
    [
      ...everybody,
      'born',
      'relations',
      'parents-birthplace',
      'immigrated',
      'years-in-country',
      'naturalized',
    ],
    'country',
    'Gives month and year of birth.',
  ],
  [
    1910,
    [...everybody, 'relations', 'parents-birthplace', 'immigrated', 'naturalized', 'mother-tongue'],
    'country',
  ],
  [
    1920,
    [
      ...everybody,
      'relations',
      'parents-birthplace',
      'immigrated',
      'naturalized',
      'year-naturalized',
      'mother-tongue',
    ],
    'country',
    'The only census to 1950 that asks the year of naturalization.',
  ],
  [
    1930,
    [...everybody, 'relations', 'parents-birthplace', 'immigrated', 'naturalized', 'mother-tongue'],
    'country',
  ],
  [
    1940,
    [...everybody, 'relations', 'naturalized'],
    'country',
    "Parents' birthplaces and mother tongue only of a sample; the person who answered is marked.",
  ],
  [1950, [...everybody, 'relations', 'naturalized'], 'country', "Parents' birthplaces only of a sample."],
];

export const usFederalCensus: readonly BuiltInSeries[] = rows.map(([year, fields, origin, note]) =>
  series({
    id: `us-federal-census-${year}`,
    title: `United States federal census, ${year}`,
    of: 'united-states',
    kind: 'census',
    from: String(year),
    to: String(year),
    gaps:
      year === 1890
        ? [
            {
              from: '1890',
              to: '1890',
              why: 'Nearly all schedules were burnt in Washington on 10 January 1921 or destroyed after it.',
            },
          ]
        : [],
    tells: [{ fields, origin }],
    names: year < 1850 ? 'heads' : 'everybody',
    source: year === 1890 ? `${measuringAmerica}; ${schedulesLostIn1921}` : measuringAmerica,
    note,
  }),
);
