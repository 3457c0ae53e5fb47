/** `npm run check`: findings, and the standing of every case. */
import { loadCorpus } from '../corpus/load.ts';
import { examine } from '../dossier/examine.ts';
import { casesText } from './report/cases.ts';
import { countsText, findingsText, tally } from './report/findings.ts';
import { checkDocument } from './report/json.ts';
import { paintFor } from './report/paint.ts';
import { contentOption, formatOption, todayOption, verb } from './shared/options.ts';
import { exitWith } from './shared/run.ts';

const program = verb(
  'npm run check --',
  'Checks a content folder: what is wrong in it, and how every case stands.',
)
  .addOption(contentOption())
  .addOption(formatOption())
  .addOption(todayOption())
  .addHelpText(
    'after',
    '\nExit code: 0 fine, 1 findings of severity error, 2 could not run.\nThrough npm, --format json wants npm’s own --silent: npm run --silent check -- --format json',
  )
  .parse();
const options = program.opts<{ content: string; format: 'text' | 'json'; today: string }>();

await exitWith(() => {
  const corpus = loadCorpus(options.content);
  const examination = examine(corpus, options.today);
  if (options.format === 'json') {
    process.stdout.write(`${JSON.stringify(checkDocument(examination), null, 2)}\n`);
  } else {
    const paint = paintFor(process.stdout);
    const findings = findingsText(corpus, examination.findings, paint);
    process.stdout.write(
      [
        findings,
        casesText(examination, paint),
        paint.dim(`${countsText(corpus.counts)}. Living is reckoned on ${examination.today}.`),
        `${examination.ok ? paint.green('✓') : paint.red('✗')} ${tally(examination.findings)}.`,
        '',
      ]
        .filter((part, i) => part !== '' || i > 2)
        .join('\n'),
    );
  }
  return examination.ok ? 0 : 1;
});
