/**
 * A name as a record writes it, taken apart.
 *
 * Rule (common practice): in English a title stands first, then given names, then the surname with its prefix, then
 * Jr or Sr; lists turn it round with a comma or capitals. In Norway a patronymic stands behind the given name and the
 * farm behind both, an address rather than a surname. Registers in Latin decline the given name only.
 */
import { foldName } from './fold.ts';
import { givenFormsOf } from './lookup.ts';
import {
  kinTitles,
  otherNameWords,
  remarkWords,
  suffixes,
  surnamesToo,
  titles,
  wifely,
} from './name-words.ts';
import type { NameParts } from './types.ts';
import {
  isCapitals,
  isGiven,
  isInitial,
  isManly,
  isOwnName,
  isPatronymic,
  isPrefix,
  isSurname,
  isWomanly,
  words,
  type Word,
} from './words.ts';

/** What is gathered while a name is read. */
interface Reading {
  title: Word[];
  suffix: Word[];
  otherGiven: string[];
  otherSurnames: string[];
  rest: string[];
}

/**
 * Takes a name apart; whatever the text, it never fails. Every word is kept in one of the parts, as written, but for
 * the small words that join two names (née, alias, or). A lone word is a given name where the catalogue knows it as
 * one and no title stands before it, a surname otherwise. Genitives and accusatives stay as they are: `agreeGiven`
 * knows them.
 */
export function parseName(written: string): NameParts {
  const reading: Reading = { title: [], suffix: [], otherGiven: [], otherSurnames: [], rest: [] };
  const plain = withoutBrackets(written, reading);
  const [main, ...others] = segments(plain);
  const parts = inOrder(commas(main ?? '', reading), reading);
  for (const other of others) addOther(other, parts, reading);

  const title = joined(reading.title);
  const husbands =
    parts.given !== '' &&
    parts.surname !== '' &&
    reading.title.some(({ folded }) => wifely.has(folded)) &&
    isManly(words(parts.given)[0]);
  return {
    title,
    ...parts,
    suffix: joined(reading.suffix),
    otherSurnames: reading.otherSurnames,
    ...(reading.otherGiven.length > 0 ? { otherGiven: reading.otherGiven } : {}),
    ...(husbands ? { husbands } : {}),
    ...(reading.rest.length > 0 ? { rest: reading.rest.join(', ') } : {}),
  };
}

type Main = Pick<NameParts, 'given' | 'surname' | 'patronymic' | 'farm'>;

const joined = (all: readonly Word[]): string => all.map(({ text }) => text).join(' ');

/** The text without what stands in brackets, which is sorted into other names and remarks. */
function withoutBrackets(text: string, reading: Reading): string {
  return text.replace(/\(([^()]*)\)?/gu, (_all, inside: string) => {
    const [first, ...more] = words(inside);
    if (!first) return ' ';
    if (otherNameWords.has(first.folded)) {
      if (more.length > 0) reading.otherSurnames.push(joined(more));
      else reading.rest.push(first.text);
    } else if (remarkWords.has(first.folded) || more.length > 2) reading.rest.push(inside.trim());
    else if (suffixes.has(first.folded)) reading.suffix.push(first, ...more);
    else if (givenFormsOf(first.folded).length > 0) reading.otherGiven.push(joined([first, ...more]));
    else reading.otherSurnames.push(joined([first, ...more]));
    return ' ';
  });
}

/** The name, then each further name that “née”, “alias” or “or” brings. */
function segments(text: string): string[] {
  const found: string[][] = [[]];
  for (const word of text.split(/\s+/u)) {
    const bare = /^[^.,;]*/u.exec(word)![0];
    const joins =
      bare !== '' &&
      (bare === bare.toLowerCase() || /^(?:N[ée]e|Alias)$/u.test(bare)) &&
      otherNameWords.has(foldName(bare));
    if (joins && found.some((one) => one.length > 0)) found.push([]);
    else found.at(-1)!.push(word);
  }
  return found.map((one) => one.join(' ')).filter((one) => words(one).length > 0);
}

