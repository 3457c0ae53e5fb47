/**
 * Where an image of a record is published. Every image becomes a JPEG, in full and in a small size that lies in a
 * folder of its own, so that no two of them want one file.
 */

/** The widest and highest an image is published in each size, in pixels. */
export const imageSizes = { full: 2000, small: 800 } as const;
export type ImageSize = keyof typeof imageSizes;

/**
 * The address of `media/<file>` as published: `scan.jpg` becomes `/media/scan.jpg`. Any other name gains `.jpg`
 * instead of losing its own ending, so that `scan.png` beside it stays another image.
 */
export function imageHref(file: string): string {
  const name = file.endsWith('.jpg') ? file : `${file}.jpg`;
  return `/media/${name.split('/').map(encodeURIComponent).join('/')}`;
}

/** The address of the small size of an image published at `href`. */
export function smallImageHref(href: string): string {
  return href.replace(/^\/media\//, '/media-small/');
}
