/** `npm run compare`: rows of tables that are likely the same person, with the ledger of each pair. */
import { closeSync, openSync, writeSync } from 'node:fs';
import { basename, extname } from 'node:path';
import { InvalidArgumentError, Option } from 'commander';
import { CannotRun } from '../corpus/types.ts';
import { readPeople, type MappedColumn, type PeopleFile } from '../imports/people-file.ts';
import { columnUses } from '../imports/people-headings.ts';
import { preparePeople } from '../imports/people-table.ts';
import { linkTables } from '../reasoning/identity/bulk/link.ts';
import type { Comparison } from './report/comparison.ts';
import { comparisonCsv, comparisonJson, comparisonText, summaryText } from './report/comparison-forms.ts';
import { comparisonPage } from './report/comparison-page.ts';
import { paintFor } from './report/paint.ts';
import { demandEarlier, forceOption, isOurComparison } from './shared/earlier.ts';
import { verb } from './shared/options.ts';
import { writeFile } from './shared/out.ts';
import { fromCaller } from './shared/paths.ts';
import { progressOn } from './shared/progress.ts';
import { exitWith } from './shared/run.ts';

interface Options {
  map: MappedColumn[];
  mapB: MappedColumn[];
  ignore: string[];
  id?: string;
  idB?: string;
  headings: boolean;
  yearA?: number;
  yearB?: number;
  oneToOne: boolean;
  many: boolean;
  threshold?: number;
  weights: 'frequency' | 'flat';
  learn: boolean;
  format?: Form;
  out?: string;
  limit?: number;
  force: boolean;
}
type Form = 'text' | 'csv' | 'json' | 'html';
const forms: readonly Form[] = ['text', 'csv', 'json', 'html'];

const program = verb(
  'npm run compare --',
  'Finds the rows of one table, or of two, that are likely the same person, and shows the ledger of each pair.',
)
  .argument('<a>', 'a table of people: CSV, or text with semicolons or tabs')
  .argument('[b]', 'a second table; without it, rows of the first are compared with one another')
  .option('--map <use=heading>', `what a column is, in both tables: ${columnUses.join(', ')}`, mapping, [])
  .option('--map-b <use=heading>', 'the same for the second table only, where it differs', mapping, [])
  .option('--ignore <heading>', 'a column to leave out; may be given several times', list, [])
  .option('--id <heading>', 'the column that names the rows')
  .option('--id-b <heading>', 'the same for the second table, where it differs')
  .option('--no-headings', 'the first line is a row; columns go by their numbers, as in --map given=1')
  .option('--year-a <year>', 'the year in which the ages of the first table were stated', year)
  .option('--year-b <year>', 'the year in which the ages of the second table were stated', year)
  .option('--one-to-one', 'put each row into one pair at most', false)
  .option('--many', 'let each pair stand by itself: a row’s candidates do not compete', false)
  .option(
    '--threshold <probability>',
    'the least probability of a pair that is told; without it, where pairs found in vain and pairs missed balance best',
    probability,
  )
  .addOption(
    new Option('--weights <kind>', 'by how frequent a name is, or the same for all names')
      .choices(['frequency', 'flat'])
      .default('frequency'),
  )
  .option('--no-learn', 'keep the usual weights instead of learning from the tables')
  .addOption(
    new Option(
      '--format <form>',
      'what is written; without it, what the ending of --out says, else text',
    ).choices(forms),
  )
  .option('--out <file>', 'where to write it; without it, standard output', fromCaller)
  .addOption(forceOption())
  .option('--limit <number>', 'the most pairs shown as text (20) or on the page (1000)', whole)
  .addHelpText(
    'after',
    `
Columns are told by their headings; the report says which was taken for what. CSV and JSON hold the ids of both rows
(or their numbers, where no column names them), the weight in bits, the probability, and the ledger.

  npm run compare -- passengers.csv census-1880.csv --year-b 1880 --out pairs.html
  npm run --silent compare -- people.csv --format csv

Exit code: 0 done, 2 could not run.`,
  )
  .parse();

