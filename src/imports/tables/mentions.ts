/** Rows of a table → mentions of one record, each as its row says it. */
import type { TableRow } from '../../corpus/table.ts';
import { ageValue, dateValue, joinedAge, relationValue, sexValue } from './cells.ts';
import { saysWord, type Field } from './fields.ts';
import type { MappedColumn } from './mapping.ts';
import type { DayFirst } from '../people-values.ts';

/** A mention in the form of a record file, its keys in the order in which they are written. */
export type MentionData = Record<string, unknown> & { id: string };

/** Something about one cell that could not be taken as its column says. */
export interface CellProblem {
  row: TableRow;
  index: number;
  value: string;
  message: string;
  help: string;
}

export interface RowSet {
  columns: readonly MappedColumn[];
  rows: readonly TableRow[];
  dayFirst: DayFirst;
  /** What is said of every mention. */
  common: Readonly<Record<string, unknown>>;
  /** The role where the row names none. */
  role: string | undefined;
  /** Rows in which a name stands as a ditto, by the name it repeats. */
  repeated: (row: TableRow, index: number) => string | undefined;
}

const keyOrder =
  'id name alsoRead role sex age born birthplace residence lastResidence occupation immigrated voyage event line household joining nearest present says inferred informants relations copies'.split(
    ' ',
  );

/** The mentions of one record, with what could not be read of them. */
export function mentionsOf(set: RowSet): { mentions: MentionData[]; problems: CellProblem[] } {
  const mentions: MentionData[] = [];
  const problems: CellProblem[] = [];
  const heads = new Heads();
  set.rows.forEach((row, at) => {
    const reader = new RowReader(set, row, `m${at + 1}`, problems);
    const mention = reader.mention();
    const relation = reader.relation();
    if (relation) {
      const household = mention['household'] ?? heads.latestHousehold;
      if (relation.as === 'head') heads.begin(mention['household'], mention.id);
      else {
        const head = heads.of(household);
        if (mention['household'] === undefined && heads.latestHousehold !== undefined)
          mention['household'] = heads.latestHousehold;
        if (head) mention['relations'] = [{ as: relation.as, of: head }];
        else
          reader.problem(
            'relation',
            'There is no head of this household before this row, so nobody is named whom the relation is to. The word was kept as the role.',
            'Put the head of each household first, with the word head, or number the households.',
          );
      }
    }
    mentions.push(inOrder(mention), ...reader.others(mention.id).map(inOrder));
  });
  return { mentions, problems };
}

/** The heads of the households met so far. */
class Heads {
  readonly #byHousehold = new Map<unknown, string>();
  #latest: string | undefined;
  latestHousehold: unknown;

  begin(household: unknown, mention: string): void {
    this.#latest = mention;
    this.latestHousehold = household;
    if (household !== undefined) this.#byHousehold.set(household, mention);
  }

  of(household: unknown): string | undefined {
    return household === undefined ? this.#latest : this.#byHousehold.get(household);
  }
}

class RowReader {
  readonly #set: RowSet;
  readonly #row: TableRow;
  readonly #id: string;
  readonly #problems: CellProblem[];
  readonly #says: Record<string, string | number> = {};

  constructor(set: RowSet, row: TableRow, id: string, problems: CellProblem[]) {
    this.#set = set;
    this.#row = row;
    this.#id = id;
    this.#problems = problems;
  }

