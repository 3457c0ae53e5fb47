/**
 * Tables of delimited text: comma, semicolon, tab or bar; quoted or not; with whatever line endings.
 *
 * The parsing is csv-parse's. What is added: which delimiter it is, the line each row begins on, and going on after a
 * broken quotation mark, which would otherwise swallow the rest of the file as one cell.
 */
import { parse, type InfoField, type InfoRecord, type Options } from 'csv-parse/sync';

export interface TableRow {
  /** The line the row begins on, from 1. */
  line: number;
  /** As many as the header has. */
  cells: string[];
}

export interface TableProblem {
  line: number;
  column: number;
  message: string;
  help: string;
}

export interface Table {
  /** The cells of the first line that is not empty. */
  header: string[];
  rows: TableRow[];
  problems: TableProblem[];
}

/** After so many broken quotation marks, the rest of a file is read as if it had none. */
const mostBrokenQuotes = 20;
/** A quoted cell that runs on for so many bytes was never closed. */
const longestRecord = 1 << 20;
/** How many problems of one sort are told one by one. */
const mostTold = 20;

/**
 * Reads a whole table. Never throws: a table that is wrong in places is read as far as it can be, and `problems` says,
 * in the order of the lines, what was wrong. Empty lines are no rows. Rows are brought to the width of the header.
 */
export function readTable(text: string): Table {
  const rows: TableRow[] = [];
  const reader = new TableReader((row) => rows.push(row));
  reader.push(Buffer.from(text, 'utf8'));
  const { header, problems } = reader.end();
  return { header, rows, problems };
}

/** Reads a table piece by piece, in memory that does not grow with it. */
export class TableReader {
  readonly #onRow: (row: TableRow, header: readonly string[]) => void;
  readonly #told = new Map<string, number>();
  #problems: TableProblem[] = [];
  #header: string[] | undefined;
  #delimiter: string | undefined;
  #pending: Buffer[] = [];
  #pendingBytes = 0;
  /** Lines that lie before what is pending. */
  #lines = 0;
  #brokenQuotes = 0;
  #quotes = true;

  /** `onRow` is given each row as it is read; the header comes before the first. */
  constructor(onRow: (row: TableRow, header: readonly string[]) => void) {
    this.#onRow = onRow;
  }

  /** What the cells are parted by, once the first bytes are read. */
  get delimiter(): string | undefined {
    return this.#delimiter;
  }

  /** The next bytes of the text, in UTF-8; a character may lie across two pieces. */
  push(bytes: Buffer): void {
    this.#pending.push(bytes);
    this.#pendingBytes += bytes.length;
    if (this.#pendingBytes >= 2 * longestRecord) this.#read(false);
  }

  /** To be called once, after the last piece. */
  end(): { header: string[]; problems: TableProblem[] } {
    this.#read(true);
    if (!this.#header)
      this.#problem(
        'empty',
        1,
        'There is nothing in this file.',
        'Save the table again, with its headings in the first line.',
      );
    for (const [sort, count] of this.#told)
      if (count > mostTold)
        this.#problems.push({
          ...this.#problems.findLast((one) => sorts.get(one) === sort)!,
          message: `The same is so of ${count - mostTold} more.`,
        });
    return {
      header: this.#header ?? [],
      problems: this.#problems.toSorted((a, b) => a.line - b.line),
    };
  }

  #read(last: boolean): void {
    let bytes = Buffer.concat(this.#pending);
    let rest: Buffer = Buffer.alloc(0);
    if (!last) {
      const newline = bytes.lastIndexOf(10);
      // Without a line feed, lines end in carriage returns, if they end at all.
      const cut = (newline >= 0 ? newline : bytes.subarray(0, -1).lastIndexOf(13)) + 1;
      rest = bytes.subarray(cut);
      bytes = bytes.subarray(0, cut);
    }
    if (bytes.length > 0) {
      this.#delimiter ??= likelyDelimiter(bytes);
      let left = this.#rowsOf(bytes, last);
      while (left.broken) left = this.#rowsOf(this.#withoutQuotes(left.bytes), last);
      rest = left.bytes.length > 0 ? Buffer.concat([left.bytes, rest]) : rest;
    }
    this.#pending = [rest];
    this.#pendingBytes = rest.length;
  }

