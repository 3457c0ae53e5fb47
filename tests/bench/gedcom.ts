/** How long a great family file takes to come in, and the folder it makes to be checked. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeGedcom } from './gedcom-file.ts';
import { measure } from './measure.ts';

/** Rows of a table: what, seconds, peak megabytes. The target of the import is 30 seconds and 1,000 megabytes. */
export async function benchGedcom(project: string, people: number): Promise<string[][]> {
  const work = mkdtempSync(join(tmpdir(), 'whence-gedcom-'));
  const rows = [['people', 'what', 'seconds', 'peak MB']];
  try {
    const file = join(work, 'family.ged');
    const content = join(work, 'content');
    writeGedcom(file, people);
    const verbs: readonly (readonly [string, string[]])[] = [
      ['import', ['src/cli/import.ts', 'gedcom', file, '--content', content, '--write']],
      ['import again', ['src/cli/import.ts', 'gedcom', file, '--content', content, '--write']],
      ['check', ['src/cli/check.ts', '--content', content]],
    ];
    for (const [what, args] of verbs) {
      const { seconds, peak, code } = await measure(process.execPath, args, project);
      const said = code === 0 ? what : `${what} (exit ${code})`;
      rows.push([String(people), said, seconds.toFixed(1), peak === null ? '–' : peak.toFixed(0)]);
    }
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
  return rows;
}