  mention(): MentionData {
    const voyage = this.#group(
      'voyage',
      ['ship', 'from', 'to', 'bound'],
      ['sailed', 'arrived'],
      ['ticket', 'line'],
    );
    const event = this.#group('event', ['kind', 'place'], ['date'], []);
    // A record's event has a kind, of its row or of the whole table; a date or place of one alone is kept as it stands.
    const ofAll = this.#set.common['event'] as { kind?: string } | undefined;
    if (event && event['kind'] === undefined && ofAll?.kind === undefined)
      for (const [key, value] of Object.entries(event)) {
        delete event[key];
        this.#says[`event${key[0]!.toUpperCase()}${key.slice(1)}`] = value as string;
      }
    const { name, alsoRead } = this.#name();
    const relation = this.relation();
    for (const { field, index } of this.#set.columns) {
      const cell = this.#row.cells[index]!;
      if (field.startsWith('says.') && cell !== '') this.#says[field.slice(5)] = numberOrText(cell);
    }
    const mention: Record<string, unknown> = {
      ...this.#set.common,
      id: this.#id,
      name,
      alsoRead: alsoRead.length > 0 ? alsoRead : undefined,
      role: this.#text('role')?.toLowerCase() ?? relation?.word ?? this.#set.role,
      sex: this.#read('sex', sexValue, 'M or F'),
      age: this.#age(),
      born: this.#born(),
      birthplace: this.#joined('birthplace'),
      residence: this.#joined('residence'),
      lastResidence: this.#joined('lastResidence'),
      occupation: this.#joined('occupation'),
      immigrated: this.#read('immigrated', this.#date, 'a date'),
      voyage,
      event: event && Object.keys(event).length > 0 ? event : undefined,
      line: numberOrNothing(this.#text('line')),
      household: numberOrNothing(this.#text('household')),
      joining: this.#group('joining', ['name', 'relation', 'address'], [], []),
      nearest: this.#group('nearest', ['name', 'relation', 'address'], [], []),
      says: undefined,
    };
    const common = this.#set.common;
    for (const key of Object.keys(mention)) if (mention[key] === undefined) delete mention[key];
    const says = { ...(common['says'] as object | undefined), ...this.#says };
    if (Object.keys(says).length > 0) mention['says'] = says;
    for (const [key, value] of Object.entries(common)) mention[key] ??= value;
    if (common['voyage'] && voyage) mention['voyage'] = { ...(common['voyage'] as object), ...voyage };
    if (common['event'] && event) mention['event'] = { ...(common['event'] as object), ...event };
    return mention as MentionData;
  }

  relation() {
    const text = this.#text('relation');
    return text === undefined ? undefined : relationValue(text);
  }

  /** Others whom the row names: a father, a witness. Kin who are only named are not said to have been there. */
  others(id: string): MentionData[] {
    const found: MentionData[] = [];
    const counts = new Map<string, number>();
    for (const { field, index } of this.#set.columns) {
      const name = this.#row.cells[index]!;
      if (!field.startsWith('other.') || name === '') continue;
      const role = field.slice(6);
      const count = (counts.get(role) ?? 0) + 1;
      counts.set(role, count);
      const kin = kinRoles[role];
      found.push({
        id: `${id}-${role.toLowerCase()}${count > 1 ? `-${count}` : ''}`,
        name,
        role,
        ...(kin ? { present: false } : {}),
        relations: [{ as: kin ?? role, of: id }],
      });
    }
    return found;
  }

  problem(field: Field, message: string, help: string): void {
    const column = this.#column(field);
    if (!column) return;
    const { index } = column;
    this.#problems.push({ row: this.#row, index, value: this.#row.cells[index]!, message, help });
  }

  #column(field: Field): MappedColumn | undefined {
    return this.#set.columns.find((column) => column.field === field);
  }

  #text(field: Field): string | undefined {
    const column = this.#column(field);
    const cell = column ? this.#row.cells[column.index]! : '';
    return cell === '' ? undefined : cell;
  }

  #joined(field: Field): string | undefined {
    const cells = this.#set.columns
      .filter((column) => column.field === field)
      .map(({ index }) => this.#row.cells[index]!)
      .filter((cell) => cell !== '');
    return cells.length > 0 ? cells.join(', ') : undefined;
  }

