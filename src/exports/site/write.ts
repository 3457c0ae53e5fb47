/**
 * The one writer of a site: every file that is published passes through here once. Links become relative, nothing
 * that names someone living goes through, and every file enters the site’s list.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { publishedImage } from '../../dossier/images.ts';
import { smallImageHref } from '../../dossier/media-paths.ts';
import type { MediaView } from '../../dossier/types.ts';
import { relinkCss, relinkFrom, relinkUnder, type Relink } from './links.ts';
import { livingScan, plainText, type LivingScan } from './living-scan.ts';
import { manifestName, manifestOf, manifestText, type Manifest } from './manifest.ts';
import { preparePage, wordsOfPath } from './page.ts';
import { MustNotPublish } from './problems.ts';
import type { TakePage } from './render.ts';
import { writeBehind } from './write-behind.ts';

export interface SiteParts {
  /** Makes the pages and hands each over. */
  render(take: TakePage): Promise<void>;
  /** A folder of further files of the site, such as stylesheets and fonts, there once the pages are made. */
  assets: string;
  /** Every image of every record shown. */
  images: Iterable<MediaView>;
  /** The content’s `media` folder. */
  mediaFolder: string;
  /** Where made images are kept between builds. */
  imageCache: string;
  /** Names that must not appear: folded name → person id. */
  names: ReadonlyMap<string, string>;
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
  const scan = livingScan(parts.names);
  const digests = new Map<string, string>();
  const folders = new Set<string>();
  const disk = writeBehind();
  const write = (path: string, content: Buffer | string): Promise<void> => {
    const bytes = typeof content === 'string' ? Buffer.from(content) : content;
    const file = join(into, path);
    const folder = dirname(file);
    if (!folders.has(folder)) {
      mkdirSync(folder, { recursive: true });
      folders.add(folder);
    }
    digests.set(path, createHash('sha256').update(bytes).digest('hex'));
    return disk.write(file, bytes);
  };

  let pages = 0;
  await parts.render((path, html) => {
    if (++pages % 50 === 0) progress('pages', pages);
    return write(path, passedPage(path, html, parts.base, scan));
  });
  for (const path of filesIn(parts.assets)) {
    if (digests.has(path)) throw new Error(`The site has two files ${path}.`);
    await write(path, passed(path, readFileSync(join(parts.assets, path)), parts.base, scan));
  }
  await eachImage(parts, progress, (path, bytes) => {
    if (digests.has(path)) throw new Error(`The site has a file ${path} that an image would replace.`);
    demandNobody(scan?.(wordsOfPath(path)), path);
    return write(path, bytes);
  });
  await disk.finish();
  const manifest = manifestOf(digests);
  writeFileSync(join(into, manifestName), manifestText(manifest));
  return manifest;
}

const readable = /\.(?:js|mjs|json|xml|svg|txt|csv|tsv|ged|webmanifest|map|md|bib|yaml|yml|rss|atom)$/i;

/** Pages of the tool's own documentation: their invented people may share a name with anyone. */
const documentation = /^(?:examples|rules|guide)(?:\/|\.html$)/;

/** A page as it may be published. */
function passedPage(path: string, html: string, base: string, look: LivingScan | undefined): string {
  const scan = documentation.test(path) ? undefined : look;
  demandNobody(scan?.(wordsOfPath(path)), path);
  const page = preparePage(html, relinkOf(path, base), { readText: scan !== undefined });
  if (page.faults.length > 0)
    throw new Error(`The page ${path} has ${page.faults.join('; ')}, which its own policy forbids.`);
  if (!page.hasPolicy) throw new Error(`The page ${path} has no content security policy.`);
  demandNobody(scan?.(page.text), path);
  return page.html;
}

/** Any other file as it may be published. */
function passed(path: string, bytes: Buffer, base: string, scan: LivingScan | undefined): Buffer | string {
  if (path.endsWith('.html')) return passedPage(path, bytes.toString('utf8'), base, scan);
  demandNobody(scan?.(wordsOfPath(path)), path);
  if (path.endsWith('.css')) {
    const css = relinkCss(bytes.toString('utf8'), relinkOf(path, base));
    demandNobody(scan?.(plainText(css)), path);
    return css;
  }
  if (scan && readable.test(path)) demandNobody(scan(plainText(bytes.toString('utf8'))), path);
  return bytes;
}

/** The page for what isn’t there is served at any depth, so nothing on it can be relative. */
function relinkOf(path: string, base: string): Relink {
  return path === '404.html' ? relinkUnder(base) : relinkFrom(path);
}

function demandNobody(person: string | undefined, path: string): void {
  if (person === undefined) return;
  throw new MustNotPublish(
    `The page ${path} would name someone living: the person ${person}. Nothing was written. Look for the name in the files this page is made from and say “a living relative” there; or, if they have died, give them a died date.`,
  );
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
  for (const { src, file } of parts.images) {
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
