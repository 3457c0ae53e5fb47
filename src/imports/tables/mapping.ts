/**
 * How the columns of a table become records: what each is, which of them tell one record from another, and what is
 * said of every record. It comes from a mapping file, from the command line over that, and from the headings for the rest.
 */
import { z } from 'zod';
import { nearest } from '../../corpus/suggestions.ts';
import { CannotRun } from '../../corpus/types.ts';
import { plainHeading } from '../people-headings.ts';
import { fieldOf, guessField, joinedFields, saysWord, type Field } from './fields.ts';

const plainText = z.string().trim().min(1);

/** A mapping as it stands in its file, or is said on the command line. */
export const mappingFile = z.strictObject({
  columns: z.record(z.string(), plainText).default({}),
  group: z.union([z.array(plainText), plainText.transform((one) => [one])]).optional(),
  id: plainText.optional(),
  title: plainText.optional(),
  dates: z.enum(['day-first', 'month-first']).optional(),
  record: z.record(z.string(), z.unknown()).default({}),
  mention: z.record(z.string(), z.unknown()).default({}),
});
export type MappingFile = z.output<typeof mappingFile>;

export interface MappedColumn {
  index: number;
  heading: string;
  field: Field;
  /** The author said so. */
  told: boolean;
}

/** A mapping for one table. */
export interface Mapping {
  columns: MappedColumn[];
  /** The columns that tell one record from another; none for one record of the whole table. */
  group: MappedColumn[];
  said: MappingFile;
  kind: TableKind;
}

export type TableKind = 'passenger-list' | 'household-list' | 'list';

/** The mapping of a table by its headings. Throws `CannotRun` where something said of it can’t be. */
export function mapColumns(headings: readonly string[], said: MappingFile, name: string): Mapping {
  const told = new Map<number, Field>();
  for (const [heading, text] of Object.entries(said.columns)) {
    const field = fieldOf(text);
    if (typeof field === 'object') throw new CannotRun(`For the column “${heading}”: ${field.problem}`);
    told.set(findColumn(headings, heading, name), field);
  }
  const taken = new Set([...told.values()]);
  const columns = headings.map((heading, index): MappedColumn => {
    const own = told.get(index);
    if (own) return { index, heading, field: own, told: true };
    let field = guessField(heading);
    // What the author says of a field settles it, and one key is taken from one column.
    const manifold = joinedFields.has(field) || field.startsWith('other.') || field === 'ignore';
    if (taken.has(field) && !manifold) field = `says.${saysWord(heading)}`;
    for (let n = 2; field.startsWith('says.') && taken.has(field); n++)
      field = `says.${saysWord(heading)}${n}`;
    taken.add(field);
    return { index, heading, field, told: false };
  });
  const has = (field: Field) => columns.some((column) => column.field === field);
  if (!has('name') && !has('name.given') && !has('name.surname'))
    throw new CannotRun(
      `None of the columns of ${name} is a name; its headings are ${headings.slice(0, 20).join(', ')}. Say which one is, such as --map "${headings[0] ?? 'Name'}=name".`,
    );
  const kind: TableKind =
    has('voyage.ship') || has('voyage.arrived')
      ? 'passenger-list'
      : has('household') || has('relation')
        ? 'household-list'
        : 'list';
  const group = said.group
    ? said.group.map((heading) => columns[findColumn(headings, heading, name)]!)
    : columns.filter(({ field }) => defaultGroup(field, has));
  return { columns, group, said, kind };
}

/** A list is one ship’s on one day, or one page’s, or one document’s. */
function defaultGroup(field: Field, has: (field: Field) => boolean): boolean {
  if (field === 'voyage.sailed') return !has('voyage.arrived');
  return ['voyage.ship', 'voyage.arrived', 'record.page', 'record.title', 'record.made'].includes(field);
}

function findColumn(headings: readonly string[], wanted: string, name: string): number {
  const exact = headings.indexOf(wanted.trim());
  if (exact >= 0) return exact;
  const plain = headings.findIndex((heading) => plainHeading(heading) === plainHeading(wanted));
  if (plain >= 0) return plain;
  if (/^\d+$/.test(wanted) && Number(wanted) >= 1 && Number(wanted) <= headings.length)
    return Number(wanted) - 1;
  const meant = nearest(wanted, headings);
  throw new CannotRun(
    `${name} has no column “${wanted}”. ${meant ? `Did you mean “${meant}”?` : `Its headings are ${headings.slice(0, 20).join(', ')}.`}`,
  );
}

/** What is said of records and mentions, said once more over what was said before. */
export function overlay(before: MappingFile, over: MappingFile): MappingFile {
  return {
    ...before,
    ...Object.fromEntries(Object.entries(over).filter(([, value]) => value !== undefined)),
    columns: { ...before.columns, ...over.columns },
    record: deep(before.record, over.record),
    mention: deep(before.mention, over.mention),
  };
}

function deep(before: Record<string, unknown>, over: Record<string, unknown>): Record<string, unknown> {
  const both = { ...before };
  for (const [key, value] of Object.entries(over)) {
    const earlier = both[key];
    both[key] = isMap(earlier) && isMap(value) ? deep(earlier, value) : value;
  }
  return both;
}

const isMap = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** `cite.page` and a value as the map `{ cite: { page: value } }`, laid over another. */
export function withPath(
  map: Record<string, unknown>,
  path: string,
  value: unknown,
): Record<string, unknown> {
  const [key, ...rest] = path.split('.');
  return deep(map, {
    [key!]: rest.length === 0 ? value : withPath({}, rest.join('.'), value),
  });
}

/** A mapping as the author may keep it: every column, whether said or told by its heading. */
export function mappingToSave({ columns, group, said }: Mapping): MappingFile {
  const twice = (heading: string) => columns.filter((one) => one.heading === heading).length > 1;
  const nameOf = ({ heading, index }: MappedColumn) =>
    heading === '' || twice(heading) ? String(index + 1) : heading;
  return {
    columns: Object.fromEntries(columns.map((column) => [nameOf(column), column.field])),
    group: group.map(nameOf),
    ...(said.id === undefined ? {} : { id: said.id }),
    ...(said.title === undefined ? {} : { title: said.title }),
    ...(said.dates === undefined ? {} : { dates: said.dates }),
    record: said.record,
    mention: said.mention,
  };
}
