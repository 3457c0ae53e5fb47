/**
 * Names on a map, placed so that none overprints another or a mark. Each is tried on the sides of its point in turn, the most
 * important first; what finds no room goes without a name. The work grows with the number of names alone.
 */

/** A rectangle of a drawing: left, top, right, lower edge. */
export type Box = readonly [number, number, number, number];

/** A name that asks for room beside a point. */
export interface Ask {
  x: number;
  y: number;
  text: string;
  /** Height of the letters, in units of the drawing. */
  size: number;
  /** How far the mark reaches from its point. */
  reach: number;
  bold?: boolean;
  /** Sides to try, in this order; both ends of a line, and above and below, otherwise. */
  sides?: readonly Side[];
}

export type Side =
  'east' | 'west' | 'above' | 'below' | 'south-east' | 'south-west' | 'north-east' | 'north-west';

/** Where a name stands: the point of its base line from which, or to which, it runs. */
export interface Label {
  x: number;
  y: number;
  text: string;
  anchor: 'start' | 'middle' | 'end';
  /** The number of the asker. */
  of: number;
}

const usual: readonly Side[] = [
  'east',
  'west',
  'above',
  'below',
  'north-east',
  'south-east',
  'north-west',
  'south-west',
];

/** About how wide a text is in the serif, in parts of its size; on the generous side. */
export function widthOf(text: string, bold = false): number {
  let sum = 0;
  for (const letter of text) sum += widths.get(letter) ?? measured(letter);
  return sum * (bold ? 1.06 : 1);
}

const widths = new Map<string, number>();

/** The width of one letter, in parts of its size. */
function measured(letter: string): number {
  const width = /[iljft.,:;'’|!()\-\s]/.test(letter)
    ? 0.32
    : /[mwMWÆŒæœ—]/.test(letter)
      ? 0.86
      : /\p{Lu}/u.test(letter)
        ? 0.68
        : 0.53;
  widths.set(letter, width);
  return width;
}

/** The names that find room, in the order asked; `taken` is ground no name may stand on. */
export function placeLabels(asks: readonly Ask[], frame: Box, taken: readonly Box[] = []): Label[] {
  const ground = new Ground();
  for (const box of taken) ground.take(box);
  for (const { x, y, reach } of asks) ground.take([x - reach, y - reach, x + reach, y + reach]);
  const labels: Label[] = [];
  asks.forEach((ask, of) => {
    for (const side of ask.sides ?? usual) {
      const { box, ...at } = beside(ask, side);
      if (box[0] < frame[0] || box[1] < frame[1] || box[2] > frame[2] || box[3] > frame[3]) continue;
      if (!ground.free(box)) continue;
      ground.take(box);
      labels.push({ ...at, text: ask.text, of });
      return;
    }
  });
  return labels;
}

function beside(
  { x, y, text, size, reach, bold }: Ask,
  side: Side,
): Pick<Label, 'x' | 'y' | 'anchor'> & { box: Box } {
  const wide = widthOf(text, bold) * size;
  const gap = reach + size * 0.28;
  const [east, west] = [side.includes('east'), side.includes('west')];
  const [up, down] = [/above|north/.test(side), /below|south/.test(side)];
  // In a corner the name begins, or ends, over the far edge of its mark, so that lines to the mark stay clear.
  const corner = (up || down) && (east || west);
  const anchor = east ? 'start' : west ? 'end' : 'middle';
  const off = corner ? -reach : gap;
  const tx = east ? x + off : west ? x - off : x;
  const base = up ? y - gap : down ? y + gap + size * 0.72 : y + size * 0.32;
  const left = east ? tx : west ? tx - wide : tx - wide / 2;
  return { x: tx, y: base, anchor, box: [left, base - size * 0.8, left + wide, base + size * 0.26] };
}

/** Ground already taken, found by squares of the drawing. */
class Ground {
  private readonly squares = new Map<string, Box[]>();
  private readonly side = 48;

  take(box: Box): void {
    for (const key of this.keys(box)) {
      const held = this.squares.get(key);
      if (held) held.push(box);
      else this.squares.set(key, [box]);
    }
  }

  free(box: Box): boolean {
    for (const key of this.keys(box))
      for (const other of this.squares.get(key) ?? [])
        if (box[0] < other[2] && box[2] > other[0] && box[1] < other[3] && box[3] > other[1]) return false;
    return true;
  }

  private *keys([left, top, right, lower]: Box): Iterable<string> {
    const at = (value: number) => Math.floor(value / this.side);
    for (let i = at(left); i <= at(right); i += 1)
      for (let j = at(top); j <= at(lower); j += 1) yield `${i} ${j}`;
  }
}

/** Points that lie closer together than `apart` fall into one group, in the order given; the first stands for it. */
export function clustered<T extends { x: number; y: number }>(points: readonly T[], apart: number): T[][] {
  const squares = new Map<string, T[][]>();
  const groups: T[][] = [];
  for (const point of points) {
    const [i, j] = [Math.floor(point.x / apart), Math.floor(point.y / apart)];
    let home: T[] | undefined;
    for (let u = i - 1; u <= i + 1 && !home; u += 1)
      for (let v = j - 1; v <= j + 1 && !home; v += 1)
        home = squares
          .get(`${u} ${v}`)
          ?.find(([first]) => Math.hypot(first!.x - point.x, first!.y - point.y) < apart);
    if (home) {
      home.push(point);
      continue;
    }
    const group = [point];
    groups.push(group);
    const key = `${i} ${j}`;
    squares.set(key, [...(squares.get(key) ?? []), group]);
  }
  return groups;
}
