/** The citations of all records that are shown, to copy: as text, as BibTeX and as CSL-JSON. */
import { bibtexOf } from '../citations/bibtex.ts';
import { cslItemOf, type CslItem } from '../citations/csl-json.ts';
import { wordsIn } from '../citations/escape.ts';
import type { ReferenceNote } from '../citations/format.ts';
import type { Facts } from '../model/facts.ts';

/** One record’s citation, ready to be copied. */
export interface CopyableCitation {
  /** The full note as a sentence. */
  text: string;
  bibtex: string;
  /** One item of CSL-JSON, indented. */
  cslJson: string;
}

export interface LibraryView {
  /** The citation of a record that is shown. */
  of(record: string): CopyableCitation;
  /** All records as a CSL-JSON array, in the order of their ids. */
  cslJson(): string;
  /** All records as BibTeX, in the same order. */
  bibtex(): string;
}

/** The library of what may be shown; worked out when it is asked for. */
export function libraryView(
  { records }: Pick<Facts, 'records'>,
  notes: ReadonlyMap<string, ReferenceNote>,
): LibraryView {
  const ids = [...records.keys()].sort();
  const seen = (id: string) => (notes.get(id)?.added ?? []).map(wordsIn);
  const entries = new Map<string, string>();
  const bibtex = (id: string): string => {
    let entry = entries.get(id);
    if (entry === undefined) entries.set(id, (entry = bibtexOf(records.get(id)!, seen(id))));
    return entry;
  };
  const item = (id: string): CslItem => cslItemOf(records.get(id)!, seen(id));
  return {
    of: (id) => ({
      text: sentence(wordsIn(notes.get(id)?.full ?? id)),
      bibtex: bibtex(id),
      cslJson: indented(item(id)),
    }),
    cslJson: () => `${indented(ids.map(item))}\n`,
    bibtex: () => ids.map(bibtex).join('\n'),
  };
}

/** JSON with the parts of a date on one line. A line end is never part of a value there. */
function indented(value: unknown): string {
  return JSON.stringify(value, null, 2)
    .replace(
      /\[\n\s+(-?\d+(?:,\n\s+-?\d+)*)\n\s+\]/g,
      (_, numbers: string) => `[${numbers.replace(/\s+/g, ' ')}]`,
    )
    .replace(
      /\[\n\s+(\[[^\]\n]*\](?:,\n\s+\[[^\]\n]*\])*)\n\s+\]/g,
      (_, lists: string) => `[${lists.replace(/\s+/g, ' ')}]`,
    );
}

function sentence(text: string): string {
  return /[.!?…][”’")\]]*$/.test(text) ? text : `${text}.`;
}
