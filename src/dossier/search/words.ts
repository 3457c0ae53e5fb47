/**
 * The words of a text as they are looked up, the same for what is kept and for what is typed: small plain letters and
 * figures, names with Mc, O’ and Fitz in one piece.
 */
import { foldName } from '../../reasoning/names/fold.ts';

/** A word and where it stands in its text. */
export interface Word {
  word: string;
  start: number;
  end: number;
  /** What is left without a prefix that is written as one: `faolain` of Ó Faoláin. */
  stem?: string;
}

/** Of a longer word the rest is not looked at. */
const longest = 40;

const other = 0;
const letter = 1;
/** May stand inside a word between two letters: O’Brien, Rich:d, Pat^k, Ph[ela]n. */
const joiner = 2;

/** What each code unit is; those beyond the first block are looked up as they are met. Halves of pairs are letters. */
const kinds = new Uint8Array(0x10000).fill(255);
for (let code = 0; code < 128; code++)
  kinds[code] = /[a-z0-9]/i.test(String.fromCharCode(code)) ? letter : other;
for (const sign of "'’‘ʼ`´:^[]") kinds[sign.charCodeAt(0)] = joiner;

function kindOf(code: number): number {
  const known = kinds[code]!;
  if (known !== 255) return known;
  const isLetter = (code >= 0xd800 && code <= 0xdfff) || /[\p{L}\p{N}\p{M}]/u.test(String.fromCharCode(code));
  return (kinds[code] = isLetter ? letter : other);
}

/** What a written word is looked up as; remembered, since few words make up most of a text. */
const folded = new Map<string, string>();
const mostRemembered = 100_000;

/** One written word in small plain letters and figures; Mc and M’ are Mac, and the genitive ’s falls off. */
export function foldWord(written: string): string {
  const known = folded.get(written);
  if (known !== undefined) return known;
  if (folded.size >= mostRemembered) folded.clear();
  const made = foldNew(written);
  folded.set(written, made);
  return made;
}

function foldNew(written: string): string {
  const whole = written.replace(/['’‘]s$/i, '').slice(0, longest);
  const word = whole
    .normalize('NFKC')
    .split(/(\p{Nd}+)/u)
    .map((part, at) => (at % 2 === 1 ? part : foldName(part).replaceAll(' ', '')))
    .join('');
  if (/^m['’‘]\p{L}{2}/iu.test(whole)) return `mac${word.slice(1)}`;
  return word.replace(/^mc(?=[a-z]{2})/, 'mac');
}

const prefixes = new Set(['mc', 'mac', 'fitz', 'o']);

/**
 * The words of a text in their order. A prefix that stands apart (Mc Carthy, O Brien) is one word with the name behind
 * it, where both have capitals; in what is `typed` capitals do not matter.
 */
export function wordsIn(text: string, typed = false): Word[] {
  const found: Word[] = [];
  const end = text.length;
  for (let at = 0; at < end;) {
    if (kindOf(text.charCodeAt(at)) !== letter) {
      at++;
      continue;
    }
    let to = at + 1;
    while (to < end) {
      const kind = kindOf(text.charCodeAt(to));
      if (kind === letter) to++;
      else if (kind === joiner && to + 1 < end && kindOf(text.charCodeAt(to + 1)) === letter) to += 2;
      else break;
    }
    const written = text.slice(at, to);
    const word = foldWord(written);
    if (word !== '')
      found.push(
        /^[oó]['’‘]\p{L}{2}/iu.test(written)
          ? { word, start: at, end: to, stem: word.slice(1) }
          : { word, start: at, end: to },
      );
    at = to;
  }
  return found.some(({ word }) => prefixes.has(word)) ? joined(text, found, typed) : found;
}

function joined(text: string, words: readonly Word[], typed: boolean): Word[] {
  const result: Word[] = [];
  const capital = ({ start }: Word) => typed || /\p{Lu}/u.test(text.charAt(start));
  for (let at = 0; at < words.length; at++) {
    const one = words[at]!;
    const next = words[at + 1];
    const joins =
      next !== undefined &&
      prefixes.has(one.word) &&
      /^['’‘.ᶜ]?[ -]$/.test(text.slice(one.end, next.start)) &&
      /^[a-z]{2}/.test(next.word) &&
      capital(one) &&
      capital(next);
    if (!joins) {
      result.push(one);
      continue;
    }
    const word = (one.word === 'mc' ? 'mac' : one.word) + next.word;
    result.push({ word, start: one.start, end: next.end, stem: next.word });
    at++;
  }
  return result;
}
