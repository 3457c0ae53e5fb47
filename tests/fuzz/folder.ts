/** A folder on disk that takes the shape of one set of files after another. */
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Files } from './mutate.ts';

export interface ChangingFolder {
  readonly path: string;
  /** Makes the folder hold just these files. Only what differs is written. */
  hold(files: Files): void;
  remove(): void;
}

/** Where there is one, a disk in memory: most of the time would go into writing files. */
const ground = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();

export function changingFolder(): ChangingFolder {
  const path = mkdtempSync(join(ground, 'whence-fuzz-'));
  let there: Files = {};
  return {
    path,
    hold(files) {
      for (const file of Object.keys(there)) if (!(file in files)) rmSync(join(path, file), { force: true });
      for (const [file, content] of Object.entries(files)) {
        if (there[file] === content) continue;
        mkdirSync(dirname(join(path, file)), { recursive: true });
        writeFileSync(join(path, file), content);
      }
      there = { ...files };
    },
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}
