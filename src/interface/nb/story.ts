import type { story as English } from '../en/story.ts';
import { joined } from '../phrase.ts';
import { everywhere } from './everywhere.ts';

const { figures, numberWord } = everywhere;

export const story: typeof English = {
  kicker: (person) => `Sak · ${person}`,
  cases: 'Saker',
  case: 'Saken',
  standing: 'Status',
  person: 'Person',
  independent: 'Uavhengige belegg',
  readingTime: 'Lesetid',
  minutes: (n) => (n === 1 ? '1 minutt' : `${figures(n)} minutter`),
  forReviewers: 'For den som vil etterprøve',
  followEveryStep: 'Følg hvert skritt',
  whatNext: 'Hva bør undersøkes nå',
  method: 'Slik blir status regnet ut',
  linkedData: 'Denne saken som lenkede data (JSON-LD)',

  answer: 'Svaret',
  workingIdea: 'Arbeidshypotesen',
  notKnown: 'Ikke kjent ennå.',
  restsOn: (strength) => `Det bygger på ${strength}.`,
  heading: 'Ingenting er konkludert; det er hit undersøkelsen peker.',
  setAside: (places) => [
    'Veid og lagt til side: ',
    ...joined(
      places.map((place) => [place]),
      everywhere.and,
    ),
    '.',
  ],
  wouldFall: (records) =>
    `Det ville falle om ${records === 1 ? 'én kilde' : records === 2 ? 'én av to kilder' : `én av ${numberWord(records)} kilder`} viste seg å være feil.`,

  life: (person) => `Livet til ${person}`,
  lifeDrawing: (person) => `Livet til ${person} på en målestokk av år. Det samme følger i ord.`,
  lifeInWords: 'Livet i ord',
  born: 'født',
  married: 'gift',
  died: 'død',
  arrived: 'kom over',
  aged: (least, greatest) => (least === greatest ? `${least} år` : `${least} eller ${greatest} år`),
  children: (n) => (n === 1 ? 'et barn født' : 'barn født'),
  inRecords: 'nevnt i en kilde',
  wholeLife: (life) => [life('Alt kildene sier om dette livet')],
  family: (person) => `Familien til ${person}`,
  records: 'Kilder i denne saken',
  noRecords: 'Ingen kilde er trukket inn i denne saken ennå.',
  caution: (method) => [
    'Dette svaret er en begrunnet mening ut fra det som er funnet hittil, og det kan endres. Det er ikke noe juridisk bevis for slektskap, arv eller statsborgerskap. ',
    method('Mer om hva det kan og ikke kan fortelle'),
    '.',
  ],
  changes: 'Hva som er endret',
  published: (first, last) =>
    first === undefined
      ? `Endret ${last ?? ''}.`
      : last === undefined
        ? `Først utgitt ${first}.`
        : `Først utgitt ${first}, endret ${last}.`,
  otherCases: 'Andre saker',
  before: 'Forrige',
  next: 'Neste',
};
