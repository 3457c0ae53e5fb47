/** Words beside the readings of a record. */
import type { Dossier, RecordView } from '../../src/dossier/types.ts';

/** “(townland)” after the name of a place, unless its name says so or it is a country. */
export function kindOfPlace(dossier: Dossier, id: string): string {
  const place = dossier.facts.places.get(id);
  return !place || place.kind === 'country' || place.name.toLowerCase().includes(place.kind.toLowerCase())
    ? ''
    : ` (${place.kind})`;
}

/** Whether anything beside the readings of a record is the tool’s own suggestion. */
export function anySuggestion(view: RecordView): boolean {
  return view.mentions.some(({ readings }) => readings.some(({ suggestion }) => suggestion !== null));
}
