/**
 * A table of mentions → records: one for each list, page or document that its grouping columns tell apart.
 *
 * Rule: nothing is claimed of a record that was not said. A table somebody else may have made is a derivative of a list
 * that was not examined, and all that was taken from it is one volume: entries by one hand.
 */
import type { TableRow } from '../../corpus/table.ts';
import { CannotRun } from '../../corpus/types.ts';
import { block } from '../../corpus/yaml-text.ts';
import { recordFile } from '../../model/record.ts';
import { dayFirstIn, type DayFirst } from '../people-values.ts';
import { dateValue, isDitto, relationValue } from './cells.ts';
import type { Field } from './fields.ts';
import type { MappedColumn, Mapping } from './mapping.ts';
import { mentionsOf, numberOrText, type CellProblem, type MentionData } from './mentions.ts';
import type { MentionTable } from './read.ts';

/** One record made of rows. */
export interface TableRecord {
  id: string;
  /** Relative to the content folder. */
  file: string;
  title: string;
  mentions: number;
  text: string;
  firstLine: number;
  lastLine: number;
}

export interface TableRecords {
  records: TableRecord[];
  problems: CellProblem[];
  /** Sentences about what was made of the table. */
  notes: string[];
}

export interface TableContext {
  /** The id of a place that is written out or named by its id; nothing where it is not clear. */
  placeOf(text: string): string | undefined;
}

const mostRecords = 20_000;
const longestId = 60;
/** The largest file of text that a content folder may hold. */
const largestText = 5 * 1024 * 1024;

/** The records of a table. Throws `CannotRun` where the mapping says what no record can be. */
export function recordsOf(table: MentionTable, mapping: Mapping, context: TableContext): TableRecords {
  const problems: CellProblem[] = [];
  const notes: string[] = [];
  const dayFirst = order(table, mapping);
  const repeated = repeats(table, mapping, problems, notes);
  const groups = grouped(table, mapping);
  if (groups.size > mostRecords)
    throw new CannotRun(
      `${table.name} would become ${groups.size.toLocaleString('en')} records, one for each ${mapping.group.map(({ heading }) => heading).join(' and ')}. Group it by fewer columns with --group, or use --one-record.`,
    );
  const stem = idOf(table.name.replace(/\.[^.]*$/, ''));
  const taken = new Set<string>();
  const records: TableRecord[] = [];
  for (const rows of groups.values()) {
    const made = new RecordMaker(table, mapping, context, rows, dayFirst, stem, problems);
    const id = unique(made.id(), taken);
    const { mentions, problems: found } = mentionsOf({
      columns: mapping.columns,
      rows,
      dayFirst,
      common: mapping.said.mention,
      role: mapping.kind === 'passenger-list' ? 'passenger' : undefined,
      repeated: (row, index) => repeated.get(row)?.get(index),
    });
    problems.push(...found);
    const record = made.record(mentions);
    demandForm(record, id, rows[0]!, table);
    const lines = rows.map(({ line }) => line);
    const [first, last] = [lines[0]!, lines.at(-1)!];
    const body =
      first === last
        ? `From ${table.name}, line ${first}.`
        : `From ${table.name}, ${rows.length} rows between lines ${first} and ${last}.`;
    const text = `---\n${block(record).join('\n')}\n---\n\n${body}\n`;
    if (Buffer.byteLength(text) > largestText)
      throw new CannotRun(
        `The record of ${rows.length} rows from line ${first} of ${table.name} would be larger than a content folder takes (${largestText / 1024 / 1024} megabytes). Group the table by page or sheet with --group.`,
      );
    records.push({
      id,
      file: `records/${id}.md`,
      title: String(record['title']),
      mentions: mentions.length,
      text,
      firstLine: first,
      lastLine: last,
    });
  }
  return { records, problems, notes };
}

/** Whether days stand before months: as said, else as the dates of the table themselves show. */
function order(table: MentionTable, { columns, said }: Mapping): DayFirst {
  if (said.dates !== undefined) return said.dates === 'day-first';
  const dates: Field[] = [
    'born',
    'voyage.sailed',
    'voyage.arrived',
    'event.date',
    'record.made',
    'immigrated',
  ];
  const cells = columns
    .filter(({ field }) => dates.includes(field))
    .flatMap(({ index }) => table.rows.map((row) => row.cells[index]!));
  return dayFirstIn(cells);
}

/**
 * Puts the value above in the place of dittos, and of empty cells of the columns that tell records or households
 * apart, as lists are typed (common practice). Gives what names repeat, which are kept as they are written.
 */
