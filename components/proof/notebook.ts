/** The numbered notes of a page: a record’s full reference the first time, its short form after that. */
import type { RecordView } from '../../src/dossier/types.ts';
import type { Part } from '../../src/dossier/phrase.ts';

export interface PageNote {
  number: number;
  record: string;
  html: string;
}

export interface Notebook {
  notes: PageNote[];
  /** A new note on a record; nothing for a record that is not shown. */
  cite(record: string): Part;
}

/** An empty notebook over the records of a dossier. Numbers run in the order of the calls. */
export function notebook(records: ReadonlyMap<string, Pick<RecordView, 'note' | 'shortNote'>>): Notebook {
  const notes: PageNote[] = [];
  const cited = new Set<string>();
  return {
    notes,
    cite(record) {
      const view = records.get(record);
      if (!view) return '';
      const number = notes.length + 1;
      notes.push({ number, record, html: cited.has(record) ? view.shortNote : view.note });
      cited.add(record);
      return { note: number };
    },
  };
}
