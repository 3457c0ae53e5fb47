/**
 * What a column of a spreadsheet of mentions can be, and what its heading says it is.
 *
 * Rule (common practice): the words under which passenger lists, census pages, registers and directories are typed, in
 * English and Norwegian; the words of people’s names, ages and places are those of any table of people.
 */
import { nearest } from '../../corpus/suggestions.ts';
import { guessOf, plainHeading, type ColumnUse } from '../people-headings.ts';

/** Fields that are the whole of one key. */
const single = [
  'name',
  'name.given',
  'name.surname',
  'name.prefix',
  'name.suffix',
  'alsoRead',
  'role',
  'sex',
  'age',
  'age.months',
  'age.days',
  'born',
  'born.year',
  'born.month',
  'born.day',
  'birthplace',
  'residence',
  'lastResidence',
  'occupation',
  'immigrated',
  'line',
  'household',
  'relation',
  'voyage.ship',
  'voyage.from',
  'voyage.sailed',
  'voyage.to',
  'voyage.arrived',
  'voyage.bound',
  'voyage.ticket',
  'voyage.line',
  'event.kind',
  'event.date',
  'event.place',
  'joining.name',
  'joining.relation',
  'joining.address',
  'nearest.name',
  'nearest.relation',
  'nearest.address',
  'record.title',
  'record.made',
  'record.place',
  'record.page',
  'ignore',
] as const;

/** A field that a column is mapped to: one of the known ones, `says.<word>`, or `other.<role>`. */
export type Field = (typeof single)[number] | `says.${string}` | `other.${string}`;

const open = /^(?:says|other)\.[a-z][A-Za-z0-9]*(?:-[A-Za-z0-9]+)*$/;

/** A text as a field; a sentence about it where it is none. */
export function fieldOf(text: string): Field | { problem: string } {
  const plain = text.trim();
  if ((single as readonly string[]).includes(plain) || open.test(plain)) return plain as Field;
  const meant = nearest(plain, single);
  return {
    problem: `“${plain}” is nothing a column can be.${meant ? ` Did you mean ${meant}?` : ''} A column can be: ${single.join(', ')}, says.<word> for anything else the list says, or other.<role> for somebody else it names, such as other.father or other.witness.`,
  };
}

const words: Partial<Record<(typeof single)[number] | 'says.note', string>> = {
  'name.prefix': 'title prefix honorific tittel',
  'name.suffix': 'suffix jr sr',
  alsoRead: 'alsoread alternatename alternative alias otherreading alternativelesemate',
  role: 'role rolle capacity party partytype',
  'age.months': 'months agemonths agem ageinmonths maneder mnd',
  'age.days': 'days agedays aged ageindays dager',
  immigrated:
    'yearofimmigration immigrationyear immigrated immigration innvandret innvandringsar utvandret yrimm',
  line: `line lineno linenumber linenr no nr number listno listnumber entry entryno passengerno passengernumber linje
    linjenr lopenr lopenummer nummer rad`,
  household: `household householdno householdnumber family familyno familynumber dwelling dwellingno dwellingnumber house
    houseno housenumber schedule scheduleno hh hhid husholdning husholdningsnr hushold husnr familie`,
  relation: `relation relationship relationtohead relationshiptohead relationshiptoheadofhousehold relationtohouseholder
    reltohead rel familyrelation familiestilling stillingifamilien familieforhold slektskap`,
  'voyage.ship': `ship shipname vessel vesselname nameofship nameofvessel steamer steamship steamshipname skip skipsnavn
    skib fartoy fartoey skute`,
  'voyage.from': `from portofdeparture departureport portofembarkation embarked embarkation departedfrom port fra
    avreisehavn avgangshavn`,
  'voyage.sailed': `sailed departure departed departuredate dateofdeparture dateofsailing sailingdate avreise avreist
    avreisedato avgang avgangsdato seilt`,
  'voyage.to': 'to portofarrival arrivalport destinationport arrivedat til ankomsthavn',
  'voyage.arrived': `arrived arrival arrivaldate dateofarrival datearrived ankomst ankommet ankomstdato`,
  'voyage.bound': `bound boundfor destination finaldestination going goingto countrytowhichtheyintendtobecomeinhabitants
    bestemmelsessted reisemal mal`,
  'voyage.ticket':
    'ticket ticketno ticketnumber contractticket contract billett billettnr billettnummer kontrakt',
  'event.kind': 'event eventtype eventkind typeofevent recordtype hendelse',
  'event.date': `eventdate date dateofevent marriagedate dateofmarriage marriage burialdate dateofburial deathdate dateofdeath
    baptismdate dateofbaptism dato vigselsdato dapsdato begravelsesdato dodsdato`,
  'event.place':
    'eventplace placeofevent marriageplace placeofmarriage deathplace placeofdeath sted hendelsessted',
  lastResidence: `lastresidence lastpermanentresidence lastplaceofresidence previousresidence lastaddress sistebosted
    sistebosatt sisteoppholdssted sidsteopholdssted`,
  residence: 'bosatt oppholdssted opholdssted street address adresse gate',
  birthplace: 'fodested fodtsted fodeplass birthcounty birthparish birthtownland nativeof nativecountry',
  'joining.name': 'joining joiningwhom nameofrelativeorfriend joinname skaltil',
  'joining.relation': 'joiningrelation relationofwhomjoining',
  'joining.address': 'joiningaddress addressofrelativeorfriend',
  'nearest.name': 'nearestrelative nearestrelation nextofkin nearestkin naermesteslektning parorende',
  'nearest.relation': 'nearestrelativerelation nextofkinrelation',
  'nearest.address': 'nearestrelativeaddress nextofkinaddress',
  'record.page': 'page pageno pagenumber sheet sheetno folio fol side sidetall ark pagina',
  'record.title': 'document documenttitle recordtitle source kilde dokument list listtitle liste',
  'record.made': 'documentdate recorddate dateofdocument listdate dokumentdato',
  'record.place': 'recordplace documentplace placeofrecord',
  'says.note':
    'note notes remark remarks comment comments merknad merknader anmerkning anmaerkning bemerkning',
};

