/** The entries of a content folder, file by file, each judged by the schema of its kind. */
import type { z } from 'zod';
import { idPattern } from '../model/common.ts';
import type { ValuePath } from '../model/finding.ts';
import { reviewerEntry } from '../model/review.ts';
import { siteFile } from '../model/site.ts';
import { isFlowAt, keyOf, positionOf, type Entry, type Findings } from './entries.ts';
import { head, type ContentFolder, type FoundFile } from './files.ts';
import { finding, quoted } from './finding.ts';
import { findFrontMatter } from './front-matter.ts';
import { folderKinds, reviewersName, type FolderKind } from './kinds.ts';
import type { FormProblem } from './form-problem.ts';
import { judge, reservedKeys } from './schema-problems.ts';
import { SourceText } from './source-text.ts';
import type { EntryKey, EntryKind } from './types.ts';
import { readYaml } from './yaml.ts';

/** Everything read, good or bad. */
export interface ReadEntries {
  /** In the order of the kinds, then of files, then within a file. */
  entries: readonly Entry[];
  /** The first entry of each id. */
  byKey: ReadonlyMap<EntryKey, Entry>;
  /** What the schema makes of each entry of good form that is the first of its id. */
  values: ReadonlyMap<Entry, unknown>;
  /** Kinds of which a list file could not be read. */
  uncertain: ReadonlySet<EntryKind>;
}

/** Reads every file of a content folder that holds entries. */
export function readEntries(folder: ContentFolder, findings: Findings): ReadEntries {
  const reader = new Reader(folder, findings);
  reader.site();
  reader.reviewers();
  for (const kind of folderKinds) reader.kind(kind);
  return reader;
}

type PerCase = NonNullable<FolderKind['perCase']>;

class Reader implements ReadEntries {
  readonly entries: Entry[] = [];
  readonly byKey = new Map<EntryKey, Entry>();
  readonly values = new Map<Entry, unknown>();
  readonly uncertain = new Set<EntryKind>();
  readonly #folder: ContentFolder;
  readonly #findings: Findings;

  constructor(folder: ContentFolder, findings: Findings) {
    this.#folder = folder;
    this.#findings = findings;
  }

  site(): void {
    const found = this.#folder.list('').find(({ name, isFolder }) => name === 'site.yaml' && !isFolder);
    if (!found) return;
    this.#wholeFile('site', 'site', found, siteFile);
  }

  kind(folder: FolderKind): void {
    for (const found of this.#folder.listTop(folder.folder)) {
      const ending = found.name.slice(found.name.lastIndexOf('.'));
      if (found.isFolder) {
        if (folder.perCase) this.#perCase(found, folder, folder.perCase);
        else this.#unexpected(found, folder);
      } else if (folder.markdown?.endings.includes(ending))
        this.#markdown(found, folder.kind, folder.markdown.schema, ending);
      else if (folder.list && ending === '.yaml') this.#list(found, folder.kind, folder.list);
      else this.#unexpected(found, folder);
    }
  }

  reviewers(): void {
    const found = this.#folder.list('').find(({ name, isFolder }) => name === reviewersName && !isFolder);
    if (found) this.#list(found, 'reviewer', reviewerEntry);
  }

