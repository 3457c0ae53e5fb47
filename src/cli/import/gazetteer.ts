/** `npm run import -- gazetteer`: places of a gazetteer, beside those that are there. */
import { basename } from 'node:path';
import { Command, InvalidArgumentError } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { CannotRun, type Corpus } from '../../corpus/types.ts';
import { planChanges, writeChanges } from '../../imports/changes.ts';
import { placeLists, textOf, withVariants } from '../../imports/gazetteers/files.ts';
import { mergePlaces } from '../../imports/gazetteers/merge.ts';
import { readGazetteer } from '../../imports/gazetteers/read.ts';
import { readMemory } from '../../imports/memory.ts';
import { idOf } from '../../imports/tables/ids.ts';
import { writeWhole } from '../../imports/whole-file.ts';
import { idPattern } from '../../model/common.ts';
import { paintFor } from '../report/paint.ts';
import { gazetteerJson, gazetteerText, type GazetteerImport } from '../report/gazetteer-import.ts';
import { contentOption, formatOption, wholeNumber } from '../shared/options.ts';
import { asCalled, fromCaller } from '../shared/paths.ts';
import { progressOn } from '../shared/progress.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';

interface Options {
  content: string;
  format: 'text' | 'json';
  within?: string;
  kind: string[];
  admin?: string;
  box?: [number, number, number, number];
  name?: string;
  variants: boolean;
  addVariants: boolean;
  show: number;
  write: boolean;
}

/** The command. */
export function gazetteerCommand(): Command {
  return new Command('gazetteer')
    .description(
      'places with what they lie in: a GeoNames-format text file, or a table with name, variants, kind, chain, lat, lon',
    )
    .argument('<file>', 'the gazetteer, unpacked')
    .addOption(contentOption())
    .option(
      '--within <id>',
      'only places inside this place; where the file names no chain, what all of them lie in',
    )
    .option(
      '--kind <word>',
      'only places of this kind, such as townland, or of a feature code, such as PPL; may be given several times',
      kinds,
      [],
    )
    .option('--admin <codes>', 'only rows of a GeoNames-format file whose codes begin so: US.MI.061')
    .option('--box <s,w,n,e>', 'only places between these degrees: south,west,north,east', box)
    .option(
      '--name <id>',
      'the list they go into: places/<id>.yaml; without it, the name of the file',
      idOption,
    )
    .option('--no-variants', 'leave other names out')
    .option(
      '--add-variants',
      'adds names that the file has to places you have already, in your own lists, touching nothing else there',
      false,
    )
    .option('--show <number>', 'how many places are shown', wholeNumber, 8)
    .option('--write', 'writes the places; without it they are only shown', false)
    .addOption(formatOption())
    .addHelpText(
      'after',
      `
A place that is there already, by its name, its chain and its point, is not brought in again.

  npm run import -- gazetteer US.txt --within michigan --kind PPL --write
  npm run import -- gazetteer townlands.csv --within co-waterford --name waterford-townlands --write

Keep to the terms under which the gazetteer was published, and name it where they ask for it.

Exit code: 0 done, 2 could not run.`,
    )
    .action((file: string, options: Options) => exitWith(() => importGazetteer(fromCaller(file), options)));
}

function importGazetteer(path: string, options: Options): ExitCode {
  const name = basename(path);
  const progress = progressOn(process.stderr);
  const corpus = loadCorpus(options.content, { schemaOnly: true });
  if (options.within !== undefined && !corpus.places.has(options.within))
    throw new CannotRun(
      `There is no place ${options.within} in the content folder. --within takes the id of a place, such as co-waterford.`,
    );
  progress.say('Reading …');
  const file = readGazetteer(path, name, {
    kinds: options.kind,
    box: options.box,
    admin: options.admin?.toUpperCase(),
  });
  if (!options.variants) for (const place of file.places) place.variants = [];
  const merged = mergePlaces(corpus.places, file.places, { within: options.within, hasChain: file.hasChain });
  progress.clear();
  const list = options.name ?? (idOf(name.replace(/\.[^.]*$/, '')) || 'places');
  const lists = placeLists(
    options.content,
    list,
    merged.added,
    `# ${merged.added.length.toLocaleString('en')} ${merged.added.length === 1 ? 'place' : 'places'} from ${name}.\n`,
  );
  const plan = planChanges(options.content, lists, readMemory(options.content, 'gazetteers'));
  const variants = options.addVariants
    ? variantFiles(corpus, merged.known, list)
    : { files: [], refused: [] };
  let written: string[] | undefined;
  if (options.write) {
    written = writeChanges(options.content, 'gazetteers', plan);
    for (const { file: own, text } of variants.files) {
      writeWhole(options.content, own, text);
      written.push(own);
    }
  }
  const done: GazetteerImport = {
    file,
    merged,
    lists,
    changes: plan.changes,
    written,
    addVariants: options.addVariants,
    variantFiles: variants.files.map((one) => one.file),
    refused: variants.refused,
    content: asCalled(options.content),
  };
  process.stdout.write(
    options.format === 'json'
      ? gazetteerJson(done)
      : gazetteerText(done, options.show, paintFor(process.stdout)),
  );
  return 0;
}

/** The author’s lists with the new variants in them; a built-in place gets them in a list of its own. */
function variantFiles(
  corpus: Corpus,
  known: ReadonlyMap<string, ReadonlySet<string>>,
  list: string,
): { files: { file: string; text: string }[]; refused: string[] } {
  const byFile = new Map<string, Map<string, string[]>>();
  const builtIn: [string, string[]][] = [];
  for (const [id, names] of known) {
    const file = corpus.fileOf(`place:${id}`);
    if (file === undefined) {
      builtIn.push([id, [...names]]);
      continue;
    }
    const ofFile = byFile.get(file) ?? byFile.set(file, new Map<string, string[]>()).get(file)!;
    ofFile.set(id, [...names]);
  }
  const files: { file: string; text: string }[] = [];
  const refused: string[] = [];
  for (const [file, variants] of byFile) {
    const text = withVariants(textOf(corpus.root, file), variants);
    if (text === undefined) refused.push(file);
    else files.push({ file, text });
  }
  if (builtIn.length > 0)
    files.push(
      ...placeLists(
        corpus.root,
        `${list}-variants`,
        builtIn.map(([id, variants]) => ({ id, variants })),
        '# Names added to built-in places.\n',
      ),
    );
  return { files, refused };
}

function kinds(value: string, before: string[]): string[] {
  return [
    ...before,
    ...value
      .split(',')
      .map((one) => one.trim().toLowerCase())
      .filter(Boolean),
  ];
}

function box(value: string): [number, number, number, number] {
  const parts = value.split(',').map((part) => (part.trim() === '' ? NaN : Number(part)));
  const [south, west, north, east] = parts as [number, number, number, number];
  if (
    parts.length !== 4 ||
    parts.some((part) => !Number.isFinite(part)) ||
    south > north ||
    Math.max(Math.abs(south), Math.abs(north)) > 90 ||
    Math.max(Math.abs(west), Math.abs(east)) > 180
  )
    throw new InvalidArgumentError(
      'Write four numbers, south, west, north and east: --box 52.0,-8.0,52.4,-6.9',
    );
  return [south, west, north, east];
}

function idOption(value: string): string {
  if (!idPattern.test(value))
    throw new InvalidArgumentError(
      `A list is named by lower-case words joined by hyphens, such as ${idOf(value) || 'waterford'}.`,
    );
  return value;
}
