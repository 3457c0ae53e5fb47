/** The scans and photographs that records name: whether they are there, and nowhere else. */
import { join } from 'node:path';
import type { SourceRecord } from '../model/record.ts';
import type { Entry, Findings } from './entries.ts';
import type { ContentFolder } from './files.ts';
import { quoted } from './finding.ts';
import { imageSize, mostPixels } from './image-size.ts';
import { nearest } from './suggestions.ts';

const endings = ['jpg', 'jpeg', 'png', 'webp', 'avif', 'gif', 'tif', 'tiff'];

/** Judges `media` of every record. Of each image only the head is read. */
export function checkMedia(
  records: Iterable<{ record: SourceRecord; entry: Entry }>,
  folder: ContentFolder,
  findings: Findings,
): void {
  const listings = new Map<string, string[]>();
  const filesIn = (name: string): string[] => {
    let files = listings.get(name);
    if (!files)
      listings.set(
        name,
        (files = folder
          .list(name)
          .filter((found) => !found.isFolder)
          .map((found) => found.name)),
      );
    return files;
  };
  for (const { record, entry } of records)
    record.media.forEach(({ file }, index) => {
      const path = ['media', index, 'file'];
      const steps = file.split('/');
      const leaves =
        /^[/\\]|^[A-Za-z]:/.test(file) ||
        file.includes('\\') ||
        steps.some((step) => step === '..') ||
        folder.whereabouts(`media/${file}`, 'media') === 'outside';
      if (leaves)
        return findings.add(
          entry,
          path,
          'media-stays-in-its-folder',
          `${quoted(file)} leads out of the folder media.`,
          'Copy the file into media/ and name it without a folder in front, such as declaration.jpg.',
        );
      const name = steps[steps.length - 1]!;
      const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
      if (!name.includes('.') || !endings.includes(ending))
        return findings.add(
          entry,
          path,
          'media-is-an-image',
          `${quoted(file)} is not an image that can be shown.`,
          'Save the scan as .jpg, .png, .webp, .avif, .gif or .tif; of a PDF, save the page as an image.',
        );
      const siblings = filesIn(['media', ...steps.slice(0, -1)].join('/'));
      if (siblings.includes(name)) {
        const size = imageSize(join(folder.root, 'media', file));
        if (size && size.width * size.height > mostPixels)
          return findings.add(
            entry,
            path,
            'file-is-of-reasonable-size',
            `${quoted(file)} is ${size.width} by ${size.height} pixels large; an image is read up to ${mostPixels / 1e6} million pixels.`,
            'Save it again in a smaller size: a page shows no more than 2000 pixels.',
          );
        if (size) return undefined;
        return findings.add(
          entry,
          path,
          'media-is-an-image',
          `${quoted(file)} cannot be read as an image: it is empty, broken, or something else under that name.`,
          'Open it in a picture viewer and save it again as .jpg or .png.',
        );
      }
      const meant =
        siblings.find((sibling) => sibling.toLowerCase() === name.toLowerCase()) ?? nearest(name, siblings);
      return findings.add(
        entry,
        path,
        'media-exists',
        `There is no file ${quoted(file)} in media/.`,
        meant
          ? `Did you mean ${[...steps.slice(0, -1), meant].join('/')}? Capital letters count.`
          : 'Put the file into media/, or correct its name.',
      );
    });
}
