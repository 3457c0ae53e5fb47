import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Keeps something for the next build. It is written beside and moved into place, so that a build cut off leaves a whole
 * file or the earlier one. What is kept saves time and nothing else: where it can’t be written, it is made again.
 */
export function keepFile(file: string, content: Uint8Array | string): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
    const part = `${file}.${process.pid}`;
    writeFileSync(part, content);
    renameSync(part, file);
  } catch {
    return;
  }
}

/** The bytes kept in a file, where they are there and `isWhole` knows them for what was kept. */
export function keptFile(file: string, isWhole: (bytes: Buffer) => boolean): Buffer | undefined {
  try {
    const bytes = readFileSync(file);
    return isWhole(bytes) ? bytes : undefined;
  } catch {
    return undefined;
  }
}
