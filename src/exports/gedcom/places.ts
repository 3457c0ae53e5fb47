/** Places of an export: their names with the chain above them, and the author’s own as records of our extension. */
import { builtInPlaces } from '../../catalogue/places/index.ts';
import type { Dossier } from '../../dossier/types.ts';
import type { Place } from '../../model/place.ts';
import { keysOf } from './contract.ts';
import type { Identifiers } from './identifiers.ts';
import type { Written } from './lines.ts';

/** A place with its chain, smallest first; a comma in a name would end it. */
export function placeNamed(id: string, { facts, places }: Dossier, ids: Identifiers): Written {
  const chain = [id, ...(places.get(id)?.path.slice(1) ?? [])];
  const place = facts.places.get(id);
  const names = chain.map((one) => (facts.places.get(one)?.name ?? one).replaceAll(',', ' ').trim());
  const own = ids.places.get(id);
  return {
    tag: 'PLAC',
    value: names.join(', '),
    under: [
      place?.lat === undefined || place.lon === undefined
        ? undefined
        : {
            tag: 'MAP',
            under: [
              { tag: 'LATI', value: degrees(place.lat, 'NS') },
              { tag: 'LONG', value: degrees(place.lon, 'EW') },
            ],
          },
      own === undefined ? undefined : { tag: '_PLACE', pointer: own },
    ],
  };
}

/** A place of the author’s own. */
export function placeRecord(place: Place, ids: Identifiers): Written {
  const { builtIn: _builtIn, iso: _iso, chapman: _chapman, within, ...rest } = place;
  const plain = within.map(({ place: above, from, to }) =>
    from === undefined && to === undefined ? above : { place: above, from, to },
  );
  return { tag: '_PLACE', xref: ids.places.get(place.id)!, under: keysOf({ ...rest, within: plain }) };
}

/** A place as the catalogue has it, without anything of the author’s. */
export function isBuiltIn(place: Place): boolean {
  if (!place.builtIn) return false;
  const row = builtInById.get(place.id)!;
  return (
    row.within.length === place.within.length &&
    row.variants.length === place.variants.length &&
    row.overlaps.length === place.overlaps.length &&
    row.name === place.name &&
    row.lat === place.lat &&
    row.lon === place.lon
  );
}

const builtInById = new Map(builtInPlaces.map((place) => [place.id, place]));

function degrees(value: number, [plus, minus]: string): string {
  return `${value < 0 ? minus : plus}${Math.abs(value)}`;
}
