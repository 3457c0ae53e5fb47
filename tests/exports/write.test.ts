import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { MediaView } from '../../src/dossier/types.ts';
import type { Manifest } from '../../src/exports/site/manifest.ts';
import { dayForms, nameForms } from '../../src/dossier/living-forms.ts';
import { writeSite, type SiteParts } from '../../src/exports/site/write.ts';

const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'">`;
let root: string;
beforeEach(async () => {
  root = mkdtempSync(join(tmpdir(), 'whence-write-'));
  pages = {};
  for (const folder of ['assets', 'site', 'media']) mkdirSync(join(root, folder));
  await sharp({ create: { width: 900, height: 600, channels: 3, background: '#806040' } })
    .png()
    .toFile(join(root, 'media/b c.png'));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

let pages: Record<string, string>;
function rendered(files: Record<string, string>): void {
  for (const [path, text] of Object.entries(files)) {
    if (path.endsWith('.html')) {
      pages[path] = policy + text;
      continue;
    }
    mkdirSync(dirname(join(root, 'assets', path)), { recursive: true });
    writeFileSync(join(root, 'assets', path), text);
  }
}
const parts = (more: Partial<SiteParts> = {}): SiteParts => ({
  // The pages come one by one, as they are made; everything else is found in a folder.
  render: async (take) => {
    for (const [path, html] of Object.entries(pages)) await take(path, new TextEncoder().encode(html));
  },
  assets: join(root, 'assets'),
  images: () => [],
  mediaFolder: join(root, 'media'),
  imageCache: join(root, 'cache'),
  tellings: [],
  base: '/family/',
  ...more,
});
const write = (more?: Partial<SiteParts>) => writeSite(parts(more), join(root, 'site'));
const read = (path: string) => readFileSync(join(root, 'site', path), 'utf8').replace(policy, '');
const image: MediaView = { src: '/media/b%20c.png.jpg', file: '', alt: '', width: 900, height: 600 };

test('a site is its pages with relative links, its images in two sizes, and the list of them all', async () => {
  rendered({
    'index.html': '<a href="/records/x.html">x</a>',
    'records/x.html': '<img src="/media/b%20c.png.jpg" alt=""><link rel="stylesheet" href="/assets/s.css">',
    'assets/s.css': '@font-face{src:url(/assets/f.woff2)}',
    '404.html': '<a href="/index.html">home</a>',
  });
  const manifest = await write({ images: () => [{ ...image, file: join(root, 'media/b c.png') }] });
  expect(read('index.html')).toBe('<a href="records/x.html">x</a>');
  expect(read('records/x.html')).toBe(
    '<img src="../media/b%20c.png.jpg" alt=""><link rel="stylesheet" href="../assets/s.css">',
  );
  expect(read('assets/s.css')).toBe('@font-face{src:url("f.woff2")}');
  expect(read('404.html')).toBe('<a href="/family/index.html">home</a>');
  expect(JSON.parse(read('whence.json'))).toEqual(manifest);
  const paths = [
    '404.html',
    'assets/s.css',
    'index.html',
    'media-small/b c.png.jpg',
    'media/b c.png.jpg',
    'records/x.html',
  ];
  expect(manifest.files.map((file) => file.path)).toEqual(paths);
  for (const { path, sha256 } of (JSON.parse(read('whence.json')) as Manifest).files)
    expect(
      createHash('sha256')
        .update(readFileSync(join(root, 'site', path)))
        .digest('hex'),
    ).toBe(sha256);
});

describe('nothing goes out that names someone withheld', () => {
  const tellings = [...nameForms('Mary Phelan'), ...dayForms('1961-04-09')].map((form) => ({
    ...form,
    who: 'niece-of-maurice',
  }));
  test.each([
    ['records/x.html', '<p>as Mary&#32;Phelan told it</p>'],
    ['people/mary-phelan.html', '<p>x</p>'],
    ['search.json', '{"t":"Mary\\u0020Phelan"}'],
    ['map.svg', '<svg><text>Mary Phelan</text></svg>'],
    ['feed.xml', '<item><title>Phelan, M&#x61;ry</title></item>'],
    ['sources.bib', 'author = {Phelan, Mary},'],
    ['records/y.html', '<p>born on the 9th of April 1961</p>'],
    ['records/z.html', '<time datetime="1961-04-09">spring</time>'],
  ])('in %s', async (path, text) => {
    rendered({ 'index.html': '<p>x</p>', [path]: text });
    await expect(write({ tellings })).rejects.toThrow(
      new RegExp(
        `^${path.replaceAll('.', '\\.')} would tell of someone living, .*the person niece-of-maurice\\.`,
      ),
    );
    expect(existsSync(join(root, 'site/whence.json'))).toBe(false);
  });
  test('in what stands beside the pixels of a picture', async () => {
    rendered({ 'index.html': '<p>x</p>' });
    const bytes = await sharp({ create: { width: 9, height: 9, channels: 3, background: '#887766' } })
      .withExif({ IFD0: { Artist: 'Mary Phelan' } })
      .jpeg()
      .toBuffer();
    writeFileSync(join(root, 'assets/face.jpg'), bytes);
    await expect(write({ tellings })).rejects.toThrow('face.jpg would tell of someone living, by name');
  });
  test('in the name of an image', async () => {
    writeFileSync(join(root, 'media/mary-phelan.jpg'), readFileSync(join(root, 'media/b c.png')));
    await expect(
      write({
        tellings,
        images: () => [
          { ...image, src: '/media/mary-phelan.jpg', file: join(root, 'media/mary-phelan.jpg') },
        ],
      }),
    ).rejects.toThrow('niece-of-maurice');
  });
});

test('a page that breaks the policy of the site is a fault of ours, and named', async () => {
  rendered({ 'records/x.html': '<p>\n<b style="color:red">x</b>' });
  await expect(write()).rejects.toThrow('The page records/x.html has a style attribute on <b> (line 2)');
});

test('so is a page without a policy', async () => {
  pages['index.html'] = '<p>x</p>';
  await expect(write()).rejects.toThrow('The page index.html has no content security policy');
});

test('a disk that takes no more is told of', async () => {
  rendered({ 'index.html': '<p>x</p>' });
  mkdirSync(join(root, 'site/index.html'));
  await expect(write()).rejects.toThrow('EISDIR');
  expect(existsSync(join(root, 'site/whence.json'))).toBe(false);
});

test('two images that would be one file where capital letters don’t count are refused', async () => {
  const file = join(root, 'media/b c.png');
  const images = () => [
    { ...image, src: '/media/Scan.jpg', file },
    { ...image, src: '/media/scan.jpg', file: `${file}2` },
  ];
  await expect(write({ images })).rejects.toThrow('Two images would be published as one file');
});
