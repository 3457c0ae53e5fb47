import type { journeys as English } from '../en/journeys.ts';
import { everywhere } from './everywhere.ts';
import { words } from './words.ts';

const list = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')}${everywhere.and}${items.at(-1)}`;
const { figures } = everywhere;
const count = (n: number, one: string, many: string): string => (n === 1 ? one : `${n} ${many}`);

export const journeys: typeof English = {
  title: 'Reiser',
  description: 'Hvem som ser ut til å ha reist sammen, og hvem som kom etter hvem fra ett sted til et annet.',
  lede: 'Folk reiste sjelden alene. De som delte billett eller reisemål, og de som fulgte etter tidligere reisende til samme sted, kan ha kommet fra samme sted også. Det en kilde sier, er skilt fra det som bare ser slik ut.',
  parties: 'Reisefølger',
  chains: 'Kjeder',
  allParties: 'Alle reisefølger som tabell (CSV)',
  howWorkedOut: 'Slik er det funnet ut',
  onThisPage: 'På denne siden',
  after: 'Hvem som kom etter hvem',
  together: 'Hvem som reiste sammen',
  noChains: 'Ingen to reiser fra ett sted til et annet er kjent.',
  noVoyages: 'Ingen liste over reisende viser noe reisefølge.',
  bias: 'Kilder som er samlet på grunn av én familie, viser mest av dens eget selskap. Husk det når det står hvor sjelden noe hender ved et tilfelle.',
  chainsLeft: (n) => `${count(n, 'Én kjede', 'kjeder')} til med færre reisende vises ikke.`,
  voyagesLeft: (n) =>
    `${count(n, 'Én senere reise', 'senere reiser')} vises ikke her; sidene for listene har dem.`,

  to: ' til ',
  chainTitle: (waves, from, to) => `${count(waves, 'Én bølge', 'bølger')} fra ${from} til ${to}`,
  chainSize: (travellers, waves) =>
    `${count(travellers, 'Én reisende', 'reisende')} i ${count(waves, 'én bølge', 'bølger')}.`,
  drawingDesc: 'Listen ved siden av tegningen sier det samme med ord.',
  drawingKey: 'En prikk er én reisende; en hul prikk er bare tidfestet av noe som ble fortalt senere.',
  waveWhen: (when, until, gap) =>
    `${when}${until === undefined ? '' : ` til ${until}`}${gap === undefined ? '' : `, ${gap}`}`,
  record: 'kilde',
  recordOf: (name) => `kilden som nevner ${name}`,
  andMore: (n) => ` og ${n} til`,
  wavesLeft: (n) => `${count(n, 'Én senere bølge', 'senere bølger')} vises ikke.`,
  oneFamily: 'De er én familie, så det sier ingenting om andre fra stedet.',
  notKnownHowMany:
    'Hvor mange som bodde der, er ikke kjent, og da heller ikke hvor lett dette kommer i stand ved et tilfelle.',
  unitsOf: (units, of, accident) =>
    `${units} av ${of} familier og enslige reisende som er kjent for å ha dratt dit fra samme land, kom fra dette ene stedet: ${accident}.`,
  model: (people, whole, country, kind, source) =>
    `Regnet ut av dette: Et område av vanlig størrelse (${words.placeKind(kind)}) hadde omtrent ${figures(people)} av landets ${figures(whole)} innbyggere (${country}; ${source}).`,
  later: (gap) => `${gap} senere`,
  withinAYear: 'innen et års tid',
  yearsLater: (n) => `omtrent ${n} år senere`,
  gap: (years, months) =>
    [years > 0 && `${years} år`, months > 0 && (months === 1 ? '1 måned' : `${months} måneder`)]
      .filter(Boolean)
      .join(' og '),
  days: (n) => (n === 1 ? '1 dag' : `${n} dager`),
  links: {
    kin: (names, to) => `${list(names)} er i slekt med eller inngiftet hos ${to}, som hadde reist før.`,
    surname: (names, to) => `${list(names)} har samme etternavn som ${to}, som hadde reist før.`,
    joining: (joined) =>
      `${joined.map(({ name, whom }) => `${name} skulle til ${whom}`).join('; ')}, som står på listen fra den tidligere reisen.`,
  },

  voyage: {
    ship: (ship, from, to) =>
      `${ship}${from || to ? ',' : ''}${from ? ` fra ${from}` : ''}${to ? ` til ${to}` : ''}`,
    journey: (from, to) =>
      from || to ? `Reise${from ? ` fra ${from}` : ''}${to ? ` til ${to}` : ''}` : 'En reise',
    left: (day) => `reiste ${day}`,
    arrived: (day) => `kom fram ${day}`,
    travellers: (n) => `${count(n, 'Én reisende', 'reisende')} skrevet av.`,
    oneShip: 'Listene nevner samme skip, med få dager imellom.',
    samePeople: (n, names, others, accident) =>
      `${n} personer står på begge listene med samme navn og alder: ${list(names)}${others ? ' med flere' : ''} (${accident}).`,
    names: (names, more) => `${names.join(', ')}${more > 0 ? ` og ${more} til` : ''}`,
    partiesLeft: (n) => `${count(n, 'Ett reisefølge', 'reisefølger')} til på sidene for listene.`,
    showParties: (n) => count(n, 'ett reisefølge', 'reisefølger'),
  },

  party: {
    summary: (parties, entries, alone) =>
      `${count(parties, 'Én gruppe', 'grupper')} blant de ${entries} reisende som er skrevet av her; ${alone === 0 ? 'ingen' : count(alone, 'én person', 'personer')} sto alene.`,
    alphabetical: 'Listen er ordnet etter navn, så det sier ingenting at to står ved siden av hverandre.',
    of: (name) => `Reisefølget til ${name}`,
    line: (line) => `linje ${line}`,
    takenToBe: 'regnes som',
    share: (what) => `De har felles: ${what.join('; ')}.`,
    accident: (accident) => `Ved et tilfelle: ${accident}.`,
    more: (n, table) => [`${n} til står i `, { text: 'tabellen over alle reisefølger', href: table }, '.'],
  },

  unnamed: 'en uten navn',
  noName: 'uten navn',
  allOthers: 'alle de andre',
  others: (names, more) => list(more > 0 ? [...names, `${more} til`] : names),
  recordSays: (what) => `kilden sier: ${what}`,
  kinOf: (whom) => `i slekt med ${whom}`,
  relationOf: (as, name) => `${words.role(as)} til ${name}`,
  isRelation: (name, as) => `${name} er ${words.role(as)}`,
  reading: (text) => `«${text}»`,
  ties: {
    'stated-kin': ({ as, whom }) => `kilden sier ${words.role(as)}: ${whom}`,
    'stated-companion': ({ as, whom }) => `i kilden oppført som ${words.role(as)}: ${whom}`,
    ticket: ({ ticket, heads, whom }) =>
      `samme billett, ${ticket}${heads === null ? '' : `, som ${heads} på listen har`}: ${whom}`,
    'tickets-near': ({ a, b, apart, whom }) =>
      `${apart === 1 ? 'billetter med numre på rad' : 'billetter med to numre imellom'}, ${a} og ${b}: ${whom}`,
    household: ({ number, whom }) => `samme familie- eller følgenummer, ${number}: ${whom}`,
    surname: ({ name, whom }) => `samme etternavn, ${name}: ${whom}`,
    'surnames-alike': ({ a, b, whom }) => `etternavn som kan være ett, ${a} og ${b}: ${whom}`,
    'maiden-name': ({ name, whom }) => `${name}, den andres etternavn, er pikenavnet til den ene: ${whom}`,
    'husband-name': ({ whom }) => `hun står under fornavnet hans: ${whom}`,
    'father-name': ({ patronymic, name, whom }) => `${patronymic} sier at faren het ${name}: ${whom}`,
    origin: ({ place, whom }) => `fra ${place}, som ${whom}`,
    bound: ({ place, whom }) => `på vei til ${place}, som ${whom}`,
    joining: ({ whom }) => `begge skal til samme person eller adresse: ${whom}`,
    nearest: ({ whom }) => `begge reiste fra samme person eller adresse: ${whom}`,
    cabin: ({ value, whom }) => `samme lugar, ${value}: ${whom}`,
    class: ({ value, whom }) => `samme klasse, ${value}: ${whom}`,
    port: ({ value, whom }) => `kom om bord i samme havn, ${value}: ${whom}`,
    country: ({ value, whom }) => `fra samme land, ${value}: ${whom}`,
    occupation: ({ value, whom }) => `samme yrke, ${value}: ${whom}`,
    'parent-and-child': ({ whom }) => `aldrer som passer for forelder og barn: ${whom}`,
    'both-children': ({ whom }) => `begge er barn: ${whom}`,
    couple: ({ whom }) => `aldrer som passer for et par eller for søsken: ${whom}`,
    beside: ({ lines, whom }) =>
      `${lines === 1 ? 'på neste linje' : `med ${lines} linjers avstand`}: ${whom}`,
    different: ({ whom }) => `forskjellig: ${whom}`,
  },

  shared: {
    what: {
      ticket: 'billett',
      household: 'familie- eller følgenummer',
      cabin: 'lugar',
      surname: 'etternavn',
      origin: 'siste bosted eller fødested',
      bound: 'reisemål',
      joining: 'hvem de skal til:',
      nearest: 'hvem de reiste fra:',
    },
    sentence(what, value, { who, all, having, of }) {
      const whose = who < all ? `${who} av dem` : who === 2 ? 'begge' : 'alle';
      const others =
        of === 0
          ? 'ingen andre på listen oppgir noe'
          : having === 0
            ? `ingen av de andre ${of} følgene og enslige reisende`
            : `det har også ${having} av de andre ${of} følgene og enslige reisende`;
      return `${what} ${value} (${whose}; ${others})`;
    },
  },
  origin: {
    stated: (who, all) => [
      `${who < all ? `${who} av de ${all}` : all === 2 ? 'Begge' : 'Alle'} sies å være fra `,
      '.',
    ],
    none: 'De ser ut til å ha reist sammen; denne kilden sier ikke hvor fra.',
    one: 'De ser ut til å ha reist sammen; bare én av dem oppgir et sted, og det er ikke noe belegg for de andre.',
    nothingShared:
      'De ser ut til å ha reist sammen; stedene de oppgir, har ikke noe snevrere felles enn et land.',
  },
  accident: {
    asLikely: 'en like lang liste over fremmede ville like gjerne vise en slik gruppe som ikke',
    hardly: 'en like lang liste over fremmede ville vise en slik gruppe mindre enn én gang av 1\u00a0000',
    inThousand: (n, chance) =>
      `en like lang liste over fremmede ville vise en slik gruppe omtrent ${n} av 1\u00a0000 ganger (${chance})`,
  },
};
