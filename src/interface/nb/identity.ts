import type { NameForm, ReasonValues } from '../../model/reason.ts';
import { worded, type WordsFor } from '../../model/said.ts';
import type { identity as English } from '../en/identity.ts';
import { everywhere } from './everywhere.ts';
import { words } from './words.ts';

const { figures } = everywhere;
const comma = (n: number, places: number) => n.toFixed(places).replace('.', ',');
const told = (name: string) => (name === '' ? 'Navnet' : name);
const where = (place: string) => (place === '' ? 'i lista' : `i ${place}`);

/** “13 av 1000”, “2,5 av 1000”. */
function perThousand(share: number): string {
  const value = share * 1000;
  const text = comma(value, value >= 10 ? 0 : value >= 1 ? 1 : 2);
  return `${text.includes(',') ? text.replace(/,?0+$/, '') : text} av 1000`;
}

const languages: Readonly<Record<string, string>> = {
  Irish: 'irsk',
  Norwegian: 'norsk',
  German: 'tysk',
  Welsh: 'walisisk',
  English: 'engelsk',
  Swedish: 'svensk',
  Danish: 'dansk',
  Latin: 'latin',
};

function form({ as, kind, language, of }: NameForm): string {
  if (kind === 'abbreviation') return `${as} er forkortet for ${of}`;
  if (kind === 'latin') return `${as} er latin for ${of}`;
  if (kind === 'translation') return `${as} er ${languages[language] ?? language} for ${of}`;
  if (kind === 'diminutive') return `${as} er en kortform av ${of}`;
  if (kind === 'interchangeable') return `${as} brukes for ${of}`;
  return `${as} er en skrivemåte av ${of}`;
}

const prefixes = { o: 'O’', mac: 'Mac', fitz: 'Fitz', particle: 'forstavelsen' };

