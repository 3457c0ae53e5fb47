/** What pages ask of the dossier more than once. Everything here is a lookup; nothing is computed anew. */
import { currentDossier } from '../../src/dossier/current.ts';
import type { CaseView, Dossier, MediaView, PlaceView, RecordView } from '../../src/dossier/types.ts';
import { recordDate } from '../../src/dossier/record-date.ts';
import { sourcesOf } from '../../src/model/case.ts';
import { isoDay } from '../../src/model/days.ts';
import { daySpan, edtfProblem } from '../../src/model/edtf.ts';
import { byText } from './words.ts';
import { yearOf } from './dates.ts';

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
  return recordDate(view.record);
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

/** The picture a case is shown with: of a record its conclusion cites, else of any it uses. */
export function pictureOf(view: CaseView): { image: MediaView; record: RecordView } | undefined {
  const cited = new Set((view.case.conclusion ?? view.case.hypothesis)?.cites);
  const first = view.case.evidence
    .filter((item) => cited.has(item.id))
    .flatMap((item) => sourcesOf(item).records);
  for (const record of recordViews([...first, ...view.records])) {
    const [image] = record.media;
    if (image) return { image, record };
  }
  return undefined;
}

/** A place with the country it lies in: “Knockmahon, Ireland”. */
export function placeAndCountry(dossier: Dossier, id: string): string {
  const path = dossier.places.get(id)?.path ?? [id];
  return [...new Set([id, path.at(-1)!])].map((step) => nameOfPlace(dossier, step)).join(', ');
}

const orders = new WeakMap<Dossier['cases'], { all: CaseView[]; at: Map<CaseView, number> }>();

/** The cases before and after one, in the order of the home page. */
export function besideCase(
  { cases }: Dossier,
  view: CaseView,
): { before: CaseView | undefined; after: CaseView | undefined } {
  let order = orders.get(cases);
  if (!order) {
    const all = [...cases.values()];
    orders.set(cases, (order = { all, at: new Map(all.map((one, i) => [one, i])) }));
  }
  const here = order.at.get(view)!;
  return { before: order.all[here - 1], after: order.all[here + 1] };
}

/** How long a narrative takes to read, in minutes: 220 words each, the pace of plain prose (common practice). */
export function minutesToRead(view: CaseView): number {
  return Math.max(1, Math.round(view.narrative.words / 220));
}

/** The place a case names, as a conclusion or as a hypothesis. */
export function placeOfCase(view: CaseView): string | undefined {
  return view.result?.place ?? view.case.conclusion?.place ?? view.case.hypothesis?.place;
}