  /** Takes rows from the front of `bytes`; what is left begins at a quotation mark that is not closed in it. */
  #rowsOf(bytes: Buffer, last: boolean): { bytes: Buffer; broken: boolean } {
    let taken = 0;
    let lines = 0;
    const broken = new Error();
    try {
      parse(bytes, {
        ...this.#options(),
        quote: this.#quotes ? '"' : false,
        on_record: (cells: string[], info: InfoRecord & InfoField) => {
          // A row over several lines is in order when its quotes are; otherwise it holds rows of its own.
          const several = info.lines > lines + 1;
          if (
            several &&
            ((this.#header && cells.length !== this.#header.length) || cells.some(startsWithQuote))
          )
            throw broken;
          this.#row(this.#lines + lines + 1, cells);
          lines = info.lines;
          taken = info.bytes;
          return null;
        },
      } as Options);
      this.#lines += lines;
      return { bytes: Buffer.alloc(0), broken: false };
    } catch (error) {
      if (error !== broken && (error as { code?: string }).code !== 'CSV_QUOTE_NOT_CLOSED') throw error;
      this.#lines += lines;
      const left = bytes.subarray(taken);
      return { bytes: left, broken: error === broken || last || left.length > longestRecord };
    }
  }

  /** Reads one line as it stands, quotation marks and all, and gives back the rest. */
  #withoutQuotes(bytes: Buffer): Buffer {
    const line = this.#lines + 1;
    this.#problem(
      'quote',
      line,
      'A quotation mark in this line is opened and not closed.',
      'Write "" for a quotation mark inside a quoted cell, and close every quoted cell with ". The line was read without regard to quotes.',
    );
    this.#brokenQuotes++;
    if (this.#brokenQuotes > mostBrokenQuotes) {
      this.#quotes = false;
      this.#problem(
        'quotes',
        line,
        'Too many quotation marks of this file are opened and not closed: from here on they are taken as ordinary characters.',
        'Save the table again from the program it was made in.',
      );
      return bytes;
    }
    const ends = [bytes.indexOf(10), bytes.indexOf(13)].filter((at) => at >= 0);
    let end = ends.length > 0 ? Math.min(...ends) + 1 : bytes.length;
    if (bytes[end - 1] === 13 && bytes[end] === 10) end++;
    parse(bytes.subarray(0, end), {
      ...this.#options(),
      quote: false,
      on_record: (cells: string[]) => {
        this.#row(line, cells.map(unquoted));
        return null;
      },
    } as Options);
    this.#lines++;
    return bytes.subarray(end);
  }

  #options(): Options {
    return {
      bom: this.#lines === 0,
      delimiter: this.#delimiter!,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_quotes: true,
      relax_column_count: true,
    };
  }

  #row(line: number, given: string[]): void {
    const cells = this.#quotes ? given : given.map(unquoted);
    if (cells.every((cell) => cell.trim() === '')) return;
    if (cells.some((cell) => cell.includes('\0'))) {
      this.#problem(
        'nul',
        line,
        'This line holds characters of no text (NUL).',
        'Save the table again as plain text. They were left out.',
      );
      cells.forEach((cell, index) => (cells[index] = cell.replaceAll('\0', '')));
    }
    if (!this.#header) {
      this.#header = cells;
      return;
    }
    const width = this.#header.length;
    if (cells.length < width)
      this.#problem(
        'short',
        line,
        `This line has ${cells.length} of ${width} cells.`,
        'Add the missing delimiters. The cells that are not there were taken as empty.',
      );
    if (cells.slice(width).some((cell) => cell.trim() !== ''))
      this.#problem(
        'long',
        line,
        `This line has ${cells.length} cells where the headings are ${width}.`,
        'Put a cell that holds the delimiter itself in quotation marks. The cells too many were left out.',
      );
    while (cells.length < width) cells.push('');
    cells.length = width;
    this.#onRow({ line, cells }, this.#header);
  }

  #problem(sort: string, line: number, message: string, help: string): void {
    const told = (this.#told.get(sort) ?? 0) + 1;
    this.#told.set(sort, told);
    if (told > mostTold) return;
    const problem = { line, column: 1, message, help };
    sorts.set(problem, sort);
    this.#problems.push(problem);
  }
}

const sorts = new WeakMap<TableProblem, string>();

/** The delimiter that cuts the first lines into the most cells, as many in each. A comma where none does. */
function likelyDelimiter(bytes: Buffer): string {
  const end = bytes.length > 65_536 ? bytes.lastIndexOf(10, 65_536) + 1 || 65_536 : bytes.length;
  let best = { delimiter: ',', score: 0 };
  for (const delimiter of [',', ';', '\t', '|']) {
    const widths: number[] = [];
    const enough = new Error();
    try {
      parse(bytes.subarray(0, end), {
        bom: true,
        delimiter,
        record_delimiter: ['\r\n', '\n', '\r'],
        relax_quotes: true,
        relax_column_count: true,
        skip_empty_lines: true,
        on_record: (cells: string[]) => {
          widths.push(cells.length);
          if (widths.length === 50) throw enough;
          return null;
        },
      });
    } catch {
      // Either enough was seen, or a quotation mark is left open: what came before it speaks.
    }
    const width = widths[0] ?? 1;
    if (width < 2) continue;
    // Being cut evenly says more than being cut often: an address holds commas too.
    const even = widths.filter((other) => other === width).length / widths.length;
    const score = even + width / 1000;
    if (score > best.score) best = { delimiter, score };
  }
  return best.delimiter;
}

const startsWithQuote = (cell: string) => cell.startsWith('"');
const unquoted = (cell: string) =>
  cell.length > 1 && cell.startsWith('"') && cell.endsWith('"') ? cell.slice(1, -1) : cell;
