/** `npm run place`: which places of the gazetteer a reading may mean, best first, with reasons. */
import { createInterface } from 'node:readline';
import { Option } from 'commander';
import { contentOption, formatOption, verb, wholeNumber } from './shared/options.ts';
import { readersMayStop } from './shared/output.ts';
import { exitWith } from './shared/run.ts';

interface Options {
  content: string;
  format: 'text' | 'json';
  within?: string;
  near?: string;
  limit: number;
}

const program = verb(
  'npm run place --',
  'Says which places a reading may mean: a place exactly as a record spells it.',
)
  .argument(
    '<readings...>',
    'readings, each in quotation marks; - reads one from each line of standard input',
  )
  .addOption(contentOption())
  .option('--within <id>', 'a place the answer lies in')
  .option('--near <id>', 'a place the answer is probably not far from')
  .addOption(
    new Option('--limit <number>', 'the most candidates shown of each reading')
      .argParser(wholeNumber)
      .default(5),
  )
  .addOption(formatOption())
  .addHelpText(
    'after',
    '\nExample: npm run place -- "Nockmahon, Co. Waterford"\n\nWith several readings --format json gives a list; with -, a document for each line as it is read.\nExit code: 0 fine, 2 could not run.\nThrough npm, --format json wants npm’s own --silent: npm run --silent place -- --format json "Kill"',
  )
  .parse();
const options = program.opts<Options>();

readersMayStop();

await exitWith(async (): Promise<0> => {
  const { CannotRun } = await import('../corpus/types.ts');
  const { loadCorpus } = await import('../corpus/load.ts');
  const { gazetteerOf } = await import('../reasoning/places/gazetteer.ts');
  const { resolveReading } = await import('../reasoning/places/resolve.ts');
  const { paintFor } = await import('./report/paint.ts');
  const { placeReport } = await import('./report/place.ts');
  const { places } = loadCorpus(options.content);
  for (const [flag, id] of [
    ['--within', options.within],
    ['--near', options.near],
  ])
    if (id !== undefined && !places.has(id))
      throw new CannotRun(
        `There is no place ${id} in the gazetteer. ${flag} takes the id of a place, such as co-waterford.`,
      );
  const gazetteer = gazetteerOf(places.values());
  const paint = paintFor(process.stdout);
  const { within, near, limit } = options;
  const resolve = (reading: string) => resolveReading(gazetteer, reading, { within, near, limit });
  if (options.format === 'json' && !program.args.includes('-')) {
    const answers = program.args.map(resolve);
    process.stdout.write(`${JSON.stringify(answers.length === 1 ? answers[0] : answers, null, 2)}\n`);
    return 0;
  }
  for await (const reading of readings(program.args)) {
    const resolved = resolve(reading);
    const text = options.format === 'json' ? `${JSON.stringify(resolved)}\n` : placeReport(resolved, paint);
    if (!process.stdout.write(text)) await new Promise((drained) => process.stdout.once('drain', drained));
  }
  return 0;
});

/** The readings of the command line; for `-`, every line of standard input that is not empty. */
async function* readings(args: readonly string[]): AsyncGenerator<string> {
  for (const arg of args) {
    if (arg !== '-') yield arg;
    else
      for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity }))
        if (line.trim()) yield line.replace(/^\uFEFF/, '').trim();
  }
}
