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

describe('images of every sort', () => {
  const made = (name: string) => publishedImage(join(media, name), 'full', media, cache);
  const said = async (name: string) => sharp(await made(name)).metadata();

  // Exif 2.32, tag 0x0112: 1 to 4 are upright or turned by half, 5 to 8 lie on their side.
  test.each([1, 2, 3, 4, 5, 6, 7, 8])('orientation %i comes out upright', async (orientation) => {
    // A picture whose upper left quarter, as it is seen, is red.
    const size = orientation >= 5 ? { width: 40, height: 60 } : { width: 60, height: 40 };
    const corner = ['', 'nw', 'ne', 'se', 'sw', 'nw', 'sw', 'se', 'ne'][orientation]!;
    await sharp({ create: { ...size, channels: 3, background: '#ffffff' } })
      .composite([
        {
          input: {
            create: { width: size.width / 2, height: size.height / 2, channels: 3, background: '#ff0000' },
          },
          left: corner.endsWith('e') ? size.width / 2 : 0,
          top: corner.startsWith('s') ? size.height / 2 : 0,
        },
      ])
      .withMetadata({ orientation })
      .png()
      .toFile(join(media, `turned-${orientation}.png`));
    const { data, info } = await sharp(await made(`turned-${orientation}.png`))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([60, 40]);
    const green = (x: number, y: number) => data[(y * info.width + x) * info.channels + 1]!;
    expect([green(10, 10), green(50, 10), green(10, 30), green(50, 30)].map((value) => value > 128)).toEqual([
      false,
      true,
      true,
      true,
    ]);
  });

  test('one in the four inks of printers comes out in the three of screens', async () => {
    await sharp({ create: { width: 20, height: 20, channels: 3, background: '#2060a0' } })
      .toColourspace('cmyk')
      .withIccProfile('cmyk')
      .jpeg()
      .toFile(join(media, 'inks.jpg'));
    expect((await sharp(join(media, 'inks.jpg')).metadata()).space).toBe('cmyk');
    expect(await said('inks.jpg')).toMatchObject({ space: 'srgb', channels: 3 });
    expect((await said('inks.jpg')).icc).toBeUndefined();
  });

  test('of one that moves the first picture is shown', async () => {
    const frame = (background: string) =>
      sharp({ create: { width: 20, height: 10, channels: 3, background } })
        .raw()
        .toBuffer();
    await sharp(Buffer.concat([await frame('#00ff00'), await frame('#ff00ff')]), {
      raw: { width: 20, height: 20, channels: 3, pageHeight: 10 },
    })
      .gif({ loop: 0, delay: [100, 100] })
      .toFile(join(media, 'moving.gif'));
    expect((await sharp(join(media, 'moving.gif')).metadata()).pages).toBe(2);
    const { data, info } = await sharp(await made('moving.gif'))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height, data[1]! > 200, data[0]! < 60]).toEqual([20, 10, true, true]);
  });

  test('a PNG under the name of a JPEG is read as what it is', async () => {
    await sharp({ create: { width: 9, height: 7, channels: 3, background: '#123456' } })
      .png()
      .toFile(join(media, 'misnamed.jpg'));
    expect(imageSize(join(media, 'misnamed.jpg'))).toEqual({ width: 9, height: 7 });
    expect(await said('misnamed.jpg')).toMatchObject({ format: 'jpeg', width: 9, height: 7 });
  });

  test('a drawing that could hold a script is no image, whatever its name', async () => {
    writeFileSync(
      join(media, 'drawing.png'),
      '<svg xmlns="http://www.w3.org/2000/svg" width="5" height="5" onload="zqran(1)"><rect width="5" height="5"/></svg>',
    );
    expect(imageSize(join(media, 'drawing.png'))).toBeUndefined();
  });

  test('everything a file says beside its picture is left behind: XMP, IPTC, comments, profiles', async () => {
    const xmp =
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" dc:creator="Somebody Living"/></rdf:RDF></x:xmpmeta>';
    const plain = await sharp({ create: { width: 20, height: 20, channels: 3, background: '#777777' } })
      .withXmp(xmp)
      .withIccProfile('p3')
      .jpeg()
      .toBuffer();
    // ITU-T T.81, B.2.4.5: a comment segment, FF FE; and an IPTC block in APP13, as cameras and agencies write it.
    const segment = (marker: number, text: string) => {
      const body = Buffer.from(text, 'latin1');
      const head = Buffer.from([0xff, marker, 0, 0]);
      head.writeUInt16BE(body.length + 2, 2);
      return Buffer.concat([head, body]);
    };
    const iptc =
      'Photoshop 3.0\u00008BIM\u0004\u0004\u0000\u0000\u0000\u0000\u0000\u0015\u001c\u0002\u0050\u0000\u0010Somebody Living!\u0000';
    writeFileSync(
      join(media, 'talkative.jpg'),
      Buffer.concat([
        plain.subarray(0, 2),
        segment(0xfe, 'Taken at Somebody Living’s house'),
        segment(0xed, iptc),
        plain.subarray(2),
        Buffer.from('Somebody Living, after the end'),
      ]),
    );
    const before = await sharp(join(media, 'talkative.jpg')).metadata();
    expect([before.xmp !== undefined, before.icc !== undefined]).toEqual([true, true]);
    const bytes = await made('talkative.jpg');
    const { exif, icc, iptc: left, xmp: more, comments } = await sharp(bytes).metadata();
    expect({ exif, icc, left, more, comments }).toEqual({});
    expect(bytes.toString('latin1')).not.toMatch(/Somebody|Living|adobe|Photoshop/);
  });

  test('one that claims to be larger than any scan is not opened', async () => {
    // PNG, third edition, 11.2.1: width and height stand at the head, and nothing holds them to what follows.
    const bomb = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#000000' } })
      .png()
      .toBuffer();
    bomb.writeUInt32BE(60_000, 16);
    bomb.writeUInt32BE(60_000, 20);
    writeFileSync(join(media, 'bomb.png'), bomb);
    await expect(made('bomb.png')).rejects.toThrow('can’t be read as an image');
  });
});
