/** What an import of a table has to say: how it was taken, what would be written, what could not be read. */
import { relative } from 'node:path';
import type { Plan, Standing } from '../../imports/memory.ts';
import type { Mapping } from '../../imports/tables/mapping.ts';
import type { MentionTable } from '../../imports/tables/read.ts';
import type { TableRecords } from '../../imports/tables/records.ts';
import { wrap, type Paint } from './paint.ts';

export interface TableImport {
  table: MentionTable;
  mapping: Mapping;
  made: TableRecords;
  plans: readonly Plan[];
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
  const { table, mapping, made, plans, written } = done;
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
        standing: plans[i]!.standing,
      })),
      written: written ?? [],
    },
    null,
    2,
  )}\n`;
}

const standings: Record<Standing, string> = {
  new: 'new',
  same: 'there already in the same words',
  changed: 'there already from an earlier import, and would change',
  edited: 'there already and edited by you since it was imported: left as it is',
  taken: 'there already and not from an import: left as it is',
  removed: 'left out: imported before, and taken away by you since',
};

/** The import as text: what a look shows, or what was written. */
export function tableText(done: TableImport, show: number, paint: Paint): string {
  const { table, mapping, made, plans, written, content } = done;
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
  const listed = plans.length <= most.listed ? plans : plans.slice(0, most.listed - 1);
  listed.forEach(({ file, standing }, i) => {
    const { title, mentions: count } = made.records[i]!;
    lines.push(
      `  ${file}  ${paint.dim(`${title}; ${plural(count, 'mention')}${standing === 'new' ? '' : `; ${standings[standing]}`}`)}`,
    );
  });
  if (plans.length > listed.length) say(`  … and ${plural(plans.length - listed.length, 'more')}.`);
  if (!written) {
    for (const { file, text, before } of plans
      .filter((plan) => plan.before !== undefined)
      .slice(0, most.listed)) {
      say();
      say(paint.bold(`${file}, what would change`));
      lines.push(...changes(before!, text, paint));
    }
    const fresh = made.records.filter((_record, i) => plans[i]!.standing === 'new');
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
  lines.push(...ending(done, plans, written, content, paint));
  return `${lines.join('\n')}\n`;
}

/** Lines that would go and lines that would come, in their order. */
function changes(before: string, after: string, paint: Paint): string[] {
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

function ending(
  { savedTo, mapping }: TableImport,
  plans: readonly Plan[],
  written: readonly string[] | undefined,
  content: string,
  paint: Paint,
): string[] {
  const here = relative(process.env['INIT_CWD'] ?? process.cwd(), content) || '.';
  const count = (standing: Standing) => plans.filter((plan) => plan.standing === standing).length;
  const lines: string[] = [];
  for (const standing of ['same', 'edited', 'taken', 'removed'] as const)
    if (count(standing) > 0)
      lines.push(
        `${plural(count(standing), 'record')} ${count(standing) === 1 ? 'is' : 'are'} ${standings[standing]}.`,
      );
  if (count('taken') > 0)
    lines.push('To bring those in beside what is there, give them other ids with --id.');
  if (count('removed') > 0)
    lines.push('To have those again, take their lines out of .imported/files.json in your folder.');
  if (savedTo)
    lines.push(`The mapping is in ${relative(process.env['INIT_CWD'] ?? process.cwd(), savedTo)}.`);
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
