/** Where the marks of a coverage table stand: one strip a row, years from left to right. */
import type { CoverageRow, CoverageView } from '../../src/dossier/plan.ts';

export const strip = { width: 240, height: 18, pad: 8 } as const;

export interface Scale {
  x(year: number): number;
  /** Years that get a line, and those that get their number. */
  ticks: number[];
  labels: number[];
}

/** Years of a life on a strip, with a line each ten or twenty years. */
export function scaleOf({ from, to }: Pick<CoverageView, 'from' | 'to'>): Scale {
  const span = Math.max(10, to - from);
  const inner = strip.width - 2 * strip.pad;
  const x = (year: number) => strip.pad + (inner * (year - from)) / span;
  const step = span > 70 ? 20 : 10;
  const ticks: number[] = [];
  for (let year = Math.ceil(from / step) * step; year <= from + span; year += step) ticks.push(year);
  // A number needs room; the ends of the strip have none to give.
  const labels = ticks.filter((year) => x(year) > 14 && x(year) < strip.width - 14);
  return { x, ticks, labels };
}

/** The middle of a row's years, and their ends where they are wide enough to show. */
export function markOf({ from, to }: CoverageRow, { x }: Scale) {
  const [left, right] = [x(from), x(to)];
  return { middle: (left + right) / 2, left, right, long: right - left > 6 };
}
