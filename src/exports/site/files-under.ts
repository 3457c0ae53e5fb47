import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Writes files below a folder, making each folder once. */
export function filesUnder(root: string): {
  /** Where a path of the site lies on disk; its folder is there. */
  at(path: string): string;
  /** Writes a file at once. Returns the SHA-256 of its bytes, in hexadecimal digits. */
  writeNow(path: string, content: Buffer | string): string;
} {
  const folders = new Set<string>();
  const at = (path: string) => {
    const file = join(root, path);
    const folder = dirname(file);
    if (!folders.has(folder)) {
      mkdirSync(folder, { recursive: true });
      folders.add(folder);
    }
    return file;
  };
  return {
    at,
    writeNow(path, content) {
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      writeFileSync(at(path), bytes);
      return sha256(bytes);
    },
  };
}

/** The SHA-256 of bytes, in hexadecimal digits. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
