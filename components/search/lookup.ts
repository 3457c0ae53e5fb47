/** One typed word: every document it is found in, and by which word. */
import {
  partOf,
  partsAtPrefix,
  relationOf,
  type Contents,
  type FormRow,
} from '../../src/dossier/search/format.ts';
import { alike, fatherKeys, sharedDigits, soundsOf, stemOf } from '../../src/dossier/search/spelling.ts';
import type { Parts } from './load.ts';
import { wordIndex, type FoundIn, type WordIndex } from './word-index.ts';

/**
 * How good a find is, the best first: a name as typed; a name of which the typed one is another spelling; running text
 * as typed; a name that looks or sounds like it; running text with another spelling.
 */
export const tiers = ['name', 'other name', 'text', 'like name', 'other text'] as const;
const tier = (of: (typeof tiers)[number]): number => tiers.indexOf(of);

/** Why a word was found that was not typed. */
export type Reason =
  | { how: 'same' | 'used' | 'prefix' | 'near' | 'sound' }
  | { how: 'given'; of: string; forms: string }
  | { how: 'father' | 'like'; of: string };

/** How a typed word was found in a document. */
export interface Hit {
  tier: number;
  score: number;
  /** The words of the document it was found by, as keys. */
  match: object;
  typed: string;
  /** Absent where it was found as typed, or begun so. */
  reason?: Reason;
}

/** A word of names that stands for a typed one. */
interface Other {
  reason: Reason;
  /** The form of it that was typed, or begun. */
  typed: string;
  weight: number;
}

interface Sounding {
  oneSound: boolean;
  /** The catalogue of names knows it. */
  isKnown: boolean;
}

export type Hits = ReadonlyMap<number, Hit>;

/** From how many letters on other spellings are looked for; of a word still being typed, and of a whole one. */
const shortest = { begun: 3, whole: 2, alike: 4 };
/** Names are looked through for what begins with so many letters, running text for so many. */
const shortestBeginning = { names: 2, text: 3 };
/** Running text is not looked through for fewer letters at all. */
const shortestText = 2;
/** Of a beginning that spans more of the index, only so many parts are fetched. */
const mostParts = 4;

/** A typed word. */
export interface Asked {
  word: string;
  /** It may go on. */
  begun: boolean;
  /** What is left of it without a prefix written as one. */
  stem?: string | undefined;
}

export interface LookUp {
  /** The documents a word is found in. */
  word(asked: Asked): Promise<Hits>;
}

