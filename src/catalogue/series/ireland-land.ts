import { commonPractice, nationalArchivesOfIreland } from '../sources.ts';
import { series } from './build.ts';
import { fourCourtsFire } from './ireland-fire.ts';
import type { BuiltInSeries } from './types.ts';

/** Land, poor-law and probate records of Ireland, newspapers, schools and stones. */
const of = 'ireland';

const landAndPoor: readonly BuiltInSeries[] = [
  series({
    id: 'ireland-tithe-applotment',
    title: 'Tithe Applotment Books',
    of,
    kind: 'land',
    from: '1823',
    to: '1837',
    tells: [{ fields: ['name', 'residence'], origin: 'townland' }],
    source: nationalArchivesOfIreland,
    note: 'Occupiers of farm land over an acre; towns and labourers are left out.',
  }),
  series({
    id: 'ireland-primary-valuation',
    title: 'Primary Valuation of Tenements',
    of,
    kind: 'land',
    from: '1847',
    to: '1864',
    tells: [{ fields: ['name', 'residence', 'landlord'], origin: 'townland' }],
    source: nationalArchivesOfIreland,
    note: 'Occupiers and their landlords by townland; one printed date a barony or union.',
  }),
  series({
    id: 'ireland-valuation-revisions',
    title: 'Revision books of the Valuation Office, Ireland',
    of,
    kind: 'land',
    from: '1855',
    to: '1977',
    tells: [{ fields: ['name', 'residence', 'landlord'], origin: 'townland' }],
    source: commonPractice,
    note: 'Show the year a holding passed to another hand: after a death or an emigration.',
  }),
  series({
    id: 'ireland-registry-of-deeds',
    title: 'Memorials in the Registry of Deeds, Dublin',
    of,
    kind: 'land',
    from: '1708',
    tells: [{ fields: ['name', 'residence', 'occupation', 'relations'], origin: 'townland' }],
    source: 'Registry of Deeds Act 1707 (6 Anne c. 2) (from memory)',
    note: 'Seldom of tenants at will.',
  }),
  series({
    id: 'ireland-estate-records',
    title: 'Rentals, leases and maps of landed estates, Ireland',
    of,
    kind: 'land',
    from: '1700',
    to: '1923',
    tells: [{ fields: ['name', 'residence', 'occupation', 'relations'], origin: 'townland' }],
    source: commonPractice,
    note: 'Some landlords paid passages and listed the families that went.',
  }),
  series({
    id: 'ireland-workhouse-registers',
    title: 'Workhouse registers and minutes of Poor Law Unions, Ireland',
    of,
    kind: 'poor law',
    from: '1838',
    to: '1922',
    tells: [
      {
        fields: ['name', 'sex', 'age', 'occupation', 'lastResidence', 'relations', 'religion'],
        origin: 'townland',
      },
    ],
    source: 'Poor Relief (Ireland) Act 1838 (1 & 2 Vict. c. 56) (from memory)',
    note: 'Survive very unevenly.',
  }),
  series({
    id: 'ireland-wills',
    title: 'Wills and administrations, Ireland',
    of,
    kind: 'probate',
    from: '1536',
    gaps: [
      {
        from: '1536',
        to: '1904',
        why: `${fourCourtsFire}; indexes, calendars from 1858, abstracts and many district will-books survive`,
        partly: true,
      },
    ],
    tells: [
      { fields: ['name', 'residence', 'occupation', 'event', 'relations', 'signature'], origin: 'townland' },
    ],
    source: nationalArchivesOfIreland,
  }),
];

const others: readonly BuiltInSeries[] = [
  series({
    id: 'ireland-newspapers',
    title: 'Newspapers, Ireland',
    of,
    kind: 'newspaper',
    from: '1750',
    tells: [{ fields: ['name', 'residence', 'event', 'relations'], origin: 'varies' }],
    source: commonPractice,
    note: 'Evictions, ejectments, fairs, emigrant ships; deaths of people in America are copied home.',
  }),
  series({
    id: 'ireland-gravestones',
    title: 'Gravestones, Ireland',
    of,
    kind: 'cemetery',
    from: '1700',
    tells: [{ fields: ['name', 'age', 'residence', 'event', 'relations'], origin: 'townland' }],
    source: commonPractice,
    note: 'A stone may have been put up by a son in America and say so.',
  }),
  series({
    id: 'ireland-national-school-registers',
    title: 'Registers of national schools, Ireland',
    of,
    kind: 'school',
    from: '1831',
    tells: [{ fields: ['name', 'age', 'residence', 'occupation', 'religion'], origin: 'townland' }],
    source: commonPractice,
    note: 'Few before the 1860s; may say that a child went to America.',
  }),
];

export const irelandLand: readonly BuiltInSeries[] = [...landAndPoor, ...others];
