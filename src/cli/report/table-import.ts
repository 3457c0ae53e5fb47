/** What an import of a table has to say: how it was taken, what would be written, what could not be read. */
import type { Fate, PlannedChange } from '../../imports/changes.ts';
import { memoryFile } from '../../imports/memory.ts';
import type { Mapping } from '../../imports/tables/mapping.ts';
import type { MentionTable } from '../../imports/tables/read.ts';
import type { TableRecords } from '../../imports/tables/records.ts';
import { asCalled } from '../shared/paths.ts';
import { wrap, type Paint } from './paint.ts';

export interface TableImport {
  table: MentionTable;
  mapping: Mapping;
  made: TableRecords;
  /** What becomes of each record. */
  changes: readonly PlannedChange[];
  /** What a file says now. */
  textNow(file: string): string | undefined;
  /** The files written; absent where it was only a look. */
  written: readonly string[] | undefined;
  content: string;
  savedTo: string | undefined;
}

/** Problems of one sort told one by one, and records listed. */
const most = { told: 5, listed: 12, lines: 60 };

interface ToldProblem {
  file: string;
  line: number;
  column: number;
  value?: string;
  message: string;
  help: string;
}

/** Every problem with its place in the table, in the order of its lines. */
function problemsOf({ table, made }: TableImport): ToldProblem[] {
  const ofCells = made.problems.map(({ row, index, value, message, help }) => ({
    file: table.name,
    ...table.locate(row, index),
    value,
    message,
    help,
  }));
  return [...table.problems.map((problem) => ({ file: table.name, ...problem })), ...ofCells].sort(
    (a, b) => a.line - b.line || a.column - b.column,
  );
}

/** The import as one JSON document. */
export function tableJson(done: TableImport): string {
  const { table, mapping, made, changes, written } = done;
  return `${JSON.stringify(
    {
      version: 1,
      table: { file: table.name, encoding: table.encoding, rows: table.rows.length },
      columns: mapping.columns.map(({ heading, field }) => ({ heading, field })),
      group: mapping.group.map(({ heading }) => heading),
      notes: made.notes,
      problems: problemsOf(done),
      records: made.records.map(({ id, file, title, mentions, firstLine, lastLine }, i) => ({
        id,
        file,
        title,
        mentions,
        lines: [firstLine, lastLine],
        standing: changes[i]!.fate,
      })),
      written: written ?? [],
    },
    null,
    2,
  )}\n`;
}

const fates: Record<Exclude<Fate, 'new'>, string> = {
  same: 'there already in the same words',
  changed: 'there already from an earlier import, and would change',
  edited: 'there already and edited by you since it was imported: left as it is',
  taken: 'there already and not from an import: left as it is',
  deleted: 'left out: imported before, and taken away by you since',
  elsewhere: 'in another file of yours: left as it is',
  gone: 'in no table any more: kept',
};

/** The import as text: what a look shows, or what was written. */
export function tableText(done: TableImport, show: number, paint: Paint): string {
  const { table, mapping, made, changes, written } = done;
  const lines: string[] = [];
  const say = (text = '', indent = '') =>
    lines.push(text === '' ? '' : wrap(text, paint.width, indent, indent));
  const mentions = made.records.reduce((sum, record) => sum + record.mentions, 0);
  say(
    `${paint.bold(table.name)}: ${plural(table.rows.length, 'row')}, ${table.encoding}, ${plural(mapping.columns.length, 'column')}.`,
  );
  say();
  say(paint.bold('Columns'));
  const wide = Math.min(34, Math.max(...mapping.columns.map(({ heading }) => heading.length), 1));
  for (const { heading, field, told } of mapping.columns)
    lines.push(
      `  ${shortened(heading || '(no heading)', wide).padEnd(wide)}  ${field === 'ignore' ? paint.dim('left out') : field}${told ? paint.dim('  as you said') : ''}`,
    );
  say();
  say(
    mapping.group.length === 0
      ? 'The whole table is one record. Name the columns that tell one record from another with --group.'
      : `One record for each ${mapping.group.map(({ heading }) => `“${heading}”`).join(' and ')}: ${plural(made.records.length, 'record')} with ${plural(mentions, 'mention')}.`,
  );
  for (const note of made.notes) say(note);
  if (!('form' in mapping.said.record))
    say(
      'Each record is taken for a copy of a list you have not seen: form derivative, seen as a transcript. If you typed the table yourself from a film or an image, say --record form=original --record seen=film.',
    );
  say();
  say(paint.bold('Records'));
  const listed = changes.length <= most.listed ? changes : changes.slice(0, most.listed - 1);
  listed.forEach(({ place, fate }, i) => {
    const { title, mentions: count } = made.records[i]!;
    lines.push(
      `  ${place}  ${paint.dim(`${title}; ${plural(count, 'mention')}${fate === 'new' ? '' : `; ${fates[fate]}`}`)}`,
    );
  });
  if (changes.length > listed.length) say(`  … and ${plural(changes.length - listed.length, 'more')}.`);
  if (!written) {
    const differing = made.records.flatMap(({ file, text }, i) => {
      const { fate } = changes[i]!;
      return fate === 'changed' || fate === 'edited' ? [{ file, text, fate }] : [];
    });
    for (const { file, text, fate } of differing.slice(0, most.listed)) {
      say();
      say(
        paint.bold(
          `${file}, ${fate === 'changed' ? 'what would change' : 'what you have (-) and the table says (+)'}`,
        ),
      );
      lines.push(...difference(done.textNow(file) ?? '', text, paint));
    }
    const fresh = made.records.filter((_record, i) => changes[i]!.fate === 'new');
    for (const record of fresh.slice(0, show)) {
      const text = record.text.trimEnd().split('\n');
      const cut = text.length > most.lines ? text.slice(0, most.lines - 1) : text;
      say();
      say(paint.bold(record.file));
      for (const line of cut) lines.push(`  ${line}`.trimEnd());
      if (cut.length < text.length)
        lines.push(
          paint.dim(
            `  … and ${text.length - cut.length} ${text.length - cut.length === 1 ? 'line' : 'lines'} more.`,
          ),
        );
    }
  }
  const problems = problemsOf(done);
  if (problems.length > 0) {
    say();
    say(paint.bold(`What could not be taken as it stands (${problems.length})`));
    lines.push(...problemLines(problems, paint));
  }
  say();
  lines.push(...ending(done, paint));
  return `${lines.join('\n')}\n`;
}