function repeats(
  table: MentionTable,
  { columns, group }: Mapping,
  problems: CellProblem[],
  notes: string[],
): Map<TableRow, Map<number, string>> {
  const written = new Map<TableRow, Map<number, string>>();
  const relation = columns.find(({ field }) => field === 'relation');
  for (const column of columns) {
    const { index, heading, field } = column;
    if (field === 'ignore') continue;
    const down = group.includes(column) || (field === 'household' && relation !== undefined);
    const word = ['name', 'name.given', 'name.surname'].includes(field);
    let above = '';
    let dittos = 0;
    let filled = 0;
    for (const row of table.rows) {
      const cell = row.cells[index]!;
      if (isDitto(cell)) {
        if (above === '') {
          problems.push({
            row,
            index,
            value: cell,
            message: 'This says “the same”, and there is nothing above it. It was kept as it stands.',
            help: 'Write out what is meant.',
          });
          continue;
        }
        dittos++;
        // “do” is part of a name as it is written; marks of a typist are not.
        if (word && /[a-z]/i.test(cell)) {
          const ofRow = written.get(row) ?? written.set(row, new Map<number, string>()).get(row)!;
          ofRow.set(index, above);
        } else row.cells[index] = above;
        continue;
      }
      if (cell === '' && down && above !== '') {
        const own = field === 'household' && relationValue(row.cells[relation!.index]!).as === 'head';
        if (!own) {
          row.cells[index] = above;
          filled++;
          continue;
        }
      }
      above = cell;
    }
    if (dittos > 0)
      notes.push(`“${heading}” says “the same” in ${count(dittos, 'row')}; what stands above was taken.`);
    if (filled > 0)
      notes.push(
        `“${heading}” is empty in ${count(filled, 'row')}; what stands above was taken, as in lists that name it once.`,
      );
  }
  return written;
}

const count = (n: number, what: string) => `${n.toLocaleString('en')} ${what}${n === 1 ? '' : 's'}`;

