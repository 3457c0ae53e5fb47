/**
 * What is usual of families, where a comparison of two families needs it: how large they were, how many made a parish,
 * and how often what two families have in common is met by accident. Every row with its source.
 */
import { levelTable, type FieldShares } from './identity.ts';
import { commonPractice } from './sources.ts';

/** People to a household, by country; the last row for anywhere. */
export const householdSizes: readonly { country?: string; people: number; source: string }[] = [
  {
    country: 'ireland',
    people: 5.5,
    source: 'Census of Ireland 1841: 8,175,124 people in about 1.47 million families (from memory)',
  },
  {
    country: 'norway',
    people: 5,
    source: 'Census of Norway 1855: 1,490,047 people, about five to a household (from memory)',
  },
  { people: 5, source: commonPractice },
];

/** Children born to a marriage that lasted, and the years between the first and the last of them. */
export const childrenOfAMarriage = { children: 7, years: 22, source: `${commonPractice}, from memory` };

/** The country’s people who are called after their fathers, so that a surname says the father’s given name. */
export const patronymicCountries: ReadonlySet<string> = new Set(['norway', 'sweden', 'denmark', 'iceland']);

/**
 * By what factor a figure may be off either way, nine times in ten: the interval of an expected number follows from
 * these. Counts of names carry their own error besides (that of a sample of their size).
 */
export const factors = {
  /** Households, where the author's own list of names counts them. */
  householdsCounted: 1.15,
  /** Households, from the people of a place of the kind. */
  householdsUsual: 2,
  /** A share of a name from a table written from memory. */
  shareFromMemory: 1.6,
  /** A given name in a parish, from a table of its country. */
  givenFromAfar: 1.6,
  /** A surname in a parish, from a table of its country: surnames keep to their districts. */
  surnameFromAfar: 4,
  /** A name that the list for the place does not have. */
  unlisted: 5,
  source: commonPractice,
} as const;

/**
 * The prior: how likely the family, if it lived in the parishes of the candidates, is among what was looked through
 * there, before anything is compared.
 */
export const foundThere = { share: 0.5, source: commonPractice };

/**
 * Two candidates nearer than this are not told apart (eight to one); one that is this far behind another is out of the
 * question (about a thousand to one).
 */
export const apart = { bits: 3, outOfTheQuestion: 10, source: commonPractice };

/** Of a family known well enough to name children beside the one sought: how often one of them is among them. */
export const siblingFound = { share: 0.7, source: commonPractice };

/** For so many years after they left, a list of a brother's or sister's house may be asked for a child (common practice). */
export const yearsAtHome = 15;

/** What only families are compared in; everything else is weighed as two namings of a person are. */
export const familyFields = {
  /** Children in the same order: every two of them, one of two, and none. */
  order: {
    levels: levelTable(`
      same order     | 0.90 | 0.20
      mostly so      | 0.07 | 0.40
      another order  | 0.03 | 0.40`),
    source: commonPractice,
  },
  /** Of the child who would be the emigrant: what is heard of them over there once the emigrant had left. */
  afterwards: {
    levels: levelTable(`
      said to have left | 0.300 | 0.030
      not there         | 0.685 | 0.470
      still there       | 0.015 | 0.500`),
    source: commonPractice,
  },
} as const satisfies Record<string, FieldShares>;
