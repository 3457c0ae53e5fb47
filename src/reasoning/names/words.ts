/** The words of a name, and what each can be: a given name, a prefix, a patronymic. */
import { givenNames, isNorwegian, type GivenForm } from '../../catalogue/names/given-index.ts';
import { foldName } from './fold.ts';
import { givenFormsOf, surnameFormsOf } from './lookup.ts';
import { givenOrSurname, surnamePrefixes } from './name-words.ts';
import { patronymicOf } from './patronymic.ts';

/** A word of the name as written, and folded. */
export interface Word {
  text: string;
  folded: string;
}

/** The words of a text that have a letter or a digit; signs at their edges go, but for a full stop and an apostrophe. */
export function words(text: string): Word[] {
  return text
    .replaceAll('&', ' & ')
    .split(/\s+/u)
    .map((word) => (word === '&' ? word : trimmed(word)))
    .map((word) => ({ text: word, folded: word === '&' ? 'and' : foldName(word) }))
    .filter(({ folded, text: kept }) => folded !== '' || /\p{N}/u.test(kept));
}

const before = /^(?!['’‘])[\p{P}\p{Sm}\p{Sk}\p{Cc}\p{Cf}]$/u;
const behind = new Set(',;:!?*"“”/\\_=+~<>–—-');

/** Without the signs at its edges; by steps, since a pattern would look at a long run of signs again and again. */
function trimmed(word: string): string {
  let start = 0;
  let end = word.length;
  while (start < end && before.test(word[start]!)) start++;
  while (end > start && behind.has(word[end - 1]!)) end--;
  return word.slice(start, end);
}

/** Three capitals or more and no small letter: how lists set off a surname. */
export const isCapitals = ({ text }: Word): boolean =>
  /^\P{Ll}*$/u.test(text) && (text.match(/\p{Lu}/gu)?.length ?? 0) >= 3;

/** Of, son of, a saint: what a surname may begin with. A lone letter needs its apostrophe, and O with a full stop is an initial. */
export const isPrefix = ({ folded, text }: Word): boolean =>
  surnamePrefixes.has(folded) &&
  (folded.length > 1 || /['’‘ᶜÓó]/u.test(text) || (folded === 'o' && !text.includes('.')));

/** Whether the catalogue knows the word as a given name, in any form. */
export const isGiven = (word: Word | undefined): boolean =>
  word !== undefined && givenFormsOf(word.folded).length > 0;

/** Whether the catalogue has the word as a surname or a spelling of one. */
export const isSurname = ({ folded }: Word): boolean =>
  surnameFormsOf(folded, folded).some(({ kind }) => kind !== 'interchangeable');

/** The sexes of the names a word can be a form of; names it is used in stead of do not count. */
const strictSexes = (word: Word | undefined): string[] =>
  (word ? givenFormsOf(word.folded) : [])
    .filter(({ kind }) => kind !== 'interchangeable')
    .map(({ group }) => givenNames[group]!.sex);

/** Whether the word is a given name that only men bear. */
export const isManly = (word: Word | undefined): boolean => {
  const sexes = strictSexes(word);
  return sexes.length > 0 && sexes.every((sex) => sex === 'M');
};

/** Whether the word is a given name that only women bear, and seldom a surname. */
export const isWomanly = (word: Word | undefined): boolean => {
  const sexes = strictSexes(word);
  return sexes.length > 0 && sexes.every((sex) => sex === 'F') && !givenOrSurname.has(word!.folded);
};

/** A name of Norway and not as well an English one: Lars and Nels, but not Martha or Anna. */
function isNorse(word: Word | undefined): boolean {
  const forms = word ? givenFormsOf(word.folded) : [];
  const norse = ({ group, language }: GivenForm) => isNorwegian(group) || language === 'Norwegian';
  const english = (form: GivenForm) => !norse(form) && (form.kind === 'name' || form.kind === 'spelling');
  return forms.some(norse) && !forms.some(english);
}

/** A letter alone. */
export const isInitial = ({ folded }: Word): boolean => /^\p{L}$/u.test(folded);

/** A patronymic that no hereditary surname of English looks like. */
const surePatronymic = /^[a-z]{3,}(?:sen|datter|dotter|dottir|daatter|sdtr|sdr)$/u;

/** Whether a word says who the father was; with -son only behind a Norse given name. */
export function isPatronymic({ folded }: Word, given: Word | undefined): boolean {
  if (surePatronymic.test(folded)) return true;
  if (/son$/u.test(folded))
    return isNorse(given) && (folded.length > 5 || patronymicOf(folded) !== undefined);
  return patronymicOf(folded) !== undefined;
}

/** Whether the word is a given name itself, abbreviated or in Latin, and no pet form or stand-in. */
export const isOwnName = (word: Word): boolean =>
  givenFormsOf(word.folded).some(
    ({ kind }) => kind === 'name' || kind === 'abbreviation' || kind === 'latin',
  );
