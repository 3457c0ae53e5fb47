/** The way back from a record to the notes that cite it. */
import type { Dossier } from '../../src/dossier/types.ts';
import { proofPage } from './page.ts';

export interface CitedIn {
  case: string;
  /** Numbers of the notes on the case’s proof page, in order. */
  notes: number[];
}

const known = new WeakMap<Dossier, Map<string, CitedIn[]>>();

/** The notes of all proof pages that cite a record, by case. */
export function citedIn(dossier: Dossier, record: string): readonly CitedIn[] {
  let all = known.get(dossier);
  if (!all) known.set(dossier, (all = notesByRecord(dossier)));
  return all.get(record) ?? [];
}

function notesByRecord(dossier: Dossier): Map<string, CitedIn[]> {
  const found = new Map<string, CitedIn[]>();
  for (const view of dossier.cases.values()) {
    if (!view.result) continue;
    for (const { number, records } of proofPage(dossier, view, view.result).notes)
      for (const record of new Set(records)) {
        const cases = found.get(record) ?? [];
        if (cases.at(-1)?.case !== view.id) cases.push({ case: view.id, notes: [] });
        cases.at(-1)!.notes.push(number);
        found.set(record, cases);
      }
  }
  return found;
}
