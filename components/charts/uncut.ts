/**
 * A shortcut for shapes that stay clear of the far side of the earth.
 *
 * A projection cuts every shape along a small circle around the point opposite its centre, and finds out by long
 * arithmetic on each dot that nothing had to be cut. A shape known to keep away from there can be passed on as it is.
 * What comes out is the same to the last digit, since dots closer together than a hundred-thousandth of a degree or so
 * are taken for one here as there.
 */
import type { GeoStream } from 'd3-geo';

const alike = 1e-6;

/** For the `preclip` of a projection: passes lines and polygons on without cutting them. */
export function uncut(sink: GeoStream): GeoStream {
  const isArea = { started: false, open: false };
  let first: [number, number] | undefined;
  let before: [number, number] | undefined;
  /** The last dot of a ring closes it, and is left out: so each waits for the next. */
  let waiting: [number, number] | undefined;
  let begun = false;

  const pass = (lon: number, lat: number) => {
    if (!begun) {
      if (isArea.open && !isArea.started) {
        sink.polygonStart();
        isArea.started = true;
      }
      sink.lineStart();
      begun = true;
    }
    sink.point(lon, lat);
  };
  const take = (lon: number, lat: number) => {
    const same =
      before !== undefined && Math.abs(before[0] - lon) < alike && Math.abs(before[1] - lat) < alike;
    before = [lon, lat];
    if (same) return;
    if (!isArea.open) return pass(lon, lat);
    if (waiting) pass(waiting[0], waiting[1]);
    waiting = before;
  };

  return {
    lineStart() {
      first = before = waiting = undefined;
      begun = false;
    },
    point(lon, lat) {
      first ??= [lon, lat];
      take(lon, lat);
    },
    lineEnd() {
      if (isArea.open && first) take(first[0], first[1]);
      if (begun) sink.lineEnd();
    },
    polygonStart() {
      isArea.open = true;
      isArea.started = false;
    },
    polygonEnd() {
      isArea.open = false;
      if (isArea.started) sink.polygonEnd();
    },
    sphere() {
      sink.sphere?.();
    },
  };
}
