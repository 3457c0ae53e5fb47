/**
 * How many people a place of a kind roughly held in the nineteenth century: the crowd out of which a record's person
 * could be another of the name. Only the order of size matters; an author's own counts of names (their `total`) go
 * before these.
 */
import { commonPractice } from './sources.ts';

export interface Population {
  /** The kind of place, in the words of the content. */
  kind: string;
  /** Only below this country; absent: anywhere. */
  country?: string;
  people: number;
  source: string;
}

const ireland1841 = 'Census of Ireland 1841, 8,175,124 people (from memory), over the number of such places';
const norway1855 = 'Census of Norway 1855, 1,490,047 people (from memory), over the number of such places';
const unitedStates1870 =
  'Ninth Census of the United States, 1870, 38.6 million people (from memory), over the number of such places';

/** Rows for a country stand before those for anywhere. */
// prettier-ignore
export const populations: readonly Population[] = [
  { kind: 'townland', country: 'ireland', people: 130, source: ireland1841 },
  { kind: 'civil parish', country: 'ireland', people: 3_300, source: ireland1841 },
  { kind: 'Catholic parish', country: 'ireland', people: 7_000, source: `${ireland1841}; about a thousand parishes (from memory)` },
  { kind: 'electoral division', country: 'ireland', people: 2_200, source: ireland1841 },
  { kind: "registrar's district", country: 'ireland', people: 9_900, source: ireland1841 },
  { kind: 'barony', country: 'ireland', people: 25_000, source: ireland1841 },
  { kind: 'Poor Law Union', country: 'ireland', people: 50_000, source: ireland1841 },
  { kind: 'county', country: 'ireland', people: 255_000, source: ireland1841 },
  { kind: 'province', country: 'ireland', people: 2_000_000, source: ireland1841 },
  { kind: 'farm', country: 'norway', people: 20, source: commonPractice },
  { kind: 'parish', country: 'norway', people: 1_500, source: norway1855 },
  { kind: 'clerical district', country: 'norway', people: 3_500, source: norway1855 },
  { kind: 'county', country: 'norway', people: 83_000, source: norway1855 },
  { kind: 'county', country: 'united-states', people: 17_000, source: unitedStates1870 },
  { kind: 'township', country: 'united-states', people: 1_000, source: unitedStates1870 },
  { kind: 'state', country: 'united-states', people: 1_000_000, source: unitedStates1870 },
  { kind: 'farm', people: 20, source: commonPractice },
  { kind: 'village', people: 500, source: commonPractice },
  { kind: 'settlement', people: 300, source: commonPractice },
  { kind: 'parish', people: 3_000, source: commonPractice },
  { kind: 'town', people: 3_000, source: commonPractice },
  { kind: 'township', people: 1_000, source: commonPractice },
  { kind: 'city', people: 10_000, source: commonPractice },
  { kind: 'port', people: 50_000, source: commonPractice },
  { kind: 'mine location', people: 500, source: commonPractice },
  { kind: 'district', people: 20_000, source: commonPractice },
  { kind: 'county', people: 100_000, source: commonPractice },
];

/** The crowd where nothing is known of a record's place. */
export const populationUnknown = 20_000;
