/** The lines and names on the map of crossings, worked out for one size of drawing. */
import { geoInterpolate, geoPath } from 'd3-geo';
import type { Dossier } from '../../src/dossier/types.ts';
import type { VoyageLeg } from '../../src/dossier/voyage-legs.ts';
import { viewOn, type View } from './geography.ts';
import { eastFirst, scaleGround, tickGround, westFirst, type Format } from './journey-drawing.ts';
import { clustered, placeLabels, type Ask, type Label } from './labels.ts';

export interface CrossingDrawing {
  view: View;
  format: Format;
  lines: { d: string; arrow: string }[];
  ports: { x: number; y: number }[];
  labels: (Label & { year: boolean })[];
}

/** What is drawn of some crossings, or nothing where there are none. */
export function crossingDrawing(
  dossier: Dossier,
  legs: readonly VoyageLeg[],
  format: Format,
  yearsInWords: (first: string, last: string, n: number) => string,
): CrossingDrawing | undefined {
  const { width, height } = format;
  const pointOf = (id: string) => {
    const { lon, lat, name } = dossier.facts.places.get(id)!;
    return { lon: lon!, lat: lat!, name };
  };
  const weights = new Map<string, number>();
  for (const { from, to, journeys } of legs)
    for (const id of [from, to]) weights.set(id, (weights.get(id) ?? 0) + journeys.length);
  const ids = [...weights].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([id]) => id);
  if (ids.length === 0) return undefined;
  const points = ids.map(pointOf);
  const view = viewOn(
    points.map(({ lon, lat }) => ({ lon, lat })),
    width,
    height,
    { padX: format.padX, padY: format.padY, leastKm: 500 },
  );
  const pathOf = geoPath(view.projection).digits(1);
  const asks: (Ask & { year: boolean })[] = [];
  const marks = clustered(
    points.map((point) => {
      const [x, y] = view.xy(point);
      return { x, y, name: point.name };
    }),
    9 * format.mark,
  ).map(([first]) => first!);
  const middle = marks.reduce((sum, { x }) => sum + x, 0) / marks.length;
  for (const { x, y, name } of marks)
    asks.push({
      x,
      y,
      text: name,
      size: format.name,
      reach: 6 * format.mark,
      sides: x < middle ? westFirst : eastFirst,
      year: false,
    });
  const lines = legs.map(({ from, to, journeys }) => {
    const [a, b] = [pointOf(from), pointOf(to)];
    const way = geoInterpolate([a.lon, a.lat], [b.lon, b.lat]);
    const at = (t: number) => {
      const [lon, lat] = way(t);
      return view.xy({ lon, lat });
    };
    const [mx, my] = at(0.5);
    const years = [...new Set(journeys.map(({ year }) => year).filter((year) => year !== ''))].sort();
    if (years.length > 0)
      asks.push({
        x: mx,
        y: my,
        text: yearsInWords(years[0]!, years.at(-1)!, years.length),
        size: format.name * 0.92,
        reach: 1,
        sides: ['above', 'below', 'north-east', 'south-west'],
        year: true,
      });
    return {
      d:
        pathOf({
          type: 'LineString',
          coordinates: [
            [a.lon, a.lat],
            [b.lon, b.lat],
          ],
        }) ?? '',
      arrow: head(at(0.6), at(0.62), 7 * (format.mark + 0.2)),
    };
  });
  const edge = [10, 6, width - 6, height - 8] as const;
  const labels = placeLabels(asks.slice(0, format.most), edge, [
    scaleGround(view, format),
    ...tickGround(view, format),
  ]);
  return {
    view,
    format,
    lines,
    ports: marks,
    labels: labels.map((label) => ({ ...label, year: asks[label.of]!.year })),
  };
}

/** An arrow head on a line, so that the way is told without colour. */
function head([x, y]: [number, number], [nx, ny]: [number, number], size: number): string {
  const turn = Math.atan2(ny - y, nx - x);
  const corner = (by: number, far: number) =>
    `${(x + far * Math.cos(turn + by)).toFixed(1)} ${(y + far * Math.sin(turn + by)).toFixed(1)}`;
  return `M${corner(0, size)}L${corner(2.5, size * 0.8)}L${corner(-2.5, size * 0.8)}Z`;
}
