/** A table of people as it stands in a file: its columns by use, its cells kept once each. */
import { basename } from 'node:path';
import { nearest } from '../corpus/suggestions.ts';
import { TableReader, type TableProblem } from '../corpus/table.ts';
import { CannotRun } from '../corpus/types.ts';
import { mostRows } from '../reasoning/identity/bulk/blocking.ts';
import { readAsUtf8, type Encoding } from './encoding.ts';
import { guessOf, plainHeading, type ColumnUse } from './people-headings.ts';
import { stated } from './people-values.ts';
import { demandPlainFile } from './plain-file.ts';

export interface MappedColumn {
  use: ColumnUse;
  heading: string;
  /** It is no matter if the table has no such column. */
  mayLack?: boolean;
}

export interface PeopleFileOptions {
  /** Headings, or numbers of columns from 1, by what they are to be taken for. */
  map: readonly MappedColumn[];
  /** The first line holds people; the columns go by their numbers. */
  withoutHeadings: boolean;
}

/** One column that is taken, with its cells. */
export interface FileColumn {
  heading: string;
  use: ColumnUse;
  /** Of several columns of one use, which part of it this is. */
  order: number;
  /** The year that ages of the column were stated in, where the heading says. */
  year?: number;
  values: string[];
  /** For each row the number of its cell among `values`; -1 where it says nothing. */
  cells: Int32Array;
}

export interface PeopleFile {
  /** As named on the command line. */
  name: string;
  encoding: Encoding;
  rows: number;
  /** What each row goes by in the results: its id, else its number. */
  ids: string[];
  lines: Int32Array;
  columns: FileColumn[];
  /** Headings of columns that were left out. */
  ignored: string[];
  problems: TableProblem[];
  /** Sentences about what was made of the table. */
  notes: string[];
}

/** Reads a table of people. Throws `CannotRun` when it can't be read at all or no column can be told. */
export function readPeople(path: string, name: string, options: PeopleFileOptions): PeopleFile {
  const ids: string[] = [];
  const lines: number[] = [];
  let taken: Taken[] | undefined;
  const row = (line: number, cells: readonly string[]) => {
    if (lines.length >= mostRows)
      throw new CannotRun(
        `${name} has more than ${mostRows.toLocaleString('en')} rows. Cut it into parts, by county or by first letter, and compare them one by one.`,
      );
    lines.push(line);
    for (const column of taken!) {
      const cell = stated(cells[column.index] ?? '');
      column.take(cell.length > longestCell ? cell.slice(0, longestCell) : cell);
    }
  };
  const reader = new TableReader(({ line, cells }, header) => {
    if (!taken) {
      taken = takeColumns(header, name, options);
      if (options.withoutHeadings) row(1, header);
    }
    row(line, cells);
  });
  let encoding: Encoding;
  demandPlainFile(path);
  try {
    encoding = readAsUtf8(path, (bytes) => reader.push(bytes));
  } catch (error) {
    throw refusal(error, path);
  }
  const { header, problems } = reader.end();
  if (lines.length === 0)
    throw new CannotRun(
      header.length === 0
        ? `${name} is empty. Save the table again, with its headings in the first line.`
        : `${name} has a line of headings but no people below it.`,
    );
  const all = taken!;
  const notes: string[] = [];
  const id = idColumn(all, name, lines, notes);
  for (let at = 0; at < lines.length; at++) ids.push(id?.text(at) ?? String(at + 1));
  if (id) apart(ids, lines, name, id.heading, notes);
  const used = all.filter((one) => one.use !== 'ignore' && one.use !== 'id');
  return {
    name,
    encoding,
    rows: lines.length,
    ids,
    lines: Int32Array.from(lines),
    columns: used.map((one) => one.column()),
    ignored: all.filter((one) => !used.includes(one) && one !== id).map(({ heading }) => heading),
    problems,
    notes,
  };
}

/** What is beyond this of a cell has no say. */
const longestCell = 500;

/** A column while its cells come in. */
class Taken {
  readonly index: number;
  readonly heading: string;
  use: ColumnUse;
  readonly order: number;
  readonly year: number | undefined;
  readonly #numbers = new Map<string, number>();
  #cells = new Int32Array(1024);
  #count = 0;

  constructor(index: number, heading: string, use: ColumnUse, order: number, year: number | undefined) {
    this.index = index;
    this.heading = heading;
    this.use = use;
    this.order = order;
    this.year = year;
  }

