import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { goodContent } from '../corpus/content.ts';

const project = resolve(import.meta.dirname, '../..');
let work: string;
/** What lies in it once both sites have been built. */
const there = ['content', 'elsewhere', 'one', 'one.zip', 'one.zip.sha256', 'two.zip', 'two.zip.sha256'];
beforeAll(async () => {
  work = mkdtempSync(join(tmpdir(), 'whence-build-'));
  lay(content);
  mkdirSync(join(work, 'content/media'));
  await sharp({ create: { width: 40, height: 30, channels: 3, background: '#887766' } })
    .withExif({ IFD0: { Artist: 'Alice Verran' } })
    .jpeg()
    .toFile(join(work, 'content/media/deed.jpg'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** A family with someone living in it: a child who told something and whom a record names. */
const content: Record<string, string> = {
  ...goodContent,
  'site.yaml': `${goodContent['site.yaml']}address: https://family.example/phelan\n`,
  'people/people.yaml': `${goodContent['people/people.yaml']}- { id: alice-verran, name: Alice Verran, living: true, parents: [maurice-phelan], mentions: [letter#m2] }\n`,
  'records/deed.md': goodContent['records/deed.md']!.replace(
    'mentions:\n',
    'media: [{ file: deed.jpg, alt: A deed }]\nmentions:\n',
  ),
  'records/letter.md': [
    '---',
    'title: A family letter',
    'form: original',
    'made: 1999-05-01',
    'place: michigan',
    'informants:',
    '  niece: { person: alice-verran, knowledge: secondary }',
    'mentions:',
    '  - { id: m1, name: Maurice Phelan, birthplace: Knockmahon }',
    '  - { id: m2, name: Alice M. Verran, role: writer, residence: Calumet }',
    '---',
    'The letter names the townland. See [@deed, folio 2].',
    '',
  ].join('\n'),
  'cases/phelan.md': [
    '---',
    'question: Where was Maurice Phelan born?',
    'subject: maurice-phelan',
    'evidence:',
    '  - { id: e1, from: letter#m1, states: birthplace, place: knockmahon, kind: direct, tiedBy: [e2] }',
    '  - { id: e2, from: deed#m1, states: birthplace, kind: indirect }',
    'hypothesis: { place: knockmahon, cites: [e1] }',
    '---',
    'He came from Knockmahon [@letter], as [#e1] says.',
    '',
  ].join('\n'),
};
/** The same case, with a conclusion that one item of evidence can’t carry. */
const short = content['cases/phelan.md']!.replace(
  /hypothesis: .*/,
  'conclusion: { place: knockmahon, claim: probable, cites: [e1], because: the letter says so }',
);

function lay(files: Record<string, string>): void {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(work, 'content', file)), { recursive: true });
    writeFileSync(join(work, 'content', file), text);
  }
}

function build(
  args: string[],
  from: { cwd?: string; env?: NodeJS.ProcessEnv; unread?: boolean } = {},
): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((done) => {
    const run = spawn(
      process.execPath,
      [join(project, 'src/cli/build.ts'), '--today', '2026-06-01', ...args],
      {
        cwd: from.cwd ?? work,
        env: { ...process.env, VITEST: undefined, INIT_CWD: undefined, NO_COLOR: '1', ...from.env },
      },
    );
    let out = '';
    let err = '';
    // Whoever reads may stop, as head does.
    if (from.unread) run.stdout.destroy();
    else run.stdout.on('data', (chunk) => (out += chunk));
    run.stderr.on('data', (chunk) => (err += chunk));
    run.on('close', (code) => done({ code, out, err }));
  });
}

/** Every file of a folder with the digest of its bytes. */
function bytes(folder: string): Record<string, string> {
  return Object.fromEntries(
    files(folder).map((path) => [
      path,
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex'),
    ]),
  );
}

function files(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();
}

/** What sets the clock of a process and of all it starts to the last century but one. */
const wrongClock = `--import=data:text/javascript,${encodeURIComponent(
  'const past = -5e12, Then = Date; globalThis.Date = class extends Then { constructor(...of) { of.length ? super(...of) : super(Then.now() + past); } static now() { return Then.now() + past; } };',
)}`;

