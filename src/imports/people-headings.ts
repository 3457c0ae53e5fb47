/**
 * What the columns of a table of people hold, by their headings.
 *
 * Rule (common practice): the words under which lists, indexes and exports of databases keep such things, in the
 * languages of the countries that people left and went to.
 */
import { foldName } from '../reasoning/names/fold.ts';

/** What a column can be taken for. */
export const columnUses = [
  'id',
  'name',
  'given',
  'surname',
  'sex',
  'age',
  'year',
  'birth-date',
  'birth-year',
  'birth-month',
  'birth-day',
  'birthplace',
  'residence',
  'occupation',
  'spouse',
  'father',
  'mother',
  'arrival-year',
  'text',
  'ignore',
] as const;
export type ColumnUse = (typeof columnUses)[number];

/** Words of a heading, letters and digits only, by use. */
const words: Partial<Record<ColumnUse, string>> = {
  id: `id recid recordid recno recordno recordnumber rowid row rowno rownumber rownr rownum uid uuid guid pid personid indid
    individualid histid serial serialno index idx key nr no number lfdnr lopnr loepenr lobenr nummer ref reference personnr
    id1 id2 ida idb idnumber idno entryid entryno x unnamed0`,
  name: `name fullname names personname nameasenumerated namn navn nom nome nombre navnet wholename completename nomcomplet
    vollername fulltnavn nameofperson headname`,
  given: `given givenname givennames givn first firstname firstnames fname fnm forename forenames christianname christian
    christianname1 vorname vornamen rufname rufnamen fornavn fornamn prenom prenoms voornaam voornamen nombrepropio
    nombredepila prename namefrst namefirst firstnm firstgiven imie etunimi nomedibattesimo skirnarnafn
    firstnameclean fnameclean personalname`,
  surname: `surname surnames surn last lastname lastnames lname lnm family familyname nachname familienname zuname etternavn
    efternavn efternamn slaktsnamn slaegtsnavn nomdefamille patronyme achternaam familienaam apellido apellidos cognome
    namelast lastnm sname nazwisko sukunimi byname farmname lastnameclean lnameclean`,
  sex: 'sex gender geschlecht kjonn kjnn kon kn koen sexe geslacht sexo sesso',
  age: `age ageyears agey alter alder aar lder leeftijd edad eta ageinyears statedage recordedage agestated ageatcensus agerep`,
  year: `year yr censusyear cyear recordyear eventyear surveyyear yearofcensus listyear jahr zahljahr aar ar annee jaar ano anno`,
  'birth-date': `birthdate dateofbirth dob birth born bdate dateborn geburtsdatum geboren geborenam geburtstag fodselsdato
    fdselsdato fodt fdt fodd fdd fodelsedatum fdelsedatum datedenaissance naissance nele geboortedatum fechadenacimiento datadinascita baptismdate
    dateofbaptism baptised baptized`,
  'birth-year': `birthyear yearofbirth yob by byear byr birthyr yearborn bornyear geburtsjahr gebjahr fodselsar
    fdselsr fdselsaar fodselsaar fodtaar anneedenaissance anneenaissance geboortejaar aodenacimiento anonacimiento annodinascita
    estbirthyear estimatedbirthyear approxbirthyear approximatebirthyear imputedbirthyear birthyearest ybirth ybir fodaar foedaar`,
  'birth-month': `birthmonth monthofbirth mob bm bmonth bmo birthmo geburtsmonat gebmonat fodselsmaned moisdenaissance
    geboortemaand mbirth`,
  'birth-day': `birthday dayofbirth dayob bd bday birthdy geburtstagtag gebtag jourdenaissance geboortedag dbirth`,
  birthplace: `birthplace placeofbirth bpl bplace pob birthpl bornin birthlocation nativeplace nativity nativityplace origin
    placeoforigin geburtsort herkunft herkunftsort fodested fdested fodselssted fdselssted fodelseort fdelseort lieudenaissance
    geboorteplaats lugardenacimiento luogodinascita birthcounty countyofbirth birthcountry countryofbirth birthparish
    birthtownland parishofbirth townlandofbirth birthtown townofbirth birthstate native nativecounty countyoforigin`,
  residence: `residence address addr dwelling place location locality town townland village parish county city suburb
    township ward district street state province region lastresidence wohnort adresse anschrift ort bosted bopel hjemsted
    domicile residencia woonplaats residenza residencecounty residenceplace placeofresidence county1 countyofresidence civilparish barony
    postcode postalcode zip zipcode plz address1 address2 streetaddress streetname streetnumber ded union enumerationdistrict sogn
    gard gaard farm country`,
  occupation: `occupation occ occup trade profession job employment work beruf stand stilling yrke erhverv metier beroep ocupacion
    professione calling rank`,
  spouse: `spouse wife husband spousename wifename husbandname nameofspouse nameofwife nameofhusband ehefrau ehegatte ehepartner
    ektefelle hustru kone aegtefaelle make epouse conjoint echtgenoot spousegiven spousefirstname spgiven wifesname spousesname`,
  father: `father fathername fathersname nameoffather dad fathergiven fatherfirstname fathersgivenname vater far pere vader
    padre vatername farsnavn popname fathersfirstname`,
  mother: `mother mothername mothersname nameofmother mothergiven motherfirstname mutter mor mere moeder madre mutername
    morsnavn momname mothersfirstname`,
  'arrival-year': `arrival arrivalyear yearofarrival immigration immigrationyear yearofimmigration immyear immyr yrimmig yearimm
    immigrated emigrationyear yearofemigration emigrated einwanderung einwanderungsjahr ankunft ankomst innvandret
    invandrad arrived yrarrival yrarr arrivaldate dateofarrival immigyear`,
  ignore: `match matched truth true cluster clusterid entid entity entityid identity linkid trueid label dup duplicate
    matchid groupid goldid pairid ismatch link`,
};

