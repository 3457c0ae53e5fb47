/** The images of a site: those of its records and those its prose shows, without the ones that may not be published. */
import { realpathSync } from 'node:fs';
import { join, sep } from 'node:path';
import { imageSize } from '../corpus/image-size.ts';
import type { Facts } from '../model/facts.ts';
import type { SourceRecord } from '../model/record.ts';
import { mayBePublished } from '../model/rights.ts';
import { imageHref } from './media-paths.ts';
import type { MediaView, Picture } from './types.ts';

/** Tells which images may be shown. For the family all may: what is not published needs nobody’s leave. */
export interface Pictures {
  /** The images of a record, and how many more of it there are that may not be shown. */
  ofRecord(record: SourceRecord): { media: MediaView[]; withheld: number };
  /** Where an image of `media/` that prose shows is published, or `undefined` where it may not be. */
  inProse(file: string): string | undefined;
  /** Every image that is published, by its address. */
  all(): Picture[];
}

/**
 * The images of a content folder, as `shown` has them. Rights that any record of the `written` content gives an image
 * hold wherever it stands, and an image that is left out of its record, as one of somebody living is, stays out of prose.
 */
export function picturesOf(root: string, shown: Facts, written: Facts): Pictures {
  const isPublic = shown.site.audience === 'public';
  const refused = new Set<string>();
  if (isPublic)
    for (const { id, media } of written.records.values()) {
      const kept = new Set(shown.records.get(id)?.media);
      for (const one of media)
        if (!kept.has(one) || !mayBePublished(one.rights)) {
          refused.add(plain(one.file));
          refused.add(behind(root, one.file) ?? '');
        }
    }
  // A link to such an image is that image.
  const isRefused = (file: string) =>
    refused.size > 0 && (refused.has(plain(file)) || refused.has(behind(root, file) ?? plain(file)));
  const published = new Map<string, Picture>();
  return {
    ofRecord(record) {
      const media: MediaView[] = [];
      let withheld = 0;
      for (const { file, alt, credit, rights } of record.media) {
        const path = join(root, 'media', file);
        const size = imageSize(path);
        if (!size) continue;
        if (isRefused(file)) {
          withheld++;
          continue;
        }
        const src = imageHref(file);
        published.set(src, { src, file: path });
        media.push({ src, file: path, alt, credit, rights, ...size });
      }
      return { media, withheld };
    },
    inProse(file) {
      if (isRefused(file) || !mediaIsThere(root, file)) return undefined;
      const src = imageHref(file);
      if (!published.has(src)) published.set(src, { src, file: join(root, 'media', file) });
      return src;
    },
    all: () => [...published.values()],
  };
}

/** Whether `media/` holds an image of this name, and not a link that leads out of it. */
export function mediaIsThere(root: string, file: string): boolean {
  const path = join(root, 'media', file);
  try {
    if (!realpathSync(path).startsWith(realpathSync(join(root, 'media')) + sep)) return false;
  } catch {
    return false;
  }
  return imageSize(path) !== undefined;
}

/** The file that a name in `media/` leads to, as a real path. */
function behind(root: string, file: string): string | undefined {
  try {
    return realpathSync(join(root, 'media', file));
  } catch {
    return undefined;
  }
}

function plain(file: string): string {
  return file.replaceAll(/(?:^|(?<=\/))\.?\//g, '').toLowerCase();
}
