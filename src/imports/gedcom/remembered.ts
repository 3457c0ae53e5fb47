/**
 * Who is who in a newer file. Identifiers of GEDCOM need not stay the same from file to file, so a person is known
 * again by their UID; by their identifier together with their name; or by name and birth, where both files have them once.
 */
import type { ImportMemory } from '../memory.ts';
import type { PersonDraft, RecordDraft } from './drafts.ts';
import type { Gazetteer } from './gazetteer.ts';
import type { Structure } from './structure.ts';
import type { Tree } from './tree.ts';

/** Identifier, id, name, birth and UID of a person as an import left them. */
type PersonRow = [xref: string, id: string, name: string, born: string, uid: string];

interface Remembered {
  people: PersonRow[];
  places: [key: string, id: string][];
  records: [key: string, id: string][];
}

export interface Given {
  /** The ids that people had. */
  people(persons: readonly PersonDraft[], tree: Tree): Map<PersonDraft, string>;
  places: readonly [key: string, id: string][];
  records: ReadonlyMap<string, string>;
}

/** What an earlier import gave. */
export function remembered(memory: ImportMemory | undefined): Given {
  const { people, places, records } = rowsOf(memory?.of?.given);
  return { people: (persons, tree) => knownAgain(persons, tree, people), places, records: new Map(records) };
}

/** The rows of a memory; a row that is none, in a file that somebody edited, is passed over. */
function rowsOf(given: Readonly<Record<string, unknown>> = {}): Remembered {
  const rows = <Row extends string[]>(list: unknown, length: Row['length']): Row[] =>
    Array.isArray(list)
      ? list.filter(
          (row): row is Row =>
            Array.isArray(row) && row.length === length && row.every((cell) => typeof cell === 'string'),
        )
      : [];
  return {
    people: rows<PersonRow>(given['people'], 5),
    places: rows(given['places'], 2),
    records: rows(given['records'], 2),
  };
}

/** What this import gives, to be remembered. */
export function again(
  persons: readonly PersonDraft[],
  tree: Tree,
  gazetteer: Gazetteer,
  records: readonly RecordDraft[],
): Remembered {
  const ids = idsByXref(persons);
  return {
    people: persons.map((person) => [
      person.xref,
      person.id,
      person.name,
      person.born?.date ?? '',
      uidOf(tree.individuals.get(person.xref)!),
    ]),
    places: [...gazetteer.keys],
    records: records.map((record) => [recordKey(record, ids), record.id]),
  };
}

/** How a record is known again: whoever it is about by their id, since identifiers may be given anew. */
export function recordKey({ key, subject }: RecordDraft, ids: ReadonlyMap<string, string>): string {
  const id = subject === undefined ? undefined : ids.get(subject);
  return id === undefined ? key : `${key.slice(0, -subject!.length)}${id}`;
}

/** The ids of people by their identifiers in the file. */
export function idsByXref(persons: readonly PersonDraft[]): Map<string, string> {
  return new Map(persons.map(({ xref, id }) => [xref, id]));
}

function knownAgain(
  persons: readonly PersonDraft[],
  tree: Tree,
  rows: readonly PersonRow[],
): Map<PersonDraft, string> {
  const known = new Map<PersonDraft, string>();
  const taken = new Set<string>();
  const byUid = once(
    rows.filter((row) => row[4] !== ''),
    (row) => row[4],
  );
  const byXref = new Map(rows.map((row) => [row[0], row]));
  const byLife = once(rows, (row) => `${row[2]}|${row[3]}`);
  const take = (person: PersonDraft, row: PersonRow | undefined): void => {
    if (!row || taken.has(row[1])) return;
    known.set(person, row[1]);
    taken.add(row[1]);
  };
  for (const person of persons) take(person, byUid.get(uidOf(tree.individuals.get(person.xref)!)));
  const byIdentifier = (same: (row: PersonRow, person: PersonDraft) => boolean): void => {
    for (const person of persons) {
      const row = byXref.get(person.xref);
      if (!known.has(person) && row && same(row, person)) take(person, row);
    }
  };
  byIdentifier((row, person) => row[2] === person.name);
  for (const [life, person] of once(
    persons.filter((one) => !known.has(one)),
    lifeOf,
  ))
    take(person, byLife.get(life));
  byIdentifier((row, person) => sameName(row[2], person.name));
  return known;
}

function lifeOf(person: PersonDraft): string {
  return `${person.name}|${person.born?.date ?? ''}`;
}

/** Names with a word in common are taken for one person’s under one identifier: names are corrected all the time. */
function sameName(a: string, b: string): boolean {
  const words = new Set(a.toLowerCase().split(/\s+/));
  return b
    .toLowerCase()
    .split(/\s+/)
    .some((word) => words.has(word));
}

/** Those of a list whose key no other has. */
function once<T>(list: readonly T[], key: (item: T) => string): Map<string, T> {
  const found = new Map<string, T | undefined>();
  for (const item of list) {
    const own = key(item);
    found.set(own, found.has(own) ? undefined : item);
  }
  return new Map([...found].filter((pair): pair is [string, T] => pair[1] !== undefined));
}

function uidOf(structure: Structure): string {
  return structure.children.find(({ tag }) => tag === 'UID' || tag === '_UID')?.value.trim() ?? '';
}

/** What share of the people that one import gave another has, under the same identifier and name. */
export function sharedPeople(
  before: Readonly<Record<string, unknown>>,
  now: Readonly<Record<string, unknown>>,
): number {
  const { people } = rowsOf(before);
  const names = new Map(rowsOf(now).people.map(([xref, , name]) => [xref, name]));
  return people.length === 0
    ? 0
    : people.filter(([xref, , name]) => names.get(xref) === name).length / people.length;
}
