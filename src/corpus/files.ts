/** The files of a content folder: which there are, in an order that is the same everywhere, and their text. */
import { isUtf8 } from 'node:buffer';
import { lstatSync, readFileSync, readdirSync, realpathSync, statSync, type Dirent } from 'node:fs';
import { join, sep } from 'node:path';
import type { Finding, Position } from '../model/finding.ts';
import { byCodeUnits, finding } from './finding.ts';
import { SourceText } from './source-text.ts';

/** The largest file of text that is read. */
export const largestText = 5 * 1024 * 1024;

export interface FoundFile {
  name: string;
  /** Relative to the content folder, with forward slashes. */
  file: string;
  isFolder: boolean;
}

/** A content folder on disk. Problems go to `findings` as they are met. */
export class ContentFolder {
  readonly root: string;
  /** Every file whose text is known, for excerpts; of a file that is not UTF-8 with a mark for each bad byte. */
  readonly sources = new Map<string, SourceText>();
  readonly #listings = new Map<string, readonly FoundFile[]>();
  readonly #realRoot: string;
  readonly #findings: Finding[];

  /** `root` is the absolute path of an existing folder. */
  constructor(root: string, findings: Finding[]) {
    this.root = root;
    this.#realRoot = realpathSync(root);
    this.#findings = findings;
  }

  /**
   * What a folder holds, sorted by code units; nothing for a folder that does not exist. Hidden files and those that
   * systems leave behind are passed over, and so are links that lead out of the content folder, with a finding.
   */
  list(folder: string): readonly FoundFile[] {
    let found = this.#listings.get(folder);
    if (!found) this.#listings.set(folder, (found = this.#look(folder)));
    return found;
  }

  /** What one of the folders of the content holds; nothing when it is missing or leads out of the content. */
  listTop(folder: string): readonly FoundFile[] {
    return this.list('').some(({ name, isFolder }) => name === folder && isFolder) ? this.list(folder) : [];
  }

