/** An index read without a browser: what a page would get by scripts, straight from the index. */
import { answer, type Answer } from '../../../components/search/answer.ts';
import { partsBy, type Parts } from '../../../components/search/load.ts';
import { lookUpIn } from '../../../components/search/lookup.ts';
import type { Document } from '../../../src/dossier/search/documents.ts';
import { kinds, partOf, receiver, type Card, type Contents } from '../../../src/dossier/search/format.ts';
import { indexOf, type SearchIndex } from '../../../src/dossier/search/index.ts';

export interface OpenedIndex {
  contents: Contents;
  /** Names of the files asked for so far. */
  asked: string[];
  ask(question: string): Promise<Answer>;
  card(document: number): Promise<Card>;
  /** Titles of what a question finds, the best first, with the reasons told. */
  titles(question: string, count?: number): Promise<string[]>;
}

/** Opens an index. */
export async function opened({ files }: SearchIndex): Promise<OpenedIndex> {
  const asked: string[] = [];
  const parts: Parts = partsBy((name) => {
    asked.push(name);
    const file = files.get(name);
    if (file === undefined) return Promise.reject(new Error(`no file ${name}`));
    return new Promise((resolve) => {
      new Function(receiver, file)((_name: string, given: unknown) => resolve(given));
    });
  });
  const contents = await parts.contents();
  const lookUp = lookUpIn(parts, contents);
  const ask = (question: string) => answer(question, lookUp, contents);
  const card = async (document: number) => {
    const part = partOf(contents.parts.cards, document);
    return (await parts.rows('cards', part))[document - contents.parts.cards[part]!]!;
  };
  return {
    contents,
    asked,
    ask,
    card,
    titles: async (question, count = 20) =>
      Promise.all((await ask(question)).best(count).map(async ({ document }) => (await card(document))[1])),
  };
}

/** The index of a few documents, given with what matters of them. */
export function ofDocuments(list: readonly (Partial<Document> & { title: string })[]): Promise<OpenedIndex> {
  const documents = list.map((document, i): Document => ({
    kind: 'person',
    id: `d${i}`,
    facts: '',
    names: [],
    text: '',
    ...document,
  }));
  documents.sort((a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind));
  return opened(indexOf(documents));
}
