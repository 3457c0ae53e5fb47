/** A spreadsheet saved as text, with the place of every cell. */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { TableReader, type TableProblem, type TableRow } from '../../corpus/table.ts';
import { CannotRun } from '../../corpus/types.ts';
import { readAsUtf8, type Encoding } from '../encoding.ts';

export interface MentionTable {
  /** As it is named in messages. */
  name: string;
  encoding: Encoding;
  headings: string[];
  rows: TableRow[];
  /** What is wrong with the table itself. */
  problems: TableProblem[];
  /** Where a cell begins: its line and, counted in characters from 1, its column. */
  locate(row: TableRow, index: number): { line: number; column: number };
}

/** Beyond these a table is cut into parts by hand. */
const largest = { bytes: 64 * 1024 * 1024, rows: 200_000, columns: 400, cell: 4000 };

/** Reads a table. Throws `CannotRun` with a sentence where it is no table, or too large. */
export function readMentionTable(path: string, name: string): MentionTable {
  demandTable(path, name);
  const rows: TableRow[] = [];
  const pieces: Buffer[] = [];
  const reader = new TableReader(({ line, cells }) => {
    if (rows.length >= largest.rows)
      throw new CannotRun(
        `${name} has more than ${largest.rows.toLocaleString('en')} rows. Cut it into parts, such as one file for each year, and bring them in one by one.`,
      );
    rows.push({ line, cells: cells.map(clean) });
  });
  const encoding = readAsUtf8(path, (bytes) => {
    const piece = pieces.length === 0 ? withoutSign(Buffer.from(bytes)) : Buffer.from(bytes);
    pieces.push(piece);
    reader.push(piece);
  });
  const { header, problems } = reader.end();
  if (header.length === 0)
    throw new CannotRun(`${name} is empty. Save the table again, with its headings in the first line.`);
  if (header.length > largest.columns)
    throw new CannotRun(
      `${name} has ${header.length} columns; more than ${largest.columns} are no list of people. Save only the columns that say something.`,
    );
  if (rows.length === 0) throw new CannotRun(`${name} has a line of headings but no rows below it.`);
  const delimiter = reader.delimiter ?? ',';
  let lines: string[] | undefined;
  return {
    name,
    encoding,
    headings: header.map(clean),
    rows,
    problems,
    locate: ({ line }, index) => {
      lines ??= Buffer.concat(pieces)
        .toString('utf8')
        .replace(/^\uFEFF/, '')
        .split(/\r\n|\n|\r/);
      return cellStart(lines, line, index, delimiter);
    },
  };
}

/** A first line `sep=;` is a sign of one spreadsheet program to itself; its line stays, so that lines are counted right. */
function withoutSign(bytes: Buffer): Buffer {
  const sign = /^(?:\xef\xbb\xbf)?"?sep=.?"?(?=\r?\n)/i.exec(bytes.subarray(0, 16).toString('latin1'))?.[0];
  return sign === undefined ? bytes : bytes.subarray(sign.length);
}

/** A cell in one line, without what no text holds. */
function clean(cell: string): string {
  const text = cell.length > largest.cell ? `${cell.slice(0, largest.cell)}…` : cell;
  return text
    .toWellFormed()
    .replace(/[\p{Cc}\uFFFE\uFFFF\s]+/gu, ' ')
    .trim()
    .replace(/^'(?=[=+\-@＝＋－＠])/, '');
}

function cellStart(
  lines: readonly string[],
  line: number,
  index: number,
  delimiter: string,
): { line: number; column: number } {
  let at = line - 1;
  let column = 0;
  for (let cell = 0; cell < index && at < lines.length; cell++) {
    let text = lines[at]!;
    if (/^\s*"/.test(text.slice(column))) {
      column = text.indexOf('"', column) + 1;
      for (;;) {
        const quote = text.indexOf('"', column);
        if (quote < 0) {
          if (at + 1 >= lines.length) return { line, column: 1 };
          text = lines[++at]!;
          column = 0;
        } else if (text[quote + 1] === '"') column = quote + 2;
        else {
          column = quote + 1;
          break;
        }
      }
    }
    const next = text.indexOf(delimiter, column);
    if (next < 0) break;
    column = next + delimiter.length;
  }
  return { line: at + 1, column: column + 1 };
}

/** Files of other programs begin with bytes of their own (their published formats). */
function demandTable(path: string, name: string): void {
  let size: number;
  const head = Buffer.alloc(8);
  try {
    const found = statSync(path);
    if (found.isDirectory()) throw new CannotRun(`${name} is a folder; name the table itself.`);
    if (!found.isFile()) throw new CannotRun(`${name} is not an ordinary file.`);
    size = found.size;
    const file = openSync(path, 'r');
    try {
      readSync(file, head, 0, head.length, 0);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'ENOTDIR') throw new CannotRun(`There is no file ${path}.`);
    if (code === 'EACCES' || code === 'EPERM') throw new CannotRun(`${name} may not be read: ${path}.`);
    throw error;
  }
  const starts = (bytes: string) => head.toString('latin1').startsWith(bytes);
  const saveAs =
    'Open it in the program it was made with, choose “Save as”, and save each sheet as CSV (UTF-8); then bring in that file.';
  if (starts('PK\x03\x04') || starts('\xD0\xCF\x11\xE0'))
    throw new CannotRun(`${name} is a workbook of a spreadsheet program, not a table of text. ${saveAs}`);
  if (starts('%PDF') || starts('{\\rtf'))
    throw new CannotRun(`${name} is a document for reading or printing, not a table of text. ${saveAs}`);
  if (size > largest.bytes)
    throw new CannotRun(
      `${name} has ${Math.ceil(size / 1024 / 1024)} megabytes; a table is read only up to ${largest.bytes / 1024 / 1024}. Cut it into parts and bring them in one by one.`,
    );
}
