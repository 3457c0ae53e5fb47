import { worded, type WordsFor } from '../../model/said.ts';
import type { NamedKin, TraitValues } from '../../model/trait.ts';
import type { candidates as English } from '../en/candidates.ts';
import { everywhere } from './everywhere.ts';
import { words } from './words.ts';

const { figures, numberWord } = everywhere;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const fields: Readonly<Record<string, string>> = {
  given: 'barnet',
  birth: 'født',
  birthday: 'fødselsdag',
  surname: 'etternavn',
  father: 'far',
  'father-patronymic': 'farens farsnavn',
  mother: 'mor',
  maiden: 'morens pikenavn',
  'mother-patronymic': 'morens farsnavn',
  sibling: 'bror eller søster',
  brother: 'bror',
  sister: 'søster',
  'other-children': 'andre barn',
  order: 'barnas rekkefølge',
  spouse: 'kone eller mann',
  place: 'sted',
  occupation: 'farens arbeid',
  afterwards: 'etter avreisen',
};

const sought: Readonly<Record<string, string>> = {
  birth: 'når barnet ble født',
  birthday: 'fødselsdagen',
  surname: 'etternavnet',
  father: 'hva faren het',
  'father-patronymic': 'farens farsnavn',
  mother: 'hva moren het',
  maiden: 'morens pikenavn',
  'mother-patronymic': 'morens farsnavn',
  sibling: 'søsken',
  spouse: 'hvem barnet giftet seg med',
  place: 'stedet',
  occupation: 'farens arbeid',
  afterwards: 'om barnet er der etter avreisen',
};

const kin: Readonly<Record<NamedKin, string>> = {
  surname: 'familiens etternavn er',
  father: 'faren er',
  'father-patronymic': 'farens farsnavn er',
  mother: 'moren er',
  maiden: 'morens pikenavn er',
  'patronymic-of-mother': 'morens farsnavn er',
  spouse: 'gift med',
  'spouse-surname': 'med etternavnet',
};

const traits: WordsFor<TraitValues> = {
  named: ({ whose, name, near }) =>
    `${kin[whose]} ${name}${near ? ' eller en skrivemåte som ligner like mye' : ''}`,
  child: ({ name, born }) =>
    `et barn som heter ${name}${{ 'that-day': ', født den dagen', 'about-then': ' og er omtrent så gammelt', 'any-time': '' }[born]}`,
  children: ({ names, found, of }) =>
    found === of
      ? `ved siden av ${found === 1 ? 'barnet' : 'barna'} ${names.join(', ')}`
      : `ved siden av ${found} av ${of} andre barn som er kjent her (${names.join(', ')})`,
  work: ({ occupation }) => `faren er ${occupation}`,
  both: ({ first, second }) => `${trait(first)}, ${trait(second)}`,
};

type Trait = Parameters<typeof worded<TraitValues>>[0];

const trait = (of: Trait): string => worded<TraitValues>(of, traits);

const inHundred = (share: number): string =>
  share < 0.01 ? 'under 1 av 100' : `${Math.min(99, Math.round(share * 100))} av 100`;

export const candidates: typeof English = {
  intro:
    'Familier funnet i opphavsstedets egne kilder, ved siden av familien slik bare kildene i det nye landet kjenner den. Det som bare kandidatens kilder sier, er ingen overensstemmelse.',
  howCompared: 'Slik sammenlignes de',
  sideBySide: 'Side om side, punkt for punkt',
  what: 'Hva',
  knownHere: 'Kjent i det nye landet',
  newCountry: 'Nye landet',
  candidate: (id) => `Kandidat ${id}`,
  theCandidate: 'Kandidat',
  verdict: {
    agrees: 'stemmer',
    differs: 'stemmer ikke',
    unsaid: 'ikke oppgitt',
    notKnownHere: 'ikke kjent her',
  },
  more: (n) => ` og ${n} til`,
  field: (field) => fields[field] ?? field,
  sought: (wanted) => {
    const all = wanted.flatMap((field) => sought[field] ?? []);
    return all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} eller ${all.at(-1)}`;
  },
  trait,

  weighs: 'Det den veier',
  theFamilies: 'Familiene',
  verdictOf: (probability) =>
    `${inHundred(probability)} sannsynlig at dette er familien, blant kandidatene og ingen av dem`,
  none: (candidates, probability) =>
    `At det ikke er ${candidates === 1 ? 'denne' : 'noen av dem'}, er ${inHundred(probability)} sannsynlig.`,
  prior: (families, found) =>
    `én av omtrent ${figures(families)} familier, og ${found === 0.5 ? 'like sannsynlig som ikke' : inHundred(found)} blant dem i det hele tatt`,
  silent: (all) => `Står ikke hos begge og veier derfor ingenting: ${all.join(', ')}.`,
  leftOut: (n) =>
    n === 1
      ? 'Ett barn til er nevnt enn det som sammenlignes.'
      : `${capital(numberWord(n))} barn til er nevnt enn de som sammenlignes.`,
  from: 'Fra ',

  tells: (name) => `slik ${name} forteller`,
  hereBy: (date) => `her innen ${date}`,
  without: (record) => `${record}, uten vedkommende`,
  notFound: (search) => `søk ${search}, uten funn`,
  childOf: (years) => (years === '' ? 'et barn' : `et barn, ${years}`),
  orderAsHere: (same, pairs) => (same === pairs ? 'som her' : `${same} av ${pairs} par som her`),

  stillThere: (by) => `Utvandreren var her innen ${by}; dette barnet er der senere og er altså en annen:`,
  saidAbroad: 'En kilde der oppgir at dette barnet er utenlands:',
  lookedFor: (by) =>
    `Utvandreren var her innen ${by}; dette barnet er lett etter der etter det, uten å bli funnet:`,
  openAfterwards: (why) => `Hva det ble av dette barnet der, står åpent: ${why}.`,
  tie: (other, wanted) =>
    `Den kan ikke skilles fra kandidat ${other} ut fra det de innførte kildene sier.${wanted === '' ? '' : ` En kilde som forteller ${wanted}, kan gjøre det.`}`,

  expected: (community, number, partly) =>
    `I ${community} ville ${number} andre familier stemme ${partly ? 'i det som stemmer her' : 'i alt dette'} ved en tilfeldighet.`,
  hardlyExpected: (community, places, partly) =>
    `I ${community} er det ikke å vente at en annen familie stemmer ${partly ? 'i det som stemmer her' : 'i alt dette'} ved en tilfeldighet: ett slikt sted av omtrent ${places} ville hatt en.`,
  community: (place, kind, households) =>
    `${place} (${words.placeKind(kind)}, omtrent ${figures(households)} husstander)`,
  aPlace: 'sted',
  about: (number, from, to) => `omtrent ${number} (${from}–${to})`,
  under: (number) => `under ${number}`,
  orMore: (number) => `${number} eller flere`,
  thousandMillion: 'en milliard',
  decimal: (n) => String(n).replace('.', ','),
  how: (households, any) =>
    `${capital(households)}. Sjansen for at det finnes minst én, er ${inHundred(any)}. Intervallet rommer tallet ni av ti ganger.`,
  byAccident: (parts) =>
    `Tilfeldig, av alle familier: ${parts.map(({ what, share }) => `${what}, ${share}`).join('; ')}.`,
  oneIn: (number) => `1 av ${figures(number)}`,
  inHundred,
};
