import type { Position } from '../model/finding.ts';

/**
 * The text of one file, BOM removed and line ends as LF, with a position for every offset.
 *
 * Lines and columns count from 1. A column counts characters (Unicode code points), so that a letter outside the
 * basic plane counts once although it takes two units of a JavaScript string. Removing the BOM and the CR of CRLF
 * moves no line and no column of what an author sees.
 */
export class SourceText {
  readonly file: string;
  readonly text: string;
  #lineStarts: number[] | undefined;

  constructor(file: string, raw: string) {
    this.file = file;
    const withoutBom = raw.charCodeAt(0) === 0xfeff ? raw.slice(1) : raw;
    this.text = withoutBom.includes('\r') ? withoutBom.replace(/\r\n?/g, '\n') : withoutBom;
  }

  /** Where a character stands, by its offset in `text`; beyond the end, where the text ends. */
  position(offset: number): Position {
    const at = Math.max(0, Math.min(offset, this.text.length));
    const starts = (this.#lineStarts ??= lineStarts(this.text));
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= at) low = middle;
      else high = middle - 1;
    }
    return { file: this.file, line: low + 1, column: charactersBetween(this.text, starts[low]!, at) + 1 };
  }

  /** The offset at which the line of an offset begins. */
  lineStart(offset: number): number {
    return this.text.lastIndexOf('\n', offset - 1) + 1;
  }

  /** The line an offset lies in, without its line end. */
  lineAt(offset: number): string {
    const end = this.text.indexOf('\n', offset);
    return this.text.slice(this.lineStart(offset), end < 0 ? undefined : end);
  }
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

function charactersBetween(text: string, from: number, to: number): number {
  let count = to - from;
  for (let at = from; at + 1 < to; at++) {
    const unit = text.charCodeAt(at);
    if (unit >= 0xd800 && unit <= 0xdbff) {
      const next = text.charCodeAt(at + 1);
      if (next >= 0xdc00 && next <= 0xdfff) {
        count--;
        at++;
      }
    }
  }
  return count;
}
