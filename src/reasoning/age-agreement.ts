/**
 * How far two birth intervals lie apart, and how that compares with what linked records show. Ages wobble: in one
 * large hand-linked set of Irish-born men, 53 % of recorded ages agreed within 2 years, 67 % within 3, 81 % within 5
 * and 95 % within 10. So a gap under six years is never a contradiction, only weaker agreement.
 */

import { linkedAges, linkedSet } from '../catalogue/linked-ages.ts';

/** From so many years on, fewer than one recorded age in five lies as far off. */
const farApart = 6;

const daysOfYear = 365.2425;

/** The first and last day of a birth, as day numbers. */
interface Days {
  first: number;
  last: number;
}

/** The years between two birth intervals: 0 where they meet or touch. */
export function ageGap(a: Days, b: Days): number {
  const days = Math.max(a.first - b.last, b.first - a.last) - 1;
  return days <= 0 ? 0 : days / daysOfYear;
}

/**
 * The share of recorded ages that agree within a gap of so many years, from 0 to 0.95. Between the figures of the
 * linked set it runs straight; the set says nothing below two years but that nothing agrees better than exactly, so
 * there it runs from 0; beyond ten years it says only that one in twenty lies there.
 */
export function gapShare(gap: number): number {
  let before = { within: 0, share: 0 };
  for (const step of linkedAges) {
    if (gap <= step.within)
      return (
        before.share +
        ((Math.max(0, gap) - before.within) / (step.within - before.within)) * (step.share - before.share)
      );
    before = step;
  }
  return before.share;
}

/**
 * A gap in a clause, to follow “is” or “lies”: “four years off, weaker agreement: …”. The first figure of the linked
 * set that covers the gap is the one named.
 */
export function gapWords(gap: number): string {
  if (gap === 0) return 'in agreement';
  const step = linkedAges.find(({ within }) => gap <= within);
  const off = `${years(gap)} off`;
  if (!step)
    return `${off}, farther than nearly all: in ${linkedSet}, 95\u00a0% of recorded ages agreed within 10 years`;
  const cited = `in ${linkedSet}, ${Math.round(step.share * 100)}\u00a0% of recorded ages agreed within ${step.within} years`;
  if (step.within === 2) return `${off}, as ages often are: ${cited}`;
  return gap < farApart
    ? `${off}, weaker agreement but no contradiction: ${cited}`
    : `${off}, farther than most: ${cited}, and 81\u00a0% within 5`;
}

/** “less than a year”, “a year”, “about 4 years”. */
function years(gap: number): string {
  if (gap < 0.95) return 'less than a year';
  const whole = Math.round(gap);
  return Math.abs(gap - whole) < 0.05
    ? whole === 1
      ? 'a year'
      : `${whole} years`
    : `about ${gap < 2 ? gap.toFixed(1) : whole} years`;
}