  #look(folder: string): FoundFile[] {
    let entries: Dirent[];
    try {
      entries = readdirSync(join(this.root, folder), { withFileTypes: true });
    } catch (error) {
      if (codeOf(error) !== 'ENOENT') this.#unreadable(folder, 'folder', error);
      return [];
    }
    const found: FoundFile[] = [];
    for (const entry of entries.toSorted((a, b) => byCodeUnits(a.name, b.name))) {
      if (isPassedOver(entry.name)) continue;
      const file = folder === '' ? entry.name : `${folder}/${entry.name}`;
      const kind = entry.isSymbolicLink() ? this.#behindLink(file) : entry.isDirectory() ? 'folder' : 'file';
      if (kind) found.push({ name: entry.name, file, isFolder: kind === 'folder' });
    }
    return found;
  }

  /** The text of a file, or nothing when it cannot be had, with a finding. */
  read(file: string): SourceText | undefined {
    const path = join(this.root, file);
    let bytes: Buffer;
    try {
      const found = statSync(path);
      // A pipe or a device would be waited for without end.
      if (!found.isFile()) {
        this.#findings.push(
          finding(
            'file-can-be-read',
            head(file),
            'This is not an ordinary file.',
            'Put an ordinary text file in its place, or take it out of the content folder.',
          ),
        );
        return undefined;
      }
      const { size } = found;
      if (size > largestText) {
        this.#findings.push(
          finding(
            'file-is-of-reasonable-size',
            head(file),
            `This file has ${(size / 1024 / 1024).toFixed(1)} megabytes; a file of text is read only up to ${largestText / 1024 / 1024}.`,
            'Put scans into media/, and split long lists into several files.',
          ),
        );
        return undefined;
      }
      bytes = readFileSync(path);
    } catch (error) {
      this.#unreadable(file, 'file', error);
      return undefined;
    }
    const source = new SourceText(file, bytes.toString('utf8'));
    this.sources.set(file, source);
    if (isUtf8(bytes)) return source;
    const bad = firstBadByte(bytes);
    const before = new SourceText(file, bytes.subarray(0, bad).toString('utf8'));
    this.#findings.push(
      finding(
        'file-is-utf8',
        before.position(before.text.length),
        `This file is not UTF-8 text: the byte ${bytes[bad]!.toString(16).toUpperCase().padStart(2, '0')} cannot stand here.`,
        'Open the file in a text editor and save it again with the encoding UTF-8.',
      ),
    );
    return undefined;
  }

  /** The bytes of a file whose text has been read, or nothing when it cannot be had any more. */
  bytes(file: string): Buffer | undefined {
    try {
      return readFileSync(join(this.root, file));
    } catch (error) {
      this.#unreadable(file, 'file', error);
      return undefined;
    }
  }

  /**
   * Whether a file or link of this path ends inside a folder of the content; `missing` when there is no such file. A
   * folder that is itself a link counts as outside.
   */
  whereabouts(file: string, folder: string): 'inside' | 'outside' | 'missing' {
    try {
      const real = realpathSync(join(this.root, file));
      const home = join(this.#realRoot, folder);
      return real.startsWith(home + sep) ? (lstatSync(real).isFile() ? 'inside' : 'missing') : 'outside';
    } catch {
      return 'missing';
    }
  }

  #behindLink(file: string): 'file' | 'folder' | undefined {
    try {
      const real = realpathSync(join(this.root, file));
      if (real.startsWith(this.#realRoot + sep)) return statSync(real).isDirectory() ? 'folder' : 'file';
      this.#findings.push(
        finding(
          'file-lies-inside-the-content',
          head(file),
          'This is a link that leads out of the content folder.',
          'Copy the file into the content folder in place of the link.',
        ),
      );
    } catch (error) {
      this.#unreadable(file, 'link', error);
    }
    return undefined;
  }

  #unreadable(file: string, what: 'file' | 'folder' | 'link', error: unknown): void {
    const code = codeOf(error);
    const why =
      code === 'EACCES' || code === 'EPERM'
        ? 'permission is denied'
        : code === 'ENOENT'
          ? 'what it leads to is not there'
          : code === 'ELOOP'
            ? 'it leads to itself'
            : `the system answers ${code}`;
    this.#findings.push(
      finding(
        'file-can-be-read',
        head(file),
        `This ${what} cannot be read: ${why}.`,
        'Mend that, or move it out of the content folder.',
      ),
    );
  }
}

/** The first place of a file, for findings about the file as a whole. */
export function head(file: string): Position {
  return { file, line: 1, column: 1 };
}

/** Hidden files, files that systems leave behind, and notes for whoever opens the folder. */
function isPassedOver(name: string): boolean {
  return name.startsWith('.') || /^(?:readme(?:\.[a-z]+)?|thumbs\.db|desktop\.ini)$/i.test(name);
}

/** The offset of the first byte that UTF-8 (RFC 3629, section 4) does not allow where it stands. */
export function firstBadByte(bytes: Uint8Array): number {
  let at = 0;
  while (at < bytes.length) {
    const length = sequenceLength(bytes, at);
    if (length === 0) return at;
    at += length;
  }
  return at;
}

function sequenceLength(bytes: Uint8Array, at: number): number {
  const lead = bytes[at]!;
  if (lead < 0x80) return 1;
  const length =
    lead >= 0xc2 && lead <= 0xdf
      ? 2
      : lead >= 0xe0 && lead <= 0xef
        ? 3
        : lead >= 0xf0 && lead <= 0xf4
          ? 4
          : 0;
  for (let index = 1; index < length; index++) {
    const byte = bytes[at + index] ?? 0;
    const low = index > 1 ? 0x80 : lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
    const high = index > 1 ? 0xbf : lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
    if (byte < low || byte > high) return 0;
  }
  return length;
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : 'an unknown error';
}
