import type { Evidence } from '../../model/case.ts';
import type { Informant, SourceRecord } from '../../model/record.ts';
import type { evidence as English } from '../en/proof-evidence.ts';
import { joined, type Part, type Phrase } from '../phrase.ts';

const list = (parts: readonly Part[], last = ' og '): Phrase =>
  joined(
    parts.map((part) => [part]),
    last,
  );

const kinds: Record<Evidence['kind'], string> = {
  direct: 'direkte: det sier det det spørres om',
  indirect: 'indirekte: det det spørres om, må sluttes av det',
  negative: 'negativt: noe som skulle vært der, mangler',
};
const kindsShort: Record<Evidence['kind'], string> = {
  direct: 'direkte',
  indirect: 'indirekte',
  negative: 'negativt',
};
const knowledges: Record<NonNullable<Informant['knowledge']>, string> = {
  primary: 'førstehånds: var der eller gjorde det selv',
  secondary: 'annenhånds: hadde det fra andre',
  undetermined: 'uavklart: hvordan vedkommende visste det, er ikke kjent',
};
const knowledgesShort: Record<NonNullable<Informant['knowledge']>, string> = {
  primary: 'førstehånds',
  secondary: 'annenhånds',
  undetermined: 'uavklart',
};
const forms: Record<SourceRecord['form'], string> = {
  original: 'originalkilde',
  derivative: 'avledet: avskrift, register eller utskrift',
  authored: 'forfattet: noens egen framstilling',
};
const formsShort: Record<SourceRecord['form'], string> = {
  original: 'original',
  derivative: 'avledet',
  authored: 'forfattet',
};
const seen: Record<NonNullable<SourceRecord['seen']>, string> = {
  original: 'i original',
  image: 'som bilde',
  film: 'på mikrofilm',
  transcript: 'bare i avskrift',
  report: 'slik noen har gjengitt den',
};

export const evidence: typeof English = {
  caption:
    'Hvert belegg i saken, brukt eller ikke, med de tre klassene et bevis leses etter: kilden, opplysningen og belegget',
  none: 'Ingen belegg er lagt fram i denne saken ennå.',
  columns: {
    item: 'Belegget, og hvordan det teller',
    says: 'Hva det sier, og om hvem',
    worth: 'Hvor det kommer fra, og hva det er verdt',
  },
  classes: (sources, information, kind) =>
    [
      sources.length > 0 && `${sources.map((form) => formsShort[form]).join(' og ')} kilde`,
      information.length > 0 &&
        `${information.map((knowledge) => knowledgesShort[knowledge]).join(' og ')} opplysning`,
      `${kindsShort[kind]} belegg`,
    ]
      .filter(Boolean)
      .join(', '),
  terms: {
    says: 'Sier',
    ofWhom: 'Om hvem',
    search: 'Søk',
    readAs: 'Lest som',
    against: 'Mot',
    source: 'Kilde',
    informant: 'Hjemmel',
    information: 'Opplysning',
    restsOn: 'Bygger på',
    evidence: 'Belegg',
    tie: 'Tilknytning',
    author: 'Forfatteren',
  },
  aSearch: 'Et søk',
  notShown: 'En opplysning om en som ikke vises her.',
  kind: (kind) => kinds[kind],
  knowledge: (knowledge) => knowledges[knowledge],
  form: (form) => forms[form],
  nothingSaid: 'ingenting om dette',
  theName: 'navnet',
  says: (heading, words, inferred) => [
    `${heading}: `,
    ...words,
    inferred ? ' (sluttet; kilden sier det ikke rett ut)' : '',
  ],
  present: 'til stede',
  notPresent: 'nevnt, men ikke til stede',
  dated: (key, date) => `${key === 'sailed' ? 'avreist' : 'ankommet'} ${date}`,
  somebodyNotNamed: 'en som ikke er navngitt',
  takenForNobody: (name, role) => [name, `${role ? `, ${role}` : ''}; ikke regnet som noen bestemt ennå`],
  takenFor: (name, role, person, kin) => [
    name,
    `${role ? `, ${role}` : ''}; regnes som `,
    person,
    kin ? ` (i slekt med personen: ${kin})` : '',
  ],
  notKnown: 'ikke kjent',
  asItsExemplar: 'som i kilden den er avledet av',
  whoNotKnown: 'uavklart: det er ikke kjent hvem som ga den',
  toldBy: (tellers) => [', som hadde det fra ', ...list(tellers)],
  oneOf: (people) => ['en av ', ...list(people), ', det er ikke kjent hvem'],
  from: (record) => ['fra ', record],
  fromUnseen: (text) => [`fra ${text}, ikke gransket`],
  fromPerhaps: (record) => ['kanskje fra ', record],
  also: (phrases) => joined(phrases, ' og '),
  roots: (phrases) => joined(phrases, '; og ', '; '),
  source: (title, form, as, from) => [
    title === undefined ? '' : `${title}: `,
    forms[form],
    as ? `; sett ${seen[as]}` : '; det er ikke sagt hvordan den er sett',
    ...(from.length > 0 ? ['; ', ...joined(from, ' og ')] : []),
  ],

  nothingYet: 'Ingenting er konkludert ennå, så ingenting teller ennå',
  counts: (place, atIt, letter, misses) =>
    `Teller ${atIt ? `ved ${place}` : `fra ${place} og oppover`}: linje ${letter}${misses === null ? '' : `, som går forbi ${misses}`}`,
  adds: (head, letter, instead) =>
    `Legger ingenting til ${head}, som det deler linje ${letter} med${there(instead)}`,
  runsAlongside: (head, letter, instead) =>
    `Løper ved siden av linje ${letter}: ikke vist å være uavhengig av ${head}${there(instead)}`,
  conflicts: (place, answered) => `Strider mot ${place}: ${answered ? 'besvart' : 'ikke besvart'}`,
  doesNotCount: (why) => `Teller ikke: ${why}`,
};

function there(places: readonly string[]): string {
  if (places.length === 0) return '';
  const all = places.length < 2 ? places[0] : `${places.slice(0, -1).join(', ')} og ${places.at(-1)}`;
  return `; telles i stedet for det ved ${all}`;
}
