/**
 * Makes one site after another in one process: with the programs of the pages that a build keeps, every content folder
 * gets its dossier, its pages and the one writer, as in a build. Pages of the tool’s own documentation, which are the
 * same for all, are made for one folder in a hundred.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { settleEnvironment } from '../../src/cli/shared/environment.ts';
import { projectRoot } from '../../src/cli/shared/paths.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { currentDossier, provideDossier } from '../../src/dossier/current.ts';
import type { Examination } from '../../src/dossier/examine.ts';
import { ImageProblem } from '../../src/dossier/images.ts';
import { tellingsToKeepOut } from '../../src/dossier/living-tellings.ts';
import { filesBeside } from '../../src/exports/site/beside.ts';
import { MustNotPublish } from '../../src/exports/site/problems.ts';
import { pagePrograms, type Programs } from '../../src/exports/site/programs.ts';
import { renderPages } from '../../src/exports/site/render.ts';
import { searchFiles } from '../../src/exports/site/search-files.ts';
import { writeSite } from '../../src/exports/site/write.ts';
import { withheldFile } from '../hostile/every-key.ts';
import { escapesIn, saysWithheld } from '../hostile/escapes.ts';
import { smallImage } from '../hostile/images.ts';
import { changingFolder } from './folder.ts';
import { familyAsItIs, mutated, type Files } from './mutate.ts';
import { checkFolder } from './promises.ts';

export interface BuildOrder {
  seed: number;
  from: number;
  /** How many sites are to be made; folders with errors are passed over and count for nothing. */
  sites: number;
  /** Folders of files to build instead of mutated ones, by name. */
  given?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export type BuildAnswer =
  | { began: number | string }
  | { number: number | string; broken: string[]; changed: readonly string[] }
  | { built: number | string; refused: boolean }
  | { done: true };

/** Pages that say the same for every content. */
const documentation = /^(?:rules|examples|guide|style|ids)(?:\/|\.html$)/;
const order = JSON.parse(process.argv[2]!) as BuildOrder;
const image = await smallImage();
const work = changingFolder();
const content = changingFolder();
const answer = (what: BuildAnswer) => new Promise<void>((sent) => process.send!(what, () => sent()));
process.on('disconnect', () => process.exit(2));

async function run(programs: Programs): Promise<void> {
  if (order.given) {
    for (const [name, files] of Object.entries(order.given))
      await one(name, { ...familyAsItIs(image), ...files }, [], programs);
    return;
  }
  let made = 0;
  for (let number = order.from; made < order.sites; number++) {
    const { files, changed } = mutated(order.seed, number, image, true);
    if (await one(number, files, changed, programs)) made++;
  }
}

/** Checks a folder and makes its site where there are no errors. Returns whether a site was tried. */
async function one(
  number: number | string,
  files: Files,
  changed: readonly string[],
  programs: Programs,
): Promise<boolean> {
  await answer({ began: number });
  content.hold(files);
  const { examination, broken } = checkFolder(content.path);
  if (broken.length > 0) await answer({ number, broken, changed });
  if (!examination?.ok) return false;
  let refused = false;
  try {
    const told = await site(examination, programs, typeof number === 'string' || number % 100 === 0);
    const mayTell =
      !changed.includes(withheldFile) &&
      examination.living.has('living-one') &&
      examination.corpus.site.audience === 'public';
    const escaped = told.flatMap(({ path, bytes }) => [
      ...escapesIn(path, bytes),
      ...(mayTell && saysWithheld(path, bytes) ? [`${path} names the withheld person`] : []),
    ]);
    if (escaped.length > 0) await answer({ number, broken: escaped.slice(0, 12), changed });
  } catch (error) {
    refused = error instanceof MustNotPublish || error instanceof ImageProblem;
    if (!refused)
      await answer({
        number,
        broken: [`the build broke off: ${(error as Error).stack?.slice(0, 1500)}`],
        changed,
      });
  }
  await answer({ built: number, refused });
  return true;
}

async function site(examination: Examination, programs: Programs, everyPage: boolean) {
  provideDossier(buildDossier(examination));
  const assets = join(work.path, 'assets');
  const into = join(work.path, 'site');
  for (const folder of [assets, into]) {
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
  }
  const { corpus, withheld } = examination;
  await writeSite(
    {
      render: (take) => renderPages(programs, assets, take, (path) => everyPage || !documentation.test(path)),
      assets,
      images: () => currentDossier().pictures,
      beside: async function* (pages) {
        yield* searchFiles(currentDossier());
        yield* filesBeside(currentDossier(), pages, join(work.path, 'kept'));
      },
      mediaFolder: join(corpus.root, 'media'),
      imageCache: join(work.path, 'images'),
      tellings: tellingsToKeepOut(corpus, withheld),
      base: '/',
    },
    into,
  );
  return readdirSync(into, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const file = join(entry.parentPath, entry.name);
      return { path: file.slice(into.length + 1), bytes: readFileSync(file) };
    });
}

process.chdir(projectRoot);
settleEnvironment('production');
const prepared = join(projectRoot, 'node_modules', '.whence', `fuzz-${process.pid}`);
try {
  mkdirSync(prepared, { recursive: true });
  await run(await pagePrograms(projectRoot, prepared).ready);
  await answer({ done: true });
} finally {
  for (const folder of [prepared, work.path, content.path]) rmSync(folder, { recursive: true, force: true });
}
process.exit(0);
