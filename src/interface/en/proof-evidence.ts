/** The evidence item by item: its headings, classes and verdicts. */
import type { Evidence } from '../../model/case.ts';
import type { Informant, SourceRecord } from '../../model/record.ts';
import { joined, type Part, type Phrase } from '../phrase.ts';

const each = (parts: readonly Part[]): Phrase[] => parts.map((part) => [part]);

const kinds: Record<Evidence['kind'], string> = {
  direct: 'direct: it says what is asked',
  indirect: 'indirect: what is asked has to be inferred from it',
  negative: 'negative: something that should be there is not',
};
const knowledges: Record<NonNullable<Informant['knowledge']>, string> = {
  primary: 'primary: was there, or did it',
  secondary: 'secondary: had it from others',
  undetermined: 'undetermined: how they knew is not known',
};
const forms: Record<SourceRecord['form'], string> = {
  original: 'original record',
  derivative: 'derivative, a copy, index or transcript',
  authored: 'authored, somebody’s own account',
};
const seen: Record<NonNullable<SourceRecord['seen']>, string> = {
  original: 'in the original',
  image: 'as an image',
  film: 'on microfilm',
  transcript: 'in a transcript only',
  report: 'as somebody reported it',
};

export const evidence = {
  caption:
    'Every item of the case, cited or not, with the three classes a proof is read by: the source, the information and the evidence',
  none: 'No evidence has been brought to bear on this case yet.',
  columns: {
    item: 'Item, and how it counts',
    says: 'What it says, and of whom',
    worth: 'Where that comes from, and what it is worth',
  },
  /** The classes of an item in a few words, as the head of what unfolds. */
  classes: (
    sources: readonly SourceRecord['form'][],
    information: readonly NonNullable<Informant['knowledge']>[],
    kind: Evidence['kind'],
  ): string =>
    [
      sources.length > 0 && `${sources.join(' and ')} source`,
      information.length > 0 && `${information.join(' and ')} information`,
      `${kind} evidence`,
    ]
      .filter(Boolean)
      .join(', '),
  terms: {
    says: 'Says',
    ofWhom: 'Of whom',
    search: 'Search',
    readAs: 'Read as',
    against: 'Against',
    source: 'Source',
    informant: 'Informant',
    information: 'Information',
    restsOn: 'Rests on',
    evidence: 'Evidence',
    tie: 'Tie',
    author: 'The author',
  },
  aSearch: 'A search',
  notShown: 'A statement of somebody not shown here.',
  kind: (kind: Evidence['kind']): string => kinds[kind],
  knowledge: (knowledge: NonNullable<Informant['knowledge']>): string => knowledges[knowledge],
  form: (form: SourceRecord['form']): string => forms[form],
  nothingSaid: 'nothing under this heading',
  theName: 'the name',
  /** “birthplace: “Kill””. */
  says: (heading: string, words: Phrase, inferred: boolean): Phrase => [
    `${heading}: `,
    ...words,
    inferred ? ' (inferred; the record does not say it outright)' : '',
  ],
  present: 'present',
  notPresent: 'named, but not there',
  /** A date of a voyage under its key. */
  dated: (key: 'sailed' | 'arrived', date: string): string => `${key} ${date}`,
  somebodyNotNamed: 'somebody not named',
  takenForNobody: (name: Part, role: string): Phrase => [
    name,
    `${role ? `, ${role}` : ''}; not yet taken to be anybody`,
  ],
  takenFor: (name: Part, role: string, person: Part, kin: string): Phrase => [
    name,
    `${role ? `, ${role}` : ''}; taken to be `,
    person,
    kin ? `, the subject’s ${kin}` : '',
  ],
  notKnown: 'not known',
  asItsExemplar: 'that of the record it derives from',
  whoNotKnown: 'undetermined: who spoke is not known',
  toldBy: (tellers: readonly Part[]): Phrase => [', who had it from ', ...joined(each(tellers))],
  oneOf: (people: readonly Part[]): Phrase => [
    'one of ',
    ...joined(each(people), ' or '),
    ', not known which',
  ],
  from: (record: Part): Phrase => ['from ', record],
  fromUnseen: (text: string): Phrase => [`from ${text}, not examined`],
  fromPerhaps: (record: Part): Phrase => ['perhaps from ', record],
  also: (phrases: readonly Phrase[]): Phrase => joined(phrases),
  roots: (phrases: readonly Phrase[]): Phrase => joined(phrases, '; and ', '; '),
  /** The class of a source, how it was seen and what it derives from; `title` where there are several. */
  source: (
    title: string | undefined,
    form: SourceRecord['form'],
    as: SourceRecord['seen'],
    from: readonly Phrase[],
  ): Phrase => [
    title === undefined ? '' : `${title}: `,
    forms[form],
    as ? `; seen ${seen[as]}` : '; how it was seen is not said',
    ...(from.length > 0 ? ['; ', ...joined(from)] : []),
  ],

  nothingYet: 'Nothing is concluded yet, so nothing counts yet',
  counts: (place: string, atIt: boolean, letter: string, misses: string | null): string =>
    `Counts ${atIt ? `at ${place}` : `from ${place} upward`}: line ${letter}${misses === null ? '' : `, which misses ${misses}`}`,
  /** Items joined to the line of another; `instead` are places where they are counted in its place. */
  adds: (head: string, letter: string, instead: readonly string[]): string =>
    `Adds nothing beside ${head}, whose line ${letter} it shares${there(instead)}`,
  runsAlongside: (head: string, letter: string, instead: readonly string[]): string =>
    `Runs alongside line ${letter}: not shown to be independent of ${head}${there(instead)}`,
  conflicts: (place: string, answered: boolean): string =>
    `Conflicts with ${place}: ${answered ? 'answered' : 'not answered'}`,
  doesNotCount: (why: string): string => `Does not count: ${why}`,
};

function there(places: readonly string[]): string {
  if (places.length === 0) return '';
  const all = places.length < 2 ? places[0] : `${places.slice(0, -1).join(', ')} and ${places.at(-1)}`;
  return `; counted in its place at ${all}`;
}
