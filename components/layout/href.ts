/**
 * The site's addresses, each written once. Every page is one file under the root of the site; the writer of the
 * site makes these paths relative, so nothing else may spell one out.
 */
export const home = '/index.html';
export const peopleIndex = '/people.html';
export const recordsIndex = '/records.html';
export const placesIndex = '/places.html';
export const rulesIndex = '/rules.html';
export const examplesIndex = '/examples.html';
export const associates = '/associates.html';
export const journeys = '/journeys.html';
export const journeysCsv = '/journeys.csv';
export const sources = '/sources.html';
/** The whole library, for reference managers. */
export const libraryJson = '/library.json';
export const libraryBibtex = '/library.bib';
export const searches = '/searches.html';
export const method = '/method.html';
/** How people in different records are compared. */
export const whoMethod = `${method}#who`;
/** How travelling parties and chains are found. */
export const journeysMethod = `${method}#journeys`;
/** How candidate families are compared. */
export const familiesMethod = `${method}#candidates`;
export const readingAProof = '/guide/reading-a-proof.html';
export const guidesIndex = '/guide.html';
export const ids = '/ids.html';
export const about = '/about.html';

export const caseStory = (id: string): string => `/cases/${id}.html`;
export const caseProof = (id: string): string => `/cases/${id}/proof.html`;
/** All that is known of a case as JSON-LD. */
export const caseLinkedData = (id: string): string => `/cases/${id}.jsonld`;
export const casePlan = (id: string): string => `/cases/${id}/plan.html`;
/** The sheet on which a reviewer answers. */
export const caseReview = (id: string): string => `/cases/${id}/review.html`;
/** The reviews on the proof page of a case. */
export const reviewsOf = (id: string): string => `${caseProof(id)}#_reviews`;
export const evidence = (caseId: string, evidenceId: string): string => `${caseProof(caseId)}#${evidenceId}`;
export const record = (id: string): string => `/records/${id}.html`;
export const person = (id: string): string => `/people/${id}.html`;
export const place = (id: string): string => `/places/${id}.html`;
export const rule = (id: string): string => `/rules/${id}.html`;
export const guide = (id: string): string => `/guide/${id}.html`;
export const example = (id: string): string => `/examples/${id}.html`;
/** One sentence of the rules of proof, in the list of worked examples. */
export const exampleSentence = (key: string): string => `${examplesIndex}#${key}`;

/** Those beside one family, by its first subject. */
export const associatesOf = (family: string): string => `/associates/${family}.html`;
/** One associate in the list of those beside a family. */
export const associate = (family: string, id: string): string => `${associatesOf(family)}#associate-${id}`;
/** All sightings of associates as a table for spreadsheets. */
export const associatesCsv = '/associates.csv';
/** How often a name comes back by accident. */
export const associatesMethod = `${method}#associates`;
/** One search in the log. */
export const search = (id: string): string => `${searches}#search-${id}`;
/** One entry of the source list. */
export const source = (recordId: string): string => `${sources}#source-${recordId}`;
/** One mention on its record's page. */
export const mention = (ref: string): string => {
  const at = ref.indexOf('#');
  return `${record(ref.slice(0, at))}#mention-${ref.slice(at + 1)}`;
};
/** A built-in place or series in the list of ids. */
export const builtIn = (id: string): string => `${ids}#id-${id}`;
/** Where one looks things up as one types. */
export const find = '/search.html';
/** Surnames with all their spellings. */
export const surnames = '/surnames.html';
/** One surname in that list. */
export const surname = (id: string): string => `${surnames}#surname-${id}`;
/** How the site looks, and why. */
export const style = '/style.html';
/** New and changed cases, for feed readers. */
export const feed = '/feed.xml';
/** The picture beside a link to the home page, and to a case. */
export const cardOfHome = '/cards/home.png';
export const cardOfCase = (id: string): string => `/cards/cases/${id}.png`;
