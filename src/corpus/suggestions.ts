import { distance } from 'fastest-levenshtein';
import { byCodeUnits } from './finding.ts';

/**
 * The word among `known` that an author most likely meant, or `undefined` when none is near. Capitals, hyphens and
 * underscores count for nothing; otherwise one slip is allowed in three letters, and none in a shorter word.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  return nearestFew(word, known, 1)[0];
}

/**
 * The key that an author most likely meant. Keys are few, so more is allowed than for ids: one slip in two letters
 * (`sx`), and a beginning that only one key has (`tied` for `tiedBy`).
 */
export function nearestKey(word: string, known: readonly string[]): string | undefined {
  const near = nearest(word, known);
  if (near !== undefined) return near;
  const short = plain(word);
  if (short.length < 2 || short.length > 100) return undefined;
  const begun = known.filter((key) => plain(key).startsWith(short));
  if (begun.length === 1) return begun[0];
  if (short.length > 2) return undefined;
  const slipped = known.filter((key) => key.length <= 3 && distance(short, plain(key)) === 1);
  return slipped.length === 1 ? slipped[0] : undefined;
}

/** The nearest few words, best first; ties in the order of code units. */
export function nearestFew(word: string, known: Iterable<string>, most: number): string[] {
  const plainWord = plain(word);
  const allowed = Math.floor(plainWord.length / 3);
  const near: { word: string; slips: number }[] = [];
  if (plainWord.length === 0 || plainWord.length > 100) return [];
  for (const candidate of known) {
    const plainCandidate = plain(candidate);
    if (Math.abs(plainCandidate.length - plainWord.length) > allowed) continue;
    const slips = plainCandidate === plainWord ? 0 : distance(plainWord, plainCandidate);
    if (slips <= allowed) near.push({ word: candidate, slips });
  }
  return near
    .toSorted((a, b) => a.slips - b.slips || byCodeUnits(a.word, b.word))
    .slice(0, most)
    .map((found) => found.word);
}

function plain(word: string): string {
  return word.toLowerCase().replace(/[-_\s]/g, '');
}
