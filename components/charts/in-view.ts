/**
 * Which shapes leave a mark in a view: told by the dots of a shape alone, before it is drawn. Most of what lies near a
 * small piece of the earth lies beside it, or is too small to see.
 */
import type { Shape } from './atlas.ts';

/** A view of the equal-area kind, by its middle and its scale. */
export interface Frame {
  /** Middle of the projection: longitude and latitude, in degrees. */
  centre: readonly [number, number];
  /** Units of the drawing to an earth’s radius. */
  scale: number;
  /** Where the middle of the projection lies in the drawing. */
  at: readonly [number, number];
  /** The edges of what is drawn: left, top, right, lower. */
  edges: readonly [number, number, number, number];
}

/**
 * Tells for a view which shapes may leave a mark in it: not those that lie wholly beyond one edge, nor, where `speck` is
 * given, those smaller than that many units both ways. Good for shapes within 140° of the middle.
 */
export function inView({ centre, scale, at, edges }: Frame, speck = 0): (shape: Shape) => boolean {
  const rad = Math.PI / 180;
  const [lon, lat] = [centre[0] * rad, centre[1] * rad];
  const [sinLon, cosLon, sinLat, cosLat] = [Math.sin(lon), Math.cos(lon), Math.sin(lat), Math.cos(lat)];
  const [left, top, right, lower] = edges;
  return (shape) => {
    const { dots, longest } = dotsOf(shape);
    // The arc between two dots leaves the straight line, by no more than this.
    const bulge = scale * longest * Math.min(2, 8 * longest);
    let [west, north, east, south] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let i = 0; i < dots.length; i += 3) {
      const [x, y, z] = [dots[i]!, dots[i + 1]!, dots[i + 2]!];
      const along = x * cosLon + y * sinLon;
      const off = Math.sqrt(2 / Math.max(1e-9, 1 + sinLat * z + cosLat * along)) * scale;
      const px = at[0] + off * (y * cosLon - x * sinLon);
      const py = at[1] - off * (cosLat * z - sinLat * along);
      if (px < west) west = px;
      if (px > east) east = px;
      if (py < north) north = py;
      if (py > south) south = py;
      const seen =
        east + bulge > left && west - bulge < right && south + bulge > top && north - bulge < lower;
      if (seen && Math.max(east - west, south - north) + 2 * bulge >= speck - 1e-6) return true;
    }
    return false;
  };
}

interface Dots {
  /** On the unit sphere, three numbers each. */
  dots: Float64Array;
  /** The longest way from one dot to the next, in radians. */
  longest: number;
}

const known = new WeakMap<Shape, Dots>();

function dotsOf(shape: Shape): Dots {
  let found = known.get(shape);
  if (!found) known.set(shape, (found = measured(shape)));
  return found;
}

function measured({ geometry }: Shape): Dots {
  const lines =
    geometry.type === 'Polygon'
      ? geometry.coordinates
      : geometry.type === 'LineString'
        ? [geometry.coordinates]
        : [];
  const dots = new Float64Array(3 * lines.reduce((sum, line) => sum + line.length, 0));
  let [i, chord] = [0, 0];
  for (const line of lines)
    line.forEach(([lon = 0, lat = 0], nth) => {
      const [a, b] = [(lon * Math.PI) / 180, (lat * Math.PI) / 180];
      dots.set([Math.cos(b) * Math.cos(a), Math.cos(b) * Math.sin(a), Math.sin(b)], i);
      if (nth > 0)
        chord = Math.max(
          chord,
          Math.hypot(dots[i]! - dots[i - 3]!, dots[i + 1]! - dots[i - 2]!, dots[i + 2]! - dots[i - 1]!),
        );
      i += 3;
    });
  return { dots, longest: 2 * Math.asin(Math.min(1, chord / 2)) };
}
