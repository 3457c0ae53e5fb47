/** The proof page: its sections, lists and notes. */
import { joined, type Part, type Phrase } from '../phrase.ts';
import { everywhere } from './everywhere.ts';
import { evidence } from './proof-evidence.ts';
import { pairs, roots, ties } from './relations.ts';
import { sightLines } from './sight-lines.ts';

const { numberWord } = everywhere;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const each = (parts: readonly Part[]): Phrase[] => parts.map((part) => [part]);

export const proof = {
  title: 'Proof',
  kicker: (person: string): string => `Proof · ${person}`,
  description: (question: string): string => `The evidence and how it is weighed: ${question}`,
  cases: 'Cases',
  margin: 'The proof',
  standing: 'Standing',
  person: 'Person',
  independentItems: 'Independent items at the place',
  onThisPage: 'On this page',
  seeAlso: 'See also',
  theStory: 'The story',
  whatNext: 'What to search next',
  howToRead: 'How to read this page',
  somebodyNotShown: 'somebody not shown here',
  recordNotShown: 'a record not shown here',

  sections: {
    conclusion: 'The conclusion',
    openCase: 'An open case',
    workingIdea: 'A working idea',
    lines: 'Sight lines',
    support: 'How far the evidence reaches',
    argument: 'The author’s argument',
    evidence: 'The evidence, item by item',
    who: 'Who is who',
    independence: 'What depends on what',
    conflicts: 'Conflicts',
    aside: 'Places set aside',
    families: 'Candidate families',
    searches: 'Searches',
    overturn: 'What would overturn it',
    points: 'Reviewer’s points',
    beside: 'Beside the family',
    check: 'What the check says',
    reviews: 'Reviews',
    notes: 'Notes',
    citing: 'Citing this page, and cautions',
  },

  roots,
  pairs,
  ties,
  sightLines,
  evidence,

  /** A mention taken to be a person, and the items that use it. */
  stake: (name: Part, person: Part, items: readonly Part[]): Phrase => [
    name,
    ' is taken to be ',
    person,
    items.length === 1 ? '; used by ' : '; used by items ',
    ...joined(each(items)),
    '.',
  ],

  support: {
    caption: 'Independent items of evidence at the place and at each place above it',
    place: 'Place',
    kind: 'Kind',
    independent: 'Independent',
    countedAs: 'Counted as',
    reaches: 'All that reaches it',
    lines: (letters: readonly string[]): string => ` (lines ${letters.join(', ')})`,
    nothingYet: 'nothing yet',
  },

  independence: {
    dependent: 'Not independent',
    noneDependent: 'No two cited items are known to depend on each other.',
    undetermined: 'Not determined',
    noneUndetermined: 'No pair of cited items is left in doubt.',
    argued: 'Independent by argument',
    noneArgued: 'No pair stands on an argument of the author’s.',
  },

  provenance: {
    label: 'Where the information of each cited item comes from; the list below says the same in words.',
    meet: 'Follow the lines from each item to its sources. Where two items run into one box, they rest on one source and are not independent; such boxes have a heavy outline.',
    apart: 'Follow the lines from each item to its sources. No two items run for certain into one box.',
    key: 'Boxes: plain, an original record; with a second line at the left, a copy; with a cut corner, somebody’s own account; open at the right, an exemplar not examined; rounded, who spoke. Unbroken lines are certain, broken ones only possible.',
    inWords: 'The provenance in words',
    perhaps: 'perhaps ',
    shared: ' (shared)',
    unseen: (text: string): string => `${text}, not examined`,
    described: 'an informant described',
    unknown: 'an informant not known',
    columns: {
      item: 'Item',
      spoke: 'Who spoke',
      record: 'Record',
      derives: 'Record it derives from',
    },
  },

  conflicts: {
    none: 'No evidence of the case conflicts.',
    aside: 'Answered by setting the place aside:',
    answered: 'Answered:',
    notAnswered: 'Not answered.',
    whileItStands: 'While this stands, the place cannot be called proved.',
    thePlace: 'the place',
    anotherPlace: 'another place',
    speaksAgainst: (item: Part, place: Part): Phrase => [item, ' speaks against ', place, '.'],
    readAs: (item: Part, said: Phrase | undefined, place: Part): Phrase => [
      item,
      ...(said ? [' says ', ...said, ', which'] : []),
      ' is read as ',
      place,
      '.',
    ],
    /** A conflict that names no place: what it is about, and the items that differ. */
    about: (about: string | undefined, between: readonly Part[]): Phrase => [
      about === undefined ? 'On a point without a place' : `On ${about}`,
      ...(between.length > 0 ? [', ', ...joined(each(between)), ' differ.'] : ['.']),
    ],
  },

  searches: {
    none: 'No search is logged for this case.',
    logged: (all: number, nothing: number): string =>
      `${all === 1 ? 'One search is' : `${capital(numberWord(all))} searches are`} logged; ${nothing === 0 ? 'none came back with nothing' : nothing === 1 ? 'one found nothing' : `${numberWord(nothing)} found nothing`}.`,
    register: 'The register of searches',
    caption: 'Searches logged for the family and for others who would fit',
    search: 'Search',
    seriesAndYears: 'Series and years',
    series: 'Series',
    whom: 'For',
    where: 'Where',
    result: 'Result',
    notSaid: 'not said',
  },

  beside: {
    intro: (family: string): string =>
      `Who keeps turning up beside ${family}, in records that are not copies of one another, and may have come from the same place. They are leads, not evidence.`,
    caption: 'Those of whom a record says where they came from, or whom accident hardly explains',
    who: 'Who',
    besideAs: 'Beside the family as',
    besideShort: 'Beside as',
    chanceOf: 'Chance of that',
    chance: 'Chance',
    saidFrom: 'Said to be from',
    from: 'From',
    noRecordSays: 'no record says',
    everyone: (family: string): string => `Everyone beside ${family}`,
    left: (n: number): string =>
      n === 1 ? ', with 1 other who comes back' : `, with ${n} others who come back`,
  },

  check: {
    nothing: 'The check has nothing more to say about this case.',
    error: 'Error',
    warning: 'Warning',
    hint: 'Hint',
  },

  notes: {
    none: 'Nothing is cited on this page yet.',
    all: (n: number): string =>
      n === 1 ? 'The note, with its record' : `All ${n} notes, with their records`,
    record: 'Record',
    recordOf: (number: number): string => `The record of note ${number}`,
  },

  citing: {
    page: (question: string): string => `“${question}” Proof page, in `,
    content: (digest: string): string => `content ${digest},`,
    asOf: (date: string): string => `as of ${date},`,
    address: 'address and the day you read it',
    digest: 'The content of this case, with everything it rests on, has the digest',
    signs: 'A reviewer signs this digest; if anything changes, so does the digest.',
    cautions: 'Cautions',
    caution: [
      'The conclusion is a reasoned opinion on the evidence seen, open to revision.',
      'It is no legal proof of descent, inheritance or citizenship; those need certified copies and the competent authority.',
      'Unexpected parentage, adoption or a cause of death may hurt living relatives: ask first.',
      'Follow the privacy law where you publish, and the reuse terms of the archives whose images are shown.',
    ],
    method: 'How standings are worked out',
  },

  notComputed: {
    lead: 'This case could not be computed.',
    why: 'Something it rests on is broken, so nothing can be said about how firmly it stands.',
    /** Between them stands the name of the file. */
    mend: (file: Phrase, line: number): Phrase => ['To be mended first, in ', ...file, `, line ${line}:`],
  },
};
