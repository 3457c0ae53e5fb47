/** A question of several words: the documents that hold all of them, or else those that hold the most. */
import { kindOf, kinds, type Contents, type Kind } from '../../src/dossier/search/format.ts';
import { wordsIn } from '../../src/dossier/search/words.ts';
import type { Asked, Hit, Hits, LookUp } from './lookup.ts';

export interface Found {
  document: number;
  kind: Kind;
  hits: readonly Hit[];
}

export interface Answer {
  /** What was asked, folded. */
  words: readonly string[];
  /** Whether every document of it holds all of the words. */
  whole: boolean;
  /** How many there are of each kind. */
  counts: Readonly<Record<Kind, number>>;
  total: number;
  /** The first of them, of one kind or of all. */
  best(count: number, kind?: Kind): Found[];
}

/** Of a longer question the rest is not looked at. */
const mostWords = 8;

/** What a kind adds: a person before the hundred records that name them. */
const weights: Record<Kind, number> = { case: 1.3, person: 2, place: 1.7, record: 1, search: 0.7 };

/** The words of a question; the last may go on, unless a space follows it. */
export function wordsOfQuestion(question: string): Asked[] {
  const words = wordsIn(question, true);
  const goesOn = words.at(-1)?.end === question.length;
  const last = words.at(-1)?.word;
  const distinct = [...new Map(words.map((one) => [one.word, one])).values()];
  return distinct
    .slice(0, mostWords)
    .map(({ word, stem }) => ({ word, stem, begun: goesOn && word === last }));
}

/** Answers a question. One without a word is answered by nothing. */
export async function answer(question: string, lookUp: LookUp, contents: Contents): Promise<Answer> {
  const asked = wordsOfQuestion(question);
  const each = await Promise.all(asked.map((one) => lookUp.word(one)));
  return combined(
    asked.map(({ word }) => word),
    each,
    contents,
  );
}

/** Puts together what was found for each word. */
export function combined(words: readonly string[], each: readonly Hits[], contents: Contents): Answer {
  const inAll = documentsInAll(each);
  const whole = inAll.length > 0 || words.length < 2;
  const documents = whole ? inAll : [...new Set(each.flatMap((hits) => [...hits.keys()]))];
  const ranked = documents.map((document) => rankedOf(document, each, contents.counts));
  const counts = Object.fromEntries(kinds.map((kind) => [kind, 0])) as Record<Kind, number>;
  for (const { kind } of ranked) counts[kind]++;
  return {
    words,
    whole,
    counts,
    total: ranked.length,
    best: (count, kind) =>
      first(kind ? ranked.filter((one) => one.kind === kind) : ranked, count).map((one) => ({
        document: one.document,
        kind: one.kind,
        hits: each.flatMap((hits) => hits.get(one.document) ?? []),
      })),
  };
}

function documentsInAll(each: readonly Hits[]): number[] {
  const [smallest, ...others] = [...each].sort((a, b) => a.size - b.size);
  if (!smallest) return [];
  return [...smallest.keys()].filter((document) => others.every((hits) => hits.has(document)));
}

interface Ranked {
  document: number;
  kind: Kind;
  /** Words it lacks, then how far its words are from those typed. */
  far: number;
  score: number;
}

function rankedOf(document: number, each: readonly Hits[], counts: readonly number[]): Ranked {
  let far = 0;
  let score = 0;
  for (const hits of each) {
    const hit = hits.get(document);
    far += hit ? hit.tier : 100;
    score += hit?.score ?? 0;
  }
  const kind = kindOf(counts, document);
  return { document, kind, far, score: score * weights[kind] };
}

const before = (a: Ranked, b: Ranked): boolean =>
  a.far !== b.far ? a.far < b.far : a.score !== b.score ? a.score > b.score : a.document < b.document;

/** The first of a list in their order, without sorting what comes after them. */
function first(list: readonly Ranked[], count: number): Ranked[] {
  const kept: Ranked[] = [];
  for (const one of list) {
    const last = kept.at(-1);
    if (kept.length === count && last && !before(one, last)) continue;
    let at = kept.length;
    while (at > 0 && before(one, kept[at - 1]!)) at--;
    kept.splice(at, 0, one);
    if (kept.length > count) kept.pop();
  }
  return kept;
}
