/** `npm run import -- case`: a case that somebody gave out, into a content folder. */
import { existsSync, readFileSync, readdirSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Command } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { CannotRun } from '../../corpus/types.ts';
import { examine } from '../../dossier/examine.ts';
import { isMadeFrom } from '../../dossier/images.ts';
import { mediaIsThere } from '../../dossier/pictures.ts';
import { arrivalOf, type Arrival } from '../../imports/case/merge.ts';
import { unpackCase, type UnpackedCase } from '../../imports/case/zip.ts';
import { writeWhole } from '../../imports/whole-file.ts';
import { paintFor } from '../report/paint.ts';
import { caseJson, caseText } from '../report/case-import.ts';
import { contentOption, formatOption, todayOption } from '../shared/options.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';
import { asCalled, fromCaller } from '../shared/paths.ts';
import { temporaryFolder } from '../shared/temporary.ts';

interface Options {
  content: string;
  format: 'text' | 'json';
  today: string;
  write: boolean;
}

/** What an import of a case came to. */
export interface CaseImport {
  name: string;
  unpacked: UnpackedCase;
  arrival: Arrival;
  /** The digest and standing of what the zip holds, worked out here. */
  digest: string | null;
  standing: string | null;
  written: readonly string[] | undefined;
  /** The content folder as the author names it. */
  content: string;
}

/** The command. */
export function caseCommand(): Command {
  return new Command('case')
    .description('a case that somebody gave out as a zip, with all it rests on')
    .argument('<file.zip>', 'the zip, as “export -- case” writes it')
    .addOption(contentOption().makeOptionMandatory())
    .option('--write', 'writes the case; without it, only what would be written is told', false)
    .addOption(formatOption())
    .addOption(todayOption())
    .addHelpText(
      'after',
      `
The folder may be a new one or yours. What you have already and the zip has in another form stays as it is, and then
nothing at all is written: open the zip into a folder of its own, and compare.

Exit code: 0 done, 1 something of yours differs and nothing was written, 2 could not run.`,
    )
    .action((file: string, options: Options) => exitWith(() => importCase(fromCaller(file), options)));
}

async function importCase(path: string, options: Options): Promise<ExitCode> {
  const work = temporaryFolder('whence-case-');
  try {
    const unpacked = await unpackCase(path, work);
    const came = loadCorpus(work);
    const { cases, digests, findings } = examine(came, options.today);
    const error = findings.find(({ severity }) => severity === 'error');
    if (error)
      throw new CannotRun(
        `${basename(path)} was not opened: what it holds has an error, ${error.file}:${error.line}:${error.column}: ${error.message}`,
      );
    if (!came.cases.has(unpacked.case))
      throw new CannotRun(
        `${basename(path)} was not opened: it has no case ${unpacked.case}, of which it says it is.`,
      );
    const same = await sameImages(unpacked.files, work, options.content);
    const arrival = arrivalOf(came, unpacked.files, folderAt(options.content), options.content, same);
    const write = options.write && arrival.differs.length === 0;
    const written = write
      ? arrival.write.map(({ file, text }) => put(work, options.content, file, text))
      : undefined;
    const done: CaseImport = {
      name: basename(path),
      unpacked,
      arrival,
      digest: digests.get(unpacked.case)?.whole ?? null,
      standing: cases.get(unpacked.case)?.standing ?? null,
      written,
      content: asCalled(options.content),
    };
    process.stdout.write(
      options.format === 'json' ? caseJson(done) : caseText(done, paintFor(process.stdout)),
    );
    return arrival.differs.length > 0 ? 1 : 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

/** Images that are there already and were made anew for the zip out of just these. */
async function sameImages(files: readonly string[], came: string, content: string): Promise<Set<string>> {
  const same = new Set<string>();
  for (const file of files) {
    if (!file.startsWith('media/') || !mediaIsThere(content, file.slice('media/'.length))) continue;
    const ours = join(content, file);
    const picture = readFileSync(join(came, file));
    if (await isMadeFrom(picture, ours, join(content, 'media')).catch(() => false)) same.add(file);
  }
  return same;
}

/** The content there is; nothing where the folder is new or empty. */
function folderAt(content: string) {
  if (!existsSync(content)) return undefined;
  if (statSync(content).isDirectory() && readdirSync(content).length === 0) return undefined;
  return loadCorpus(content, { schemaOnly: true });
}

function put(from: string, content: string, file: string, text: string | undefined): string {
  // What is there by now was put there after the two were compared.
  if (existsSync(join(content, file)))
    throw new CannotRun(
      `${file} came to be while the case was brought in, and was left as it is. Import again: what is written already stays.`,
    );
  writeWhole(content, file, text ?? readFileSync(join(from, file)));
  return file;
}
