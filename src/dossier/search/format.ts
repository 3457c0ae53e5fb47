/**
 * How the index is laid down in files. Every table is a list of rows sorted by their keys and cut into parts of a
 * size; the first key of each part stands in the contents, so that a reader fetches only the part a word falls into.
 * A part is a script, since a page opened from a folder may run scripts and nothing else.
 */

/** What can be looked up, in the order in which documents are numbered. */
export const kinds = ['case', 'person', 'place', 'record', 'search'] as const;
export type Kind = (typeof kinds)[number];

/**
 * The tables. `names`: words of titles and names → documents. `text`: words of running text → documents. `forms`: a way
 * of writing a name → the words of names it stands for. `sounds`: a sound code → words of names. `cards`: what is shown
 * of a document, by its number.
 */
export const tables = ['names', 'text', 'forms', 'sounds', 'cards'] as const;
export type Table = (typeof tables)[number];

/**
 * Word, then the documents it is in, as steps: for `names` those it is in the title of, those it is another name of, and
 * those that name it among others; for `text` those it stands in. Empty ones at the end are left out.
 */
export type WordRow = readonly [word: string, ...fields: Steps[]];

/** Numbers of documents as steps from one to the next, doubled; an odd one is followed by how often the word is there. */
export type Steps = readonly number[];

/**
 * How a form of a name came to stand for a word. `same` and `used`: surnames. `given`: two forms of the given name
 * `of`, `forms` saying by a letter each how they are: first the one typed, then the one found. `father`: patronymics
 * that both say the father was called `of`. `like`: a surname the catalogue lacks, nearly spelled as `of`, which the
 * typed one is a form of.
 */
export type Relation =
  | { target: string; how: 'same' | 'used' }
  | { target: string; how: 'given'; of: string; forms: string }
  | { target: string; how: 'father' | 'like'; of: string };

/** A form of a name and the words it stands for, each as `relationText` writes it. */
export type FormRow = readonly [form: string, ...relations: string[]];

const signs = { same: '=', used: '~', given: '.', father: '+', like: '?' } as const;

/** A relation as a row holds it: `phelan~`, `bridget.dn`, `delia.di Bridget`, `johannesen+John`,
 * `faolan?Faelan`. */
export function relationText(relation: Relation): string {
  const start = relation.target + signs[relation.how];
  if (relation.how === 'father' || relation.how === 'like') return start + relation.of;
  if (relation.how !== 'given') return start;
  // Where the word found is the name itself, the name needn’t be said.
  const isItself = relation.of.toLowerCase() === relation.target;
  return `${start}${relation.forms}${isItself ? '' : ` ${relation.of}`}`;
}

/** The relation a row holds. */
export function relationOf(text: string): Relation {
  const at = text.search(/[=~.+?]/);
  const target = text.slice(0, at);
  const rest = text.slice(at + 1);
  if (text[at] === signs.father) return { target, how: 'father', of: rest };
  if (text[at] === signs.like) return { target, how: 'like', of: rest };
  if (text[at] !== signs.given) return { target, how: text[at] === signs.same ? 'same' : 'used' };
  const named = target.charAt(0).toUpperCase() + target.slice(1);
  return { target, how: 'given', forms: rest.slice(0, 2), of: rest.length > 2 ? rest.slice(3) : named };
}

/** A sound code and the words that have it; those the catalogue of names knows have an `=` behind them. */
export type SoundRow = readonly [code: string, ...words: string[]];

/** What is shown of a document: its file’s name, title, facts in a line, other names, and its running text. */
export type Card = readonly [
  id: string,
  title: string,
  facts: string,
  names: readonly string[],
  text: string,
];

export interface Contents {
  /** The number of documents of each kind, in the order of `kinds`. */
  counts: readonly number[];
  /** The first key of each part of each table; of `cards` the first number. */
  parts: Readonly<Record<Exclude<Table, 'cards'>, readonly string[]>> & { cards: readonly number[] };
}

/** The function a part hands its rows to, on the window. */
export const receiver = 'lookUp';

/** The file of the contents, and of a part. */
export const contentsName = 'contents';
export function partName(table: Table, part: number): string {
  return `${table}-${part}`;
}

/** A file: a name and what is handed over, as a script. */
export function script(name: string, json: string): string {
  return `${receiver}(${JSON.stringify(name)},${scriptSafe(json)});\n`;
}

/** JSON as a script may hold it; a name in it could otherwise end the line for older browsers. */
function scriptSafe(json: string): string {
  return json.replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029');
}

/** How often a word stands in a text makes no difference beyond this. */
const mostOften = 9;

/** Documents in ascending order, each with how often, as steps. */
export function stepsOf(documents: readonly number[], often?: readonly number[]): number[] {
  const steps: number[] = [];
  let last = 0;
  documents.forEach((document, i) => {
    const times = Math.min(often?.[i] ?? 1, mostOften);
    const step = 2 * (document - last);
    last = document;
    if (times > 1) steps.push(step + 1, times);
    else steps.push(step);
  });
  return steps;
}

/** Goes through the documents of a row. */
export function eachStep(steps: Steps, take: (document: number, often: number) => void): void {
  let document = 0;
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i]!;
    document += step >> 1;
    take(document, step & 1 ? steps[++i]! : 1);
  }
}

/** Where a key would stand: the part of a table that begins at or before it; the first part for what comes before all. */
export function partOf<Key extends string | number>(firsts: readonly Key[], key: Key): number {
  let low = 0;
  let high = firsts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (firsts[middle]! <= key) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}

/** The parts that may hold keys beginning with some letters. */
export function partsAtPrefix(firsts: readonly string[], prefix: string): number[] {
  if (firsts.length === 0) return [];
  const found = [partOf(firsts, prefix)];
  for (let next = found[0]! + 1; next < firsts.length && firsts[next]!.startsWith(prefix); next++)
    found.push(next);
  return found;
}

/** Which kind a document is of, by its number. */
export function kindOf(counts: readonly number[], document: number): Kind {
  let first = 0;
  for (const [at, count] of counts.entries()) {
    first += count;
    if (document < first) return kinds[at]!;
  }
  throw new RangeError(`There is no document ${document}.`);
}

/** The address of a document’s page, from the root of the site. */
export function addressOf(kind: Kind, id: string): string {
  if (kind === 'search') return `searches.html#search-${id}`;
  return `${{ case: 'cases', person: 'people', place: 'places', record: 'records' }[kind]}/${id}.html`;
}
