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
  return new Library(records, notes);
}

class Library implements LibraryView {
  readonly #records: Facts['records'];
  readonly #notes: ReadonlyMap<string, ReferenceNote>;
  readonly #entries = new Map<string, string>();

  constructor(records: Facts['records'], notes: ReadonlyMap<string, ReferenceNote>) {
    this.#records = records;
    this.#notes = notes;
  }

  of(id: string): CopyableCitation {
    return {
      text: sentence(wordsIn(this.#notes.get(id)?.full ?? id)),
      bibtex: this.#bibtex(id),
      cslJson: indented(this.#item(id)),
    };
  }

  cslJson(): string {
    return `${indented(this.#ids().map((id) => this.#item(id)))}\n`;
  }

  bibtex(): string {
    return this.#ids()
      .map((id) => this.#bibtex(id))
      .join('\n');
  }

  #ids(): string[] {
    return [...this.#records.keys()].sort();
  }

  #seen(id: string): string[] {
    return (this.#notes.get(id)?.added ?? []).map(wordsIn);
  }

  #item(id: string): CslItem {
    return cslItemOf(this.#records.get(id)!, this.#seen(id));
  }

  #bibtex(id: string): string {
    let entry = this.#entries.get(id);
    if (entry === undefined)
      this.#entries.set(id, (entry = bibtexOf(this.#records.get(id)!, this.#seen(id))));
    return entry;
  }
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
