/**
 * The index of everything that can be looked up, as the files it is published in. Made when it is first asked for, once
 * for each dossier; the same content makes the same bytes.
 */
import { createHash } from 'node:crypto';
import type { Dossier } from '../types.ts';
import { cut, type Part } from './cut.ts';
import { documentsOf, type Document } from './documents.ts';
import {
  contentsName,
  kinds,
  partName,
  script,
  stepsOf,
  tables,
  type Card,
  type Contents,
  type Table,
} from './format.ts';
import { formRows, soundRows } from './relations.ts';
import { stemOf } from './spelling.ts';
import { wordsIn } from './words.ts';

/** About how many characters a part of a table has. Cards are asked for a few at a time, from all over. */
const sizes: Record<Table, number> = {
  names: 40_000,
  text: 40_000,
  forms: 40_000,
  sounds: 40_000,
  cards: 12_000,
};

export interface SearchIndex {
  /** Changes whenever any file of it does. */
  edition: string;
  /** Scripts by their names, without folder or ending. */
  files: ReadonlyMap<string, string>;
  /** How many there are of each kind, in the order of `kinds`. */
  counts: readonly number[];
}

const made = new WeakMap<Dossier, SearchIndex>();

/** The index of a dossier. */
export function searchIndex(dossier: Dossier): SearchIndex {
  let index = made.get(dossier);
  if (!index) made.set(dossier, (index = indexOf(documentsOf(dossier))));
  return index;
}

/** The index of documents, which stand in the order of their kinds. */
export function indexOf(documents: readonly Document[]): SearchIndex {
  const { names, text } = inverted(documents);
  const vocabulary = [...names.keys()].sort();
  const rows: Record<Table, Iterable<readonly [string, string]>> = {
    names: vocabulary.map((word) => [word, JSON.stringify([word, ...stepsOfFields(names.get(word)!)])]),
    text: [...text.keys()].sort().map((word) => {
      const { list, often } = text.get(word)!;
      return [word, JSON.stringify([word, stepsOf(list, often)])];
    }),
    forms: formRows(vocabulary).map((row) => [row[0], JSON.stringify(row)]),
    sounds: soundRows(vocabulary).map((row) => [row[0], JSON.stringify(row)]),
    cards: documents.map((document, i) => [String(i), JSON.stringify(cardOf(document))]),
  };
  const files = new Map<string, string>();
  const firsts = {} as Record<Table, string[]>;
  for (const table of tables) {
    const parts: Part[] = cut(rows[table], sizes[table]);
    firsts[table] = parts.map(({ first }) => first);
    parts.forEach(({ json }, i) => files.set(partName(table, i), script(partName(table, i), json)));
  }
  const counts = kinds.map((kind) => documents.filter((document) => document.kind === kind).length);
  const contents: Contents = { counts, parts: { ...firsts, cards: firsts.cards.map(Number) } };
  files.set(contentsName, script(contentsName, JSON.stringify(contents)));
  const digest = createHash('sha256');
  for (const file of files.values()) digest.update(file);
  return { edition: digest.digest('hex').slice(0, 10), files, counts };
}

/** The fields of a word as steps, without empty ones at the end. */
function stepsOfFields(fields: readonly (readonly number[])[]): number[][] {
  const steps = fields.map((list) => stepsOf(list));
  while (steps.at(-1)?.length === 0) steps.pop();
  return steps;
}

function cardOf({ id, title, facts, names, text }: Document): Card {
  return [id, title, facts, names, text];
}

/** Words of titles and of other names, each with the documents it is in; words of text, with how often too. */
interface Inverted {
  names: Map<string, [titles: number[], names: number[], named: number[]]>;
  text: Map<string, { list: number[]; often: number[] }>;
}

function inverted(documents: readonly Document[]): Inverted {
  const names: Inverted['names'] = new Map();
  const text: Inverted['text'] = new Map();
  const addName = (word: string, field: 0 | 1 | 2, document: number) => {
    let lists = names.get(word);
    if (!lists) names.set(word, (lists = [[], [], []]));
    const list = lists[field];
    if (list.at(-1) !== document) list.push(document);
  };
  const addNames = (string: string, field: 0 | 1 | 2, document: number) => {
    for (const { word, stem: own } of nameWords(string)) {
      addName(word, field, document);
      const stem = own ?? stems.get(word);
      if (stem !== undefined) addName(stem, field, document);
    }
  };
  const stems = new Map<string, string | undefined>();
  /** Names come back again and again, so that each is taken apart once. */
  const known = new Map<string, ReturnType<typeof wordsIn>>();
  const nameWords = (string: string) => {
    let words = known.get(string);
    if (!words) {
      known.set(string, (words = wordsIn(string)));
      for (const { word } of words) if (!stems.has(word)) stems.set(word, stemOf(word));
    }
    return words;
  };
  documents.forEach((document, number) => {
    addNames(document.title, 0, number);
    const field = document.kind === 'person' || document.kind === 'place' ? 1 : 2;
    for (const name of document.names) addNames(name, field, number);
    for (const { word } of wordsIn(document.text)) {
      let entry = text.get(word);
      if (!entry) text.set(word, (entry = { list: [], often: [] }));
      const last = entry.list.length - 1;
      if (entry.list[last] === number) entry.often[last]!++;
      else {
        entry.list.push(number);
        entry.often.push(1);
      }
    }
  });
  return { names, text };
}
