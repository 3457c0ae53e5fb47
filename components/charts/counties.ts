/**
 * The shapes of counties, provinces and states, and which of them a place is or lies in. Built-in places are known by their ids,
 * counties of the United States by their name and state, all others by their names.
 */
import { geoBounds, geoContains } from 'd3-geo';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import usCountyText from 'us-atlas/counties-10m.json?raw';
import type { Place } from '../../src/model/place.ts';
import type { Point } from './geography.ts';
import { innerLines, type Shape } from './atlas.ts';
import countyText from './shapes/counties.json?raw';

/** Counties and the like of one country, as one file of shapes has them. */
export type Sheet = 'ireland' | 'britain' | 'norway' | 'sweden' | 'canada' | 'australia';

/** Sheets of which the lines are drawn only where a small piece of the earth is shown. */
export const countySheets: readonly Sheet[] = ['ireland', 'britain', 'norway', 'sweden'];
/** Sheets of provinces and states, whose lines are drawn on every map. */
export const stateSheets: readonly Sheet[] = ['canada', 'australia'];

/** The ground of one county, province or state. */
export interface Area extends Shape {
  /** Tells it from every other area. */
  key: string;
  /** Put together from districts of today that follow its bounds only loosely. */
  rough: boolean;
}

interface Properties {
  id?: string;
  names?: string[];
  rough?: boolean;
}

let sheets: Record<Sheet, Topology> | undefined;
const sheet = (name: Sheet): Topology => (sheets ??= JSON.parse(countyText) as Record<Sheet, Topology>)[name];

const lines = new Map<Sheet, Shape[]>();
/** The lines between the counties of one sheet. */
export function linesOf(name: Sheet): Shape[] {
  let found = lines.get(name);
  if (!found) {
    const topo = sheet(name);
    found = innerLines(topo, topo.objects['shapes'] as GeometryCollection);
    lines.set(name, found);
  }
  return found;
}

/** The country that the names of a sheet are looked up in. */
const nameless: readonly (readonly [Sheet, country: string])[] = [
  ['norway', 'norway'],
  ['sweden', 'sweden'],
];

let byKey: Map<string, () => Area> | undefined;
function known(): Map<string, () => Area> {
  if (byKey) return byKey;
  byKey = new Map();
  const put = (key: string, topo: Topology, geometry: unknown, rough: boolean) => {
    let made: Area | undefined;
    byKey!.set(key, () => (made ??= areaOf(key, feature(topo, geometry as never) as GeoJSON.Feature, rough)));
  };
  for (const name of [...countySheets, ...stateSheets]) {
    const topo = sheet(name);
    for (const geometry of (topo.objects['shapes'] as GeometryCollection<Properties>).geometries) {
      const { id, names = [], rough = false }: Properties = geometry.properties ?? {};
      if (id !== undefined) put(id, topo, geometry, rough);
      for (const [of, country] of nameless)
        if (of === name) for (const one of names) put(`${country} ${folded(one)}`, topo, geometry, rough);
    }
  }
  return byKey;
}

let ofStates: Map<string, () => Area> | undefined;
/** States and counties of the United States: `michigan`, `michigan houghton`, by the names of both. */
function american(): Map<string, () => Area> {
  if (ofStates) return ofStates;
  ofStates = new Map();
  const topo = JSON.parse(usCountyText) as Topology;
  const states = new Map<string, string>();
  const put = (key: string, geometry: unknown) => {
    let made: Area | undefined;
    ofStates!.set(
      key,
      () => (made ??= areaOf(`us ${key}`, feature(topo, geometry as never) as GeoJSON.Feature, false)),
    );
  };
  const of = (name: string) =>
    (topo.objects[name] as GeometryCollection<{ name: string }>).geometries as {
      id?: string | number;
      properties: { name: string };
    }[];
  for (const state of of('states')) {
    states.set(String(state.id), folded(state.properties.name));
    put(folded(state.properties.name), state);
  }
  for (const county of of('counties')) {
    const key = `${states.get(String(county.id).slice(0, 2))} ${folded(county.properties.name)}`;
    // A few cities share the name of the county around them, which comes with the lower number.
    if (!ofStates.has(key)) put(key, county);
  }
  return ofStates;
}

function areaOf(key: string, shape: GeoJSON.Feature, rough: boolean): Area {
  return { ...shape, key, rough, bounds: geoBounds(shape) };
}

/** A name without the word for what it names, so that “Houghton Co.” and “Houghton” are one. */
export function folded(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}]+/gu, ' ')
    .split(' ')
    .filter((word) => word !== '' && !kindWords.has(word))
    .join(' ');
}
const kindWords = new Set('county co of the amt fylke lan parish'.split(' '));

/**
 * The area that a place is, told from the place and the ids of what it lies in, smallest first. Only places that
 * are counties or wider have one.
 */
export function areaFor(place: Place, above: readonly Place[]): Area | undefined {
  const direct = place.builtIn ? known().get(place.id) : undefined;
  if (direct) return direct();
  if (place.builtIn && place.iso?.startsWith('US-')) return american().get(folded(place.name))?.();
  if (!/^(?:county|amt|fylke|län|parish|borough)$/.test(place.kind)) return undefined;
  const state = above.find((one) => one.builtIn && one.iso?.startsWith('US-'));
  if (state) return nameOf(american(), `${folded(state.name)} `, place);
  // A parish is as large as a county in Louisiana only, a borough in Alaska.
  if (place.kind === 'parish' || place.kind === 'borough') return undefined;
  const country = above.find((one) => one.builtIn && nameless.some(([, id]) => id === one.id));
  return country && nameOf(known(), `${country.id} `, place);
}

function nameOf(all: Map<string, () => Area>, before: string, place: Place): Area | undefined {
  for (const name of [place.name, ...place.variants]) {
    const found = all.get(before + folded(name));
    if (found) return found();
  }
  return undefined;
}

/** Whether a point lies in an area or within a few kilometres of its box; a rough area must truly hold it. */
export function holds(area: Area, { lon, lat }: Point): boolean {
  if (geoContains(area, [lon, lat])) return true;
  if (area.rough) return false;
  const [[west, south], [east, north]] = area.bounds;
  const slack = 0.1;
  return lat > south - slack && lat < north + slack && lon > west - slack && lon < east + slack;
}
