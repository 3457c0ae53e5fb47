/** Who travelled together, and who came after whom. */
import type { WordsFor } from '../../model/said.ts';
import type { TieValues } from '../../model/tie.ts';
import type { Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';
import { words } from './words.ts';

const list = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')}${everywhere.and}${items.at(-1)}`;
const { figures } = everywhere;
const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Why somebody is counted among a party; `whom` are the others of whom it holds. */
const ties: WordsFor<{ [Key in keyof TieValues]: TieValues[Key] & { whom: string } }> = {
  'stated-kin': ({ as, whom }) => `the record says ${words.role(as)}: ${whom}`,
  'stated-companion': ({ as, whom }) => `noted as ${words.role(as)} in the record: ${whom}`,
  ticket: ({ ticket, heads, whom }) =>
    `the same ticket, ${ticket}${heads === null ? '' : `, which ${heads} of the list hold`}: ${whom}`,
  'tickets-near': ({ a, b, apart, whom }) =>
    `${apart === 1 ? 'tickets with numbers in a row' : 'tickets two numbers apart'}, ${a} and ${b}: ${whom}`,
  household: ({ number, whom }) => `the same family or party number, ${number}: ${whom}`,
  surname: ({ name, whom }) => `the same surname, ${name}: ${whom}`,
  'surnames-alike': ({ a, b, whom }) => `surnames that may be one, ${a} and ${b}: ${whom}`,
  'maiden-name': ({ name, whom }) => `${name}, the other’s surname, is the maiden name of one: ${whom}`,
  'husband-name': ({ whom }) => `she is listed under his given name: ${whom}`,
  'father-name': ({ patronymic, name, whom }) =>
    `${patronymic} says that the father’s name was ${name}: ${whom}`,
  origin: ({ place, whom }) => `of ${place}, like ${whom}`,
  bound: ({ place, whom }) => `bound for ${place}, like ${whom}`,
  joining: ({ whom }) => `both join the same person or address: ${whom}`,
  nearest: ({ whom }) => `both left the same person or address: ${whom}`,
  cabin: ({ value, whom }) => `the same cabin, ${value}: ${whom}`,
  class: ({ value, whom }) => `the same class, ${value}: ${whom}`,
  port: ({ value, whom }) => `came aboard at the same port, ${value}: ${whom}`,
  country: ({ value, whom }) => `of the same country, ${value}: ${whom}`,
  occupation: ({ value, whom }) => `the same occupation, ${value}: ${whom}`,
  'parent-and-child': ({ whom }) => `ages that fit a parent and a child: ${whom}`,
  'both-children': ({ whom }) => `both are children: ${whom}`,
  couple: ({ whom }) => `ages that fit a couple, or brother and sister: ${whom}`,
  beside: ({ lines, whom }) => `${lines === 1 ? 'on the next line' : `${lines} lines apart`}: ${whom}`,
  different: ({ whom }) => `different: ${whom}`,
};

export const journeys = {
  title: 'Journeys',
  description: 'Who seems to have travelled together, and who came after whom from one place to another.',
  lede: 'People seldom went alone. Those who shared a ticket or a destination, and those who followed earlier travellers to the same place, may have come from the same place too. What a record states is told apart from what only seems so.',
  parties: 'Parties',
  chains: 'Chains',
  allParties: 'All parties as a table (CSV)',
  howWorkedOut: 'How this is worked out',
  onThisPage: 'On this page',
  after: 'Who came after whom',
  together: 'Who travelled together',
  noChains: 'No two journeys from one place to another are known.',
  noVoyages: 'No list of travellers shows a party.',
  bias: 'Records gathered because of one family show its own company most. Read how seldom something comes about by accident with that in mind.',
  chainsLeft: (n: number): string => `${count(n, 'more chain')} with fewer travellers not shown.`,
  voyagesLeft: (n: number): string =>
    `${count(n, 'later journey')} not shown here; the pages of their lists have them.`,

  /** A chain. */
  to: ' to ',
  chainTitle: (waves: number, from: string, to: string): string =>
    `${count(waves, 'wave')} from ${from} to ${to}`,
  chainSize: (travellers: number, waves: number): string =>
    `${count(travellers, 'traveller')} in ${count(waves, 'wave')}.`,
  drawingDesc: 'The list beside this drawing says the same in words.',
  drawingKey: 'A dot is one traveller; a hollow one is dated only by what was told later.',
  waveWhen: (when: string, until: string | undefined, gap: string | undefined): string =>
    `${when}${until === undefined ? '' : ` to ${until}`}${gap === undefined ? '' : `, ${gap}`}`,
  record: 'record',
  recordOf: (name: string): string => `record of ${name}`,
  andMore: (n: number): string => `${everywhere.and}${n} more`,
  wavesLeft: (n: number): string => `${count(n, 'later wave')} not shown.`,
  oneFamily: 'They are one family, so that it says nothing of others of the place.',
  notKnownHowMany:
    'How many people lived there is not known, and so not how easily this comes about by accident.',
  unitsOf: (units: number, of: number, accident: string): string =>
    `${units} of ${of} families and lone travellers known to have gone there from the same country came from this one place: ${accident}.`,
  model: (people: number, whole: number, country: string, kind: string, source: string): string =>
    `Reckoned from this: about ${figures(people)} of ${figures(whole)} people in ${country} lived in a ${words.placeKind(kind)} of the usual size (${source}).`,
  later: (gap: string): string => `${gap} later`,
  withinAYear: 'within a year or so',
  yearsLater: (n: number): string => `about ${count(n, 'year')} later`,
  gap: (years: number, months: number): string =>
    [years > 0 && count(years, 'year'), months > 0 && count(months, 'month')].filter(Boolean).join(' '),
  days: (n: number): string => count(n, 'day'),
  links: {
    kin: (names: readonly string[], to: string): string =>
      `${list(names)} ${names.length === 1 ? 'is' : 'are'} joined by kinship or marriage to ${to}, who had gone before.`,
    surname: (names: readonly string[], to: string): string =>
      `${list(names)} ${names.length === 1 ? 'has' : 'have'} the surname of ${to}, who had gone before.`,
    joining: (joined: readonly { name: string; whom: string }[]): string =>
      `${joined.map(({ name, whom }) => `${name} was to join ${whom}`).join('; ')}, whom the list of the earlier journey names.`,
  },

  /** A journey. */
  voyage: {
    ship: (ship: string, from: string | undefined, to: string | undefined): string =>
      `The ${ship}${from || to ? ',' : ''}${from ? ` from ${from}` : ''}${to ? ` to ${to}` : ''}`,
    journey: (from: string | undefined, to: string | undefined): string =>
      from || to ? `Journey${from ? ` from ${from}` : ''}${to ? ` to ${to}` : ''}` : 'A journey',
    left: (day: string): string => `left ${day}`,
    arrived: (day: string): string => `arrived ${day}`,
    travellers: (n: number): string => `${count(n, 'traveller')} transcribed.`,
    oneShip: 'The lists name one ship, on days a few apart.',
    samePeople: (n: number, names: readonly string[], others: boolean, accident: string): string =>
      `${n} people stand on both lists with the same names and ages: ${list(names)}${others ? ', and others' : ''} (${accident}).`,
    names: (names: readonly string[], more: number): string =>
      `${names.join(', ')}${more > 0 ? `${everywhere.and}${more} more` : ''}`,
    partiesLeft: (n: number): string =>
      `${count(n, 'more party', 'more parties')} on the pages of its lists.`,
    showParties: (n: number): string => count(n, 'party', 'parties'),
  },

  /** The parties of one list. */
  party: {
    summary: (parties: number, entries: number, alone: number): string =>
      `${count(parties, 'group')} of the ${count(entries, 'traveller')} transcribed here; ${alone === 0 ? 'nobody' : count(alone, 'person', 'people')} stood alone.`,
    alphabetical: 'The list is sorted by name, so that standing side by side says nothing.',
    of: (name: string): string => `Party of ${name}`,
    line: (line: string): string => `line ${line}`,
    takenToBe: 'taken to be',
    share: (what: readonly string[]): string => `They share ${what.join('; ')}.`,
    accident: (accident: string): string => `By accident: ${accident}.`,
    more: (n: number, table: string): Phrase => [
      n === 1 ? 'One more is in the ' : `${n} more are in the `,
      { text: 'table of all parties', href: table },
      '.',
    ],
  },

  unnamed: 'one without a name',
  noName: 'no name given',
  allOthers: 'all the others',
  others: (names: readonly string[], more: number): string =>
    list(more > 0 ? [...names, `${more} more`] : names),
  recordSays: (what: string): string => `the record says: ${what}`,
  kinOf: (whom: string): string => `kin of ${whom}`,
  relationOf: (as: string, name: string): string => `${words.role(as)} of ${name}`,
  isRelation: (name: string, as: string): string => `${name} is ${words.role(as)}`,
  reading: (text: string): string => `“${text}”`,
  ties,

  /** What several share, how many of them, and how common it is on the list. */
  shared: {
    what: {
      ticket: 'ticket',
      household: 'family or party number',
      cabin: 'cabin',
      surname: 'surname',
      origin: 'last residence or birthplace',
      bound: 'destination',
      joining: 'whom they join:',
      nearest: 'whom they left:',
    } as Readonly<Record<string, string>>,
    sentence(
      what: string,
      value: string,
      at: { who: number; all: number; having: number; of: number },
    ): string {
      const who = at.who < at.all ? `${at.who} of them` : at.who === 2 ? 'both' : 'all';
      const others =
        at.of === 0
          ? 'nobody else on the list states one'
          : at.having === 0
            ? `none of the other ${at.of} parties and lone travellers`
            : `so ${at.having === 1 ? 'has' : 'have'} ${at.having} of the other ${at.of} parties and lone travellers`;
      return `${what} ${value} (${who}; ${others})`;
    },
  },

  /** Where a party is from, as far as its members say; the place, a link, stands where the sentence is parted. */
  origin: {
    stated: (who: number, all: number): [string, string] => [
      `${who < all ? `${who} of the ${all}` : all === 2 ? 'Both' : 'All of them'} are said to be of `,
      '.',
    ],
    none: 'They seem to have travelled together; this record does not say from where.',
    one: 'They seem to have travelled together; only one of them states a place, and it is not evidence for the others.',
    nothingShared:
      'They seem to have travelled together; the places they state share nothing narrower than a country.',
  },
  accident: {
    asLikely: 'a list of strangers of this length would as likely as not show such a group',
    hardly: 'a list of strangers of this length would show such a group less than once in 1,000',
    inThousand: (n: number, chance: string): string =>
      `a list of strangers of this length would show such a group about ${n === 1 ? 'once' : `${n} times`} in 1,000 (${chance})`,
  },
};
