/**
 * Words for relations (common practice in English): with a and b the generations up to the common ancestor and down
 * again, cousins are of the order min(a, b) − 1 and |a − b| times removed.
 */
import type { Sex } from './family.ts';

const pick = (sex: Sex, man: string, woman: string, either: string): string =>
  sex === 'M' ? man : sex === 'F' ? woman : either;

/** “great-”, “great-great-”, “great-great-great-”, then “4th great-”. */
function greats(n: number): string {
  return n <= 3 ? 'great-'.repeat(n) : `${numbered(n)} great-`;
}

/** `11th`, `22nd`. */
export function numbered(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}

const ordinals =
  'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');

/** “first” … “twelfth”, then `13th`. */
export function ordinal(n: number): string {
  return ordinals[n] ?? numbered(n);
}

const times = (n: number): string =>
  ['', 'once', 'twice', 'three times', 'four times', 'five times'][n] ?? `${n} times`;

/** What somebody of a sex is who stands `up` generations above and `down` below: “great-uncle”, “second cousin”. */
export function bloodWord(up: number, down: number, sex: Sex): string {
  if (up === 0 && down === 0) return 'the same person';
  if (down === 0) return direct(up, pick(sex, 'father', 'mother', 'parent'));
  if (up === 0) return direct(down, pick(sex, 'son', 'daughter', 'child'));
  if (up === 1 && down === 1) return pick(sex, 'brother', 'sister', 'sibling');
  if (down === 1) return either(greats(up - 2), sex, 'uncle', 'aunt');
  if (up === 1) return either(greats(down - 2), sex, 'nephew', 'niece');
  const removed = Math.abs(up - down);
  return `${ordinal(Math.min(up, down) - 1)} cousin${removed > 0 ? ` ${times(removed)} removed` : ''}`;
}

const direct = (generations: number, word: string): string =>
  generations === 1 ? word : `${greats(generations - 2)}grand${word}`;

const either = (before: string, sex: Sex, man: string, woman: string): string =>
  sex === undefined ? `${before}${man} or ${before}${woman}` : before + pick(sex, man, woman, '');

/** The same of the half blood: “half-sister”, “half first cousin”. */
export function halfWord(up: number, down: number, sex: Sex): string {
  const word = bloodWord(up, down, sex);
  if (up > 1 && down > 1) return `half ${word}`;
  return word
    .split(' or ')
    .map((one) => `half-${one}`)
    .join(' or ');
}

/** Husband, wife, or neither said. */
export function spouseWord(sex: Sex): string {
  return pick(sex, 'husband', 'wife', 'spouse');
}

/** Somebody's own relative of a spouse or the spouse of a relative, where English has a word of its own for them. */
export function inLawWord(up: number, down: number, sex: Sex): string | undefined {
  const own = down === 0 && up <= 2 ? true : up === 0 && down <= 2 ? true : up === 1 && down === 1;
  return own ? `${bloodWord(up, down, sex)}-in-law` : undefined;
}

/** Stepfather, step-grandson, stepbrother. */
export function stepWord(up: number, down: number, sex: Sex): string {
  const word = bloodWord(up, down, sex);
  return up + down === 1 || (up === 1 && down === 1) ? `step${word}` : `step-${word}`;
}

/** “Maurice’s”, “James’s”. */
export function possessive(name: string): string {
  return `${name}’s`;
}
