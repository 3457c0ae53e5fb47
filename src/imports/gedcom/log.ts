/** What happened to a file on its way in: nothing is dropped in silence. */
import { LineNotes } from './problem.ts';
import { textLines, type Structure } from './structure.ts';

/** A piece of the file that did not come in. */
export interface LeftPiece {
  line: number;
  /** Where it stands: `INDI.BAPL`. */
  path: string;
  /** Its payload, on one line. */
  text: string;
  /** Lines under it, which were left with it. */
  under: number;
}

/** So many pieces are told one by one; of the rest, how many there were by path. */
const mostPieces = 200_000;

export class ImportLog {
  /** What came in, but not as it stood. */
  readonly changed = new LineNotes();
  /** What contradicts itself, points nowhere, or needs the author’s eye. */
  readonly doubts = new LineNotes();
  /** Words kept out of the content because someone living is in them; told in full in the report. */
  readonly aside: { line: number; why: string; text: string }[] = [];
  readonly left: LeftPiece[] = [];
  /** How many pieces were left, by path. */
  readonly leftByPath = new Map<string, number>();

  leave(structure: Structure, path: string): void {
    this.leftByPath.set(path, (this.leftByPath.get(path) ?? 0) + 1);
    if (this.left.length >= mostPieces) return;
    const shown = structure.pointer ? `@${structure.value}@` : textLines(structure.value).join(' ⏎ ');
    this.left.push({ line: structure.line, path, text: shown, under: linesUnder(structure) });
  }
}

function linesUnder({ children }: Structure): number {
  return children.reduce((sum, child) => sum + 1 + linesUnder(child), 0);
}

/** What a person is known again by, which is asked for after everything else has come in. */
const asked = new Set(['UID', '_UID', 'REFN']);

/**
 * Lets go of every structure under a record that has come in whole: of a great file they are most of the memory.
 * Gives whether the record itself has.
 */
export function dropUsed(record: Structure): boolean {
  if (record.children.length > 0)
    record.children = record.children.filter((child) => asked.has(child.tag) || !dropUsed(child));
  return record.used && record.children.length === 0;
}

/** Tells the log of every structure under a record that nothing was made of. */
export function leaveUnused(record: Structure, log: ImportLog, path = record.tag): void {
  if (!record.used) {
    log.leave(record, path);
    return;
  }
  for (const child of record.children) leaveUnused(child, log, `${path}.${child.tag}`);
}