/** The words in the order given name, surname; with how many at the end are known to be the surname, if they are. */
interface Ordered {
  words: Word[];
  surnameWords?: number;
}

function commas(text: string, reading: Reading): Ordered {
  const pieces = text
    .split(/[,;]/u)
    .map(words)
    .filter((piece) => piece.length > 0);
  const kept: Word[][] = [];
  for (const piece of pieces) {
    const named = withoutRemark(piece, kept.length === 0, reading);
    const numbers = named.filter(({ folded }) => folded === '');
    if (numbers.length > 0) reading.rest.push(joined(numbers));
    const name = withoutEnds(
      named.filter(({ folded }) => folded !== ''),
      reading,
    );
    if (name.length > 0) kept.push(name);
  }
  const [first = [], second, ...more] = kept;
  if (!second) return capitals(first);
  reading.rest.push(...more.map(joined));
  const looksWhole = first.length > 1 && isGiven(first[0]) && !isGiven(second[0]);
  if (looksWhole || first.length > 4) {
    reading.rest.push(joined(second));
    return capitals(first);
  }
  return { words: [...second, ...first], surnameWords: first.length };
}

/** Cuts off a remark: “of Kilmacow”, “wife of …”, “& Partners”. */
function withoutRemark(piece: readonly Word[], isFirst: boolean, reading: Reading): Word[] {
  const from = piece.findIndex(
    ({ text, folded }, at) =>
      (at > 0 || !isFirst) &&
      text === text.toLowerCase() &&
      remarkWords.has(folded) &&
      !(
        folded === 'and' &&
        titles.has(piece[at + 1]?.folded ?? '') &&
        titles.has(piece[at - 1]?.folded ?? '')
      ),
  );
  if (from === -1) return [...piece];
  reading.rest.push(joined(piece.slice(from)));
  return piece.slice(0, from);
}

/** Takes titles off the front and suffixes off the end. */
function withoutEnds(piece: readonly Word[], reading: Reading): Word[] {
  let start = 0;
  let end = piece.length;
  if (end === 1 && surnamesToo.has(piece[0]!.folded) && /^\p{Lu}/u.test(piece[0]!.text)) return [...piece];
  while (start < end && isTitle(piece[start]!, piece[start + 1])) reading.title.push(piece[start++]!);
  const behind: Word[] = [];
  while (end > start && suffixes.has(piece[end - 1]!.folded) && !isLoneName(piece, start, end))
    behind.unshift(piece[--end]!);
  if (behind.length > 0 && end > start && piece[end - 1]!.folded === 'the') behind.unshift(piece[--end]!);
  reading.suffix.push(...behind);
  return piece.slice(start, end);
}

const isTitle = ({ folded, text }: Word, next: Word | undefined): boolean =>
  titles.has(folded) || (/^(?:the|&|and)$/iu.test(text) && next !== undefined && titles.has(next.folded));

/** “Senior” and “Elder” are surnames too: a lone word behind a given name that no comma parts stays one. */
const isLoneName = (piece: readonly Word[], start: number, end: number): boolean =>
  end - start === 2 &&
  piece[start]!.folded !== 'the' &&
  /^(?:elder|younger|senior|junior|gent|bart)$/u.test(piece[end - 1]!.folded);

/** A surname in capitals, first or last, among words that are not. */
function capitals(all: Word[]): Ordered {
  if (all.every(isCapitals)) return { words: all };
  let leading = 0;
  while (leading < all.length && isCapitals(all[leading]!)) leading++;
  if (leading > 0) return { words: [...all.slice(leading), ...all.slice(0, leading)], surnameWords: leading };
  let trailing = 0;
  while (trailing < all.length && isCapitals(all[all.length - 1 - trailing]!)) trailing++;
  while (trailing > 0 && trailing < all.length && isPrefix(all[all.length - 1 - trailing]!)) trailing++;
  return trailing > 0 ? { words: all, surnameWords: trailing } : { words: all };
}

