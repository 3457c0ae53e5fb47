/**
 * Open shapes for small drawn maps: land and borders of Natural Earth (public domain, through `world-atlas`) and the
 * states of the US Census Bureau (public domain, through `us-atlas`), cut to a view and thinned to what can be seen.
 */
import { geoArea, geoAzimuthalEqualArea, geoBounds, geoGraticule, geoPath, type GeoProjection } from 'd3-geo';
import { feature, mesh } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import usText from 'us-atlas/states-10m.json?raw';
import fineText from 'world-atlas/countries-10m.json?raw';
import coarseText from 'world-atlas/countries-50m.json?raw';

export interface Point {
  lon: number;
  lat: number;
}

export interface View {
  projection: GeoProjection;
  width: number;
  height: number;
  land: string;
  borders: string;
  states: string;
  graticule: string;
  /** Where lines of latitude and longitude meet the left and the lower edge. */
  ticks: { x: number; y: number; edge: 'left' | 'foot'; label: string }[];
  /** Length of a round distance at the middle of the view, in units of the drawing. */
  scale: { km: number; length: number };
}

type Shape = GeoJSON.Feature & { bounds: [[number, number], [number, number]] };

const cache = new Map<string, Topology>();
function topology(name: 'coarse' | 'fine' | 'us'): Topology {
  let found = cache.get(name);
  if (!found) cache.set(name, (found = JSON.parse({ coarse: coarseText, fine: fineText, us: usText }[name]) as Topology));
  return found;
}

const shapes = new Map<string, Shape[]>();
function countries(name: 'coarse' | 'fine'): Shape[] {
  let found = shapes.get(name);
  if (!found) {
    const topo = topology(name);
    const features = feature(topo, topo.objects['countries'] as GeometryCollection).features;
    // Parts, so that an overseas island does not make its country count as everywhere.
    found = features.flatMap((one) => {
      const parts = one.geometry.type === 'MultiPolygon' ? one.geometry.coordinates : one.geometry.type === 'Polygon' ? [one.geometry.coordinates] : [];
      return parts.map((coordinates): Shape => {
        const part: GeoJSON.Feature = { type: 'Feature', properties: {}, geometry: { type: 'Polygon', coordinates } };
        return { ...part, bounds: geoBounds(part) };
      });
    });
    // A few islets are drawn the wrong way round, and would be everything but themselves.
    found = found.filter(({ bounds: [[, south], [, north]] }) => south > -89 || north < 89);
    shapes.set(name, found);
  }
  return found;
}

const lines = new Map<string, Shape[]>();
/** Inner borders as separate lines, each with its bounds. */
function inner(name: 'coarse' | 'fine' | 'us'): Shape[] {
  let found = lines.get(name);
  if (!found) {
    const topo = topology(name);
    const net = mesh(topo, topo.objects[name === 'us' ? 'states' : 'countries'] as GeometryCollection, (a, b) => a !== b);
    found = net.coordinates.map((coordinates): Shape => {
      const part: GeoJSON.Feature = { type: 'Feature', properties: {}, geometry: { type: 'LineString', coordinates } };
      return { ...part, bounds: geoBounds(part) };
    });
    lines.set(name, found);
  }
  return found;
}

type Dot = readonly [number, number];

/** Collects the lines of a drawing and writes them thinned: steps from dot to dot, to half a unit. */
class Pen {
  private readonly lines: { dots: Dot[]; closed: boolean }[] = [];
  private readonly slack: number;
  private dots: Dot[] = [];
  /** `slack` is how far, in units of the drawing, a line may stray from the true one. */
  constructor(slack: number) {
    this.slack = slack;
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
      const kept = thinned(dots, this.slack).map(([x, y]): Dot => [Math.round(x * 2), Math.round(y * 2)]);
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

function tiny(dots: readonly Dot[]): boolean {
  const xs = dots.map((d) => d[0]);
  const ys = dots.map((d) => d[1]);
  return Math.max(...xs) - Math.min(...xs) < 3.5 && Math.max(...ys) - Math.min(...ys) < 3.5;
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
      const off = length < 1e-9 ? Math.hypot(x - ax, y - ay) : Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / length;
      if (off > worst) [worst, at] = [off, i];
    }
    if (at > 0) {
      keep[at] = 1;
      parts.push([from, at], [at, to]);
    }
  }
  return dots.filter((_, i) => keep[i] === 1);
}

/**
 * A view on the smallest piece of the earth that shows every point, in an equal-area projection centred on them.
 * `leastKm` keeps a single point from being shown without its surroundings.
 */
