/**
 * A life laid along a scale of years, as pure geometry: a band graduated in decades, the turns of the life above it,
 * children and records as marks along it.
 */
import { byText } from '../layout/words.ts';
import { widthOf } from '../proof/lettering.ts';

/** Something that happened, at a moment counted in years: 1866.12 is the middle of February. */
export interface Turn {
  at: number;
  /** “married, Hancock”, set small over the year. */
  word: string;
  /** “1866, aged 25”. */
  said: string;
}

export interface Life {
  turns: readonly Turn[];
  children: readonly number[];
  records: readonly number[];
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
}

const row = 42;
const bandHeight = 9;
/** Letters of the year labels and of the two lines of a turn, in the drawing’s own units. */
const sizes = { word: 12.5, said: 15 };

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
    x,
    width,
  );
  const rows = Math.max(0, ...turns.map((turn) => turn.row + 1));
  const band = rows * row + 8;
  // Years are named as often as there is room for four figures.
  const every = [1, 2, 5, 10].find((step) => step * 10 * perYear >= 44) ?? 10;
  return {
    width,
    height: band + bandHeight + 24,
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
    turns: turns.map(({ turn, x: at, row: nth, anchor }) => ({
      x: at,
      // The first row is nearest the band.
      top: (rows - 1 - nth) * row,
      textX: anchor === 'start' ? at + 5 : at - 5,
      anchor,
      word: turn.word,
      said: turn.said,
    })),
    children: life.children.map(x),
    records: [...new Set(life.records.map(x))].sort((a, b) => a - b),
  };
}

interface Placed {
  turn: Turn;
  x: number;
  row: number;
  anchor: 'start' | 'end';
  from: number;
  to: number;
}

/**
 * Each turn in the lowest row where its lettering has room and no line runs through words; lettering that would leave
 * the drawing is turned back. From the last to the first: what stands further left then rises over what is right of it.
 */
function placed(turns: readonly Turn[], x: (year: number) => number, width: number): Placed[] {
  const done: Placed[] = [];
  for (const turn of [...turns].reverse()) {
    const at = x(turn.at);
    const wide = Math.max(widthOf(turn.word, sizes.word), widthOf(turn.said, sizes.said)) + 6;
    const anchor = at + wide > width ? 'end' : 'start';
    const [from, to] = anchor === 'start' ? [at, at + wide] : [at - wide, at];
    const hasRoom = (row: number) =>
      done.every((other) => other.row !== row || to + 6 <= other.from || from >= other.to + 6);
    const isClear = (row: number) =>
      done.every(
        (other) =>
          (other.row >= row || at <= other.from + 2 || at >= other.to - 2) &&
          (other.row <= row || other.x <= from + 2 || other.x >= to - 2),
      );
    const rows = Array.from({ length: done.length + 1 }, (_, row) => row);
    const free = rows.filter(hasRoom);
    done.push({ turn, x: at, row: free.find(isClear) ?? free[0]!, anchor, from, to });
  }
  return done.reverse();
}

function round(n: number): number {
  return Math.round(n * 10) / 10;
}
