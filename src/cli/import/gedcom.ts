/** `npm run import -- gedcom FILE`. */
import {
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { setFlagsFromString } from 'node:v8';
import { basename, join } from 'node:path';
import { Command, InvalidArgumentError } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { CannotRun } from '../../corpus/types.ts';
import { writeChanges } from '../../imports/changes.ts';
import { slug } from '../../imports/gedcom/ids.ts';
import { planGedcom, type GedcomImport } from '../../imports/gedcom/import.ts';
import { BrokenFile } from '../../imports/gedcom/problem.ts';
import { sharedPeople } from '../../imports/gedcom/remembered.ts';
import {
  faultsReport,
  importReport,
  reportFile,
  shortReport,
  wholeReport,
} from '../../imports/gedcom/report.ts';
import type { Tree } from '../../imports/gedcom/tree.ts';
import { gedcomNames, readMemory } from '../../imports/memory.ts';
import { writeWhole } from '../../imports/whole-file.ts';
import { idPattern } from '../../model/common.ts';
import { titleFromId } from '../new/record.ts';
import { yamlText } from '../new/yaml-text.ts';
import { contentOption, formatOption, todayOption } from '../shared/options.ts';
import { fromCaller } from '../shared/paths.ts';
import { progressOn } from '../shared/progress.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';

interface Options {
  content: string;
  name?: string;
  country?: string;
  lenient: boolean;
  write: boolean;
  format: 'text' | 'json';
  today: string;
}

/** The command that imports GEDCOM. */
export function gedcomImport(): Command {
  return new Command('gedcom')
    .description('a family file: GEDCOM 7.0 or 5.5.1')
    .argument('<file>', 'the file, usually ending in .ged')
    .addOption(contentOption())
    .option(
      '--name <name>',
      'what the import is called; a newer file goes under the name of the first (default: from the file)',
      checkedName,
    )
    .option('--country <place>', 'the id of the country in which places lie that name none')
    .option('--lenient', 'read a file of 7.0 that breaks its grammar as far as it goes', false)
    .option('--write', 'write it; without this, what would be written is shown', false)
    .addOption(formatOption())
    .addOption(todayOption())
    .addHelpText(
      'after',
      `
People go into lists under people/, places into places/, and what sources say into records/. What was changed or left
is told by line in imports/NAME.report.txt. Imported again, a newer file touches only what you have not edited.

  npm run import -- gedcom tobin.ged --content ~/tobin
  npm run import -- gedcom tobin.ged --content ~/tobin --write
  npm run import -- gedcom tobin-2026.ged --name tobin --content ~/tobin --write`,
    )
    .action((file: string, options: Options) => exitWith(() => run(fromCaller(file), options)));
}

async function run(path: string, options: Options): Promise<ExitCode> {
  demandFile(path);
  // A file of a hundred thousand people stays within a gigabyte when room is made early.
  setFlagsFromString('--heap-growing-percent=20');
  const name = options.name ?? (slug(basename(path).replace(/\.ged$/i, '')) || 'family');
  const progress = progressOn(process.stderr);
  progress.say('Reading …');
  const begins = isNothing(options.content);
  // What is not there yet is compared with a folder that holds nothing.
  const content = begins ? mkdtempSync(join(tmpdir(), 'whence-import-')) : options.content;
  try {
    if (begins) writeWhole(content, 'site.yaml', siteText(name));
    const corpus = loadCorpus(content, { schemaOnly: true });
    if (options.country !== undefined && corpus.places.get(options.country)?.kind !== 'country')
      throw new CannotRun(
        `There is no country “${options.country}”; --country wants the id of one, such as ireland or united-states.`,
      );
    const done = await planGedcom({ ...options, content, path, corpus, name });
    progress.clear();
    if ('broken' in done) return broken(done.tree, options.format);
    if (!done.again) demandOtherName(done, options);
    if (options.write) {
      progress.say('Writing …');
      if (begins) writeWhole(options.content, 'site.yaml', siteText(name));
      write(done, options.content);
      progress.clear();
    }
    process.stdout.write(
      options.format === 'json'
        ? `${JSON.stringify(importReport(done, !options.write), null, 2)}\n`
        : `${begins && options.write ? `Made the content folder ${options.content}.\n` : ''}${shortReport(done, !options.write)}${options.write ? `Next: npm run check -- --content ${options.content}\n` : ''}`,
    );
    return 0;
  } catch (error) {
    progress.clear();
    if (!(error instanceof BrokenFile)) throw error;
    const text = `${basename(path)}, line ${error.line}: ${error.message} Nothing was written.`;
    if (options.format === 'json')
      process.stdout.write(
        `${JSON.stringify({ version: 1, kind: 'gedcom', broken: { line: error.line, message: error.message } }, null, 2)}\n`,
      );
    process.stderr.write(`${text}\n`);
    return 1;
  } finally {
    if (begins) rmSync(content, { recursive: true, force: true });
  }
}

function broken(tree: Tree, format: 'text' | 'json'): ExitCode {
  if (format === 'json')
    process.stdout.write(
      `${JSON.stringify({ version: 1, kind: 'gedcom', faults: tree.faults.list }, null, 2)}\n`,
    );
  process.stderr.write(faultsReport(tree));
  return 1;
}

function write(done: GedcomImport, content: string): void {
  for (const { from, name } of done.copies) writeWhole(content, `media/${name}`, readFileSync(from));
  writeChanges(content, `gedcom/${done.name}`, done.plan, done.of);
  writeWhole(content, reportFile(done.name), [...wholeReport(done)].join(''));
}

function demandFile(path: string): void {
  try {
    if (!statSync(path).isFile())
      throw new CannotRun(`${path} is no ordinary file. Save what it gives as a file first, and name that.`);
    closeSync(openSync(path, 'r'));
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    const code = (error as NodeJS.ErrnoException).code;
    throw new CannotRun(
      code === 'ENOENT' ? `There is no file ${path}.` : `${path} can’t be read: ${(error as Error).message}.`,
    );
  }
}

/** An import may begin a content folder: one that is not there, or is empty. */
function isNothing(content: string): boolean {
  return !existsSync(content) || (statSync(content).isDirectory() && readdirSync(content).length === 0);
}

function siteText(name: string): string {
  return `title: ${yamlText(titleFromId(name))}\nlanguage: en\naudience: public\n`;
}

/** The same people under two names would stand in the content twice. */
function demandOtherName(done: GedcomImport, { content, name: chosen }: Options): void {
  const { tree, name } = done;
  if (chosen !== undefined) return;
  for (const other of gedcomNames(content)) {
    const of = readMemory(content, `gedcom/${other}`)?.of;
    if (of && sharedPeople(of.given, done.of.given) > 0.5)
      throw new CannotRun(
        `Most people of ${of.file}, imported as “${other}”, are in ${tree.file} too. If it is a newer file of the same family, add --name ${other}; if not, give it a name of its own: --name ${name}.`,
      );
  }
}

function checkedName(value: string): string {
  if (!idPattern.test(value))
    throw new InvalidArgumentError('A name is lower-case words joined by hyphens, such as tobin.');
  return value;
}