export function viewOn(points: readonly Point[], width: number, height: number, options: { padX: number; padY: number; leastKm: number }): View {
  const middle = middleOf(points);
  const projection = geoAzimuthalEqualArea().rotate([-middle.lon, -middle.lat]).translate([0, 0]).scale(1).precision(0.2);
  const flat = points.map((p) => projection([p.lon, p.lat])!);
  const xs = flat.map((p) => p[0]);
  const ys = flat.map((p) => p[1]);
  const least = options.leastKm / 6371;
  const spanX = Math.max(Math.max(...xs) - Math.min(...xs), least);
  const spanY = Math.max(Math.max(...ys) - Math.min(...ys), least * (height / width));
  const scale = Math.min((width - 2 * options.padX) / spanX, (height - 2 * options.padY) / spanY);
  const [cx, cy] = [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
  projection.scale(scale).translate([width / 2 - cx * scale, height / 2 - cy * scale]).clipExtent([[-20, -20], [width + 20, height + 20]]);

  const widthKm = (width / scale) * 6371;
  const detail = widthKm > 2500 ? 'coarse' : 'fine';
  const centre = projection.invert!([width / 2, height / 2])!;
  const reach = (Math.hypot(width, height) / 2 / scale) * 1.15;
  const within = (all: Shape[]) => all.filter((shape) => boundsReach(shape.bounds, centre as [number, number], reach));
  const together = (features: Shape[]) => ({ type: 'FeatureCollection', features }) as GeoJSON.FeatureCollection;
  const slack = widthKm > 2500 ? 0.8 : 0.5;
  const draw = (shape: GeoJSON.GeoJSON, slack: number) => {
    const pen = new Pen(slack);
    geoPath(projection, pen as never)(shape as never);
    return pen.written();
  };
  const tooSmall = 4 / (scale * scale);
  const big = within(countries(detail)).filter((shape) => widthKm <= 2500 || geoArea(shape) > tooSmall);
  return {
    projection, width, height,
    land: draw(together(big), slack),
    borders: draw(together(within(inner(detail))), slack * 1.5),
    states: draw(together(within(inner('us'))), slack * 1.5),
    graticule: draw(netAround(centre as [number, number], reach, stepOf(widthKm)), 0.4),
    ticks: ticksOf(projection, width, height, stepOf(widthKm)),
    scale: scaleBar(widthKm / width, width),
  };
}

function middleOf(points: readonly Point[]): Point {
  const rad = Math.PI / 180;
  let [x, y, z] = [0, 0, 0];
  for (const { lon, lat } of points) {
    x += Math.cos(lat * rad) * Math.cos(lon * rad);
    y += Math.cos(lat * rad) * Math.sin(lon * rad);
    z += Math.sin(lat * rad);
  }
  return { lon: Math.atan2(y, x) / rad, lat: Math.atan2(z, Math.hypot(x, y)) / rad };
}

/** Whether any of a box of longitudes and latitudes may lie within `reach` (radians) of a point. */
function boundsReach([[west, south], [east, north]]: Shape['bounds'], [lon, lat]: [number, number], reach: number): boolean {
  const rad = Math.PI / 180;
  const nearLat = Math.max(south, Math.min(north, lat));
  if (Math.abs(nearLat - lat) * rad > reach) return false;
  if (west <= east ? lon >= west && lon <= east : lon >= west || lon <= east) return true;
  const [sin, cos, least] = [Math.sin(lat * rad), Math.cos(lat * rad), Math.cos(Math.min(reach, Math.PI))];
  return [west, east].some((edge) => [south, nearLat, north].some((l) => sin * Math.sin(l * rad) + cos * Math.cos(l * rad) * Math.cos((edge - lon) * rad) >= least));
}

function stepOf(widthKm: number): number {
  return widthKm > 4000 ? 10 : widthKm > 1500 ? 5 : widthKm > 400 ? 2 : widthKm > 150 ? 1 : 0.5;
}

/** Lines of latitude and longitude around a point. */
function netAround([lon, lat]: [number, number], reach: number, step: number): GeoJSON.MultiLineString {
  const degrees = (reach * 180) / Math.PI;
  const [south, north] = [Math.max(-80, lat - degrees), Math.min(80, lat + degrees)];
  const beside = Math.min(179, degrees / Math.cos((Math.min(75, Math.max(Math.abs(south), Math.abs(north))) * Math.PI) / 180));
  const down = (value: number) => Math.floor(value / step) * step;
  return geoGraticule().step([step, step]).precision(step / 2).extent([[down(lon - beside), down(south)], [lon + beside, north]])();
}

function ticksOf(projection: GeoProjection, width: number, height: number, step: number): View['ticks'] {
  const ticks: View['ticks'] = [];
  const walk = (edge: 'left' | 'foot', length: number, at: (t: number) => [number, number], pick: 0 | 1) => {
    let before: number | undefined;
    for (let t = 0; t <= length; t += 1) {
      const here = projection.invert!(at(t))?.[pick];
      if (here !== undefined && before !== undefined && Math.floor(here / step) !== Math.floor(before / step) && Math.abs(here - before) < step) {
        const value = Math.round(Math.max(Math.floor(here / step), Math.floor(before / step)) * step * 100) / 100;
        const [x, y] = at(t);
        const side = pick === 1 ? (value < 0 ? 'S' : 'N') : value < 0 ? 'W' : 'E';
        ticks.push({ x, y, edge, label: value === 0 ? '0°' : `${Math.abs(value)}° ${side}` });
      }
      before = here;
    }
  };
  walk('left', height, (t) => [0, t], 1);
  walk('foot', width, (t) => [t, height], 0);
  return ticks;
}

function scaleBar(kmPerUnit: number, width: number): View['scale'] {
  const round = [5, 10, 20, 50, 100, 200, 500, 1000, 2000].filter((km) => km / kmPerUnit <= width / 4);
  const km = round.at(-1) ?? 5;
  return { km, length: Math.round((km / kmPerUnit) * 10) / 10 };
}
