/** A folder for what is in the making. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CannotRun } from '../../corpus/types.ts';

/** Makes a folder of its own among the system’s temporary ones. Throws `CannotRun` where that can’t be done. */
export function temporaryFolder(prefix: string): string {
  try {
    return mkdtempSync(join(tmpdir(), prefix));
  } catch (error) {
    throw new CannotRun(
      `No folder for the work could be made in ${tmpdir()} (${(error as NodeJS.ErrnoException).code ?? String(error)}). Let TMPDIR name a folder that may be written to, or leave it out.`,
    );
  }
}
