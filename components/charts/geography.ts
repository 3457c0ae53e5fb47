/** Views for small drawn maps: a projection fitted to some points, and what of the atlas can be seen in it. */
import { geoArea, geoAzimuthalEqualArea, geoGraticule, geoPath, type GeoProjection } from 'd3-geo';
import { countries, inner, shores, type Shape } from './atlas.ts';
import { countySheets, linesOf, stateSheets, type Area } from './counties.ts';
import { inView } from './in-view.ts';
import { leastLand, Pen } from './pen.ts';
import { uncut } from './uncut.ts';

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
  shores: string;
  /** Lines between counties, on maps of a small piece of the earth. */
  counties: string;
  graticule: string;
  /** Where lines of latitude and longitude meet the left and the lower edge. */
  ticks: { x: number; y: number; edge: 'left' | 'foot'; degrees: number }[];
  /** Length of a round distance at the middle of the view, in units of the drawing. */
  scale: { km: number; length: number };
  /** The ground of a county as path data. */
  area: (area: Area) => string;
  /** Where a point lies in the drawing. */
  xy: (point: Point) => [number, number];
}

const views = new Map<string, View>();

/** As `drawnView`; pages that show the same points share one view. */
export function viewOn(...asked: Parameters<typeof drawnView>): View {
  const key = JSON.stringify(asked);
  const view = views.get(key) ?? drawnView(...asked);
  views.delete(key);
  views.set(key, view);
  // Enough for the maps of a region to be shared, and little beside the pages themselves.
  if (views.size > 300) views.delete(views.keys().next().value!);
  return view;
}

/**
 * A view on the smallest piece of the earth that shows every point, in an equal-area projection centred on them.
 * `leastKm` keeps a single point from being shown without its surroundings.
 */
