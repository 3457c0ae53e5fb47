/** Two tables of people, or one, made ready to be compared: what they have in common, column by column. */
import type { Column, Tables } from '../reasoning/identity/bulk/columns.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import { numbers, texts, type TakenColumn } from './people-columns.ts';
import type { FileColumn, PeopleFile } from './people-file.ts';
import { plainHeading, type ColumnUse } from './people-headings.ts';
import { Side, type Birth, type Reader } from './people-side.ts';
import { sexOf, yearOf } from './people-values.ts';

export interface PreparedTables {
  tables: Tables;
  taken: TakenColumn[];
  /** What a row of a side says in a column, as people read it; empty where it says nothing. */
  shown(column: Column, side: 'a' | 'b', row: number): string;
  /** Sentences about what was made of the columns. */
  notes: string[];
}

/** The years in which the ages of each file were stated, where that is known. */
export interface StatedYears {
  a?: number;
  b?: number;
}

/** Makes one file (with itself) or two ready. */
export function preparePeople(a: PeopleFile, b: PeopleFile | undefined, years: StatedYears): PreparedTables {
  const notes: string[] = [];
  const taken: TakenColumn[] = [];
  const sides: Side[] = [new Side(a, years.a, notes), ...(b ? [new Side(b, years.b, notes)] : [])];
  const names = (kind: 'given' | 'surname') =>
    texts(kind, sides, (side) => side.names(kind), taken, kind === 'given' ? 'given name' : 'surname');
  names('given');
  names('surname');
  numbers('sex', 'sex', sides, (side) => side.number('sex', sexOf), taken);
  birth(sides, taken, notes);
  for (const use of ['spouse', 'father', 'mother'] as const)
    texts('kin', sides, (side) => side.text(use, firstName), taken, use);
  numbers('arrival', 'arrival', sides, (side) => side.number('arrival-year', yearOf), taken);
  freeTexts(sides, taken, notes);
  const rowsA = a.rows;
  const tables: Tables = {
    within: !b,
    rowsA,
    rowsB: b ? b.rows : rowsA,
    columns: taken.map(({ column }) => column),
  };
  return {
    tables,
    taken,
    notes,
    shown(column, side, row) {
      const value = column[side][row]!;
      if (value < 0) return '';
      if ('values' in column) return column.values[value]!;
      return column.kind === 'sex' ? (value === 1 ? 'M' : 'F') : String(value);
    },
  };
}

/** Kin stand in full in one list and by given name alone in another. */
function firstName(cell: string): string {
  const [first = ''] = (parseName(cell).given || cell.trim()).split(/[\s,]+/);
  return first;
}

/** When people were born, as far as every side says it in one way. */
function birth(sides: readonly Side[], taken: TakenColumn[], notes: string[]): void {
  const births = sides.map((side) => side.birth());
  if (births.some((one) => one === undefined)) {
    if (births.some((one) => one !== undefined))
      notes.push('Only one of the files says when people were born, so births were not compared.');
    return;
  }
  const all = births as Birth[];
  all.forEach((one, at) => {
    if (one.reckonedFrom !== undefined)
      notes.push(
        `${sides[at]!.file.name}: years of birth were reckoned from “${one.ageHeading}” and ${/^\d+$/.test(one.reckonedFrom) ? `the year ${one.reckonedFrom}` : `“${one.reckonedFrom}”`}.`,
      );
  });
  const values =
    (pick: (one: Birth) => Reader | undefined, heading: (one: Birth) => string) => (side: Side) => {
      const one = all[sides.indexOf(side)]!;
      const at = pick(one);
      return at && { heading: heading(one), at };
    };
  const toTheDay = all.every(({ month, day }) => month && day);
  if (all.every(({ year }) => year))
    numbers(
      toTheDay ? 'yearStated' : 'year',
      'year of birth',
      sides,
      values(
        (one) => one.year,
        (one) => one.heading,
      ),
      taken,
    );
  else if (all.every(({ age }) => age)) {
    if (sides.length === 1)
      numbers(
        'age',
        'age',
        sides,
        values(
          (one) => one.age,
          (one) => one.ageHeading,
        ),
        taken,
      );
    else
      notes.push(
        'The ages were not compared, since it is not known in which years they were stated. Say so with --year-a and --year-b, or add a column “year”.',
      );
  } else
    notes.push(
      'Births were not compared: one file states years, the other only ages. Say in which year the ages were stated with --year-a or --year-b.',
    );
  numbers(
    'month',
    'month of birth',
    sides,
    values(
      (one) => one.month,
      (one) => one.monthHeading,
    ),
    taken,
  );
  numbers(
    'day',
    'day of birth',
    sides,
    values(
      (one) => one.day,
      (one) => one.dayHeading,
    ),
    taken,
  );
}

/** Places, trades and whatever else both files have: by equal headings first, then by what they are taken for. */
function freeTexts(sides: readonly Side[], taken: TakenColumn[], notes: string[]): void {
  const uses: ColumnUse[] = ['birthplace', 'residence', 'occupation', 'text'];
  const [first, second] = sides.map((side) => side.file.columns.filter(({ use }) => uses.includes(use)));
  const pairs: [FileColumn, FileColumn][] = [];
  const left = new Set(second ?? first!);
  for (const one of first!) {
    const other = second
      ? [...left].find(({ heading }) => plainHeading(heading) === plainHeading(one.heading))
      : one;
    if (!other) continue;
    pairs.push([one, other]);
    left.delete(other);
  }
  for (const one of first!) {
    if (one.use === 'text' || pairs.some(([mine]) => mine === one)) continue;
    const other = [...left].find(({ use }) => use === one.use);
    if (!other) continue;
    pairs.push([one, other]);
    left.delete(other);
  }
  const useless: string[] = [];
  for (const [one, other] of pairs) {
    if (one.use === 'text' && !sharesValues(one, other)) {
      useless.push(one.heading);
      continue;
    }
    texts(
      'text',
      sides,
      (side) => {
        const { heading, values, cells } = side === sides[0] ? one : other;
        return { heading, at: (row) => values[cells[row]!] };
      },
      taken,
      one.use === 'text' ? one.heading : one.heading.toLowerCase(),
    );
  }
  const alone = [
    ...first!.filter((one) => !pairs.some(([mine]) => mine === one)),
    ...(second ? [...left] : []),
  ].map(({ heading }) => heading);
  if (useless.length > 0) notes.push(`Left out, since no two rows say the same: ${useless.join(', ')}.`);
  if (alone.length > 0) notes.push(`Left out, since only one of the files has it: ${alone.join(', ')}.`);
}

/** Whether some value stands in both files, or twice in the one; and not everybody has the same. */
function sharesValues(one: FileColumn, other: FileColumn): boolean {
  if (one === other) {
    const stated = one.cells.reduce((sum, value) => sum + (value >= 0 ? 1 : 0), 0);
    return one.values.length > 1 && one.values.length < stated;
  }
  const held = new Set(one.values);
  return (one.values.length > 1 || other.values.length > 1) && other.values.some((value) => held.has(value));
}
