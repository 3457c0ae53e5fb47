/**
 * The drawing on a card: a graduated circle about the mark, an arc for each place the mark lies in, lines of sight
 * from stations below that reach it, one for each independent body of evidence, and one or two that miss it where
 * there are conflicts.
 */
import type { Sight } from '../../dossier/publishing.ts';
import { inks } from './inks.ts';

interface Point {
  x: number;
  y: number;
}

/** The drawing as SVG, about a centre. `radius` is that of the graduated circle. */
export function drawSight(sight: Sight, at: Point, radius: number): string {
  const rings = Math.min(Math.max(sight.rings - 1, 0), 5);
  return [
    limb(at, radius),
    ...Array.from({ length: rings }, (_, i) => ring(at, 26 + ((radius - 26) * (i + 1)) / (rings + 1))),
    ...Array.from({ length: Math.min(sight.missing, 2) }, (_, i) => missed(at, radius, i === 0 ? 1 : -1)),
    ...bearings(Math.min(sight.reaching, 7)).map((bearing) => sightLine(at, radius, bearing)),
    mark(at, sight.mark),
  ].join('');
}

/** The graduated circle: a tick every five degrees, a longer one every thirty. */
function limb(at: Point, radius: number): string {
  const ticks = Array.from({ length: 72 }, (_, i) => {
    const bearing = i * 5;
    const long = bearing % 30 === 0 ? 13 : bearing % 10 === 0 ? 8 : 5;
    return segment(polar(at, radius, bearing), polar(at, radius + long, bearing));
  }).join('');
  return `<circle cx="${at.x}" cy="${at.y}" r="${radius}" fill="none" stroke="${inks.ink}" stroke-width="1.6"/><path d="${ticks}" stroke="${inks.ink}" stroke-width="1.4" fill="none"/>`;
}

/** The bound of a place, drawn on the side from which the mark is sighted. */
function ring(at: Point, radius: number): string {
  const from = polar(at, radius, 262);
  const to = polar(at, radius, 98);
  return `<path d="M${round(from.x)} ${round(from.y)}A${round(radius)} ${round(radius)} 0 0 0 ${round(to.x)} ${round(to.y)}" fill="none" stroke="${inks.line}" stroke-width="1.6"/>`;
}

/** Bearings of the stations, spread over the ground below the mark; one line alone comes up at a slant. */
function bearings(count: number): number[] {
  if (count === 1) return [207];
  const [first, last] = [118, 242];
  return Array.from({ length: count }, (_, i) => last - ((last - first) * i) / Math.max(1, count - 1));
}

function sightLine(at: Point, radius: number, bearing: number): string {
  const from = polar(at, radius + 26, bearing);
  return `<path d="${segment(from, polar(at, 15, bearing))}" stroke="${inks.accent}" stroke-width="3.4" fill="none"/>${station(from)}`;
}

/** A line that passes the mark on one side and ends beyond it. */
function missed(at: Point, radius: number, side: 1 | -1): string {
  const from = polar(at, radius, 180 - side * 29);
  const by = polar(at, 44, side * 84);
  const to = { x: by.x + (by.x - from.x) * 0.5, y: by.y + (by.y - from.y) * 0.5 };
  return `<path d="${segment(from, to)}" stroke="${inks.soft}" stroke-width="2" stroke-dasharray="7 6" fill="none"/><circle cx="${round(to.x)}" cy="${round(to.y)}" r="5.5" fill="${inks.paper}" stroke="${inks.soft}" stroke-width="2"/>`;
}

/** The triangle of a station. */
function station({ x, y }: Point): string {
  return `<path d="M${round(x)} ${round(y - 12)}l11 19h-22z" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="2.2" stroke-linejoin="round"/><circle cx="${round(x)}" cy="${round(y)}" r="2.4" fill="${inks.ink}"/>`;
}

function mark({ x, y }: Point, kind: Sight['mark']): string {
  const hairs = `<path d="M${x - 30} ${y}h12M${x + 30} ${y}h-12M${x} ${y - 30}v12M${x} ${y + 30}v-12" stroke="${inks.ink}" stroke-width="2" fill="none"/>`;
  if (kind === 'none') return hairs;
  const fill = kind === 'concluded' ? inks.accent : inks.paper;
  return `${hairs}<circle cx="${x}" cy="${y}" r="12" fill="${fill}" stroke="${inks.accent}" stroke-width="3"/>`;
}

/** The point at a distance and a bearing, in degrees from the north by the east. */
function polar(at: Point, distance: number, bearing: number): Point {
  const angle = (bearing * Math.PI) / 180;
  return { x: at.x + distance * Math.sin(angle), y: at.y - distance * Math.cos(angle) };
}

function segment(a: Point, b: Point): string {
  return `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
