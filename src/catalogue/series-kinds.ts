/**
 * What a kind of record series does where its row doesn't say: what in a life makes an entry, how likely an entry that
 * should be there survives and is found, and how near the origin it then comes. The figures are round estimates of
 * *common practice*: they put searches in an order and count nothing as proved.
 */
import type { EntryEvent, OriginDepth, SeriesPeople } from './series/types.ts';

/** The levels an origin is reached at, from wide to narrow. */
export const reaches = ['country', 'county', 'parish', 'townland'] as const;
export type Reach = (typeof reaches)[number];

export interface SeriesKind {
  /** In words, for many: “censuses”. */
  plural: string;
  entries: readonly EntryEvent[];
  /** 0 to 1: an entry that should be there survives and is found. */
  chance: number;
  who?: SeriesPeople;
  /** The books are kept place by place, so that without the place there is hardly a search to make. */
  local: boolean;
}

const row = (
  plural: string,
  entries: readonly EntryEvent[],
  chance: number,
  local: boolean,
  who?: SeriesPeople,
): SeriesKind => ({ plural, entries, chance, local, ...(who === undefined ? {} : { who }) });

export const seriesKinds: Readonly<Record<string, SeriesKind>> = {
  census: row('censuses', ['census'], 0.85, false),
  vital: row('civil registration', ['birth', 'marriage', 'death'], 0.75, false),
  church: row('church registers', ['birth', 'marriage', 'death'], 0.55, true),
  naturalization: row('naturalization papers', ['naturalization'], 0.55, false, { foreignBorn: true }),
  passenger: row('passenger lists', ['arrival'], 0.65, false),
  emigration: row('lists of emigrants', ['departure'], 0.6, false),
  cemetery: row('stones and cemetery books', ['death'], 0.55, true),
  newspaper: row('newspapers', ['death'], 0.4, true),
  probate: row('probate', ['death'], 0.3, false),
  land: row('land records', ['residence'], 0.35, false),
  tax: row('tax lists', ['residence'], 0.5, false),
  directory: row('directories', ['residence'], 0.6, false),
  military: row('military papers', ['service'], 0.15, false, { sex: 'M' }),
  history: row('county and town histories', ['biography'], 0.12, false),
  passport: row('passports', ['residence'], 0.05, false),
  registration: row('registrations', ['residence'], 0.4, false),
  'poor law': row('poor-law records', ['residence'], 0.1, true),
  school: row('school registers', ['childhood'], 0.2, true),
  company: row('employers’ records', ['residence'], 0.1, true),
  society: row('records of societies', ['residence'], 0.12, true),
  family: row('family papers', ['residence'], 0.3, false),
};

/** A kind of the author's own that the catalogue doesn't know: whoever lived there may be in it. */
export const otherKind: SeriesKind = row('other records', ['residence'], 0.2, true);

/**
 * How often a record of each depth comes so near, where it names the person: what is left to 1 says nothing of the
 * origin. A certificate that asks for the country gets a county now and then; one that asks for the town often gets
 * the country alone.
 */
export const depthChances: Readonly<Record<OriginDepth, Readonly<Record<Reach, number>>>> = {
  none: { country: 0.03, county: 0.005, parish: 0.003, townland: 0.002 },
  country: { country: 0.9, county: 0.06, parish: 0.03, townland: 0.01 },
  county: { country: 0.25, county: 0.6, parish: 0.1, townland: 0.05 },
  parish: { country: 0.3, county: 0.2, parish: 0.4, townland: 0.1 },
  townland: { country: 0.05, county: 0.05, parish: 0.25, townland: 0.65 },
  varies: { country: 0.35, county: 0.2, parish: 0.12, townland: 0.08 },
};

/** What an origin reached at a level is worth to somebody who has to cross the ocean with it: 1 is the very place. */
export const reachWorth: Readonly<Record<Reach, number>> = {
  country: 0.05,
  county: 0.4,
  parish: 0.8,
  townland: 1,
};

/** Kinds of places by how near they are to the ground people are recorded by; every other kind counts as a parish. */
const kindReach: readonly (readonly [RegExp, Reach])[] = [
  [/\b(?:country|sovereign state|kingdom|empire)\b/i, 'country'],
  [/\b(?:townland|farm|croft|hamlet|street|house|estate|mine location|location)\b/i, 'townland'],
  [
    /\b(?:parish|barony|town|city|village|township|union|district|hundred|settlement|port|locality)\b/i,
    'parish',
  ],
  [/\b(?:county|province|state|territory|region|riding|shire|amt|fylke|land|canton|diocese)\b/i, 'county'],
];

/** How near a place of this kind is. */
export function reachOfKind(kind: string): Reach {
  let reach = known.get(kind);
  if (!reach) known.set(kind, (reach = kindReach.find(([words]) => words.test(kind))?.[1] ?? 'parish'));
  return reach;
}

const known = new Map<string, Reach>();

/**
 * How much likelier or unlikelier a church of some confession is for people of some origin, by a word of the series'
 * title (*common practice*): 1 where nothing is said.
 */
export const confessions: readonly { origin: string; title: RegExp; factor: number }[] = [
  { origin: 'ireland', title: /\bLutheran\b/i, factor: 0.05 },
  { origin: 'ireland', title: /\bProtestant\b/i, factor: 0.6 },
  { origin: 'norway', title: /\bCatholic\b/i, factor: 0.03 },
  { origin: 'norway', title: /\bProtestant\b/i, factor: 0.4 },
  { origin: 'norway', title: /\bLutheran\b/i, factor: 2 },
  { origin: 'england', title: /\bLutheran\b/i, factor: 0.05 },
  { origin: 'england', title: /\bCatholic\b/i, factor: 0.2 },
  { origin: 'england', title: /\bProtestant\b/i, factor: 2 },
  { origin: 'scotland', title: /\bLutheran\b/i, factor: 0.05 },
  { origin: 'scotland', title: /\bCatholic\b/i, factor: 0.3 },
  { origin: 'scotland', title: /\bProtestant\b/i, factor: 2 },
];

const confessionWords: readonly (readonly [RegExp, string])[] = [
  [/\bCatholic\b/i, 'Catholic'],
  [/\bLutheran\b/i, 'Lutheran'],
  [/\b(?:Protestant|Methodist|Baptist|Congregational)\b/i, 'Protestant'],
  [/\b(?:Church of Ireland|Church of England|Anglican|Episcopal(?:ian)?)\b/i, 'Anglican'],
  [/\bPresbyterian\b/i, 'Presbyterian'],
];

/** The confession a church series is of, where its title says: whoever is in one's books is seldom in another's. */
export function confessionOf(title: string): string | undefined {
  return confessionWords.find(([words]) => words.test(title))?.[1];
}