  take(cell: string): void {
    if (this.#count === this.#cells.length) {
      const longer = new Int32Array(this.#count * 2);
      longer.set(this.#cells);
      this.#cells = longer;
    }
    let number = -1;
    if (cell !== '' && this.use !== 'ignore') {
      number = this.#numbers.get(cell) ?? -1;
      if (number < 0) this.#numbers.set(cell, (number = this.#numbers.size));
    }
    this.#cells[this.#count++] = number;
  }

  column(): FileColumn {
    const { heading, use, order, year } = this;
    return {
      heading,
      use,
      order,
      ...(year === undefined ? {} : { year }),
      values: [...this.#numbers.keys()],
      cells: this.#cells.slice(0, this.#count),
    };
  }

  /** How many different cells there are. */
  get distinct(): number {
    return this.#numbers.size;
  }

  text(row: number): string | undefined {
    this.#texts ??= [...this.#numbers.keys()];
    const number = this.#cells[row]!;
    return number < 0 ? undefined : this.#texts[number]!;
  }
  #texts: string[] | undefined;
}

function takeColumns(header: readonly string[], name: string, options: PeopleFileOptions): Taken[] {
  const headings = options.withoutHeadings
    ? header.map((_, at) => String(at + 1))
    : header.map((heading) => heading.trim());
  const told = new Map<number, ColumnUse>();
  for (const { use, heading, mayLack } of options.map) {
    const at = findColumn(headings, heading);
    if (at >= 0) told.set(at, use);
    else if (!mayLack) throw new CannotRun(noColumn(headings, heading, name));
  }
  const toldUses = new Set([...told.values()]);
  const seen = new Set<string>();
  const columns = headings.map((heading, index) => {
    const own = told.get(index);
    if (own) {
      const order = [...told].filter(([other, use]) => use === own && other < index).length;
      return new Taken(index, heading, own, order, guessOf(heading)?.year);
    }
    const guess = options.withoutHeadings ? undefined : guessOf(heading);
    if (heading === '' && index === 0) return new Taken(index, heading, 'id', 0, undefined);
    if (heading === '') return new Taken(index, heading, 'ignore', 0, undefined);
    if (!guess) return new Taken(index, heading, options.withoutHeadings ? 'ignore' : 'text', 0, undefined);
    // What the command line says of a use settles it; and a name is taken from one place.
    const taken = single.has(guess.use) && seen.has(`${guess.use} ${guess.order} ${guess.year ?? ''}`);
    if ((toldUses.has(guess.use) && single.has(guess.use)) || taken)
      return new Taken(index, heading, 'ignore', 0, undefined);
    seen.add(`${guess.use} ${guess.order} ${guess.year ?? ''}`);
    return new Taken(index, heading, guess.use, guess.order, guess.year);
  });
  const has = (use: ColumnUse) => columns.some((column) => column.use === use);
  if (!has('name') && !has('given') && !has('surname')) throw new CannotRun(noNames(headings, header, name));
  return columns;
}

const single = new Set<ColumnUse>([
  'name',
  'given',
  'surname',
  'sex',
  'age',
  'birth-date',
  'birth-year',
  'birth-month',
  'birth-day',
  'spouse',
  'father',
  'mother',
  'arrival-year',
  'year',
]);

/** A heading as it may stand in a message: short, and without what a terminal would take for an order. */
function shortened(heading: string): string {
  const plain = heading.replace(/[\p{C}\s]+/gu, ' ').trim();
  return plain.length > 40 ? `${plain.slice(0, 39)}…` : plain;
}

const listOf = (headings: readonly string[], most: number) =>
  headings.slice(0, most).map(shortened).join(', ');

function noNames(headings: readonly string[], header: readonly string[], name: string): string {
  const data = header.some((cell) => /^\s*\d/.test(cell));
  return data
    ? `The first line of ${name} looks like a row, not like headings: ${listOf(headings, 6)}. Put headings above it, or use --no-headings and say which column is which, such as --map given=1 --map surname=2.`
    : `None of the columns of ${name} could be told for a name; its headings are ${listOf(headings, 20)}. Say which they are, such as --map given="${shortened(headings[0] ?? '')}" --map surname="${shortened(headings[1] ?? headings[0] ?? '')}".`;
}

function findColumn(headings: readonly string[], wanted: string): number {
  const exact = headings.indexOf(wanted.trim());
  if (exact >= 0) return exact;
  const plain = headings.findIndex((heading) => plainHeading(heading) === plainHeading(wanted));
  if (plain >= 0) return plain;
  return /^\d+$/.test(wanted) && Number(wanted) <= headings.length ? Number(wanted) - 1 : -1;
}

function noColumn(headings: readonly string[], wanted: string, name: string): string {
  const meant = nearest(wanted, headings);
  return `${name} has no column “${wanted}”. ${meant ? `Did you mean “${meant}”?` : `Its headings are ${listOf(headings, 20)}.`}`;
}

/** The column the rows are named by: the first that was taken for one and tells them apart. */
function idColumn(
  columns: readonly Taken[],
  name: string,
  lines: readonly number[],
  notes: string[],
): Taken | undefined {
  for (const column of columns) {
    if (column.use !== 'id') continue;
    if (column.distinct >= lines.length * 0.95) return column;
    notes.push(
      `The column “${column.heading}” of ${name} has only ${column.distinct} different values in ${lines.length} rows; the rows go by their numbers instead.`,
    );
  }
  return undefined;
}

/** Rows of one id are told apart by their lines. */
function apart(
  ids: string[],
  lines: readonly number[],
  name: string,
  heading: string,
  notes: string[],
): void {
  const first = new Map<string, number>();
  let twice = 0;
  let example = '';
  ids.forEach((id, at) => {
    const before = first.get(id);
    if (before === undefined) {
      first.set(id, at);
      return;
    }
    twice++;
    example ||= `${id} on lines ${lines[before]} and ${lines[at]}`;
    ids[at] = `${id} (line ${lines[at]})`;
  });
  if (twice > 0)
    notes.push(
      `In the column “${heading}” of ${name} ${twice === 1 ? 'one id stands' : `${twice} ids stand`} again, such as ${example}; the later rows carry their line.`,
    );
}

function refusal(error: unknown, path: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  const file = basename(path);
  if (code === 'ENOENT') return new CannotRun(`There is no file ${path}.`);
  if (code === 'EISDIR') return new CannotRun(`${path} is a folder; name the table itself.`);
  if (code === 'EACCES' || code === 'EPERM') return new CannotRun(`${file} may not be read: ${path}.`);
  return error;
}
