/**
 * The spellings of a part of a name that are looked for. Common practice: apostrophes and hyphens come and go, ø and å
 * are written oe and aa, Mac is Mc and M’, particles are joined, shortened, put behind or left out, and a patronymic
 * has its ending in several spellings.
 */
import { surnamePrefixes } from '../reasoning/names/name-words.ts';
import type { NameParts } from '../reasoning/names/types.ts';
import { foldedWords } from './living-fold.ts';

export interface SurnameSpelling {
  words: string[];
  /** How many of the first words are particles, which an index puts behind. */
  particles: number;
  /** It says less than the whole surname. */
  weak: boolean;
}

/** Given names, or a whole name, in each way their words are cut and their letters spelled. */
export function givenSpellings(part: string): string[][] {
  return distinct([...cuts(part)].flatMap(lettersOf).map(foldedWords));
}

/** A surname in each spelling. `patronymic`: its first word says who the father was. */
export function surnameSpellings(surname: string, patronymic = false): SurnameSpelling[] {
  const found: SurnameSpelling[] = [];
  const add = (words: string[], particles = 0, weak = false) => found.push({ words, particles, weak });
  for (const words of distinct(
    macs(surname)
      .flatMap((one) => [...cuts(one)].flatMap(lettersOf))
      .map(foldedWords),
  )) {
    if (!patronymic) add(words);
    else for (const first of patronymics(words[0]!)) add([first, ...words.slice(1)]);
    const count = particlesOf(words);
    if (count === 0) continue;
    const before = words.slice(0, count);
    const stem = words.slice(count);
    found.at(-1)!.particles = count;
    add([before.join('') + stem.join('')]);
    if (count > 1) add([before.join(''), ...stem], 1);
    add([...before.map((word) => word.charAt(0)), ...stem], count);
    add([before.map((word) => word.charAt(0)).join(''), ...stem], 1);
    if (!before.some((word) => ['o', 'mac', 'mc', 'm', 'fitz', 'st', 'saint'].includes(word)))
      add(stem, 0, true);
  }
  // Of two names joined by a hyphen often one is used.
  const halves = surname.split(/[-‐]/);
  if (halves.length > 1)
    for (const half of halves)
      for (const words of distinct(lettersOf(half).map(foldedWords))) add(words, 0, true);
  return found.filter(
    ({ words }, i) => found.findIndex((one) => one.words.join(' ') === words.join(' ')) === i,
  );
}

/** How a farm stands behind a given name otherwise: “Kari på Haugen”, “Kari O. Haugen”. */
export function fatherAndFarm({ surname, farm }: NameParts): { words: string[]; weak: boolean }[] {
  if (farm === '') return [];
  return distinct(lettersOf(farm).map(foldedWords)).flatMap((words) => [
    ...['pa', 'paa', 'fra', 'i', 'av', 'af', 'ved', 'from', 'of', 'at'].map((at) => ({
      words: [at, ...words],
      weak: false,
    })),
    ...foldedWords(surname)
      .slice(0, 1)
      .map((father) => ({ words: [father.charAt(0), ...words], weak: true })),
  ]);
}

function cuts(part: string): Set<string> {
  const found = new Set([part]);
  if (/['’ʼ-]/.test(part)) found.add(part.replaceAll(/['’ʼ-]/g, ' ')).add(part.replaceAll(/['’ʼ-]/g, ''));
  if (/^(?:mac|mc|o|fitz|st)\s+\S+$/i.test(part)) found.add(part.replace(/\s+/, ''));
  return found;
}

/** McCabe, MacCabe, Mc Cabe, M’Cabe. Mack and Macey are other names: behind Mac stands a capital, or a space. */
function macs(surname: string): string[] {
  const rest =
    /^(?:Mac|M[cC]|M['’‘ʼ`´])\s*(\p{Lu}.*)$/u.exec(surname)?.[1] ??
    /^(?:mac|mc)\s+(\S.*)$/iu.exec(surname)?.[1];
  return rest === undefined
    ? [surname]
    : [surname, ...['Mac', 'Mc', 'Mac ', 'Mc ', 'M', 'M '].map((prefix) => prefix + rest)];
}

/** The letters of the north, and German ones, each as itself or as two. */
function lettersOf(part: string): string[] {
  let found = [part.normalize('NFC')];
  for (const [letter, two] of [
    [/å/gi, 'aa'],
    [/aa/gi, 'a'],
    [/[øö]/gi, 'oe'],
    [/ä/gi, 'ae'],
    [/ü/gi, 'ue'],
  ] as const)
    if (found[0]!.search(letter) >= 0) found = [...found, ...found.map((one) => one.replaceAll(letter, two))];
  return [...new Set(found)];
}

const daughters = ['datter', 'sdatter', 'dotter', 'dtr', 'dr', 'd'];

/** A patronymic with each of the endings it is written with. */
function patronymics(word: string): string[] {
  const ending = /(?:datter|dotter|dottir|daatter|dtr|dr|sen|son)$/.exec(word)?.[0];
  if (ending === undefined || word.length - ending.length < 2) return [word];
  const father = word.slice(0, word.length - ending.length);
  if (ending === 'sen' || ending === 'son') return [word, `${father}sen`, `${father}son`];
  const bare = father.replace(/s$/, '');
  return [word, ...daughters.flatMap((one) => [father + one, bare + one])];
}

/** How many words before a surname are particles of it. */
function particlesOf(words: readonly string[]): number {
  let count = 0;
  while (count < words.length - 1 && surnamePrefixes.has(words[count]!) && words[count]!.length > 1) count++;
  return count;
}

function distinct(lists: readonly string[][]): string[][] {
  const seen = new Map(lists.filter((words) => words.length > 0).map((words) => [words.join(' '), words]));
  return [...seen.values()];
}
