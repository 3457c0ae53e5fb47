/** What a list leaves unsaid, since it stands above: dittos, and what is named once for all that follow. */
import type { TableRow } from '../../corpus/table.ts';
import { isDitto, relationValue } from './cells.ts';
import type { Mapping } from './mapping.ts';
import type { CellProblem } from './mentions.ts';
import type { MentionTable } from './read.ts';

/**
 * Puts the value above in the place of dittos, and of empty cells of the columns that tell records or households
 * apart, as lists are typed (common practice). Gives what names repeat, which are kept as they are written.
 */
export function repeats(
  table: MentionTable,
  { columns, group }: Mapping,
  problems: CellProblem[],
  notes: string[],
): Map<TableRow, Map<number, string>> {
  const written = new Map<TableRow, Map<number, string>>();
  const relation = columns.find(({ field }) => field === 'relation');
  for (const column of columns) {
    const { index, heading, field } = column;
    if (field === 'ignore') continue;
    const down = group.includes(column) || (field === 'household' && relation !== undefined);
    const word = ['name', 'name.given', 'name.surname'].includes(field);
    let above = '';
    let dittos = 0;
    let filled = 0;
    for (const row of table.rows) {
      const cell = row.cells[index]!;
      if (isDitto(cell)) {
        if (above === '') {
          problems.push({
            row,
            index,
            value: cell,
            message: 'This says “the same”, and there is nothing above it. It was kept as it stands.',
            help: 'Write out what is meant.',
          });
          continue;
        }
        dittos++;
        // “do” is part of a name as it is written; marks of a typist are not.
        if (word && /[a-z]/i.test(cell)) {
          const ofRow = written.get(row) ?? written.set(row, new Map<number, string>()).get(row)!;
          ofRow.set(index, above);
        } else row.cells[index] = above;
        continue;
      }
      if (cell === '' && down && above !== '') {
        const own = field === 'household' && relationValue(row.cells[relation!.index]!).as === 'head';
        if (!own) {
          row.cells[index] = above;
          filled++;
          continue;
        }
      }
      above = cell;
    }
    if (dittos > 0)
      notes.push(`“${heading}” says “the same” in ${count(dittos, 'row')}; what stands above was taken.`);
    if (filled > 0)
      notes.push(
        `“${heading}” is empty in ${count(filled, 'row')}; what stands above was taken, as in lists that name it once.`,
      );
  }
  return written;
}

const count = (n: number, what: string) => `${n.toLocaleString('en')} ${what}${n === 1 ? '' : 's'}`;
