/**
 * Open shapes for small drawn maps: land and borders of Natural Earth (public domain, through `world-atlas`) and the
 * states of the US Census Bureau (public domain, through `us-atlas`), cut to a view and thinned to what can be seen.
 */
import { geoArea, geoAzimuthalEqualArea, geoBounds, geoDistance, geoGraticule, geoPath, type GeoProjection } from 'd3-geo';
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

/** Writes a path, leaving out steps too small to be seen and rings too small to matter. */
class Pen {
  out = '';
  private ring: string[] = [];
  private x = NaN;
  private y = NaN;
  private readonly step: number;
  constructor(step: number) {
    this.step = step;
  }
  private put(command: string, x: number, y: number): void {
    const [px, py] = [Math.round(x * 10) / 10, Math.round(y * 10) / 10];
    this.ring.push(`${command}${px} ${py}`);
    [this.x, this.y] = [x, y];
  }
  moveTo(x: number, y: number): void {
    this.flush();
    this.put('M', x, y);
  }
  lineTo(x: number, y: number): void {
    if (Math.hypot(x - this.x, y - this.y) >= this.step) this.put('L', x, y);
  }
  closePath(): void {
    if (this.ring.length > 3) this.out += `${this.ring.join('')}Z`;
    this.ring = [];
  }
  flush(): string {
    if (this.ring.length > 1) this.out += this.ring.join('');
    this.ring = [];
    return this.out;
  }
  arc(): void {}
  beginPath(): void {}
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
  const step = widthKm > 2500 ? 1.3 : 0.8;
  const draw = (shape: GeoJSON.GeoJSON, s = step) => {
    const pen = new Pen(s);
    geoPath(projection, pen as never)(shape as never);
    return pen.flush();
  };
  const tooSmall = 4 / (scale * scale);
  const big = within(countries(detail)).filter((shape) => widthKm <= 2500 || geoArea(shape) > tooSmall);
  return {
    projection, width, height,
    land: draw(together(big)),
    borders: draw(together(within(inner(detail))), step * 1.5),
    states: draw(together(within(inner('us'))), step * 1.5),
    graticule: draw(geoGraticule().step(stepOf(widthKm))(), 0),
    ticks: ticksOf(projection, width, height, stepOf(widthKm)[0]),
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
  const nearLat = Math.max(south, Math.min(north, lat));
  const inside = west <= east ? lon >= west && lon <= east : lon >= west || lon <= east;
  if (inside) return Math.abs(nearLat - lat) * (Math.PI / 180) <= reach;
  const edges = [west, east].flatMap((edge) => [south, nearLat, north].map((l) => geoDistance([lon, lat], [edge, l])));
  return Math.min(...edges) <= reach;
}

function stepOf(widthKm: number): [number, number] {
  const step = widthKm > 4000 ? 10 : widthKm > 1500 ? 5 : widthKm > 400 ? 2 : widthKm > 150 ? 1 : 0.5;
  return [step, step];
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
