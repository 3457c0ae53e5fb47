/** The marks, lines and names on a map of journeys, worked out for one size of drawing. */
import { geoPath } from 'd3-geo';
import type { Shape as Standing } from '../cases/standing.ts';
import { areaOfPlace } from './areas.ts';
import { viewOn, type Point, type View } from './geography.ts';
import type { Dossier } from '../../src/dossier/types.ts';
import type { Journey, Stop } from './journeys.ts';
import { clustered, placeLabels, widthOf, type Ask, type Box, type Label, type Side } from './labels.ts';

/** A sheet to draw on: its size, the room left around the content, the letters, and how many names it takes. */
export interface Format {
  width: number;
  height: number;
  padX: number;
  padY: number;
  name: number;
  main: number;
  mark: number;
  most: number;
}

/** Drawings for wide screens and paper, and for phones, where a unit is about a pixel. */
export const formats = {
  wide: { width: 960, height: 540, padX: 150, padY: 64, name: 19, main: 22, mark: 1, most: 40 },
  narrow: { width: 380, height: 330, padX: 58, padY: 48, name: 14, main: 16, mark: 0.72, most: 14 },
} as const satisfies Record<string, Format>;

export interface Origin {
  stop: Stop;
  standing: Standing;
}

export interface JourneyDrawing {
  view: View;
  format: Format;
  washes: string[];
  ways: string[];
  sights: string[];
  stops: { x: number; y: number }[];
  origins: { x: number; y: number; standing: Standing }[];
  labels: (Label & { main: boolean })[];
}

interface Mark {
  x: number;
  y: number;
  stop: Stop;
  weight: number;
}