  #name(): { name: string | undefined; alsoRead: string[] } {
    const alsoRead = this.#set.columns
      .filter(({ field }) => field === 'alsoRead')
      .flatMap(({ index }) => this.#row.cells[index]!.split(';').map((one) => one.trim()))
      .filter(Boolean);
    const whole = this.#text('name');
    const parts = (read: (column: MappedColumn) => string) =>
      (['name.prefix', 'name.given', 'name.surname', 'name.suffix'] as const)
        .flatMap((field) => this.#set.columns.filter((column) => column.field === field).map(read))
        .filter(Boolean)
        .join(' ') || undefined;
    const name = whole ?? parts(({ index }) => this.#row.cells[index]!);
    if (whole === undefined && name !== undefined) {
      const meant = parts(({ index }) => this.#set.repeated(this.#row, index) ?? this.#row.cells[index]!);
      if (meant !== undefined && meant !== name) alsoRead.unshift(meant);
    }
    return { name, alsoRead };
  }

  /** A value of a column in the form of a record, or the cell kept under `says`, with a problem. */
  #read<T>(field: Field, value: (cell: string) => T | undefined, what: string): T | undefined {
    const cell = this.#text(field);
    if (cell === undefined) return undefined;
    const found = value(cell);
    if (found === undefined) this.#keep(field, what);
    return found;
  }

  #keep(field: Field, what: string): void {
    const column = this.#column(field)!;
    const word = saysWord(column.heading);
    this.#says[word] = numberOrText(this.#row.cells[column.index]!);
    this.problem(
      field,
      `This could not be read as ${what}, and was kept as says.${word}.`,
      helpFor[what] ?? '',
    );
  }

  readonly #date = (cell: string) => dateValue(cell, this.#set.dayFirst);

  #age(): number | string | undefined {
    const cells = (['age', 'age.months', 'age.days'] as const).map((field) => this.#text(field) ?? '');
    if (cells.every((cell) => cell === '')) return undefined;
    if (cells[1] === '' && cells[2] === '') return this.#read('age', ageValue, 'an age');
    const age = joinedAge(cells[0]!, cells[1]!, cells[2]!);
    if (age === undefined)
      for (const field of ['age', 'age.months', 'age.days'] as const)
        if (this.#text(field) !== undefined) this.#keep(field, 'an age');
    return age;
  }

  #born(): string | number | undefined {
    const whole = this.#read('born', this.#date, 'a date');
    if (whole !== undefined) return whole;
    const [year, month, day] = (['born.year', 'born.month', 'born.day'] as const).map((f) => this.#text(f));
    if (year === undefined) return undefined;
    const text = [day, month, year].filter((part) => part !== undefined).join(' ');
    const date = dateValue(text, true);
    if (date === undefined)
      for (const field of ['born.year', 'born.month', 'born.day'] as const)
        if (this.#text(field) !== undefined) this.#keep(field, 'a date');
    return date;
  }

  #group(
    name: 'voyage' | 'event' | 'joining' | 'nearest',
    texts: readonly string[],
    dates: readonly string[],
    numbers: readonly string[],
  ): Record<string, unknown> | undefined {
    const found: Record<string, unknown> = {};
    for (const { field } of this.#set.columns) {
      const [first, key] = field.split('.');
      if (first !== name || key === undefined) continue;
      const value = dates.includes(key)
        ? this.#read(field, this.#date, 'a date')
        : numbers.includes(key)
          ? numberOrNothing(this.#text(field))
          : texts.includes(key)
            ? this.#text(field)
            : undefined;
      if (value !== undefined) found[key] = value;
    }
    return Object.keys(found).length > 0 ? found : undefined;
  }
}

const helpFor: Record<string, string> = {
  'an age':
    'A record holds an age as 31, 31y 4m, 7m, 3w, 12d or 5/12. Where the list says one of these, correct the cell.',
  'a date':
    'Write it as 1864-05-02, 1864-05 or 1864, or say with --dates whether days or months come first in dates such as 4/5/1864.',
  'M or F': 'Write M or F where the list says so; anything else is kept in its own words.',
};

const kinRoles: Record<string, string> = {
  father: 'parent',
  mother: 'parent',
  parent: 'parent',
  spouse: 'spouse',
  husband: 'spouse',
  wife: 'spouse',
  child: 'child',
  son: 'child',
  daughter: 'child',
  brother: 'sibling',
  sister: 'sibling',
};

/** A number where nothing of its writing is lost. */
export function numberOrText(cell: string): string | number {
  return /^(?:0|[1-9]\d{0,14})$/.test(cell) ? Number(cell) : cell;
}
const numberOrNothing = (cell: string | undefined) => (cell === undefined ? undefined : numberOrText(cell));

function inOrder(mention: MentionData): MentionData {
  const ordered: Record<string, unknown> = {};
  for (const key of keyOrder) if (mention[key] !== undefined) ordered[key] = mention[key];
  for (const [key, value] of Object.entries(mention)) ordered[key] ??= value;
  return ordered as MentionData;
}