const reasons: WordsFor<ReasonValues> = {
  'prefix-left-off': ({ prefix }) => `${prefixes[prefix]} er utelatt`,
  'used-for-one-another': ({ a, b }) => `${a} og ${b} brukes om hverandre`,
  'spellings-of-one-name': ({ a, b }) => `${a} og ${b} er skrivemåter av samme navn`,
  'part-of-a-name': ({ part, of }) => `${part} er en del av ${of}`,
  'spellings-alike': () => 'skrivemåtene ligner',
  'spellings-nearly-the-same': () => 'skrivemåtene er nesten like',
  'sound-alike': () => 'de lyder likt',
  'one-patronymic': ({ a, b }) => `${a} og ${b} er samme farsnavn`,
  'one-father': ({ a, b, father }) => `${a} og ${b} sier begge at faren het ${father}`,
  'one-name': ({ a, b }) => `${a} og ${b} er samme navn`,
  'further-names-differ': ({ a, b }) => `de første navnene stemmer, men ikke de neste: ${a} og ${b}`,
  'left-off': ({ name }) => `${name} er utelatt`,
  'further-name-of': ({ name, of }) => `${name} er et av navnene i ${of}`,
  'only-the-initial': ({ initial }) => `begge har bare forbokstaven ${initial}`,
  'initial-fits': ({ initial, name }) => `${initial} passer til ${name}`,
  'forms-of-a-name': ({ forms }) => forms.map(form).sort().join(', og '),

  'listed-in-a-wider-place': ({ name, place, wider, share, atMost }) =>
    `${told(name)} er ikke blant navnene som er ført opp ${where(place)}; i ${wider} bæres det av ${perThousand(share)}${atMost === null ? '' : `, her av høyst ${perThousand(atMost)}`}.`,
  'nobody-called-so': ({ name, place, people, share }) =>
    `Ingen av de ${figures(people)} som er talt ${where(place)}, heter ${name || 'det'}; navnet regnes som båret av ${perThousand(share)}.`,
  'not-among-those-listed': ({ name, place, share }) =>
    `${told(name)} er ikke blant navnene som er ført opp ${where(place)}, og regnes som båret av ${perThousand(share)}.`,
  'borne-from-memory': ({ name, place, share }) =>
    `${told(name)} bæres av omtrent ${perThousand(share)} ${where(place)} (etter hukommelsen).`,
  'borne-by': ({ name, place, bearers, people, share }) =>
    `${told(name)} bæres av ${figures(bearers)} av ${figures(people)} ${where(place)}: ${perThousand(share)}.`,
  'borne-by-few': ({ name, place, bearers, people, larger, share }) =>
    `${told(name)} bæres av ${figures(bearers)} av ${figures(people)} ${where(place)}; fordi det er få, regnes ${larger} med, og da blir det ${perThousand(share)}.`,
  'in-no-list': ({ name, share }) =>
    `${told(name)} står ikke i noen navneliste og regnes som båret av ${perThousand(share)}.`,
  'no-list-of-the-place': ({ name, place, share }) =>
    `Ingen navneliste dekker stedet, så ${name || 'navnet'} regnes som like vanlig som ${where(place)}: ${perThousand(share)}.`,
  'no-more-than-the-father': ({ name, share }) =>
    `${name} sier ikke mer enn farens navn, som omtrent ${String(Number((share * 1000).toPrecision(2))).replace('.', ',')} av 1000 bar`,

  'people-counted': ({ people, place }) => `${figures(people)} ble talt i ${place}`,
  'people-usual': ({ people, kind, place }) =>
    `omtrent ${figures(people)} mennesker i et område som ${place} (${words.placeKind(kind)})`,
  'no-place-said': ({ people }) =>
    `regnet som ${figures(people)} mennesker, siden kilden ikke oppgir noe sted`,
  'size-not-known': ({ people, place }) =>
    `regnet som ${figures(people)} mennesker, siden størrelsen på ${place} ikke er kjent`,
  'households-counted': ({ crowd, source }) => `${reason(crowd)}: ${sourced(source)}`,
  'households-reckoned': ({ crowd, each, source }) =>
    `${reason(crowd)}, ${String(each).replace('.', ',')} i hver husstand (${sourced(source)})`,

  'only-a-country': ({ place }) => `begge nevner bare ${place}`,
  'both-mean': ({ place }) => `begge mener ${place}`,
  'lies-in': ({ inner, outer }) => `${inner} ligger i ${outer}`,
  'share-ground': ({ a, b }) => `${a} og ${b} dekker delvis samme område`,
  'both-lie-in': ({ place }) => `begge ligger i ${place}`,
  'is-not': ({ a, b }) => `${a} er ikke ${b}`,
  'address-not-placed': () => 'en av adressene lar seg ikke plassere',
  'either-side-of-a-migration': () => 'på hver sin side av utvandringen',

  'one-does-not-say': () => 'den ene sier ingenting om det',
  'patronymic-beside-family-name': () => 'et farsnavn og et gårds- eller slektsnavn kan tilhøre samme person',
  'married-in-between': () => 'en kvinne kan ha giftet seg i mellomtiden',
  'years-apart': ({ years }) => (years === 1 ? 'ett år fra hverandre' : `${years} år fra hverandre`),
  'surname-agrees-too': () => 'etternavnet stemmer også',
  'best-of-values': ({ values, bits }) =>
    `den beste av ${values} ulike opplysninger, som trekker fra ${comma(bits, 1)}`,
  'best-of-places': ({ values, bits }) =>
    `det beste av ${values} ulike steder, som trekker fra ${comma(bits, 1)}`,

  'one-does-not-name-the-child': () => 'den ene nevner ikke barnet ved navn',
  'here-do-not-say': () => 'kildene i det nye landet sier ingenting om det',
  'candidate-does-not-say': () => 'kandidatens kilder sier ingenting om det',
  'any-child-may-have-it': ({ children }) => `hvem som helst av ${children} barn i en familie kan ha navnet`,
  'day-or-month-the-same': () => 'dagen eller måneden er den samme',
  'order-follows-from-ages': () => 'rekkefølgen følger av aldrene, som alt er veid',
  'no-age-to-compare': () => 'ingen alder å sammenligne',
  'names-no-other-children': () => 'kandidatens kilder nevner ingen andre barn',
  'not-among-the-children': () =>
    'ikke blant barna som kandidatens kilder nevner, og de sies ikke å være alle',
  'none-of-the-children': ({ children }) =>
    children === 1
      ? 'det ene barnet som kandidatens kilder nevner, er ingen av dem som er kjent her'
      : `ingen av barna som er kjent her, er blant de ${children} som kandidatens kilder nevner`,
  'departure-not-known': () => 'det er ikke kjent når utvandreren reiste',
  'no-child-who-could-be': () => 'kandidatens kilder nevner ikke noe barn som kan være utvandreren',
  'nothing-later-entered': () => 'ingen senere kilde derfra er ført inn, og ikke noe søk etter en heller',
  'there-afterwards': () => 'den som er der etter at utvandreren var kommet hit, er en annen',
  'said-to-be-abroad': () => 'en kilde der oppgir at vedkommende er utenlands',
  'looked-for-afterwards': () => 'lett etter der etter avreisen uten å bli funnet',
  'trades-agree-so': ({ share }) =>
    `av to fedre tatt på måfå har ${Math.round(100 * share)} av 100 yrker som stemmer så godt`,
};

