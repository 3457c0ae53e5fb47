/** Research plans and coverage: what should exist, what was searched, what to search next. */
import { everywhere } from './everywhere.ts';

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')}${everywhere.and}${words.at(-1)}`;
const inHundred = (share: number): string => `${Math.max(1, Math.round(share * 100))} in 100`;

/** A first and a last year, each absent where it is open. */
function years(from?: number, to?: number): string {
  if (from === undefined) return to === undefined ? 'any year' : `to ${to}`;
  if (to === undefined) return `from ${from}`;
  return from === to ? String(from) : `${from}–${to}`;
}

/** How near a place is: how narrow the ground. */
const reach = {
  country: 'the country',
  county: 'the county',
  parish: 'the parish or town',
  townland: 'the very place',
};

/** What an entry says of a person, after their name. */
const wasThere = {
  census: 'was counted at',
  birth: 'was born at',
  marriage: 'was married at',
  death: 'was dead at',
  arrival: 'landed in',
  departure: 'was left at',
  naturalization: 'was of an age and a residence to become a citizen at',
  residence: 'was living at',
  childhood: 'was a child at',
  service: 'was of an age to serve at',
  biography: 'was living at',
};

export const plan = {
  title: 'Research plan',
  kicker: (name: string): string => `Research plan · ${name}`,
  description: (question: string): string => `What to search next: ${question}`,
  theCase: 'The case',
  standing: 'Standing',
  person: 'Person',
  cases: 'Cases',
  onThisPage: 'On this page',
  seeAlso: 'See also',
  theStory: 'The story',
  theProof: 'The proof',
  theLog: 'The log of searches',
  howWorkedOut: 'How the plan is worked out',
  inBrief: {
    open: 'Open searches',
    missing: 'Missing from a census',
    searched: 'Searched, nothing found',
    lost: 'Lost series',
  },

  next: 'What to search next',
  nothingOpen: 'Nothing is open: no series known for the places and years of these people is left to search.',
  moreOpen: (n: number, caseId: string): string =>
    n === 1
      ? `One more is open, worth less than these; npm run plan -- ${caseId} --all lists it.`
      : `${n} more are open, each worth less than these; npm run plan -- ${caseId} --all lists them.`,
  missing: 'Missing from a census they should be in',
  missingShort: 'Missing from a census',
  missingWhy: 'Records before and after have them in the country, so that they should have been counted.',
  searchedNotFound: 'searched, not found',
  neverSearched: 'never searched',
  coverage: 'What should name them',
  coverageWhy:
    'Each series that takes in the places and years of a life, and what became of the entry it should have.',
  lost: 'What is lost',
  instead: 'Instead',
  lines: 'The family, line by line',
  clues: 'Clues in names',
  caution:
    'The order follows estimates of common practice, not measurements: an unlikely record has settled many a case. A search that finds nothing is worth logging.',
  entries: (n: number): string => (n === 1 ? 'one entry' : `${n} entries`),
  notDrawn: (n: number): string =>
    `The records of ${n} more ${n === 1 ? 'person' : 'people'} around the case are not drawn here.`,
  showMoreSearches: (n: number): string => (n === 1 ? 'One more search' : `${n} more searches`),

  /** A search that is still to be made. */
  card: {
    for: 'For',
    more: (n: number): string => `and ${n} more`,
    lookFor: 'Look for',
    spelt: 'Spelt so far',
    watch: 'Watch for',
    why: 'Why, and what to beware of',
    searchedInPart: 'Searched in part:',
  },
  /** How worth it a search is. */
  strength: { strong: 'well worth it', fair: 'worth it', slight: 'a long shot' },
  factors: {
    there: 'That it exists and is found',
    tells: 'That it names a place',
    nearer: 'How much nearer that is',
    close: 'How far it holds for the person of the case',
  },

  /** The table of what should name one person. */
  table: {
    series: 'Series',
    drawn: 'Years, drawn',
    years: 'Years',
    became: 'What became of it',
    record: (nth?: number): string => (nth === undefined ? 'record' : `record ${nth}`),
    search: (id: string): string => `search ${id}`,
    marks: 'The marks',
  },
  status: {
    found: 'found',
    searched: 'searched, not found',
    unreadable: 'unreadable',
    unavailable: 'not available',
    lost: 'lost',
    open: 'open',
  },
  /** What makes an entry, as a person’s part in it. */
  events: {
    census: 'counted',
    birth: 'birth or baptism',
    marriage: 'marriage',
    death: 'death or burial',
    arrival: 'arrival',
    departure: 'departure',
    naturalization: 'citizenship',
    residence: 'years lived there',
    childhood: 'school years',
    service: 'years of service',
    biography: 'biography',
  },
  years,
  /** “counted, 1870, aged 39 to 40”. */
  what: (event: string, when: string, age?: { least: number; most: number }): string =>
    `${event}, ${when}${age === undefined ? '' : age.least === age.most ? `, aged ${age.least}` : `, aged ${age.least} to ${age.most}`}`,

  subject: 'the subject',
  /** What an associate was, in how many records. */
  metAs: (roles: readonly string[], records: number): string =>
    `${roles.join(', ')} in ${records === 1 ? 'one record' : `${records} records`}`,

  /** How near the case has come. */
  stands: {
    nowhere: 'No evidence of the case names a place yet, so that any place is gain.',
    settled: (at: keyof typeof reach, place?: string): string =>
      `Two independent items of evidence reach ${reach[at]}${place === undefined || at === 'country' || at === 'county' ? '' : ` (${place})`}. What is listed here would make that firmer${at === 'townland' ? '' : ', or bring it nearer'}.`,
    onTheWay: (reached: keyof typeof reach, settled: keyof typeof reach | null): string =>
      `The evidence comes down to ${reach[reached]}, ${settled === null ? 'nowhere yet on two independent items' : `on two independent items only to ${reach[settled]}`}. What is listed here would bring it nearer, or add the second item.`,
  },

  /** Why a search is worth it. */
  because: {
    there(
      name: string,
      event: keyof typeof wasThere,
      place: string,
      at: {
        from?: number;
        to?: number;
        how: 'seen' | 'between' | 'presumed';
        /** Of one year. */
        day: boolean;
        /** The kind of the place. */
        kind: string;
      },
      share: number,
    ): string {
      const known = {
        seen: 'a record says so',
        between: 'records before and after say so',
        presumed: 'it is presumed from what is known before and after',
      }[at.how];
      const when = `${at.day ? 'in' : 'within'} ${years(at.from, at.to)}`;
      return `${name} ${wasThere[event]} ${place} ${when} (${known}). Such an entry exists, and is found and known for theirs, about ${inHundred(share)} times.`;
    },
    tells(
      fields: readonly string[],
      title: string,
      levels: readonly { level: keyof typeof reach; share: number }[],
    ): string {
      const says =
        fields.length > 0 ? `It may give ${list(fields)}.` : `Little is known of what ${title} tells.`;
      const told = levels.map(({ level, share }) => `${reach[level]} ${inHundred(share)}`);
      return told.length > 0
        ? `${says} Records like it come down to ${list(told)} times.`
        : `${says} Hardly one names an origin.`;
    },
    nearer(reached: keyof typeof reach | null, settled: keyof typeof reach | null): string {
      if (reached === null) return 'The case has no place yet: any is gain, the narrower the better.';
      if (reached === 'townland')
        return settled === 'townland'
          ? 'Two independent items reach the place already: another would make it firmer, not nearer.'
          : 'One item names the place itself; a second that doesn’t rest on it is what the case needs.';
      return settled === reached
        ? `The case reaches ${reach[reached]}: only something nearer is gain.`
        : `The case reaches ${reach[reached]} on too little: a second item there is gain, and anything nearer is more.`;
    },
    aboutSubject: 'It is about the person of the case.',
    associate: (name: string, words: string): string =>
      `${name} is no known kin (${words}), but people who keep company often came from one place.`,
    elsewhere: (name: string, words: string): string =>
      `${name} (${words}) came from elsewhere; it would say little of this origin.`,
    kin: (name: string, words: string, share: number): string =>
      `${name} is the ${words}: what holds for them holds for the person of the case about ${inHundred(share)} times.`,
  },

  /** What to beware of. What the catalogue or the author says of a gap stands where the sentence is parted. */
  cautions: {
    residence: 'Last residence is not birthplace.',
    gap: ['Ask place by place, for much is lost: ', '.'] as [string, string],
    newspaper: 'Make sure that the run of the paper covers the days; else nothing found means nothing.',
    census: 'They should be in it: try every spelling, and read the neighbours’ pages line by line.',
    nameAlone: 'Without the county or parish a name alone singles out nobody: look for the place first.',
    partly: 'Part of the years has been searched; the log says which.',
  },

  /** What a series may tell that helps to find an origin. */
  fields: {
    birthplace: 'the birthplace',
    lastResidence: 'the last residence',
    nearest: 'the nearest relative left behind, with an address',
    joining: 'whom they were joining',
    'parents-birthplace': 'where the parents were born',
    'parents-names': 'the parents’ names',
    'maiden-name': 'maiden names',
    'previous-residence': 'where they lived before',
    immigrated: 'the year of arrival',
    voyage: 'ship, ports and date',
    naturalized: 'whether a citizen',
    'year-naturalized': 'the year of naturalization',
    'mother-tongue': 'the mother tongue',
    destination: 'where they were bound',
    relations: 'kin and witnesses',
    children: 'children',
    religion: 'the religion',
    born: 'the date of birth',
    age: 'the age',
    residence: 'where they lived',
    household: 'who lived with them',
    occupation: 'the occupation',
    landlord: 'the landlord',
    signature: 'the signature',
  },
  list,
};
