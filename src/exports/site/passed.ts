/** What may be published of a page or another file: its links relative, its markup within the policy, nobody living in it. */
import { relinkCss, relinkFrom, relinkUnder, type Relink } from './links.ts';
import type { Hit } from '../../dossier/living-look.ts';
import { plainText, wordsOfPicture, type LivingScan } from './living-scan.ts';
import { preparePage, wordsOfPath } from './page.ts';
import { plainPage } from './plain-page.ts';
import { TellsOfLiving } from './problems.ts';

const readable =
  /\.(?:js|mjs|json|jsonld|xml|svg|txt|csv|tsv|ged|webmanifest|map|md|bib|yaml|yml|rss|atom)$/i;

const picture = /\.(?:jpe?g|png|webp)$/i;

/** Pages of the tool's own documentation: their invented people may share a name with anyone. */
const documentation = /^(?:examples|rules|guide)(?:\/|\.html$)/;

/**
 * A page as it may be published. Throws `TellsOfLiving` where it names someone living, and a plain error where it
 * breaks the site’s own rules, which is a fault of ours.
 */
export function passedPage(path: string, made: string, base: string, look: LivingScan | undefined): string {
  const html = withoutUnseen(made);
  const scan = documentation.test(path) ? undefined : look;
  demandNobody(scan?.(wordsOfPath(path), { ids: true }), path);
  const page = preparePage(html, relinkOf(path, base), { readText: scan !== undefined });
  if (page.faults.length > 0)
    throw new Error(`The page ${path} has ${page.faults.join('; ')}, which its own policy forbids.`);
  if (!page.hasPolicy) throw new Error(`The page ${path} has no content security policy.`);
  demandNobody(scan?.(page.text), path);
  return page.html;
}

/**
 * The same for one page after another, as bytes. A page in which nobody has to be looked for, written as Astro writes
 * and without anything to object to, goes the short way.
 */
export function pagesPassed(
  base: string,
  look: LivingScan | undefined,
): (path: string, html: Buffer) => Buffer | string {
  let folder: string | undefined;
  let known = new Map<string, string>();
  return (path, html) => {
    if ((look !== undefined && !documentation.test(path)) || unseenBytes.test(html.toString('latin1')))
      return passedPage(path, html.toString(), base, look);
    // What a link becomes depends on the folder of its page; the page for what isn’t there has its own way.
    const here = path === '404.html' ? path : path.slice(0, path.lastIndexOf('/') + 1);
    if (here !== folder) {
      folder = here;
      known = new Map();
    }
    return (
      plainPage(html, relinkOf(path, base), known, path) ?? passedPage(path, html.toString(), base, look)
    );
  };
}

/**
 * A page without what HTML may not hold, controls and noncharacters, and without the two signs that turn all that
 * follows around (U+202D, U+202E): they would let a pasted text show something else than it says.
 */
function withoutUnseen(html: string): string {
  return html.replace(unseen, '');
}

const unseen = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202d\u202e\ufffe\uffff]/g;

/** The same signs as the bytes of UTF-8, each byte read as a character. */
const unseenBytes =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|\u00c2[\u0080-\u009f]|\u00e2\u0080[\u00ad\u00ae]|\u00ef\u00bf[\u00be\u00bf]/;

/** Any other file as it may be published; throws as for a page. */
export function passedFile(
  path: string,
  bytes: Buffer,
  base: string,
  scan: LivingScan | undefined,
): Buffer | string {
  if (path.endsWith('.html')) return passedPage(path, bytes.toString('utf8'), base, scan);
  demandNobody(scan?.(wordsOfPath(path), { ids: true }), path);
  if (path.endsWith('.css')) {
    const css = relinkCss(bytes.toString('utf8'), relinkOf(path, base));
    demandNobody(scan?.(plainText(css)), path);
    return css;
  }
  if (scan && readable.test(path)) demandNobody(scan(plainText(bytes.toString('utf8'))), path);
  if (scan && picture.test(path)) demandNobody(scan(wordsOfPicture(bytes)), path);
  return bytes;
}

/** Stops the publication of a path that tells of someone withheld. */
export function demandNobody(hit: Hit | undefined, path: string): void {
  if (hit !== undefined) throw new TellsOfLiving(path, hit);
}

/** The page for what isn’t there is served at any depth, so nothing on it can be relative. */
function relinkOf(path: string, base: string): Relink {
  return path === '404.html' ? relinkUnder(base) : relinkFrom(path);
}