type Reason = Parameters<typeof worded<ReasonValues>>[0];

const reason = (of: Reason): string => worded<ReasonValues>(of, reasons);

const levels: Readonly<Record<string, string>> = {
  exact: 'helt likt',
  same: 'det samme',
  variant: 'samme navn i en annen form',
  part: 'delvis',
  close: 'nesten likt',
  near: 'lignende',
  sound: 'lyder likt',
  initial: 'forbokstaven',
  different: 'ulikt',
  missing: 'ikke oppgitt',
  'one slip': 'én skrivefeil',
  most: 'de fleste',
  some: 'noen',
  none: 'ingen',
  'same year': 'samme år',
  'within 1 year': 'innen 1 år',
  'within 2 years': 'innen 2 år',
  'within 3 years': 'innen 3 år',
  'within 5 years': 'innen 5 år',
  'within 10 years': 'innen 10 år',
  'beyond 10 years': 'over 10 år',
  'same order': 'samme rekkefølge',
  'mostly so': 'for det meste',
  'another order': 'en annen rekkefølge',
  'said to have left': 'sies å ha reist',
  'not there': 'ikke der',
  'still there': 'fortsatt der',
};

const fields: Readonly<Record<string, string>> = {
  given: 'fornavn',
  surname: 'etternavn',
  sex: 'kjønn',
  birth: 'født',
  birthday: 'fødselsdag',
  birthplace: 'fødested',
  residence: 'bosted',
  occupation: 'yrke',
  spouse: 'ektefelle',
  father: 'far',
  mother: 'mor',
  children: 'barn',
  arrival: 'ankomst',
};

const sources: Readonly<Record<string, string>> = {
  'common practice': 'vanlig praksis',
  'from memory': 'etter hukommelsen',
};

/** What is known from no work in particular is said; the title of a work stays as it is. */
const sourced = (source: string): string => sources[source] ?? source;

export const identity: typeof English = {
  reason,
  reasons: (all) =>
    all
      .map((one) => reason(one).replace(/\.$/, ''))
      .filter(Boolean)
      .join('; '),
  perThousand,
  level: (level) =>
    level
      .split(', ')
      .map((one) => levels[one] ?? one)
      .join(', '),
  field: (field) => fields[field] ?? field,
  sex: (value) => (value === 'M' ? 'mann' : value === 'F' ? 'kvinne' : value),
  source: sourced,

  intro:
    'At to kilder nevner samme person, er i seg selv en konklusjon. Hver linje nedenfor setter det én kilde sier, ved siden av det personens andre kilder sier. Vekten, i bit, er hvor mye oftere det hender når det er én person enn når det er to (én bit: dobbelt så ofte).',
  howReckoned: 'Slik regnes vektene ut',
  what: 'Hva',
  thisRecord: 'Denne kilden',
  anotherRecord: 'En annen kilde',
  howTheyAgree: 'Slik stemmer de',
  bits: 'Bit',
  beforeComparing: 'før sammenligningen',
  theCrowd: 'Mengden',
  together: 'til sammen',
  thatIs: 'Det vil si',
  somebodyNotNamed: 'En som ikke er navngitt',
  inRecord: (name, record) => `${name} i ${record}`,
  silent: (fields) => `Står ikke i begge og veier derfor ingenting: ${fields.join(', ')}.`,
  nothingToCompare: 'Ingenting å sammenligne med',
  noOtherProvenance: (person) =>
    `Ingen kilde med annet opphav nevner ${person}, så ingenting kan sammenlignes.`,
  leftOut: (n) =>
    n === 1
      ? 'Én omtale er utelatt fordi den har samme opphav.'
      : `${n} omtaler er utelatt fordi de har samme opphav.`,
  chance: (probability) => {
    if (probability >= 0.9995) return 'over 99,9 % sannsynlig samme person';
    if (probability >= 0.99) return `${comma(probability * 100, 1)} % sannsynlig samme person`;
    if (probability < 0.01) return 'under 1 % sannsynlig samme person ut fra dette alene';
    return `${Math.round(probability * 100)} % sannsynlig samme person${probability < 0.9 ? ' ut fra dette alene' : ''}`;
  },
  signed: (bits) => {
    const size = comma(Math.abs(bits), 1);
    return size === '0,0' ? '0' : `${bits < 0 ? '−' : '+'}${size}`;
  },
};
