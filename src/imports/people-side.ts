/**
 * What one table of people says in the columns that are compared.
 *
 * Rule (common practice): a year of birth is taken from the date where there is one, else as stated, else reckoned
 * from the age and the year of the list.
 */
import { parseName } from '../reasoning/names/parse-name.ts';
import type { FileColumn, PeopleFile } from './people-file.ts';
import type { ColumnUse } from './people-headings.ts';
import { ageOf, dateOf, dayFirstIn, numberOf, yearOf } from './people-values.ts';

/** What one file has for one column of the comparison. */
export interface Values<T> {
  heading: string;
  /** For each row; nothing where it says nothing. */
  at(row: number): T | undefined;
}

export type Reader = (row: number) => number | undefined;

/** What a file says of births. */
export interface Birth {
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

/** One file, asked for what its rows say. */
export class Side {
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

const joined = (parts: readonly (string | undefined)[]) =>
  parts.filter((part) => part !== undefined && part !== '').join(' ') || undefined;
