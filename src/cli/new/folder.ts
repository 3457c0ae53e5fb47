/** A content folder as `new` sees it: which ids there are, what they may mean, and files that are made but never overwritten. */
import { closeSync, existsSync, mkdirSync, openSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { byCodeUnits, listed, quoted } from '../../corpus/finding.ts';
import { loadCorpus } from '../../corpus/load.ts';
import { nearestFew } from '../../corpus/suggestions.ts';
import { CannotRun, type Corpus, type EntryKind } from '../../corpus/types.ts';
import { idFrom } from '../../model/id-from.ts';

/** The kinds of entries that other entries name by their id. */
export type NamedKind = Extract<EntryKind, 'person' | 'record' | 'place' | 'series' | 'case'>;

const many: Record<NamedKind, string> = {
  person: 'people',
  record: 'records',
  place: 'places',
  series: 'series',
  case: 'cases',
};

export class NewFolder {
  readonly dir: string;
  /** What the folder holds, as far as it can be read: mistakes elsewhere are no reason to make nothing. */
  readonly corpus: Corpus;
  readonly #lineEnd: string;

  /** Throws `CannotRun` where there is no content folder. */
  constructor(dir: string) {
    if (!existsSync(dir) || !statSync(dir).isDirectory())
      throw new CannotRun(
        `There is no content folder ${quoted(dir, 200)}. Make one with: npm run new -- folder ${dir}`,
      );
    this.dir = dir;
    this.corpus = loadCorpus(dir, { schemaOnly: true });
    this.#lineEnd = usesCrlf(dir) ? '\r\n' : '\n';
  }

  /** What entries of a kind are called, by id. */
  names(kind: NamedKind): Map<string, string> {
    const { people, records, places, series, cases } = this.corpus;
    if (kind === 'person') return new Map([...people].map(([id, { name }]) => [id, name]));
    if (kind === 'place') return new Map([...places].map(([id, { name }]) => [id, name]));
    if (kind === 'case') return new Map([...cases].map(([id, { question }]) => [id, question]));
    return new Map([...(kind === 'record' ? records : series)].map(([id, { title }]) => [id, title]));
  }

  /** Whether there is such an entry, in a broken file too. */
  has(kind: NamedKind, id: string): boolean {
    return this.names(kind).has(id) || this.corpus.fileOf(`${kind}:${id}`) !== undefined;
  }

  /** The ids that an unknown one may mean, best first: near in spelling, or named by the same words. */
  suggestions(kind: NamedKind, wrong: string, most = 6): string[] {
    const names = this.names(kind);
    const words = idFrom(wrong).split('-').filter(Boolean);
    const holdsAll = (text: string) => {
      const own = text.split('-');
      return words.every((word) => own.some((other) => other.startsWith(word)));
    };
    const byWords =
      words.length === 0
        ? []
        : [...names]
            .filter(([id, name]) => holdsAll(`${id}-${idFrom(name)}`))
            .map(([id]) => id)
            .sort((a, b) => a.length - b.length || byCodeUnits(a, b));
    return [...new Set([...nearestFew(idFrom(wrong), names.keys(), most), ...byWords])].slice(0, most);
  }

  /** The sentence for an id that nothing has. */
  unknown(kind: NamedKind, wrong: string): string {
    const meant = this.suggestions(kind, wrong, 4);
    const names = [...this.names(kind).keys()];
    const advice =
      meant.length > 0
        ? `Did you mean ${listed(meant)}?`
        : kind === 'place' || kind === 'series'
          ? `The page of built-in ids on the site lists what is known without you; ${kind === 'place' ? 'npm run new -- place makes one of your own' : 'your own go into series/'}.`
          : names.length === 0
            ? `There are no ${many[kind]} yet; npm run new -- ${kind} makes one.`
            : `The ${many[kind]} are ${names.slice(0, 12).join(', ')}${names.length > 12 ? ` and ${names.length - 12} more` : ''}.`;
    return `There is no ${kind} ${quoted(wrong)}. ${advice}`;
  }

  /** The id as it was given. Throws `CannotRun`, with what it may mean, where nothing has it. */
  demand(kind: NamedKind, id: string): string {
    if (!this.has(kind, id)) throw new CannotRun(this.unknown(kind, id));
    return id;
  }

  /** Refuses an id that an entry of the kind has already, in whatever file. */
  demandFree(kind: EntryKind, id: string): void {
    const file = this.corpus.fileOf(`${kind}:${id}`);
    if (file !== undefined)
      throw new CannotRun(`There is a ${kind} ${quoted(id)} already, in ${file}; it was left as it is.`);
    if (kind === 'place' && this.corpus.places.has(id))
      throw new CannotRun(`The place ${quoted(id)} is built in: use it as it is, there is nothing to make.`);
  }

  /** Writes a file that is not there yet, with the line ends of the folder, and returns its path. */
  write(path: string, text: string): string {
    const file = join(this.dir, path);
    writeNew(file, text.replaceAll('\n', this.#lineEnd));
    return file;
  }
}

/** Writes a file that is not there yet. Throws `CannotRun` where it is, or where nothing can be written. */
export function writeNew(file: string, text: string): void {
  try {
    makeFolderOf(file);
    const handle = openSync(file, 'wx');
    try {
      writeFileSync(handle, text);
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    throw new CannotRun(whyNot(file, (error as NodeJS.ErrnoException).code ?? String(error)));
  }
}

function makeFolderOf(file: string): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw Object.assign(new Error(), { code: code === 'EEXIST' ? 'ENOTDIR' : code });
  }
}

/** Why a file could not be made, by the code of the system, as a sentence. */
export function whyNot(file: string, code: string): string {
  const nothing = 'Nothing was written.';
  switch (code) {
    case 'EEXIST':
      return `${file} is there already; it was left as it is.`;
    case 'EACCES':
    case 'EPERM':
      return `${file} cannot be written: you have no permission to write there. ${nothing}`;
    case 'EROFS':
      return `${file} cannot be written: the folder is read-only. ${nothing}`;
    case 'ENOSPC':
      return `${file} cannot be written: the disk is full.`;
    case 'ENOTDIR':
      return `${file} cannot be written: a file stands where a folder of its path should be. ${nothing}`;
    default:
      return `${file} cannot be written: the system answers ${code}. ${nothing}`;
  }
}

/** Whether the author's own files end their lines as Windows does. */
function usesCrlf(dir: string): boolean {
  try {
    const file = join(dir, 'site.yaml');
    return statSync(file).isFile() && readFileSync(file, 'utf8').includes('\r\n');
  } catch {
    return false;
  }
}