  #perCase(caseFolder: FoundFile, folder: FolderKind, { schema, named, beside }: PerCase): void {
    const inFolder = this.#folder.list(caseFolder.file);
    for (const found of inFolder) {
      const ofFile = beside.find((ending) => found.name.endsWith(`.yaml${ending}`));
      if (!found.isFolder && ofFile !== undefined) {
        this.#besideFile(found, found.file.slice(0, -ofFile.length), inFolder);
        continue;
      }
      if (found.isFolder || !found.name.endsWith('.yaml')) {
        this.#unexpected(found, { ...folder, folder: caseFolder.file, expected: '.yaml files' });
        continue;
      }
      const name = found.name.slice(0, -'.yaml'.length);
      const id = `${caseFolder.name}/${name}`;
      const own = Object.hasOwn(named, name) ? named[name] : undefined;
      this.#wholeFile(own?.kind ?? folder.kind, id, found, own?.schema ?? schema);
    }
  }

  /** A signature of a file that isn’t there says nothing. */
  #besideFile(found: FoundFile, file: string, inFolder: readonly FoundFile[]): void {
    if (inFolder.some((other) => other.file === file && !other.isFolder)) return;
    const name = file.slice(file.lastIndexOf('/') + 1);
    this.#findings.list.push(
      finding(
        'file-is-expected',
        head(found.file),
        `This is a signature, and the file it belongs to, ${name}, is not there.`,
        `Put ${name} beside it, as the reviewer sent it, or take the signature out.`,
      ),
    );
  }

  #markdown(found: FoundFile, kind: EntryKind, schema: z.ZodType, ending: string): void {
    const id = found.name.slice(0, -ending.length);
    const source = this.#folder.read(found.file);
    if (!source) return this.#unread(kind, id, new SourceText(found.file, ''));
    const place = findFrontMatter(source);
    if ('rule' in place) {
      this.#findings.list.push(place);
      return this.#unread(kind, id, source);
    }
    this.#entry(
      { kind, id, source, base: [], yamlEnd: place.yamlEnd, bodyStart: place.bodyStart },
      schema,
      this.#yaml(source, place.yamlEnd),
    );
  }

  #wholeFile(kind: EntryKind, id: string, found: FoundFile, schema: z.ZodType): void {
    const source = this.#folder.read(found.file);
    if (!source) return this.#unread(kind, id, new SourceText(found.file, ''));
    const end = source.text.length;
    this.#entry(
      { kind, id, source, base: [], yamlEnd: end, bodyStart: end },
      schema,
      this.#yaml(source, end),
    );
  }

  #list(found: FoundFile, kind: EntryKind, schema: z.ZodType): void {
    const source = this.#folder.read(found.file);
    const end = source?.text.length ?? 0;
    const { value, clean } = source ? this.#yaml(source, end) : { value: undefined, clean: false };
    if (!source || value === undefined) {
      this.uncertain.add(kind);
      return;
    }
    if (!Array.isArray(value)) {
      if (value === null) return;
      this.uncertain.add(kind);
      const entry = { kind, id: '', source, base: [], raw: value, yamlEnd: end, bodyStart: end };
      this.#findings.add(
        entry,
        [],
        'value-has-its-form',
        'This file should hold a list, and something else stands here.',
        'Begin each entry with a hyphen: - id: …',
      );
      return;
    }
    value.forEach((raw: unknown, index) => {
      const given =
        typeof raw === 'object' && raw !== null && Object.hasOwn(raw, 'id')
          ? (raw as { id: unknown }).id
          : undefined;
      const id = typeof given === 'string' || typeof given === 'number' ? String(given) : undefined;
      this.#entry(
        { kind, id: id ?? `${found.file}:${index}`, source, base: [index], yamlEnd: end, bodyStart: end },
        schema,
        { value: raw, clean },
        ['id'],
      );
    });
  }

  #yaml(source: SourceText, end: number): { value: unknown; clean: boolean } {
    const { value, findings } = readYaml(source, end);
    this.#findings.list.push(...findings);
    return { value, clean: findings.every((found) => found.severity !== 'error') };
  }

  /** Takes in one entry: its id, what is wrong with its form, and what it says. */
  #entry(
    place: Omit<Entry, 'raw'>,
    schema: z.ZodType,
    { value, clean }: { value: unknown; clean: boolean },
    idPath?: ValuePath,
  ): void {
    const entry: Entry = { ...place, raw: value ?? (value === null && !idPath ? {} : value) };
    const key = keyOf(entry);
    this.entries.push(entry);
    if (!clean) this.#findings.broken.add(key);
    if (!idPath) this.#fileName(entry);
    const first = this.byKey.get(key);
    if (first) this.#second(entry, first, idPath);
    else this.byKey.set(key, entry);
    if (value === undefined) return;
    if (entry.source.text.includes('__proto__')) this.#report(entry, reservedKeys(schema, entry.raw));
    const judged = judge(entry, schema, (path) => isFlowAt(entry, path));
    if ('value' in judged) {
      if (!first) this.values.set(entry, judged.value);
      return;
    }
    this.#report(entry, judged.problems);
  }

  #report(entry: Entry, problems: readonly FormProblem[]): void {
    for (const { path, rule, message, help, key } of problems)
      this.#findings.add(entry, path, rule, message, help, { key, breaks: true });
  }

  #fileName(entry: Entry): void {
    const parts =
      entry.kind === 'review' || entry.kind === 'replies' ? entry.id.split('/').slice(1) : [entry.id];
    if (parts.every((part) => idPattern.test(part))) return;
    const name = parts.join('/');
    const better = plainId(name);
    this.#findings.list.push(
      finding(
        'id-is-well-formed',
        head(entry.source.file),
        `The name of this file, ${quoted(name)}, cannot be an id: ids are lower-case words joined by hyphens.`,
        better === ''
          ? 'Rename the file with the letters a to z, digits and hyphens.'
          : `Rename it, for instance to ${better}${entry.source.file.slice(entry.source.file.lastIndexOf('.'))}`,
      ),
    );
    this.#findings.broken.add(keyOf(entry));
  }

  #second(entry: Entry, first: Entry, idPath: ValuePath | undefined): void {
    const there = positionOf(first, first.base.length > 0 ? ['id'] : []);
    this.#findings.add(
      entry,
      idPath ?? [],
      'id-is-unique',
      `The id ${quoted(entry.id)} is taken: another ${entry.kind} has it, in ${first.source.file}${first.base.length > 0 ? `, line ${there.line}` : ''}.`,
      'Give one of the two another id, and change the references to it.',
      { breaks: true },
    );
  }

  /** A file that stands there and could not be read still has its id. */
  #unread(kind: EntryKind, id: string, source: SourceText): void {
    const entry: Entry = { kind, id, source, base: [], raw: undefined, yamlEnd: 0, bodyStart: 0 };
    this.#findings.broken.add(keyOf(entry));
    if (!this.byKey.has(keyOf(entry))) this.byKey.set(keyOf(entry), entry);
  }

  #unexpected(found: FoundFile, folder: FolderKind): void {
    this.#findings.list.push(
      finding(
        'file-is-expected',
        head(found.file),
        `This ${found.isFolder ? 'folder' : 'file'} is not read: ${folder.folder}/ holds ${folder.expected}.`,
        betterName(found, folder) ??
          'Move it to where it belongs; keep notes of your own outside the content folder.',
      ),
    );
  }
}

function betterName({ name, isFolder }: FoundFile, folder: FolderKind): string | undefined {
  if (isFolder) return undefined;
  const dot = name.lastIndexOf('.');
  const ending = name.slice(dot).toLowerCase();
  const stem = dot < 0 ? name : name.slice(0, dot);
  if (['.yml', '.yaml'].includes(ending) && (folder.list || folder.perCase))
    return `Rename it to ${stem}.yaml`;
  if (['.markdown', '.txt', '.md', '.mdx'].includes(ending) && folder.markdown)
    return `Rename it to ${stem}.md`;
  return undefined;
}

/** The nearest well-formed id. */
function plainId(name: string): string {
  return name
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean)
    .join('-');
}