describe('build', () => {
  let one: string;
  beforeAll(async () => {
    one = join(work, 'one');
    const ofOne = () => build(['--content', 'content', '--out', 'one', '--portable']);
    const [second, ...rivals] = await Promise.all([
      build(
        ['--content', join(work, 'content'), '--out', '../elsewhere/deep/two', '--portable', '../two.zip'],
        {
          cwd: tmpdir(),
          env: {
            INIT_CWD: join(work, 'content'),
            TZ: 'Pacific/Auckland',
            LANG: 'nb_NO.UTF-8',
            LC_ALL: 'nb_NO.UTF-8',
            NODE_OPTIONS: wrongClock,
          },
        },
      ),
      ofOne(),
      ofOne(),
    ]);
    const [first, late] = rivals.sort((a, b) => a.code! - b.code!);
    expect(late).toMatchObject({ code: 2, out: '' });
    expect(late!.err).toContain('Another build into the same folder is running');
    expect(first).toMatchObject({ code: 0, err: '' });
    expect(second).toMatchObject({ code: 0, err: '' });
    expect(first!.out).toContain('The site is in one');
    writeFileSync(join(work, 'elsewhere/notes.zip'), 'mine');
  });

  test('twice the same content, at once and from different places, zones, languages and clocks, gives the same bytes', () => {
    expect(bytes(join(work, 'elsewhere/deep/two'))).toEqual(bytes(one));
    expect(files(one)).toEqual(
      expect.arrayContaining([
        'index.html',
        'records/deed.html',
        'cases/phelan.html',
        'media/deed.jpg',
        'feed.xml',
        'sitemap.xml',
        'cards/cases/phelan.png',
        'whence.json',
      ]),
    );
    expect(readdirSync(work).sort()).toEqual(there);
    expect(readdirSync(join(work, 'elsewhere/deep'))).toEqual(['two']);
  });

  test('so does the zip of it, which bears its checksum beside it', () => {
    const zip = readFileSync(join(work, 'one.zip'));
    expect(zip.equals(readFileSync(join(work, 'two.zip')))).toBe(true);
    const sum = createHash('sha256').update(zip).digest('hex');
    expect(readFileSync(join(work, 'one.zip.sha256'), 'utf8')).toBe(`${sum}  one.zip\n`);
    expect(readFileSync(join(work, 'two.zip.sha256'), 'utf8')).toBe(`${sum}  two.zip\n`);
    expect(zip.includes(Buffer.from('The Phelans/START HERE.html'))).toBe(true);
  });

  test('no byte of it says where it was made', () => {
    for (const path of files(one)) {
      const text = readFileSync(join(one, path), 'latin1');
      expect([path, text.includes(work), text.includes(project)]).toEqual([path, false, false]);
    }
  });

  test('no byte of it is about someone living', () => {
    for (const path of files(one))
      expect([path, /verran|alice/i.test(path + readFileSync(join(one, path), 'latin1'))]).toEqual([
        path,
        false,
      ]);
  });

  test('every link in it leads to a file, opened from a folder on disk', () => {
    for (const path of files(one).filter((file) => file.endsWith('.html') && file !== '404.html'))
      for (const [, href] of readFileSync(join(one, path), 'utf8').matchAll(/\s(?:href|src)="([^"#?]+)/g)) {
        if (/^[a-z]+:/.test(href!)) continue;
        const there = new URL(href!.replaceAll('&amp;', '&'), `file://${join(one, path)}`);
        expect([path, href, existsSync(decodeURIComponent(there.pathname))]).toEqual([path, href, true]);
      }
  });

  test('every page says at which address it is at home, and shows a picture that is there', () => {
    const address = 'https://family.example/phelan/';
    const pages = files(one).filter((file) => file.endsWith('.html') && file !== '404.html');
    expect(pages).toContain('index.html');
    for (const path of pages) {
      const html = readFileSync(join(one, path), 'utf8');
      const said = (pattern: RegExp) => pattern.exec(html)?.[1]?.replace(address, '');
      expect([path, said(/<link rel="canonical" href="([^"]*)"/)]).toEqual([
        path,
        path === 'index.html' ? '' : path,
      ]);
      for (const pattern of [
        /<meta property="og:image" content="([^"]*)"/,
        /<link rel="apple-touch-icon" href="(?:\.\.\/)*([^"]*)"/,
        /<link rel="alternate" type="application\/rss\+xml"[^>]* href="(?:\.\.\/)*([^"]*)"/,
      ])
        expect([path, existsSync(join(one, said(pattern) ?? 'nothing'))]).toEqual([path, true]);
    }
    expect(readFileSync(join(one, '404.html'), 'utf8')).not.toContain(address);
  });

  test('a content with an error is refused, and the earlier site stays to the byte', async () => {
    const before = bytes(one);
    lay({ 'cases/phelan.md': short });
    const { code, out } = await build(['--content', 'content', '--out', 'one']);
    expect(code).toBe(1);
    expect(out).toContain('two-independent-sources');
    expect(out).toContain('cases/phelan.md:7');
    expect(bytes(one)).toEqual(before);
    const fresh = await build(['--content', 'content', '--out', 'new/site']);
    expect(fresh.code).toBe(1);
    expect(readdirSync(work).sort()).toEqual(there);
  });

  test('mended, it replaces the earlier site; a base changes only the page for what isn’t there; other files stay', async () => {
    const before = bytes(one);
    lay({ 'cases/phelan.md': content['cases/phelan.md']! });
    writeFileSync(join(one, 'CNAME'), 'family.example');
    writeFileSync(join(one, 'index.html'), 'spoiled');
    const { code, out } = await build(['--content', 'content', '--out', 'one', '--base', 'family']);
    expect(code).toBe(0);
    expect(out).toContain('CNAME');
    const after = bytes(one);
    const changed = [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
      (path) => before[path] !== after[path],
    );
    expect(changed.sort()).toEqual(['404.html', 'CNAME', 'whence.json']);
    expect(readFileSync(join(one, '404.html'), 'utf8')).toContain('href="/family/index.html"');
  });

  test('a file of it that was changed by hand comes right; nobody reading on changes nothing', async () => {
    writeFileSync(join(one, 'robots.txt'), 'spoilt');
    expect(await build(['--content', 'content', '--out', 'one'], { unread: true })).toEqual({
      code: 0,
      out: '',
      err: '',
    });
    expect(readFileSync(join(one, 'robots.txt'), 'utf8')).toContain('User-agent');
    expect(readFileSync(join(one, '404.html'), 'utf8')).not.toContain('href="/family/index.html"');
  });

  test.each([
    ['no content there', ['--content', 'nowhere', '--out', 'new'], 'There is no folder'],
    ['a folder with other files', ['--content', 'content', '--out', 'elsewhere'], 'no earlier site'],
    ['the content itself', ['--content', 'content', '--out', 'content'], 'content folder'],
    [
      'the sources of the project',
      ['--content', 'content', '--out', join(project, 'src/site')],
      'project’s own files',
    ],
    [
      'a zip over a file of somebody’s',
      ['--content', 'content', '--out', 'new', '--portable', 'elsewhere/notes.zip'],
      'no earlier zip of Whence',
    ],
    ['a zip that is none', ['--portable', 'site.tar'], 'ends in .zip'],
    ['a base that is no path', ['--base', 'a b'], 'A base is the path of an address'],
    ['a day that is none', ['--today', '2026-02-30'], 'day of the calendar'],
    ['an option that is none', ['--contnet', 'x'], '--content'],
  ])('could not run: %s', async (_why, args, said) => {
    const { code, err } = await build(args);
    expect(err).toContain(said);
    expect(code).toBe(2);
    expect(readdirSync(work).sort()).toEqual(there);
  });

  test('nothing private is left in the project', () => {
    expect(
      readdirSync(join(project, 'node_modules/.whence')).filter((name) => name === String(process.pid)),
    ).toEqual([]);
  });
});
