/**
 * Lines of GEDCOM: `Level D [Xref D] Tag [D LineVal] EOL` (GEDCOM 7.0, chapter 1). 7.0 is read strictly, 5.5.1
 * leniently: white space before the level, more than one space, small letters in tags, doubled `@` anywhere.
 */
import { BrokenFile, type LineNotes } from './problem.ts';

export interface Line {
  number: number;
  level: number;
  xref: string | undefined;
  tag: string;
  value: string;
  /** Whether `value` is a pointer, which then stands without its signs `@`. */
  pointer: boolean;
}

export interface Reading {
  /** By the letter of 7.0; a line that breaks the grammar is then among `faults`. */
  strict: boolean;
  /** What breaks the grammar. */
  faults: LineNotes;
  /** What was read all the same. */
  remarks: LineNotes;
}

/** A longer line is no line; nothing people write comes near. */
const longestLine = 1 << 22;

// prettier-ignore
const strictLine = /^(0|[1-9]\d*) (?:@([A-Z0-9_]+)@ )?([A-Z][A-Z0-9_]*|_[A-Z0-9_]+)(?: (.*))?$/s;
const lenientLine = /^\s*(\d{1,9})[ \t]+(?:@([^@\r\n#][^@\r\n]*)@[ \t]*)?([A-Za-z0-9_]+)(?:[ \t](.*))?$/s;
const pointerValue = /^@([^@#\s](?:[^@]*[^@\s])?)@\s*$/;

const banned = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]/;

const allBanned = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]/g;

/**
 * The lines of a text that comes in pieces. In a lenient reading a text that is no line goes on from the line before,
 * and is given as one of tag `CONT` at level -1. Throws `BrokenFile` for a line without end.
 */
export function* linesOf(pieces: Iterable<string>, reading: Reading): Generator<Line> {
  let number = 0;
  for (const text of rawLines(pieces, reading)) {
    number += 1;
    const line = readLine(text, number, reading);
    if (line) yield line;
  }
}

function readLine(raw: string, number: number, { strict, faults, remarks }: Reading): Line | undefined {
  let text = raw;
  if (banned.test(text)) {
    if (strict) faults.add(number, 'A control character stands here, which GEDCOM 7.0 bans.');
    else remarks.add(number, 'Control characters were taken out.');
    text = text.replace(allBanned, '');
  }
  const parts = (strict ? strictLine : lenientLine).exec(text);
  if (!parts) {
    if (strict) {
      faults.add(number, whyNoLine(text));
      const lenient = lenientLine.exec(text);
      return lenient ? lineOf(lenient, number, false) : undefined;
    }
    if (text.trim() === '') return undefined;
    remarks.add(
      number,
      `This is not a line of GEDCOM; it was taken as going on from the line before: ${shown(text)}`,
    );
    return { number, level: -1, xref: undefined, tag: 'CONT', value: text, pointer: false };
  }
  return lineOf(parts, number, strict);
}

function lineOf(parts: RegExpExecArray, number: number, strict: boolean): Line {
  const value = parts[4] ?? '';
  const pointer = value.charCodeAt(0) === 64 ? pointerValue.exec(value)?.[1] : undefined;
  return {
    number,
    level: Number(parts[1]),
    xref: parts[2],
    tag: strict ? parts[3]! : parts[3]!.toUpperCase(),
    value: pointer ?? unescaped(value, strict),
    pointer: pointer !== undefined,
  };
}

/** 7.0 doubles `@` at the head of a value only; 5.5.1 everywhere, where programs keep to it. */
function unescaped(value: string, strict: boolean): string {
  if (!value.includes('@@')) return value;
  if (!strict) return value.replaceAll('@@', '@');
  return value.startsWith('@@') ? value.slice(1) : value;
}

function whyNoLine(text: string): string {
  if (text.trim() === '') return 'An empty line stands here, which GEDCOM 7.0 has none of.';
  if (/^\s/.test(text)) return `White space stands before the level: ${shown(text)}`;
  if (/^0\d/.test(text)) return `The level is written with a zero before it: ${shown(text)}`;
  if (!/^\d/.test(text)) return `This does not begin with a level: ${shown(text)}`;
  if (/^\d+(?: @[^@]*@)? [A-Z_]*[a-z]/.test(text)) return `A tag is written in capitals: ${shown(text)}`;
  if (/^\d+ @/.test(text)) return `An identifier is @, capitals, digits and _, @: ${shown(text)}`;
  return `This is not a line of GEDCOM, which is level, tag and value with one space between: ${shown(text)}`;
}

/** A line in quotation marks, cut where it is long. */
export function shown(text: string): string {
  const plain = text.replace(/\s+/g, ' ').trim();
  return `“${plain.length > 60 ? `${plain.slice(0, 60)}…` : plain}”`;
}

/** The text between line ends, which are CR, LF or CR LF. */
function* rawLines(pieces: Iterable<string>, { strict, remarks }: Reading): Generator<string> {
  let rest = '';
  let number = 0;
  let kind = '';
  let first = true;
  const ended = (by: string) => {
    number += 1;
    if (kind === '') kind = by;
    else if (kind !== by && kind !== 'mixed') {
      remarks.add(number, 'Line ends change here; GEDCOM has one kind throughout. It was read all the same.');
      kind = 'mixed';
    }
  };
  for (const piece of pieces) {
    let text = rest + piece;
    if (first && text !== '') {
      first = false;
      if (text.charCodeAt(0) === 0xfeff) text = text.slice(1);
    }
    let at = 0;
    let cr = text.indexOf('\r');
    for (let lf = text.indexOf('\n'); lf >= 0 || cr >= 0;) {
      // A CR at the very end may have its LF in the next piece.
      if (cr >= 0 && (lf < 0 || cr < lf)) {
        if (cr === text.length - 1) break;
        const both = cr + 1 === lf;
        yield text.slice(at, cr);
        ended(both ? 'CRLF' : 'CR');
        at = both ? lf + 1 : cr + 1;
        cr = text.indexOf('\r', at);
        if (both) lf = text.indexOf('\n', at);
        continue;
      }
      yield text.slice(at, lf);
      ended('LF');
      at = lf + 1;
      lf = text.indexOf('\n', at);
    }
    rest = text.slice(at);
    if (rest.length > longestLine)
      throw new BrokenFile(
        number + 1,
        `This line is longer than ${longestLine.toLocaleString('en')} characters and does not end. The file is damaged, or is not GEDCOM.`,
      );
  }
  if (rest.endsWith('\r')) rest = rest.slice(0, -1);
  if (rest !== '' || (strict && number === 0)) yield rest;
}
