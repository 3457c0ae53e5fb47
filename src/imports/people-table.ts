/**
 * Two tables of people, or one, made ready to be compared: what they have in common, column by column.
 *
 * Rule (common practice): a year of birth is taken from the date where there is one, else as stated, else reckoned
 * from the age and the year of the list.
 */
import {
  noNumber,
  noText,
  type Column,
  type NumberColumn,
  type Tables,
  type TextColumn,
} from '../reasoning/identity/bulk/columns.ts';
import { foldName } from '../reasoning/names/fold.ts';
import { parseName } from '../reasoning/names/parse-name.ts';
import type { FileColumn, PeopleFile } from './people-file.ts';
import { plainHeading, type ColumnUse } from './people-headings.ts';
import { ageOf, dateOf, dayFirstIn, numberOf, sexOf, yearOf } from './people-values.ts';

/** A column of the comparison, and the columns of the files that it was made from. */
export interface TakenColumn {
  column: Column;
  from: readonly [a: string, b: string];
}

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

/** What one file has for one column of the comparison. */
interface Values<T> {
  heading: string;
  /** For each row; nothing where it says nothing. */
  at(row: number): T | undefined;
}

/** One file, asked for what its rows say. */
class Side {
  readonly file: PeopleFile;
  readonly #year: number | undefined;
  readonly #notes: string[];
  #parsed: { given: string; surname: string }[] | undefined;

  constructor(file: PeopleFile, year: number | undefined, notes: string[]) {
    this.file = file;
    this.#year = year;
    this.#notes = notes;
  }

  columns(use: ColumnUse): FileColumn[] {
    return this.file.columns.filter((column) => column.use === use);
  }

  /** Given names or surname: the columns of it in their order, else the part of the whole name. */
  names(kind: 'given' | 'surname'): Values<string> | undefined {
    const parts = this.columns(kind).toSorted((one, other) => one.order - other.order);
    if (parts.length > 0)
      return {
        heading: parts.map(({ heading }) => heading).join(' + '),
        at: (row) => joined(parts.map(({ values, cells }) => values[cells[row]!])),
      };
    const whole = this.columns('name')[0];
    if (!whole) return undefined;
    const read = (this.#parsed ??= whole.values.map((text) => parseName(text)));
    return { heading: whole.heading, at: (row) => read[whole.cells[row]!]?.[kind] || undefined };
  }

  text(use: ColumnUse, read: (cell: string) => string): Values<string> | undefined {
    const column = this.columns(use)[0];
    if (!column) return undefined;
    const texts = column.values.map(read);
    return { heading: column.heading, at: (row) => texts[column.cells[row]!] || undefined };
  }

  /** Numbers read from a column; what can't be read is told. */
  number(use: ColumnUse, read: (cell: string) => number | undefined): Values<number> | undefined {
    const column = this.columns(use)[0];
    return column && { heading: column.heading, at: this.#read(column, read) };
  }

  #read<T>(column: FileColumn, read: (cell: string) => T | undefined): (row: number) => T | undefined {
    const values = column.values.map(read);
    const wrong = column.cells.reduce(
      (sum, value) => sum + (value >= 0 && values[value] === undefined ? 1 : 0),
      0,
    );
    if (wrong > 0) {
      const row = column.cells.findIndex((value) => value >= 0 && values[value] === undefined);
      const cell = column.values[column.cells[row]!]!;
      this.#notes.push(
        `${this.file.name}: in ${wrong === 1 ? 'one row' : `${wrong} rows`} “${column.heading}” could not be read and was left out, such as “${cell.slice(0, 40)}” on line ${this.file.lines[row]}.`,
      );
    }
    return (row) => values[column.cells[row]!];
  }

