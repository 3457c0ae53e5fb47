/**
 * Whether a site would come out as it is: everything it is made from is digested before it is made, and the digest is
 * kept with that of the site. It is kept in the project, never in the site: nobody who has the site can guess from it
 * what was withheld.
 */
import { createHash, type Hash } from 'node:crypto';
import { lstatSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { keepFile } from '../../dossier/kept-file.ts';
import { sha256 } from './files-under.ts';
import { readManifest } from './manifest.ts';

/** What the project itself brings to a site. */
const programs = [
  'src',
  'components',
  'public',
  'astro.config.mjs',
  'tsconfig.json',
  'package.json',
  'package-lock.json',
];

/**
 * SHA-256 over every file of the content and of the programs, and over whatever else decides what comes out: `options`
 * such as the day and the base. `undefined` where something can’t be read.
 */
export function digestOfInputs(
  content: string,
  project: string,
  options: readonly string[],
): string | undefined {
  const hash = createHash('sha256').update(JSON.stringify([process.version, ...options]));
  try {
    addFolder(hash, content);
    for (const name of programs) addPath(hash, project, name);
    return hash.digest('hex');
  } catch {
    return undefined;
  }
}

/** SHA-256 over all that the project itself brings to a site, and where it lies. `undefined` where something can’t be read. */
export function digestOfProject(project: string): string | undefined {
  const hash = createHash('sha256').update(JSON.stringify([process.version, project]));
  try {
    for (const name of programs) addPath(hash, project, name);
    return hash.digest('hex');
  } catch {
    return undefined;
  }
}

/** A content folder: of a link that leads out of it, and of what is no ordinary file, no more than that it is there. */
function addFolder(hash: Hash, folder: string): void {
  const home = realpathSync(folder);
  for (const entry of readdirSync(folder).sort())
    if (!entry.startsWith('.')) addPath(hash, folder, entry, home);
}

/** A file, or what is in a folder. With a `home`, links to folders are not followed, nor any that lead out of it. */
function addPath(hash: Hash, folder: string, path: string, home?: string): void {
  const full = join(folder, path);
  if (home !== undefined && lstatSync(full).isSymbolicLink()) {
    const real = realpathOr(full);
    const isInside = real?.startsWith(home + sep) && statSync(real).isFile();
    if (!isInside) {
      hash.update(`\0${path}\0${real ?? ''}\0`);
      return;
    }
  }
  const found = statSync(full);
  if (found.isDirectory()) {
    for (const entry of readdirSync(full).sort())
      if (!entry.startsWith('.')) addPath(hash, folder, `${path}/${entry}`, home);
    return;
  }
  const bytes = found.isFile() ? readFileSync(full) : Buffer.from('no file');
  hash.update(`\0${path}\0${bytes.length}\0`).update(bytes);
}

function realpathOr(path: string): string | undefined {
  try {
    return realpathSync(path);
  } catch {
    return undefined;
  }
}

interface Made {
  inputs: string;
  site: string;
}

/** Remembers in `memory` what the site in a folder was made from. Where nothing can be kept, the next build makes it anew. */
export function rememberMade(memory: string, folder: string, inputs: string | undefined): void {
  const site = readManifest(folder)?.digest;
  if (inputs === undefined || site === undefined) return;
  keepFile(fileOf(memory, folder), JSON.stringify({ inputs, site } satisfies Made));
}

/** Whether the site in a folder was made from just these inputs and is whole: every file of its list, byte for byte. */
export function stillStands(memory: string, folder: string, inputs: string | undefined): boolean {
  if (inputs === undefined) return false;
  try {
    const made = JSON.parse(readFileSync(fileOf(memory, folder), 'utf8')) as Made;
    const manifest = readManifest(folder);
    if (made.inputs !== inputs || manifest?.digest !== made.site) return false;
    return manifest.files.every((file) => sha256(readFileSync(join(folder, file.path))) === file.sha256);
  } catch {
    return false;
  }
}

function fileOf(memory: string, folder: string): string {
  return join(memory, `${sha256(Buffer.from(folder))}.json`);
}
