/**
 * The part of `build` that runs in a process of its own, so that whatever happens in it, the one that guards the
 * earlier site goes on: checks the content, prints what it found, renders the pages and writes the finished site into
 * a private folder. Stands in the project’s folder, as Astro demands.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadCorpus } from '../../corpus/load.ts';
import { buildDossier } from '../../dossier/build.ts';
import { makeAhead } from '../../dossier/ahead.ts';
import { currentDossier, provideDossier } from '../../dossier/current.ts';
import { examine } from '../../dossier/examine.ts';
import { ownKept } from '../../dossier/kept.ts';
import { likelySources } from '../../dossier/living-named.ts';
import { lookFor } from '../../dossier/living-look.ts';
import { tellingsToKeepOut } from '../../dossier/living-tellings.ts';
import { filesBeside } from '../../exports/site/beside.ts';
import { searchFiles } from '../../exports/site/search-files.ts';
import { pagePrograms } from '../../exports/site/programs.ts';
import { renderPages } from '../../exports/site/render.ts';
import { MustNotPublish, TellsOfLiving } from '../../exports/site/problems.ts';
import { writeSite } from '../../exports/site/write.ts';
import { writePortable } from '../../exports/zip/portable.ts';
import { findingsText, tally } from '../report/findings.ts';
import { paintFor } from '../report/paint.ts';
import { settleEnvironment } from './environment.ts';
import { projectRoot } from './paths.ts';
import { progressOn } from './progress.ts';
import { exitWith } from './run.ts';

export interface SiteOrder {
  content: string;
  today: string;
  base: string;
  /** A private folder; the site ends up in `site` within it. */
  work: string;
  /** Whether the site is also packed into `site.zip` within the private folder, its SHA-256 in `site.zip.sha256`. */
  portable?: boolean;
  /** The site is there already, whole and from the same inputs: only the check is wanted. */
  unchanged?: boolean;
  /** What is said, after the errors, of that which was not written because of them. */
  unwritten: string;
}

// When the process that guards the site is gone, there is nobody left to make one for.
process.on('disconnect', () => process.exit(2));
process.channel?.unref();

await exitWith(async () => {
  const { content, today, base, work, portable, unwritten, unchanged } = JSON.parse(
    process.argv[2]!,
  ) as SiteOrder;
  const progress = progressOn(process.stderr);
  settleEnvironment('production');
  const programs = unchanged ? undefined : pagePrograms(projectRoot, work);
  progress.say('Checking …');
  const corpus = loadCorpus(content);
  const kept = ownKept();
  const ahead = makeAhead(corpus, kept);
  const examination = examine(corpus, today);
  const { findings, ok, withheld } = examination;
  progress.clear();
  if (findings.length > 0)
    process.stdout.write(`${findingsText(corpus, findings, paintFor(process.stdout))}\n`);
  if (!ok) {
    ahead.stop();
    programs?.stop();
    process.stdout.write(`${tally(findings)}. ${unwritten}\n`);
    return 1;
  }

  if (!programs) {
    ahead.stop();
    process.stdout.write(`${tally(findings)}. Nothing has changed.\n`);
    return 0;
  }

  progress.say('Laying out the pages …');
  // All of this has been one long breath; only now can the guardian’s end be heard of.
  await new Promise(setImmediate);
  const assets = join(work, 'assets');
  const site = join(work, 'site');
  mkdirSync(site);
  const tellings = tellingsToKeepOut(corpus, withheld);
  const withSources = (leak: TellsOfLiving): MustNotPublish => {
    const sources = likelySources(corpus, examination.shown, withheld, lookFor(tellings), leak.hit.who);
    const places = sources.map(({ file, line }) => `${file}:${line}`).join(', ');
    return new MustNotPublish(
      places === ''
        ? `${leak.message} No file of the content has these words as they stand, so the site itself may have put them together: please report it.`
        : `${leak.message} The words may come from ${places}. Mark them there with [living]…[/living], or say “a living relative”; or, if they have died, say so in their entry.`,
    );
  };
  const manifest = await writeSite(
    {
      render: async (take) => {
        await ahead.done;
        provideDossier(buildDossier(examination, kept));
        await renderPages(await programs.ready, assets, take);
      },
      assets,
      images: () => currentDossier().pictures,
      beside: async function* (pages) {
        yield* searchFiles(currentDossier());
        yield* filesBeside(currentDossier(), pages, join(projectRoot, 'node_modules', '.whence'));
      },
      mediaFolder: join(corpus.root, 'media'),
      imageCache: join(projectRoot, 'node_modules', '.whence', 'images'),
      tellings,
      base,
    },
    site,
    (what, done) => progress.say(what === 'pages' ? `${done} pages made …` : `${done} images made …`),
  ).catch((error: unknown) => {
    throw error instanceof TellsOfLiving ? withSources(error) : error;
  });
  progress.clear();
  if (portable) {
    progress.say('Packing …');
    const zip = join(work, 'site.zip');
    writeFileSync(`${zip}.sha256`, await writePortable(zip, site, manifest, currentDossier()));
    progress.clear();
  }
  const count = manifest.files.filter((file) => file.path.endsWith('.html')).length;
  process.stdout.write(
    `${tally(findings)}. ${count === 1 ? 'One page was' : `${count} pages were`} made. Living is reckoned on ${examination.today}.\n`,
  );
  return 0;
});
