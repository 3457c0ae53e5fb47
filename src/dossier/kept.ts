/**
 * What was made in one build and kept for the next: formatted citations, rendered bodies. It saves time and changes
 * nothing: a thing is found again by the text it was made from and by everything that makes it, and a file that is not
 * whole counts as none.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Formatted } from '../citations/processor.ts';
import type { Rendered } from '../markdown/types.ts';
import { keepFile } from './kept-file.ts';

/** Things kept, each by the text it was made from. Their values are JSON, and nobody changes them. */
export interface Kept<V> {
  get(text: string): V | undefined;
  set(text: string, value: V): void;
  /** Writes down what is new, for the next build. Where nothing can be written, the next build makes it anew. */
  keep(): void;
}

/** What a dossier is made with. */
export interface KeptParts {
  citations: Kept<Formatted>;
  bodies: Kept<Rendered>;
}

/** Letters in a file, so that it neither fills the disk nor takes long to read: some twenty thousand bodies. */
const most = 40_000_000;

/**
 * What a file keeps. `maker` names what makes it: things of another maker are not taken; without one nothing is kept.
 * Of more than `limit` letters those asked for last stay.
 */
export function keptIn<V>(file: string, maker: string | undefined, limit = most): Kept<V> {
  const rows: Map<string, V> = maker === undefined ? new Map() : read(file, maker);
  const asked = new Map<string, V>();
  let isNew = false;
  return {
    get(text) {
      const key = digest(text);
      const value = asked.get(key) ?? rows.get(key);
      if (value !== undefined) asked.set(key, value);
      return value;
    },
    set(text, value) {
      isNew = true;
      asked.set(digest(text), value);
    },
    keep() {
      if (!isNew || maker === undefined) return;
      isNew = false;
      const lines: string[] = [];
      let letters = 0;
      for (const row of [...asked, ...[...rows].filter(([key]) => !asked.has(key))]) {
        const line = JSON.stringify(row);
        letters += line.length;
        if (letters > limit) break;
        lines.push(line);
      }
      const text = `${maker}\n[${lines.join(',\n')}]`;
      keepFile(file, `${digest(text)}\n${text}`);
    },
  };
}

let own: KeptParts | undefined;

/** What this project keeps, read once in a process. */
export function ownKept(): KeptParts {
  return (own ??= {
    citations: keptIn(
      inProject('node_modules/.whence/cache/citations'),
      maker('citations', 'model', 'interface', 'interface/en'),
    ),
    bodies: keptIn(
      inProject('node_modules/.whence/cache/bodies'),
      maker('markdown', 'model', 'interface', 'interface/en', 'interface/nb'),
    ),
  });
}

/**
 * Names what makes something by all it says: the programs of some rooms, the packages of the project, and Node.
 * `undefined` where that can't be read.
 */
export function maker(...rooms: string[]): string | undefined {
  try {
    const hash = createHash('sha256').update(process.version);
    hash.update(readFileSync(inProject('package-lock.json')));
    for (const room of rooms)
      for (const name of filesIn(inProject(`src/${room}`)))
        hash.update(`\0${name}\0`).update(readFileSync(inProject(`src/${room}/${name}`)));
    return hash.digest('base64url');
  } catch {
    return undefined;
  }
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => entry.name)
    .sort();
}

function inProject(path: string): string {
  return join(fileURLToPath(new URL('../../', import.meta.url)), path);
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('base64url');
}

/** The first line is the digest of all that follows; the second is the maker. */
function read<V>(file: string, maker: string): Map<string, V> {
  try {
    const text = readFileSync(file, 'utf8');
    const first = text.indexOf('\n') + 1;
    const second = text.indexOf('\n', first) + 1;
    if (text.slice(first, second - 1) !== maker) return new Map();
    if (text.slice(0, first - 1) !== digest(text.slice(first))) return new Map();
    return new Map(JSON.parse(text.slice(second)) as [string, V][]);
  } catch {
    return new Map();
  }
}
