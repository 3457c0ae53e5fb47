import type { people as English, Where } from '../en/people.ts';
import type { Phrase } from '../phrase.ts';

const numbers = 'ingen én to tre fire fem seks sju åtte ni ti elleve tolv'.split(' ');
const numberWord = (n: number): string => numbers[n] ?? String(n);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** En bor på gården og på øya, men i sognet og i byen. */
const on = /farm|gård|gard|bruk|plass|croft|holding|estate|island|øy/i;
const at = (where: Where | undefined): Phrase =>
  where ? [where.kind !== undefined && on.test(where.kind) ? ' på ' : ' i ', where.place] : [];

const forebears = ['Foreldre', 'Besteforeldre', 'Oldeforeldre', 'Tippoldeforeldre'];
const descendants = ['Barn', 'Barnebarn', 'Oldebarn', 'Tippoldebarn'];
const times = (n: number): string => (n === 1 ? 'én gang' : `${numberWord(n)} ganger`);

export const people: typeof English = {
  title: 'Personer',
  person: 'Person',
  personOf: (years) => `Person · ${years}`,
  description: (name, years) =>
    `${name}${years ? `, ${years}` : ''}: livet, familien og alle kilder som nevner vedkommende.`,
  somebody: 'en som ikke vises her',
  withheld: { someone: 'en nålevende person', oneOfSeveral: 'en av flere, uvisst hvem' },
  placeholder: 'Denne oppføringen holder plassen for en som vi ikke har hele navnet på.',
  margin: 'Personen',
  born: 'Født',
  died: 'Død',
  living: 'Lever',
  livingYes: 'ja, eller regnes som levende',
  recordsNaming: 'Kilder som nevner personen',
  caseHead: (n) => (n === 1 ? 'Sak' : 'Saker'),

  life: {
    title: 'Livet',
    born: (where) => ['Født', ...at(where)],
    died: (where) => ['Død', ...at(where)],
    married: (spouse, where) => (spouse ? ['Gift med ', spouse, ...at(where)] : ['Gift', ...at(where)]),
    child: (child, sex, where) => [
      sex === 'M' ? 'Sønnen ' : sex === 'F' ? 'Datteren ' : 'Barnet ',
      child,
      ' født',
      ...at(where),
    ],
    voyage: (ship, from, to) => [
      from || to ? 'Reiste' : 'Kom fram',
      from ? ` fra ${from}` : '',
      to ? ` til ${to}` : '',
      ship ? ` med ${ship}` : '',
    ],
    lived: (where) => ['Bosatt', ...at(where)],
    event: (kind, where) => [capital(kind), ...at(where)],
    aged: (age, inYears) => (inYears ? `${age} år` : `${age} gammel`),
    caption: (name) => `${name} i kildene, ordnet etter dato.`,
    noRecord: 'etter forfatterens egen oppføring',
    moreRecords: (n) => (n === 1 ? 'og én kilde til' : `og ${numberWord(n)} kilder til`),
    key: 'En fylt stasjon er det forfatteren mener har hendt, en åpen er det en kilde sier.',
    none: (name) => `Det er ikke kjent noe datert om ${name}.`,
  },

  family: {
    title: 'Familien',
    parents: 'Foreldre',
    siblings: 'Søsken',
    married: 'Gift med',
    otherParent: 'Barn med',
    ofThisMarriage: 'Barn i dette ekteskapet',
    children: 'Barn',
    otherChildren: 'Andre barn',
    none: 'Ingen slektninger er ført opp her.',
    forebears: (generation) => forebears[generation - 1] ?? 'Aner',
    descendants: (generation) => descendants[generation - 1] ?? 'Etterkommere',
    upTitle: (name) => `Anene til ${name}`,
    downTitle: (name) => `Etterkommerne til ${name}`,
    up: 'Aner',
    down: 'Etterkommere',
    marriedIn: (year) => (year ? `gift ${year}` : 'gift'),
    drawnAbove: 'tegnet ovenfor',
    drawnBelow: 'tegnet nedenfor',
    otherParentNotKnown: 'den andre forelderen er ikke kjent',
    moreChildren: (n) => `${n} barn til`,
    furtherChildren: (n) => `${n} barn`,
    step: 'Hvert trinn mot høyre er en generasjon.',
    breaks: 'En linje som brytes av: forelderen er ikke kjent.',
    couple: 'To streker over linjen: ektefelle.',
    notDrawnUp: (n) =>
      n === 1 ? 'Én ane er ikke tegnet inn.' : `${capital(numberWord(n))} aner er ikke tegnet inn.`,
    notDrawnDown: (n) =>
      n === 1
        ? 'Én etterkommer er ikke tegnet inn.'
        : `${capital(numberWord(n))} etterkommere er ikke tegnet inn.`,
    goesOnUp: 'Eldre aner er kjent.',
    goesOnDown: 'Senere ledd er kjent.',
    with: ' med ',
    asList: 'Det samme som liste',
  },

  names: {
    title: 'Navnet i kildene',
    here: 'kalt slik her',
    stands: times,
    unnamed: (n) =>
      n === 1
        ? 'Én kilde omtaler personen uten navn.'
        : `${capital(numberWord(n))} kilder omtaler personen uten navn.`,
    toSurnames: (surname) => `Alle skrivemåter av ${surname}`,
    alsoRead: 'leses av forfatteren også slik',
  },

  birth: {
    title: 'Når født',
    recordAtTheTime: 'En kilde fra samtiden setter fødselen',
    recordsAgree: 'Kildene er enige om en fødsel',
    oneRecord: 'Én kilde setter fødselen',
    author: 'Forfatteren setter fødselen',
    outside: (outside, of) =>
      `${capital(numberWord(outside))} av ${numberWord(of)} ligger utenfor. Aldersangivelser svinger, og det alene gjør ingen til en annen person.`,
    unknown: 'Ingen kilde som vises her, oppgir en alder eller en fødsel å regne fra.',
    says: {
      born: (date) => `Født ${date}`,
      age: (age, span) => `Alder ${age}: født ${span}`,
      event: (kind, date, span) => `${capital(kind)} ${date}: født ${span}`,
    },
    fixes: 'Skrevet innen to år etter fødselen.',
    outsideLabel: 'Utenfor:',
    caption: (has) =>
      `${[
        'Hver stolpe går fra den første til den siste fødselsdagen kilden tillater',
        has.band && 'båndet gjennom radene er tidsrommet de er enige om',
        has.fixes && 'en trekant merker en kilde skrevet ved fødselen',
        has.outside && 'en åpen stolpe med kryss over ligger utenfor',
      ]
        .filter(Boolean)
        .join('; ')}.`,
  },

  records: {
    title: 'Kilder som nevner personen',
    none: (name) =>
      `Ingen kilde som vises her, nevner ${name}; det som er kjent, kommer fra forfatterens egen oppføring.`,
    written: 'skrevet',
    notNamed: 'ikke nevnt ved navn',
  },

  index: {
    description: 'Alle som forfatteren mener er ett og samme menneske, ordnet etter etternavn.',
    lede: 'Hver av disse er forfatterens slutning om at bestemte funn i kildene gjelder ett og samme menneske.',
    people: 'Personer',
    surnames: 'Etternavn',
    nameNotKnown: 'Ukjent navn',
    mentions: (n) => `${n} funn`,
    none: 'Ingen vises her.',
    toSurnames: 'Alle etternavn med alle skrivemåter',
    filter: 'Finn et navn',
    byName: 'etternavn',
    byBirth: 'fødsel',
    byMentions: 'antall funn',
    count: (n) => (n === 1 ? '1 person' : `${n} personer`),
    bornIn: 'født',
  },

  surnames: {
    title: 'Etternavn',
    description: 'Alle etternavn på personene og i kildene her, med alle skrivemåter.',
    lede: 'Et etternavn ble skrevet slik skriveren hørte det. Skrivemåter som navnesammenligningen regner som ett navn, står sammen, hver med årene og stedene der den finnes.',
    spellings: 'Skrivemåter',
    names: 'Etternavn',
    filter: 'Finn en skrivemåte',
    spelled: 'Skrevet',
    times,
    inEntries: 'av forfatteren',
    where: 'Hvor',
    who: 'Hvem',
    morePeople: (n) => `${n} til`,
    nobodyYet: 'bare folk som ennå ikke er knyttet til noen person',
    sound: (codes) => `I registre ordnet etter lyd: ${codes.join(', ')}`,
    alike: 'Lyder som',
    patronymics: 'Et patronym sier hva faren het, og er ikke noe slektsnavn.',
    patronymic: 'patronym',
    farm: 'også gårdsnavn',
    how: 'Slik sammenlignes navn',
    byName: 'navn',
    byMentions: 'hvor ofte',
    byYear: 'første år',
    none: 'Ingen etternavn er skrevet her.',
  },
};
