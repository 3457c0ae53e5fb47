import { distance } from 'fastest-levenshtein';

/**
 * The option spelled most like a word, or `undefined` when none comes near (more than a third of the letters
 * differ). Of equally near ones the first by code units.
 */
export function nearest(word: string, options: Iterable<string>): string | undefined {
  const wanted = word.toLowerCase();
  let best: string | undefined;
  let least = Math.max(2, Math.floor(word.length / 3)) + 1;
  for (const option of options) {
    const far = distance(wanted, option.toLowerCase());
    if (far < least || (far === least && best !== undefined && option < best)) {
      best = option;
      least = far;
    }
  }
  return best;
}

/** “Did you mean …?”, or what to do otherwise. */
export function didYouMean(word: string, options: Iterable<string>, otherwise: string): string {
  const found = nearest(word, options);
  return found === undefined ? otherwise : `Did you mean ${found}?`;
}
