/** A part of the index of words, as the library that searches it takes it. */
import MiniSearch, { type AsPlainObject } from 'minisearch';
import { eachStep, type WordRow } from '../../src/dossier/search/format.ts';

/** The fields of the two tables of words. */
export const fields = { names: ['title', 'name', 'named'], text: ['text'] } as const;

/** A document that holds a word. */
export interface FoundIn {
  document: number;
  score: number;
  /** The words it was found by, as keys. */
  match: object;
}

export interface WordIndex {
  /** The documents that hold a word, or one that begins with it. */
  find(word: string, begun: boolean): FoundIn[];
  /** Every word of the part. */
  words: readonly string[];
}

/** How long a text is makes no difference here: a list of a whole village is no worse a find than a card. */
const bm25 = { k: 1.2, b: 0, d: 0.5 };
/** The index of some rows of a table. `documents` is how many there are in all. */
export function wordIndex(
  table: keyof typeof fields,
  rows: readonly WordRow[],
  documents: number,
): WordIndex {
  const index = MiniSearch.loadJS(plainObject(table, rows, documents), {
    fields: [...fields[table]],
    tokenize: (text) => [text],
    processTerm: (term) => term,
    searchOptions: { bm25, boost: { title: 2, name: 2 }, weights: { prefix: 0.8, fuzzy: 0 } },
  });
  return {
    words: rows.map(([word]) => word),
    find: (word, begun) =>
      index
        .search(word, { prefix: begun })
        .map(({ id, score, match }) => ({ document: id as number, score, match })),
  };
}

/** Rows in the form in which the library keeps an index of its own. */
export function plainObject(
  table: keyof typeof fields,
  rows: readonly WordRow[],
  documents: number,
): AsPlainObject {
  const documentIds: Record<string, number> = {};
  const fieldLength: Record<string, number[]> = {};
  const lengths = fields[table].map(() => 1);
  const index = rows.map(([word, ...lists]): AsPlainObject['index'][number] => {
    const entry: Record<string, Record<string, number>> = {};
    lists.forEach((steps, field) => {
      if (steps.length === 0) return;
      const documentsOfField: Record<string, number> = {};
      eachStep(steps, (document, often) => {
        documentsOfField[document] = often;
        documentIds[document] = document;
        fieldLength[document] = lengths;
      });
      entry[field] = documentsOfField;
    });
    return [word, entry];
  });
  return {
    documentCount: documents,
    nextId: documents,
    documentIds,
    fieldIds: Object.fromEntries(fields[table].map((field, i) => [field, i])),
    fieldLength,
    averageFieldLength: lengths,
    storedFields: {},
    index,
    serializationVersion: 2,
  };
}
