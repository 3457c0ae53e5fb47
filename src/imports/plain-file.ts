/** Files that can be read to their end. */
import { statSync } from 'node:fs';
import { CannotRun } from '../corpus/types.ts';

/**
 * Throws `CannotRun` for a pipe or a device: it would be waited for, perhaps without end, and can’t be read twice. What is
 * not there, and a folder, is left to whoever reads it.
 */
export function demandPlainFile(path: string): void {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found && !found.isFile() && !found.isDirectory())
    throw new CannotRun(`${path} is no ordinary file. Save what it gives as a file first, and name that.`);
}
