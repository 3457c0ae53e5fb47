/**
 * What a word can be looked up by beside its own letters: without its prefix, by its sound, by the father it names, and
 * by likeness. The same code makes the index and reads what is typed; it knows no table of names, so that it is small.
 */
import { distance } from 'fastest-levenshtein';
import { oStems } from '../../catalogue/names/prefixes.ts';
import { daitchMokotoff } from '../../reasoning/names/daitch-mokotoff.ts';
import { surnameParts } from '../../reasoning/names/fold.ts';
import { jaroWinkler } from '../../reasoning/names/jaro-winkler.ts';
import { fatherSpellings } from '../../reasoning/names/patronymic-ending.ts';

/** A folded word without O, Mac or Fitz, where it has one: `brien` of `obrien`. */
export function stemOf(word: string): string | undefined {
  const { stem, prefix } = surnameParts(word, oStems);
  return prefix === undefined || prefix === 'particle' || stem.length < 3 ? undefined : stem;
}

/** Words with a figure, and very short ones, have no sound to go by. */
const sounding = /^\p{L}{3,}$/u;

/** The sound codes of a folded word; none where it is no word to be sounded. */
export function soundsOf(word: string): readonly string[] {
  return sounding.test(word) ? daitchMokotoff(stemOf(word) ?? word) : [];
}

/** Digits of a sound code that two words must share before their letters are compared. */
export const sharedDigits = 3;

/** Likenesses from which two words are taken for spellings of one another, and, where they sound alike, for one name. */
const near = 0.85;
const nearInSound = 0.65;
/** Two names the catalogue knows apart are only joined by a slip of the pen. */
const slip = 0.92;
/** Of the letters of two spellings, the share that may differ: a common beginning alone makes no likeness. */
const mostChanged = 0.34;

/** How alike two folded words are, if they are: by their letters, or by sound and somewhat by their letters. */
export function alike(
  a: string,
  b: string,
  oneSound: boolean,
  bothKnown: boolean,
): { how: 'near' | 'sound'; likeness: number } | undefined {
  const jaro = jaroWinkler(a, b);
  const kept = 1 - distance(a, b) / Math.max(a.length, b.length);
  const likeness = (jaro + kept) / 2;
  if (jaro >= (bothKnown ? slip : near) && kept >= 1 - mostChanged) return { how: 'near', likeness };
  return oneSound && !bothKnown && jaro >= nearInSound ? { how: 'sound', likeness } : undefined;
}

/** Under what a patronymic is kept: each spelling of the father’s name it may be made of, behind a plus. */
export function fatherKeys(word: string): string[] {
  return fatherSpellings(word).map(fatherKey);
}

/** The key of a father’s name. */
export function fatherKey(name: string): string {
  return `+${name}`;
}
