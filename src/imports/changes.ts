/**
 * What becomes of each text that an import makes, and the writing of those it may write.
 *
 * An import writes what is new, and over what it wrote itself while nobody has edited it (see `memory.ts`). It leaves
 * what the author edited, moved or wrote, and brings nothing back that they deleted. What stands there word for word as
 * the import would write it is its own, whoever wrote it.
 */
import { CannotRun } from '../corpus/types.ts';
import {
  remember,
  rememberBefore,
  type Digests,
  type FileRead,
  type ImportMemory,
  type MemoryName,
} from './memory.ts';
import { digestOf, ListText, placeOf, TextsNow } from './texts.ts';
import { demandUtf8, readWhole, writeWhole } from './whole-file.ts';

/** A text that an import makes: a file of its own, or one entry of a list. */
export interface Piece {
  /** Relative to the content folder, with forward slashes. */
  file: string;
  /** The id of an entry of a list; absent for a whole file. */
  entry?: string;
  text: string;
  /** What it holds, such as `person:maurice-phelan`: nothing is made that stands elsewhere already. */
  key?: string;
}

/** What becomes of a text. */
export type Fate =
  | 'new'
  /** It is there, word for word. */
  | 'same'
  /** An import wrote it, nobody has edited it, and it becomes another. */
  | 'changed'
  /** An import wrote it, and it has been edited since: left as it is. */
  | 'edited'
  /** No import wrote what is there: left as it is. */
  | 'taken'
  /** An import wrote it, and it has been taken away since: not brought back. */
  | 'deleted'
  /** What it holds stands in another place: left there. */
  | 'elsewhere'
  /** An import wrote it, and what was read now has it no more: kept. */
  | 'gone';

export interface PlannedChange {
  /** `file` or `file#entry`. */
  place: string;
  fate: Fate;
}

export interface ChangePlan {
  /** In the order of the files, and of the texts in each; what is gone comes last. */
  changes: PlannedChange[];
  /** The files to be written. */
  files: Map<string, { text: string; over: string | undefined }>;
  /** What was known to be written before, what is to be, and what is known once it is. */
  before: Digests;
  writing: Digests;
  written: Digests;
}

export interface ChangeRules {
  /** Whether the content has a key in another file than this. */
  elsewhere?(key: string, file: string): boolean;
  /** The texts are all that imports of this memory ever say: what they wrote before and don’t say now is gone. */
  whole?: boolean;
}

/** Works out what would become of each text. Nothing is written. Throws `CannotRun` where a file can’t be read. */
export function planChanges(
  content: string,
  pieces: readonly Piece[],
  memory: ImportMemory | undefined,
  { elsewhere = () => false, whole = false }: ChangeRules = {},
): ChangePlan {
  const before: Digests = memory?.written ?? new Map();
  const plan: ChangePlan = {
    changes: [],
    files: new Map(),
    before,
    writing: new Map(),
    written: new Map(before),
  };
  const writing = new Map<string, string>();
  const written = new Map(before);
  const placed = new Set<string>();
  for (const [file, own] of byFile(pieces)) {
    const there = readWhole(content, file);
    const list = own[0]!.entry === undefined ? undefined : new ListText(file, there);
    let text = there;
    for (const piece of own) {
      const place = placeOf(piece);
      const current = list && there !== undefined ? list.entry(piece.entry!) : there;
      const known = before.get(place);
      const digest = digestOf(piece.text);
      const fate = fateOf(
        current,
        digest,
        known,
        () => piece.key !== undefined && elsewhere(piece.key, file),
      );
      placed.add(place);
      plan.changes.push({ place, fate });
      if (fate === 'same') written.set(place, digest);
      if (fate !== 'new' && fate !== 'changed') continue;
      written.set(place, digest);
      writing.set(place, digest);
      if (list) list.put(piece.entry!, piece.text);
      else text = piece.text;
    }
    if (!own.some((piece) => writing.has(placeOf(piece)))) continue;
    // Only what could not be decoded can have changed on the way in.
    if (list && there?.includes('\uFFFD')) demandUtf8(content, file);
    plan.files.set(file, {
      text: list ? list.whole() : text!,
      over: there === undefined ? undefined : digestOf(there),
    });
  }
  if (whole) {
    const texts = new TextsNow(content);
    for (const place of before.keys())
      if (!placed.has(place) && texts.at(place) !== undefined) plan.changes.push({ place, fate: 'gone' });
  }
  return { ...plan, writing, written };
}

function fateOf(
  current: string | undefined,
  digest: string,
  known: string | undefined,
  elsewhere: () => boolean,
): Fate {
  if (current === undefined) return elsewhere() ? 'elsewhere' : known === undefined ? 'new' : 'deleted';
  const now = digestOf(current);
  if (now === digest) return 'same';
  if (known === undefined) return 'taken';
  return now === known ? 'changed' : 'edited';
}

function byFile(pieces: readonly Piece[]): Map<string, Piece[]> {
  const files = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const list = files.get(piece.file);
    if (list) list.push(piece);
    else files.set(piece.file, [piece]);
  }
  return files;
}

/** What a place says now, for whoever wants to see what would change; nothing where nothing is there. */
export function textNow(content: string, place: string): string | undefined {
  return new TextsNow(content).at(place);
}

/**
 * Writes the files of a plan, each whole, and remembers them under a name. `of` is the file that was read, where the
 * memory is of one. Gives the files written. Throws `CannotRun` where a file was changed since it was planned over, or
 * can’t be written; the same import then goes on where this one ended.
 */
export function writeChanges(
  content: string,
  name: MemoryName,
  { files, before, writing, written }: ChangePlan,
  of?: FileRead,
): string[] {
  // An import that found everything taken has nothing to remember.
  if (!of && written.size === 0) return [];
  const own = of ? { of } : {};
  if (files.size > 0) rememberBefore(content, name, { ...own, written: before }, writing);
  for (const [file, { text, over }] of files) {
    const there = readWhole(content, file);
    if ((there === undefined ? undefined : digestOf(there)) !== over)
      throw new CannotRun(
        `${file} was changed while the import was at work, and was left as it is. Import again: what is written already stays, and the rest is looked at anew.`,
      );
    writeWhole(content, file, text);
  }
  remember(content, name, { ...own, written });
  return [...files.keys()];
}
