/** What the map of one place shows, shared by the pages of a county wherever it can be. */
import { areaOfPlace } from '../charts/areas.ts';
import { countries, type Shape } from '../charts/atlas.ts';
import { holds, type Area } from '../charts/counties.ts';
import { viewOn, type Point, type View } from '../charts/geography.ts';
import { placeLabels, type Box, type Label } from '../charts/labels.ts';
import { scaleGround, tickGround } from '../charts/journey-drawing.ts';
import { nameOfPlace, positionOf } from '../layout/lookup.ts';
import type { Dossier, PlaceView } from '../../src/dossier/types.ts';

export interface Locator {
  view: View;
  /** The ground washed, with the place whose it is. */
  wash: { d: string; place: string; rough: boolean } | undefined;
  /** The place itself, or what of it or above it has a position. */
  here: { x: number; y: number; place: string; own: boolean; lat: number; lon: number } | undefined;
  others: { x: number; y: number }[];
  labels: (Label & { main: boolean })[];
  inset:
    { view: View; wash: string; x: number; y: number; at: [number, number]; country: string } | undefined;
}

/** Units of the drawing; on a phone one is a little less than a pixel. */
export const sheet = { width: 400, height: 340, name: 14, main: 17, figures: 12.5 };
const insetSheet = { width: 92, height: 104 };

/** Ground up to this wide, in kilometres, is shown whole. */
const wholeTo = 300;
const wide: Record<string, number> = {
  country: 1600,
  'sovereign state': 1600,
  state: 900,
  province: 900,
  territory: 1600,
};

/** The map of a place, or nothing where neither it nor anything it lies in has a position. */
export function locatorOf(dossier: Dossier, place: PlaceView): Locator | undefined {
  const found = areaOfPlace(dossier, place.id);
  const position = positionOf(dossier, place.id);
  const own = position?.place.id === place.id;
  // Of a place without a position, what it lies in is shown; a shape of that tells more than its middle.
  const at: Point | undefined = position && { lon: position.lon, lat: position.lat };
  const itself = found?.place === place.id;
  if (!found && !at) return undefined;
  const view =
    found && (itself || extentOf(found.area) <= wholeTo)
      ? viewOn(cornersOf(found.area), sheet.width, sheet.height, { padX: 34, padY: 34, leastKm: 60 })
      : viewOn([rounded(at!)], sheet.width, sheet.height, {
          padX: 0,
          padY: 0,
          leastKm: wide[place.place.kind] ?? 300,
        });
  const mark = (point: Point) => {
    const [x, y] = view.xy(point);
    return { x, y };
  };
  const pointed = at !== undefined && !(itself && extentOf(found.area) > 0) && own;
  const here =
    at && (pointed || !found)
      ? { ...mark(at), place: position!.place.id, own, lat: at.lat, lon: at.lon }
      : undefined;
  const near = place.near.flatMap(({ place: id }) => {
    const other = dossier.places.get(id)?.place;
    if (other?.lat === undefined || other.lon === undefined) return [];
    return [{ ...mark({ lat: other.lat, lon: other.lon }), name: other.name }];
  });
  const others = near.filter(
    (one, i) =>
      inside(one) && !(here && close(one, here)) && !near.slice(0, i).some((earlier) => close(earlier, one)),
  );
  const country = place.above.findLast((id) => dossier.facts.places.get(id)?.kind === 'country');
  const inset = country === undefined ? undefined : insetOf(dossier, country, found?.area, at, here);
  const ground: Box[] = [scaleGround(view, sheet), ...tickGround(view, sheet)];
  if (inset) ground.push([inset.x, inset.y, inset.x + insetSheet.width, inset.y + insetSheet.height]);
  const name = here ? nameOfPlace(dossier, here.place) : '';
  const labels = here
    ? placeLabels(
        [{ x: here.x, y: here.y, text: name, size: sheet.main, reach: 7, bold: true }],
        [8, 4, sheet.width - 4, sheet.height - 8],
        ground,
      ).map((label) => ({ ...label, main: true }))
    : [];
  return {
    view,
    wash: found && { d: view.area(found.area), place: found.place, rough: found.area.rough },
    here,
    others,
    labels,
    inset,
  };
}

function inside({ x, y }: { x: number; y: number }): boolean {
  return x > 4 && y > 4 && x < sheet.width - 4 && y < sheet.height - 4;
}

function close(a: { x: number; y: number }, b: { x: number; y: number }): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < 4;
}

/** To half a degree, so that places near each other share one view. */
function rounded({ lon, lat }: Point): Point {
  return { lon: Math.round(lon * 2) / 2, lat: Math.round(lat * 2) / 2 };
}

function extentOf({ bounds: [[west, south], [east, north]] }: Shape): number {
  const across =
    (west <= east ? east - west : east + 360 - west) * Math.cos(((south + north) * Math.PI) / 360);
  return 111.2 * Math.max(across, north - south);
}

function cornersOf({ bounds: [[west, south], [east, north]] }: Shape): Point[] {
  const past = west <= east ? east : east + 360;
  const [lon, lat] = [(west + past) / 2, (south + north) / 2];
  return [
    { lon: west, lat },
    { lon: past, lat },
    { lon, lat: south },
    { lon, lat: north },
  ];
}

/** The small map of the country, in the upper corner away from the place. */
function insetOf(
  dossier: Dossier,
  country: string,
  area: Area | undefined,
  at: Point | undefined,
  here: { x: number; y: number } | undefined,
): Locator['inset'] {
  const middle = area ? centreOf(area) : at;
  if (!middle) return undefined;
  const land = landWith(country, middle, dossier);
  if (!land) return undefined;
  const view = viewOn(cornersOf(land), insetSheet.width, insetSheet.height, {
    padX: 8,
    padY: 8,
    leastKm: 250,
  });
  const left = here !== undefined && here.x > sheet.width / 2;
  const point = view.xy(at ?? middle);
  return {
    view,
    wash: area ? view.area(area) : '',
    x: left ? 0 : sheet.width - insetSheet.width,
    y: 0,
    at: point,
    country,
  };
}

function centreOf({ bounds: [[west, south], [east, north]] }: Shape): Point {
  return { lon: (west + (west <= east ? east : east + 360)) / 2, lat: (south + north) / 2 };
}

const lands = new Map<string, Shape | undefined>();

/** The piece of land a point stands on, or the largest whose box it falls into. */
function landWith(country: string, point: Point, dossier: Dossier): Shape | undefined {
  const own = dossier.facts.places.get(country);
  const centre = own?.lat !== undefined && own.lon !== undefined ? { lon: own.lon, lat: own.lat } : undefined;
  // Off the country’s main land (Alaska, Shetland) the place’s own part of it is shown.
  for (const asked of [centre, point]) {
    if (!asked) continue;
    const key = `${asked.lon} ${asked.lat}`;
    if (!lands.has(key))
      lands.set(
        key,
        countries('coarse').find((shape) => holdsExactly(shape, asked)),
      );
    const land = lands.get(key);
    if (land && inBox(land, point)) return land;
  }
  return undefined;
}

function holdsExactly(shape: Shape, point: Point): boolean {
  return inBox(shape, point) && holds({ ...shape, key: '', rough: true }, point);
}

function inBox({ bounds: [[west, south], [east, north]] }: Shape, { lon, lat }: Point): boolean {
  return (
    lat > south - 0.5 &&
    lat < north + 0.5 &&
    (west <= east ? lon > west - 0.5 && lon < east + 0.5 : lon > west - 0.5 || lon < east + 0.5)
  );
}
