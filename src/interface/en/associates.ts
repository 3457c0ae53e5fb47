/** Those who keep turning up beside a family: their parts, how often, and what accident would give. */
import { joinedBy } from '../../catalogue/roles.ts';
import type { PartValues } from '../../model/part.ts';
import type { WordsFor } from '../../model/said.ts';
import type { Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';
import { words } from './words.ts';

const list = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')}${everywhere.and}${items.at(-1)}`;
const { figures } = everywhere;
const lines = (n: number): string => `${n} ${n === 1 ? 'line' : 'lines'} off`;
const unnamed = 'somebody not named';
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const parts: WordsFor<PartValues> = {
  part: ({ as, of, lines: off }) =>
    `${words.role(as)}${of === null ? '' : ` ${joinedBy[as.toLowerCase()] ?? 'of'} ${of}`}${off === null ? '' : `, ${lines(off)}`}`,
  turned: ({ as, name }) => `${name ?? unnamed} was ${words.role(as)}`,
  household: ({ name }) => `in one household with ${name ?? unnamed}`,
  near: ({ as, off, by }) =>
    `${{ 'fellow-passenger': 'fellow passenger', neighbour: 'neighbour', other: 'in an entry near by' }[as]}, ${
      by === 'line' ? lines(off) : `${off} ${off === 1 ? 'household' : 'households'} off`
    }`,
  aboard: () => 'on the same ship',
  'same-ship': ({ ship }) => `came on the ${ship}, the family’s ship`,
  about: ({ role, name, as }) =>
    `${role === null ? 'named' : words.role(role)}, where ${name ?? unnamed} was ${words.role(as)}`,
  named: ({ role }) => (role === null ? 'named in the same record' : words.role(role)),
  party: ({ relation, how, address }) =>
    `${relation === null ? 'somebody' : words.role(relation)} ${how === 'joining' ? 'whom they were joining' : 'whom they left'}${address === null ? '' : `, at ${address}`}`,
  informed: () => 'gave the information',
};

export const associates = {
  title: 'Associates',
  description:
    'Those who keep turning up beside the families of the cases: witnesses, sponsors, neighbours, shipmates.',
  lede: 'Witnesses, sponsors, neighbours, shipmates: people who are not known to be kin and stand beside a family in its records. Where the same names come back, a group moved together, and one of them may have named the place.',
  families: 'Families',
  peopleMet: 'People met',
  whoRecur: 'Who recur',
  met: 'Met',
  byAccidentShort: 'By accident',
  toJourneys: 'Journeys: who travelled together, and who came after',
  toTable: 'All of them as a table (CSV)',
  asTable: 'As a table (CSV)',
  chanceReckoned: 'How chance is reckoned',
  noCases: 'No case is about anybody yet.',
  company:
    'Company is a clue and no proof: that two families kept together says nothing of where either came from, until a record does.',
  namesOrigin: 'names a place of origin',
  everyone: 'Everyone who recurs',
  mostTelling: (n: number): string => `The ${everywhere.numberWord(n)} most telling`,
  ofFamily: (n: number): string => (n === 1 ? 'The one who recurs' : `All ${n} who recur`),

  beside: (family: string): string => `Beside ${family}`,
  besideDescription: (family: string): string =>
    `Witnesses, sponsors, neighbours and shipmates who keep turning up beside ${family}, and where they came from.`,
  cases: (n: number): string => (n === 1 ? 'The case' : 'The cases'),
  onThisPage: 'On this page',
  leads: (n: number): string =>
    `${n === 1 ? 'One of them is' : `${n} of them are`} said somewhere to be from a place in the old country, narrower than the country itself. Such a place is a lead to search in, and no evidence of where the family came from.`,
  recurring: 'Who comes back',
  surnames: 'Surnames that several bear',
  together: 'Who appears with whom',
  togetherHow:
    'Years run from left to right. Each person is a level line from the first record that names them to the last; each record is a plumb line from the family down to the people it names. People who keep appearing together stand together. What is drawn is in the table above, in words.',
  once: 'Met once',
  onceLeft: (n: number, table: string): Phrase => [
    `${n} more ${n === 1 ? 'person was' : 'people were'} met once; `,
    { text: 'the table', href: table },
    ' has them all.',
  ],
  inRecords: (n: number): string => `in ${n} independent ${n === 1 ? 'record' : 'records'}`,
  ofOwn: 'a surname of the family’s own, so that they may be kin',

  nobodyMet: (family: string): string => `Nobody who is not kin stands beside ${family} in any record yet.`,
  tally: (met: number, family: string, records: number): string =>
    `${met} ${met === 1 ? 'person who is' : 'people who are'} not known to be kin ${met === 1 ? 'stands' : 'stand'} beside ${family} in ${records} ${records === 1 ? 'record' : 'records'}.`,
  recurs: (n: number, accident: string): string =>
    n === 0
      ? 'Nobody is in two independent records.'
      : `${n} of them ${n === 1 ? 'is' : 'are'} in two independent records or more; by accident ${accident} would be.`,
  tooCommon: (names: readonly string[]): string =>
    `Too many bear these names to tell anybody apart, and nobody was put together by them: ${names.join(', ')}.`,

  /** The table of those who recur. */
  table: {
    who: 'Who',
    as: 'Beside the family as',
    howOften: 'Records and chance',
    from: 'Said to be from',
    asShort: 'As',
    howOftenShort: 'How often',
    fromShort: 'From',
    records: (n: number): string => `${n} ${n === 1 ? 'record' : 'records'}`,
    independent: (n: number): string => `${n} independent ${n === 1 ? 'record' : 'records'}`,
    written: 'written',
    byNameOfPerson: (n: number): string => `${n} ${n === 1 ? 'mention' : 'mentions'} put here by name alone`,
    byName: 'put together by name alone: not yet shown to be one person',
    lead: 'Lead',
    sameName: 'of somebody of the same name',
    noRecordSays: 'no record says',
    why: 'Why so seldom, or so often',
    firstSeen: 'First seen',
    chance: 'By accident',
    stated: {
      birthplace: 'birthplace',
      lastResidence: 'last residence',
      event: 'baptism or birth',
      nearest: 'address of a relative left behind',
    } as Readonly<Record<string, string>>,
    parts: 'Part',
    leadsOnly: 'Names a place of origin',
    leadYes: 'yes',
    leadNo: 'no',
  },

  /** The drawing. */
  register: {
    unseenRecord: 'a record not shown here',
    alone: 'Seen with nobody else here',
    andMore: (names: readonly string[], more: number): string =>
      more > 0 ? `${names.join(', ')}${everywhere.and}${more} more` : list(names),
    part: (n: number, of: number): string => `part ${n} of ${of}`,
    noDate: 'no date',
    family: 'The family',
    title: (heading: string, family: string): string =>
      `${heading}: when and in which part they stand beside ${family}`,
    desc: (people: number, records: number, who: readonly string[]): string =>
      `${people} ${people === 1 ? 'person' : 'people'} in ${records} ${records === 1 ? 'record' : 'records'}: ${who.join('; ')}.`,
    more: (n: number, table: string): Phrase => [
      `${n} more ${n === 1 ? 'person recurs' : 'people recur'} than are drawn; the `,
      { text: 'table', href: table },
      ' has them all.',
    ],
  },

  /** Beside a mention on the page of its record. */
  note: (byName: boolean, family: string, href: string, seen: string): Phrase => [
    byName ? 'The name stands also beside ' : 'Also beside ',
    { text: family, href },
    `: ${seen}`,
  ],

  /** The word for a part. */
  roles: {
    witness: 'witness',
    sponsor: 'sponsor',
    neighbour: 'neighbour',
    'fellow-passenger': 'fellow passenger',
    household: 'in the household',
    grantor: 'dealt in land or money',
    bondsman: 'bondsman or executor',
    informant: 'informant',
    mourner: 'mourner',
    'fellow-worker': 'worked with them',
    other: 'named beside them',
  },
  /** The same in a word or two. */
  brief: {
    witness: 'witness',
    sponsor: 'sponsor',
    neighbour: 'neighbour',
    'fellow-passenger': 'fellow passenger',
    household: 'household',
    grantor: 'grantor',
    bondsman: 'bondsman',
    informant: 'informant',
    mourner: 'mourner',
    'fellow-worker': 'fellow worker',
    other: 'named',
  },
  parts,
  /** “neighbour 1851 and 1870”. */
  roleInYears: (role: string, years: readonly string[]): string =>
    [role, list(years)].filter(Boolean).join(' '),

  /** A chance of one in so many: “1 in 400 by accident”. */
  byAccident: {
    asLikely: 'as likely as not by accident',
    hardly: 'less than 1 in 1,000,000 by accident',
    oneIn: (n: number): string => `1 in ${figures(n)} by accident`,
  },
  /** A mean: “about 1.3”. */
  about: (n: number): string => `about ${n >= 10 ? figures(Math.round(n)) : String(n)}`,
  hardlyAny: 'fewer than 0.01',
  /** How many records would hold the name by chance. */
  expected: (about: string): string =>
    `Expected by chance in ${about} other ${about === 'about 1' ? 'record' : 'records'}.`,
  rarity: {
    list: 'One long list beside the family names several people so.',
    crowd: (people: number, because: string): string =>
      `Counted as one in ${figures(people)}, however rare the name: ${because}.`,
    partOfName: 'Only a part of the name is known.',
  },

  theFamily: 'the family',
  familyOf: (people: readonly string[]): string => `the family of ${list(people)}`,
  familyNamed: (surnames: readonly string[]): string => `the ${list(surnames)} family`,
  /** A name of a family where a sentence or heading begins. */
  heading: capital,
  list,
};
