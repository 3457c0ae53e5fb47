/**
 * The whole site in one zip, for whoever gets it by mail: a folder named as the site, with a page to begin at, the
 * site in a folder beside it, and a checksum of every file.
 */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import type { Dossier } from '../../dossier/types.ts';
import { manifestName, manifestText, type Manifest } from '../site/manifest.ts';
import { startPage } from './start-page.ts';
import { writeZip, type ZipEntry } from './zip.ts';

/** In the format of `sha256sum`, so that `sha256sum -c` reads it. */
export const sumsName = 'SHA256SUMS.txt';

/** Every zip of ours ends in these words and the digest of its site. */
const mark = 'A site made by Whence, sha256-';

/** How the last bytes of a zip of ours read. */
export const zipEnding = new RegExp(`${mark}[0-9a-f]{64}$`);

/** Writes the zip of the finished site in `folder` into `file`. Returns its SHA-256. */
export async function writePortable(
  file: string,
  folder: string,
  manifest: Manifest,
  dossier: Dossier,
): Promise<string> {
  const { start, folder: inner } = dossier.wording.publishing;
  const style = manifest.files.find(({ path }) => /^assets\/[^/]+\.css$/.test(path))?.path;
  const page = Buffer.from(startPage(dossier, { folder: inner, style, sums: sumsName }));
  const files = [
    { path: `${start}.html`, sha256: digest(page), from: page },
    {
      path: `${inner}/${manifestName}`,
      sha256: digest(manifestText(manifest)),
      from: join(folder, manifestName),
    },
    ...manifest.files.map(({ path, sha256 }) => ({
      path: `${inner}/${path}`,
      sha256,
      from: join(folder, path),
    })),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
  const sums = files.map(({ path, sha256 }) => sumLine(sha256, path)).join('');
  const top = folderName(dossier.site.title);
  const entries: ZipEntry[] = [{ path: sumsName, from: Buffer.from(sums) }, ...files].map(
    ({ path, from }) => ({ path: `${top}/${path}`, from }),
  );
  return writeZip(file, entries, dossier.today, mark + manifest.digest.slice('sha256-'.length));
}

/** One line of a list of checksums; a name with a line end or a backslash is written as `sha256sum` writes it. */
export function sumLine(sha256: string, path: string): string {
  if (!/[\\\n\r]/.test(path)) return `${sha256}  ${path}\n`;
  const written = path.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('\r', '\\r');
  return `\\${sha256}  ${written}\n`;
}

/** A title as the name of a folder that every system allows. */
export function folderName(title: string): string {
  const name = title
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Surrogate}]/gu, '')
    .replace(/[<>:"/\\|?*]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const short = [...name]
    .slice(0, 60)
    .join('')
    .replace(/^[. ]+|(?<![. ])[. ]+$/g, '');
  return short === '' || /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i.test(short)
    ? `Site ${short}`.trim()
    : short;
}

function digest(content: Buffer | string): string {
  return createHash('sha256').update(content).digest('hex');
}
