/**
 * Once for all browser tests: builds the demonstration into a temporary folder, serves it under a path, and starts one
 * browser. `SITE=DIR` takes a site that is there already, built with `--base /some/path/`.
 */
import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import type { TestProject } from 'vitest/node';
import { startBrowser } from './support/chromium.ts';
import { base, serve } from './support/server.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The folder of the built demonstration. */
    site: string;
    /** The address it is served at, with a slash at its end. */
    served: string;
    /** Where the browser takes connections. */
    browser: string;
  }
}

const project = resolve(import.meta.dirname, '../..');

export default async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  const work = await mkdtemp(join(tmpdir(), 'whence-browser-'));
  const site = process.env['SITE'] ? resolve(process.env['SITE']) : join(work, 'site');
  const [browser] = await Promise.all([startBrowser(), process.env['SITE'] ? undefined : build(site)]);
  const server = await serve(site);
  provide('site', site);
  provide('served', server.address);
  provide('browser', browser.wsEndpoint());
  return async () => {
    await Promise.all([browser.close(), server.close()]);
    await rm(work, { recursive: true, force: true });
  };
}

async function build(out: string): Promise<void> {
  const program = join(project, 'src/cli/build.ts');
  const args = ['--content', join(project, 'content'), '--out', out, '--base', base, '--today', '2026-06-01'];
  // Vitest’s own variables would put Astro into a mode of its own.
  const env = { ...process.env, VITEST: undefined, NODE_ENV: undefined, NO_COLOR: '1' };
  await promisify(execFile)(process.execPath, [program, ...args], { env }).catch((error: unknown) => {
    const { stdout = '', stderr = '' } = error as { stdout?: string; stderr?: string };
    throw new Error(`The demonstration could not be built.\n${stdout}${stderr}`);
  });
}
