/**
 * The texts of a content folder that an import may own, each by its place: a whole file (`records/deed.md`), or one
 * entry of a list (`people/tobin.yaml#ellen-tobin`). A list is taken apart at its entries, so that one entry edited is
 * one entry left alone.
 */
import { createHash } from 'node:crypto';
import { CannotRun } from '../corpus/types.ts';
import { readWhole } from './whole-file.ts';

/** The place of a whole file or of an entry of a list. */
export function placeOf({ file, entry }: { file: string; entry?: string }): string {
  return entry === undefined ? file : `${file}#${entry}`;
}

/** What is remembered of a text. Ends of lines and a byte order mark are a program’s, and no edit. */
export function digestOf(text: string): string {
  const plain = text.replace(/^\uFEFF/, '').replaceAll('\r\n', '\n');
  return createHash('sha256').update(plain).digest('base64url').slice(0, 16);
}

/** What a list that an import begins says of itself. */
const ownHead =
  '# Written by an import. An entry that you edit stays as you leave it when a newer file is imported.\n';

/** A list of a content folder, taken apart: what stands before its first entry, then each entry as it is written. */
export class ListText {
  readonly #file: string;
  /** What stands before the first entry. */
  readonly #head: string;
  /** How far its entries stand from the left margin. */
  readonly #margin: string;
  readonly #entries = new Map<string, string>();

  /** `text` is nothing for a list that is not there yet. */
  constructor(file: string, text: string | undefined) {
    this.#file = file;
    const [, margin = ''] = /^\uFEFF?( *)- /m.exec(text ?? '') ?? [];
    const starts = [...(text ?? '').matchAll(/^\uFEFF?( *)- /gm)]
      .filter((start) => start[1] === margin)
      .map(({ index }) => index);
    this.#margin = margin;
    this.#head = text?.slice(0, starts[0] ?? text.length) ?? ownHead;
    starts.forEach((start, i) => {
      const part = text!.slice(start, starts[i + 1] ?? text!.length);
      const id = idIn(part, margin.length) ?? `at ${start}`;
      this.#entries.set(this.#entries.has(id) ? `${id} at ${start}` : id, part);
    });
  }

  /** An entry as it is written, from the margin of the list on; or nothing. */
  entry(id: string): string | undefined {
    const text = this.#entries.get(id);
    if (this.#margin === '' || text === undefined) return text;
    return text
      .split('\n')
      .map((line) => (line.startsWith(this.#margin) ? line.slice(this.#margin.length) : line))
      .join('\n');
  }

  /** Puts an entry, written from the left margin on, in the place of the one of its id, or at the end. */
  put(id: string, text: string): void {
    this.#entries.set(id, this.#margin === '' ? text : text.replace(/^(?=.)/gm, this.#margin));
  }

  /** The whole list. Throws `CannotRun` where it is written in a way that can’t hold entries one below the other. */
  whole(): string {
    const head = this.#head.replace(/^\[ *\][^\S\n]*$/m, '');
    const bare = (line: string) => line.trim() === '' || line.trim() === '---' || line.trim().startsWith('#');
    if (
      !head
        .replace(/^\uFEFF/, '')
        .split('\n')
        .every(bare)
    )
      throw new CannotRun(
        `${this.#file} is no list whose entries begin with “- ” one below the other, so nothing can be added to it surely. Write it so, or import under another name with --name.`,
      );
    return [head, ...this.#entries.values()]
      .map((part) => (part === '' || part.endsWith('\n') ? part : `${part}\n`))
      .join('');
  }
}

/** The id of an entry: the first key, or any at the margin of its keys. */
function idIn(part: string, margin: number): string | undefined {
  const first = /^\uFEFF? *- {1,4}(?:\{ {0,4})?id: {0,4}['"]?([a-z0-9-]+)/.exec(part);
  if (first) return first[1];
  for (const [, before = '', id] of part.matchAll(/^( *)id: {0,4}['"]?([a-z0-9-]+)/gm))
    if (before.length === margin + 2) return id;
  return undefined;
}

/** The texts that stand in a content folder now. Ask for the entries of one list after another: one list is kept. */
export class TextsNow {
  readonly #content: string;
  #last: { file: string; list: ListText | undefined } | undefined;

  constructor(content: string) {
    this.#content = content;
  }

  /** The text in a place, or nothing. */
  at(place: string): string | undefined {
    const at = place.indexOf('#');
    if (at < 0) return readWhole(this.#content, place);
    const file = place.slice(0, at);
    if (this.#last?.file !== file) {
      const text = readWhole(this.#content, file);
      this.#last = { file, list: text === undefined ? undefined : new ListText(file, text) };
    }
    return this.#last.list?.entry(place.slice(at + 1));
  }
}
