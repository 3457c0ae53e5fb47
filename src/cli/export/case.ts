/** `npm run export -- case`: one case with all it rests on, as a zip that another person’s Whence opens. */
import {
  closeSync,
  constants,
  copyFileSync,
  existsSync,
  mkdirSync,
  openSync,
  readSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { Command } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { CannotRun } from '../../corpus/types.ts';
import { caseFolder } from '../../dossier/case-folder.ts';
import { examine } from '../../dossier/examine.ts';
import { pictureAnew } from '../../dossier/images.ts';
import { caseEntries, caseZipComment, leftOut, writeCaseZip, type CaseCard } from '../../exports/case/zip.ts';
import { isWithin } from '../../exports/site/target.ts';
import { forceOption } from '../shared/earlier.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { demandOutsideContent, outOption, shown, writeFile } from '../shared/out.ts';
import { fromCaller } from '../shared/paths.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';
import { temporaryFolder } from '../shared/temporary.ts';

interface Options {
  content: string;
  today: string;
  out?: string;
  force: boolean;
}

/** The command. */
export function caseCommand(): Command {
  return new Command('case')
    .description('one case with all it rests on, as a zip that another person’s Whence opens')
    .argument('<id>', 'the id of the case')
    .addOption(contentOption())
    .addOption(outOption('the zip; without it, <id>.zip where you stand'))
    .addOption(forceOption())
    .addOption(todayOption())
    .addHelpText(
      'after',
      `
The zip holds a content folder: the case, its records with what they derive from, the people and their records, places,
searches, reviews and images. It is opened and checked once before it is given out. In public the living are withheld,
and images that the site doesn’t publish; where the digest of the case in the zip is another than at home, that is told.
Images are made anew under their names, no larger than a page needs and without what a camera or scanner wrote into them.

  npm run export -- case phelan-knockmahon --out phelan.zip
  npm run import -- case phelan.zip --content ~/theirs --write`,
    )
    .action((id: string, options: Options) => exitWith(() => exportCase(id, options)));
}

async function exportCase(id: string, options: Options): Promise<ExitCode> {
  const out = options.out ?? fromCaller(`${id}.zip`);
  demandOutsideContent(out, options.content);
  demandOurs(out, options.force);
  const { examination, cleared, clearedPath } = publishable(options.content, options.today);
  const folder = caseFolder(examination, id);
  for (const { path, text } of folder.files) {
    clearedPath(path);
    cleared(text, `${path} in the zip`);
  }
  const work = temporaryFolder('whence-case-');
  try {
    const content = join(work, 'content');
    for (const { path, text } of folder.files) writeInside(content, path, Buffer.from(text));
    const pictures = new Map<string, string>();
    for (const { path, file } of folder.pictures) {
      const made = await pictureAnew(file, join(options.content, 'media'));
      clearedPath(path, made);
      pictures.set(path, writeInside(content, path, made));
    }
    const there = opened(id, content, options.today);
    if (there.standing !== folder.standing || there.independent !== folder.independent)
      throw new CannotRun(
        `Without the living, the case ${id} would be another: ${there.standing} with ${there.independent} independent in place of ${folder.standing} with ${folder.independent}. It can’t be given out in public; say audience: family in site.yaml and send the zip to the family only.`,
      );
    const card: CaseCard = {
      version: 1,
      kind: 'whence-case',
      case: id,
      question: folder.question,
      digest: folder.digest,
      digestHere: there.digest,
      standing: folder.standing,
      independent: folder.independent,
      withheld: folder.withheld,
    };
    const zip = join(work, 'case.zip');
    await writeCaseZip(zip, caseEntries(folder, pictures, card));
    writeFile(out, (part) => copyFileSync(zip, part, constants.COPYFILE_EXCL));
    const count = folder.files.length + folder.pictures.length;
    const isSame = there.digest === folder.digest;
    process.stdout.write(
      `${shown(out)}: the case ${id} with ${count} ${count === 1 ? 'file' : 'files'}. Opened and checked, it ${isSame ? 'has the digest it has here' : 'has another digest than here'}, and the same standing: ${folder.standing}.\n`,
    );
    const left = leftOut(folder);
    if (!isSame) left.push(`A review signed over there is of that version: ${there.digest}.`);
    if (left.length > 0) process.stdout.write(`${left.join(' ')}\n`);
    return 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

/** Writes a file of the folder and returns where it is. What would lie outside of the folder is not written at all. */
function writeInside(folder: string, path: string, bytes: Buffer): string {
  const file = resolve(folder, path);
  if (file === folder || !isWithin(file, folder))
    throw new CannotRun(`${path} leads out of the zip, so nothing was written. Give that file another name.`);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, bytes, { flag: 'wx' });
  return file;
}

/** What the folder comes to when it is opened elsewhere. */
function opened(
  id: string,
  content: string,
  today: string,
): { digest: string | null; standing: string | null; independent: number } {
  const { findings, cases, digests } = examine(loadCorpus(content), today);
  const error = findings.find(({ severity }) => severity === 'error');
  if (error)
    throw new CannotRun(
      `The case ${id} can’t be given out: opened elsewhere it has an error, ${error.file}:${error.line}: ${error.message}`,
    );
  const result = cases.get(id);
  return {
    digest: digests.get(id)?.whole ?? null,
    standing: result?.standing ?? null,
    independent: result?.independent ?? 0,
  };
}

/** Only an earlier zip of a case is written over. */
function demandOurs(path: string, force: boolean): void {
  if (!existsSync(path)) return;
  if (statSync(path).isFile()) {
    if (force) return;
    const size = statSync(path).size;
    const tail = Buffer.alloc(Math.min(size, 64));
    const file = openSync(path, 'r');
    try {
      readSync(file, tail, 0, tail.length, size - tail.length);
    } finally {
      closeSync(file);
    }
    if (tail.toString('latin1').endsWith(caseZipComment)) return;
  }
  throw new CannotRun(
    `${path} is there already and is no earlier zip of a case; it was left as it is. Name another file with --out, or write over a file with --force.`,
  );
}
