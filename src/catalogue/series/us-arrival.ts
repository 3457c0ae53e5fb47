import { anyWoman, basicNaturalizationAct, passengerActs } from '../sources.ts';
import { series } from './build.ts';
import type { BuiltInSeries } from './types.ts';

/**
 * Records of becoming a citizen of the United States and of arriving there, with what the law of the day made each
 * say. The forms of 27 September 1906 are the watershed: before them the town of birth is rarely given.
 */
const beforeForms = {
  to: '1906-09-26',
  fields: ['name', 'birthplace', 'immigrated', 'residence', 'signature'],
} as const;
const formsFrom = '1906-09-27';

export const usArrival: readonly BuiltInSeries[] = [
  series({
    id: 'us-declaration-of-intention',
    title: 'Declarations of intention (first papers)',
    of: 'united-states',
    kind: 'naturalization',
    from: '1795',
    tells: [
      { ...beforeForms, origin: 'country' },
      {
        from: formsFrom,
        fields: [
          'name',
          'age',
          'occupation',
          'born',
          'birthplace',
          'lastResidence',
          'residence',
          'immigrated',
          'voyage',
          'relations',
          'signature',
        ],
        origin: 'parish',
      },
    ],
    source: `${basicNaturalizationAct}; ${anyWoman}`,
    note: 'Made in any court of record before 1906, often in another county or state than the petition.',
  }),
  series({
    id: 'us-naturalization-petition',
    title: 'Petitions for naturalization (final papers) and orders of admission',
    of: 'united-states',
    kind: 'naturalization',
    from: '1790',
    tells: [
      {
        to: '1906-09-26',
        fields: ['name', 'birthplace', 'immigrated', 'residence', 'relations', 'naturalized', 'signature'],
        origin: 'country',
      },
      {
        from: formsFrom,
        fields: [
          'name',
          'age',
          'occupation',
          'born',
          'birthplace',
          'residence',
          'immigrated',
          'voyage',
          'relations',
          'naturalized',
          'signature',
        ],
        origin: 'parish',
      },
    ],
    source: `${basicNaturalizationAct}; ${anyWoman}`,
    note: 'The whole file is wanted, with its two witnesses, not the certificate. Wives and minor children were admitted through the husband or father and seldom have papers of their own before 1922.',
  }),
  series({
    id: 'us-passenger-lists-1820-1891',
    title: 'Customs passenger lists, United States ports',
    of: 'united-states',
    kind: 'passenger',
    from: '1820-01-01',
    to: '1891',
    tells: [
      {
        to: '1882-10-30',
        fields: ['name', 'age', 'sex', 'occupation', 'nationality', 'voyage'],
        origin: 'country',
      },
      {
        from: '1882-10-31',
        fields: ['name', 'age', 'sex', 'occupation', 'birthplace', 'voyage'],
        origin: 'country',
      },
    ],
    source: passengerActs,
    note: 'Some ports kept customs lists to 1897. Fellow passengers on the list are worth as much as the entry.',
  }),
  series({
    id: 'us-passenger-lists-1891-1957',
    title: 'Immigration passenger lists, United States ports',
    of: 'united-states',
    kind: 'passenger',
    from: '1891',
    to: '1957',
    tells: [
      {
        to: '1893-03-02',
        fields: ['name', 'age', 'sex', 'occupation', 'nationality', 'voyage'],
        origin: 'country',
      },
      {
        from: '1893-03-03',
        to: '1906-06-28',
        fields: ['name', 'age', 'sex', 'occupation', 'nationality', 'lastResidence', 'joining', 'voyage'],
        origin: 'parish',
      },
      {
        from: '1906-06-29',
        to: '1907-06-30',
        fields: [
          'name',
          'age',
          'sex',
          'occupation',
          'nationality',
          'lastResidence',
          'birthplace',
          'joining',
          'voyage',
        ],
        origin: 'parish',
      },
      {
        from: '1907-07-01',
        fields: [
          'name',
          'age',
          'sex',
          'occupation',
          'nationality',
          'lastResidence',
          'birthplace',
          'joining',
          'nearest',
          'voyage',
        ],
        origin: 'parish',
      },
    ],
    source: passengerActs,
    note: 'Last residence is not birthplace. The new columns came into use at different dates in different ports.',
  }),
  series({
    id: 'us-passport-applications',
    title: 'Passport applications, United States',
    of: 'united-states',
    who: { foreignBorn: true },
    chance: 0.05,
    kind: 'passport',
    from: '1795',
    to: '1925',
    tells: [
      {
        to: '1905',
        fields: ['name', 'born', 'birthplace', 'residence', 'immigrated', 'naturalized'],
        origin: 'varies',
      },
      {
        from: '1906',
        fields: [
          'name',
          'born',
          'birthplace',
          'residence',
          'occupation',
          'immigrated',
          'voyage',
          'naturalized',
          'relations',
        ],
        origin: 'parish',
      },
    ],
    source: 'US National Archives, guide to passport applications (from memory)',
    note: 'Of naturalized citizens who went home on a visit.',
  }),
  series({
    id: 'us-alien-registration-1940',
    title: 'Alien registration forms, 1940–1944',
    of: 'united-states',
    who: { foreignBorn: true },
    chance: 0.3,
    kind: 'registration',
    from: '1940-08-27',
    to: '1944',
    tells: [
      {
        fields: [
          'name',
          'born',
          'birthplace',
          'residence',
          'occupation',
          'nationality',
          'immigrated',
          'voyage',
          'relations',
          'signature',
        ],
        origin: 'parish',
      },
    ],
    source: 'Alien Registration Act, 28 June 1940, 54 Stat. 670 (from memory)',
  }),
];