  birth(): Birth | undefined {
    const date = this.columns('birth-date')[0];
    const read =
      date &&
      this.#read(
        date,
        (
          (order) => (cell: string) =>
            dateOf(cell, order)
        )(dayFirstIn(date.values)),
      );
    const year = this.number('birth-year', yearOf);
    const month = this.number('birth-month', (cell) => numberOf(cell, 1, 12));
    const day = this.number('birth-day', (cell) => numberOf(cell, 1, 31));
    const ages = this.columns('age')[0];
    const age = ages && this.#read(ages, ageOf);
    const list = this.columns('year')[0];
    const listYear = list && age ? this.#read(list, yearOf) : undefined;
    const fixed = ages?.year ?? this.#year;
    const reckoned =
      age && (listYear || fixed !== undefined)
        ? (row: number) => {
            const years = age(row);
            const of = listYear?.(row) ?? fixed;
            return years === undefined || of === undefined ? undefined : of - years;
          }
        : undefined;
    if (!read && !year && !age) return undefined;
    const headings = [date?.heading, year?.heading].filter((one) => one !== undefined);
    return {
      heading: headings.length > 0 ? headings.join(' + ') : ages!.heading,
      year:
        read || year || reckoned ? (row) => read?.(row)?.year ?? year?.at(row) ?? reckoned?.(row) : undefined,
      month: read || month ? (row) => read?.(row)?.month ?? month?.at(row) : undefined,
      day: read || day ? (row) => read?.(row)?.day ?? day?.at(row) : undefined,
      monthHeading: month?.heading ?? date?.heading ?? '',
      dayHeading: day?.heading ?? date?.heading ?? '',
      age,
      ageHeading: ages?.heading ?? '',
      byAge: !read && !year,
      reckonedFrom: reckoned && !read && !year ? (listYear ? list!.heading : String(fixed)) : undefined,
    };
  }
}

type Reader = (row: number) => number | undefined;
interface Birth {
  heading: string;
  year: Reader | undefined;
  month: Reader | undefined;
  day: Reader | undefined;
  monthHeading: string;
  dayHeading: string;
  age: Reader | undefined;
  ageHeading: string;
  /** The year follows from an age. */
  byAge: boolean;
  /** What year the ages were counted back from. */
  reckonedFrom: string | undefined;
}

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

/** A column of texts, where every side has it. */
function texts(
  kind: TextColumn['kind'],
  sides: readonly Side[],
  read: (side: Side) => Values<string> | undefined,
  taken: TakenColumn[],
  name: string,
): void {
  const values = sides.map(read);
  if (values.some((one) => one === undefined)) return;
  const numbers = new Map<string, number>();
  const coded = values.map((one, at) => {
    const cells = new Int32Array(sides[at]!.file.rows);
    for (let row = 0; row < cells.length; row++) {
      const text = one!.at(row);
      if (text === undefined || foldName(text) + text.replace(/\D/g, '') === '') {
        cells[row] = noText;
        continue;
      }
      let number = numbers.get(text);
      if (number === undefined) numbers.set(text, (number = numbers.size));
      cells[row] = number;
    }
    return cells;
  });
  if (numbers.size === 0) return;
  taken.push({
    column: { kind, name, values: [...numbers.keys()], a: coded[0]!, b: coded[1] ?? coded[0]! },
    from: [values[0]!.heading, (values[1] ?? values[0])!.heading],
  });
}

/** A column of numbers, where every side has it. */
function numbers(
  kind: NumberColumn['kind'],
  name: string,
  sides: readonly Side[],
  read: (side: Side) => Values<number> | undefined,
  taken: TakenColumn[],
): void {
  const values = sides.map(read);
  if (values.some((one) => one === undefined)) return;
  let stated = 0;
  const coded = values.map((one, at) => {
    const cells = new Int16Array(sides[at]!.file.rows);
    for (let row = 0; row < cells.length; row++) {
      const value = one!.at(row);
      cells[row] = value ?? noNumber;
      if (value !== undefined) stated++;
    }
    return cells;
  });
  if (stated === 0) return;
  taken.push({
    column: { kind, name, a: coded[0]!, b: coded[1] ?? coded[0]! },
    from: [values[0]!.heading, (values[1] ?? values[0])!.heading],
  });
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

const joined = (parts: readonly (string | undefined)[]) =>
  parts.filter((part) => part !== undefined && part !== '').join(' ') || undefined;
/** Kin stand in full in one list and by given name alone in another. */
const firstName = (cell: string) => cell.trim().split(/[\s,]+/)[0]!;
