/** One person on a page: the life, the family, the names and ages in the records; and the lists of people. */
import type { Phrase, Part } from '../phrase.ts';

const numbers = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');
const numberWord = (n: number): string => numbers[n] ?? String(n);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** A place in a sentence: what it is called, with its kind where that is known. */
export interface Where {
  place: Part;
  kind?: string | undefined;
}

type Sex = 'M' | 'F' | undefined;

const at = (where: Where | undefined): Phrase => (where ? [' in ', where.place] : []);
const forebears = ['Parents', 'Grandparents', 'Great-grandparents', 'Great-great-grandparents'];
const descendants = ['Children', 'Grandchildren', 'Great-grandchildren', 'Great-great-grandchildren'];

export const people = {
  title: 'People',
  person: 'Person',
  personOf: (years: string): string => `Person · ${years}`,
  description: (name: string, years: string): string =>
    `${name}${years ? `, ${years}` : ''}: life, family, and every record that names them.`,
  somebody: 'somebody not shown here',
  /** What stands in the author’s texts for someone living. */
  withheld: { someone: 'a living person', oneOfSeveral: 'one of several people, not known which' },
  placeholder: 'This entry holds a place for somebody whose name is not fully known.',
  margin: 'The person',
  born: 'Born',
  died: 'Died',
  living: 'Living',
  livingYes: 'yes, or presumed so',
  recordsNaming: 'Records that name them',
  caseHead: (n: number): string => (n === 1 ? 'Case' : 'Cases'),

  /** The line of a life. */
  life: {
    title: 'Life',
    born: (where?: Where): Phrase => ['Born', ...at(where)],
    died: (where?: Where): Phrase => ['Died', ...at(where)],
    married: (spouse: Part | undefined, where?: Where): Phrase =>
      spouse ? ['Married ', spouse, ...at(where)] : ['Married', ...at(where)],
    child: (child: Part, sex: Sex, where?: Where): Phrase => [
      `Birth of a ${sex === 'M' ? 'son' : sex === 'F' ? 'daughter' : 'child'}, `,
      child,
      ...(where ? [', in ', where.place] : []),
    ],
    /** A journey; whatever is not known of it is left out. */
    voyage: (ship?: string, from?: string, to?: string): Phrase => [
      from || to ? 'Sailed' : 'Arrived',
      from ? ` from ${from}` : '',
      to ? ` to ${to}` : '',
      ship ? ` in the ${ship}` : '',
    ],
    lived: (where?: Where): Phrase => ['Living', ...at(where)],
    /** Another event by its kind: “Confirmation, ‘Leikanger’”. */
    event: (kind: string, where?: Where): Phrase => [capital(kind), ...at(where)],
    aged: (age: string, inYears: boolean): string => (inYears ? `aged ${age}` : `${age} old`),
    caption: (name: string): string => `${name} in the records, in date order.`,
    noRecord: 'by the author’s own entry',
    moreRecords: (n: number): string =>
      n === 1 ? 'and one more record' : `and ${numberWord(n)} more records`,
    key: 'A full station stands for what the author takes to have happened, an open one for what a record says.',
    none: (name: string): string => `Nothing dated is known of ${name}.`,
  },

  /** The family around somebody, drawn and as a list. */
  family: {
    title: 'Family',
    parents: 'Parents',
    siblings: 'Brothers and sisters',
    married: 'Married',
    otherParent: 'Children with',
    ofThisMarriage: 'Children of this marriage',
    children: 'Children',
    otherChildren: 'Other children',
    none: 'No relatives are recorded here.',
    /** Forebears of a generation above the parents, descendants of one below the children; 1 is the nearest. */
    forebears: (generation: number): string => forebears[generation - 1] ?? 'Forebears',
    descendants: (generation: number): string => descendants[generation - 1] ?? 'Descendants',
    upTitle: (name: string): string => `The forebears of ${name}`,
    downTitle: (name: string): string => `The descendants of ${name}`,
    up: 'Forebears',
    down: 'Descendants',
    marriedIn: (year: string): string => (year ? `married ${year}` : 'married'),
    drawnAbove: 'drawn above',
    drawnBelow: 'drawn below',
    otherParentNotKnown: 'other parent not known',
    moreChildren: (n: number): string => (n === 1 ? '1 more child' : `${n} more children`),
    furtherChildren: (n: number): string => (n === 1 ? '1 child' : `${n} children`),
    step: 'Each step to the right is a generation.',
    breaks: 'A line that breaks off: no parent is known.',
    couple: 'Two strokes across the line: husband or wife.',
    notDrawnUp: (n: number): string =>
      n === 1 ? 'One forebear is not drawn.' : `${capital(numberWord(n))} forebears are not drawn.`,
    notDrawnDown: (n: number): string =>
      n === 1 ? 'One descendant is not drawn.' : `${capital(numberWord(n))} descendants are not drawn.`,
    goesOnUp: 'Earlier forebears are known.',
    goesOnDown: 'Later generations are known.',
    with: ' with ',
    asList: 'The same as a list',
  },

  /** Names as the records write them. */
  names: {
    title: 'Names in the records',
    here: 'called so here',
    stands: (times: number): string => (times === 1 ? 'once' : times === 2 ? 'twice' : `${times} times`),
    unnamed: (n: number): string =>
      n === 1
        ? 'One record speaks of them without a name.'
        : `${capital(numberWord(n))} records speak of them without a name.`,
    toSurnames: (surname: string): string => `All spellings of ${surname}`,
    alsoRead: 'the author also reads it so',
  },

  /** What the records say of somebody’s age. */
  birth: {
    title: 'When born',
    recordAtTheTime: 'A record made at the time puts the birth',
    recordsAgree: 'The records agree on a birth',
    oneRecord: 'One record puts the birth',
    author: 'The author puts the birth',
    outside: (outside: number, of: number): string =>
      `${capital(numberWord(outside))} of ${numberWord(of)} ${outside === 1 ? 'lies' : 'lie'} outside. Ages wobbled, and this alone makes nobody a different person.`,
    unknown: 'No record shown here gives an age or a birth to reckon from.',
    says: {
      born: (date: string): string => `Born ${date}`,
      age: (age: string, span: string): string => `Age ${age}: born ${span}`,
      event: (kind: string, date: string, span: string): string => `${capital(kind)} ${date}: born ${span}`,
    },
    fixes: 'Made within two years of the birth.',
    outsideLabel: 'Outside:',
    caption: (has: { band: boolean; fixes: boolean; outside: boolean }): string =>
      `${[
        'Each bar runs from the first to the last day of birth that the record allows',
        has.band && 'the band through the rows is the span they agree on',
        has.fixes && 'a triangle marks a record made at the birth',
        has.outside && 'a hollow bar with a cross above it lies outside',
      ]
        .filter(Boolean)
        .join('; ')}.`,
  },

  records: {
    title: 'Records that name them',
    none: (name: string): string =>
      `No record shown here names ${name}; what is known comes from the author’s own entry.`,
    written: 'written',
    notNamed: 'not named',
  },

  /** The list of everybody. */
  index: {
    description: 'Everyone the author takes to be one human being, by surname.',
    lede: 'Each of these is the author’s conclusion that certain mentions in records are one human being.',
    people: 'People',
    surnames: 'Surnames',
    nameNotKnown: 'Name not known',
    mentions: (n: number): string => counted(n, 'mention'),
    none: 'Nobody is shown here.',
    toSurnames: 'Every surname with all its spellings',
    filter: 'Find a name',
    byName: 'surname',
    byBirth: 'birth',
    byMentions: 'mentions',
    count: (n: number): string => counted(n, 'person', 'people'),
    bornIn: 'born',
  },

  /** Surnames with their spellings. */
  surnames: {
    title: 'Surnames',
    description: 'Every surname of the people and records here, with all its spellings.',
    lede: 'A surname was spelled as the clerk heard it. Spellings that the comparison of names takes for one name stand together, each with the years and places in which it stands.',
    spellings: 'Spellings',
    names: 'Surnames',
    filter: 'Find a spelling',
    spelled: 'Spelled',
    times: (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`),
    inEntries: 'by the author',
    where: 'Where',
    who: 'Who',
    morePeople: (n: number): string => `${n} more`,
    nobodyYet: 'only people not yet known to be anybody',
    /** Codes by which some indexes of an archive are arranged. */
    sound: (codes: readonly string[]): string => `In indexes arranged by sound: ${codes.join(', ')}`,
    alike: 'Sounds like',
    patronymics: 'A patronymic says what the father was called, and is no family’s name.',
    patronymic: 'patronymic',
    farm: 'also a farm’s name',
    how: 'How names are compared',
    byName: 'name',
    byMentions: 'how often',
    byYear: 'first year',
    none: 'No surname is written here.',
  },
};
