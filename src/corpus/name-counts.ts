/** The author's own counts of names by place: the tables in `names/`. */
import type { RuleId } from '../catalogue/rules.ts';
import type { Finding } from '../model/finding.ts';
import type { NameCount } from '../model/name-count.ts';
import type { Place } from '../model/place.ts';
import { head, type ContentFolder } from './files.ts';
import { finding, listed, quoted } from './finding.ts';
import { nearest } from './suggestions.ts';
import { readTable, type Table } from './table.ts';

const columns = ['name', 'count', 'part', 'place', 'sex', 'total', 'source'] as const;
type Column = (typeof columns)[number];

/** Says what is wrong with a list, at a line and, where it is known, a cell of it. */
type Say = (rule: RuleId, line: number, cell: string | undefined, message: string, help: string) => void;

/**
 * Reads every table of `names/`. A row that is wrong is a finding and is left out; the rest is still read.
 *
 * A table has a line of headings: `name` and `count`, and if need be `part` (surname or given; surname where left
 * out), `place` (an id), `sex` (M or F), `total` (all that were counted) and `source`.
 */
export function readNameCounts(
  folder: ContentFolder,
  places: ReadonlyMap<string, Place>,
  findings: Finding[],
): NameCount[] {
  const counts: NameCount[] = [];
  for (const { name, file, isFolder } of folder.listTop('names')) {
    if (isFolder || !name.endsWith('.csv')) {
      findings.push(
        finding(
          'file-is-expected',
          head(file),
          `This ${isFolder ? 'folder' : 'file'} is not read: names/ holds .csv files.`,
          'Save a list of names as comma-separated text with the ending .csv, or move the file out.',
        ),
      );
      continue;
    }
    const source = folder.read(file);
    if (!source) continue;
    const lines = source.text.split('\n');
    const say: Say = (rule, line, cell, message, help) => {
      const column = cell ? (lines[line - 1] ?? '').indexOf(cell) : -1;
      findings.push(finding(rule, { file, line, column: Math.max(0, column) + 1 }, message, help));
    };
    counts.push(...countsOf(readTable(source.text), file, places, say));
  }
  return counts;
}

function countsOf(table: Table, file: string, places: ReadonlyMap<string, Place>, say: Say): NameCount[] {
  for (const { line, message, help } of table.problems)
    say('name-list-is-readable', Math.max(1, line), undefined, message, help);
  const header = headings(table, say);
  if (!header) return [];
  const counts: NameCount[] = [];
  const seen = new Map<string, number>();
  for (const { line, cells } of table.rows) {
    const row = countOf(line, (column) => cells[header.get(column) ?? -1]?.trim() ?? '', file, places, say);
    if (!row) continue;
    const key = JSON.stringify([row.name.toLowerCase(), row.part, row.place, row.sex]);
    const first = seen.get(key);
    if (first !== undefined) {
      say(
        'name-list-is-readable',
        line,
        row.name,
        `${quoted(row.name)} is counted twice for one place: here and on line ${first}.`,
        'Keep one of the rows, or add the counts together.',
      );
      continue;
    }
    seen.set(key, line);
    counts.push(row);
  }
  return counts;
}

function headings(table: Table, say: Say): Map<Column, number> | undefined {
  const words = table.header.map((given) => given.trim().toLowerCase());
  const missing = (['name', 'count'] as const).filter((column) => !words.includes(column));
  if (missing.length > 0) {
    say(
      'name-list-is-readable',
      1,
      undefined,
      `The first line of this list has no heading ${listed(missing)}.`,
      'Begin the file with a line such as: name,count,total,place,source',
    );
    return undefined;
  }
  const found = new Map<Column, number>();
  words.forEach((word, index) => {
    const column = columns.find((one) => one === word);
    if (word === '') return;
    if (column && !found.has(column)) {
      found.set(column, index);
      return;
    }
    const given = table.header[index]!;
    const meant = nearest(word, columns);
    say(
      'name-list-is-readable',
      1,
      given,
      column ? `The heading ${quoted(given)} stands twice.` : `The heading ${quoted(given)} is not known.`,
      meant && !column ? `Did you mean ${meant}?` : `The headings are ${listed(columns, 'and')}.`,
    );
  });
  return found;
}

/** One row, or nothing where it cannot be counted with. */
function countOf(
  line: number,
  cell: (column: Column) => string,
  file: string,
  places: ReadonlyMap<string, Place>,
  say: Say,
): NameCount | undefined {
  const name = cell('name');
  if (name === '') {
    say(
      'name-list-is-readable',
      line,
      undefined,
      'This row has no name.',
      'Give the name, or take the row out.',
    );
    return undefined;
  }
  const count = whole(cell('count'));
  const total = cell('total') === '' ? undefined : whole(cell('total'));
  if (count === undefined || (total === undefined && cell('total') !== '')) {
    const wrong = count === undefined ? 'count' : 'total';
    say(
      'name-list-is-readable',
      line,
      cell(wrong),
      cell(wrong) === ''
        ? `${quoted(name)} has no ${wrong}.`
        : `The ${wrong} of ${quoted(name)} is ${quoted(cell(wrong))}, which is no whole number.`,
      'Write how many people bear the name, in digits, such as 21.',
    );
    return undefined;
  }
  if (total !== undefined && total < count) {
    say(
      'name-list-is-readable',
      line,
      cell('total'),
      `${quoted(name)} has ${count} bearers among a total of ${total}, which cannot be.`,
      'The total is everybody that was counted, whatever their name.',
    );
    return undefined;
  }
  const part = (cell('part') || 'surname').toLowerCase();
  if (part !== 'surname' && part !== 'given') {
    say(
      'name-list-is-readable',
      line,
      cell('part'),
      `${quoted(cell('part'))} is not a part of a name that is counted.`,
      'Write surname or given.',
    );
    return undefined;
  }
  const sex = cell('sex').toUpperCase();
  if (sex !== '' && sex !== 'M' && sex !== 'F') {
    say(
      'name-list-is-readable',
      line,
      cell('sex'),
      `${quoted(cell('sex'))} is not known as a sex.`,
      'Write M or F, or leave it empty.',
    );
    return undefined;
  }
  const place = cell('place');
  if (place !== '' && !places.has(place)) {
    const meant = nearest(place, places.keys());
    say(
      'reference-resolves',
      line,
      place,
      `There is no place ${quoted(place)}.`,
      meant ? `Did you mean ${meant}?` : 'Correct the id, or add a place of that id in places/.',
    );
    return undefined;
  }
  return {
    name,
    part,
    count,
    ...(total === undefined ? {} : { total }),
    ...(place === '' ? {} : { place }),
    ...(sex === '' ? {} : { sex }),
    source: cell('source') || file,
  };
}

/** A whole number, with or without separators of thousands. */
function whole(text: string): number | undefined {
  return /^\d{1,3}(?:[, \u00a0\u202f]?\d{3}){0,3}$|^\d{1,12}$/.test(text)
    ? Number(text.replace(/[, \u00a0\u202f]/g, ''))
    : undefined;
}