/** Given name, surname, patronymic and farm out of words in their order. */
function inOrder({ words: all, surnameWords }: Ordered, reading: Reading): Main {
  if (all.length === 0) return { given: '', surname: '', patronymic: false, farm: '' };
  const at = surnameWords === undefined ? surnameStart(all, reading) : all.length - surnameWords;
  const given = all.slice(0, at);
  const behind = all.slice(at);
  const lead = behind[0];

  if (lead && behind.length > 1 && isPatronymic(lead, given[0])) {
    return { given: joined(given), surname: lead.text, patronymic: true, farm: joined(behind.slice(1)) };
  }
  const patronymic =
    lead !== undefined &&
    (isPatronymic(lead, given[0]) || (behind.length > 1 && /^(?:ap|ab|verch|ferch)$/u.test(lead.folded)));
  return { given: joined(given), surname: joined(behind), patronymic, farm: '' };
}

/** Where the surname begins; further surnames of a woman are put aside on the way. */
function surnameStart(all: Word[], reading: Reading): number {
  if (all.length === 1) {
    const [only] = all as [Word];
    if (!isGiven(only) || isPatronymic(only, undefined)) return 0;
    // Behind a title a lone word is a surname (Mrs. Tobin), unless it is a woman's name or a relative is spoken of.
    const isName =
      reading.title.length === 0
        ? !isSurname(only) || isOwnName(only)
        : isWomanly(only) || (isOwnName(only) && reading.title.some(({ folded }) => kinTitles.has(folded)));
    return isName ? 1 : 0;
  }
  for (let at = 1; at < all.length - 1; at++) if (isPatronymic(all[at]!, all[0])) return at;
  for (let at = 0; at < all.length - 1; at++) {
    if (
      isPrefix(all[at]!) &&
      (at > 0 || !isGiven(all[0])) &&
      !(at === 0 && isInitial(all[0]!) && all.length > 2)
    )
      return at;
  }
  const last = all.length - 1;
  if (isWomanly(all[last]) && isWomanly(all[0]) && all.every((word) => isGiven(word) || isInitial(word)))
    return all.length;
  if (isWomanly(all[0])) {
    for (let at = last - 1; at > 0; at--) {
      const word = all[at]!;
      if (isGiven(word) || isInitial(word)) continue;
      reading.otherSurnames.unshift(word.text);
      all.splice(at, 1);
    }
  }
  return all.length - 1;
}

/** A further name of the same person, after “née”, “alias” or “or”. */
function addOther(text: string, main: Main, reading: Reading): void {
  const own: Reading = {
    title: reading.title,
    suffix: reading.suffix,
    otherGiven: [],
    otherSurnames: [],
    rest: reading.rest,
  };
  const all = commas(text, own);
  const [only] = all.words;
  if (only && all.words.length === 1) {
    if (main.surname === '' && isGiven(only)) reading.otherGiven.push(only.text);
    else if (main.surname === '') main.surname = only.text;
    else reading.otherSurnames.push(only.text);
    return;
  }
  const other = inOrder(all, own);
  // “Delia or Bridget Murphy”: what stood before is another given name, and the surname is this one’s.
  if (main.surname === '' || (main.given === '' && isGiven(words(main.surname)[0]))) {
    if (main.given !== '' || main.surname !== '') reading.otherGiven.push(main.given || main.surname);
    Object.assign(main, other);
  } else {
    if (main.given === '') main.given = other.given;
    else if (other.given !== '' && words(other.given)[0]?.folded !== words(main.given)[0]?.folded)
      reading.otherGiven.push(other.given);
    if (other.surname !== '') reading.otherSurnames.push(other.surname);
    if (other.farm !== '') reading.otherSurnames.push(other.farm);
  }
  reading.otherGiven.push(...own.otherGiven);
  reading.otherSurnames.push(...own.otherSurnames);
}
