/**
 * The programs of the pages, as Astro bundles them, and the assets they share. They depend on the project alone, not on
 * any content, so they are made once and kept until something of the project changes.
 */
import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BundleOrder } from './bundle.ts';
import { sha256 } from './files-under.ts';
import { digestOfProject } from './inputs.ts';

/** Where the programs of the pages lie. */
export interface Programs {
  /** The folder of the programs; `entry.json` in it says where they begin. */
  pages: string;
  /** The folder of the assets: styles, fonts, and what is published as it is. */
  assets: string;
}

/** What a program needs to know that is not in it. */
export interface Entry {
  /** The file that holds the application. */
  file: string;
  /** By page, as Astro names it: its style sheets, as Astro describes them. */
  styles: [page: string, sheets: unknown[]][];
}

/**
 * Begins to find the programs of a project’s pages, or to have them made in a process of its own. `work` is a folder of
 * nobody else’s, inside the project, on the disk of `node_modules`. `stop` ends the work.
 */
export function pagePrograms(project: string, work: string): { ready: Promise<Programs>; stop(): void } {
  const digest = digestOfProject(project);
  const shelf = join(project, 'node_modules', '.whence', 'programs');
  const kept = digest === undefined ? undefined : join(shelf, digest);
  if (kept !== undefined && isWhole(kept)) return { ready: Promise.resolve(inFolder(kept)), stop: () => {} };

  const made = join(work, 'programs');
  const child = spawn(
    process.execPath,
    [
      fileURLToPath(new URL('./bundle.ts', import.meta.url)),
      JSON.stringify({ project, into: made } satisfies BundleOrder),
    ],
    { cwd: project, stdio: ['ignore', 'ignore', 'pipe', 'ipc'] },
  );
  let said = '';
  child.stderr!.setEncoding('utf8').on('data', (text: string) => (said += text));
  const ready = new Promise<Programs>((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code, signal) => {
      if (code !== 0)
        return reject(
          new Error(
            `The programs of the pages could not be made: ${said.trim() || (signal ?? `code ${code}`)}`,
          ),
        );
      resolve(inFolder(kept === undefined ? made : (keep(made, shelf, kept) ?? made)));
    });
  });
  // Whoever waits for the programs hears of it; before that, nobody need.
  ready.catch(() => {});
  return { ready, stop: () => void child.kill() };
}

function inFolder(folder: string): Programs {
  return { pages: join(folder, 'pages'), assets: join(folder, 'assets') };
}

/** The list of a folder’s files with their digests: without it, or with another, the folder counts as none. */
const listName = 'files.json';

/** Programs of an earlier state of the project may still be rendering somewhere; after a day, nobody’s are. */
const day = 86_400_000;

/** Puts what was made where the next build finds it. Returns where it lies, or nothing where it can’t be kept. */
function keep(made: string, shelf: string, kept: string): string | undefined {
  try {
    writeFileSync(join(made, listName), JSON.stringify(digestsIn(made)));
    mkdirSync(shelf, { recursive: true });
    for (const name of readdirSync(shelf)) {
      const other = join(shelf, name);
      if (other !== kept && Date.now() - statSync(other).mtimeMs > day)
        rmSync(other, { recursive: true, force: true });
    }
    // Another build may have been faster.
    if (isWhole(kept)) return kept;
    rmSync(kept, { recursive: true, force: true });
    renameSync(made, kept);
    return kept;
  } catch {
    return existsSync(made) ? undefined : kept;
  }
}

function isWhole(folder: string): boolean {
  try {
    return readFileSync(join(folder, listName), 'utf8') === JSON.stringify(digestsIn(folder));
  } catch {
    return false;
  }
}

function digestsIn(folder: string): [path: string, sha256: string][] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== listName)
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort()
    .map((path) => [path, sha256(readFileSync(join(folder, path)))]);
}
