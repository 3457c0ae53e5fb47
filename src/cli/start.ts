/** `start`: the check, then the site with live reload. With errors it serves what can be shown, and says so. */
import { Option } from 'commander';
import { CannotRun } from '../corpus/types.ts';
import { lookAt, onExamined, type Outcome } from '../dossier/integration.ts';
import { findingsText, tally } from './report/findings.ts';
import { paintFor } from './report/paint.ts';
import { settleEnvironment } from './shared/environment.ts';
import { contentOption, portOption, todayOption, verb } from './shared/options.ts';
import { projectRoot } from './shared/paths.ts';
import { exitWith, fault } from './shared/run.ts';

const options = verb(
  'npm start --',
  'Checks the content and serves the site on this computer. It follows every change of a file.',
)
  .addOption(contentOption())
  .addOption(portOption(4321))
  .addOption(new Option('--host [address]', 'let other computers of the network see it').default(false))
  .addOption(todayOption())
  .parse()
  .opts<{ content: string; port: number; host: string | boolean; today: string }>();

process.env.WHENCE_CONTENT = options.content;
process.env.WHENCE_TODAY = options.today;
settleEnvironment('development');
process.chdir(projectRoot);

await exitWith(async () => {
  const outcome = lookAt(options.content);
  if ('failure' in outcome) throw outcome.failure;
  process.stdout.write(report(outcome, false));
  onExamined((next) => process.stdout.write(report(next, true)));
  const { dev } = await import('astro');
  const server = await dev({
    root: projectRoot,
    logLevel: 'error',
    server: { port: options.port, host: options.host, open: false },
  });
  const shown = options.host === false ? 'localhost' : undefined;
  const addresses = [
    ...new Set([...server.resolvedUrls.local, ...(shown ? [] : server.resolvedUrls.network)]),
  ];
  process.stdout.write(
    `${addresses.map((address) => `The site is at ${address}`).join('\n')}\nIt follows every change. Ctrl-C ends it.\n`,
  );
  process.once('SIGINT', () => void server.stop().finally(() => process.exit(0)));
  return new Promise<never>(() => {}); // until it is interrupted
});

/** What an examination found, for the terminal. */
function report(outcome: Outcome, again: boolean): string {
  if ('failure' in outcome) {
    const why =
      outcome.failure instanceof CannotRun ? `${outcome.failure.message}\n` : fault(outcome.failure);
    return `${why}The site stays as it was.\n`;
  }
  const { corpus, findings, ok } = outcome.examination;
  const shown = outcome.kept
    ? 'The site stays as it was until that can be read.'
    : 'The site shows what can be shown; it could not be published like this.';
  const text = findings.length > 0 ? `${findingsText(corpus, findings, paintFor(process.stdout))}\n` : '';
  const sum = `${again ? 'Looked again: ' : ''}${tally(findings)}.`;
  return `${text}${sum}${ok ? '' : ` ${shown}`}\n`;
}
