/** A whole GEDCOM file, read: its records by their identifiers. */
import { readHead, textOf, type FileHead } from './charset.ts';
import type { Reading } from './lines.ts';
import { LineNotes } from './problem.ts';
import { one, recordsOf, textUnder, type Structure } from './structure.ts';

export interface Tree {
  /** The name of the file, without its folder. */
  file: string;
  head: FileHead;
  header: Structure | undefined;
  individuals: Map<string, Structure>;
  families: Map<string, Structure>;
  sources: Map<string, Structure>;
  repositories: Map<string, Structure>;
  notes: Map<string, Structure>;
  media: Map<string, Structure>;
  /** Records of other kinds: submitters, and those of extensions. */
  others: Structure[];
  /** What breaks the grammar of 7.0; empty in a lenient reading. */
  faults: LineNotes;
  /** What was read all the same, or left out for its form. */
  remarks: LineNotes;
  /** Tags of extensions that the header documents, with their URIs. */
  extensions: ReadonlyMap<string, string>;
}

/**
 * Reads a file. Throws `BrokenFile` where nothing can be made of it, and what the file system throws.
 *
 * @param lenient reads 7.0 as leniently as 5.5.1
 */
export function readTree(path: string, file: string, { lenient = false } = {}): Tree {
  const head = readHead(path);
  const reading: Reading = {
    strict: head.version.startsWith('7') && !lenient,
    faults: new LineNotes(),
    remarks: new LineNotes(),
  };
  if (head.note) reading.remarks.add(1, head.note);
  const tree: Tree = {
    file,
    head,
    header: undefined,
    individuals: new Map(),
    families: new Map(),
    sources: new Map(),
    repositories: new Map(),
    notes: new Map(),
    media: new Map(),
    others: [],
    ...reading,
    extensions: new Map(),
  };
  const kinds: Record<string, Map<string, Structure>> = {
    INDI: tree.individuals,
    FAM: tree.families,
    SOUR: tree.sources,
    REPO: tree.repositories,
    NOTE: tree.notes,
    SNOTE: tree.notes,
    OBJE: tree.media,
  };
  for (const record of recordsOf(textOf(path, head.charset), reading)) {
    if (record.tag === 'HEAD' && !tree.header) tree.header = record;
    else if (record.tag !== 'TRLR') take(record, kinds[record.tag], tree, reading);
  }
  tree.extensions = documented(tree.header);
  if (head.version === '')
    reading.remarks.add(
      1,
      'The header does not say which GEDCOM this is (1 GEDC, 2 VERS); it was read as 5.5.1.',
    );
  return tree;
}

function take(
  record: Structure,
  kind: Map<string, Structure> | undefined,
  tree: Tree,
  { strict, faults, remarks }: Reading,
): void {
  if (!kind) {
    tree.others.push(record);
    return;
  }
  let key = record.xref ?? '';
  if (key === '' || key === 'VOID') {
    (strict ? faults : remarks).add(
      record.line,
      `This ${record.tag} record has no identifier; nothing can point to it.`,
    );
    key = `line ${record.line}`;
  }
  const first = kind.get(key);
  if (first) {
    (strict ? faults : remarks).add(
      record.line,
      `The identifier @${key}@ is taken: line ${first.line} has it. What points to it was taken to mean that one.`,
    );
    key = `${key} in line ${record.line}`;
  }
  kind.set(key, record);
}

function documented(header: Structure | undefined): Map<string, string> {
  const tags = new Map<string, string>();
  for (const { value, tag } of (header && one(header, 'SCHMA'))?.children ?? []) {
    const at = value.indexOf(' ');
    if (tag === 'TAG' && at > 0) tags.set(value.slice(0, at), value.slice(at + 1).trim());
  }
  return tags;
}

/** The form of places that the header states: the jurisdictions, smallest first. */
export function placeFormOf(header: Structure | undefined): string | undefined {
  const place = header && one(header, 'PLAC');
  return place && textUnder(place, 'FORM');
}

/** The record that a pointer leads to; `@VOID@` leads nowhere. */
export function pointed(records: ReadonlyMap<string, Structure>, pointer: Structure): Structure | undefined {
  return pointer.pointer && pointer.value !== 'VOID' ? records.get(pointer.value) : undefined;
}
