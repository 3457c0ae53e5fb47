/**
 * What the development server may hand out as a file. Vite would give out whatever lies in the project, the author’s own
 * words about the living among it; pages need the programs and styles they are made of, and what packages bring.
 */
import { realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

/** Rooms of the project that pages load from. */
const needed = ['src', 'components', 'public', 'node_modules'];

/** Where this project keeps what it made: of it only the programs that Vite has prepared are loaded. */
const kept = join('node_modules', '.whence');

/** Tells which files may be served, by the address asked for. */
export interface Served {
  /** Folders from which files may be served, and those in them from which none may be, as real paths. */
  allowed: readonly string[];
  refused: readonly string[];
  /** Whether an address may be answered: it names no file, or one that pages need. */
  mayAnswer(url: string): boolean;
}

/** For a project in `root` that shows a content folder. */
export function servedOf(root: string, content: string): Served {
  const allowed = needed.flatMap((room) => realPath(join(root, room)) ?? []);
  const prepared = join(realPath(root) ?? root, kept, 'vite');
  const inside = [content, join(root, 'content'), join(root, kept)];
  const refused = inside.map((folder) => realPath(folder) ?? folder);
  const isNeeded = (file: string) =>
    isIn(file, prepared) ||
    (allowed.some((folder) => isIn(file, folder)) && !refused.some((folder) => isIn(file, folder)));
  const places = [root, join(root, 'public'), ''];
  return {
    allowed,
    refused,
    mayAnswer(url) {
      let path: string;
      try {
        path = decodeURIComponent(url.split(/[?#]/, 1)[0]!);
      } catch {
        return false;
      }
      if (path.includes('\0')) return false;
      // Addresses of Vite’s own: a file anywhere on the disk, or a module, which may be named by its file.
      const named = path.replace(/^\/+@(?:fs|id)(?=\/)/, '').replace('__x00__', '');
      return places.every((place) => {
        const file = place === '' ? named : join(place, named);
        const real = realPath(file);
        return real === undefined || !statSync(real).isFile() || isNeeded(real);
      });
    },
  };
}

function isIn(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder + sep);
}

function realPath(path: string): string | undefined {
  try {
    return realpathSync.native(path);
  } catch {
    return undefined;
  }
}
