/**
 * An unpacked case beside a content folder: what is new, what is there already in the same words or the same meaning, and
 * what is there and differs. Nothing that differs is ever written over.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import canonicalize from 'canonicalize';
import { parseDocument } from 'yaml';
import { list } from '../../corpus/yaml-text.ts';
import { nameCountsCsv } from '../../dossier/csv.ts';
import type { Corpus, EntryKey } from '../../corpus/types.ts';

export interface Arrival {
  /** Files to be written: copied as they are, or the entries of a list that are not there yet. */
  write: { file: string; text: string | undefined }[];
  /** Files that are there already and say the same. */
  same: string[];
  /** What is there already and differs: the entry or file, and where it stands. */
  differs: { what: string; where: string }[];
  /** The folder keeps its own site.yaml. */
  keepsSite: boolean;
}

const lists = { places: 'place', series: 'series', searches: 'search' } as const;

/**
 * Compares what came with what is there; `here` is absent where the folder is new. `sameImages` are files of `media/` that
 * are known to be there already, though not byte for byte.
 */
export function arrivalOf(
  came: Corpus,
  files: readonly string[],
  here: Corpus | undefined,
  into: string,
  sameImages: ReadonlySet<string>,
): Arrival {
  const arrival: Arrival = { write: [], same: [], differs: [], keepsSite: false };
  for (const file of files) {
    if (file === 'site.yaml') {
      if (existsSync(join(into, file))) arrival.keepsSite = true;
      else arrival.write.push({ file, text: undefined });
      continue;
    }
    const [folder = ''] = file.split('/');
    if (folder in lists) {
      ofList(came, here, into, file, lists[folder as keyof typeof lists], arrival);
      continue;
    }
    if (folder === 'names') {
      ofNames(came, here, into, file, arrival);
      continue;
    }
    const key = keyOf(file);
    const there = key && here?.fileOf(key);
    if (there !== undefined) {
      if (meaning(here!, key!) === meaning(came, key!)) arrival.same.push(file);
      else {
        const { file: at, line } = here!.locate(key!, []);
        arrival.differs.push({ what: key!.replace(':', ' '), where: `${at}:${line}` });
      }
      continue;
    }
    const target = join(into, file);
    if (!existsSync(target)) arrival.write.push({ file, text: undefined });
    else if (sameImages.has(file)) arrival.same.push(file);
    else if (statSync(target).isFile() && readFileSync(target).equals(readFileSync(join(came.root, file))))
      arrival.same.push(file);
    else arrival.differs.push({ what: file, where: file });
  }
  return arrival;
}

/** The entries of a list that are not there yet, as a list of their own. */
function ofList(
  came: Corpus,
  here: Corpus | undefined,
  into: string,
  file: string,
  kind: 'place' | 'series' | 'search',
  arrival: Arrival,
): void {
  const entries = (parseDocument(came.source(file)).toJS() ?? []) as { id: string }[];
  const fresh: object[] = [];
  for (const entry of entries) {
    const key: EntryKey = `${kind}:${entry.id}`;
    if (here?.fileOf(key) === undefined) fresh.push(entry);
    else if (meaning(here, key) !== meaning(came, key)) {
      const { file: at, line } = here.locate(key, []);
      arrival.differs.push({ what: `${kind} ${entry.id}`, where: `${at}:${line}` });
    }
  }
  if (fresh.length === 0) {
    arrival.same.push(file);
    return;
  }
  let target = file;
  for (let n = 2; existsSync(join(into, target)); n++) target = file.replace(/\.yaml$/, `-${n}.yaml`);
  arrival.write.push({ file: target, text: `${list(fresh).join('\n')}\n` });
}

/** Counts of names that are not there yet: one counted twice would weigh double. */
function ofNames(came: Corpus, here: Corpus | undefined, into: string, file: string, arrival: Arrival): void {
  const known = new Set(here?.nameCounts.map((one) => canonicalize(one)));
  const fresh = came.nameCounts.filter((one) => !known.has(canonicalize(one)));
  if (fresh.length === 0) {
    arrival.same.push(file);
    return;
  }
  let target = file;
  for (let n = 2; existsSync(join(into, target)); n++) target = file.replace(/\.csv$/, `-${n}.csv`);
  arrival.write.push({ file: target, text: nameCountsCsv(fresh) });
}

function keyOf(file: string): EntryKey | undefined {
  const [, folder, id] = /^(cases|records|people)\/([^/]+)\.mdx?$/.exec(file) ?? [];
  const kinds: Record<string, 'case' | 'record' | 'person'> = {
    cases: 'case',
    records: 'record',
    people: 'person',
  };
  return folder === undefined ? undefined : `${kinds[folder]!}:${id!}`;
}

/** What an entry says, whatever its form. */
function meaning(corpus: Corpus, key: EntryKey): string | undefined {
  const at = key.indexOf(':');
  const [kind, id] = [key.slice(0, at), key.slice(at + 1)];
  const maps: Record<string, ReadonlyMap<string, object>> = {
    case: corpus.cases,
    record: corpus.records,
    person: corpus.people,
    place: corpus.places,
    series: corpus.series,
    search: corpus.searches,
  };
  const entry = maps[kind]?.get(id);
  return entry && canonicalize(JSON.parse(JSON.stringify(entry)));
}
