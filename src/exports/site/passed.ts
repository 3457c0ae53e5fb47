/** What may be published of a page or another file: its links relative, its markup within the policy, nobody living in it. */
import { relinkCss, relinkFrom, relinkUnder, type Relink } from './links.ts';
import { plainText, type LivingScan } from './living-scan.ts';
import { preparePage, wordsOfPath } from './page.ts';
import { MustNotPublish } from './problems.ts';

const readable = /\.(?:js|mjs|json|xml|svg|txt|csv|tsv|ged|webmanifest|map|md|bib|yaml|yml|rss|atom)$/i;

/** Pages of the tool's own documentation: their invented people may share a name with anyone. */
const documentation = /^(?:examples|rules|guide)(?:\/|\.html$)/;

/**
 * A page as it may be published. Throws `MustNotPublish` where it names someone living, and a plain error where it
 * breaks the site’s own rules, which is a fault of ours.
 */
export function passedPage(path: string, made: string, base: string, look: LivingScan | undefined): string {
  const html = withoutUnseen(made);
  const scan = documentation.test(path) ? undefined : look;
  demandNobody(scan?.(wordsOfPath(path)), path);
  const page = preparePage(html, relinkOf(path, base), { readText: scan !== undefined });
  if (page.faults.length > 0)
    throw new Error(`The page ${path} has ${page.faults.join('; ')}, which its own policy forbids.`);
  if (!page.hasPolicy) throw new Error(`The page ${path} has no content security policy.`);
  demandNobody(scan?.(page.text), path);
  return page.html;
}

/**
 * A page without what HTML may not hold, controls and noncharacters, and without the two signs that turn all that
 * follows around (U+202D, U+202E): they would let a pasted text show something else than it says.
 */
function withoutUnseen(html: string): string {
  return html.replace(unseen, '');
}

const unseen = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202d\u202e\ufffe\uffff]/g;

/** Any other file as it may be published; throws as for a page. */
export function passedFile(
  path: string,
  bytes: Buffer,
  base: string,
  scan: LivingScan | undefined,
): Buffer | string {
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

/** Stops the publication of a path that names a person. */
export function demandNobody(person: string | undefined, path: string): void {
  if (person === undefined) return;
  throw new MustNotPublish(
    `The page ${path} would name someone living: the person ${person}. Nothing was written. Look for the name in the files this page is made from and say “a living relative” there; or, if they have died, give them a died date.`,
  );
}

/** The page for what isn’t there is served at any depth, so nothing on it can be relative. */
function relinkOf(path: string, base: string): Relink {
  return path === '404.html' ? relinkUnder(base) : relinkFrom(path);
}
