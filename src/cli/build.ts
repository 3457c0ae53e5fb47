/** `build`: the check, then the whole site into a folder. With errors nothing is written and the earlier site stays. */
import { existsSync, mkdirSync, rmdirSync, rmSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { InvalidArgumentError, Option } from 'commander';
import { takeLock } from '../exports/site/lock.ts';
import { mend, swapIn } from '../exports/site/swap.ts';
import { targetAt } from '../exports/site/target.ts';
import { interruptible, privateFolder, startMaking } from './shared/making.ts';
import { contentOption, todayOption, verb } from './shared/options.ts';
import { defaultOut, fromCaller, projectRoot } from './shared/paths.ts';
import { exitWith } from './shared/run.ts';

const options = verb(
  'npm run build --',
  'Checks the content and writes the whole site. With errors nothing is written and the earlier site stays.',
)
  .addOption(contentOption())
  .addOption(
    new Option('--out <dir>', 'the folder to write the site into')
      .argParser(fromCaller)
      .default(defaultOut, 'dist/ of the project'),
  )
  .addOption(
    new Option('--base <path>', 'the path the site will be served under').argParser(basePath).default('/'),
  )
  .addOption(todayOption())
  .parse()
  .opts<{ content: string; out: string; base: string; today: string }>();

await exitWith(async () => {
  const target = targetAt(options.out, options.content, projectRoot);
  const unmake = makeParents(dirname(target.folder));
  const unlock = takeLock(target.lock);
  const work = privateFolder();
  const interruption = interruptible(
    'Stopped. Nothing was written; the earlier site, if there is one, is as it was.',
  );
  let finished = false;
  try {
    mend(target);
    mkdirSync(work, { recursive: true });
    const code = await interruption.guard(
      startMaking({
        content: options.content,
        today: options.today,
        base: options.base,
        work,
        unwritten: 'No site was written; the earlier one, if there is one, is as it was.',
      }),
    );
    if (code !== 0) return code;
    const kept = swapIn(join(work, 'site'), target);
    finished = true;
    if (kept.length > 0)
      process.stdout.write(`Kept in the folder, though not of the site: ${kept.join(', ')}.\n`);
    process.stdout.write(`The site is in ${shortest(target.folder)}\n`);
    return 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
    unlock();
    unmake();
    interruption.end(finished);
  }
});

/** `/path/`, also where a slash was left out. */
function basePath(value: string): string {
  const path = `/${value}/`.replace(/\/{2,}/g, '/');
  if (!/^\/(?:[A-Za-z0-9._~-]+\/)*$/.test(path) || /\/\.{1,2}\//.test(path))
    throw new InvalidArgumentError('A base is the path of an address, such as /family/.');
  return path;
}

/** Makes the folders a site will stand in. Returns what takes those away again that are still empty. */
function makeParents(folder: string): () => void {
  const made: string[] = [];
  for (let at = folder; !existsSync(at); at = dirname(at)) made.push(at);
  mkdirSync(folder, { recursive: true });
  return () => {
    for (const at of made)
      try {
        rmdirSync(at);
      } catch {
        return; // not empty: it holds the site
      }
  };
}

function shortest(folder: string): string {
  const near = relative(process.env.INIT_CWD ?? process.cwd(), folder);
  return near === '' || near.startsWith('..') ? folder : near;
}
