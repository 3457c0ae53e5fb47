import { everywhere } from './everywhere.ts';
import { words } from './words.ts';
import type { associates as English } from '../en/associates.ts';

const list = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')}${everywhere.and}${items.at(-1)}`;
const { figures } = everywhere;
const lines = (n: number): string => (n === 1 ? 'én linje unna' : `${n} linjer unna`);
const unnamed = 'en uten navn';
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** Med komma som desimaltegn. */
const decimal = (n: number): string => String(n).replace('.', ',');

/** Hva som står mellom en rolle og navnet den gjelder; ellers «for». */
const joinedBy: Readonly<Record<string, string>> = {
  neighbour: 'til',
  neighbor: 'til',
  boarder: 'hos',
  lodger: 'hos',
  servant: 'hos',
  employee: 'hos',
  partner: 'til',
  grantor: 'til',
  grantee: 'fra',
  friend: 'av',
  shipmate: 'til',
  'fellow-passenger': 'til',
  'fellow passenger': 'til',
  landlord: 'til',
  tenant: 'under',
};

export const associates: typeof English = {
  title: 'Omkretsen',
  description:
    'De som stadig dukker opp ved siden av familiene i sakene: vitner, faddere, naboer, reisefølge.',
  lede: 'Vitner, faddere, naboer, reisefølge: folk som ikke er kjent som slekt, men som står ved siden av en familie i kildene. Der de samme navnene kommer igjen, har en gruppe flyttet sammen, og en av dem kan ha nevnt stedet.',
  families: 'Familier',
  peopleMet: 'Folk vi møter',
  whoRecur: 'Som går igjen',
  met: 'Møtt',
  byAccidentShort: 'Ved tilfelle',
  toJourneys: 'Reiser: hvem som reiste sammen, og hvem som kom etter',
  toTable: 'Alle sammen som tabell (CSV)',
  asTable: 'Som tabell (CSV)',
  chanceReckoned: 'Slik er tilfellet regnet ut',
  noCases: 'Ingen sak handler om noen ennå.',
  company:
    'Selskap er et spor og ikke noe bevis: At to familier holdt sammen, sier ikke hvor noen av dem kom fra, før en kilde gjør det.',
  namesOrigin: 'nevner et opphavssted',
  everyone: 'Alle som går igjen',
  mostTelling: (n) => (n === 1 ? 'Den som sier mest' : `De ${everywhere.numberWord(n)} som sier mest`),
  ofFamily: (n) => (n === 1 ? 'Den ene som går igjen' : `Alle ${n} som går igjen`),

  beside: (family) => `Ved siden av ${family}`,
  besideDescription: (family) =>
    `Vitner, faddere, naboer og reisefølge som stadig dukker opp ved siden av ${family}, og hvor de kom fra.`,
  cases: (n) => (n === 1 ? 'Saken' : 'Sakene'),
  onThisPage: 'På denne siden',
  leads: (n) =>
    `${n === 1 ? 'En av dem sies' : `${n} av dem sies`} et sted å være fra et sted i gamlelandet som er snevrere enn selve landet. Et slikt sted er et spor å lete etter, og ikke noe belegg for hvor familien kom fra.`,
  recurring: 'Hvem som går igjen',
  surnames: 'Etternavn som flere bærer',
  together: 'Hvem som opptrer sammen',
  togetherHow:
    'Årene går fra venstre mot høyre. Hver person er en vannrett linje fra den første kilden som nevner dem, til den siste; hver kilde er en loddrett linje fra familien ned til dem den nevner. De som stadig opptrer sammen, står sammen. Alt som er tegnet, står med ord i tabellen ovenfor.',
  once: 'Møtt én gang',
  onceLeft: (n, table) => [
    n === 1 ? 'Én person til er møtt én gang; ' : `${n} personer til er møtt én gang; `,
    { text: 'tabellen', href: table },
    ' har alle.',
  ],
  inRecords: (n) => (n === 1 ? 'i én uavhengig kilde' : `i ${n} uavhengige kilder`),
  ofOwn: 'et etternavn familien selv har, så de kan være slekt',

  nobodyMet: (family) => `Ingen utenfor slekten står ved siden av ${family} i noen kilde ennå.`,
  tally: (met, family, records) =>
    `${met === 1 ? 'Én person' : `${met} personer`} som ikke er kjent som slekt, står ved siden av ${family} i ${records === 1 ? 'én kilde' : `${records} kilder`}.`,
  recurs: (n, accident) =>
    n === 0
      ? 'Ingen står i to uavhengige kilder.'
      : `${n === 1 ? 'Én av dem står' : `${n} av dem står`} i to eller flere uavhengige kilder; ved rene tilfeldigheter ville ${accident} ha gjort det.`,
  tooCommon: (names) =>
    `Disse navnene bæres av for mange til at noen kan skilles ut, og ingen er satt sammen etter dem: ${names.join(', ')}.`,

  table: {
    who: 'Hvem',
    as: 'Ved siden av familien som',
    howOften: 'Kilder og tilfelle',
    from: 'Sies å være fra',
    asShort: 'Som',
    howOftenShort: 'Hvor ofte',
    fromShort: 'Fra',
    records: (n) => (n === 1 ? 'én kilde' : `${n} kilder`),
    independent: (n) => (n === 1 ? 'én uavhengig kilde' : `${n} uavhengige kilder`),
    written: 'skrevet',
    byNameOfPerson: (n) =>
      n === 1 ? 'én omtale satt hit bare etter navnet' : `${n} omtaler satt hit bare etter navnet`,
    byName: 'satt sammen bare etter navnet: ennå ikke vist å være én person',
    lead: 'Spor',
    sameName: 'om en med samme navn',
    noRecordSays: 'ingen kilde sier det',
    why: 'Hvorfor så sjelden, eller så ofte',
    firstSeen: 'Først sett',
    chance: 'Ved tilfelle',
    stated: {
      birthplace: 'fødested',
      lastResidence: 'siste bosted',
      event: 'dåp eller fødsel',
      nearest: 'adressen til en slektning hjemme',
    },
    parts: 'Rolle',
    leadsOnly: 'Nevner et opphavssted',
    leadYes: 'ja',
    leadNo: 'nei',
  },

  register: {
    unseenRecord: 'en kilde som ikke vises her',
    alone: 'Sett uten noen av de andre',
    andMore: (names, more) => (more > 0 ? `${names.join(', ')} og ${more} til` : list(names)),
    part: (n, of) => `del ${n} av ${of}`,
    noDate: 'udatert',
    family: 'Familien',
    title: (heading, family) => `${heading}: når og som hva de står ved siden av ${family}`,
    desc: (people, records, who) =>
      `${people === 1 ? 'Én person' : `${people} personer`} i ${records === 1 ? 'én kilde' : `${records} kilder`}: ${who.join('; ')}.`,
    more: (n, table) => [
      n === 1 ? 'Én til går igjen enn dem som er tegnet; ' : `${n} flere går igjen enn dem som er tegnet; `,
      { text: 'tabellen', href: table },
      ' har alle.',
    ],
  },

  note: (byName, family, href, seen) => [
    byName ? 'Navnet står også ved siden av ' : 'Også ved siden av ',
    { text: family, href },
    `: ${seen}`,
  ],

  roles: {
    witness: 'vitne',
    sponsor: 'fadder',
    neighbour: 'nabo',
    'fellow-passenger': 'reisefølge',
    household: 'i husstanden',
    grantor: 'handlet jord eller penger',
    bondsman: 'forlover eller bobestyrer',
    informant: 'opplysningsgiver',
    mourner: 'i gravfølget',
    'fellow-worker': 'arbeidet sammen med dem',
    other: 'nevnt ved siden av dem',
  },
  brief: {
    witness: 'vitne',
    sponsor: 'fadder',
    neighbour: 'nabo',
    'fellow-passenger': 'reisefølge',
    household: 'husstanden',
    grantor: 'handelspart',
    bondsman: 'forlover',
    informant: 'opplysningsgiver',
    mourner: 'gravfølge',
    'fellow-worker': 'arbeidskamerat',
    other: 'nevnt',
  },
  parts: {
    part: ({ as, of, lines: off }) =>
      `${words.role(as)}${of === null ? '' : ` ${joinedBy[as.toLowerCase()] ?? 'for'} ${of}`}${off === null ? '' : `, ${lines(off)}`}`,
    turned: ({ as, name }) => `${name ?? unnamed} var ${words.role(as)}`,
    household: ({ name }) => `i husstand med ${name ?? unnamed}`,
    near: ({ as, off, by }) =>
      `${{ 'fellow-passenger': 'på samme skip', neighbour: 'nabo', other: 'i en innførsel like ved' }[as]}, ${
        by === 'line' ? lines(off) : off === 1 ? 'én husstand unna' : `${off} husstander unna`
      }`,
    aboard: () => 'på samme skip',
    'same-ship': ({ ship }) => `kom med ${ship}, familiens skip`,
    about: ({ role, name, as }) =>
      `${role === null ? 'nevnt' : words.role(role)}, der ${name ?? unnamed} var ${words.role(as)}`,
    named: ({ role }) => (role === null ? 'nevnt i samme kilde' : words.role(role)),
    party: ({ relation, how, address }) =>
      `${relation === null ? 'en' : words.role(relation)} ${how === 'joining' ? 'de skulle til' : 'de reiste fra'}${address === null ? '' : `, ${address}`}`,
    informed: () => 'ga opplysningene',
  },
  roleInYears: (role, years) => [role, list(years)].filter(Boolean).join(' '),

  byAccident: {
    asLikely: 'like gjerne ved et tilfelle',
    hardly: 'sjeldnere enn 1 av 1\u00a0000\u00a0000 ved et tilfelle',
    oneIn: (n) => `1 av ${figures(n)} ved et tilfelle`,
  },
  about: (n) => `omtrent ${n >= 10 ? figures(Math.round(n)) : decimal(n)}`,
  hardlyAny: 'færre enn 0,01',
  expected: (about) =>
    `Ventet ved tilfelle i ${about} ${about === 'omtrent 1' ? 'annen kilde' : 'andre kilder'}.`,
  rarity: {
    list: 'En lang liste ved siden av familien nevner flere med dette navnet.',
    crowd: (people, because) =>
      `Regnet som én av ${figures(people)}, hvor sjeldent navnet enn er: ${because}.`,
    partOfName: 'Bare en del av navnet er kjent.',
  },

  theFamily: 'familien',
  familyOf: (people) => `familien til ${list(people)}`,
  familyNamed: (surnames) => `familien ${list(surnames)}`,
  heading: capital,
  list,
};
