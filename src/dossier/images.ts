/**
 * The images of a site, made from the author’s: turned upright, no larger than a page needs, and with nothing of
 * what a camera or scanner wrote into the file (where it was taken, by whom, with what).
 */
import { createHash } from 'node:crypto';
import { readFileSync, realpathSync, statSync } from 'node:fs';
import { extname, join, sep } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { mostPixels } from '../corpus/image-size.ts';
import { keepFile, keptFile } from './kept-file.ts';
import { imageSizes, type ImageSize } from './media-paths.ts';

// The same image must give the same bytes on every processor; vector instructions round differently.
sharp.simd(false);
// An image is read once: a cache would only hold on to files the author may be replacing.
sharp.cache(false);

/** Part of every key of the cache; to be raised when anything below changes what comes out. */
const recipe = 'jpeg-82-srgb-1';

/** In bytes. */
const largestFile = 500e6;

/** An image that can’t be published. The message is a sentence for the author. */
export class ImageProblem extends Error {
  override name = 'ImageProblem';
}

/**
 * The JPEG published for an image file, in one size. `mediaFolder` is the content’s `media`, which no link may lead
 * out of. Results are kept in `cacheFolder` by the digest of the file. Throws an `ImageProblem`.
 */
export async function publishedImage(
  file: string,
  size: ImageSize,
  mediaFolder: string,
  cacheFolder: string,
): Promise<Buffer> {
  const source = readInside(file, mediaFolder);
  const key = createHash('sha256').update(`${recipe}\0${imageSizes[size]}\0`).update(source).digest('hex');
  const cached = join(cacheFolder, `${key}.jpg`);
  const kept = keptFile(cached, isWholeJpeg);
  if (kept) return kept;
  const made = await make(source, imageSizes[size]).catch((error: unknown) => unreadable(file, error));
  keepFile(cached, made);
  return made;
}

/**
 * An image made anew under its own name: as the site shows it, in the type its ending says, so that whatever names the
 * file still finds it. Nothing but the picture is in it. Throws an `ImageProblem`.
 */
export async function pictureAnew(file: string, mediaFolder: string): Promise<Buffer> {
  return anewAs(file, readInside(file, mediaFolder));
}

/** Whether an image is what became of another when it went out once, or again from whoever got it. */
export async function isMadeFrom(picture: Buffer, file: string, mediaFolder: string): Promise<boolean> {
  let before = readInside(file, mediaFolder);
  for (let times = 0; times <= 3; times++) {
    if (before.equals(picture)) return true;
    before = await anewAs(file, before);
  }
  return false;
}

async function anewAs(file: string, source: Buffer): Promise<Buffer> {
  const picture = pictureOf(source, imageSizes.full);
  const made = {
    png: () => picture.png(),
    webp: () => picture.webp({ quality: 82 }),
    avif: () => picture.avif({ quality: 60, effort: 2 }),
    gif: () => picture.gif(),
    tif: () => picture.tiff({ compression: 'deflate' }),
    tiff: () => picture.tiff({ compression: 'deflate' }),
  };
  const ending = extname(file).slice(1).toLowerCase();
  try {
    return await (
      Object.hasOwn(made, ending) ? made[ending as keyof typeof made]() : asJpeg(picture)
    ).toBuffer();
  } catch (error) {
    return unreadable(file, error);
  }
}

function make(source: Buffer, most: number): Promise<Buffer> {
  return asJpeg(pictureOf(source, most)).toBuffer();
}

function asJpeg(picture: Sharp): Sharp {
  return picture.flatten({ background: '#ffffff' }).jpeg({ quality: 82, progressive: true });
}

/** The picture of an image file, upright and no larger than `most`; whatever is written out of it has no metadata. */
function pictureOf(source: Buffer, most: number): Sharp {
  // Of what moves only the first picture is read; what claims to be larger than a scan can be is not read at all.
  return sharp(source, { failOn: 'error', limitInputPixels: mostPixels, pages: 1 })
    .timeout({ seconds: 120 })
    .autoOrient()
    .resize({ width: most, height: most, fit: 'inside', withoutEnlargement: true })
    .toColourspace('srgb');
}

function unreadable(file: string, error: unknown): never {
  throw new ImageProblem(
    `${file} can’t be read as an image (${error instanceof Error ? error.message : String(error)}). Save it again as a JPEG or PNG file, or take it out of the record.`,
  );
}

function readInside(file: string, mediaFolder: string): Buffer {
  let real: string;
  let folder: string;
  try {
    folder = realpathSync(mediaFolder);
    real = realpathSync(file);
  } catch {
    throw new ImageProblem(
      `${file} is not there. Put the file into media/, or correct its name in the record.`,
    );
  }
  if (!real.startsWith(folder + sep))
    throw new ImageProblem(
      `${file} leads out of the content’s media folder. Copy the image itself into media/.`,
    );
  try {
    const found = statSync(real);
    if (!found.isFile())
      throw new ImageProblem(`${file} is no ordinary file. Put the image itself into media/.`);
    const { size } = found;
    if (size > largestFile)
      throw new ImageProblem(
        `${file} has ${Math.round(size / 1e6)} megabytes; an image is read up to ${largestFile / 1e6}. Save it again in a smaller size.`,
      );
    return readFileSync(real);
  } catch (error) {
    if (error instanceof ImageProblem) throw error;
    throw new ImageProblem(
      `${file} can’t be read (${(error as NodeJS.ErrnoException).code ?? String(error)}). Check who may read it.`,
    );
  }
}

/** A kept image whose ending is missing was cut off while being written, or is no image of ours. */
function isWholeJpeg(bytes: Buffer): boolean {
  return (
    bytes.length > 4 && bytes.readUInt16BE(0) === 0xffd8 && bytes.readUInt16BE(bytes.length - 2) === 0xffd9
  );
}