/** Lines that would go and lines that would come, in their order. */
function difference(before: string, after: string, paint: Paint): string[] {
  const [old, fresh] = [before.split('\n'), after.split('\n')];
  const only = (lines: readonly string[], others: readonly string[]) => {
    const left = new Map<string, number>();
    for (const line of others) left.set(line, (left.get(line) ?? 0) + 1);
    return lines.filter((line) => {
      const count = left.get(line) ?? 0;
      left.set(line, count - 1);
      return count < 1 && line.trim() !== '';
    });
  };
  const lines = [
    ...only(old, fresh).map((line) => paint.red(`  - ${line.trim()}`)),
    ...only(fresh, old).map((line) => paint.green(`  + ${line.trim()}`)),
  ];
  return lines.length > most.lines
    ? [...lines.slice(0, most.lines), `  … and ${lines.length - most.lines} more`]
    : lines;
}

function problemLines(problems: readonly ToldProblem[], paint: Paint): string[] {
  const lines: string[] = [];
  const sorts = new Map<string, ToldProblem[]>();
  for (const problem of problems) {
    const known = sorts.get(problem.message);
    if (known) known.push(problem);
    else sorts.set(problem.message, [problem]);
  }
  for (const [message, all] of sorts) {
    for (const { file, line, column, value } of all.slice(0, most.told))
      lines.push(`  ${file}:${line}:${column}${value === undefined ? '' : `  “${shortened(value, 50)}”`}`);
    if (all.length > most.told) lines.push(`  … and ${plural(all.length - most.told, 'more')}`);
    lines.push(wrap(message, paint.width, '    ', '    '));
    if (all[0]!.help) lines.push(paint.dim(wrap(all[0]!.help, paint.width, '    ', '    ')));
  }
  return lines;
}

function ending({ savedTo, mapping, changes, written, content }: TableImport, paint: Paint): string[] {
  const here = asCalled(content);
  const count = (fate: Fate) => changes.filter((change) => change.fate === fate).length;
  const lines: string[] = [];
  for (const fate of ['same', 'edited', 'taken', 'deleted'] as const)
    if (count(fate) > 0)
      lines.push(`${plural(count(fate), 'record')} ${count(fate) === 1 ? 'is' : 'are'} ${fates[fate]}.`);
  if (count('taken') > 0)
    lines.push('To bring those in beside what is there, give them other ids with --id.');
  if (count('deleted') > 0)
    lines.push(`To have those again, take their lines out of ${memoryFile('tables')} in your folder.`);
  if (savedTo) lines.push(`The mapping is in ${asCalled(savedTo)}.`);
  const would = count('new') + count('changed');
  if (written)
    lines.push(
      `${plural(written.length, 'record')} written into ${here}. Next: npm run check -- --content ${here}`,
    );
  else if (would === 0) lines.push('There is nothing to write.');
  else
    lines.push(
      `Nothing was written. To write ${would === 1 ? 'the record' : `the ${would.toLocaleString('en')} records`} into ${here}, add --write${mapping.said.record['series'] === undefined ? '; say which series they belong to with --record series=…' : ''}.`,
    );
  return lines.map((line) => wrap(line, paint.width));
}

const plural = (n: number, what: string) =>
  `${n.toLocaleString('en')} ${what}${n === 1 || what === 'more' ? '' : 's'}`;

function shortened(text: string, longest: number): string {
  const signs = [...text];
  return signs.length > longest ? `${signs.slice(0, longest - 1).join('')}…` : text;
}
