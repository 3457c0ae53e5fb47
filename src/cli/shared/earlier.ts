/**
 * What is there already, and whether it is an earlier export of ours.
 *
 * Rule: a file is only written over where it begins as an export of its kind begins, or is empty. Whatever else lies there
 * is somebody’s, and stays; `--force` says otherwise.
 */
import { closeSync, existsSync, openSync, readSync, statSync } from 'node:fs';
import { Option } from 'commander';
import { CannotRun } from '../../corpus/types.ts';

/** Tells by the beginning of a file, without its byte order mark, whether it is an export of one kind. */
export type Mark = (beginning: string) => boolean;

/** `--force`. */
export function forceOption(): Option {
  return new Option(
    '--force',
    'write over a file that is there, though it is no earlier export of this kind',
  ).default(false);
}

/** Throws `CannotRun` where something stands at a path that may not be written over. */
export function demandEarlier(path: string, isOurs: Mark, force: boolean): void {
  if (!existsSync(path)) return;
  const found = statSync(path);
  if (found.isDirectory()) throw new CannotRun(`${path} is a folder; name the file itself with --out.`);
  if (!found.isFile())
    throw new CannotRun(`${path} is no ordinary file; name another with --out, or leave --out out.`);
  if (force || found.size === 0 || isOurs(beginningOf(path))) return;
  throw new CannotRun(
    `${path} is there already and is no earlier export of this kind; it was left as it is. Name another file with --out, or write over it with --force.`,
  );
}

/** Enough to hold all that a family file of ours says before it says by whom it was made. */
const enough = 64 * 1024;

function beginningOf(path: string): string {
  const bytes = Buffer.alloc(enough);
  let file: number;
  try {
    file = openSync(path, 'r');
  } catch (error) {
    throw new CannotRun(
      `${path} is there already and can’t be read (${(error as NodeJS.ErrnoException).code}); it was left as it is. Name another file with --out.`,
    );
  }
  try {
    return bytes.toString('utf8', 0, readSync(file, bytes, 0, enough, 0)).replace(/^\uFEFF/, '');
  } finally {
    closeSync(file);
  }
}

/** A family file that says it is by us, in its head (GEDCOM 7.0, HEAD.SOUR). */
export const isOurGedcom: Mark = (beginning) =>
  /^0 HEAD\r?\n(?:[1-9][^\n]*\n)*?1 SOUR WHENCE\r?\n/.test(beginning);

/** A table with just the headings of a new one. */
export function hasHeadingsOf(table: string): Mark {
  const headings = (text: string) => /^[^\r\n]*/.exec(text.replace(/^\uFEFF/, ''))![0];
  return (beginning) => headings(beginning) === headings(table);
}

/** The check as JSON. */
export const isOurCheck: Mark = (beginning) =>
  /^\{\s*"version": \d+,\s*"ok": (?:true|false),\s*"counts": \{\s*"cases": \d+,\s*"records": \d+,/.test(
    beginning,
  );

/** Linked data: our context, word for word. */
export function beginsLike(document: string): Mark {
  const context = document.slice(0, document.indexOf('}') + 1);
  return (beginning) => beginning.startsWith(context);
}

/** What stands before the citations of a library of ours. */
export const bibtexMark = '% Citations of records, written by Whence\n\n';
export const isOurBibtex: Mark = (beginning) => beginning.startsWith(bibtexMark.trimEnd());

/** The first item of CSL-JSON says it, under the key that the standard (CSL 1.0.2) leaves to programs. */
export const isOurCslJson: Mark = (beginning) =>
  beginning.trim() === '[]' || /^\[\s*\{\s*"custom": \{\s*"madeBy": "whence"\s*\},/.test(beginning);

/** A proof page that we had printed: a PDF says by whom it was made (PDF 1.7, 14.3.3). */
export const isOurPdf: Mark = (beginning) => /^%PDF-[^]{0,20000}?\/Creator \(Whence\)/.test(beginning);

/** Pairs of a comparison, in the form they are written in. A report as text bears no mark. */
export const isOurComparison: Readonly<Record<'text' | 'csv' | 'json' | 'html', Mark>> = {
  text: () => false,
  csv: (beginning) => beginning.startsWith('a,b,weight,probability,line a,line b,'),
  json: (beginning) =>
    beginning.trim() === '[]' || /^\[\n\{"a":"[^\n]*,"weight":[^\n]*,"ledger":\[/.test(beginning),
  html: (beginning) => beginning.slice(0, 1000).includes('<meta name="generator" content="Whence">'),
};
