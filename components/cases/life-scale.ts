/**
 * A life laid along a scale of years, as pure geometry: a band graduated in decades, the turns of the life above it,
 * children and records as marks along it, and where somebody lived below.
 */
import { byText } from '../layout/words.ts';
import { widthOf } from '../proof/lettering.ts';

/** Something that happened, at a moment counted in years: 1866.12 is the middle of February. */
export interface Turn {
  at: number;
  /** “married”, set small over the year. */
  word: string;
  /** “1866, aged 25”. */
  said: string;
}

/** Where somebody was, from one year to another. */
export interface Stay {
  from: number;
  to: number;
  name: string;
}

export interface Life {
  turns: readonly Turn[];
  children: readonly number[];
  records: readonly number[];
  stays: readonly Stay[];
}

export interface LifeScale {
  width: number;
  height: number;
  /** Top of the graduated band. */
  band: number;
  first: number;
  last: number;
  decades: { x: number; width: number; filled: boolean; year: number; isNamed: boolean }[];
  turns: { x: number; top: number; textX: number; anchor: 'start' | 'end'; word: string; said: string }[];
  children: number[];
  records: number[];
  stays: { x: number; to: number; y: number; textX: number; anchor: 'start' | 'end'; name: string }[];
}

const row = 42;
const stayRow = 24;
const bandHeight = 9;
/** Letters of the year labels and of the two lines of a turn, in the drawing’s own units. */
const sizes = { word: 12.5, said: 15, stay: 14 };

/** Lays a life out over `width` units. `undefined` where fewer than two moments are known. */
export function lifeScale(life: Life, width: number): LifeScale | undefined {
  const moments = [...life.turns.map(({ at }) => at), ...life.children, ...life.records];
  const earliest = Math.min(...moments);
  const latest = Math.max(...moments);
  if (moments.length < 2 || latest - earliest < 1) return undefined;
  const first = Math.floor(earliest / 10) * 10;
  const last = Math.max(first + 10, Math.ceil(latest / 10) * 10);
  const margin = 6;
  const perYear = (width - 2 * margin) / (last - first);
  const x = (year: number) => round(margin + (year - first) * perYear);

  const turns = placed(
    [...life.turns].sort((a, b) => a.at - b.at || byText(a.word, b.word)),
    (turn) => ({
      x: x(turn.at),
      wide: Math.max(widthOf(turn.word, sizes.word), widthOf(turn.said, sizes.said)) + 6,
    }),
    width,
  );
  const rows = Math.max(0, ...turns.map((turn) => turn.row)) + 1;
  const band = rows * row + 8;
  const stays = placed(
    life.stays,
    (stay) => ({
      x: x(Math.max(first, stay.from)),
      wide: Math.max(widthOf(stay.name, sizes.stay) + 8, (stay.to - stay.from) * perYear),
    }),
    width,
  );
  const stayRows = stays.length === 0 ? 0 : Math.max(...stays.map((stay) => stay.row)) + 1;
  const under = band + bandHeight + 34;
  // Years are named as often as there is room for four figures.
  const every = [1, 2, 5, 10].find((step) => step * 10 * perYear >= 44) ?? 10;
  return {
    width,
    height: under + stayRows * stayRow,
    band,
    first: x(first),
    last: x(last),
    decades: Array.from({ length: (last - first) / 10 }, (_, i) => ({
      x: x(first + i * 10),
      width: round(10 * perYear),
      filled: i % 2 === 0,
      year: first + i * 10,
      isNamed: i % every === 0,
    })),
    turns: turns.map(({ item, x: at, row: nth, anchor }) => ({
      x: at,
      // The first row is nearest the band.
      top: (rows - 1 - nth) * row,
      textX: anchor === 'start' ? at + 5 : at - 5,
      anchor,
      word: item.word,
      said: item.said,
    })),
    children: life.children.map(x),
    records: [...new Set(life.records.map(x))].sort((a, b) => a - b),
    stays: stays.map(({ item, x: from, row: nth, anchor }) => ({
      x: from,
      to: Math.max(from + 3, x(Math.min(last, item.to))),
      y: under + nth * stayRow,
      textX: anchor === 'start' ? from : x(Math.min(last, item.to)),
      anchor,
      name: item.name,
    })),
  };
}

/** Each thing in the first row where it has room, its lettering turned back where it would leave the drawing. */
function placed<T>(
  items: readonly T[],
  measure: (item: T) => { x: number; wide: number },
  width: number,
): { item: T; x: number; row: number; anchor: 'start' | 'end' }[] {
  const taken: [from: number, to: number][][] = [];
  return items.map((item) => {
    const { x, wide } = measure(item);
    const anchor = x + wide > width ? ('end' as const) : ('start' as const);
    const from = anchor === 'start' ? x : Math.max(0, x - wide);
    const to = from + wide;
    let row = taken.findIndex((spans) => spans.every(([a, b]) => to + 6 <= a || from >= b + 6));
    if (row < 0) row = taken.push([]) - 1;
    taken[row]!.push([from, to]);
    return { item, x, row, anchor };
  });
}

function round(n: number): number {
  return Math.round(n * 10) / 10;
}
