/**
 * The file’s own entries. What a file tells of somebody without a source is what the file itself says, which is a record
 * too: its entry for a person or a family, written by whoever compiled it.
 */
import { type PersonDraft, type RecordDraft } from './drafts.ts';
import { state } from './mentions.ts';
import { fileDate } from './sources.ts';
import type { Tree } from './tree.ts';

export class Entries {
  /** The entries made so far, by the identifiers of whom they are for. */
  readonly made = new Map<string, RecordDraft>();
  readonly #file: string;
  readonly #date: string | undefined;
  readonly #name: string;

  /** `name` is that of the import. */
  constructor({ file, header }: Tree, name: string) {
    this.#file = file;
    this.#date = fileDate(header);
    this.#name = name;
  }

  /** The entry for a person, which names them. */
  of(person: PersonDraft): RecordDraft {
    let record = this.made.get(person.xref);
    if (!record) {
      record = this.under(person.xref, person.line);
      state(record, person, { name: person.name });
    }
    return record;
  }

  /** The mention of somebody in their own entry, or in another. */
  mentionOf(person: PersonDraft, record = this.of(person)): string {
    return state(record, person, { name: person.name }).id;
  }

  /** The entry under an identifier, such as that of a family. */
  under(xref: string, line: number): RecordDraft {
    let record = this.made.get(xref);
    if (record) return record;
    const entry = /^line /.test(xref) ? xref : `entry ${xref}`;
    const date = this.#date;
    record = {
      id: '',
      key: `entry|${xref}`,
      subject: xref,
      wishes: [`${this.#name}-${slugOf(xref)}`],
      plainTitle: `${this.#file}, ${entry}`,
      title: `${this.#file}, ${entry}`,
      cite: {
        type: 'dataset',
        title: this.#file,
        section: entry,
        ...(date === undefined ? {} : { issued: date }),
      },
      form: 'authored',
      ...(date === undefined ? {} : { made: date }),
      volume: `${this.#name}-entries`,
      mentions: [],
      media: [],
      passages: [],
      line,
      rest: {},
    };
    this.made.set(xref, record);
    return record;
  }
}

function slugOf(xref: string): string {
  return (
    xref
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'x'
  );
}
