import type { proof as English } from '../en/proof.ts';
import { joined, type Part, type Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';
import { evidence } from './proof-evidence.ts';
import { pairs, roots, ties } from './relations.ts';
import { sightLines } from './sight-lines.ts';

const { numberWord } = everywhere;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const list = (parts: readonly Part[]): Phrase =>
  joined(
    parts.map((part) => [part]),
    ' og ',
  );

export const proof: typeof English = {
  title: 'Bevis',
  kicker: (person) => `Bevis · ${person}`,
  description: (question) => `Beleggene og hvordan de er veid: ${question}`,
  cases: 'Saker',
  margin: 'Beviset',
  standing: 'Hvor saken står',
  person: 'Person',
  independentItems: 'Uavhengige belegg ved stedet',
  onThisPage: 'På denne siden',
  seeAlso: 'Se også',
  theStory: 'Fortellingen',
  whatNext: 'Hva det bør letes i nå',
  howToRead: 'Slik leses denne siden',
  somebodyNotShown: 'en som ikke vises her',
  recordNotShown: 'en kilde som ikke vises her',

  sections: {
    conclusion: 'Konklusjonen',
    openCase: 'En åpen sak',
    workingIdea: 'En arbeidshypotese',
    lines: 'Siktelinjer',
    support: 'Hvor langt beleggene når',
    argument: 'Forfatterens begrunnelse',
    evidence: 'Belegg for belegg',
    who: 'Hvem er hvem',
    independence: 'Hva som avhenger av hva',
    conflicts: 'Motsigelser',
    aside: 'Steder som er lagt til side',
    families: 'Kandidatfamilier',
    searches: 'Søk',
    overturn: 'Hva som kan velte det',
    points: 'Punkter for den som går det etter',
    beside: 'Ved siden av familien',
    check: 'Hva kontrollen sier',
    reviews: 'Gjennomganger',
    notes: 'Noter',
    citing: 'Henvisning til siden, og forbehold',
  },

  roots,
  pairs,
  ties,
  sightLines,
  evidence,

  stake: (name, person, items) => [name, ' regnes som ', person, '; brukt i ', ...list(items), '.'],

  support: {
    caption: 'Uavhengige belegg ved stedet og ved hvert sted over det',
    place: 'Sted',
    kind: 'Slag',
    independent: 'Uavhengige',
    countedAs: 'Telt som',
    reaches: 'Alt som når hit',
    lines: (letters) => ` (linje ${letters.join(', ')})`,
    nothingYet: 'ingenting ennå',
  },

  independence: {
    dependent: 'Ikke uavhengige',
    noneDependent: 'Vi vet ikke om to brukte belegg som avhenger av hverandre.',
    undetermined: 'Uavklart',
    noneUndetermined: 'Det er ikke tvil om noe par av brukte belegg.',
    argued: 'Uavhengige etter begrunnelse',
    noneArgued: 'Ingen par hviler på en begrunnelse fra forfatteren.',
  },

  provenance: {
    label: 'Hvor opplysningene i hvert brukt belegg kommer fra; lista nedenfor sier det samme i ord.',
    meet: 'Følg linjene fra hvert belegg til kildene. Der to belegg løper inn i samme boks, bygger de på samme kilde og er ikke uavhengige; slike bokser har kraftig omriss.',
    apart: 'Følg linjene fra hvert belegg til kildene. Ingen to belegg løper sikkert inn i samme boks.',
    key: 'Bokser: glatt, en originalkilde; med dobbel strek til venstre, en avskrift; med avskåret hjørne, noens egen framstilling; åpen til høyre, et forelegg som ikke er gransket; avrundet, den som fortalte. Hele linjer er sikre, brutte bare mulige.',
    inWords: 'Opphavet i ord',
    perhaps: 'kanskje ',
    shared: ' (felles)',
    unseen: (text) => `${text}, ikke gransket`,
    described: 'en beskrevet hjemmelsperson',
    unknown: 'en ukjent hjemmelsperson',
    columns: {
      item: 'Belegg',
      spoke: 'Hvem som fortalte',
      record: 'Kilde',
      derives: 'Kilden den er avledet av',
    },
  },

  conflicts: {
    none: 'Ingen belegg i saken strider mot stedet.',
    aside: 'Besvart ved at stedet er lagt til side:',
    answered: 'Besvart:',
    notAnswered: 'Ikke besvart.',
    whileItStands: 'Så lenge dette står, kan stedet ikke kalles bevist.',
    thePlace: 'stedet',
    anotherPlace: 'et annet sted',
    speaksAgainst: (item, place) => [item, ' taler mot ', place, '.'],
    readAs: (item, said, place) => [
      item,
      ...(said ? [' sier ', ...said, ', som'] : []),
      ' er lest som ',
      place,
      '.',
    ],
    about: (about, between) => [
      about === undefined ? 'Om noe annet enn stedet' : `Om ${about}`,
      ...(between.length > 0 ? [': ', ...list(between), ' er uenige.'] : ['.']),
    ],
  },

  searches: {
    none: 'Ingen søk er ført i loggen for denne saken.',
    logged: (all, nothing) =>
      `${all === 1 ? 'Ett' : capital(numberWord(all))} søk er ført i loggen; ${nothing === 0 ? 'ingen av dem var uten funn' : nothing === 1 ? 'ett var uten funn' : `${numberWord(nothing)} var uten funn`}.`,
    register: 'Fortegnelsen over søk',
    caption: 'Søk etter familien og etter andre som kunne passe',
    search: 'Søk',
    seriesAndYears: 'Serie og år',
    series: 'Serie',
    whom: 'Etter',
    where: 'Hvor',
    result: 'Resultat',
    notSaid: 'ikke oppgitt',
  },

  beside: {
    intro: (family) =>
      `De som stadig dukker opp ved siden av ${family}, i kilder som ikke er avskrifter av hverandre, og som kan ha kommet fra samme sted. De er spor, ikke belegg.`,
    caption: 'De som en kilde oppgir opphavet til, eller som en tilfeldighet vanskelig forklarer',
    who: 'Hvem',
    besideAs: 'Ved siden av familien som',
    besideShort: 'Som',
    chanceOf: 'Sjansen for det',
    chance: 'Sjanse',
    saidFrom: 'Oppgitt å være fra',
    from: 'Fra',
    noRecordSays: 'ingen kilde sier det',
    everyone: (family) => `Alle ved siden av ${family}`,
    left: (n) => (n === 1 ? ', med én til som kommer igjen' : `, med ${n} andre som kommer igjen`),
  },

  check: {
    nothing: 'Kontrollen har ikke mer å si om denne saken.',
    error: 'Feil',
    warning: 'Advarsel',
    hint: 'Hint',
  },

  notes: {
    none: 'Ingenting er henvist til på denne siden ennå.',
    all: (n) => (n === 1 ? 'Noten, med kilden' : `Alle ${n} noter, med kildene`),
    record: 'Kilde',
    recordOf: (number) => `Kilden i note ${number}`,
  },

  citing: {
    page: (question) => `«${question}» Bevisside, i `,
    content: (digest) => `innhold ${digest},`,
    asOf: (date) => `per ${date},`,
    address: 'adressen og dagen du leste den',
    digest: 'Innholdet i denne saken, med alt den bygger på, har fingeravtrykket',
    signs: 'Den som går gjennom saken, skriver under på dette; endres noe, endres også fingeravtrykket.',
    cautions: 'Forbehold',
    caution: [
      'Konklusjonen er en begrunnet mening ut fra de beleggene som er sett, og kan endres.',
      'Den er ikke noe juridisk bevis for avstamning, arv eller statsborgerskap; det krever bekreftede utskrifter og rette myndighet.',
      'Uventet opphav, adopsjon eller en dødsårsak kan såre levende slektninger: spør først.',
      'Følg personvernloven der du publiserer, og vilkårene til arkivene som har bildene.',
    ],
    method: 'Slik finner vi ut hvor en sak står',
  },

  notComputed: {
    lead: 'Denne saken kunne ikke regnes ut.',
    why: 'Noe den bygger på, er ødelagt, så ingenting kan sies om hvor fast den står.',
    mend: (file, line) => ['Må rettes først, i ', ...file, `, linje ${line}:`],
  },
};
