/**
 * `whence.json`, the list of a site’s files at its root. It tells a site of ours from any other folder, and a file of
 * ours from one that somebody laid beside it.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const manifestName = 'whence.json';

export interface Manifest {
  madeBy: 'whence';
  version: 1;
  /** SHA-256 over the list of files: two sites with one digest are the same, byte for byte. */
  digest: string;
  files: { path: string; sha256: string }[];
}

/** The manifest of files given by their path in the site and the SHA-256 of their bytes, in hexadecimal digits. */
export function manifestOf(files: ReadonlyMap<string, string>): Manifest {
  const list = [...files]
    .map(([path, sha256]) => ({ path, sha256 }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  const digest = createHash('sha256')
    .update(list.map(({ path, sha256 }) => `${sha256}  ${path}\n`).join(''))
    .digest('hex');
  return { madeBy: 'whence', version: 1, digest: `sha256-${digest}`, files: list };
}

/** The manifest as it is written. */
export function manifestText(manifest: Manifest): string {
  return `${JSON.stringify(manifest, null, 1)}\n`;
}

/** The manifest of the site in a folder, or `undefined` when there is none of ours. */
export function readManifest(folder: string): Manifest | undefined {
  try {
    const read = JSON.parse(readFileSync(join(folder, manifestName), 'utf8')) as Partial<Manifest> | null;
    if (read?.madeBy !== 'whence' || !Array.isArray(read.files)) return undefined;
    return read.files.every((file) => typeof file?.path === 'string') ? (read as Manifest) : undefined;
  } catch {
    return undefined;
  }
}
