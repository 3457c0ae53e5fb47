/**
 * Open shapes for small drawn maps: land and borders of Natural Earth (public domain, through `world-atlas`) and the
 * states of the US Census Bureau (public domain, through `us-atlas`), each with its bounds, read once.
 */
import { geoBounds } from 'd3-geo';
import { feature, mesh } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import usText from 'us-atlas/states-10m.json?raw';
import fineText from 'world-atlas/countries-10m.json?raw';
import coarseText from 'world-atlas/countries-50m.json?raw';

/** One piece of land, or one line, with the box of longitudes and latitudes it lies in. */
export type Shape = GeoJSON.Feature & { bounds: [[number, number], [number, number]] };

const cache = new Map<string, Topology>();
function topology(name: 'coarse' | 'fine' | 'us'): Topology {
  let found = cache.get(name);
  if (!found)
    cache.set(
      name,
      (found = JSON.parse({ coarse: coarseText, fine: fineText, us: usText }[name]) as Topology),
    );
  return found;
}

const shapes = new Map<string, Shape[]>();
/** Every separate piece of land. */
export function countries(name: 'coarse' | 'fine'): Shape[] {
  let found = shapes.get(name);
  if (!found) {
    const topo = topology(name);
    const features = feature(topo, topo.objects['countries'] as GeometryCollection).features;
    // Parts, so that an overseas island does not make its country count as everywhere.
    found = features.flatMap((one) => {
      const parts =
        one.geometry.type === 'MultiPolygon'
          ? one.geometry.coordinates
          : one.geometry.type === 'Polygon'
            ? [one.geometry.coordinates]
            : [];
      return parts.map((coordinates) => bounded({ type: 'Polygon', coordinates }));
    });
    // A few islets are drawn the wrong way round, and would be everything but themselves.
    found = found.filter(({ bounds: [[, south], [, north]] }) => south > -89 || north < 89);
    shapes.set(name, found);
  }
  return found;
}

/**
 * The American shores of the Great Lakes: the land of Natural Earth has no lakes, but the states end at their shores.
 * Nothing else in this box is an outer line of the states, save short stretches of river border.
 */
const lakes = { west: -92.3, east: -76, south: 41.2, north: 48.2 };
let lakeShores: Shape[] | undefined;

/** The American shores of the Great Lakes, as lines. */
export function shores(): Shape[] {
  if (lakeShores) return lakeShores;
  const topo = topology('us');
  const outer = mesh(topo, topo.objects['states'] as GeometryCollection, (a, b) => a === b);
  lakeShores = [];
  for (const line of outer.coordinates) {
    let run: number[][] = [];
    for (const dot of [...line, [0, 0]]) {
      const [lon, lat] = dot as [number, number];
      if (lon > lakes.west && lon < lakes.east && lat > lakes.south && lat < lakes.north) {
        run.push(dot);
        continue;
      }
      if (run.length > 1) lakeShores.push(bounded({ type: 'LineString', coordinates: run }));
      run = [];
    }
  }
  return lakeShores;
}

const lines = new Map<string, Shape[]>();
/** Inner borders as separate lines, each with its bounds. */
export function inner(name: 'coarse' | 'fine' | 'us'): Shape[] {
  let found = lines.get(name);
  if (!found) {
    const topo = topology(name);
    found = innerLines(topo, topo.objects[name === 'us' ? 'states' : 'countries'] as GeometryCollection);
    lines.set(name, found);
  }
  return found;
}

/** The lines between the areas of a collection, each with its bounds. */
export function innerLines(topo: Topology, of: GeometryCollection): Shape[] {
  return mesh(topo, of, (a, b) => a !== b).coordinates.map((line) =>
    bounded({ type: 'LineString', coordinates: line }),
  );
}

/** A piece of land or a line with the box it lies in. */
function bounded(geometry: GeoJSON.Polygon | GeoJSON.LineString): Shape {
  const part: GeoJSON.Feature = { type: 'Feature', properties: {}, geometry };
  return { ...part, bounds: geoBounds(part) };
}
