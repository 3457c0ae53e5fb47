import { readAge } from '../../model/age.ts';
import { plainWords } from '../plain-words.ts';
import type { words as English } from '../en/words.ts';
import { roleInNorwegian } from './roles.ts';

/** A usual word by its English one, whatever its case; the author’s own where there is none. */
const from =
  (table: Readonly<Record<string, string>>) =>
  (word: string): string => {
    const key = word.trim().toLowerCase();
    return Object.hasOwn(table, key) ? table[key]! : word;
  };

const placeKinds = from({
  country: 'land',
  'sovereign state': 'selvstendig stat',
  'former state': 'tidligere stat',
  state: 'delstat',
  territory: 'territorium',
  province: 'provins',
  county: 'grevskap',
  riding: 'riding',
  jurisdiction: 'jurisdiksjon',
  island: 'øy',
  city: 'by',
  town: 'by',
  village: 'landsby',
  hamlet: 'grend',
  settlement: 'bosetning',
  township: 'township',
  townland: 'townland',
  barony: 'baroni',
  parish: 'sogn',
  'civil parish': 'sivilt sogn',
  'catholic parish': 'katolsk sogn',
  'parish of the church of ireland': 'sogn i Den irske kirke',
  'clerical district': 'prestegjeld',
  'main parish': 'hovedsogn',
  'annex parish': 'annekssogn',
  congregation: 'menighet',
  deanery: 'prosti',
  diocese: 'bispedømme',
  'poor law union': 'fattigvesendistrikt',
  'electoral division': 'valgdistrikt',
  "registrar's district": 'registreringsdistrikt',
  'registrar’s district': 'registreringsdistrikt',
  'registration district': 'registreringsdistrikt',
  district: 'distrikt',
  municipality: 'kommune',
  farm: 'gård',
  holding: 'bruk',
  'cotter’s place': 'husmannsplass',
  locality: 'sted',
  'mine location': 'gruveområde',
  port: 'havn',
  harbour: 'havn',
  street: 'gate',
  parcel: 'teig',
});

const statements = from({
  name: 'navn',
  role: 'rolle',
  sex: 'kjønn',
  age: 'alder',
  born: 'født',
  birthplace: 'fødested',
  residence: 'bosted',
  lastresidence: 'siste bosted',
  occupation: 'yrke',
  immigrated: 'innvandret',
  voyage: 'reise',
  event: 'hendelse',
  line: 'linje',
  household: 'husstand',
  joining: 'reiser til',
  nearest: 'nærmeste slektning hjemme',
  present: 'til stede',
  informants: 'opphav',
  relations: 'forhold til andre',
  relation: 'forhold',
  address: 'adresse',
  // names the demonstration and many others use under `says`
  signature: 'underskrift',
  mark: 'bumerke',
  kinship: 'slektskap',
  kin: 'slekt',
  destination: 'reisemål',
  parents: 'foreldre',
  father: 'far',
  mother: 'mor',
  children: 'barn',
  family: 'familie',
  origin: 'opphavssted',
  condition: 'stand',
  'marital status': 'sivilstand',
  religion: 'trosretning',
  nationality: 'nasjonalitet',
  naturalized: 'fikk borgerskap',
  acquaintance: 'bekjentskap',
  maiden: 'pikenavn',
  'maiden-name': 'pikenavn',
  'parents-birthplace': 'foreldrenes fødested',
  'parents-names': 'foreldrenes navn',
  'mother-tongue': 'morsmål',
  landlord: 'jorddrott',
  country: 'land',
  county: 'grevskap',
  parish: 'sogn',
  townland: 'townland',
  state: 'stat',
  party: 'reisefølge',
  bondsman: 'forlover',
  envelope: 'konvolutt',
  note: 'merknad',
  interpreter: 'tolk',
  stay: 'opphold',
  later: 'senere',
  died: 'død',
  marriage: 'ekteskap',
  from: 'fra',
});

const eventKinds = from({
  birth: 'fødsel',
  baptism: 'dåp',
  confirmation: 'konfirmasjon',
  engagement: 'trolovelse',
  banns: 'lysning',
  marriage: 'vielse',
  licence: 'bevilling',
  license: 'bevilling',
  divorce: 'skilsmisse',
  death: 'dødsfall',
  burial: 'begravelse',
  cremation: 'kremasjon',
  naturalization: 'statsborgerskap',
  emigration: 'utvandring',
  immigration: 'innvandring',
  arrival: 'ankomst',
  departure: 'avreise',
  census: 'folketelling',
  probate: 'skifte',
  vaccination: 'vaksinasjon',
  declaration: 'erklæring',
  'moving in': 'innflytting',
  'moving out': 'utflytting',
});

