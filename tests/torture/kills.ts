/** Builds killed at random moments: what stands in the folder afterwards is one whole site, or is after the next command. */
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { seeded } from '../bench/random.ts';
import { goodContent } from '../corpus/content.ts';
import { readManifest } from '../../src/exports/site/manifest.ts';

const project = resolve(import.meta.dirname, '../..');

export interface KillOrder {
  /** A folder of nobody else’s. */
  work: string;
  kills: number;
  seed: number;
  say?: (line: string) => void;
}

export interface KillCounts {
  killed: number;
  /** Builds that were done before they were killed. */
  finished: number;
  /** What stood in the folder after a kill. */
  earlier: number;
  next: number;
  /** Nothing, until the next command put the earlier site back. */
  restored: number;
  faults: string[];
}

/**
 * Builds a first site, then begins a build of changed content again and again and kills the whole of it at a random
 * moment, most of them near the end, where files are exchanged. Other files beside the site and in it, and the content,
 * must stay as they are.
 */
export async function killBuilds({ work, kills, seed, say = () => {} }: KillOrder): Promise<KillCounts> {
  const random = seeded(seed);
  const content = join(work, 'content');
  const out = join(work, 'out', 'site');
  const counts: KillCounts = { killed: 0, finished: 0, earlier: 0, next: 0, restored: 0, faults: [] };
  lay(content, goodContent);
  const began = Date.now();
  const first = spawnSync(process.execPath, command(content, out), { encoding: 'utf8', env: environment() });
  let usual = Date.now() - began;
  if (first.status !== 0)
    throw new Error(`The first site could not be made.\n${first.stdout}${first.stderr}`);
  lay(work, { 'out/notes.txt': 'somebody’s' });
  lay(out, { CNAME: 'family.example\n' });

  for (let n = 0; n < kills; n++) {
    lay(content, { 'site.yaml': `title: The Phelans ${n}\ninvented: true\n` });
    const before = digests(content);
    const earlier = readManifest(out)?.digest;
    const started = Date.now();
    const whole = await killedAfter(
      command(content, out),
      random.chance(0.7) ? usual * (0.6 + random.below(60) / 100) : random.below(usual),
    );
    if (whole) {
      counts.finished++;
      usual = Math.round((usual * 3 + Date.now() - started) / 4);
    } else counts.killed++;
    let manifest = readManifest(out);
    if (!manifest) {
      // Whatever was left, the next command of ours puts the earlier site back.
      spawnSync(process.execPath, [...command(content, out), '--today', 'no day'], { env: environment() });
      spawnSync(process.execPath, command(join(work, 'broken'), out), { env: environment() });
      manifest = readManifest(out);
      if (manifest) counts.restored++;
    } else if (manifest.digest === earlier) counts.earlier++;
    else counts.next++;
    const fault = (what: string) => {
      counts.faults.push(`kill ${n}: ${what}`);
      say(`kill ${n}: ${what}`);
    };
    if (!manifest)
      fault(
        `no site stands there: ${existsSync(dirname(out)) ? readdirSync(dirname(out)).join(', ') : 'nothing'}`,
      );
    else
      for (const file of manifest.files)
        if (digestOf(join(out, file.path)) !== file.sha256) fault(`${file.path} is not whole`);
    if (JSON.stringify(digests(content)) !== JSON.stringify(before)) fault('the content was changed');
    if (!existsSync(join(work, 'out/notes.txt'))) fault('a file beside the site is gone');
    const places = [out, `${out}.previous`];
    if (!places.some((place) => existsSync(join(place, 'CNAME'))))
      fault('a file in the folder of the site is gone');
    if ((n + 1) % 10 === 0) say(`… ${n + 1}: ${JSON.stringify({ ...counts, faults: counts.faults.length })}`);
  }
  const last = spawnSync(process.execPath, command(content, out), { encoding: 'utf8', env: environment() });
  if (last.status !== 0)
    counts.faults.push(`after all of them no site can be made: ${last.stdout}${last.stderr}`);
  for (const name of readdirSync(dirname(out)))
    if (name !== 'site' && name !== 'notes.txt') counts.faults.push(`${name} was left behind`);
  if (!existsSync(join(out, 'CNAME')))
    counts.faults.push('a file in the folder of the site did not come back');
  rmSync(work, { recursive: true, force: true });
  return counts;
}

function command(content: string, out: string): string[] {
  return [join(project, 'src/cli/build.ts'), '--content', content, '--out', out, '--today', '2026-06-01'];
}

function environment(): NodeJS.ProcessEnv {
  return { ...process.env, VITEST: undefined, NODE_ENV: undefined, NO_COLOR: '1' };
}

/** Runs a command in a process group of its own and kills the group. Returns whether it had ended by itself before. */
function killedAfter(args: string[], milliseconds: number): Promise<boolean> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { detached: true, stdio: 'ignore', env: environment() });
    const timer = setTimeout(() => {
      try {
        process.kill(-child.pid!, 'SIGKILL');
      } catch {
        // It ended in this very moment.
      }
    }, milliseconds);
    child.on('close', (code) => {
      clearTimeout(timer);
      done(code === 0);
    });
  });
}

function lay(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
}

function digestOf(file: string): string | undefined {
  return existsSync(file) ? createHash('sha256').update(readFileSync(file)).digest('hex') : undefined;
}

function digests(folder: string): [string, string | undefined][] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry): [string, string | undefined] => {
      const file = join(entry.parentPath, entry.name);
      return [file, digestOf(file)];
    })
    .sort(([a], [b]) => (a < b ? -1 : 1));
}
