/** Which places lie around a place: a tree of their points, searched on the sphere. */
import { around, distance } from 'geokdbush';
import KDBush from 'kdbush';
import type { Place } from '../model/place.ts';

/** A place nearby: how far, in whole kilometres, and in which of eight winds, north first and on by the east. */
export interface Nearby {
  place: string;
  km: number;
  wind: number;
}

/** So far, in kilometres, a place is still near; and so many are looked at. */
const reach = 30;
const looked = 40;

/** A point in the middle of a county or a country says nothing about what is near it. */
const wide =
  /^(?:country|sovereign state|state|province|territory|county|amt|fylke|län|jurisdiction|region)$/;

/** Answers with the places nearest to one of these, nearest first. Places as wide as a county are left out on both sides. */
export function nearestTo(places: readonly Place[]): (place: Place) => Nearby[] {
  const local = places.filter(isLocal);
  if (local.length === 0) return () => [];
  const tree = new KDBush(local.length);
  for (const { lon, lat } of local) tree.add(lon, lat);
  tree.finish();
  return (place) => {
    if (!isLocal(place)) return [];
    const { lon, lat } = place;
    return around(tree, lon, lat, looked, reach)
      .flatMap((nth) => {
        const other = local[nth]!;
        if (other.id === place.id) return [];
        const away = distance(lon, lat, other.lon, other.lat);
        return [{ place: other.id, away, wind: windTo(place, other) }];
      })
      .sort((a, b) => a.away - b.away || (a.place < b.place ? -1 : 1))
      .map(({ place: id, away, wind }) => ({ place: id, km: Math.round(away), wind }));
  };
}

function isLocal(place: Place): place is Place & { lat: number; lon: number } {
  return place.lat !== undefined && place.lon !== undefined && !place.builtIn && !wide.test(place.kind);
}

/** The wind from one point to another, by the bearing at the first. */
function windTo(from: { lat: number; lon: number }, to: { lat: number; lon: number }): number {
  const rad = Math.PI / 180;
  const turn = (to.lon - from.lon) * rad;
  const y = Math.sin(turn) * Math.cos(to.lat * rad);
  const x =
    Math.cos(from.lat * rad) * Math.sin(to.lat * rad) -
    Math.sin(from.lat * rad) * Math.cos(to.lat * rad) * Math.cos(turn);
  return Math.round(((Math.atan2(y, x) / rad + 360) % 360) / 45) % 8;
}