/** How one stands to another, with the preposition that leads on to the name. */
const relations: Readonly<Record<string, readonly [word: string, to: string]>> = {
  spouse: ['ektefelle', 'ektefelle til'],
  husband: ['ektemann', 'ektemann til'],
  wife: ['kone', 'kone til'],
  parent: ['forelder', 'forelder til'],
  father: ['far', 'far til'],
  mother: ['mor', 'mor til'],
  child: ['barn', 'barn av'],
  son: ['sønn', 'sønn av'],
  daughter: ['datter', 'datter av'],
  sibling: ['søsken', 'søsken til'],
  brother: ['bror', 'bror til'],
  sister: ['søster', 'søster til'],
  grandparent: ['besteforelder', 'besteforelder til'],
  grandchild: ['barnebarn', 'barnebarn av'],
  uncle: ['onkel', 'onkel til'],
  aunt: ['tante', 'tante til'],
  nephew: ['nevø', 'nevø av'],
  niece: ['niese', 'niese av'],
  cousin: ['søskenbarn', 'søskenbarn til'],
  relative: ['slektning', 'slektning av'],
  neighbour: ['nabo', 'nabo til'],
  neighbor: ['nabo', 'nabo til'],
  witness: ['vitne', 'vitne for'],
  sponsor: ['fadder', 'fadder for'],
  bondsman: ['forlover', 'forlover for'],
  grantor: ['avhender', 'avhender til'],
  grantee: ['erverver', 'erverver fra'],
  informant: ['hjemmelsperson', 'hjemmelsperson for'],
  'fellow-passenger': ['medpassasjer', 'medpassasjer til'],
  boarder: ['losjerende', 'losjerende hos'],
  lodger: ['losjerende', 'losjerende hos'],
  servant: ['tjener', 'tjener hos'],
  guardian: ['verge', 'verge for'],
  heir: ['arving', 'arving etter'],
  partner: ['kompanjong', 'kompanjong til'],
  friend: ['venn', 'venn av'],
};
const relation = (as: string) => {
  const key = as.trim().toLowerCase();
  return Object.hasOwn(relations, key) ? relations[key] : undefined;
};

const seriesKinds = from({
  census: 'folketelling',
  vital: 'sivil registrering',
  church: 'kirkebok',
  naturalization: 'statsborgerskap',
  passenger: 'passasjerliste',
  emigration: 'utvandring',
  cemetery: 'gravplass',
  newspaper: 'avis',
  probate: 'skifte',
  land: 'eiendom',
  tax: 'skatt',
  directory: 'adressebok',
  military: 'militært',
  history: 'bygdebok og lokalhistorie',
  passport: 'pass',
  registration: 'registrering',
  'poor law': 'fattigvesen',
  school: 'skole',
  company: 'arbeidsgiver',
  society: 'forening',
  family: 'familiepapirer',
});

const forms = {
  original: 'Originalkilde',
  derivative: 'Avledet: avskrift, register eller utskrift',
  authored: 'Forfattet: noens egen fremstilling',
};
const formsShort = { original: 'original', derivative: 'avledet', authored: 'forfattet' };
const seenAs = {
  original: 'i originalen',
  image: 'som bilde',
  film: 'på mikrofilm',
  transcript: 'bare i avskrift',
  report: 'slik noen har gjengitt den',
};
const knowledges = {
  primary: 'førstehåndskunnskap: var til stede eller gjorde det selv',
  secondary: 'annenhåndskunnskap: hadde det fra andre',
  undetermined: 'det er ikke avgjort hvordan de visste det',
};
const results = {
  found: 'Funn',
  'not-found': 'Ingen funn',
  unreadable: 'Uleselig',
  unavailable: 'Ikke tilgjengelig',
};
const evidenceKinds = {
  direct: 'direkte bevis',
  indirect: 'indirekte bevis',
  negative: 'negativt bevis',
};

/** One and many of each unit. */
const units = [
  ['år', 'år'],
  ['måned', 'måneder'],
  ['uke', 'uker'],
  ['dag', 'dager'],
] as const;

export const words: typeof English = {
  controls: {
    group: 'Snevre inn eller sorter listen',
    find: 'Snevre inn listen',
    order: 'Rekkefølge',
    listed: 'som på siden',
    all: 'alle',
    clear: 'Vis alle',
    shown: (shown, all) => `Viser ${shown} av ${all}`,
    none: 'Ingenting her passer.',
  },
  role: roleInNorwegian,
  placeKind: placeKinds,
  statement: (key) => {
    const bare = key.replace(/^says\./, '');
    const said = statements(bare);
    return said === bare ? plainWords(key) : said;
  },
  eventKind: eventKinds,
  relation: (as) => relation(as)?.[0] ?? plainWords(as),
  relationTo: (as, name) => `${relation(as)?.[1] ?? `${plainWords(as)} –`} ${name}`,
  seriesKind: seriesKinds,
  form: (form) => forms[form],
  formShort: (form) => formsShort[form],
  seen: (seen) => seenAs[seen],
  knowledge: (knowledge) => knowledges[knowledge],
  result: (result) => results[result],
  evidenceKind: (kind) => evidenceKinds[kind],
  age: (age) => {
    const read = readAge(age);
    if (typeof read === 'string') return String(age);
    if (read.unit === 'y') return String(age).replace(/y$/, '');
    const said = (n: number, unit: number) => `${n} ${units[unit]![n === 1 ? 0 : 1]}`;
    const given = [read.years, read.months, read.weeks, read.days].flatMap((n, i) =>
      n > 0 ? [said(n, i)] : [],
    );
    if (given.length === 0) return said(0, { m: 1, w: 2, d: 3 }[read.unit]);
    return given.length < 2 ? given[0]! : `${given.slice(0, -1).join(', ')} og ${given.at(-1)}`;
  },
};