function drawnView(
  points: readonly Point[],
  width: number,
  height: number,
  options: { padX: number; padY: number; leastKm: number },
): View {
  const middle = middleOf(points);
  const projection = centredOn(middle);
  const flat = points.map((p) => projection([p.lon, p.lat])!);
  const xs = flat.map((p) => p[0]);
  const ys = flat.map((p) => p[1]);
  const least = options.leastKm / 6371;
  const spanX = Math.max(Math.max(...xs) - Math.min(...xs), least);
  const spanY = Math.max(Math.max(...ys) - Math.min(...ys), least * (height / width));
  const scale = Math.min((width - 2 * options.padX) / spanX, (height - 2 * options.padY) / spanY);
  const [cx, cy] = [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
  const at: [number, number] = [width / 2 - cx * scale, height / 2 - cy * scale];
  const edges = [-20, -20, width + 20, height + 20] as const;
  const fitted = (one: GeoProjection) =>
    one
      .scale(scale)
      .translate(at)
      .clipExtent([
        [edges[0], edges[1]],
        [edges[2], edges[3]],
      ]);
  fitted(projection);
  const shortcut = fitted(centredOn(middle)).preclip(uncut);

  const widthKm = (width / scale) * 6371;
  const detail = widthKm > 2500 ? 'coarse' : 'fine';
  const centre = projection.invert!([width / 2, height / 2])!;
  const reach = (Math.hypot(width, height) / 2 / scale) * 1.15;
  const within = (all: Shape[]) =>
    all.filter((shape) => boundsReach(shape.bounds, centre as [number, number], reach));
  // A coast across an ocean is drawn coarser: what a page weighs is mostly its shores.
  const ocean = widthKm > 2500;
  const slack = ocean ? 2 : 0.5;
  const grain = ocean ? 1 : 0.5;
  // On a phone the lines of states would be a haze.
  const crowded = ocean && width < 500;
  const behind: [number, number] = [middle.lon > 0 ? middle.lon - 180 : middle.lon + 180, -middle.lat];
  const frame = { centre: [middle.lon, middle.lat], scale, at, edges } as const;
  const draw = (shapes: readonly Shape[], slack: number, speck = 0) => {
    const pen = new Pen(slack, grain);
    const [cut, whole] = [geoPath(projection, pen as never), geoPath(shortcut, pen as never)];
    const leavesMark = inView(frame, speck);
    for (const shape of shapes)
      if (boundsReach(shape.bounds, behind, 0.7)) cut(shape);
      else if (leavesMark(shape)) whole(shape);
    return pen.written();
  };
  const tooSmall = 4 / (scale * scale);
  const big = within(countries(detail)).filter((shape) => widthKm <= 2500 || areaOf(shape) > tooSmall);
  const areas = new Map<string, string>();
  const net = new Pen(ocean ? 1.2 : 0.4, grain);
  geoPath(projection, net as never)(netAround(centre as [number, number], reach, stepOf(widthKm)));
  return {
    projection,
    width,
    height,
    // Islets that would be specks say nothing on a map of an ocean.
    land: draw(big, slack, ocean ? 3.5 * leastLand : leastLand),
    borders: draw(within(inner(detail)), slack * 1.5, ocean ? 4 * leastLand : 0),
    states: crowded
      ? ''
      : draw(
          within([inner('us'), ...stateSheets.map(linesOf)].flat()),
          slack * 1.5,
          ocean ? 4 * leastLand : 0,
        ),
    shores: draw(within(shores()), slack),
    counties: widthKm > countyLinesTo ? '' : draw(within(countySheets.flatMap(linesOf)), slack),
    graticule: net.written(),
    ticks: ticksOf(projection, width, height, stepOf(widthKm)),
    scale: scaleBar(widthKm / width, width),
    area: (area) => {
      let path = areas.get(area.key);
      if (path === undefined) {
        const pen = new Pen(slack);
        geoPath(projection, pen as never)(area);
        areas.set(area.key, (path = pen.written()));
      }
      return path;
    },
    xy: ({ lon, lat }) => projection([lon, lat]) as [number, number],
  };
}

/** Maps wider than this, in kilometres, show no county lines. */
const countyLinesTo = 1100;

function centredOn({ lon, lat }: Point): GeoProjection {
  return geoAzimuthalEqualArea().rotate([-lon, -lat]).translate([0, 0]).scale(1).precision(0.2);
}

const sizes = new WeakMap<Shape, number>();

function areaOf(shape: Shape): number {
  let area = sizes.get(shape);
  if (area === undefined) sizes.set(shape, (area = geoArea(shape)));
  return area;
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
function boundsReach(
  [[west, south], [east, north]]: Shape['bounds'],
  [lon, lat]: [number, number],
  reach: number,
): boolean {
  const rad = Math.PI / 180;
  const nearLat = Math.max(south, Math.min(north, lat));
  if (Math.abs(nearLat - lat) * rad > reach) return false;
  if (west <= east ? lon >= west && lon <= east : lon >= west || lon <= east) return true;
  const [sin, cos, least] = [Math.sin(lat * rad), Math.cos(lat * rad), Math.cos(Math.min(reach, Math.PI))];
  return [west, east].some((edge) =>
    [south, nearLat, north].some(
      (l) => sin * Math.sin(l * rad) + cos * Math.cos(l * rad) * Math.cos((edge - lon) * rad) >= least,
    ),
  );
}

function stepOf(widthKm: number): number {
  return widthKm > 9000
    ? 20
    : widthKm > 4000
      ? 10
      : widthKm > 1500
        ? 5
        : widthKm > 400
          ? 2
          : widthKm > 150
            ? 1
            : 0.5;
}

/** Lines of latitude and longitude around a point. */
function netAround([lon, lat]: [number, number], reach: number, step: number): GeoJSON.MultiLineString {
  const degrees = (reach * 180) / Math.PI;
  const [south, north] = [Math.max(-80, lat - degrees), Math.min(80, lat + degrees)];
  const beside = Math.min(
    179,
    degrees / Math.cos((Math.min(75, Math.max(Math.abs(south), Math.abs(north))) * Math.PI) / 180),
  );
  const down = (value: number) => Math.floor(value / step) * step;
  return geoGraticule()
    .step([step, step])
    .precision(step / 2)
    .extent([
      [down(lon - beside), down(south)],
      [lon + beside, north],
    ])();
}

function ticksOf(projection: GeoProjection, width: number, height: number, step: number): View['ticks'] {
  const ticks: View['ticks'] = [];
  const walk = (edge: 'left' | 'foot', length: number, at: (t: number) => [number, number], pick: 0 | 1) => {
    let before: number | undefined;
    for (let t = 0; t <= length; t += 1) {
      const here = projection.invert!(at(t))?.[pick];
      if (
        here !== undefined &&
        before !== undefined &&
        Math.floor(here / step) !== Math.floor(before / step) &&
        Math.abs(here - before) < step
      ) {
        const value =
          Math.round(Math.max(Math.floor(here / step), Math.floor(before / step)) * step * 100) / 100;
        const [x, y] = at(t);
        ticks.push({ x, y, edge, degrees: value });
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
