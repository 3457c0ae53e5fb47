/**
 * The shortcuts of the maps against the plain way through d3-geo (https://d3js.org/d3-geo, 3.1.2), which cuts every
 * shape and leaves none out: the drawings must be the same to the last digit.
 */
import { geoAzimuthalEqualArea, geoBounds, geoPath } from 'd3-geo';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countries, inner, type Shape } from '../../components/charts/atlas.ts';
import { viewOn } from '../../components/charts/geography.ts';
import { inView } from '../../components/charts/in-view.ts';
import { Pen } from '../../components/charts/pen.ts';
import { uncut } from '../../components/charts/uncut.ts';

const edges = [-20, -20, 580, 440] as const;
const at = [280, 210] as const;
const projectionOn = (lon: number, lat: number, scale: number) =>
  geoAzimuthalEqualArea()
    .rotate([-lon, -lat])
    .translate([...at])
    .scale(scale)
    .precision(0.2)
    .clipExtent([
      [edges[0], edges[1]],
      [edges[2], edges[3]],
    ]);
type Projection = ReturnType<typeof projectionOn>;

function drawn(projection: Projection, shape: GeoJSON.GeoJSON): string {
  const pen = new Pen(0.5);
  geoPath(projection, pen as never)(shape as never);
  return pen.written();
}

/** Within 140° of a middle, by every dot. */
const isNear = (shape: Shape, lon: number, lat: number) => {
  const rad = Math.PI / 180;
  const dots = (shape.geometry as GeoJSON.Polygon | GeoJSON.LineString).coordinates.flat(
    shape.geometry.type === 'Polygon' ? 1 : 0,
  ) as [number, number][];
  return dots.every(
    ([a, b]) =>
      Math.sin(lat * rad) * Math.sin(b * rad) +
        Math.cos(lat * rad) * Math.cos(b * rad) * Math.cos((a - lon) * rad) >
      Math.cos(140 * rad),
  );
};

const places = fc.tuple(
  fc.double({ min: -180, max: 180, noNaN: true }),
  fc.double({ min: -80, max: 80, noNaN: true }),
  fc.constantFrom(60, 300, 1500, 11_000),
);
const shapes = [...countries('coarse'), ...inner('coarse')];

describe('a shape clear of the far side', () => {
  test('is drawn the same without the cut', () => {
    fc.assert(
      fc.property(places, fc.nat(shapes.length - 1), ([lon, lat, scale], nth) => {
        const near = [...shapes, ...shapes].slice(nth, nth + 40).filter((one) => isNear(one, lon, lat));
        const plain = projectionOn(lon, lat, scale);
        const short = projectionOn(lon, lat, scale).preclip(uncut);
        for (const one of near) expect(drawn(short, one)).toBe(drawn(plain, one));
      }),
      { numRuns: 60 },
    );
  });

  test('loses dots that fall together, as it would in the cut', () => {
    const ring = [
      [0, 0],
      [0, 0],
      [0, 5],
      [0, 5.00000001],
      [5, 5],
      [5, 0],
      [0.00000001, 0],
      [0, 0],
    ];
    const shape: GeoJSON.Polygon = { type: 'Polygon', coordinates: [ring] };
    const plain = projectionOn(2, 2, 1500);
    expect(drawn(projectionOn(2, 2, 1500).preclip(uncut), shape)).toBe(drawn(plain, shape));
    expect(drawn(plain, shape)).not.toBe('');
  });
});

describe('a shape left out beforehand', () => {
  test('would have left no mark', () => {
    let [out, kept] = [0, 0];
    fc.assert(
      fc.property(places, ([lon, lat, scale]) => {
        const leavesMark = inView({ centre: [lon, lat], scale, at, edges });
        const plain = projectionOn(lon, lat, scale);
        for (const one of shapes) {
          if (!isNear(one, lon, lat)) continue;
          if (leavesMark(one)) kept += 1;
          else if (++out % 7 === 0) expect(drawn(plain, one)).toBe('');
        }
      }),
      { numRuns: 25 },
    );
    expect(out).toBeGreaterThan(1000);
    expect(kept).toBeGreaterThan(100);
  });

  test('stays where a long straight border bows into the view', () => {
    const coordinates = [
      [-123, 49],
      [-95, 49],
    ];
    const line: GeoJSON.Feature = {
      type: 'Feature',
      properties: {},
      geometry: { type: 'LineString', coordinates },
    };
    const border: Shape = { ...line, bounds: geoBounds(line) };
    const [lon, lat, scale] = [-109, 49.9, 11_000];
    expect(drawn(projectionOn(lon, lat, scale), border)).not.toBe('');
    expect(inView({ centre: [lon, lat], scale, at, edges })(border)).toBe(true);
  });
});

test('the same points asked for twice give one view', () => {
  const asked = [[{ lat: 52.2, lon: -7.4 }], 560, 420, { padX: 0, padY: 0, leastKm: 320 }] as const;
  expect(viewOn(...asked)).toBe(viewOn(...structuredClone(asked)));
  expect(viewOn([{ lat: 52.3, lon: -7.4 }], 560, 420, asked[3])).not.toBe(viewOn(...asked));
});
