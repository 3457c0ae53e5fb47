/**
 * A GEDCOM file → what would become of a content folder. Nothing is written here.
 */
import { createHash } from 'node:crypto';
import { createReadStream, existsSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Corpus } from '../../corpus/types.ts';
import { daySpan } from '../../model/edtf.ts';
import { planChanges, type ChangePlan, type Piece } from '../changes.ts';
import { readMemory, type FileRead, type ImportMemory } from '../memory.ts';
import { breakCircles } from './circles.ts';
import type { PersonDraft, RecordDraft } from './drafts.ts';
import { Gazetteer } from './gazetteer.ts';
import { Ids, slug } from './ids.ts';
import { dropUsed, leaveUnused, ImportLog } from './log.ts';
import { keepLivingAside } from './living-words.ts';
import { MediaFolder, type MediaCopy } from './media.ts';
import { idOf, OwnExport } from './own-export.ts';
import { resolveOwn } from './own-references.ts';
import { People } from './people.ts';
import { ownPlacePiece, peopleFiles, personPiece, placePiece, recordPiece } from './pieces.ts';
import { again, idsByXref, recordKey, remembered, type Given } from './remembered.ts';
import { useAll, type Structure } from './structure.ts';
import { readTree, type Tree } from './tree.ts';

export interface GedcomOptions {
  /** The path of the GEDCOM file. */
  path: string;
  /** The content folder, and what is in it by now. */
  content: string;
  corpus: Corpus;
  /** What the import is called; a newer file is imported under the name of the first. */
  name: string;
  /** The day that decides who is presumed living, `YYYY-MM-DD`. */
  today: string;
  lenient?: boolean;
  /** The country of places that name none: an id of the gazetteer. */
  country?: string | undefined;
}

export interface GedcomImport {
  name: string;
  tree: Tree;
  log: ImportLog;
  /** Whether an earlier import has this name. */
  again: boolean;
  plan: ChangePlan;
  copies: MediaCopy[];
  /** What is to be remembered of the file beside the texts. */
  of: FileRead;
  counts: { people: number; families: number; places: number; records: number; sources: number };
  /** Lists of jurisdictions that lead to no country, with how often each came up. */
  unplaced: ReadonlyMap<string, { count: number; line: number }>;
}

/** Reads a file and plans its import. `null` for the plan’s part when the grammar is broken: then see `tree.faults`. */
export async function planGedcom(
  options: GedcomOptions,
): Promise<GedcomImport | { tree: Tree; broken: true }> {
  const { path, content, corpus, name } = options;
  const tree = readTree(path, basename(path), { lenient: options.lenient ?? false });
  if (tree.faults.count > 0) return { tree, broken: true };
  const log = new ImportLog();
  const memory = readMemory(content, `gedcom/${name}`);
  const given = remembered(memory);
  const own = ownedBy(memory);

  const places = new Map(
    [...corpus.places].filter(([id, place]) => place.builtIn || !own.has(`place:${id}`)),
  );
  const gazetteer = new Gazetteer(places, { country: options.country, before: new Map(given.places) });
  const exported = new OwnExport(tree, log);
  const people = new People({ tree, log }, gazetteer, name, exported);
  people.all();
  for (const kind of [tree.individuals, tree.families]) for (const record of kind.values()) dropUsed(record);
  if (tree.header) useHeader(tree.header);

  const persons = [...people.persons.values()];
  breakCircles(persons, log);
  givePersonIds(persons, tree, given, ofOthers(corpus.people.keys(), own, 'person'));
  const records = [...exported.records, ...people.records];
  records.forEach((record, index) => (record.id = `r${index}`));
  const withheld = keepLivingAside(persons, records, corpus, daySpan(options.today).first!, log);
  giveRecordIds(records, idsByXref(persons), given, ofOthers(corpus.records.keys(), own, 'record'));
  const media = new MediaFolder(path, content, mediaThere(content), tree, log);
  media.add(people.media, withheld);
  media.own(exported.records);
  bound(records, persons, log);
  const said = saying(records, persons);
  resolveOwn(exported, persons, corpus, log);
  for (const record of [
    tree.individuals,
    tree.families,
    tree.sources,
    tree.repositories,
    tree.notes,
    tree.media,
  ])
    for (const structure of record.values()) leaveUnused(structure, log);
  for (const structure of [...(tree.header ? [tree.header] : []), ...tree.others])
    leaveUnused(structure, log);

  const rows = again(persons, tree, gazetteer, said) as unknown as FileRead['given'];
  const counts = { families: tree.families.size, sources: tree.sources.size };
  // The file has said all it has; of a great one, this is most of the memory.
  for (const kind of [tree.individuals, tree.families, tree.notes]) kind.clear();

  const made = [...exported.places.values()].filter(({ id }) => !places.has(id) || places.get(id)!.builtIn);
  const pieces = piecesOf(name, persons, said, gazetteer, made, memory);
  const plan = planChanges(content, pieces, memory, {
    elsewhere(key, file) {
      const there = corpus.fileOf(key as `person:${string}`);
      return there !== undefined && there !== file;
    },
    whole: true,
  });
  return {
    name,
    tree,
    log,
    again: memory !== undefined,
    plan,
    copies: media.copies,
    of: { file: tree.file, digest: await digestOfFile(path), given: rows },
    counts: {
      people: persons.length,
      families: counts.families,
      places: gazetteer.made.size + made.length,
      records: said.length,
      sources: counts.sources,
    },
    unplaced: gazetteer.unplaced,
  };
}

/** More than this in one entry is no life, and a text of the content has its bounds. */
const most = { mentions: 4000, spouses: 1000, words: 2_000_000 };

