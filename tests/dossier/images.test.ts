import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { imageSize } from '../../src/corpus/image-size.ts';
import { publishedImage } from '../../src/dossier/images.ts';
import { imageHref, smallImageHref } from '../../src/dossier/media-paths.ts';

let root: string;
let media: string;
let cache: string;
beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'whence-images-'));
  media = join(root, 'media');
  cache = join(root, 'cache');
  mkdirSync(media);
  const plain = (width: number, height: number) =>
    sharp({ create: { width, height, channels: 3, background: '#a08060' } });
  for (const ending of ['jpg', 'png', 'gif', 'webp', 'avif', 'tiff'])
    await plain(30, 20).toFile(join(media, `a.${ending}`));
  await plain(2400, 1200)
    .withExif({ IFD0: { Artist: 'Someone Living', Orientation: '6' }, IFD3: { GPSLatitude: '52/1 8/1 0/1' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toFile(join(media, 'sideways.jpg'));
  await sharp({ create: { width: 10, height: 10, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } })
    .png()
    .toFile(join(media, 'clear.png'));
  writeFileSync(join(media, 'words.jpg'), 'This is no image.');
  await plain(900, 900).jpeg().toFile(join(media, 'cut.jpg'));
  truncateSync(join(media, 'cut.jpg'), 700);
  await plain(5, 5).toFile(join(root, 'outside.jpg'));
  symlinkSync(join(root, 'outside.jpg'), join(media, 'link.jpg'));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

describe('the size of an image', () => {
  test.each(['jpg', 'png', 'gif', 'webp', 'avif', 'tiff'])('is read from a %s file', (ending) => {
    expect(imageSize(join(media, `a.${ending}`))).toEqual({ width: 30, height: 20 });
  });
  // Exif 2.32, tag 0x0112: orientation 6 is shown turned by a quarter, so width and height change places.
  test('is that of the image as it is seen', () =>
    expect(imageSize(join(media, 'sideways.jpg'))).toEqual({ width: 1200, height: 2400 }));
  test('is not known of what is no image, or is not there', () => {
    expect(imageSize(join(media, 'words.jpg'))).toBeUndefined();
    expect(imageSize(join(media, 'gone.jpg'))).toBeUndefined();
    expect(imageSize(media)).toBeUndefined();
  });
});

describe('a published image', () => {
  test('is upright, no larger than it need be, and says nothing of camera, place or owner', async () => {
    const bytes = await publishedImage(join(media, 'sideways.jpg'), 'full', media, cache);
    const { width, height, format, exif, xmp, iptc, icc, orientation } = await sharp(bytes).metadata();
    expect({ width, height, format, exif, xmp, iptc, icc, orientation }).toEqual({
      width: 1000,
      height: 2000,
      format: 'jpeg',
    });
    expect(bytes.includes('Someone Living')).toBe(false);
    expect(
      await sharp(await publishedImage(join(media, 'sideways.jpg'), 'small', media, cache)).metadata(),
    ).toMatchObject({ width: 400, height: 800 });
  });
  test('is not made larger than the author’s', async () => {
    expect(
      await sharp(await publishedImage(join(media, 'a.png'), 'full', media, cache)).metadata(),
    ).toMatchObject({ width: 30, height: 20, format: 'jpeg' });
  });
  test('shows white where the author’s shows nothing', async () => {
    const { data } = await sharp(await publishedImage(join(media, 'clear.png'), 'full', media, cache))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(data[0]).toBeGreaterThan(250);
  });
  test('has the same bytes made anew, kept, or kept and cut off', async () => {
    const fresh = join(root, 'fresh');
    const first = await publishedImage(join(media, 'a.tiff'), 'full', media, fresh);
    expect(await publishedImage(join(media, 'a.tiff'), 'full', media, fresh)).toEqual(first);
    for (const name of readdirSync(fresh)) truncateSync(join(fresh, name), 50);
    expect(await publishedImage(join(media, 'a.tiff'), 'full', media, fresh)).toEqual(first);
    expect(
      await publishedImage(join(media, 'a.tiff'), 'full', media, join(root, 'words.txt', 'no-folder')),
    ).toEqual(first);
  });
  test.each([
    ['words.jpg', 'can’t be read as an image'],
    ['cut.jpg', 'can’t be read as an image'],
    ['gone.jpg', 'is not there'],
    ['link.jpg', 'leads out of the content’s media folder'],
    ['../outside.jpg', 'leads out of the content’s media folder'],
  ])('is not made from %s: it %s', async (file, why) => {
    await expect(publishedImage(join(media, file), 'full', media, cache)).rejects.toThrow(why);
  });
});

test('no two images want one address, and odd names are written as addresses', () => {
  const names = ['scan.jpg', 'scan.png', 'scan.jpeg', 'scan #2.jpg', 'år/50%.jpg', 'a?b.jpg'];
  const hrefs = names.flatMap((name) => [imageHref(name), smallImageHref(imageHref(name))]);
  expect(hrefs.slice(0, 4)).toEqual([
    '/media/scan.jpg',
    '/media-small/scan.jpg',
    '/media/scan.png.jpg',
    '/media-small/scan.png.jpg',
  ]);
  expect(new Set(hrefs).size).toBe(hrefs.length);
  for (const href of hrefs) expect(new URL(href, 'https://example.org').pathname).toBe(href);
});
