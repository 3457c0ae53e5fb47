/** The journeys of the content from port to port, for a map: those with one way together, whatever the lists spell. */
import { isoDay } from '../model/days.ts';
import type { Facts } from '../model/facts.ts';
import { readingIn } from '../reasoning/places/readings.ts';
import { voyagesOf } from '../reasoning/migration/voyages.ts';

/** One way from a port to a port, and the journeys that took it, in order of time. */
export interface VoyageLeg {
  /** Ids of places, each with a position of its own. */
  from: string;
  to: string;
  journeys: { ship?: string; year: string; record: string }[];
}

export interface VoyageLegs {
  legs: VoyageLeg[];
  /** Journeys of which a port is not named, not known, or without a position. */
  unplaced: number;
}

/** Groups journeys by their ports. A port is the place its spelling is read as, where only one comes in question. */
export function voyageLegs(facts: Facts): VoyageLegs {
  const read = new Map<string, string | undefined>();
  const portOf = (reading: string | undefined): string | undefined => {
    if (reading === undefined) return undefined;
    if (!read.has(reading)) read.set(reading, placeRead(facts, reading));
    return read.get(reading);
  };
  const legs = new Map<string, VoyageLeg>();
  let unplaced = 0;
  for (const { from, to, ship, sailed, arrived, records } of voyagesOf(facts)) {
    const [start, end] = [portOf(from), portOf(to)];
    if (start === undefined || end === undefined || start === end) {
      unplaced += 1;
      continue;
    }
    const day = arrived ?? sailed;
    const key = `${start} ${end}`;
    const leg = legs.get(key) ?? { from: start, to: end, journeys: [] };
    legs.set(key, leg);
    leg.journeys.push({
      ...(ship === undefined ? {} : { ship }),
      year: day === undefined ? '' : isoDay(day).slice(0, 4),
      record: records[0]!,
    });
  }
  return { legs: [...legs.values()], unplaced };
}

/** A ship calls at a port or town, never at a state: of places that may be meant, those as wide are left out. */
const wide = /^(?:country|sovereign state|former state|state|province|territory|county|amt|district)$/;

/** The place with a position that the spelling of a port may mean: a port before a town, the likelier reading first. */
function placeRead(facts: Facts, reading: string): string | undefined {
  const { outcome, candidates } = readingIn(facts, reading);
  const [first] = candidates;
  if (outcome === 'nothing' || !first) return undefined;
  const placed = candidates.filter(
    ({ id, kind, score }) =>
      score >= first.score - 0.1 && !wide.test(kind) && facts.places.get(id)?.lat !== undefined,
  );
  return (placed.find(({ kind }) => kind === 'port') ?? placed[0])?.id;
}
