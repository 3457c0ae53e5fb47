/** `npm run plan`: what records should name a case's people, what became of each, and what to search next. */
import { Option } from 'commander';
import { contentOption, formatOption, verb, wholeNumber } from './shared/options.ts';
import { readersMayStop } from './shared/output.ts';
import { exitWith } from './shared/run.ts';

interface Options {
  content: string;
  format: 'text' | 'json';
  limit: number;
  all?: true;
}

const program = verb(
  'npm run plan --',
  'Says what to search next for a case, in the order in which it is likeliest to name the origin, and why.',
)
  .argument('<case>', 'the id of a case')
  .addOption(contentOption())
  .addOption(new Option('--limit <number>', 'the most searches shown').argParser(wholeNumber).default(10))
  .option('--all', 'every open search, and the coverage of everybody around the case')
  .addOption(formatOption())
  .addHelpText(
    'after',
    '\nExample: npm run plan -- phelan-knockmahon\n\nExit code: 0 fine, 2 could not run.\nThrough npm, --format json wants npm’s own --silent: npm run --silent plan -- --format json phelan-knockmahon',
  )
  .parse();
const options = program.opts<Options>();

readersMayStop();

await exitWith(async (): Promise<0> => {
  const { CannotRun } = await import('../corpus/types.ts');
  const { loadCorpus } = await import('../corpus/load.ts');
  const { nearest } = await import('../corpus/suggestions.ts');
  const { brokenUnder } = await import('../dossier/rests-on.ts');
  const { planView } = await import('../dossier/plan.ts');
  const { paintFor } = await import('./report/paint.ts');
  const { planDocument, planReport } = await import('./report/plan.ts');
  const [id = ''] = program.args;
  const corpus = loadCorpus(options.content);
  const found = corpus.cases.get(id);
  if (!found) throw new CannotRun(noCase(id, [...corpus.cases.keys()], nearest));
  // While files behind the case have errors, how near it has come can’t be computed; the rest of the plan can.
  const broken = brokenUnder(corpus, found, corpus.broken).length > 0;
  if (broken)
    process.stderr.write(
      'Files behind this case have errors, so that how near it has come is not known; npm run check lists them.\n',
    );
  const view = planView(corpus, found, broken ? null : undefined, true);
  const limit = options.all ? Infinity : options.limit;
  process.stdout.write(
    options.format === 'json'
      ? `${JSON.stringify(planDocument(found, view, limit), null, 2)}\n`
      : planReport(found, view, limit, paintFor(process.stdout)),
  );
  return 0;
});

/** What is said of an id that no case has. */
function noCase(
  id: string,
  cases: readonly string[],
  nearest: (wrong: string, known: readonly string[]) => string | undefined,
): string {
  if (cases.length === 0)
    return `There is no case ${id}: the content has no cases yet. npm run new -- case makes one.`;
  const meant = nearest(id, cases);
  const most = 20;
  const list = `${cases.slice(0, most).join(', ')}${cases.length > most ? ` and ${cases.length - most} more` : ''}`;
  return `There is no case ${id}.${meant === undefined ? '' : ` Did you mean ${meant}?`} The cases are: ${list}.`;
}
