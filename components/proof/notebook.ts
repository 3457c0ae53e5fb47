/**
 * The numbered notes of a page: those of the author’s argument first, then one for each time the page itself cites a
 * record. A record is given in full the first time and in its short form after that.
 */
import type { RecordView } from '../../src/dossier/types.ts';
import type { Part } from '../../src/interface/phrase.ts';
import type { Note } from '../../src/markdown/types.ts';

export interface PageNote {
  number: number;
  /** The records it cites. */
  records: string[];
  /** The record it leads to; null where its own words already do. */
  record: string | null;
  html: string;
}

export interface Notebook {
  notes: PageNote[];
  /** A new note on a record; nothing for a record that is not shown. */
  cite(record: string): Part;
}

/** A notebook over the records of a dossier that goes on from the notes of a text. Numbers run in the order of the calls. */
export function notebook(
  records: ReadonlyMap<string, Pick<RecordView, 'note' | 'shortNote'>>,
  before: readonly Note[] = [],
): Notebook {
  const notes: PageNote[] = before.map((note) => ({ ...note, record: null }));
  const cited = new Set(before.flatMap((note) => note.records));
  return {
    notes,
    cite(record) {
      const view = records.get(record);
      if (!view) return '';
      const number = notes.length + 1;
      const html = ended(cited.has(record) ? view.shortNote : view.note);
      notes.push({ number, records: [record], record, html });
      cited.add(record);
      return { note: number, html };
    },
  };
}

/** The note ends as a sentence does, unless its own last words already do. */
function ended(html: string): string {
  return /[.!?]['”’"]?(?:<\/[a-z]+>)*$/.test(html.trim()) ? html : `${html}.`;
}
