import type { plan as English } from '../en/plan.ts';
import { everywhere } from './everywhere.ts';

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')}${everywhere.and}${words.at(-1)}`;
const inHundred = (share: number): string => `${Math.max(1, Math.round(share * 100))} av 100`;

function years(from?: number, to?: number): string {
  if (from === undefined) return to === undefined ? 'alle år' : `til ${to}`;
  if (to === undefined) return `fra ${from}`;
  return from === to ? String(from) : `${from}–${to}`;
}

const reach = {
  country: 'landet',
  county: 'fylket, amtet eller grevskapet',
  parish: 'sognet eller byen',
  townland: 'selve stedet',
};

/** “i Hancock”, “på Rinde”: gårder og øyer ligger man på. */
const at = (place: string, kind: string): string =>
  `${['farm', 'gård', 'island', 'øy', 'mine location'].includes(kind) ? 'på' : 'i'} ${place}`;

const wasThere: Record<keyof (typeof English)['events'], string> = {
  census: 'ble talt',
  birth: 'ble født',
  marriage: 'giftet seg',
  death: 'døde',
  arrival: 'gikk i land',
  departure: 'brøt opp',
  naturalization: 'hadde alder og botid nok til å bli statsborger',
  residence: 'bodde',
  childhood: 'var barn',
  service: 'var i tjenestepliktig alder',
  biography: 'bodde',
};

