import { spawn, type ChildProcess } from 'node:child_process';
import http from 'node:http';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Told } from '../../src/dossier/live/told.ts';
import { goodContent } from '../corpus/content.ts';

const project = resolve(import.meta.dirname, '../..');
const deed = goodContent['records/deed.md']!.replace(
  'mentions:\n',
  'media: [{ file: deed.png, alt: A deed }]\nmentions:\n',
);

describe('start follows the content', () => {
  let folder: string;
  let server: ChildProcess;
  let site: string;
  let printed = '';

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'whence-start-'));
    for (const [file, text] of Object.entries({ ...goodContent, 'records/deed.md': deed })) lay(file, text);
    mkdirSync(join(folder, 'media'));
    await sharp({ create: { width: 40, height: 30, channels: 3, background: '#887766' } })
      .png()
      .toFile(join(folder, 'media/deed.png'));
    server = spawn(
      process.execPath,
      [join(project, 'src/cli/start.ts'), '--content', folder, '--port', '0', '--today', '2026-06-01'],
      {
        cwd: tmpdir(),
        // Under vitest’s own variable Astro’s server would not set itself up.
        env: { ...process.env, VITEST: undefined, INIT_CWD: undefined, NO_COLOR: '1' },
      },
    );
    server.stdout!.on('data', (chunk) => (printed += chunk));
    server.stderr!.on('data', (chunk) => (printed += chunk));
    await until(
      () => printed.includes('It follows every change'),
      () => printed,
    );
    site = /http:\/\/localhost:\d+/.exec(printed)![0];
  });
  afterAll(async () => {
    if (server.exitCode === null) {
      const gone = new Promise((done) => server.once('close', done));
      server.kill('SIGKILL');
      await gone;
    }
    rmSync(folder, { recursive: true, force: true });
  });

  function lay(file: string, text: string): void {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  const get = (path: string) => fetch(site + path);
  /** An address as it is written: fetch would tidy it up. */
  const ask = (path: string) =>
    new Promise<{ status: number; text: string }>((done, failed) => {
      const request = http.get({ host: 'localhost', port: new URL(site).port, path }, (answer) => {
        let text = '';
        answer.on('data', (chunk) => (text += String(chunk)));
        answer.on('end', () => done({ status: answer.statusCode ?? 0, text }));
      });
      request.on('error', failed);
    });
  const getRaw = async (path: string) => (await ask(path)).text;
  const statusOf = async (path: string) => (await ask(path)).status;
  const shows = (path: string, text: string) =>
    until(
      async () => (await (await get(path)).text()).includes(text),
      () => `${text} on ${path}`,
    );

  test('pages are served as the files they become', async () => {
    for (const path of [
      '/',
      '/index.html',
      '/records.html',
      '/records/deed.html',
      '/people/maurice-phelan.html',
    ])
      expect([path, (await get(path)).status]).toEqual([path, 200]);
    expect((await get('/records/none.html')).status).toBe(404);
  });

  test('images are served as they are published, and nothing else of the content is', async () => {
    const image = await get('/media/deed.png.jpg');
    expect(image.headers.get('content-type')).toBe('image/jpeg');
    expect(await sharp(Buffer.from(await image.arrayBuffer())).metadata()).toMatchObject({
      format: 'jpeg',
      width: 40,
    });
    for (const path of [
      '/media/deed.png',
      '/media/%2e%2e/site.yaml',
      '/media/../site.yaml',
      '/media/none.jpg',
    ])
      expect((await get(path)).status).toBe(404);
  });

  test('no file of a content folder is served as it is, nor any other that pages do not need', async () => {
    /** Whether an answer holds any longer line of a file, as text or within a program. */
    const gives = async (path: string, file: string) => {
      const answer = await getRaw(path);
      const lines = readFileSync(file, 'utf8').split('\n');
      return lines.some((line) => line.length > 12 && answer.includes(JSON.stringify(line).slice(1, -1)));
    };
    for (const file of [
      join(folder, 'records/deed.md'),
      join(folder, 'people/people.yaml'),
      join(folder, 'site.yaml'),
      join(project, 'content/site.yaml'),
      join(project, 'content/cases/phelan-knockmahon.mdx'),
      join(project, 'README.md'),
      join(project, 'package.json'),
      '/etc/passwd',
    ])
      for (const [before, query] of [
        ['/@fs', ''],
        ['/@fs', '?raw'],
        ['/@fs', '?raw??'],
        ['/@fs', '?import&raw'],
        ['/@fs', '?url&inline'],
        ['/@id', '?raw'],
        ['/@id/__x00__', '?raw'],
        ['//@fs', '?raw'],
        ['', ''],
        ['', '?raw'],
      ] as const)
        expect([before, file, query, await gives(`${before}${file}${query}`, file)]).toEqual([
          before,
          file,
          query,
          false,
        ]);
    for (const path of [
      '/content/site.yaml',
      '/content/site.yaml?raw',
      '/content/cases/phelan-knockmahon.mdx',
      '/content/people/people.yaml?import&raw',
      '/%63ontent/site.yaml',
      '//content/site.yaml',
      '/src/../content/site.yaml',
      '/src/%2e%2e/content/site.yaml',
      '/README.md',
      '/package.json',
      '/package.json?raw',
      '/tests/seed.ts',
      '/node_modules/.whence/cache',
    ])
      expect([path, (await statusOf(path)) >= 400]).toEqual([path, true]);
    // What pages load is there.
    const page = await (await get('/records/deed.html')).text();
    const loaded = [...page.matchAll(/(?:src|href)="(\/(?:@|src|components|node_modules)[^"]+)"/g)];
    expect(loaded.length).toBeGreaterThan(0);
    for (const [, address] of loaded)
      expect([address, (await get(address!.replaceAll('&amp;', '&'))).status]).toEqual([address, 200]);
  });

  // Astro is told of the change by an event it does not document; this is what holds it.
  test('a change is seen on the next look, also in a page that was served before', async () => {
    await shows('/records/deed.html', 'Deed of 1870');
    lay('records/deed.md', deed.replace('Deed of 1870', 'Deed of 1871'));
    await shows('/records/deed.html', 'Deed of 1871');
  });

  test('a new file has a page, and a removed one has none', async () => {
    lay('records/second.md', deed.replace('Deed of 1870', 'Second deed'));
    await shows('/records/second.html', 'Second deed');
    rmSync(join(folder, 'records/second.md'));
    await until(
      async () => (await get('/records/second.html')).status === 404,
      () => 'a 404',
    );
  });

  test('while a file can’t be read, the page stays and the finding is printed', async () => {
    printed = '';
    lay('records/deed.md', '---\ntitle: [half\n');
    await until(
      () => printed.includes('The site stays as it was'),
      () => printed,
    );
    expect(printed).toContain('records/deed.md:');
    await shows('/records/deed.html', 'Deed of 1871');
    lay('records/deed.md', deed.replace('Deed of 1870', 'Deed of 1872'));
    await shows('/records/deed.html', 'Deed of 1872');
  });

  test('a page is told what is wrong, where, and what to do', async () => {
    const told = async () => (await (await get('/@whence/told.json')).json()) as Told;
    lay('records/deed.md', deed.replace('place: michigan', 'placce: michigan'));
    await until(
      async () => (await told()).errors.length > 0,
      () => 'an error',
    );
    expect(await told()).toMatchObject({
      errors: [{ file: 'records/deed.md', line: 5, column: 1, help: 'Did you mean place?' }],
      failure: null,
    });
    lay('records/deed.md', deed);
    await until(
      async () => (await told()).errors.length === 0,
      () => 'no errors',
    );
  });

  test('hard saving, a file that becomes a folder, ids that change: the site goes on', async () => {
    for (let i = 1; i <= 100; i++) {
      lay('records/deed.md', i % 3 === 0 ? deed.slice(0, i * 3) : deed.replace('Deed of 1870', `Deed ${i}`));
      await new Promise((done) => setTimeout(done, 5));
    }
    await shows('/records/deed.html', 'Deed 100');
    rmSync(join(folder, 'records/deed.md'));
    mkdirSync(join(folder, 'records/deed.md'));
    lay('people/people.yaml', '- { id: morris, name: Morris Whelan, died: { date: 1903 } }\n');
    await shows('/people/morris.html', 'Morris Whelan');
    expect((await get('/people/maurice-phelan.html')).status).toBe(404);
    rmSync(join(folder, 'records/deed.md'), { recursive: true });
    lay('people/people.yaml', goodContent['people/people.yaml']!);
    lay('records/deed.md', deed);
    await shows('/records/deed.html', 'Deed of 1870');
  });

  test('a content that must not be published is shown, and said to be so', async () => {
    printed = '';
    lay('records/deed.md', deed.replace('place: michigan', 'place: michigann'));
    await until(
      () => printed.includes('could not be published like this') || printed.includes('stays as it was'),
      () => printed,
    );
    expect((await get('/records/deed.html')).status).toBe(200);
  });
});

test('start can’t run without a content folder', async () => {
  const run = spawn(process.execPath, [join(project, 'src/cli/start.ts'), '--content', '/nowhere/at/all'], {
    env: { ...process.env, NO_COLOR: '1' },
  });
  let err = '';
  run.stderr.on('data', (chunk) => (err += chunk));
  expect(await new Promise((done) => run.once('close', done))).toBe(2);
  expect(err).toMatch(/^There is no folder “\/nowhere\/at\/all”/);
});

async function until(
  holds: () => boolean | Promise<boolean>,
  what: () => string,
  patience = 45_000,
): Promise<void> {
  const end = performance.now() + patience;
  while (!(await holds())) {
    if (performance.now() > end) throw new Error(`Waited in vain for: ${what()}`);
    await new Promise((done) => setTimeout(done, 50));
  }
}
