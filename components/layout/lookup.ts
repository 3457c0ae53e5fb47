/** What pages ask of the dossier more than once. Everything here is a lookup; nothing is computed anew. */
import { currentDossier } from '../../src/dossier/current.ts';
import type { CaseView, Dossier, PlaceView, RecordView } from '../../src/dossier/types.ts';
import { isoDay } from '../../src/model/days.ts';
import { daySpan, edtfProblem } from '../../src/model/edtf.ts';
import { byText } from './words.ts';
import { yearOf } from './dates.ts';

/** A place’s name with what it lies in, smallest first: “Knockmahon, Kill, County Waterford, Ireland”. */
export function placeInFull(dossier: Dossier, id: string, levels = Infinity): string {
  const view = dossier.places.get(id);
  if (!view) return nameOfPlace(dossier, id);
  return view.path
    .slice(0, levels)
    .map((step) => nameOfPlace(dossier, step))
    .join(', ');
}

/** The name of a place, also of one nothing refers to. */
export function nameOfPlace(dossier: Dossier, id: string): string {
  return (dossier.places.get(id)?.place ?? dossier.facts.places.get(id))?.name ?? id;
}

/** The smallest place of the chain that has a position, the place itself first. */
export function positionOf(
  dossier: Dossier,
  id: string,
): { place: PlaceView; lon: number; lat: number } | undefined {
  for (const step of dossier.places.get(id)?.path ?? []) {
    const view = dossier.places.get(step);
    if (view?.place.lat !== undefined && view.place.lon !== undefined)
      return { place: view, lon: view.place.lon, lat: view.place.lat };
  }
  return undefined;
}

/** The date a record is filed under: when it was made, else the date of its citation or of an event in it. */
export function dateOf(view: RecordView): string | undefined {
  const { record } = view;
  const cite = record.cite;
  if (record.form === 'derivative') {
    const event = record.mentions.find((m) => m.event?.date !== undefined)?.event?.date;
    if (event) return event;
  }
  return (
    record.made ??
    cite?.issued ??
    cite?.['event-date'] ??
    record.mentions.find((m) => m.event?.date)?.event?.date
  );
}

/** Records in the order of their dates, the undated last, then by title. */
export function inDateOrder(records: readonly RecordView[]): RecordView[] {
  const key = (view: RecordView) => sortableDate(dateOf(view));
  return [...records].sort(
    (a, b) => byText(key(a), key(b)) || byText(a.record.title, b.record.title) || byText(a.id, b.id),
  );
}

/** A date as text that sorts; the undated come last. */
export function sortableDate(date: string | undefined): string {
  if (date?.includes('julian ') && edtfProblem(date) === undefined) {
    const { first, last } = daySpan(date);
    return first === null && last === null ? '9999' : isoDay((first ?? last)!);
  }
  const plain = /\d{4}(?:-\d\d)?(?:-\d\d)?/.exec(date ?? '')?.[0];
  return plain ?? (yearOf(date) || '9999');
}

/** The dossier’s records of these ids, leaving out those that are not shown. */
export function recordViews(ids: Iterable<string>): RecordView[] {
  const { records } = currentDossier();
  return [...ids].flatMap((id) => records.get(id) ?? []);
}

/** The place a case names, as a conclusion or as a hypothesis. */
export function placeOfCase(view: CaseView): string | undefined {
  return view.result?.place ?? view.case.conclusion?.place ?? view.case.hypothesis?.place;
}