function grouped(table: MentionTable, { group }: Mapping): Map<string, TableRow[]> {
  const groups = new Map<string, TableRow[]>();
  for (const row of table.rows) {
    const key = group.map(({ index }) => row.cells[index]!).join('\u0000');
    const known = groups.get(key);
    if (known) known.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}

class RecordMaker {
  readonly #table: MentionTable;
  readonly #mapping: Mapping;
  readonly #context: TableContext;
  readonly #rows: readonly TableRow[];
  readonly #dayFirst: DayFirst;
  readonly #stem: string;
  readonly #problems: CellProblem[];

  constructor(
    table: MentionTable,
    mapping: Mapping,
    context: TableContext,
    rows: readonly TableRow[],
    dayFirst: DayFirst,
    stem: string,
    problems: CellProblem[],
  ) {
    this.#table = table;
    this.#mapping = mapping;
    this.#context = context;
    this.#rows = rows;
    this.#dayFirst = dayFirst;
    this.#stem = stem;
    this.#problems = problems;
  }

  id(): string {
    const { said, group } = this.#mapping;
    if (said.id !== undefined) return idOf(this.#filled(said.id)) || this.#stem;
    const own = idOf(group.map((column) => this.#sortable(column)).join(' '));
    if (own === '') return this.#stem;
    // A page number alone says nothing beside the pages of another list.
    return /^[a-z]/.test(own) && own.length > 5 ? own : `${this.#stem}-${own}`;
  }

  record(mentions: readonly MentionData[]): Record<string, unknown> {
    const { said } = this.#mapping;
    const given = this.#fill(said.record) as Record<string, unknown>;
    const title = String(given['title'] ?? this.#title());
    const form = given['form'] ?? 'derivative';
    const made = this.#date('record.made');
    const pages = [...new Set(this.#values('record.page'))];
    const { title: _title, form: _form, cite, derivedFrom, seen, ...others } = given;
    const record = {
      title,
      cite: {
        type: 'document',
        title,
        ...(form !== 'derivative' && made !== undefined ? { issued: made } : {}),
        ...(pages.length > 0
          ? { page: pages.length === 1 ? numberOrText(pages[0]!) : `${pages[0]}–${pages.at(-1)}` }
          : {}),
        ...(cite as object | undefined),
      },
      form,
      ...(derivedFrom !== undefined
        ? { derivedFrom }
        : form === 'derivative'
          ? { derivedFrom: [{ unseen: `what ${this.#table.name} was made from: ${title}` }] }
          : {}),
      ...(seen !== undefined ? { seen } : form === 'derivative' ? { seen: 'transcript' } : {}),
      ...(form !== 'derivative' && made !== undefined ? { made } : {}),
      ...this.#place(),
      ...(form === 'derivative' ? { volume: this.#stem } : {}),
      ...others,
    };
    return { ...record, mentions };
  }

  #title(): string {
    const { said, group, kind } = this.#mapping;
    if (said.title !== undefined) return this.#filled(said.title);
    const [own] = this.#values('record.title');
    const list = titled(this.#table.name.replace(/\.[^.]*$/, ''));
    if (kind === 'passenger-list') {
      const [ship] = this.#values('voyage.ship');
      const date = this.#date('voyage.arrived') ?? this.#date('voyage.sailed');
      const to = this.#values('voyage.to');
      const where = new Set(to).size === 1 ? to[0] : undefined;
      if (ship !== undefined)
        return ['Passenger list of the ' + ship, where, date].filter((part) => part !== undefined).join(', ');
    }
    const values = group
      .filter(({ field }) => field !== 'record.title')
      .map(({ heading, index }) => {
        const value = this.#rows[0]!.cells[index]!;
        return value === '' ? '' : `${heading.toLowerCase()} ${value}`;
      })
      .filter(Boolean);
    return [own ?? list, ...values].join(', ');
  }

  #place(): { place?: string } {
    const [text] = this.#values('record.place');
    if (text === undefined) return {};
    const place = this.#context.placeOf(text);
    if (place !== undefined) return { place };
    this.#problem(
      'record.place',
      'No one place of your content goes by this, so the record says no place where it was made.',
      'Write the id of a place, or add the name to the variants of the place that is meant.',
    );
    return {};
  }

  #date(field: Field): string | undefined {
    const [text] = this.#values(field);
    if (text === undefined) return undefined;
    const date = dateValue(text, this.#dayFirst);
    if (date === undefined && field === 'record.made')
      this.#problem(
        field,
        'This could not be read as a date, so the record says no day when it was made.',
        'Write it as 1864-05-02, 1864-05 or 1864.',
      );
    return date;
  }

  #values(field: Field): string[] {
    return this.#mapping.columns
      .filter((column) => column.field === field)
      .flatMap(({ index }) => this.#rows.map((row) => row.cells[index]!))
      .filter((cell) => cell !== '');
  }

  #problem(field: Field, message: string, help: string): void {
    const column = this.#mapping.columns.find((one) => one.field === field)!;
    const row = this.#rows.find(({ cells }) => cells[column.index] !== '')!;
    this.#problems.push({ row, index: column.index, value: row.cells[column.index]!, message, help });
  }

  /** A date of an id as year, month and day. */
  #sortable({ index, field }: MappedColumn): string {
    const cell = this.#rows[0]!.cells[index]!;
    const isDate = ['voyage.arrived', 'voyage.sailed', 'record.made', 'event.date'].includes(field);
    return (isDate ? dateValue(cell, this.#dayFirst) : undefined) ?? cell;
  }

  /** A text with `{Heading}` filled in from the first row. */
  #filled(text: string): string {
    return text
      .replace(/\{([^{}]+)\}/g, (_all, heading: string) => {
        const column = this.#mapping.columns.find((one) => one.heading === heading.trim());
        if (!column)
          throw new CannotRun(
            `{${heading}} stands in “${text}”, and ${this.#table.name} has no such column. Its headings are ${this.#mapping.columns.map((one) => one.heading).join(', ')}.`,
          );
        return this.#sortable(column);
      })
      .trim();
  }

  #fill(value: unknown): unknown {
    if (typeof value === 'string') return this.#filled(value);
    if (Array.isArray(value)) return value.map((one) => this.#fill(one));
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, this.#fill(one)]));
    return value;
  }
}

/** What the mapping says of a record must be of the form of a record; nothing is written that check would refuse. */
function demandForm(record: Record<string, unknown>, id: string, row: TableRow, table: MentionTable): void {
  const judged = recordFile.safeParse(record);
  if (judged.success) return;
  const { path, message } = judged.error.issues[0]!;
  throw new CannotRun(
    `The record ${id} (line ${row.line} of ${table.name}) can’t be written: ${path.join('.') || 'it'} is not as a record has it. ${message} Change what --record, --mention or the mapping file says.`,
  );
}

/** Words as an id. */
export function idOf(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[øØ]/g, 'o')
    .replace(/[æÆ]/g, 'ae')
    .replace(/[åÅ]/g, 'a')
    .replace(/ß/g, 'ss')
    .replace(/['’`]/g, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean)
    .join('-')
    .slice(0, longestId)
    .replace(/-$/, '');
}

function unique(id: string, taken: Set<string>): string {
  const plain = id || 'record';
  let own = plain;
  for (let n = 2; taken.has(own); n++) own = `${plain}-${n}`;
  taken.add(own);
  return own;
}

function titled(stem: string): string {
  const words = stem.replace(/[-_]+/g, ' ').trim();
  return words === '' ? 'List' : words[0]!.toUpperCase() + words.slice(1);
}
