/** What a map of cases shows: the place each case names, where its evidence was made, and the way its subject went. */
import { geoDistance } from 'd3-geo';
import type { CaseView, Dossier, PersonView } from '../../src/dossier/types.ts';
import { yearOf } from '../layout/dates.ts';
import { dateOf, placeOfCase, positionOf, sortableDate } from '../layout/lookup.ts';
import { byText } from '../layout/words.ts';
import type { Point } from './geography.ts';

export interface Stop extends Point {
  place: string;
  name: string;
  /** The years the records of this stay give, first and last. */
  years?: [string, string];
}

export interface Journey {
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
  const seen = new Set<string>();
  for (const item of view.result?.items ?? []) {
    if (!item.counts) continue;
    for (const record of item.records) {
      const place = dossier.records.get(record)?.record.place;
      if (place === undefined || seen.has(place)) continue;
      seen.add(place);
      const stop = stopAt(dossier, place);
      if (stop && !stations.some((s) => near(s, stop, 40)) && !(origin && near(origin, stop, 40)))
        stations.push(stop);
    }
  }
  const stops: Stop[] = origin ? [{ ...origin }] : [];
  const arrive = (place: string | undefined, date: string | undefined) => {
    const stop = place === undefined ? undefined : stopAt(dossier, place);
    if (!stop) return;
    const year = yearOf(date);
    const last = stops.at(-1);
    const stay = near(last, stop, 40) ? last! : stop;
    if (stay === stop) stops.push(stop);
    if (year !== '') stay.years = [stay.years?.[0] ?? year, year];
  };
  for (const { place, date } of stays(dossier, view.subject)) arrive(place, date);
  const { died } = view.subject.person;
  arrive(died?.place, died?.date);
  return { view, origin, stations, stops };
}

/** Where the records that show a person there were made, in the order of their dates. */
function stays(
  dossier: Dossier,
  { mentions }: PersonView,
): { place: string | undefined; date: string | undefined }[] {
  return mentions
    .flatMap(({ record, mention }) => {
      const found = dossier.records.get(record);
      // A letter to somebody, or a book about them, was not where they were.
      if (!found || !mention.present || found.record.form === 'authored') return [];
      // What was written down later, and elsewhere, puts nobody at its place in the year it tells of.
      const { form, made } = found.record;
      const told = mention.event?.date ?? mention.voyage?.arrived;
      const date = (form === 'original' ? made : undefined) ?? told ?? dateOf(found);
      return [{ record, place: found.record.place, date }];
    })
    .sort((a, b) => byText(sortableDate(a.date), sortableDate(b.date)) || byText(a.record, b.record));
}

function stopAt(dossier: Dossier, place: string): Stop | undefined {
  const found = positionOf(dossier, place);
  return found && { place: found.place.id, name: found.place.place.name, lon: found.lon, lat: found.lat };
}

/** Whether two points lie within some kilometres of each other. */
function near(a: Point | undefined, b: Point, km: number): boolean {
  return a !== undefined && geoDistance([a.lon, a.lat], [b.lon, b.lat]) * 6371 < km;
}
