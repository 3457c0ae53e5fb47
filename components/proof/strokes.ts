/** Small geometry of the drawings: arcs, crossings, bars and lanes. Angles in degrees, y downward. */
import type { Fix } from './bodies.ts';
import type { Point, Sheet } from './sheet.ts';

/** An arc about a centre on its left side, from `above` degrees over the horizontal to `below` degrees under it. */
export function arcPath(centre: Point, radius: number, above: number, below: number): string {
  const at = (angle: number) => {
    const radians = (angle * Math.PI) / 180;
    return `${(centre.x - radius * Math.cos(radians)).toFixed(1)} ${(centre.y - radius * Math.sin(radians)).toFixed(1)}`;
  };
  return `M${at(above)}A${radius.toFixed(1)} ${radius.toFixed(1)} 0 0 0 ${at(-below)}`;
}

/** The point on the line from a centre towards another point, at a distance from the centre. */
export function along(centre: Point, towards: Point, distance: number): Point {
  const length = Math.hypot(towards.x - centre.x, towards.y - centre.y) || 1;
  return {
    x: centre.x + ((towards.x - centre.x) * distance) / length,
    y: centre.y + ((towards.y - centre.y) * distance) / length,
  };
}

/** Where a line first meets a circle, or, if it passes by, where it comes nearest to its centre. */
export function crossing(from: Point, to: Point, centre: Point, radius: number): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length2 = dx * dx + dy * dy || 1;
  const nearest = ((centre.x - from.x) * dx + (centre.y - from.y) * dy) / length2;
  const [nx, ny] = [from.x + dx * nearest, from.y + dy * nearest];
  const gap2 = (centre.x - nx) ** 2 + (centre.y - ny) ** 2;
  const t = nearest - Math.sqrt(Math.max(0, radius * radius - gap2) / length2);
  const within = Math.min(1, Math.max(0, t));
  return { x: from.x + dx * within, y: from.y + dy * within };
}

/** A bar across the end of a line. */
export function barAcross(from: Point, end: Point, half: number): [Point, Point] {
  const length = Math.hypot(end.x - from.x, end.y - from.y) || 1;
  const [ux, uy] = [(end.x - from.x) / length, (end.y - from.y) / length];
  return [
    { x: end.x - uy * half, y: end.y + ux * half },
    { x: end.x + uy * half, y: end.y - ux * half },
  ];
}

/** Brackets side by side without touching: arguments that overlap in height stand in lanes of their own, up to `most`. */
export function bracketLanes(argued: Fix['argued'], at: ReadonlyMap<string, number>, most: number) {
  const free: number[] = [];
  const placed: { lane: number; heights: number[] }[] = [];
  const spans = argued.map(({ items }) => items.flatMap((item) => at.get(item) ?? []).sort((a, b) => a - b));
  for (const heights of spans.filter((span) => span.length > 1).sort((a, b) => a[0]! - b[0]!)) {
    let lane = free.findIndex((below) => below + 6 < heights[0]!);
    if (lane < 0) lane = free.length;
    if (lane >= most) continue;
    free[lane] = heights.at(-1)!;
    placed.push({ lane, heights });
  }
  return placed;
}

/** The sheet with every number cut to a tenth, so that the drawing is short to write and the same everywhere. */
export function rounded(sheet: Sheet): Sheet {
  return JSON.parse(
    JSON.stringify(sheet, (_, value: unknown) =>
      typeof value === 'number' ? Math.round(value * 10) / 10 : value,
    ),
  ) as Sheet;
}
