/**
 * `npm run check`: findings, and the standing of every case.
 *
 * Authors run it after every few lines, so what Node makes of the modules is kept from run to run. That has to be
 * asked for before they are loaded, which is why they are imported below and not at the head.
 */
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';
import { projectRoot } from './shared/paths.ts';

enableCompileCache(join(projectRoot, 'node_modules/.whence/compiled'));
const { contentOption, formatOption, todayOption, verb } = await import('./shared/options.ts');
const { exitWith } = await import('./shared/run.ts');

const program = verb(
  'npm run check --',
  'Checks a content folder: what is wrong in it, and how every case stands.',
)
  .addOption(contentOption())
  .addOption(formatOption())
  .addOption(todayOption())
  .option(
    '--living [person]',
    'who is presumed living and until when, or why one person, or one mention (record#mention), is or is not',
  )
  .addHelpText(
    'after',
    '\nExit code: 0 fine, 1 findings of severity error, 2 could not run.\nThrough npm, --format json wants npm’s own --silent: npm run --silent check -- --format json',
  )
  .parse();
const options = program.opts<{
  content: string;
  format: 'text' | 'json';
  today: string;
  living?: true | string;
}>();

await exitWith(async () => {
  const { loadCorpus } = await import('../corpus/load.ts');
  const { CannotRun } = await import('../corpus/types.ts');
  const { examine } = await import('../dossier/examine.ts');
  const { checkReport } = await import('./report/check.ts');
  const { paintFor } = await import('./report/paint.ts');
  const examination = examine(loadCorpus(options.content), options.today);
  if (options.living !== undefined) {
    const { livingReport } = await import('./report/living.ts');
    const { nearest } = await import('../corpus/suggestions.ts');
    const of = options.living === true ? undefined : options.living;
    const report = livingReport(examination, of, options.format, paintFor(process.stdout));
    if (report === undefined) {
      const meant = nearest(of!, examination.corpus.people.keys());
      throw new CannotRun(
        `There is no person and no mention ${of}.${meant === undefined ? '' : ` Did you mean ${meant}?`} --living alone lists everybody presumed living.`,
      );
    }
    process.stdout.write(report);
    return 0;
  }
  process.stdout.write(checkReport(examination, options.format, paintFor(process.stdout)));
  return examination.ok ? 0 : 1;
});
