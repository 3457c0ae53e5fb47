/**
 * The chart of ages: where on a common scale of days each record puts a birth. Places are in hundredths of the width,
 * so that one drawing serves every width of page.
 */
import { civil, dayNumber } from '../../src/model/days.ts';

export interface AgeScale {
  /** Where a day stands, 0 to 100. */
  at(day: number): number;
  /** Years to letter, each where it begins. */
  ticks: { year: number; at: number }[];
}

/** Steps between lettered years, from the finest; the last serves whatever is wider. */
const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500];

/** So many lettered years fit on the narrowest page. */
const mostTicks = 6;

/** A scale in whole years that holds every stretch of days with a little room on either side. */
export function ageScale(stretches: readonly { first: number; last: number }[]): AgeScale {
  const first = Math.min(...stretches.map((s) => s.first));
  const last = Math.max(...stretches.map((s) => s.last));
  const years = [civil(first).year, civil(last).year + 1] as const;
  const step = steps.find((size) => (years[1] - years[0]) / size <= mostTicks - 1) ?? steps.at(-1)!;
  const room = step > 1 || years[1] - years[0] < mostTicks - 2 ? 1 : 0;
  const [from, to] = [years[0] - room, years[1] + room];
  const start = dayNumber(from, 1, 1);
  const length = dayNumber(to, 1, 1) - start;
  const at = (day: number) => Math.round(((day - start) / length) * 10_000) / 100;
  const ticks = [];
  for (let year = Math.ceil(from / step) * step; year <= to; year += step)
    ticks.push({ year, at: at(dayNumber(year, 1, 1)) });
  return { at, ticks };
}

/** A stretch on the scale as its left end and width, never too thin to see. */
export function stretchOn(
  scale: AgeScale,
  { first, last }: { first: number; last: number },
): { left: number; width: number } {
  const left = scale.at(first);
  const width = Math.round((scale.at(last + 1) - left) * 100) / 100;
  const thinnest = 0.8;
  return width >= thinnest
    ? { left, width }
    : {
        left: Math.min(100 - thinnest, Math.max(0, Math.round((left - (thinnest - width) / 2) * 100) / 100)),
        width: thinnest,
      };
}