/** Looks words up in the parts of an index. */
export function lookUpIn(parts: Parts, contents: Contents): LookUp {
  const documents = contents.counts.reduce((sum, count) => sum + count, 0);
  const indexes = new Map<string, Promise<WordIndex>>();
  const answers = new Map<string, Promise<Hits>>();

  const indexOf = (table: 'names' | 'text', part: number): Promise<WordIndex> => {
    const key = `${table} ${part}`;
    let index = indexes.get(key);
    if (!index) {
      index = parts.rows(table, part).then((rows) => wordIndex(table, rows, documents));
      indexes.set(key, index);
      index.catch(() => indexes.delete(key));
    }
    return index;
  };

  const partsFor = async (table: 'names' | 'text', word: string, begun: boolean): Promise<WordIndex[]> => {
    const firsts = contents.parts[table];
    if (firsts.length === 0) return [];
    const wanted = begun ? partsAtPrefix(firsts, word).slice(0, mostParts) : [partOf(firsts, word)];
    return Promise.all(wanted.map((part) => indexOf(table, part)));
  };

  const find = async (table: 'names' | 'text', word: string, begun = false): Promise<FoundIn[]> => {
    const reaches = begun && word.length >= shortestBeginning[table];
    return (await partsFor(table, word, reaches)).flatMap((index) => index.find(word, reaches));
  };

  /** Rows of a sorted table whose keys begin with some letters, or are them. */
  const rowsAt = async <T extends 'forms' | 'sounds'>(table: T, key: string, begun: boolean) => {
    const firsts = contents.parts[table];
    if (firsts.length === 0) return [];
    const wanted = begun ? partsAtPrefix(firsts, key).slice(0, mostParts) : [partOf(firsts, key)];
    const rows = (await Promise.all(wanted.map((part) => parts.rows(table, part)))).flat();
    return rows.filter((row) => (begun ? row[0].startsWith(key) : row[0] === key));
  };

  /** Other words of names that stand for a typed one, the surest reason first. */
  const others = async ({ word, begun, stem = stemOf(word) }: Asked): Promise<Map<string, Other>> => {
    const found = new Map<string, Other>();
    const add = (target: string, other: Other) => {
      if (target !== word && other.weight > (found.get(target)?.weight ?? 0)) found.set(target, other);
    };
    const isLetters = !/\p{N}/u.test(word);
    const [forms, byStem, fathers, sounds, beside] = await Promise.all([
      rowsAt('forms', word, begun && word.length >= shortest.begun),
      stem === undefined ? [] : rowsAt('forms', stem, false),
      Promise.all(fatherKeys(word).map((key) => rowsAt('forms', key, false))),
      word.length < shortest.alike ? new Map<string, Sounding>() : soundsLike(word),
      isLetters && word.length >= shortest.alike ? partsFor('names', word, false) : [],
    ]);
    const relate = ([form, ...relations]: FormRow, typed = form) => {
      // A form that is only begun says less than one typed to its end.
      const sure = form === word || typed === word ? 1 : 0.9;
      for (const { target, ...reason } of relations.map(relationOf))
        add(target, { reason, typed, weight: sure * weightOf(reason) });
    };
    for (const row of forms) relate(row);
    for (const row of [...byStem, ...fathers.flat()]) relate(row, word);
    if (stem !== undefined) add(stem, { reason: { how: 'prefix' }, typed: word, weight: 0.9 });
    const known = forms.some(([form]) => form === word);
    for (const [other, { oneSound, isKnown }] of sounds) {
      const likeness = alike(word, other, oneSound, isKnown && (known || sounds.get(word)?.isKnown === true));
      if (likeness && !found.has(other))
        add(other, { reason: { how: likeness.how }, typed: word, weight: likeness.likeness ** 3 });
    }
    // Words that begin as this one does stand beside it, whatever they sound like.
    for (const other of beside.flatMap(({ words }) => words)) {
      if (found.has(other) || (begun && other.startsWith(word)) || !isNearInLength(word, other)) continue;
      const likeness = alike(word, other, false, known && !sounds.has(other));
      if (likeness) add(other, { reason: { how: 'near' }, typed: word, weight: likeness.likeness ** 3 });
    }
    return found;
  };

  /** Words of names whose sound begins as that of a word. */
  const soundsLike = async (word: string) => {
    const codes = soundsOf(word);
    const beginnings = [...new Set(codes.map((code) => code.slice(0, sharedDigits)))];
    const rows = (await Promise.all(beginnings.map((beginning) => rowsAt('sounds', beginning, true)))).flat();
    const found = new Map<string, Sounding>();
    for (const [code, ...words] of rows)
      for (const marked of words) {
        const isKnown = marked.endsWith('=');
        const other = isKnown ? marked.slice(0, -1) : marked;
        found.set(other, { oneSound: codes.includes(code) || found.get(other)?.oneSound === true, isKnown });
      }
    return found;
  };

  const look = async (asked: Asked): Promise<Hits> => {
    const { word, begun } = asked;
    const hits = new Map<number, Hit>();
    const add = (document: number, hit: Hit) => {
      const known = hits.get(document);
      if (!known || hit.tier < known.tier || (hit.tier === known.tier && hit.score > known.score))
        hits.set(document, hit);
    };
    const [names, text, related] = await Promise.all([
      find('names', word, begun),
      word.length < shortestText ? [] : find('text', word, begun),
      word.length < shortest.whole ? new Map<string, Other>() : others(asked),
    ]);
    for (const { document, score, match } of names)
      add(document, { tier: tier('name'), score, match, typed: word });
    for (const { document, score, match } of text)
      add(document, { tier: tier('text'), score, match, typed: word });
    await Promise.all(
      [...related].map(async ([other, { reason, typed, weight }]) => {
        const isLike = ['near', 'sound', 'like'].includes(reason.how);
        const [inNames, inText] = await Promise.all([
          find('names', other),
          isLike ? [] : find('text', other),
        ]);
        const hit = (at: number, { score, match }: FoundIn): Hit => ({
          tier: at,
          score: score * weight,
          match,
          typed,
          reason,
        });
        for (const found of inNames)
          add(found.document, hit(tier(isLike ? 'like name' : 'other name'), found));
        for (const found of inText) add(found.document, hit(tier('other text'), found));
      }),
    );
    return hits;
  };

  return {
    word(asked) {
      const key = `${asked.begun ? '' : '='}${asked.word} ${asked.stem ?? ''}`;
      let answer = answers.get(key);
      if (!answer) {
        answers.set(key, (answer = look(asked)));
        answer.catch(() => answers.delete(key));
      }
      return answer;
    },
  };
}

/** Words whose lengths differ by more than a third share too few letters. */
const isNearInLength = (a: string, b: string): boolean =>
  b.length >= shortest.alike && Math.abs(a.length - b.length) * 3 <= Math.max(a.length, b.length);

/** Spellings of one name weigh more than names used for one another, and these more than two forms of a third. */
function weightOf(reason: Reason): number {
  if (reason.how === 'like') return 0.4;
  if (reason.how === 'used') return 0.7;
  return reason.how === 'given' && !reason.forms.includes('n') ? 0.55 : 0.8;
}
