/** `start`: the check, then the site with live reload. With errors it serves what can be shown, and says so. */
import { Option } from 'commander';
import { hasEditorFiles, writeEditorFiles } from '../corpus/editor/write.ts';
import { CannotRun } from '../corpus/types.ts';
import { lookAt, onExamined, type Outcome } from '../dossier/integration.ts';
import type { Finding } from '../model/finding.ts';
import { findingsText, tally } from './report/findings.ts';
import { liveScreen, sinceBefore } from './report/live.ts';
import { paintFor } from './report/paint.ts';
import { settleEnvironment } from './shared/environment.ts';
import { contentOption, portOption, todayOption, verb } from './shared/options.ts';
import { projectRoot } from './shared/paths.ts';
import { exitWith, fault } from './shared/run.ts';

const options = verb(
  'npm start --',
  'Checks the content and serves the site on this computer. It follows every change of a file, and while there are errors says which on every page.',
)
  .addOption(contentOption())
  .addOption(portOption(4321))
  .addOption(new Option('--host [address]', 'let other computers of the network see it').default(false))
  .addOption(todayOption())
  .parse()
  .opts<{ content: string; port: number; host: string | boolean; today: string }>();

process.env.WHENCE_CONTENT = options.content;
process.env.WHENCE_TODAY = options.today;
if (options.host === false) delete process.env.WHENCE_SHARED;
else process.env.WHENCE_SHARED = 'yes';
settleEnvironment('development');
process.chdir(projectRoot);

await exitWith(async () => {
  const outcome = lookAt(options.content);
  if ('failure' in outcome) throw outcome.failure;
  const tell = process.stdout.isTTY ? onScreen() : inLog();
  const follow = (next: Outcome) => {
    tell(next);
    freshen(next);
  };
  follow(outcome);
  onExamined(follow);
  const { dev } = await import('astro');
  const server = await dev({
    root: projectRoot,
    logLevel: 'error',
    server: { port: options.port, host: options.host, open: false },
  });
  const shown = options.host === false ? 'localhost' : undefined;
  tell([...new Set([...server.resolvedUrls.local, ...(shown ? [] : server.resolvedUrls.network)])]);
  process.once('SIGINT', () => void server.stop().finally(() => process.exit(0)));
  return new Promise<never>(() => {}); // until it is interrupted
});

/** What completes the author’s typing knows new ids at once, where it was asked for by `npm run schemas`. */
function freshen(outcome: Outcome): void {
  if ('failure' in outcome || !hasEditorFiles(options.content)) return;
  try {
    writeEditorFiles(outcome.examination.corpus);
  } catch {
    // In a folder that can’t be written to, completion grows old; the site goes on.
  }
}

/** Takes what an examination found, and at last the addresses of the site. */
type Tell = (news: Outcome | string[]) => void;

/** One screen, drawn anew on every look and when the terminal changes its size. */
function onScreen(): Tell {
  let addresses: string[] = [];
  let latest: Outcome | undefined;
  let at = '';
  const draw = () => {
    if (!latest) return;
    const nothing = { corpus: { source: () => '' }, findings: [] };
    const { corpus, findings } = 'failure' in latest ? nothing : latest.examination;
    const rows = process.stdout.rows || 24;
    const screen = liveScreen(
      { corpus, findings, standing: standing(latest), addresses, at, rows },
      paintFor(process.stdout),
    );
    process.stdout.write(`\x1b[2J\x1b[H${screen}\n`);
  };
  process.stdout.on('resize', draw);
  return (news) => {
    if (Array.isArray(news)) addresses = news;
    else {
      latest = news;
      at = new Date().toTimeString().slice(0, 8);
    }
    draw();
  };
}

/** A log: all that was found first, afterwards what is new. */
function inLog(): Tell {
  let before: readonly Finding[] | undefined;
  return (news) => {
    if (Array.isArray(news)) {
      const where = news.map((address) => `The site is at ${address}`).join('\n');
      process.stdout.write(`${where}\nIt follows every change. Ctrl-C ends it.\n`);
      return;
    }
    if ('failure' in news) {
      process.stdout.write(`${standing(news)}\n`);
      return;
    }
    const { corpus, findings } = news.examination;
    const { added, gone } = sinceBefore(before ?? [], findings);
    const text = added.length > 0 ? `${findingsText(corpus, added, paintFor(process.stdout))}\n` : '';
    const mended = gone > 0 ? ` (${gone} gone)` : '';
    process.stdout.write(
      `${text}${before ? 'Looked again: ' : ''}${tally(findings)}${mended}.${standing(news).replace(/^(?=.)/, ' ')}\n`,
    );
    before = findings;
  };
}

/** How the site stands after a look. */
function standing(outcome: Outcome): string {
  if ('failure' in outcome) {
    const why =
      outcome.failure instanceof CannotRun ? outcome.failure.message : fault(outcome.failure).trim();
    return `${why}\nThe site stays as it was.`;
  }
  if (outcome.examination.ok) return '';
  return outcome.kept
    ? 'The site stays as it was until that can be read.'
    : 'The site shows what can be shown; it could not be published like this.';
}
