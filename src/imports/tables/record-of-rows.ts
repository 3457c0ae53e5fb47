/**
 * Rows of a table → what their record says of itself: id, title, citation, form, day and place.
 *
 * Rule: nothing is claimed of a record that was not said. A table somebody else may have made is a derivative of a list
 * that was not examined, and all that was taken from it is one volume: entries by one hand.
 */
import type { TableRow } from '../../corpus/table.ts';
import { CannotRun } from '../../corpus/types.ts';
import type { DayFirst } from '../people-values.ts';
import { dateValue } from './cells.ts';
import type { Field } from './fields.ts';
import { idOf } from './ids.ts';
import type { MappedColumn, Mapping } from './mapping.ts';
import { numberOrText, type CellProblem, type MentionData } from './mentions.ts';
import type { MentionTable } from './read.ts';

export interface TableContext {
  /** The id of a place that is written out or named by its id; nothing where it is not clear. */
  placeOf(text: string): string | undefined;
}

/** One record in the making. */
export class RecordOfRows {
  readonly #table: MentionTable;
  readonly #mapping: Mapping;
  readonly #context: TableContext;
  readonly #rows: readonly TableRow[];
  readonly #dayFirst: DayFirst;
  readonly #stem: string;
  readonly #problems: CellProblem[];

  constructor(
    table: MentionTable,
    mapping: Mapping,
    context: TableContext,
    rows: readonly TableRow[],
    dayFirst: DayFirst,
    stem: string,
    problems: CellProblem[],
  ) {
    this.#table = table;
    this.#mapping = mapping;
    this.#context = context;
    this.#rows = rows;
    this.#dayFirst = dayFirst;
    this.#stem = stem;
    this.#problems = problems;
  }

  id(): string {
    const { said, group } = this.#mapping;
    if (said.id !== undefined) return idOf(this.#filled(said.id)) || this.#stem;
    const own = idOf(group.map((column) => this.#sortable(column)).join(' '));
    if (own === '') return this.#stem;
    // A page number alone says nothing beside the pages of another list.
    return /^[a-z]/.test(own) && own.length > 5 ? own : `${this.#stem}-${own}`;
  }

  record(mentions: readonly MentionData[]): Record<string, unknown> {
    const { said } = this.#mapping;
    const given = this.#fill(said.record) as Record<string, unknown>;
    const title = String(given['title'] ?? this.#title());
    const form = given['form'] ?? 'derivative';
    const made = this.#date('record.made');
    const pages = [...new Set(this.#values('record.page'))];
    const { title: _title, form: _form, cite, derivedFrom, seen, ...others } = given;
    const record = {
      title,
      cite: {
        type: 'document',
        title,
        ...(form !== 'derivative' && made !== undefined ? { issued: made } : {}),
        ...(pages.length > 0
          ? { page: pages.length === 1 ? numberOrText(pages[0]!) : `${pages[0]}–${pages.at(-1)}` }
          : {}),
        ...(cite as object | undefined),
      },
      form,
      ...(derivedFrom !== undefined
        ? { derivedFrom }
        : form === 'derivative'
          ? { derivedFrom: [{ unseen: `what ${this.#table.name} was made from: ${title}` }] }
          : {}),
      ...(seen !== undefined ? { seen } : form === 'derivative' ? { seen: 'transcript' } : {}),
      ...(form !== 'derivative' && made !== undefined ? { made } : {}),
      ...this.#place(),
      ...(form === 'derivative' ? { volume: this.#stem } : {}),
      ...others,
    };
    return { ...record, mentions };
  }

  #title(): string {
    const { said, group, kind } = this.#mapping;
    if (said.title !== undefined) return this.#filled(said.title);
    const [own] = this.#values('record.title');
    const list = titled(this.#table.name.replace(/\.[^.]*$/, ''));
    if (kind === 'passenger-list') {
      const [ship] = this.#values('voyage.ship');
      const date = this.#date('voyage.arrived') ?? this.#date('voyage.sailed');
      const to = this.#values('voyage.to');
      const where = new Set(to).size === 1 ? to[0] : undefined;
      if (ship !== undefined)
        return ['Passenger list of the ' + ship, where, date].filter((part) => part !== undefined).join(', ');
    }
    const values = group
      .filter(({ field }) => field !== 'record.title')
      .map(({ heading, index }) => {
        const value = this.#rows[0]!.cells[index]!;
        return value === '' ? '' : `${heading.toLowerCase()} ${value}`;
      })
      .filter(Boolean);
    return [own ?? list, ...values].join(', ');
  }

  #place(): { place?: string } {
    const [text] = this.#values('record.place');
    if (text === undefined) return {};
    const place = this.#context.placeOf(text);
    if (place !== undefined) return { place };
    this.#problem(
      'record.place',
      'No one place of your content goes by this, so the record says no place where it was made.',
      'Write the id of a place, or add the name to the variants of the place that is meant.',
    );
    return {};
  }

  #date(field: Field): string | undefined {
    const [text] = this.#values(field);
    if (text === undefined) return undefined;
    const date = dateValue(text, this.#dayFirst);
    if (date === undefined && field === 'record.made')
      this.#problem(
        field,
        'This could not be read as a date, so the record says no day when it was made.',
        'Write it as 1864-05-02, 1864-05 or 1864.',
      );
    return date;
  }

  #values(field: Field): string[] {
    return this.#mapping.columns
      .filter((column) => column.field === field)
      .flatMap(({ index }) => this.#rows.map((row) => row.cells[index]!))
      .filter((cell) => cell !== '');
  }

  #problem(field: Field, message: string, help: string): void {
    const column = this.#mapping.columns.find((one) => one.field === field)!;
    const row = this.#rows.find(({ cells }) => cells[column.index] !== '')!;
    this.#problems.push({ row, index: column.index, value: row.cells[column.index]!, message, help });
  }

  /** A date of an id as year, month and day. */
  #sortable({ index, field }: MappedColumn): string {
    const cell = this.#rows[0]!.cells[index]!;
    const isDate = ['voyage.arrived', 'voyage.sailed', 'record.made', 'event.date'].includes(field);
    return (isDate ? dateValue(cell, this.#dayFirst) : undefined) ?? cell;
  }

  /** A text with `{Heading}` filled in from the first row. */
  #filled(text: string): string {
    return text
      .replace(/\{([^{}]+)\}/g, (_all, heading: string) => {
        const column = this.#mapping.columns.find((one) => one.heading === heading.trim());
        if (!column)
          throw new CannotRun(
            `{${heading}} stands in “${text}”, and ${this.#table.name} has no such column. Its headings are ${this.#mapping.columns.map((one) => one.heading).join(', ')}.`,
          );
        return this.#sortable(column);
      })
      .trim();
  }

  #fill(value: unknown): unknown {
    if (typeof value === 'string') return this.#filled(value);
    if (Array.isArray(value)) return value.map((one) => this.#fill(one));
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, this.#fill(one)]));
    return value;
  }
}

function titled(stem: string): string {
  const words = stem.replace(/[-_]+/g, ' ').trim();
  return words === '' ? 'List' : words[0]!.toUpperCase() + words.slice(1);
}