export const plan: typeof English = {
  title: 'Arbeidsplan',
  kicker: (name) => `Arbeidsplan · ${name}`,
  description: (question) => `Hva det bør letes i nå: ${question}`,
  theCase: 'Saken',
  standing: 'Hvor saken står',
  person: 'Person',
  cases: 'Saker',
  onThisPage: 'På denne siden',
  seeAlso: 'Se også',
  theStory: 'Fortellingen',
  theProof: 'Beviset',
  theLog: 'Loggen over søk',
  howWorkedOut: 'Slik er planen satt opp',
  inBrief: {
    open: 'Gjenstående søk',
    missing: 'Savnet i en folketelling',
    searched: 'Søkt uten funn',
    lost: 'Tapte serier',
  },

  next: 'Hva det bør letes i nå',
  nothingOpen:
    'Ingenting gjenstår: Vi kjenner ingen serie for disse stedene og årene som ikke alt er gjennomsøkt.',
  moreOpen: (n, caseId) =>
    n === 1
      ? `Ett søk til gjenstår, mindre verdt enn disse; npm run plan -- ${caseId} --all viser det.`
      : `${n} søk til gjenstår, alle mindre verdt enn disse; npm run plan -- ${caseId} --all viser dem.`,
  missing: 'Savnet i en folketelling de skulle ha stått i',
  missingShort: 'Savnet i en folketelling',
  missingWhy: 'Kilder fra før og etter viser at de var i landet, så de skulle ha vært talt.',
  searchedNotFound: 'søkt, ikke funnet',
  neverSearched: 'aldri søkt',
  coverage: 'Hva som burde nevne dem',
  coverageWhy:
    'Hver serie som dekker stedene og årene i et liv, og hvordan det gikk med innførselen som burde stå der.',
  lost: 'Hva som er tapt',
  instead: 'I stedet',
  lines: 'Slekten, linje for linje',
  clues: 'Spor i navn',
  caution:
    'Rekkefølgen bygger på skjønn fra vanlig praksis, ikke på målinger: Mang en sak er løst av en kilde ingen ventet noe av. Også et søk uten funn bør loggføres.',
  entries: (n) => (n === 1 ? 'én innførsel' : `${n} innførsler`),
  notDrawn: (n) =>
    n === 1
      ? 'Kildene til én person til rundt saken er ikke tegnet her.'
      : `Kildene til ${n} personer til rundt saken er ikke tegnet her.`,
  showMoreSearches: (n) => (n === 1 ? 'Ett søk til' : `${n} søk til`),

  card: {
    for: 'For',
    more: (n) => `og ${n} til`,
    lookFor: 'Se etter',
    spelt: 'Skrivemåter så langt',
    watch: 'Hold utkikk etter',
    why: 'Hvorfor, og hva en må passe seg for',
    searchedInPart: 'Delvis gjennomsøkt:',
  },
  strength: { strong: 'vel verdt det', fair: 'verdt det', slight: 'liten sjanse' },
  factors: {
    there: 'At den finnes og blir funnet',
    tells: 'At den nevner et sted',
    nearer: 'Hvor mye nærmere det er',
    close: 'Hvor langt det gjelder for personen i saken',
  },

  table: {
    series: 'Serie',
    drawn: 'Årene, tegnet',
    years: 'År',
    became: 'Hvordan det gikk',
    record: (nth) => (nth === undefined ? 'kilde' : `kilde ${nth}`),
    search: (id) => `søk ${id}`,
    marks: 'Tegnene',
  },
  status: {
    found: 'funnet',
    searched: 'søkt, ikke funnet',
    unreadable: 'uleselig',
    unavailable: 'ikke tilgjengelig',
    lost: 'tapt',
    open: 'gjenstår',
  },
  events: {
    census: 'talt',
    birth: 'fødsel eller dåp',
    marriage: 'vielse',
    death: 'død eller begravelse',
    arrival: 'ankomst',
    departure: 'utreise',
    naturalization: 'statsborgerskap',
    residence: 'årene de bodde der',
    childhood: 'skoleårene',
    service: 'tjenesteårene',
    biography: 'levnetsløp',
  },
  years,
  what: (event, when, age) =>
    `${event}, ${when}${age === undefined ? '' : age.least === age.most ? `, ${age.least} år gammel` : `, ${age.least} til ${age.most} år gammel`}`,

  subject: 'hovedpersonen',
  metAs: (roles, records) => `${roles.join(', ')} i ${records === 1 ? 'én kilde' : `${records} kilder`}`,

  stands: {
    nowhere: 'Ingen belegg i saken nevner noe sted ennå, så ethvert sted er en vinning.',
    settled: (at, place) =>
      `To uavhengige belegg når ${reach[at]}${place === undefined || at === 'country' || at === 'county' ? '' : ` (${place})`}. Det som står her, ville gjøre det sikrere${at === 'townland' ? '' : ', eller føre saken nærmere'}.`,
    onTheWay: (reached, settled) =>
      `Beleggene når ned til ${reach[reached]}, ${settled === null ? 'men ingen steder er det ennå to uavhengige' : `men to uavhengige når bare til ${reach[settled]}`}. Det som står her, ville føre saken nærmere eller gi det andre funnet.`,
  },

  because: {
    there(name, event, place, { from, to, how, day, kind }, share) {
      const known = {
        seen: 'en kilde sier det',
        between: 'kilder fra før og etter viser det',
        presumed: 'det antas ut fra det som er kjent før og etter',
      }[how];
      const when =
        from !== undefined && to !== undefined && !day && from !== to
          ? `mellom ${from} og ${to}`
          : from === undefined && to === undefined
            ? 'et ukjent år'
            : from === undefined || to === undefined
              ? years(from, to)
              : `i ${years(from, to)}`;
      return `${name} ${wasThere[event]} ${at(place, kind)} ${when} (${known}). At en slik innførsel finnes, blir funnet og lar seg kjenne igjen som deres, hender omtrent ${inHundred(share)} ganger.`;
    },
    tells(fields, title, levels) {
      const says =
        fields.length > 0 ? `Den kan oppgi ${list(fields)}.` : `Lite er kjent om hva ${title} forteller.`;
      const told = levels.map(({ level, share }) => `${reach[level]} ${inHundred(share)}`);
      return told.length > 0
        ? `${says} Slike kilder når ned til ${list(told)} ganger.`
        : `${says} Nesten ingen av dem nevner noe opphav.`;
    },
    nearer(reached, settled) {
      if (reached === null)
        return 'Saken har ikke noe sted ennå: Ethvert er en vinning, og jo snevrere, jo bedre.';
      if (reached === 'townland')
        return settled === 'townland'
          ? 'To uavhengige belegg når alt stedet: Ett til ville gjøre det sikrere, ikke nærmere.'
          : 'Ett belegg nevner selve stedet; det saken trenger, er et til som ikke bygger på det første.';
      return settled === reached
        ? `Saken når ${reach[reached]}: Bare noe nærmere er en vinning.`
        : `Saken når ${reach[reached]} på for tynt grunnlag: Et belegg til der er en vinning, og noe nærmere er mer.`;
    },
    aboutSubject: 'Den handler om personen i saken.',
    associate: (name, words) =>
      `${name} er ikke kjent som slekt (${words}), men folk som holder sammen, kom ofte fra samme sted.`,
    elsewhere: (name, words) =>
      `${name} (${words}) kom et annet sted fra; det ville si lite om dette opphavet.`,
    kin: (name, words, share) =>
      `${name} (${words}): Det som gjelder her, gjelder for personen i saken omtrent ${inHundred(share)} ganger.`,
  },

  cautions: {
    residence: 'Siste bosted er ikke fødested.',
    gap: ['Spør sted for sted, for mye er tapt: ', '.'],
    newspaper: 'Pass på at årgangene av avisen dekker dagene; ellers betyr det ingenting at intet er funnet.',
    census: 'De burde stå der: Prøv alle skrivemåter, og les naboenes sider linje for linje.',
    nameAlone: 'Uten amt, grevskap eller sogn peker ikke et navn ut noen: Finn stedet først.',
    partly: 'En del av årene er gjennomsøkt; loggen sier hvilke.',
  },

  fields: {
    birthplace: 'fødestedet',
    lastResidence: 'siste bosted',
    nearest: 'nærmeste slektning hjemme, med adresse',
    joining: 'hvem de skulle til',
    'parents-birthplace': 'hvor foreldrene var født',
    'parents-names': 'navnene på foreldrene',
    'maiden-name': 'pikenavn',
    'previous-residence': 'hvor de bodde før',
    immigrated: 'året de kom',
    voyage: 'skip, havner og dato',
    naturalized: 'om de var statsborgere',
    'year-naturalized': 'året de ble statsborgere',
    'mother-tongue': 'morsmålet',
    destination: 'hvor de skulle',
    relations: 'slekt og vitner',
    children: 'barn',
    religion: 'trossamfunnet',
    born: 'fødselsdatoen',
    age: 'alderen',
    residence: 'hvor de bodde',
    household: 'hvem de bodde sammen med',
    occupation: 'yrket',
    landlord: 'jordeieren',
    signature: 'underskriften',
  },
  list,
};
