/** What things are called on a proof page, with where they lead. Someone or something withheld is never named. */
import type { CaseView, Dossier } from '../../src/dossier/types.ts';
import { linked, type Part } from '../../src/interface/phrase.ts';
import type { Namer } from '../../src/dossier/words.ts';
import * as href from '../layout/href.ts';

/** The names of a dossier, seen from one case. */
export function namerOf(dossier: Dossier, view: CaseView): Namer {
  const link = (text: string, to: string, exists: boolean): Part => (exists ? { text, href: to } : text);
  const personName = (id: string) =>
    dossier.people.get(id)?.person.name ?? dossier.wording.proof.somebodyNotShown;
  const placeOf = (id: string) => dossier.places.get(id)?.place ?? dossier.facts.places.get(id);
  const placeName = (id: string) => placeOf(id)?.name ?? id;
  const recordTitle = (id: string) =>
    dossier.records.get(id)?.record.title ?? dossier.wording.proof.recordNotShown;
  const items = new Set(view.case.evidence.map((item) => item.id));
  const { wording } = dossier;
  return {
    wording,
    subject: view.case.subject,
    person: (id) => link(personName(id), href.person(id), dossier.people.has(id)),
    personName,
    place: (id) => link(placeName(id), href.place(id), dossier.places.has(id)),
    placeName,
    placeAndKind: (id) =>
      [placeName(id), wording.words.placeKind(placeOf(id)?.kind ?? '')].filter(Boolean).join(', '),
    record: (id) => link(recordTitle(id), href.record(id), dossier.records.has(id)),
    recordTitle,
    item: (id) => link(id, href.evidence(view.id, id), items.has(id)),
    search: (id) => link(id, href.search(id), dossier.searches.has(id)),
    linked: (text) => linked(text, items, (id) => ({ text: id, href: href.evidence(view.id, id) })),
  };
}
