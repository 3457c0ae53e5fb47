/** A content folder → Corpus: the way in. */
import { accessSync, constants, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Case, CaseFile } from '../model/case.ts';
import type { Facts } from '../model/facts.ts';
import type { Finding } from '../model/finding.ts';
import type { Person, PersonFile } from '../model/person.ts';
import type { PlaceEntry } from '../model/place.ts';
import type { RecordFile, SourceRecord } from '../model/record.ts';
import type { RepliesFile, Reply, Review } from '../model/review.ts';
import type { Search } from '../model/search.ts';
import { siteFile, type Site } from '../model/site.ts';
import { readCitationStyle } from './citation-style.ts';
import { Findings, positionOf, type Entry } from './entries.ts';
import { ContentFolder, head } from './files.ts';
import { finding, inOrder, quoted } from './finding.ts';
import { builtInPlaceMap, builtInSeriesMap, mergePlace, mergeSeries } from './gazetteer.ts';
import { folderKinds, otherFolders, reviewersName } from './kinds.ts';
import { checkMedia } from './media.ts';
import { readNameCounts } from './name-counts.ts';
import { readEntries, type ReadEntries } from './read.ts';
import { checkReferences } from './references.ts';
import { checkReplies } from './replies.ts';
import { checkSignatures } from './signatures/check.ts';
import { checkStructure } from './structure.ts';
import { CannotRun, type Corpus, type Counts, type EntryKind } from './types.ts';

export { CannotRun } from './types.ts';

/**
 * Reads a whole content folder. Everything wrong with it is a finding, each with file, line and column, and does not
 * stop the reading; the entries concerned are named in `broken`. With `schemaOnly`, only the form of the files is
 * judged: no references, circles or media.
 *
 * Throws `CannotRun` when the folder cannot be looked at at all.
 */
export function loadCorpus(dir: string, options: { schemaOnly?: boolean } = {}): Corpus {
  const root = resolve(dir);
  demandFolder(root, dir);
  const findings = new Findings();
  const folder = new ContentFolder(root, findings.list);
  demandContent(folder, dir, findings.list);

  const read = readEntries(folder, findings);
  const entries = gather(read, findings);
  const facts: Facts = { ...entries, nameCounts: readNameCounts(folder, entries.places, findings.list) };
  const entryOf = (kind: EntryKind, id: string) => read.byKey.get(`${kind}:${id}`);
  if (!options.schemaOnly) {
    checkReferences(read.entries, { ids: idsByKind(read, facts), uncertain: read.uncertain }, findings);
    checkStructure(facts, entryOf, findings);
    checkReplies(facts, entryOf, findings);
    const records = [...facts.records.values()].map((record) => ({
      record,
      entry: entryOf('record', record.id)!,
    }));
    checkMedia(records, folder, findings);
  }

  return {
    ...facts,
    root,
    counts: count(read),
    signatures: options.schemaOnly ? new Map() : checkSignatures(folder, read, findings),
    citationStyle: options.schemaOnly
      ? undefined
      : readCitationStyle(folder, entries.site, entryOf('site', 'site'), findings),
    findings: inOrder(findings.list),
    broken: findings.broken,
    fileOf: (entry) => read.byKey.get(entry)?.source.file,
    locate: (key, path, { key: ofKey = false } = {}) => {
      const entry = read.byKey.get(key);
      return entry ? positionOf(entry, path, ofKey) : head(key === 'site:site' ? 'site.yaml' : '');
    },
    locateInBody: (key, offset) => {
      const entry = read.byKey.get(key);
      return entry ? entry.source.position(entry.bodyStart + offset) : head('');
    },
    source: (file) => folder.sources.get(file)?.text ?? '',
  };
}

function demandFolder(root: string, dir: string): void {
  let isFolder: boolean;
  try {
    isFolder = statSync(root).isDirectory();
    if (isFolder) accessSync(root, constants.R_OK | constants.X_OK);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT' || code === 'ENOTDIR')
      throw new CannotRun(
        `There is no folder ${quoted(dir, 200)}. Name your content folder with --content, or make one with: npm run new -- folder ${dir}`,
      );
    if (code === 'EACCES' || code === 'EPERM')
      throw new CannotRun(`The folder ${quoted(dir, 200)} cannot be opened: permission is denied.`);
    throw new CannotRun(
      `The folder ${quoted(dir, 200)} cannot be opened: ${error instanceof Error ? error.message : String(error)}.`,
    );
  }
  if (!isFolder)
    throw new CannotRun(
      `${quoted(dir, 200)} is a file; a content folder is wanted, with cases, records and people in it.`,
    );
}

