/** People, places and records as parts of a sentence, linked where they have a page. Someone withheld is not named. */
import { currentDossier } from '../../src/dossier/current.ts';
import type { Part, Phrase } from '../../src/interface/phrase.ts';
import * as href from '../layout/href.ts';
import { nameOfPlace } from '../layout/lookup.ts';
import { wording } from '../layout/wording.ts';

/** A record’s title. */
export function recordPart(id: string): Part {
  const view = currentDossier().records.get(id);
  return view ? { text: view.record.title, href: href.record(id) } : wording().records.withheld;
}

/** A place’s name, with as many steps of what it lies in as asked for. */
export function placePhrase(id: string, levels = 1): Phrase {
  const dossier = currentDossier();
  const view = dossier.places.get(id);
  const name = nameOfPlace(dossier, id);
  const rest = (view?.path ?? []).slice(1, levels).map((step) => `, ${nameOfPlace(dossier, step)}`);
  return [view ? { text: name, href: href.place(id) } : name, ...rest];
}

/** A place’s name and, where the name does not say it, its kind: “Knockmahon (townland)”. */
export function placeAndKind(id: string): Phrase {
  const place = currentDossier().facts.places.get(id);
  const plain =
    !place || place.kind === 'country' || place.name.toLowerCase().includes(place.kind.toLowerCase());
  return plain ? placePhrase(id) : [...placePhrase(id), ` (${wording().words.placeKind(place.kind)})`];
}

/** A person’s name, or that they are not shown. */
export function nameOfPerson(id: string): string {
  return currentDossier().people.get(id)?.person.name ?? wording().records.stemma.somebodyHidden;
}
