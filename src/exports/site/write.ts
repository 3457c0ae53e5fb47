/**
 * The one writer of a site: every file that is published passes through here once. Links become relative, nothing
 * that names someone living goes through, and every file enters the site’s list.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { publishedImage } from '../../dossier/images.ts';
import { smallImageHref } from '../../dossier/media-paths.ts';
import type { Telling } from '../../dossier/living-look.ts';
import type { Picture } from '../../dossier/types.ts';
import type { FileBeside } from './beside.ts';
import { filesUnder, sha256 } from './files-under.ts';
import { livingScan, plainText, wordsOfPicture } from './living-scan.ts';
import { manifestName, manifestOf, manifestText, type Manifest } from './manifest.ts';
import { pageWriter } from './page-writer.ts';
import { wordsOfPath } from './page.ts';
import { demandNobody, passedFile } from './passed.ts';
import { MustNotPublish } from './problems.ts';
import type { TakePage } from './render.ts';
import { writeBehind } from './write-behind.ts';

export interface SiteParts {
  /** Makes the pages and hands each over. */
  render(take: TakePage): Promise<void>;
  /** A folder of further files of the site, such as stylesheets and fonts, there once the pages are made. */
  assets: string;
  /** Every image of records and prose; asked for once the pages are made. */
  images: () => Iterable<Picture>;
  /** Makes what stands beside the pages, whose paths it is given, such as the feed and the site map. */
  beside?: (pages: readonly string[]) => AsyncIterable<FileBeside>;
  /** The content’s `media` folder. */
  mediaFolder: string;
  /** Where made images are kept between builds. */
  imageCache: string;
  /** What must not appear, for it tells of someone withheld. */
  tellings: readonly Telling[];
  /** The path the site will be served under, `/` or `/path/`. Only the page for what isn’t there depends on it. */
  base: string;
}

/** Told now and then how far the work has come. */
export type Progress = (what: 'pages' | 'images', done: number) => void;

/**
 * Writes the finished site into `into`, an empty folder. Throws `MustNotPublish` for what the author must mend, and a
 * plain error for a page that breaks the site’s own rules, which is a fault of ours.
 */
export async function writeSite(
  parts: SiteParts,
  into: string,
  progress: Progress = () => {},
): Promise<Manifest> {
  const scan = livingScan(parts.tellings);
  const digests = new Map(await writePages(parts, into, progress));
  const disk = writeBehind();
  const files = filesUnder(into);
  const write = (path: string, content: Buffer | string): Promise<void> => {
    const bytes = typeof content === 'string' ? Buffer.from(content) : content;
    digests.set(path, sha256(bytes));
    return disk.write(files.at(path), bytes);
  };

  for (const path of filesIn(parts.assets)) {
    if (digests.has(path)) throw new Error(`The site has two files ${path}.`);
    await write(path, passedFile(path, readFileSync(join(parts.assets, path)), parts.base, scan));
  }
  const pages = [...digests.keys()].filter((path) => path.endsWith('.html')).sort();
  for await (const { path, content, says } of parts.beside?.(pages) ?? []) {
    if (digests.has(path)) throw new Error(`The site has two files ${path}.`);
    if (says !== undefined) demandNobody(scan?.(plainText(says)), path);
    await write(path, passedFile(path, Buffer.from(content), parts.base, scan));
  }
  await eachImage(parts, progress, (path, bytes) => {
    if (digests.has(path)) throw new Error(`The site has a file ${path} that an image would replace.`);
    demandNobody(scan?.(wordsOfPath(path), { ids: true }) ?? scan?.(wordsOfPicture(bytes)), path);
    return write(path, bytes);
  });
  await disk.finish();
  const manifest = manifestOf(digests);
  writeFileSync(join(into, manifestName), manifestText(manifest));
  return manifest;
}

async function writePages(
  { render, base, tellings }: SiteParts,
  into: string,
  progress: Progress,
): Promise<ReadonlyMap<string, string>> {
  const writer = pageWriter({ into, base, tellings });
  const seen = new Set<string>();
  try {
    await render((path, html) => {
      if (seen.has(path)) throw new Error(`The site has two pages ${path}.`);
      seen.add(path);
      if (seen.size % 50 === 0) progress('pages', seen.size);
      return writer.take(path, html);
    });
    return await writer.finish();
  } finally {
    await writer.stop();
  }
}

/** The files of a folder by their paths in it, in one order everywhere. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
}

/** Makes every image of the site, two at a time, and hands each over with its path. */
async function eachImage(
  parts: SiteParts,
  progress: Progress,
  take: (path: string, bytes: Buffer) => Promise<void>,
): Promise<void> {
  const wanted = new Map<string, { file: string; size: 'full' | 'small' }>();
  const taken = new Map<string, string>();
  for (const { src, file } of parts.images()) {
    const other = taken.get(src.toLowerCase());
    if (other !== undefined && other !== file)
      throw new MustNotPublish(
        `Two images would be published as one file: ${other} and ${file}. Give one of them another name.`,
      );
    taken.set(src.toLowerCase(), file);
    wanted.set(decodeURIComponent(src).slice(1), { file, size: 'full' });
    wanted.set(decodeURIComponent(smallImageHref(src)).slice(1), { file, size: 'small' });
  }
  const waiting = [...wanted];
  let done = 0;
  const worker = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const [path, { file, size }] = next;
      await take(path, await publishedImage(file, size, parts.mediaFolder, parts.imageCache));
      progress('images', ++done);
    }
  };
  await Promise.all([worker(), worker()]);
}
