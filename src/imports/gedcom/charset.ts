/**
 * A GEDCOM file as text, piece by piece, whatever its character set.
 *
 * Rule (GEDCOM 5.5.1, chapter 3, and 7.0): the first bytes tell UTF-16 and UTF-8 with a byte order mark; otherwise
 * `HEAD.CHAR` decides, which is written in letters that every set shares. GEDCOM 7.0 is UTF-8. A file that says nothing,
 * or says UTF-8 and is not, is read as Windows-1252, with a note.
 */
import { closeSync, openSync, readSync } from 'node:fs';
import { firstBadByte } from '../../corpus/files.ts';
import { AnselDecoder } from './ansel.ts';
import { BrokenFile } from './problem.ts';

export type Charset = 'UTF-8' | 'UTF-16LE' | 'UTF-16BE' | 'ANSEL' | 'Windows-1252' | 'macintosh';

/** What the head of a file says of it. */
export interface FileHead {
  charset: Charset;
  /** Of `HEAD.GEDC.VERS`, such as `7.0` or `5.5.1`; empty where it says none. */
  version: string;
  /** What `HEAD.CHAR` says. */
  stated: string;
  /** Why another character set was taken than the one the file names. */
  note?: string;
}

/** The version and the character set that the first lines name; `''` for what they don’t. */
function saidInHead(text: string): { version: string; stated: string } {
  let version = '';
  let stated = '';
  let within = '';
  for (const line of text.split(/[\r\n]/)) {
    const [level = '', tag = '', ...value] = line.trim().split(/\s+/);
    if (level === '0' && tag !== 'HEAD') break;
    if (level === '1') within = tag;
    if (level === '1' && tag === 'CHAR' && stated === '') stated = value.join(' ');
    if (level === '2' && tag === 'VERS' && within === 'GEDC' && version === '') version = value[0] ?? '';
  }
  return { version, stated };
}

const pieceSize = 1 << 20;
const headSize = 1 << 16;

/** Looks at the head of a file. Throws `BrokenFile` for what is no GEDCOM file at all, else what the system throws. */
export function readHead(path: string): FileHead {
  const bytes = firstBytes(path);
  const marked = fromFirstBytes(bytes);
  const text = new TextDecoder((marked ?? 'latin1').toLowerCase()).decode(bytes).replace(/^ï»¿|^\ufeff/, '');
  demandGedcom(bytes, text);
  const { version, stated } = saidInHead(text);
  if (marked) return { charset: marked, version, stated };
  const word = stated.toUpperCase().replace(/[^A-Z0-9]/g, '');
  if (word === 'ANSEL') return { charset: 'ANSEL', version, stated };
  if (/^(?:MACINTOSH|MACROMAN|MAC)$/.test(word)) return { charset: 'macintosh', version, stated };
  if (/^(?:ANSI|WINDOWS|CP1252|WINDOWS1252|LATIN1|ISO88591)$/.test(word))
    return { charset: 'Windows-1252', version, stated };
  const bad = firstBad(path);
  if (bad === undefined) return { charset: 'UTF-8', version, stated };
  if (version.startsWith('7'))
    throw new BrokenFile(
      bad.line,
      `This file is not UTF-8 text, as GEDCOM 7.0 demands: the byte ${bad.byte} cannot stand here. Save it again as UTF-8, or write it anew from the program it comes from.`,
    );
  return {
    charset: 'Windows-1252',
    version,
    stated,
    note: `It names ${stated === '' ? 'no character set' : `the character set ${stated.slice(0, 40)}`} and is not UTF-8 from line ${bad.line} on, so it was read as Windows-1252. Look at names with accents.`,
  };
}

/** The text of a file in pieces. */
export function* textOf(path: string, charset: Charset): Generator<string> {
  if (charset === 'ANSEL') {
    const decoder = new AnselDecoder();
    for (const bytes of pieces(path)) yield decoder.decode(bytes);
    yield decoder.end();
    return;
  }
  const decoder = new TextDecoder(charset.toLowerCase());
  for (const bytes of pieces(path)) yield decoder.decode(bytes, { stream: true });
  yield decoder.decode();
}

function* pieces(path: string): Generator<Buffer> {
  const file = openSync(path, 'r');
  try {
    const piece = Buffer.allocUnsafe(pieceSize);
    for (let read = readSync(file, piece); read > 0; read = readSync(file, piece))
      yield piece.subarray(0, read);
  } finally {
    closeSync(file);
  }
}

function firstBytes(path: string): Buffer {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(headSize);
    let length = 0;
    for (let read = 1; read > 0 && length < headSize; length += read)
      read = readSync(file, bytes, length, headSize - length, length);
    return bytes.subarray(0, length);
  } finally {
    closeSync(file);
  }
}

function fromFirstBytes(bytes: Buffer): Charset | undefined {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return undefined;
  const pair = bytes.length > 1 ? bytes.readUInt16BE(0) : 0;
  if (pair === 0xfffe || pair === 0x3000) return 'UTF-16LE';
  if (pair === 0xfeff || pair === 0x0030) return 'UTF-16BE';
  return undefined;
}

/** A sentence for the commonest mistakes: another kind of file under the name of this one. */
function demandGedcom(bytes: Buffer, text: string): void {
  if (bytes.length === 0) throw new BrokenFile(1, 'This file is empty.');
  if (/^\s*0[ \t]+HEAD(?=\s|$)/.test(text)) return;
  if (bytes[0] === 0x50 && bytes[1] === 0x4b)
    throw new BrokenFile(
      1,
      'This is a zip, not GEDCOM text. Unpack it, and name the file in it that ends in .ged.',
    );
  const first = /^\s*([^\r\n]*)/.exec(text)?.[1] ?? '';

  const shown = /[\u0000-\u0008\u000e-\u001f\ufffd]/.test(first)
    ? 'bytes that are no text'
    : `“${first.slice(0, 40)}”`;
  throw new BrokenFile(
    1,
    `This is not a GEDCOM file: one begins with the line 0 HEAD, and this begins with ${first === '' ? 'nothing of the kind' : shown}.`,
  );
}

/** Where a file stops being UTF-8: the line and the byte. */
function firstBad(path: string): { line: number; byte: string } | undefined {
  let line = 1;
  let kept: Buffer = Buffer.alloc(0);
  for (const piece of pieces(path)) {
    const bytes = kept.length === 0 ? piece : Buffer.concat([kept, piece]);
    const bad = firstBadByte(bytes);
    // A sign cut in two by the end of the piece is seen whole with the next.
    if (bad < bytes.length - 4) return { line: line + lineEnds(bytes, bad), byte: hex(bytes[bad]!) };
    const whole = Math.min(bad, bytes.length);
    line += lineEnds(bytes, whole);
    kept = Buffer.from(bytes.subarray(whole));
  }
  const bad = firstBadByte(kept);
  return bad < kept.length ? { line: line + lineEnds(kept, bad), byte: hex(kept[bad]!) } : undefined;
}

function lineEnds(bytes: Buffer, end: number): number {
  let ends = 0;
  for (let at = 0; at < end; at++)
    if (bytes[at] === 0x0a || (bytes[at] === 0x0d && bytes[at + 1] !== 0x0a)) ends += 1;
  return ends;
}

function hex(byte: number): string {
  return byte.toString(16).toUpperCase().padStart(2, '0');
}
