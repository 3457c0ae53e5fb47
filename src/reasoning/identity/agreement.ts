/**
 * In which level two values of a field agree. The levels are those of `catalogue/identity.ts`.
 *
 * Rule (common practice): what is missing says nothing; ages within five years are no contradiction (see the source
 * of the levels of `birth`); of a place or trade written at different lengths, the shorter may be part of the longer.
 */
import { similarEnough } from '../names/agree.ts';
import { foldName } from '../names/fold.ts';
import { jaroWinkler } from '../names/jaro-winkler.ts';

/** A text as it is compared: folded as names are, its digits kept, of a bounded length. */
export function plainText(text: string): string {
  const cut = text.slice(0, 400);
  if (!/\d/.test(cut)) return foldName(cut);
  return cut
    .split(/(\d+)/)
    .map((part, at) => (at % 2 === 1 ? part : foldName(part)))
    .filter((part) => part !== '')
    .join(' ');
}

/** exact, part, close, near or different; the texts are to come from `plainText` and not to be empty. */
export function textLevel(a: string, b: string): string {
  if (a === b) return 'exact';
  const one = a.split(' ');
  const other = b.split(' ');
  if (one.length !== other.length) {
    const [short, long] = one.length < other.length ? [one, other] : [other, one];
    const held = new Set(long);
    if (short.every((word) => held.has(word))) return 'part';
  }
  // A number is another number however alike it looks, but a slip of one digit is a slip.
  if (/^\d+$/.test(a) && /^\d+$/.test(b)) return oneSlip(a, b) ? 'close' : 'different';
  const similarity = jaroWinkler(a, b);
  return similarity >= similarEnough.close
    ? 'close'
    : similarity >= similarEnough.near
      ? 'near'
      : 'different';
}

/** Whether two texts differ by one character written wrong, left out or put in, or by two neighbours changing places. */
export function oneSlip(a: string, b: string): boolean {
  if (a === b) return false;
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (long.length - short.length > 1) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at++;
  if (long.length > short.length) return short.slice(at) === long.slice(at + 1);
  return (
    short.slice(at + 1) === long.slice(at + 1) ||
    (short[at] === long[at + 1] && short[at + 1] === long[at] && short.slice(at + 2) === long.slice(at + 2))
  );
}

/** The levels of years that differ, with the gap each reaches to. */
export const gapLevels: readonly { level: string; years: number }[] = [
  { level: 'same year', years: 0 },
  { level: 'within 1 year', years: 1 },
  { level: 'within 2 years', years: 2 },
  { level: 'within 3 years', years: 3 },
  { level: 'within 5 years', years: 5 },
  { level: 'within 10 years', years: 10 },
  { level: 'beyond 10 years', years: Infinity },
];

/** The level of two years a whole number of years apart. */
export function gapLevel(years: number): string {
  return gapLevels.find((one) => years <= one.years)!.level;
}

/** First and last day, both included. */
export interface Days {
  first: number;
  last: number;
}

/**
 * By how many whole years two spans of days stand apart. An age gives a span of a year, and two such spans are as far
 * apart as the years of birth one reckons from them; what a span is wider than a year counts in favour.
 */
export function yearsApart(a: Days, b: Days): number {
  const apart = Math.abs(a.first + a.last - b.first - b.last) / 2;
  const leeway = (Math.max(0, a.last - a.first - 365) + Math.max(0, b.last - b.first - 365)) / 2;
  return Math.round(Math.max(0, apart - leeway) / 365.2425);
}

/** most, some or none: how many of the shorter list of names have one that fits in the other. */
export function listLevel(
  a: readonly string[],
  b: readonly string[],
  fits: (one: string, other: string) => boolean,
): string {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  const left = [...long];
  let found = 0;
  for (const one of short) {
    const at = left.findIndex((other) => fits(one, other));
    if (at < 0) continue;
    left.splice(at, 1);
    found++;
  }
  return found === 0 ? 'none' : found * 2 > short.length ? 'most' : 'some';
}
