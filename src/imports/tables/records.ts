/** A table of mentions → records: one for each list, page or document that its grouping columns tell apart. */
import type { TableRow } from '../../corpus/table.ts';
import { CannotRun } from '../../corpus/types.ts';
import { block } from '../../corpus/yaml-text.ts';
import { recordFile } from '../../model/record.ts';
import { dayFirstIn, type DayFirst } from '../people-values.ts';
import type { Field } from './fields.ts';
import { idOf, unique } from './ids.ts';
import type { Mapping } from './mapping.ts';
import { mentionsOf, type CellProblem } from './mentions.ts';
import type { MentionTable } from './read.ts';
import { RecordOfRows, type TableContext } from './record-of-rows.ts';
import { repeats } from './repeats.ts';

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

const mostRecords = 20_000;
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
    const made = new RecordOfRows(table, mapping, context, rows, dayFirst, stem, problems);
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

/** What the mapping says of a record must be of the form of a record; nothing is written that check would refuse. */
function demandForm(record: Record<string, unknown>, id: string, row: TableRow, table: MentionTable): void {
  const judged = recordFile.safeParse(record);
  if (judged.success) return;
  const { path, message } = judged.error.issues[0]!;
  throw new CannotRun(
    `The record ${id} (line ${row.line} of ${table.name}) can’t be written: ${path.join('.') || 'it'} is not as a record has it. ${message} Change what --record, --mention or the mapping file says.`,
  );
}
