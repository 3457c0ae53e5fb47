/**
 * Makes one site after another in one process: Astro prepares the programs of the pages once, then every content folder
 * gets its dossier, its pages and the one writer, as in a build. Pages of the tool’s own documentation, which are the
 * same for all, are made for one folder in a hundred.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { build, type AstroPrerenderer } from 'astro';
import { settleEnvironment } from '../../src/cli/shared/environment.ts';
import { projectRoot } from '../../src/cli/shared/paths.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { currentDossier, promiseDossier, provideDossier } from '../../src/dossier/current.ts';
import type { Examination } from '../../src/dossier/examine.ts';
import { ImageProblem } from '../../src/dossier/images.ts';
import { namesToKeepOut } from '../../src/dossier/living-named.ts';
import { filesBeside } from '../../src/exports/site/beside.ts';
import { MustNotPublish } from '../../src/exports/site/problems.ts';
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
const documentation = /^\/(?:rules|examples|guide|style|ids|threats)(?:\/|$)/;
const order = JSON.parse(process.argv[2]!) as BuildOrder;
const image = await smallImage();
const work = changingFolder();
const content = changingFolder();
const answer = (what: BuildAnswer) => new Promise<void>((sent) => process.send!(what, () => sent()));
process.on('disconnect', () => process.exit(2));

type App = { routeCache: { clearAll(): void } };

async function run(own: AstroPrerenderer & { app?: App }): Promise<void> {
  if (order.given) {
    for (const [name, files] of Object.entries(order.given))
      await one(name, { ...familyAsItIs(image), ...files }, [], own);
    return;
  }
  let made = 0;
  for (let number = order.from; made < order.sites; number++) {
    const { files, changed } = mutated(order.seed, number, image, true);
    if (await one(number, files, changed, own)) made++;
  }
}

/** Checks a folder and makes its site where there are no errors. Returns whether a site was tried. */
async function one(
  number: number | string,
  files: Files,
  changed: readonly string[],
  own: AstroPrerenderer & { app?: App },
): Promise<boolean> {
  await answer({ began: number });
  content.hold(files);
  const { examination, broken } = checkFolder(content.path);
  if (broken.length > 0) await answer({ number, broken, changed });
  if (!examination?.ok) return false;
  let refused = false;
  try {
    const told = await site(examination, own, typeof number === 'string' || number % 100 === 0);
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

async function site(examination: Examination, own: AstroPrerenderer & { app?: App }, everyPage: boolean) {
  provideDossier(buildDossier(examination));
  own.app!.routeCache.clearAll();
  const assets = join(work.path, 'assets');
  const into = join(work.path, 'site');
  for (const folder of [assets, into]) {
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
  }
  const { corpus, living } = examination;
  await writeSite(
    {
      async render(take) {
        for (const { pathname, route } of await own.getStaticPaths()) {
          if (!everyPage && documentation.test(pathname)) continue;
          const url = `http://localhost${encodeURI(pathname)}`;
          const rendered = await own.render(new Request(url), { routeData: route });
          const response = 'response' in rendered ? rendered.response : rendered;
          const text = await response.text();
          if (response.status >= 400 && pathname !== '/404')
            throw new Error(`${pathname} answers ${response.status}`);
          if (route.type === 'page') await take(pageFile(pathname), text);
          else write(join(assets, decodeURIComponent(pathname)), text);
        }
      },
      assets,
      images: () => currentDossier().pictures,
      beside: async function* (pages) {
        yield* searchFiles(currentDossier());
        yield* filesBeside(currentDossier(), pages, join(work.path, 'kept'));
      },
      mediaFolder: join(corpus.root, 'media'),
      imageCache: join(work.path, 'images'),
      names: namesToKeepOut(corpus, corpus.site.audience === 'family' ? new Set() : living),
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

function pageFile(pathname: string): string {
  const path = decodeURIComponent(pathname).replace(/^\//, '');
  return path === '' ? 'index.html' : `${path}.html`;
}

function write(file: string, text: string): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

process.chdir(projectRoot);
promiseDossier();
settleEnvironment('production');
const prepared = join(projectRoot, 'node_modules', '.whence', `fuzz-${process.pid}`);
try {
  await build({
    root: projectRoot,
    outDir: prepared,
    logLevel: 'silent',
    integrations: [
      {
        name: 'whence-many',
        hooks: {
          'astro:build:start': ({ setPrerenderer }) =>
            setPrerenderer((own) => ({
              ...own,
              async getStaticPaths() {
                await run(own);
                return [];
              },
            })),
        },
      },
    ],
  });
  await answer({ done: true });
} finally {
  for (const folder of [prepared, work.path, content.path]) rmSync(folder, { recursive: true, force: true });
}
process.exit(0);
