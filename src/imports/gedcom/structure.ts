/** The structures of a GEDCOM file: lines with the lines under them. */
import { linesOf, shown, type Reading } from './lines.ts';
import { BrokenFile, type LineNotes } from './problem.ts';

export interface Structure {
  tag: string;
  line: number;
  /** The payload, line breaks and all; empty where there is none. */
  value: string;
  /** The payload is a pointer, and `value` the identifier without its signs. */
  pointer: boolean;
  xref: string | undefined;
  children: Structure[];
  /** Something was made of it. What nothing was made of is told in the report. */
  used: boolean;
}

/** Deeper levels hold nothing that any standard structure has; GEDCOM 5.5.1 ends at 99. */
const deepest = 99;

/** More structures than any file of a family has. */
const mostStructures = 30_000_000;

const none: Structure[] = [];

/** The records of a file, one after the other, the header and the trailer too. */
export function* recordsOf(pieces: Iterable<string>, reading: Reading): Generator<Structure> {
  const { strict, faults, remarks } = reading;
  const open: Structure[] = [];
  let ended = false;
  let last = 0;
  let count = 0;
  let tooDeep = false;
  for (const line of linesOf(pieces, reading)) {
    last = line.number;
    if (ended) {
      (strict ? faults : remarks).add(
        line.number,
        'Something stands after the trailer (0 TRLR); it was not read.',
      );
      return;
    }
    const { level } = line;
    if (level < 0 || line.tag === 'CONT' || line.tag === 'CONC') {
      goOn(open, line.level, line.tag, line.value, line.number, reading);
      continue;
    }
    if (level > deepest) {
      if (!tooDeep)
        remarks.add(
          line.number,
          `Level ${level} is deeper than anything means; lines beyond level ${deepest} were left out.`,
        );
      tooDeep = true;
      continue;
    }
    tooDeep = false;
    if (level > open.length) {
      (strict ? faults : remarks).add(
        line.number,
        open.length === 0
          ? `Level ${level} stands before any record, so the line was left out: ${shown(`${level} ${line.tag} ${line.value}`)}`
          : `Level ${level} follows level ${open.length - 1}, and a line lies at most one level deeper than the one before, so it was left out: ${shown(`${level} ${line.tag} ${line.value}`)}`,
      );
      continue;
    }
    count += 1;
    if (count > mostStructures)
      throw new BrokenFile(
        line.number,
        `The file has more than ${mostStructures.toLocaleString('en')} lines, more than can be taken in.`,
      );
    const structure: Structure = {
      tag: line.tag,
      line: line.number,
      value: line.value,
      pointer: line.pointer,
      xref: line.xref,
      children: none,
      used: false,
    };
    if (level === 0) {
      if (open[0]) yield trimmed(open[0], remarks);
      open.length = 0;
      if (line.tag === 'TRLR') ended = true;
    } else {
      open.length = level;
      const parent = open[level - 1]!;
      if (parent.children === none) parent.children = [structure];
      else parent.children.push(structure);
    }
    open.push(structure);
  }
  if (open[0] && open[0].tag !== 'TRLR') yield trimmed(open[0], remarks);
  if (!ended)
    (strict ? faults : remarks).add(
      last,
      'The file ends here without its trailer (0 TRLR); it may have been cut off.',
    );
}

/** Longer payloads are no names, dates or titles; words at length may be longer. */
const longest = { words: 200_000, others: 2_000 };
const atLength = new Set(['NOTE', 'SNOTE', 'TEXT', '_KEY', '_ITEM']);

/** A record as it is kept. A list that grew has room to grow on; a million of them have too much. */
function trimmed(structure: Structure, remarks: LineNotes): Structure {
  const most = atLength.has(structure.tag) ? longest.words : longest.others;
  if (structure.value.length > most) {
    remarks.add(
      structure.line,
      `The text of ${structure.tag} has ${structure.value.length.toLocaleString('en')} characters; only the first ${most.toLocaleString('en')} came in.`,
    );
    structure.value = structure.value.slice(0, most).toWellFormed();
  }
  if (structure.children.length > 0) {
    structure.children = structure.children.slice();
    for (const child of structure.children) trimmed(child, remarks);
  }
  return structure;
}

/** CONT and CONC: the payload of the structure above goes on. */
function goOn(
  open: readonly Structure[],
  level: number,
  tag: string,
  value: string,
  line: number,
  { strict, faults, remarks }: Reading,
): void {
  const whole = level < 0 ? open.at(-1) : open[level - 1];
  if (!whole || (level >= 0 && level > open.length)) {
    (strict ? faults : remarks).add(
      line,
      `${tag} goes on from nothing here, so the line was left out: ${shown(value)}`,
    );
    return;
  }
  if (tag === 'CONC' && strict) faults.add(line, 'GEDCOM 7.0 has no CONC; only CONT.');
  if (whole.pointer && value !== '') {
    remarks.add(line, `Text goes on from a pointer here, so the line was left out: ${shown(value)}`);
    return;
  }
  whole.value += tag === 'CONC' ? value : `\n${value}`;
}

/** The structures of a tag right under one, each marked as used. */
export function all(of: Structure, tag: string): Structure[] {
  const found = of.children.filter((child) => child.tag === tag);
  for (const child of found) child.used = true;
  return found;
}

/** The first structure of a tag right under one, marked as used; others of that tag are not. */
export function one(of: Structure, tag: string): Structure | undefined {
  const found = of.children.find((child) => child.tag === tag);
  if (found) found.used = true;
  return found;
}

/** The payload of the first structure of a tag, trimmed; nothing when it is empty or a pointer. */
export function textUnder(of: Structure, tag: string): string | undefined {
  const found = one(of, tag);
  const text = found && !found.pointer ? found.value.trim() : '';
  return text === '' ? undefined : text;
}

/** Lines of a value without the space around them; empty ones are left out. */
export function textLines(value: string): string[] {
  return value
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** Marks a structure and everything under it as used. */
export function useAll(structure: Structure): void {
  structure.used = true;
  for (const child of structure.children) useAll(child);
}