/** Headings of what stands behind the first given name. */
const furtherNames = new Set(
  'middle middlename middlenames middleinitial mi mname secondname zweitervorname mellomnavn mellannamn'.split(
    ' ',
  ),
);

const uses = new Map<string, ColumnUse>();
for (const [use, list] of Object.entries(words) as [ColumnUse, string][])
  for (const word of list.trim().split(/\s+/)) if (!uses.has(word)) uses.set(word, use);

/** A heading made small: letters and digits, no accents. */
export function plainHeading(heading: string): string {
  return heading
    .slice(0, 200)
    .split(/(\d+)/)
    .map((part, at) => (at % 2 === 1 ? part : foldName(part.replaceAll('_', ' ')).replaceAll(' ', '')))
    .join('');
}

export interface HeadingGuess {
  use: ColumnUse;
  /** Of several columns of one use, the first counts and the others follow: fname_c1 before fname_c2. */
  order: number;
  /** A year that stands in the heading: age_1880. */
  year?: number;
}

/**
 * What a heading says its column holds; nothing where it says nothing known. Numbers of parts (`_c1`, `2`), years, and
 * letters for the first or second table (`_a`, `_b`) at its end are taken off before the word is looked up.
 */
export function guessOf(heading: string): HeadingGuess | undefined {
  const plain = plainHeading(heading);
  if (furtherNames.has(plain)) return { use: 'given', order: 1 };
  const found = uses.get(plain);
  if (found) return { use: found, order: 0 };
  const year = /^(.*?)_?(1[6-9]\d\d|20\d\d)$/.exec(plain);
  const dated = year && uses.get(year[1]!);
  if (dated) return { use: dated, order: 0, year: Number(year[2]) };
  const part = /^(.*?)(?:c|part|p|nr|no)?([1-9])$/.exec(plain);
  const numbered = part && uses.get(part[1]!);
  if (numbered) return { use: numbered, order: Number(part[2]) - 1 };
  const sided = /^(.*)[\s_.-](?:a|b|l|r|x|y|left|right)$/i.exec(heading.trim());
  const once = sided && uses.get(plainHeading(sided[1]!));
  return once ? { use: once, order: 0 } : undefined;
}
