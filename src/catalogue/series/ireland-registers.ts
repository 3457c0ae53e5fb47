import { commonPractice, irishRegistrationActs, nationalArchivesOfIreland } from '../sources.ts';
import { series } from './build.ts';
import { fourCourtsFire } from './ireland-fire.ts';
import type { BuiltInSeries } from './types.ts';

/** Church registers, civil registration and censuses of Ireland, where the origin is proved or refuted. */
const of = 'ireland';

const church: readonly BuiltInSeries[] = [
  series({
    id: 'ireland-catholic-parish-registers',
    title: 'Catholic parish registers, Ireland',
    of,
    kind: 'church',
    from: '1740',
    tells: [{ fields: ['name', 'event', 'residence', 'relations', 'maiden-name'], origin: 'townland' }],
    source: 'National Library of Ireland, films of registers to 1880',
    note: 'Earliest in towns; most begin in the 1820s or 1830s, later in the west and north-west. Many name the townland, many do not.',
  }),
  series({
    id: 'ireland-church-of-ireland-registers',
    title: 'Church of Ireland parish registers',
    of,
    kind: 'church',
    from: '1619',
    gaps: [
      {
        from: '1619',
        to: '1870',
        why: `${fourCourtsFire}: between a half and two thirds of the parishes, the rest survive`,
        partly: true,
      },
    ],
    tells: [{ fields: ['name', 'event', 'residence', 'occupation', 'relations'], origin: 'townland' }],
    source: nationalArchivesOfIreland,
    note: 'Ask for each parish whether its books were deposited in Dublin; those kept in the church or copied before the fire survive.',
  }),
  series({
    id: 'ireland-presbyterian-registers',
    title: 'Presbyterian registers, Ireland',
    of,
    kind: 'church',
    from: '1674',
    tells: [{ fields: ['name', 'event', 'residence', 'relations', 'maiden-name'], origin: 'townland' }],
    source: commonPractice,
    note: 'Most begin after 1819; chiefly in Ulster.',
  }),
];

const civil: readonly BuiltInSeries[] = [
  series({
    id: 'ireland-civil-births',
    title: 'Civil registration of births, Ireland',
    of,
    entries: ['birth'],
    kind: 'vital',
    from: '1864-01-01',
    tells: [
      {
        fields: [
          'name',
          'sex',
          'born',
          'event',
          'residence',
          'occupation',
          'relations',
          'parents-names',
          'maiden-name',
        ],
        origin: 'townland',
      },
    ],
    source: irishRegistrationActs,
    note: 'In the first years perhaps one birth in seven was never registered.',
  }),
  series({
    id: 'ireland-civil-marriages',
    title: 'Civil registration of marriages, Ireland',
    of,
    entries: ['marriage'],
    kind: 'vital',
    from: '1845-04-01',
    tells: [
      {
        fields: [
          'name',
          'age',
          'event',
          'residence',
          'occupation',
          'relations',
          'parents-names',
          'signature',
        ],
        origin: 'townland',
      },
    ],
    source: irishRegistrationActs,
    note: 'Catholic marriages from 1 January 1864 only. Names the fathers and two witnesses.',
  }),
  series({
    id: 'ireland-civil-deaths',
    title: 'Civil registration of deaths, Ireland',
    of,
    entries: ['death'],
    kind: 'vital',
    from: '1864-01-01',
    tells: [
      { fields: ['name', 'sex', 'age', 'event', 'residence', 'occupation', 'relations'], origin: 'townland' },
    ],
    source: irishRegistrationActs,
    note: 'No parents; the person present at the death is often kin.',
  }),
];

const censuses: readonly BuiltInSeries[] = [
  series({
    id: 'ireland-census-1821-1851',
    title: 'Censuses of Ireland, 1821, 1831, 1841 and 1851',
    of,
    kind: 'census',
    from: '1821',
    to: '1851',
    gaps: [
      {
        from: '1821',
        to: '1851',
        why: `${fourCourtsFire}. Parts survive: 1821 of Cavan, Fermanagh, Galway, King's County and Meath; 1831 of Londonderry; 1841 of Killeshandra in Cavan; 1851 of Antrim`,
        except: [
          {
            from: '1821',
            to: '1821',
            of: ['co-cavan', 'co-fermanagh', 'co-galway', 'co-offaly', 'co-meath'],
          },
          { from: '1831', to: '1831', of: ['co-londonderry'] },
          { from: '1841', to: '1841', of: ['co-cavan'] },
          { from: '1851', to: '1851', of: ['co-antrim'] },
        ],
      },
    ],
    tells: [
      {
        from: '1821',
        to: '1821',
        fields: ['name', 'age', 'occupation', 'residence', 'household', 'relations'],
        origin: 'townland',
      },
      { from: '1831', to: '1831', fields: ['name', 'residence', 'household'], origin: 'townland' },
      {
        from: '1841',
        to: '1851',
        fields: ['name', 'sex', 'age', 'occupation', 'residence', 'household', 'relations', 'birthplace'],
        origin: 'townland',
      },
    ],
    source: nationalArchivesOfIreland,
    note: 'Extracts made for old-age pensions after 1908 give households of 1841 and 1851.',
  }),
  series({
    id: 'ireland-census-1861-1891',
    title: 'Censuses of Ireland, 1861, 1871, 1881 and 1891',
    of,
    kind: 'census',
    from: '1861',
    to: '1891',
    gaps: [
      { from: '1861', to: '1871', why: 'Destroyed by order soon after they were taken' },
      { from: '1881', to: '1891', why: 'Pulped during the First World War' },
    ],
    tells: [
      {
        fields: ['name', 'sex', 'age', 'occupation', 'residence', 'household', 'relations', 'birthplace'],
        origin: 'townland',
      },
    ],
    source: nationalArchivesOfIreland,
  }),
  series({
    id: 'ireland-census-1901',
    title: 'Census of Ireland, 1901',
    of,
    kind: 'census',
    from: '1901',
    to: '1901',
    tells: [
      {
        fields: [
          'name',
          'sex',
          'age',
          'occupation',
          'residence',
          'household',
          'relations',
          'birthplace',
          'religion',
          'mother-tongue',
          'signature',
        ],
        origin: 'townland',
      },
    ],
    source: nationalArchivesOfIreland,
    note: 'Birthplace is the county, or the country if outside Ireland; the townland is where the household lived.',
  }),
  series({
    id: 'ireland-census-1911',
    title: 'Census of Ireland, 1911',
    of,
    kind: 'census',
    from: '1911',
    to: '1911',
    tells: [
      {
        fields: [
          'name',
          'sex',
          'age',
          'occupation',
          'residence',
          'household',
          'relations',
          'birthplace',
          'religion',
          'mother-tongue',
          'years-married',
          'children',
          'signature',
        ],
        origin: 'townland',
      },
    ],
    source: nationalArchivesOfIreland,
    note: 'A wife says how long married, and how many children were born and still live.',
  }),
];

export const irelandRegisters: readonly BuiltInSeries[] = [...church, ...civil, ...censuses];
