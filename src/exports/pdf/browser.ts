/** The browser that prints, which the tests use too: one that the machine has, else the one among the packages. */
import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import type { LaunchOptions } from 'playwright-core';
import { CannotWrite } from '../site/problems.ts';

const installed = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'].map(
  (name) => `/usr/bin/${name}`,
);

/**
 * The only arguments. Those that the package recommends switch off web security and run everything in one process:
 * tests of a policy, or of pages opened from disk, would then pass whatever the pages do.
 */
const args = ['--no-sandbox', '--disable-gpu'];

/**
 * Starts a browser with the options that fit this machine: `CHROMIUM_PATH` if given, else one installed, else the one
 * that is unpacked from its package. Throws a `CannotWrite` where there is none.
 */
export async function withBrowserOptions<T>(start: (options: LaunchOptions) => Promise<T>): Promise<T> {
  const named = process.env['CHROMIUM_PATH'];
  if (named && !existsSync(named))
    throw new CannotWrite(
      `CHROMIUM_PATH names ${named}, and nothing is there. Name a Chromium, or leave it out.`,
    );
  const found = named || installed.find((path) => existsSync(path));
  if (found) return start({ executablePath: found, args });
  const folder = await unpacked();
  const executablePath = join(folder, 'chromium');
  const env = { ...process.env, FONTCONFIG_FILE: join(folder, fontList) };
  try {
    return await start({ executablePath, args, env });
  } catch (error) {
    if (!/shared librar/.test(String(error))) throw error;
    // A bare machine lacks what the browser is linked to; the package brings that too.
    const libraries = join(folder, 'al2023/lib');
    return start({ executablePath, args, env: { ...env, LD_LIBRARY_PATH: libraries } });
  }
}

function packaged(): string {
  try {
    return createRequire(import.meta.url).resolve('@sparticuz/chromium');
  } catch {
    throw new CannotWrite(noBrowser);
  }
}

/** What is said where nothing can print. */
export const noBrowser =
  'There is no browser to print with. Run npm ci in the folder of Whence, which brings one, or set CHROMIUM_PATH to a Chromium of your own.';

/** The machine’s fonts and the one of the package: without any, as on a bare machine, pages crash. */
const fontList = 'all-fonts.conf';
const fonts = `<?xml version="1.0"?>
<fontconfig>
  <dir>/usr/share/fonts</dir>
  <dir>/usr/local/share/fonts</dir>
  <dir prefix="relative">fonts</dir>
  <cachedir prefix="xdg">fontconfig</cachedir>
</fontconfig>
`;

/**
 * The folder the package’s browser is unpacked in, once for each version. It is unpacked elsewhere and then moved, so
 * that a run that is cut off, or another at the same time, leaves no half of a browser behind.
 */
async function unpacked(): Promise<string> {
  const entry = packaged();
  const home = dirname(dirname(entry));
  const { version } = JSON.parse(await readFile(join(home, 'package.json'), 'utf8')) as { version: string };
  const folder = resolve(import.meta.dirname, '../../../node_modules/.whence', `chromium-${version}`);
  if (existsSync(folder)) return folder;
  const own = `${folder}.${process.pid}`;
  await mkdir(own, { recursive: true });
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = own; // the package unpacks into the system’s temporary folder
  try {
    const { default: packed, inflate } = await import('@sparticuz/chromium');
    await packed.executablePath();
    await inflate(join(home, 'bin/al2023.tar.br'));
    await writeFile(join(own, fontList), fonts);
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
  await rename(own, folder).catch(() => rm(own, { recursive: true, force: true }));
  return folder;
}
