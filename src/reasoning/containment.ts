/**
 * Which place lies inside which. Dates on `within` play no part in what a conclusion rests on, and a place may lie
 * inside several others.
 */
import type { Facts } from '../model/facts.ts';
import { once } from './once.ts';
import { reach } from './reach.ts';

export interface Containment {
  /** Every place that contains this one, the place itself not included. */
  above(place: string): ReadonlySet<string>;
  /** Whether `inner` is `outer` or lies inside it. */
  within(inner: string, outer: string): boolean;
  /** Places of kind `country` that are the place or contain it, by id. */
  countries(place: string): readonly string[];
  /** Whether either lists the other in `overlaps`. */
  overlap(a: string, b: string): boolean;
  /** From a place to the largest above it, by the first place each lies within. */
  path(place: string): string[];
  /** A place and all above it, each before the places that contain it, otherwise by id. */
  outward(place: string): string[];
}

/** The containment of a corpus's places. */
export const containmentOf: (facts: Facts) => Containment = once((facts: Facts): Containment => {
  const { places } = facts;
  const closures = new Map<string, ReadonlySet<string>>();
  const above = (place: string): ReadonlySet<string> => {
    let all = closures.get(place);
    if (!all) {
      const found = reach(place, (id) => places.get(id)?.within.map((w) => w.place) ?? []);
      found.delete(place);
      closures.set(place, (all = found));
    }
    return all;
  };
  return {
    above,
    within: (inner, outer) => inner === outer || above(inner).has(outer),
    countries: (place) => [place, ...above(place)].filter((id) => places.get(id)?.kind === 'country').sort(),
    overlap: (a, b) =>
      (places.get(a)?.overlaps.includes(b) ?? false) || (places.get(b)?.overlaps.includes(a) ?? false),
    path(place) {
      const path = new Set([place]);
      for (const step of path) {
        const next = places.get(step)?.within[0]?.place;
        if (next !== undefined) path.add(next);
      }
      return [...path];
    },
    outward(place) {
      const left = new Set([place, ...above(place)]);
      const containers = (id: string) =>
        [...new Set(places.get(id)?.within.map((w) => w.place))].filter(
          (other) => other !== id && left.has(other),
        );
      const waiting = new Map([...left].map((id) => [id, 0]));
      for (const id of left) for (const other of containers(id)) waiting.set(other, waiting.get(other)! + 1);
      const order: string[] = [];
      while (left.size > 0) {
        const free = [...left].filter((id) => waiting.get(id) === 0);
        // A circle of places is an error elsewhere; here it must only not hang.
        const next = (free.length > 0 ? free : [...left]).reduce((first, id) => (id < first ? id : first));
        order.push(next);
        for (const other of containers(next)) waiting.set(other, waiting.get(other)! - 1);
        left.delete(next);
      }
      return order;
    },
  };
});
