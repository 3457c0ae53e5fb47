import { commonPractice, enumerators1841 } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries, OriginDepth } from './types.ts';

/** The records of England, Wales and Scotland: censuses, registration and church registers. */
const person = ['name', 'sex', 'age', 'occupation', 'residence', 'household', 'birthplace'];

// prettier-ignore
const censusRows: readonly (readonly [year: number, fields: readonly string[], origin: OriginDepth, note?: string])[] = [
  [1841, person, 'county', 'Says only whether born in the county, or in Scotland, Ireland or abroad; ages of 15 and over are rounded down to five years.'],
  [1851, [...person, 'relations'], 'parish', 'Those born in another country of the kingdom often give the country alone.'],
  [1861, [...person, 'relations'], 'parish'],
  [1871, [...person, 'relations'], 'parish'],
  [1881, [...person, 'relations'], 'parish'],
  [1891, [...person, 'relations'], 'parish'],
  [1901, [...person, 'relations'], 'parish'],
  [1911, [...person, 'relations', 'years-married', 'children'], 'parish'],
  [1921, [...person, 'relations', 'employer'], 'parish', 'Age in years and months.'],
];

const censusSource = 'Census acts and printed schedules for each census (from memory)';

export const britainSeries: readonly BuiltInSeries[] = [
  ...censusRows.flatMap(([year, fields, origin, note]) => {
    const row = {
      kind: 'census',
      from: String(year),
      to: String(year),
      tells: [{ fields, origin }],
      source: year === 1841 ? enumerators1841 : censusSource,
      note,
    };
    return [
      series({
        ...row,
        id: `england-wales-census-${year}`,
        title: `Census of England and Wales, ${year}`,
        of: 'england',
        alsoOf: ['wales', 'isle-of-man', 'channel-islands'],
      }),
      series({ ...row, id: `scotland-census-${year}`, title: `Census of Scotland, ${year}`, of: 'scotland' }),
    ];
  }),
  series({
    id: 'england-wales-civil-registration',
    title: 'Civil registration of births, marriages and deaths, England and Wales',
    of: 'england',
    alsoOf: ['wales'],
    kind: 'vital',
    from: '1837-07-01',
    tells: [
      {
        fields: [
          'name',
          'sex',
          'age',
          'born',
          'event',
          'residence',
          'occupation',
          'relations',
          'parents-names',
          'maiden-name',
          'signature',
        ],
        origin: 'parish',
      },
    ],
    source:
      'Births and Deaths Registration Act 1836 and Marriage Act 1836 (6 & 7 Will. IV c. 85, 86) (from memory)',
    note: 'No penalty for a birth left unregistered before 1875. Deaths name no parents.',
  }),
  series({
    id: 'scotland-civil-registration',
    title: 'Statutory registers of births, marriages and deaths, Scotland',
    of: 'scotland',
    kind: 'vital',
    from: '1855-01-01',
    tells: [
      {
        fields: [
          'name',
          'sex',
          'age',
          'born',
          'event',
          'residence',
          'occupation',
          'relations',
          'parents-names',
          'maiden-name',
          'signature',
        ],
        origin: 'parish',
      },
    ],
    source:
      'Registration of Births, Deaths and Marriages (Scotland) Act 1854 (17 & 18 Vict. c. 80) (from memory)',
    note: "Marriages and deaths name both parents, the mother by her maiden name; births give the date and place of the parents' marriage except from 1856 to 1860.",
  }),
  series({
    id: 'england-parish-registers',
    title: 'Parish registers, England',
    of: 'england',
    kind: 'church',
    from: '1538',
    gaps: [
      {
        from: '1643',
        to: '1660',
        why: 'Many were kept badly or not at all during the civil wars and the Commonwealth',
        partly: true,
      },
    ],
    tells: [
      { to: '1812', fields: ['name', 'event', 'relations'], origin: 'parish' },
      {
        from: '1813',
        fields: ['name', 'event', 'residence', 'occupation', 'age', 'relations', 'signature'],
        origin: 'parish',
      },
    ],
    source:
      'Marriage Act 1753 (26 Geo. II c. 33) and Parochial Registers Act 1812 (52 Geo. III c. 146) (from memory)',
    note: "Marriages carry signatures from 1754; baptisms give the father's trade and abode from 1813.",
  }),
  series({
    id: 'wales-parish-registers',
    title: 'Parish registers, Wales',
    of: 'wales',
    kind: 'church',
    from: '1538',
    gaps: [
      {
        from: '1643',
        to: '1660',
        why: 'Many were kept badly or not at all during the civil wars and the Commonwealth',
        partly: true,
      },
    ],
    tells: [{ fields: ['name', 'event', 'residence', 'relations'], origin: 'parish' }],
    source: 'Parochial Registers Act 1812 (52 Geo. III c. 146) (from memory)',
    note: 'Few survive from before 1660; much of the people was chapel, not church, after 1800.',
  }),
  series({
    id: 'england-wales-nonconformist-registers',
    title: 'Registers of chapels given up in 1837 and 1857, England and Wales',
    of: 'england',
    alsoOf: ['wales'],
    kind: 'church',
    from: '1650',
    to: '1857',
    tells: [{ fields: ['name', 'born', 'event', 'residence', 'relations', 'maiden-name'], origin: 'parish' }],
    source: 'Non-Parochial Registers Act 1840 (3 & 4 Vict. c. 92) (from memory)',
    note: "Methodist baptisms often give the mother's maiden name.",
  }),
  series({
    id: 'scotland-old-parish-registers',
    title: 'Old parish registers, Church of Scotland',
    of: 'scotland',
    kind: 'church',
    from: '1553',
    to: '1854',
    tells: [{ fields: ['name', 'event', 'residence', 'relations', 'maiden-name'], origin: 'parish' }],
    source: commonPractice,
    note: 'Many begin late or are broken; members of the churches that left it are often missing.',
  }),
  series({
    id: 'england-wales-probate',
    title: 'Wills and administrations, England and Wales',
    of: 'england',
    alsoOf: ['wales'],
    kind: 'probate',
    from: '1384',
    tells: [
      { fields: ['name', 'residence', 'occupation', 'event', 'relations', 'signature'], origin: 'parish' },
    ],
    source: 'Court of Probate Act 1857 (20 & 21 Vict. c. 77) (from memory)',
    note: 'Church courts to 11 January 1858, the state after it. Kin in America are named.',
  }),
];
