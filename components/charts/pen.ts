/** Writes the lines of a drawing as SVG path data no longer than they need to be. */

type Dot = readonly [number, number];

/** Collects the lines of a drawing and writes them thinned: steps from dot to dot, to a unit or half of one. */
export class Pen {
  private readonly lines: { dots: Dot[]; closed: boolean }[] = [];
  private readonly slack: number;
  private readonly grain: number;
  private dots: Dot[] = [];
  /** How far, in units of the drawing, a line may stray from the true one, and the unit its dots are rounded to. */
  constructor(slack: number, grain: 0.5 | 1 = 0.5) {
    this.slack = slack;
    this.grain = grain;
  }
  moveTo(x: number, y: number): void {
    this.end(false);
    this.dots = [[x, y]];
  }
  lineTo(x: number, y: number): void {
    this.dots.push([x, y]);
  }
  closePath(): void {
    this.end(true);
  }
  /** In halves of a unit. */
  private rounded(n: number): number {
    return Math.round(n / this.grain) * this.grain * 2;
  }
  private end(closed: boolean): void {
    if (this.dots.length > 1) this.lines.push({ dots: this.dots, closed });
    this.dots = [];
  }
  /** What was drawn, as the data of an SVG path. */
  written(): string {
    this.end(false);
    let out = '';
    for (const { dots, closed } of this.lines) {
      if (closed && tiny(dots)) continue;
      const kept = thinned(dots, this.slack).map(([x, y]): Dot => [this.rounded(x), this.rounded(y)]);
      let [x, y] = kept[0]!;
      let steps = '';
      for (const [nx, ny] of kept.slice(1)) {
        if (nx === x && ny === y) continue;
        steps += pair((nx - x) / 2, (ny - y) / 2);
        [x, y] = [nx, ny];
      }
      if (steps) out += `M${pair(kept[0]![0] / 2, kept[0]![1] / 2)}l${steps.trim()}${closed ? 'z' : ''}`;
    }
    return out;
  }
}

/** Two numbers of a path, without what a reader of paths does not need. */
function pair(x: number, y: number): string {
  const short = (n: number) => String(n).replace(/^(-?)0\./, '$1.');
  return `${x < 0 ? '' : ' '}${short(x)}${y < 0 ? '' : ' '}${short(y)}`;
}

/** Land smaller than this both ways, in units of the drawing, is left out. */
export const leastLand = 3.5;

function tiny(dots: readonly Dot[]): boolean {
  let [left, top, right, lower] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of dots) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    lower = Math.max(lower, y);
    if (right - left >= leastLand || lower - top >= leastLand) return false;
  }
  return true;
}

/** The dots that matter to a line’s shape (Douglas and Peucker’s rule): no other lies further than `slack` from it. */
function thinned(dots: readonly Dot[], slack: number): Dot[] {
  const keep = new Uint8Array(dots.length);
  keep[0] = keep[dots.length - 1] = 1;
  const parts: [number, number][] = [[0, dots.length - 1]];
  for (let part = parts.pop(); part; part = parts.pop()) {
    const [from, to] = part;
    const [[ax, ay], [bx, by]] = [dots[from]!, dots[to]!];
    const length = Math.hypot(bx - ax, by - ay);
    let [worst, at] = [slack, -1];
    for (let i = from + 1; i < to; i += 1) {
      const [x, y] = dots[i]!;
      const off =
        length < 1e-9
          ? Math.hypot(x - ax, y - ay)
          : Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / length;
      if (off > worst) [worst, at] = [off, i];
    }
    if (at > 0) {
      keep[at] = 1;
      parts.push([from, at], [at, to]);
    }
  }
  return dots.filter((_, i) => keep[i] === 1);
}
