/**
 * Names with something between given name and surname: other names of the same person (“Nora Mary Quillinan”), or other
 * people of one surname (“Nora, Tom and Ann Quillinan”; “Quillinan, Tom and Nora”), or a title (“Quillinan, Miss Nora”).
 *
 * Lists put whole names one after the other: “Nora Burke, Patrick Quillinan” names no Nora Quillinan, nor does “Mary
 * Burke John Tobin” name a Mary Tobin. So before a comma or “and” a given name stands alone, and of two unknown words
 * between the second is not the given name of somebody else.
 */
import { givenFormsOf } from '../reasoning/names/lookup.ts';
import { remarkWords, titles } from '../reasoning/names/name-words.ts';
import { foldWord, isSmall, tokenAfter as wordAfter, type Token } from './living-fold.ts';

interface Named {
  words: readonly string[];
}

const tokenAfter = (text: string, end: number) => wordAfter(text, end, 12);

/** Between the names of one person. */
const close = /^[\s_\-‐‑.·'"“”‘’«»()/+*~]*$/;
/** Between people: a comma, a sign for “and”. */
const comma = /^["”’)]?\s*,\s*["“‘(]?$/;
const isSign = (gap: string): boolean => /^(?:,\s?)?[&/+]$/.test(gap.trim());
const and = new Set(['and', 'og', 'und', 'et', 'och', 'en', 'y', 'e']);
const kin = new Set(
  `his her their hennes hans deres sin sitt the a brother sister husband wife son daughter cousin twin brothers sisters
  bror broren søster søsteren mann mannen kone kona konen sønn sønnen datter datteren fetter kusine tvilling late`
    .split(/\s+/)
    .map(foldWord),
);
const isTitle = (word: string): boolean => titles.has(word) || word === 'froken';
/** Words with a capital that are no names. */
const noPart = new Set(
  `county parish street road avenue church cemetery city town township north south east west saint river lake
  then there they she he it when after before`.split(/\s+/),
);

const isInitial = ({ raw }: Token): boolean => /^\p{L}$/u.test(raw) && !isSmall(raw);
const isGivenName = (word: string): boolean => givenFormsOf(word).length > 0;

/** Whether a word can be part of a name. In ids nothing has a capital, so only known names and initials can. */
function isPart(token: Token, ids: boolean): boolean {
  const { raw, word } = token;
  if (word === '' || /\d/.test(raw) || isTitle(word) || noPart.has(word)) return false;
  if (word.length > 1 && remarkWords.has(word)) return false;
  return ids ? word.length === 1 || isGivenName(word) : !isSmall(raw);
}

/** A full stop ends a sentence, unless it is that of an initial or a short word. */
const endsSentence = (gap: string, before: string): boolean => gap.includes('. ') && before.length > 5;

/** Where the surname of a given name that ends at `end` is found farther on. */
export function surnameFartherOn<One extends Named>(
  text: string,
  given: string,
  end: number,
  bySurname: ReadonlyMap<string, readonly One[]>,
  ids: boolean,
): { found: One; end: number } | undefined {
  const initialOnly = given.length === 1;
  let joined = false;
  let people = false;
  /** The words since the last comma or “and”. */
  let group: Token[] = [];
  let before = given;
  let at = end;
  for (let i = 0; i < 10 && at - end < 100; i++) {
    const token = tokenAfter(text, at);
    if (!token) return undefined;
    const isClose = close.test(token.gap) && !endsSentence(token.gap, before);
    if (isClose && group.length > 0 && (!people || joined)) {
      const found = surnameAt(text, token, bySurname);
      if (found && couldBeOne(group)) return found;
    }
    const hasSign = isSign(token.gap) && !(token.gap.trim() === '/' && !people && i > 0);
    const parts = and.has(token.word) && (isClose || comma.test(token.gap));
    if (parts || (!isClose && (hasSign || comma.test(token.gap)))) {
      // Before a comma or “and” one given name stands, perhaps with initials.
      if (initialOnly || group.filter((one) => !isInitial(one)).length > (people ? 1 : 0)) return undefined;
      if (people && group.length === 0 && !(parts && !joined)) return undefined;
      people = true;
      joined ||= parts || hasSign;
      group = [];
      if (parts) {
        before = token.word;
        at = token.end;
        continue;
      }
    } else if (!isClose) return undefined;
    if (people && joined && group.length === 0 && kin.has(token.word) && (isSmall(token.raw) || ids)) {
      before = token.word;
      at = token.end;
      continue;
    }
    if (!isPart(token, ids) || (initialOnly && !isInitial(token))) return undefined;
    group.push(token);
    if (group.filter((one) => !isInitial(one)).length > 2 || group.length > 3) return undefined;
    before = token.word;
    at = token.end;
  }
  return undefined;
}

function couldBeOne(group: readonly Token[]): boolean {
  const [first, second] = group.filter((one) => !isInitial(one));
  return !first || !second || isGivenName(first.word) || !isGivenName(second.word);
}

/** A surname that begins with a token. */
function surnameAt<One extends Named>(
  text: string,
  token: Token,
  bySurname: ReadonlyMap<string, readonly One[]>,
): { found: One; end: number } | undefined {
  for (const found of bySurname.get(token.word) ?? []) {
    const end = wordsOn(text, token.end, found.words.slice(2));
    if (end !== undefined) return { found, end };
  }
  return undefined;
}

function wordsOn(text: string, from: number, words: readonly string[]): number | undefined {
  let end = from;
  for (const word of words) {
    const token = tokenAfter(text, end);
    if (token?.word !== word || !close.test(token.gap)) return undefined;
    end = token.end;
  }
  return end;
}

/** A surname, by the words behind its first, with those who bear it by their given names. */
export interface Bearers<One> {
  rest: readonly string[];
  byGiven: Map<string, One>;
}

/** Where a given name is found behind a surname that begins a list: “Quillinan, Tom and Nora”. */
export function givenFartherOn<One>(
  text: string,
  start: number,
  end: number,
  ofSurname: readonly Bearers<One>[],
  ids: boolean,
): { found: One; end: number } | undefined {
  for (const { rest, byGiven } of ofSurname) {
    const after = wordsOn(text, end, rest);
    if (after === undefined || !/^["”’)]?\s*[,:]/.test(text.slice(after, after + 4))) continue;
    const found = givenBehind(text, start, after, byGiven, ids);
    if (found) return found;
  }
  return undefined;
}

function givenBehind<One>(
  text: string,
  start: number,
  end: number,
  givens: ReadonlyMap<string, One>,
  ids: boolean,
): { found: One; end: number } | undefined {
  let titled = false;
  let joined = false;
  let group = 0;
  let at = end;
  for (let i = 0; i < 8 && at - end < 80; i++) {
    const token = tokenAfter(text, at);
    if (!token) return undefined;
    const isComma = comma.test(token.gap);
    const isClose = close.test(token.gap);
    if (i === 0 && !isComma && !/^\s*:\s*$/.test(token.gap)) return undefined;
    if (!isComma && !isClose && !isSign(token.gap) && i > 0) return undefined;
    if (isTitle(token.word) && group === 0) {
      titled = true;
      at = token.end;
      continue;
    }
    const parts = and.has(token.word);
    if ((parts || isSign(token.gap)) && group > 0) joined = true;
    if ((isComma && i > 0) || isSign(token.gap)) group = 0;
    if (parts) {
      group = 0;
      at = token.end;
      continue;
    }
    const found = givens.get(token.word);
    if (found && group === 0 && (joined || titled) && (ids || !isSmall(token.raw) || token.word.length > 1)) {
      return isInList(text, start, token.end, titled && !joined) ? undefined : { found, end: token.end };
    }
    if (!isPart(token, ids) || ++group > 2) return undefined;
    if (group === 2 && !isInitial(token)) return undefined;
    at = token.end;
  }
  return undefined;
}

/** Whether whole names stand in a row: “Patrick Quillinan, Nora Burke”. */
export function isInList(text: string, start: number, end: number, both = true): boolean {
  const after = /^\s+(\p{Lu}\p{L}+)/u.exec(text.slice(end, end + 40));
  if (!after || titles.has(foldWord(after[1]!))) return false;
  if (!both) return true;
  const before = text.slice(Math.max(0, start - 30), start);
  const last = before.trimEnd().split(/\s/).at(-1)!;
  if (before.trimEnd() === before || !/^\p{Lu}/u.test(last)) return false;
  return /^\p{L}\.?$/u.test(last) || isGivenName(foldWord(last));
}
