/** Words beside the readings of a record. */
import type { RecordView } from '../../src/dossier/types.ts';

/** Whether anything beside the readings of a record is the tool’s own suggestion. */
export function anySuggestion(view: RecordView): boolean {
  return view.mentions.some(({ readings }) => readings.some(({ suggestion }) => suggestion !== null));
}
