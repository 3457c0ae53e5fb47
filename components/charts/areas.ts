/** The county, province or state a place is or lies in, as a shape to be washed on a map. */
import type { Dossier } from '../../src/dossier/types.ts';
import { areaFor, holds, type Area } from './counties.ts';

export interface AreaOfPlace {
  area: Area;
  /** The place whose ground it is. */
  place: string;
}

const known = new WeakMap<Dossier, Map<string, AreaOfPlace | undefined>>();

/** The smallest area with a shape on the way from a place to its country, the place itself first. */
export function areaOfPlace(dossier: Dossier, id: string): AreaOfPlace | undefined {
  const all = known.get(dossier) ?? known.set(dossier, new Map()).get(dossier)!;
  if (all.has(id)) return all.get(id);
  const found = lookedUp(dossier, id);
  all.set(id, found);
  return found;
}

function lookedUp(dossier: Dossier, id: string): AreaOfPlace | undefined {
  const { places } = dossier.facts;
  const view = dossier.places.get(id);
  const chain = [id, ...(view?.above ?? [])].flatMap((step) => places.get(step) ?? []);
  const { lat, lon } = view?.place ?? {};
  for (const [i, place] of chain.entries()) {
    const area = areaFor(place, chain.slice(i + 1));
    // A point outside the ground it is said to lie in would make either look wrong.
    if (area && (i === 0 || lat === undefined || lon === undefined || holds(area, { lat, lon })))
      return { area, place: place.id };
  }
  return undefined;
}