/** What is drawn of some journeys, or nothing where none of them has a position. */
export function journeyDrawing(
  dossier: Dossier,
  journeys: readonly Journey[],
  standingOf: (journey: Journey) => Standing,
  format: Format,
  words: { and: string; more: (name: string, n: number) => string },
): JourneyDrawing | undefined {
  const { width, height } = format;
  const years = journeys.length === 1;
  const points = new Map<string, { stop: Stop; weight: number }>();
  for (const { stops, stations } of journeys)
    for (const stop of [...stops, ...stations]) {
      const known = points.get(stop.place);
      if (!known) {
        points.set(stop.place, { stop, weight: 1 });
        continue;
      }
      known.weight += 1;
      // Who comes back to a place is named there once, with the first year and the last.
      if (stop.years)
        known.stop = { ...known.stop, years: [known.stop.years?.[0] ?? stop.years[0], stop.years[1]] };
    }
  if (points.size === 0) return undefined;
  const view = viewOn(
    [...points.values()].map(({ stop }) => ({ lon: stop.lon, lat: stop.lat })),
    width,
    height,
    { padX: format.padX, padY: format.padY, leastKm: 500 },
  );
  const pathOf = geoPath(view.projection).digits(1);
  const line = (stops: readonly Point[]) =>
    pathOf({ type: 'LineString', coordinates: stops.map((s) => [s.lon, s.lat]) }) ?? '';
  const mark = (stop: Stop, weight: number): Mark => {
    const [x, y] = view.xy(stop);
    return { x, y, stop, weight };
  };

  const origins = journeys.flatMap((journey) =>
    journey.origin ? [{ ...mark(journey.origin, 1), standing: standingOf(journey) }] : [],
  );
  // Where marks fall together, the firmest stands on top.
  origins.sort((a, b) => Number(b.standing === 'established') - Number(a.standing === 'established'));
  const named = new Set(origins.map(({ stop }) => stop.place));
  const groups = clustered(origins, 24 * format.mark);
  const stops = clustered(
    [...points.values()]
      .filter(({ stop }) => !named.has(stop.place))
      .map(({ stop, weight }) => mark(stop, weight))
      .sort((a, b) => b.weight - a.weight || (a.stop.place < b.stop.place ? -1 : 1)),
    9 * format.mark,
  );

  // Lines run between the marks that are drawn, so that those of places too close to tell apart are one line.
  const standsAt = new Map<string, Stop>();
  for (const group of [...stops, ...groups])
    for (const { stop } of group) standsAt.set(stop.place, group[0]!.stop);
  const drawnAt = (stop: Stop): Stop => standsAt.get(stop.place) ?? stop;

  // Names stand on the side away from the middle of the content, so that lines between both shores stay clear.
  const all = [...origins, ...stops.flat()];
  const middle = all.reduce((sum, { x }) => sum + x, 0) / all.length;
  const asks: (Ask & { main: boolean })[] = [
    ...groups.map((group) => asked(group, format.main, 13 * format.mark, true)),
    ...stops.map((group) => asked(group, format.name, 6 * format.mark, false)),
  ].slice(0, format.most);
  function asked(group: readonly Mark[], size: number, reach: number, main: boolean) {
    const names = [...new Set(group.map(({ stop }) => labelOf(stop)))];
    const text =
      names.length === 1 || !main
        ? names[0]!
        : names.length === 2
          ? names.join(words.and)
          : words.more(names[0]!, names.length - 1);
    const [{ x, y }] = group as [Mark];
    return { x, y, text, size, reach, bold: main, main, sides: x < middle ? westFirst : eastFirst };
  }
  function labelOf({ name, years: stay }: Stop): string {
    if (!years || !stay) return name;
    return `${name} ${stay[0] === stay[1] ? stay[0] : `${stay[0]}–${stay[1].slice(stay[0].slice(0, 2) === stay[1].slice(0, 2) ? 2 : 0)}`}`;
  }
  const edge: Box = [10, 6, width - 6, height - 8];
  const labels = placeLabels(asks, edge, [scaleGround(view, format), ...tickGround(view, format)]);
  // A name that stands twice, for two places of one name near each other, says no more than once.
  const said = new Set<string>();
  const washes = new Set(
    journeys.flatMap(({ origin }) => {
      const found = origin && areaOfPlace(dossier, origin.place);
      return found ? [view.area(found.area)] : [];
    }),
  );
  return {
    view,
    format,
    washes: [...washes].filter((path) => path !== ''),
    ways: [...new Set(journeys.map((j) => line(j.stops.map(drawnAt))))].filter((d) => d.includes('L')),
    sights: [
      ...new Set(
        journeys.flatMap(({ origin, stations }) =>
          origin ? stations.map((station) => line([station, origin].map(drawnAt))) : [],
        ),
      ),
    ],
    stops: stops.map(([first]) => ({ x: first!.x, y: first!.y })),
    origins: groups.map(([first]) => ({ x: first!.x, y: first!.y, standing: first!.standing })).reverse(),
    labels: labels
      .map((label) => ({ ...label, main: asks[label.of]!.main }))
      .filter(({ text }) => !said.has(text) && said.add(text)),
  };
}

/** Sides for names west of the middle of a map: outward first. */
export const westFirst: readonly Side[] = [
  'west',
  'south-west',
  'south-east',
  'below',
  'above',
  'north-west',
  'north-east',
  'east',
];
/** Sides for names east of the middle of a map: outward first. */
export const eastFirst: readonly Side[] = [
  'east',
  'above',
  'north-east',
  'north-west',
  'below',
  'south-east',
  'south-west',
  'west',
];

/** The ground of the scale bar and its figure. */
export function scaleGround({ scale, width, height }: View, { name }: Pick<Format, 'name'>): Box {
  return [width - 24 - scale.length, height - 34 - name, width, height];
}

/** The ground of the figures along the edges. */
export function tickGround({ ticks }: View, { name }: Pick<Format, 'name'>): Box[] {
  const size = name * 0.8;
  const wide = widthOf('00° W') * size;
  return ticks.map(({ x, y, edge }) =>
    edge === 'left'
      ? [0, y - size, 12 + wide, y + size * 0.6]
      : [x - wide / 2, y - size * 2, x + wide / 2, y],
  );
}
