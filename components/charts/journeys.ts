/** What a map of cases shows: the place each case names, where its evidence was made, and the way its subject went. */
import { geoDistance } from 'd3-geo';
import type { CaseView, Dossier } from '../../src/dossier/types.ts';
import { lifeEvents } from '../people/life-events.ts';
import { placeOfCase, positionOf } from '../layout/lookup.ts';
import type { Point } from './geography.ts';

export interface Stop extends Point {
  place: string;
  name: string;
}

interface Journey {
  view: CaseView;
  origin: Stop | undefined;
  /** Where the records of the counting evidence were made, apart from the origin itself. */
  stations: Stop[];
  /** The subject’s places in date order, the origin first. */
  stops: Stop[];
}

/** The journey of one case, as far as its places have positions. */
export function journeyOf(dossier: Dossier, view: CaseView): Journey {
  const concluded = placeOfCase(view);
  const origin = concluded === undefined ? undefined : stopAt(dossier, concluded);
  const stations: Stop[] = [];
  for (const item of view.result?.items ?? []) {
    if (!item.counts) continue;
    for (const record of item.records) {
      const place = dossier.records.get(record)?.record.place;
      const stop = place === undefined ? undefined : stopAt(dossier, place);
      if (stop && !stations.some((s) => near(s, stop, 40)) && !(origin && near(origin, stop, 40)))
        stations.push(stop);
    }
  }
  const stops: Stop[] = origin ? [origin] : [];
  for (const event of lifeEvents(dossier, view.subject)) {
    const place = dossier.records.get(event.record)?.record.place;
    const stop = place === undefined ? undefined : stopAt(dossier, place);
    if (stop && !near(stops.at(-1), stop, 40)) stops.push(stop);
  }
  const died = view.subject.person.died?.place;
  const last = died === undefined ? undefined : stopAt(dossier, died);
  if (last && !near(stops.at(-1), last, 40)) stops.push(last);
  return { view, origin, stations, stops };
}

function stopAt(dossier: Dossier, place: string): Stop | undefined {
  const found = positionOf(dossier, place);
  return found && { place: found.place.id, name: found.place.place.name, lon: found.lon, lat: found.lat };
}

/** Whether two points lie within some kilometres of each other. */
export function near(a: Point | undefined, b: Point, km: number): boolean {
  return a !== undefined && geoDistance([a.lon, a.lat], [b.lon, b.lat]) * 6371 < km;
}
