import { commonPractice, nationalArchivesOfNorway, norwegianCensusOrders } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries, OriginDepth } from './types.ts';

/**
 * The records of Norway. People are recorded by parish and farm, the farm's name standing behind the patronymic, so
 * that the smallest ground named is the farm.
 */
const of = 'norway';
const person = ['name', 'sex', 'age', 'occupation', 'residence', 'household', 'relations'];

// prettier-ignore
const censusRows: readonly (readonly [year: number, fields: readonly string[], origin: OriginDepth, note: string])[] = [
  [1801, person, 'townland', 'Names everybody on the farm; age at next birthday; no birthplace.'],
  [1865, [...person, 'birthplace', 'religion'], 'townland', 'Age at next birthday; birthplace is the parish.'],
  [1875, [...person, 'born', 'birthplace', 'religion'], 'townland', 'Gives the year of birth; people absent are listed apart.'],
  [1891, [...person, 'born', 'birthplace', 'religion'], 'townland', 'One slip a person; hard to search.'],
  [1900, [...person, 'born', 'birthplace', 'religion'], 'townland', 'Gives the year of birth, the full date for small children.'],
  [1910, [...person, 'born', 'birthplace', 'immigrated', 'religion'], 'townland', 'Gives the full date of birth; those back from America say when and where they had been.'],
];

export const norwaySeries: readonly BuiltInSeries[] = [
  ...censusRows.map(([year, fields, origin, note]) =>
    series({
      id: `norway-census-${year}`,
      title: `Census of Norway, ${year}`,
      of,
      kind: 'census',
      from: String(year),
      to: String(year),
      tells: [{ fields, origin }],
      source: norwegianCensusOrders,
      note,
    }),
  ),
  series({
    id: 'norway-church-books',
    title: 'Church books, Norway',
    of,
    kind: 'church',
    from: '1623',
    tells: [
      { to: '1812', fields: ['name', 'event', 'residence', 'relations'], origin: 'townland' },
      {
        from: '1813',
        fields: ['name', 'born', 'event', 'residence', 'occupation', 'relations', 'parents-names'],
        origin: 'townland',
      },
    ],
    source: nationalArchivesOfNorway,
    note: 'Required by the church ritual of 1685, on printed forms from about 1813; some parishes lost early books to fire.',
  }),
  series({
    id: 'norway-clerk-duplicates',
    title: "Parish clerks' duplicate church books, Norway",
    of,
    kind: 'church',
    from: '1812',
    tells: [
      { fields: ['name', 'born', 'event', 'residence', 'relations', 'parents-names'], origin: 'townland' },
    ],
    source: nationalArchivesOfNorway,
    note: "Kept by the clerk as events came: not a mere copy of the parson's book, and the remedy where that burnt.",
  }),
  series({
    id: 'norway-moved-out-lists',
    title: 'Lists of people moved out, church books, Norway',
    of,
    entries: ['departure'],
    chance: 0.5,
    kind: 'church',
    from: '1814',
    tells: [
      {
        fields: ['name', 'age', 'born', 'occupation', 'lastResidence', 'destination', 'event'],
        origin: 'townland',
      },
    ],
    source: nationalArchivesOfNorway,
    note: 'Those who took a certificate from the parson on leaving; kept unevenly, and less from the 1870s on.',
  }),
  series({
    id: 'norway-emigrant-protocols',
    title: 'Emigrant protocols of the police, Norway',
    of,
    kind: 'emigration',
    from: '1867',
    to: '1930',
    gaps: [],
    tells: [
      {
        fields: ['name', 'sex', 'age', 'occupation', 'lastResidence', 'destination', 'voyage'],
        origin: 'parish',
      },
    ],
    source: 'Act of 22 May 1869 on the carriage of emigrants (from memory); National Archives of Norway',
    note: 'Christiania and Trondheim from 1867, Bergen from 1874; the early books of Stavanger are lost (from memory). Those who left by a foreign port directly are missing.',
  }),
  series({
    id: 'norway-probate',
    title: 'Probate registers, Norway',
    of,
    kind: 'probate',
    from: '1660',
    tells: [{ fields: ['name', 'age', 'residence', 'event', 'relations', 'children'], origin: 'townland' }],
    source: nationalArchivesOfNorway,
    note: 'Heirs are named with age and dwelling, those in America too.',
  }),
  series({
    id: 'norway-farm-histories',
    title: 'Farm histories of Norwegian parishes',
    of,
    entries: ['residence'],
    chance: 0.4,
    kind: 'history',
    from: '1900',
    tells: [{ fields: ['name', 'born', 'event', 'residence', 'relations'], origin: 'townland' }],
    source: commonPractice,
    note: 'Printed and authored: a guide to the church books, never in place of them.',
  }),
  series({
    id: 'norway-land-register-1838',
    title: 'Land register of Norway, 1838',
    of,
    kind: 'land',
    from: '1838',
    to: '1838',
    tells: [{ fields: ['name', 'residence'], origin: 'townland' }],
    source: nationalArchivesOfNorway,
    note: 'Owners and users of every farm, with its old and new number. Crofters are left out.',
  }),
];
