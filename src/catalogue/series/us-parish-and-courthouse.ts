import { commonPractice } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries } from './types.ts';

/**
 * What churches, courthouses and cemeteries of the United States keep. No law made most of these alike, so what they
 * tell is common practice, and the first year is that from which they are worth asking for.
 */
const source = commonPractice;
const of = 'united-states';

const church: readonly BuiltInSeries[] = [
  series({
    id: 'us-catholic-parish-registers',
    title: 'Catholic parish registers, United States',
    of,
    kind: 'church',
    from: '1790',
    tells: [
      {
        fields: ['name', 'event', 'birthplace', 'relations', 'parents-names', 'maiden-name'],
        origin: 'varies',
      },
    ],
    source,
    note: 'Marriage entries of immigrants may name parents and native parish or diocese; sponsors and witnesses are kin and neighbours.',
  }),
  series({
    id: 'us-lutheran-church-books',
    title: 'Lutheran church books, United States',
    of,
    chance: 0.3,
    kind: 'church',
    from: '1730',
    tells: [
      {
        fields: [
          'name',
          'born',
          'birthplace',
          'lastResidence',
          'immigrated',
          'event',
          'relations',
          'parents-names',
        ],
        origin: 'parish',
      },
    ],
    source,
    note: 'Lists of members, confirmations and burials of Norwegian and German congregations often name the home parish.',
  }),
  series({
    id: 'us-protestant-church-registers',
    title: 'Registers of other Protestant churches, United States',
    of,
    chance: 0.2,
    kind: 'church',
    from: '1790',
    tells: [{ fields: ['name', 'event', 'lastResidence', 'relations'], origin: 'varies' }],
    source,
    note: 'Members received by letter may be said to come from a church over there: Methodist classes of Cornish miners, Presbyterian certificates.',
  }),
];

const courthouse: readonly BuiltInSeries[] = [
  series({
    id: 'us-probate',
    title: 'Wills, administrations and guardianships, county courts of the United States',
    of,
    kind: 'probate',
    from: '1789',
    tells: [{ fields: ['name', 'residence', 'event', 'relations', 'signature'], origin: 'varies' }],
    source,
    note: 'Heirs abroad are named with their addresses; petitions list all kin.',
  }),
  series({
    id: 'us-deeds',
    title: 'Deeds and mortgages, county recorders of the United States',
    of,
    kind: 'land',
    from: '1789',
    tells: [{ fields: ['name', 'residence', 'relations', 'signature'], origin: 'none' }],
    source,
    note: 'Names the wife; neighbours and sellers are often people from home.',
  }),
  series({
    id: 'us-land-patents',
    title: 'Federal land patents and entries',
    of,
    chance: 0.1,
    kind: 'land',
    from: '1788',
    tells: [{ fields: ['name', 'residence', 'relations'], origin: 'none' }],
    source: 'Land Act of 24 April 1820 and Homestead Act of 20 May 1862, 12 Stat. 392 (from memory)',
    note: 'The plat shows who took the land beside them.',
  }),
  series({
    id: 'us-homestead-files',
    title: 'Homestead case files',
    of,
    chance: 0.1,
    kind: 'land',
    from: '1863-01-01',
    to: '1976',
    tells: [
      {
        fields: [
          'name',
          'age',
          'residence',
          'household',
          'relations',
          'birthplace',
          'immigrated',
          'naturalized',
          'signature',
        ],
        origin: 'country',
      },
    ],
    source: 'Homestead Act of 20 May 1862, 12 Stat. 392 (from memory)',
    note: 'Hold a copy of the naturalization papers of the foreign-born, and two neighbours as witnesses.',
  }),
];

const burial: readonly BuiltInSeries[] = [
  series({
    id: 'us-gravestones',
    title: 'Gravestones, United States',
    of,
    kind: 'cemetery',
    from: '1789',
    tells: [{ fields: ['name', 'born', 'age', 'birthplace', 'event', 'relations'], origin: 'varies' }],
    source,
    note: "Immigrants' stones often name a county or parish.",
  }),
  series({
    id: 'us-cemetery-records',
    title: 'Cemetery books and plot cards, United States',
    of,
    chance: 0.5,
    kind: 'cemetery',
    from: '1840',
    tells: [{ fields: ['name', 'age', 'birthplace', 'event', 'relations'], origin: 'country' }],
    source,
    note: 'Shows who bought the plot and who lies in it.',
  }),
  series({
    id: 'us-funeral-home-records',
    title: "Undertakers' books, United States",
    of,
    chance: 0.3,
    kind: 'cemetery',
    from: '1880',
    tells: [
      {
        fields: ['name', 'age', 'born', 'birthplace', 'event', 'relations', 'parents-names'],
        origin: 'varies',
      },
    ],
    source,
    note: 'Name the person who ordered the funeral; clippings may be kept with the card.',
  }),
];

export const usParishAndCourthouse: readonly BuiltInSeries[] = [...church, ...courthouse, ...burial];
