/** Words as they are compared where the living are looked for. */
import { foldName } from '../reasoning/names/fold.ts';

/** The characters of a word: letters, digits, their marks, apostrophes and what no reader sees. */
// eslint-disable-next-line regexp/no-super-linear-move -- nothing follows that could refuse a run
export const wordPattern = /[\p{L}\p{N}\p{M}\p{Cf}'’‘ʼ`´]+/gu;

/** Small capitals, which Unicode has as letters of their own and no decomposition brings down. */
const smallCapitals = new Map(
  [...'ᴀʙᴄᴅᴇꜰɢʜɪᴊᴋʟᴍɴᴏᴘꞯʀꜱᴛᴜᴠᴡʏᴢ'].map((letter, i) => [letter, 'abcdefghijklmnopqrstuvwyz'.charAt(i)]),
);
const anySmallCapital = new RegExp(`[${[...smallCapitals.keys()].join('')}]`, 'gu');

/** A word as it is compared. A word of letters and digits stays together; an ordinal is its number. */
export function foldWord(word: string): string {
  if (/^[A-Za-z]+$/.test(word)) return word.toLowerCase();
  const plain = word
    .replaceAll(/\p{Cf}/gu, '')
    .replaceAll(anySmallCapital, (letter) => smallCapitals.get(letter)!);
  const number = /^'{0,2}(\d{1,12})(?:st|nd|rd|th)?'{0,2}$/i.exec(plain);
  if (number) return String(Number(number[1]));
  if (/\d/.test(plain)) return plain.toLowerCase();
  return otherScripts(foldName(plain.replace(/(.)['’ʼ]s['’]*$/iu, '$1'))).replaceAll(' ', '');
}

/** Greek without accents and with one sigma, since capitals have neither; Russian without the points of ё. */
function otherScripts(folded: string): string {
  if (!/[\p{sc=Greek}\p{sc=Cyrillic}]/u.test(folded)) return folded;
  return folded
    .normalize('NFD')
    .replaceAll(/(\p{sc=Greek})\p{M}+/gu, '$1')
    .replaceAll('ς', 'σ')
    .normalize('NFC')
    .replaceAll('ё', 'е');
}

/** The folded words of a text. */
export function foldedWords(text: string): string[] {
  return [...text.matchAll(wordPattern)].map(([word]) => foldWord(word)).filter((word) => word !== '');
}

/** A word where it stands, with what is between it and the one before. */
export interface Token {
  raw: string;
  word: string;
  gap: string;
  end: number;
}

const next = new RegExp(wordPattern.source, 'gu');

/** The word after an offset, if it begins within so many characters. */
export function tokenAfter(text: string, end: number, within: number): Token | undefined {
  next.lastIndex = end;
  const found = next.exec(text);
  if (!found || found.index - end > within) return undefined;
  const [raw] = found;
  return { raw, word: foldWord(raw), gap: text.slice(end, found.index), end: found.index + raw.length };
}

/** Whether a word, as written, begins with a small letter. Scripts without capitals have none to ask for. */
export function isSmall(word: string): boolean {
  return /^['’‘`´\p{Cf}]*\p{Ll}/u.test(word);
}