await exitWith(() => {
  const [pathA, pathB] = program.args.map(fromCaller) as [string, string | undefined];
  const options = program.opts<Options>();
  const form = options.format ?? formOf(options.out);
  if (options.out && [pathA, pathB].includes(options.out))
    throw new CannotRun(`${options.out} is one of the tables; write the pairs to another file.`);
  if (options.out) demandEarlier(options.out, isOurComparison[form], options.force);
  const progress = progressOn(process.stderr);
  progress.say('Reading …');
  const a = readPeople(pathA, basename(pathA), {
    map: mapsFor(options, 'a'),
    withoutHeadings: !options.headings,
  });
  const b = pathB
    ? readPeople(pathB, basename(pathB), { map: mapsFor(options, 'b'), withoutHeadings: !options.headings })
    : undefined;
  const [yearA, yearB] = [options.yearA ?? yearIn(a), options.yearB ?? (b && yearIn(b))];
  const prepared = preparePeople(a, b, {
    ...(yearA === undefined ? {} : { a: yearA }),
    ...(yearB === undefined ? {} : { b: yearB }),
  });
  const rivals = !options.many;
  const rarity = options.weights === 'frequency';
  const { threshold, oneToOne, learn } = options;
  const result = linkTables(
    prepared.tables,
    { rarity, learn, rivals, oneToOne, ...(threshold === undefined ? {} : { threshold }) },
    (text) => progress.say(text),
  );
  progress.clear();
  const comparison: Comparison = {
    a,
    b: b ?? a,
    within: !b,
    prepared,
    result,
    rivals,
    oneToOne,
    rarity,
    learn,
  };
  if (form !== 'text' || options.out) process.stderr.write(summaryText(comparison, paintFor(process.stderr)));
  write(options.out, piecesOf(form, comparison, options.limit));
  return 0;
});

function piecesOf(form: Form, comparison: Comparison, limit: number | undefined): Iterable<string> {
  if (form === 'csv') return comparisonCsv(comparison);
  if (form === 'json') return comparisonJson(comparison);
  if (form === 'html') return comparisonPage(comparison, limit ?? 1000);
  return comparisonText(comparison, paintFor(process.stdout), limit ?? 20);
}

/** Writes piece by piece; a file is there whole or not at all. */
function write(out: string | undefined, pieces: Iterable<string>): void {
  if (out !== undefined) {
    writeFile(out, (part) => {
      const file = openSync(part, 'wx');
      try {
        writePieces(file, pieces);
      } finally {
        closeSync(file);
      }
    });
    return;
  }
  try {
    writePieces(1, pieces);
  } catch (error) {
    // Whoever reads our output may have seen enough of it.
    if ((error as NodeJS.ErrnoException).code !== 'EPIPE') throw error;
  }
}

function writePieces(file: number, pieces: Iterable<string>): void {
  let waiting = '';
  for (const piece of pieces) {
    waiting += piece;
    if (waiting.length < 1 << 16) continue;
    writeAll(file, waiting);
    waiting = '';
  }
  writeAll(file, waiting);
}

function writeAll(file: number, text: string): void {
  const bytes = Buffer.from(text, 'utf8');
  for (let at = 0; at < bytes.length;) {
    try {
      at += writeSync(file, bytes, at);
    } catch (error) {
      // A pipe that is full for the moment.
      if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}

/** What the command line says of the columns of one table. What holds for both gives way to what is said of one. */
function mapsFor(options: Options, side: 'a' | 'b'): MappedColumn[] {
  const own = side === 'b' ? [...options.mapB] : [];
  if (side === 'b' && options.idB) own.push({ use: 'id', heading: options.idB });
  const both = [...options.map];
  if (options.id) both.push({ use: 'id', heading: options.id });
  const shared = both.filter(({ use }) => !own.some((one) => one.use === use));
  return [
    ...own,
    ...shared.map((one) => ({ ...one, mayLack: side === 'b' })),
    ...options.ignore.map((heading) => ({ use: 'ignore' as const, heading, mayLack: true })),
  ];
}

/** The year a list is of, where its file’s name holds one. */
function yearIn({ name }: PeopleFile): number | undefined {
  const years = new Set(name.match(/(?<!\d)1[6-9]\d\d(?!\d)/g));
  return years.size === 1 ? Number([...years][0]) : undefined;
}

function formOf(out: string | undefined): Form {
  const ending = extname(out ?? '')
    .slice(1)
    .toLowerCase();
  return ending === 'htm' ? 'html' : (forms.find((form) => form === ending) ?? 'text');
}

function mapping(value: string, before: MappedColumn[]): MappedColumn[] {
  const at = value.indexOf('=');
  const use = columnUses.find((one) => one === value.slice(0, at).trim().toLowerCase());
  if (at < 0 || !use)
    throw new InvalidArgumentError(
      `Write what the column is, and its heading: given=fname. It can be: ${columnUses.join(', ')}.`,
    );
  return [...before, { use, heading: value.slice(at + 1) }];
}

function list(value: string, before: string[]): string[] {
  return [...before, value];
}

function year(value: string): number {
  if (!/^1[0-9]\d\d$|^20\d\d$/.test(value)) throw new InvalidArgumentError('Write a year, such as 1880.');
  return Number(value);
}

function probability(value: string): number {
  const number = Number(value);
  if (value.trim() === '' || !(number >= 0 && number <= 1))
    throw new InvalidArgumentError('A probability is a number from 0 to 1.');
  return number;
}

function whole(value: string): number {
  if (!/^\d{1,9}$/.test(value)) throw new InvalidArgumentError('Write a whole number.');
  return Number(value);
}