/** Keeps each record and person within what a text of the content may hold. */
function bound(records: readonly RecordDraft[], persons: readonly PersonDraft[], log: ImportLog): void {
  const cut = new Set<RecordDraft>();
  for (const record of records) {
    if (record.mentions.length > most.mentions) {
      log.doubts.add(
        record.line,
        `The entry here tells of ${record.mentions.length} things; the first ${most.mentions} came in.`,
      );
      record.mentions.length = most.mentions;
      cut.add(record);
    }
    let words = 0;
    record.passages = record.passages.filter(({ line, text }) => {
      words += text.length;
      if (words > most.words) log.aside.push({ line, why: 'is too long for one record', text });
      return words <= most.words;
    });
  }
  for (const person of persons) {
    if (cut.size > 0)
      person.mentions = person.mentions.filter(
        ({ record, mention }) => !cut.has(record) || Number(mention.slice(1)) <= most.mentions,
      );
    if (person.spouses.length <= most.spouses) continue;
    log.doubts.add(
      person.line,
      `@${person.xref}@ has ${person.spouses.length} partners; the first ${most.spouses} came in.`,
    );
    person.spouses.length = most.spouses;
  }
}

/** What of the header the reading has followed. */
function useHeader(header: Structure): void {
  header.used = true;
  for (const child of header.children)
    if (['GEDC', 'CHAR', 'SCHMA', 'DATE', 'PLAC'].includes(child.tag)) useAll(child);
}

/** Records that say something; entries that came to hold nothing but a name are taken back. */
function saying(records: readonly RecordDraft[], persons: readonly PersonDraft[]): RecordDraft[] {
  const bare = new Set(
    records.filter(
      ({ key, passages, media, mentions }) =>
        key.startsWith('entry|') &&
        passages.length === 0 &&
        media.length === 0 &&
        mentions.every((mention) => Object.keys(mention).every((one) => one === 'id' || one === 'name')),
    ),
  );
  if (bare.size > 0)
    for (const person of persons)
      if (person.mentions.some(({ record }) => bare.has(record)))
        person.mentions = person.mentions.filter(({ record }) => !bare.has(record));
  return records.filter((record) => !bare.has(record));
}

function piecesOf(
  name: string,
  persons: readonly PersonDraft[],
  records: readonly RecordDraft[],
  gazetteer: Gazetteer,
  ownPlaces: readonly Parameters<typeof ownPlacePiece>[0][],
  memory: ImportMemory | undefined,
): Piece[] {
  const before = new Map<string, string>();
  for (const place of memory?.written.keys() ?? []) {
    const [file = '', id] = place.split('#');
    if (id !== undefined && file.startsWith('people/')) before.set(id, file);
  }
  const sorted = persons.toSorted(
    (a, b) => order(a.surname || a.name, b.surname || b.name) || order(a.name, b.name) || order(a.id, b.id),
  );
  const files = peopleFiles(sorted, name, before);
  const placeFile = `places/${name}.yaml`;
  return [
    ...sorted.map((person) => personPiece(person, files.get(person)!)),
    ...ownPlaces.map((place) => ownPlacePiece(place, placeFile)),
    ...[...gazetteer.made.values()].map((place) => placePiece(place, placeFile)),
    ...records.map(recordPiece),
  ];
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The keys of what an earlier import of this name wrote. */
function ownedBy(memory: ImportMemory | undefined): ReadonlySet<string> {
  const kinds: Record<string, string> = { people: 'person', places: 'place', records: 'record' };
  return new Set(
    [...(memory?.written.keys() ?? [])].map((place) => {
      const [file = '', entry] = place.split('#');
      const [folder = '', base = ''] = file.split('/');
      return `${kinds[folder] ?? folder}:${entry ?? base.replace(/\.md$/, '')}`;
    }),
  );
}

function ofOthers(ids: Iterable<string>, own: ReadonlySet<string>, kind: string): string[] {
  return [...ids].filter((id) => !own.has(`${kind}:${id}`));
}

/** Ids for people: those they had, else their names, with the year of birth where a name comes back. */
function givePersonIds(
  persons: readonly PersonDraft[],
  tree: Tree,
  given: Given,
  taken: readonly string[],
): void {
  const ids = new Ids(taken);
  const known = given.people(persons, tree);
  for (const person of persons) {
    const id = known.get(person);
    if (id !== undefined && ids.again(id)) person.id = id;
  }
  for (const person of persons) {
    if (person.id !== '') continue;
    const name = slug(person.name);
    const year = /\d{4}/.exec(person.born?.date ?? '')?.[0];
    const exported = idOf(tree.individuals.get(person.xref)!);
    if (exported !== undefined) person.rest.id = exported;
    person.id = ids.give(
      [
        exported ?? '',
        name,
        year === undefined ? '' : `${name || 'person'}-${year}`,
        name === '' ? `person-${slug(person.xref)}` : '',
      ].filter(Boolean),
    );
  }
}

function giveRecordIds(
  records: readonly RecordDraft[],
  people: ReadonlyMap<string, string>,
  given: Given,
  taken: readonly string[],
): void {
  const ids = new Ids(taken);
  for (const record of records) {
    const id = given.records.get(recordKey(record, people));
    record.id = id !== undefined && ids.again(id) ? id : '';
  }
  for (const record of records)
    if (record.id === '')
      record.id = ids.give(record.wishes.length > 0 ? record.wishes : [slug(record.plainTitle)]);
}

function mediaThere(content: string): string[] {
  const folder = join(content, 'media');
  return existsSync(folder) ? readdirSync(folder) : [];
}

async function digestOfFile(path: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(path)) hash.update(piece as Buffer);
  return `sha256-${hash.digest('hex')}`;
}
