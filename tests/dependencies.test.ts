/** What the tool stands on: each package justified, under a licence that lets it be passed on, from the registry alone. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..');
const read = (file: string) => readFileSync(join(root, file), 'utf8');
const own = JSON.parse(read('package.json')) as {
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};
interface Locked {
  version?: string;
  resolved?: string;
  integrity?: string;
  license?: string;
  dev?: boolean;
  devOptional?: boolean;
  optional?: boolean;
  link?: boolean;
}
const { packages } = JSON.parse(read('package-lock.json')) as { packages: Record<string, Locked> };
const installed = Object.entries(packages).filter(([path]) => path !== '');

/** SPDX identifiers (spdx.org/licenses) of licences that ask no more of a site than to name who wrote the code. */
const allowed = new Set([
  'MIT',
  'MIT-0',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'CC-BY-4.0',
  'Python-2.0',
  'PSF-2.0',
  'Unlicense',
  'OFL-1.1',
  'Zlib',
]);
/** Packages under other licences, each with the reason why it may be used. */
const exceptions: Readonly<Record<string, RegExp>> = {
  // The processor itself, used as it is and named in DEVELOPERS.md: CPAL asks for that, and for its own changes back.
  citeproc: /^CPAL-1\.0 OR AGPL-1\.0$/,
  // The library under sharp, linked to and replaceable, as the LGPL asks.
  '@img/sharp-': /LGPL-3\.0-or-later/,
  // Styles of the pages are made smaller with it while building; files of its own may not be changed without saying so.
  lightningcss: /^MPL-2\.0$/,
};

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
}

/** Whether an expression of SPDX is met: each of an AND, any of an OR. */
function isAllowed(licence: string): boolean {
  const plain = licence.replaceAll(/[()]/g, '');
  return plain.split(' OR ').some((choice) => choice.split(' AND ').every((one) => allowed.has(one)));
}

test('every package that a site is made with is under a licence on the list', () => {
  const others = installed
    .filter(([, { dev }]) => !dev)
    .map(([path, locked]) => ({
      name: nameOf(path),
      licence: locked.license ?? licenceOf(path),
    }))
    .filter(({ licence }) => !isAllowed(licence))
    .filter(
      ({ name, licence }) =>
        !Object.entries(exceptions).some(([start, form]) => name.startsWith(start) && form.test(licence)),
    );
  expect(others).toEqual([]);
});

function licenceOf(path: string): string {
  try {
    const { license } = JSON.parse(read(`${path}/package.json`)) as { license?: string | { type: string } };
    return typeof license === 'object' ? license.type : (license ?? 'none');
  } catch {
    return 'not installed';
  }
}

test('every package is held by the digest of its bytes, and comes from the registry if the file says where from', () => {
  for (const [path, { resolved, integrity, link, version }] of installed) {
    expect([path, link]).toEqual([path, undefined]);
    expect([path, /^\d+\.\d+\.\d+/.test(version ?? '')]).toEqual([path, true]);
    expect([path, /^sha512-[A-Za-z0-9+/]{86}==/.test(integrity ?? '')]).toEqual([path, true]);
    if (resolved !== undefined) expect([path, new URL(resolved).protocol]).toEqual([path, 'https:']);
    expect([path, /^(?:git|file|http:)/.test(resolved ?? '')]).toEqual([path, false]);
  }
});

test('versions are exact, so that two machines make one site', () => {
  for (const [name, version] of Object.entries({ ...own.dependencies, ...own.devDependencies }))
    expect([name, /^\d+\.\d+\.\d+$/.test(version)]).toEqual([name, true]);
});

test('every package that a site is made with is justified in DEVELOPERS.md', () => {
  const table = /\n## Dependencies\n([^]*)/.exec(read('DEVELOPERS.md'))![1]!;
  // The parts that Markdown is read with are named together.
  const together = /^(?:mdast-|micromark-|hast-util-|@fontsource-variable\/)/;
  const missing = Object.keys(own.dependencies).filter(
    (name) =>
      !together.test(name) && !new RegExp(`[| ,]${name.replaceAll(/[/.]/g, '\\$&')}[ ,|]`).test(table),
  );
  expect(missing).toEqual([]);
});