/** People named in a row beside the one it is about. */
const others: Record<string, string> = {
  father: 'father fathersname nameoffather fathername far farsnavn',
  mother: 'mother mothersname nameofmother mothername mor morsnavn',
  spouse: 'spouse spousesname nameofspouse wife husband ektefelle kone',
  witness: 'witness witnesses vitne vitner forlover forlovere',
  sponsor: 'sponsor sponsors godparent godparents fadder faddere gudforelder',
  informant: 'informant informer melder',
};

const fields = new Map<string, Field>();
for (const [field, list] of Object.entries(words))
  for (const word of list.split(/\s+/)) if (!fields.has(word)) fields.set(word, field as Field);
for (const [role, list] of Object.entries(others))
  for (const word of list.split(/\s+/)) fields.set(word, `other.${role}`);

const ofPeople: Partial<Record<ColumnUse, Field>> = {
  name: 'name',
  given: 'name.given',
  surname: 'name.surname',
  sex: 'sex',
  age: 'age',
  'birth-date': 'born',
  'birth-year': 'born.year',
  'birth-month': 'born.month',
  'birth-day': 'born.day',
  birthplace: 'birthplace',
  residence: 'residence',
  occupation: 'occupation',
  'arrival-year': 'immigrated',
};

/** A year that an index has reckoned is nothing its list says. */
const reckoned = /^(?:est|estimated|approx|approximate|imputed|calc|calculated|beregnet)/;

/** What a heading says its column is. What it doesn’t say is kept as `says.<heading>`, so that nothing is lost. */
export function guessField(heading: string): Field {
  const plain = plainHeading(heading);
  if (plain === '') return 'ignore';
  const numbered = plain.replace(/[1-9]$/, '');
  const known =
    fields.get(plain) ?? (fields.get(numbered)?.startsWith('other.') ? fields.get(numbered) : undefined);
  if (known) return known;
  const guess = reckoned.test(plain) ? undefined : guessOf(heading);
  return (guess && ofPeople[guess.use]) ?? `says.${saysWord(heading)}`;
}

/** A heading as the word it is kept under: “Mother tongue” as `motherTongue`. */
export function saysWord(heading: string): string {
  const parts = heading
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[øØ]/g, 'o')
    .replace(/[æÆ]/g, 'ae')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
  const word = parts.map((part, i) => (i === 0 ? part : part[0]!.toUpperCase() + part.slice(1))).join('');
  if (word === '') return 'column';
  return /^[a-z]/.test(word) ? word.slice(0, 40) : `column${word}`.slice(0, 40);
}

/** Fields of which several columns say one thing together, in the order of the columns. */
export const joinedFields: ReadonlySet<Field> = new Set<Field>([
  'name.given',
  'name.surname',
  'alsoRead',
  'birthplace',
  'residence',
  'lastResidence',
  'occupation',
]);
