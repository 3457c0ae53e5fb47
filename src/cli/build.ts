/** `build`: the check, then the whole site into a folder. With errors nothing is written and the earlier site stays. */
import { existsSync, mkdirSync, readFileSync, rmdirSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { InvalidArgumentError, Option } from 'commander';
import { digestOfInputs, rememberMade, stillStands } from '../exports/site/inputs.ts';
import { takeLock } from '../exports/site/lock.ts';
import { mend, swapIn } from '../exports/site/swap.ts';
import { targetAt } from '../exports/site/target.ts';
import { clearZip, placeZip, stageZip, zipPlace } from '../exports/zip/place.ts';
import { interruptible, privateFolder, startMaking } from './shared/making.ts';
import { contentOption, todayOption, verb } from './shared/options.ts';
import { asCalled, defaultOut, fromCaller, projectRoot } from './shared/paths.ts';
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
  .addOption(
    new Option(
      '--portable [file]',
      'also pack the site into a zip that opens from any disk, with its checksum beside it; without a name, beside the folder',
    ).argParser(zipName),
  )
  .addOption(todayOption())
  .parse()
  .opts<{ content: string; out: string; base: string; portable?: string | true; today: string }>();

/** Where the project remembers what sites were made from. */
const memory = join(projectRoot, 'node_modules', '.whence', 'made');

await exitWith(async () => {
  const target = targetAt(options.out, options.content, projectRoot);
  const zip =
    options.portable === undefined
      ? undefined
      : zipPlace(
          options.portable === true ? `${target.folder}.zip` : options.portable,
          target.folder,
          options.content,
          projectRoot,
        );
  const unmake = [target.folder, ...(zip ? [zip.file] : [])].map((path) => makeParents(dirname(path)));
  const unlock = locks([target.lock, ...(zip ? [zip.lock] : [])]);
  const work = privateFolder();
  const interruption = interruptible(
    'Stopped. Nothing was written; the earlier site, if there is one, is as it was.',
  );
  let finished = false;
  try {
    mend(target);
    if (zip) clearZip(zip);
    mkdirSync(work, { recursive: true });
    const inputs = digestOfInputs(options.content, projectRoot, [options.today, options.base]);
    const unchanged = !zip && stillStands(memory, target.folder, inputs);
    const code = await interruption.guard(
      startMaking({
        content: options.content,
        today: options.today,
        base: options.base,
        work,
        portable: zip !== undefined,
        unchanged,
        unwritten: 'No site was written; the earlier one, if there is one, is as it was.',
      }),
    );
    if (code !== 0) return code;
    if (unchanged) {
      finished = true;
      process.stdout.write(
        `The site in ${shortest(target.folder)} is as it was: whole, and made from just this.\n`,
      );
      return 0;
    }
    const packed = join(work, 'site.zip');
    const sum = zip && readFileSync(`${packed}.sha256`, 'utf8');
    if (zip) stageZip(packed, zip);
    const kept = swapIn(join(work, 'site'), target);
    if (zip) placeZip(zip, sum!);
    rememberMade(memory, target.folder, inputs);
    finished = true;
    if (kept.length > 0)
      process.stdout.write(`Kept in the folder, though not of the site: ${kept.join(', ')}.\n`);
    process.stdout.write(`The site is in ${shortest(target.folder)}\n`);
    if (zip)
      process.stdout.write(
        `The zip is ${shortest(zip.file)} (${megabytes(zip.file)} MB), its checksum ${shortest(zip.sum)}\n`,
      );
    return 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
    if (zip) clearZip(zip);
    unlock();
    for (const take of unmake) take();
    interruption.end(finished);
  }
});

/** Takes all of the locks or none. Returns what gives them back. */
function locks(files: readonly string[]): () => void {
  const taken: (() => void)[] = [];
  const giveBack = () => taken.forEach((unlock) => unlock());
  try {
    for (const file of files) taken.push(takeLock(file));
  } catch (error) {
    giveBack();
    throw error;
  }
  return giveBack;
}

/** The name of a zip, seen from where the command was called. */
function zipName(value: string): string {
  if (!/\.zip$/i.test(value)) throw new InvalidArgumentError('The zip is a file whose name ends in .zip.');
  return fromCaller(value);
}

function megabytes(file: string): string {
  return (statSync(file).size / 1e6).toFixed(1);
}

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
  const near = asCalled(folder);
  return near === '.' || near.startsWith('..') ? folder : near;
}
