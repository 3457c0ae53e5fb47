/** `npm run import -- table`: a spreadsheet of mentions becomes records, shown before they are written. */
import { existsSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { Command, InvalidArgumentError, Option } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { CannotRun } from '../../corpus/types.ts';
import { planChanges, textNow, writeChanges } from '../../imports/changes.ts';
import { readMemory } from '../../imports/memory.ts';
import {
  mapColumns,
  mappingFile,
  mappingToSave,
  overlay,
  withPath,
  type MappingFile,
} from '../../imports/tables/mapping.ts';
import { mappingText, readMapping } from '../../imports/tables/mapping-file.ts';
import { placeNamed } from '../../imports/tables/place-named.ts';
import { readMentionTable } from '../../imports/tables/read.ts';
import { recordsOf } from '../../imports/tables/records.ts';
import { paintFor } from '../report/paint.ts';
import { tableJson, tableText, type TableImport } from '../report/table-import.ts';
import { contentOption, formatOption, wholeNumber } from '../shared/options.ts';
import { fromCaller } from '../shared/paths.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';

interface Options {
  content: string;
  format: 'text' | 'json';
  map: Record<string, string>;
  group: string[];
  oneRecord: boolean;
  record: Record<string, unknown>;
  mention: Record<string, unknown>;
  title?: string;
  id?: string;
  dates?: 'day-first' | 'month-first';
  mapping?: string;
  saveMapping?: string;
  show: number;
  write: boolean;
}

/** The command. */
export function tableCommand(): Command {
  return new Command('table')
    .description('a spreadsheet of people that lists name: passengers, households, witnesses, a directory')
    .argument('<file>', 'a table saved as CSV, or as text with semicolons or tabs')
    .addOption(contentOption())
    .option(
      '--map <heading=field>',
      'what a column is, such as "Last name=name.surname"; may be given several times',
      mapped,
      {},
    )
    .option(
      '--group <heading>',
      'a column that tells one record from another; may be given several times',
      listed,
      [],
    )
    .option('--one-record', 'the whole table is one record', false)
    .option(
      '--record <key=value>',
      'what is said of every record, such as form=original or cite.archive="County Clerk"; {Heading} is filled in',
      said,
      {},
    )
    .option('--mention <key=value>', 'what is said of every mention, such as role=passenger', said, {})
    .option('--title <text>', 'the title of each record, such as "Crew of the {Ship}, {Date}"')
    .option('--id <text>', 'the id of each record, in the same way')
    .addOption(
      new Option('--dates <order>', 'how dates such as 4/5/1864 are written').choices([
        'day-first',
        'month-first',
      ]),
    )
    .option('--mapping <file.yaml>', 'a mapping saved before; what is said here goes over it', fromCaller)
    .option(
      '--save-mapping <file.yaml>',
      'saves how the table was taken, to be changed and used again',
      fromCaller,
    )
    .option('--show <number>', 'how many records are shown in full', wholeNumber, 1)
    .option('--write', 'writes the records; without it they are only shown', false)
    .addOption(formatOption())
    .addHelpText(
      'after',
      `
Columns are told by their headings, English or Norwegian; a column that nothing is known of is kept under says.
A table is taken for a copy of a list nobody has seen (form: derivative, seen: transcript). If you typed it yourself
from a film, say so: --record form=original --record seen=film --record made={Arrived}

  npm run import -- table passengers.csv --content ~/tobin
  npm run import -- table census.csv --record series=us-federal-census-1880 --save-mapping census.yaml --write

A record written before is written again where the table has changed and you have not edited it; one you have edited,
and a file of your own, is left as it is.

Exit code: 0 done, 1 some records are in the way and were left as they are, 2 could not run.`,
    )
    .action((file: string, options: Options) => exitWith(() => importTable(fromCaller(file), options)));
}

function importTable(path: string, options: Options): ExitCode {
  const name = basename(path);
  const mapping = saidOf(options);
  const table = readMentionTable(path, name);
  const corpus = loadCorpus(options.content, { schemaOnly: true });
  const mapped = mapColumns(table.headings, mapping, name);
  const made = recordsOf(table, mapped, { placeOf: placeNamed(corpus.places) });
  demandKnown(mapping, corpus);
  if (options.saveMapping) saveMapping(options.saveMapping, mappingText(mappingToSave(mapped)));
  const plan = planChanges(options.content, made.records, readMemory(options.content, 'tables'));
  const written = options.write ? writeChanges(options.content, 'tables', plan) : undefined;
  const done: TableImport = {
    table,
    mapping: mapped,
    made,
    changes: plan.changes,
    textNow: (file) => textNow(options.content, file),
    written,
    content: options.content,
    savedTo: options.saveMapping,
  };
  process.stdout.write(
    options.format === 'json' ? tableJson(done) : tableText(done, options.show, paintFor(process.stdout)),
  );
  return plan.changes.some(({ fate }) => fate === 'taken' || fate === 'edited') ? 1 : 0;
}

function saidOf(options: Options): MappingFile {
  const before = options.mapping ? readMapping(options.mapping) : mappingFile.parse({});
  return overlay(before, {
    columns: options.map,
    record: options.record,
    mention: options.mention,
    group: options.oneRecord ? [] : options.group.length > 0 ? options.group : undefined,
    title: options.title,
    id: options.id,
    dates: options.dates,
  });
}

/** Ids that every record would name must be there: a typing error is better told once than of every record. */
function demandKnown({ record }: MappingFile, corpus: ReturnType<typeof loadCorpus>): void {
  for (const [key, map] of [
    ['place', corpus.places],
    ['series', corpus.series],
    ['partOf', corpus.records],
  ] as const) {
    const id = record[key];
    if (typeof id !== 'string' || id.includes('{') || map.has(id)) continue;
    throw new CannotRun(
      `There is no ${key === 'partOf' ? 'record' : key} ${id} in the content folder, and every record would name it under ${key}. Give another id${key === 'series' ? '; the site’s page of ids lists the built-in ones' : ', or add it first'}.`,
    );
  }
}

function saveMapping(path: string, text: string): void {
  if (existsSync(path))
    throw new CannotRun(
      `${path} is there already; it was left as it is. Name another file with --save-mapping.`,
    );
  writeFileSync(path, text, { flag: 'wx' });
}

function mapped(value: string, before: Record<string, string>): Record<string, string> {
  const at = value.lastIndexOf('=');
  if (at < 1)
    throw new InvalidArgumentError('Write the heading and what it is: --map "Last name=name.surname".');
  return { ...before, [value.slice(0, at).trim()]: value.slice(at + 1).trim() };
}

function said(value: string, before: Record<string, unknown>): Record<string, unknown> {
  const at = value.indexOf('=');
  if (at < 1) throw new InvalidArgumentError('Write a key and its value, such as form=original.');
  return withPath(before, value.slice(0, at).trim(), value.slice(at + 1).trim());
}

function listed(value: string, before: string[]): string[] {
  return [
    ...before,
    ...value
      .split(',')
      .map((one) => one.trim())
      .filter(Boolean),
  ];
}
