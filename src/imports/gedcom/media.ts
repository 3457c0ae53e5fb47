/** Pictures that a GEDCOM file names: those that lie beside it and can be shown come into `media/`. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { dirname, extname, join, sep } from 'node:path';
import { imageSize } from '../../corpus/image-size.ts';
import type { PersonDraft, RecordDraft } from './drafts.ts';
import { slug } from './ids.ts';
import type { ImportLog } from './log.ts';

import { all, one, textUnder, type Structure } from './structure.ts';
import type { WantedMedia } from './tellings.ts';
import { pointed, type Tree } from './tree.ts';

/** A file to be copied into the content. */
export interface MediaCopy {
  from: string;
  /** Its name in `media/`. */
  name: string;
}

const endings = new Set(['.jpg', '.jpeg', '.png', '.webp', '.gif', '.tif', '.tiff', '.avif']);
const largest = 100 * 1024 * 1024;

export class MediaFolder {
  readonly copies: MediaCopy[] = [];
  readonly #home: string;
  readonly #log: ImportLog;
  readonly #tree: Tree;
  /** Names that `media/` has or is to have, without regard to capitals. */
  readonly #taken: Set<string>;
  readonly #content: string;
  readonly #copied = new Map<string, string | undefined>();

  /** `gedcom` is the path of the file, `content` that of the content folder, `there` the names that `media/` holds. */
  constructor(gedcom: string, content: string, there: readonly string[], tree: Tree, log: ImportLog) {
    this.#home = realpathSync(dirname(gedcom));
    this.#content = content;
    this.#tree = tree;
    this.#log = log;
    this.#taken = new Set(there.map((name) => name.toLowerCase()));
  }

  /** Adds the pictures wanted to their records, but for records of the living. */
  add(wanted: readonly WantedMedia[], withheld: ReadonlySet<PersonDraft>): void {
    const hidden = new Set<RecordDraft>(
      [...withheld].flatMap(({ mentions }) => mentions.map(({ record }) => record)),
    );
    for (const { record, structure } of wanted) {
      const object = structure.pointer ? pointed(this.#tree.media, structure) : structure;
      if (!object) {
        if (structure.value !== 'VOID')
          this.#log.doubts.add(structure.line, `The picture @${structure.value}@ is not in this file.`);
        continue;
      }
      object.used = true;
      const title = textUnder(structure, 'TITL') ?? textUnder(object, 'TITL');
      for (const file of all(object, 'FILE')) this.#file(record, file, title, hidden.has(record));
    }
  }

  /** The pictures of records of an export of ours: those that lie beside the file or are in `media/` already. */
  own(records: readonly RecordDraft[]): void {
    for (const record of records)
      record.media = record.media.flatMap((picture) => {
        if (existsSync(join(this.#content, 'media', picture.file))) return [picture];
        const name = this.#name(`media/${picture.file}`, record.line);
        return name === undefined ? [] : [{ ...picture, file: name }];
      });
  }

  #file(record: RecordDraft, file: Structure, title: string | undefined, hidden: boolean): void {
    const named = file.value.trim();
    const form = one(file, 'FORM');
    if (form) for (const medium of all(form, 'MEDI')) medium.used = true;
    const alt = (textUnder(file, 'TITL') ?? title ?? named.split(/[\\/]/).at(-1) ?? named).replace(
      /\s+/g,
      ' ',
    );
    if (named === '') return;
    if (hidden) {
      this.#log.aside.push({
        line: file.line,
        why: 'belongs to somebody living',
        text: `the picture ${named} (${alt})`,
      });
      return;
    }
    const name = this.#name(named, file.line);
    if (name !== undefined && !record.media.some((one) => one.file === name))
      record.media.push({ file: name, alt });
  }

  /** The name in `media/` of a file that may be copied. */
  #name(named: string, line: number): string | undefined {
    if (this.#copied.has(named)) return this.#copied.get(named);
    const why = { text: '' };
    const path = this.#path(named, why);
    let name: string | undefined;
    if (path === undefined)
      this.#log.doubts.add(line, `The picture ${named.slice(0, 200)} did not come along: ${why.text}.`);
    else name = this.#place(path);
    this.#copied.set(named, name);
    return name;
  }

  #path(named: string, why: { text: string }): string | undefined {
    const refuse = (text: string) => {
      why.text = text;
      return undefined;
    };
    if (/^[a-z][a-z0-9+.-]+:/i.test(named))
      return refuse('it is named by an address, and only files beside the GEDCOM file are taken');
    let relative = named.replaceAll('\\', '/');
    try {
      relative = decodeURIComponent(relative);
    } catch {
      // A file name with a bare percent sign is meant as it stands.
    }
    if (relative.startsWith('/') || relative.split('/').includes('..') || relative.includes('\0'))
      return refuse('its path leads out of the folder of the GEDCOM file');
    const path = join(this.#home, relative);
    if (!existsSync(path)) return refuse('there is no such file beside the GEDCOM file');
    if (!realpathSync(path).startsWith(this.#home + sep))
      return refuse('its path leads out of the folder of the GEDCOM file');
    const found = statSync(path);
    if (!found.isFile() || found.size > largest) return refuse('it is no ordinary file of reasonable size');
    if (!endings.has(extname(path).toLowerCase()) || !imageSize(path))
      return refuse('it is no picture that can be shown');
    return path;
  }

  #place(path: string): string {
    const ending = extname(path).toLowerCase();
    const base = slug(path.slice(path.lastIndexOf(sep) + 1, -ending.length)) || 'picture';
    for (let n = 1; ; n++) {
      const name = `${base}${n === 1 ? '' : `-${n}`}${ending}`;
      if (!this.#taken.has(name)) {
        this.#taken.add(name);
        this.copies.push({ from: path, name });
        return name;
      }
      const copied = this.copies.find((copy) => copy.name === name)?.from;
      const there = copied ?? join(this.#content, 'media', name);
      if (existsSync(there) && digest(there) === digest(path)) return name;
    }
  }
}

function digest(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}
