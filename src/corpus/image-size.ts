import { closeSync, constants, fstatSync, openSync, readSync, statSync } from 'node:fs';
import { imageSize as sizeOf } from 'image-size';

/** The largest image that is read, width times height: a page of a large atlas, scanned well. */
export const mostPixels = 250_000_000;

/** What becomes a pipe in the meantime is not waited for either; where systems know of no such way, `0` asks for none. */
const readNow = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);

/** Most images say their size in their first bytes; a photograph may carry a long profile or preview before it. */
const heads = [64 * 1024, 4 * 1024 * 1024];

/**
 * Width and height of an image in pixels, as it is seen: turned the way its EXIF orientation says. Reads the head of
 * the file only. `undefined` when the file can’t be read, is no ordinary file or is no image that sites show.
 */
export function imageSize(file: string): { width: number; height: number } | undefined {
  let handle: number | undefined;
  try {
    // A pipe would be waited for without end, and a device has none.
    if (!statSync(file).isFile()) return undefined;
    handle = openSync(file, readNow);
    const { size } = fstatSync(handle);
    for (const head of heads) {
      const found = sizeIn(handle, Math.min(head, size));
      if (found) return found;
      if (head >= size) break;
    }
    return undefined;
  } catch {
    return undefined;
  } finally {
    if (handle !== undefined) closeSync(handle);
  }
}

function sizeIn(handle: number, length: number): { width: number; height: number } | undefined {
  const bytes = Buffer.alloc(length);
  readSync(handle, bytes, 0, length, 0);
  try {
    const { width, height, orientation = 1, type } = sizeOf(bytes);
    if (!type || !shown.has(type) || !(width > 0) || !(height > 0)) return undefined;
    return orientation >= 5 && orientation <= 8 ? { width: height, height: width } : { width, height };
  } catch {
    return undefined; // more of the file may be needed
  }
}

/** Raster images only: a drawing could hold anything, links and other people’s names included. */
const shown = new Set(['jpg', 'png', 'gif', 'webp', 'avif', 'heif', 'tiff']);