/** A folder without anything that is known is most likely the wrong folder. */
function demandContent(folder: ContentFolder, dir: string, findings: Finding[]): void {
  const expected = ['site.yaml', reviewersName, ...folderKinds.map((kind) => kind.folder), ...otherFolders];
  const found = folder.list('');
  const known = found.filter(({ name, isFolder }) =>
    name.endsWith('.yaml') ? !isFolder && expected.includes(name) : isFolder && expected.includes(name),
  );
  if (known.length === 0)
    throw new CannotRun(
      `${quoted(dir, 200)} is no content folder: it holds neither site.yaml nor any of the folders ${folderKinds.map((kind) => kind.folder).join(', ')}.`,
    );
  for (const { name, file, isFolder } of found) {
    if (known.some((entry) => entry.name === name)) continue;
    const meant = expected.find(
      (word) => word.toLowerCase() === name.toLowerCase().replace(/\.yml$/, '.yaml'),
    );
    findings.push(
      finding(
        'file-is-expected',
        head(file),
        `This ${isFolder ? 'folder' : 'file'} is not read: nothing of that name belongs into a content folder.`,
        meant
          ? `Did you mean ${meant}?`
          : `A content folder holds site.yaml, perhaps ${reviewersName}, and the folders ${[...folderKinds.map((kind) => kind.folder), 'media'].join(', ')}. Keep notes of your own outside it.`,
      ),
    );
  }
  if (!known.some(({ name }) => name === 'site.yaml'))
    findings.push(
      finding(
        'site-is-described',
        head('site.yaml'),
        'There is no site.yaml, so the site has no title of its own.',
        'Add the file site.yaml with at least a title, such as title: The Phelans of Houghton County',
      ),
    );
}

/** The facts of all entries of good form. What only completes a built-in place or series is laid over it. */
function gather(read: ReadEntries, findings: Findings): Omit<Facts, 'nameCounts'> {
  const cases = new Map<string, Case>();
  const records = new Map<string, SourceRecord>();
  const people = new Map<string, Person>();
  const searches = new Map<string, Search>();
  const reviews: Review[] = [];
  const replies: Reply[] = [];
  const places = builtInPlaceMap();
  const series = builtInSeriesMap();
  let site: Site = siteFile.parse({});

  for (const entry of read.entries) {
    const { id, kind } = entry;
    const value = read.values.get(entry);
    if (value === undefined) continue;
    const body = entry.source.text.slice(entry.bodyStart);
    if (kind === 'site') site = value as Site;
    if (kind === 'case') cases.set(id, { ...(value as CaseFile), id, body });
    if (kind === 'record') records.set(id, { ...(value as RecordFile), id, body });
    if (kind === 'person') people.set(id, { ...(value as PersonFile), id, body });
    if (kind === 'search') searches.set(id, value as Search);
    const ofCase = id.slice(0, id.indexOf('/'));
    if (kind === 'review') reviews.push({ ...(value as Omit<Review, 'id' | 'case'>), id, case: ofCase });
    if (kind === 'replies')
      (value as RepliesFile).replies.forEach((reply, index) =>
        replies.push({ ...reply, case: ofCase, index }),
      );
    if (kind === 'place') {
      const place = mergePlace(places.get(id), value as PlaceEntry);
      if (place) places.set(id, place);
      else incomplete(entry, ['name', 'kind'], findings);
    }
    if (kind === 'series') {
      const merged = mergeSeries(series.get(id), value as Parameters<typeof mergeSeries>[1]);
      if (merged) series.set(id, merged);
      else incomplete(entry, ['title', 'of', 'kind', 'from', 'to'], findings);
    }
  }
  return { site, cases, records, people, places, series, searches, reviews, replies };
}

function incomplete(entry: Entry, required: readonly string[], findings: Findings): void {
  const raw = entry.raw as object;
  for (const key of required) {
    if (Object.hasOwn(raw, key)) continue;
    findings.add(
      entry,
      [],
      'required-key-is-given',
      `The ${entry.kind} ${quoted(entry.id)} needs the key ${key}, and it is missing here.`,
      `Add ${key}: and its value. Only an entry that adds to a built-in ${entry.kind} can do without.`,
      { breaks: true },
    );
  }
}

/** Every id of each kind, with the entry that has it, or none for what is built in. */
function idsByKind(
  read: ReadEntries,
  facts: Pick<Facts, 'places' | 'series'>,
): Map<EntryKind, Map<string, Entry | undefined>> {
  const ids = new Map<EntryKind, Map<string, Entry | undefined>>([
    ['place', new Map([...facts.places.keys()].map((id) => [id, undefined]))],
    ['series', new Map([...facts.series.keys()].map((id) => [id, undefined]))],
  ]);
  for (const entry of read.byKey.values()) {
    let known = ids.get(entry.kind);
    if (!known) ids.set(entry.kind, (known = new Map()));
    known.set(entry.id, entry);
  }
  return ids;
}

function count(read: ReadEntries): Counts {
  const counts: Counts = { cases: 0, records: 0, mentions: 0, people: 0, places: 0, searches: 0 };
  for (const entry of read.byKey.values()) {
    if (entry.kind === 'case') counts.cases++;
    if (entry.kind === 'person') counts.people++;
    if (entry.kind === 'place') counts.places++;
    if (entry.kind === 'search') counts.searches++;
    if (entry.kind !== 'record') continue;
    counts.records++;
    const mentions =
      typeof entry.raw === 'object' && entry.raw !== null && 'mentions' in entry.raw
        ? entry.raw.mentions
        : undefined;
    if (Array.isArray(mentions)) counts.mentions += mentions.length;
  }
  return counts;
}
