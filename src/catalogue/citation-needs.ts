/**
 * What a citation of each kind of source needs so that somebody else can find the same entry again: who made it,
 * what and where in it, when, and which office holds it or who published it. Common practice in the trade; the
 * item types and variables are those of CSL 1.0.2.
 */
import type { Citation } from '../model/citation.ts';

type Variable = Exclude<keyof Citation, 'type'>;

/** One element: any one of the variables gives it. */
export interface NeededElement {
  anyOf: readonly Variable[];
  /** Its name in a sentence. */
  words: string;
}

const what: NeededElement = {
  anyOf: ['title', 'genre', 'container-title'],
  words: 'a title or a word for what it is',
};
const title: NeededElement = { anyOf: ['title'], words: 'its title' };
const author: NeededElement = {
  anyOf: ['author', 'editor', 'compiler', 'authority', 'director', 'composer', 'organizer'],
  words: 'who wrote or compiled it',
};
const date: NeededElement = {
  anyOf: ['issued', 'event-date', 'original-date', 'submitted', 'available-date'],
  words: 'its date',
};
const holder: NeededElement = {
  anyOf: ['archive', 'publisher', 'URL', 'source'],
  words: 'the archive or office that holds it',
};
const holderPlace: NeededElement = {
  anyOf: ['archive-place', 'publisher-place', 'event-place', 'jurisdiction', 'URL', 'source'],
  words: 'the place of the archive or office',
};
const where: NeededElement = {
  anyOf: [
    'page',
    'number',
    'volume',
    'section',
    'call-number',
    'archive_location',
    'archive_collection',
    'locator',
    'issue',
    'chapter-number',
  ],
  words: 'where in the volume or collection it stands (volume, page, number or call number)',
};
const container: NeededElement = {
  anyOf: ['container-title', 'collection-title'],
  words: 'the work it appeared in',
};
const publication: NeededElement = {
  anyOf: ['publisher', 'publisher-place', 'archive', 'URL'],
  words: 'its publisher or place of publication',
};
const newspaper: NeededElement = { anyOf: ['container-title'], words: 'the name of the newspaper' };
const newspaperPlace: NeededElement = {
  anyOf: ['publisher-place', 'archive-place', 'event-place'],
  words: 'the town of the newspaper',
};
const page: NeededElement = { anyOf: ['page', 'section', 'URL'], words: 'the page' };
const writer: NeededElement = { anyOf: ['author'], words: 'who wrote it' };
const reader: NeededElement = { anyOf: ['recipient'], words: 'to whom it was written' };
const speaker: NeededElement = { anyOf: ['author'], words: 'who spoke' };
const asker: NeededElement = {
  anyOf: ['interviewer', 'contributor', 'compiler'],
  words: 'who asked and wrote it down',
};
const court: NeededElement = {
  anyOf: ['authority', 'archive', 'jurisdiction'],
  words: 'the court or authority',
};
const address: NeededElement = { anyOf: ['URL', 'archive'], words: 'its web address' };
const seenOn: NeededElement = { anyOf: ['accessed', 'archive'], words: 'the day it was looked at' };

const kept = [what, date, where, holder, holderPlace];
const published = [author, title, publication, date];
const inSomething = [title, container, date, page];
const press = [newspaper, newspaperPlace, date, page];
const fromACourt = [what, court, date, where];
const onTheWeb = [title, address, seenOn];

/** The elements a citation of each type needs. */
export const citationNeeds: Readonly<Record<Citation['type'], readonly NeededElement[]>> = {
  article: published,
  'article-journal': inSomething,
  'article-magazine': inSomething,
  'article-newspaper': press,
  bill: fromACourt,
  book: published,
  broadcast: [what, date, publication],
  chapter: inSomething,
  classic: [title],
  collection: [what, holder, holderPlace],
  dataset: [what, date, holder],
  document: kept,
  entry: inSomething,
  'entry-dictionary': [title, container, date],
  'entry-encyclopedia': [title, container, date],
  event: [what, date, holderPlace],
  figure: [what, date, holder],
  graphic: [what, date, holder, holderPlace],
  hearing: fromACourt,
  interview: [speaker, asker, date],
  legal_case: fromACourt,
  legislation: [title, court, date],
  manuscript: kept,
  map: [title, date, holder],
  motion_picture: [title, date],
  musical_score: [title, date, publication],
  pamphlet: published,
  'paper-conference': inSomething,
  patent: fromACourt,
  performance: [title, date],
  periodical: [{ ...container, anyOf: ['title', 'container-title'] }, date],
  personal_communication: [writer, reader, date, holder],
  post: onTheWeb,
  'post-weblog': onTheWeb,
  regulation: [title, court, date],
  report: published,
  review: inSomething,
  'review-book': inSomething,
  software: [title, publication],
  song: [title, date],
  speech: [writer, what, date],
  standard: [title, author, date],
  thesis: [writer, title, publication, date],
  treaty: [title, date],
  webpage: onTheWeb,
};

/** A stone stands where it stands: no office holds it, and its place in the ground is what finds it again. */
const stone: readonly NeededElement[] = [
  what,
  { anyOf: ['event-place', 'archive-place'], words: 'the cemetery and its place' },
];
const stoneWords = /\b(?:grave ?stone|head ?stone|tomb ?stone|monument|memorial|inscription)/i;

/**
 * The elements a citation lacks, in words that end the sentence “The citation does not give …”, in the order in which
 * a note has them. Empty when nothing is lacking; one element for a record with no citation at all.
 */
export function missingElements(cite: Citation | undefined): string[] {
  if (cite === undefined) return ['a citation'];
  const needs = stoneWords.test(`${cite.medium ?? ''} ${cite.genre ?? ''}`)
    ? stone
    : citationNeeds[cite.type];
  return needs
    .filter(({ anyOf }) => !anyOf.some((variable) => isGiven(cite[variable])))
    .map(({ words }) => words);
}

function isGiven(value: Citation[Variable]): boolean {
  return Array.isArray(value) ? value.some((name) => Object.keys(name).length > 0) : value !== undefined;
}
