/** `npm run export -- case`: one case with all it rests on, as a zip that another person’s Whence opens. */
import {
  closeSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { Command } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { CannotRun } from '../../corpus/types.ts';
import { caseFolder, type CaseFolder } from '../../dossier/case-folder.ts';
import { examine } from '../../dossier/examine.ts';
import { caseEntries, caseZipComment, writeCaseZip, type CaseCard } from '../../exports/case/zip.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { demandOutsideContent, outOption, shown } from '../shared/out.ts';
import { fromCaller } from '../shared/paths.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';

interface Options {
  content: string;
  today: string;
  out?: string;
}

/** The command. */
export function caseCommand(): Command {
  return new Command('case')
    .description('one case with all it rests on, as a zip that another person’s Whence opens')
    .argument('<id>', 'the id of the case')
    .addOption(contentOption())
    .addOption(outOption('the zip; without it, <id>.zip where you stand'))
    .addOption(todayOption())
    .addHelpText(
      'after',
      `
The zip holds a content folder: the case, its records with what they derive from, the people and their records, places,
searches, reviews and images. It is opened and checked once before it is given out. In public the living are withheld;
where that happens, the digest of the case in the zip is another than at home, and both are told.

  npm run export -- case phelan-knockmahon --out phelan.zip
  npm run import -- case phelan.zip --content ~/theirs --write`,
    )
    .action((id: string, options: Options) => exitWith(() => exportCase(id, options)));
}

async function exportCase(id: string, options: Options): Promise<ExitCode> {
  const out = options.out ?? fromCaller(`${id}.zip`);
  demandOutsideContent(out, options.content);
  demandOurs(out);
  const { examination, cleared } = publishable(options.content, options.today);
  const folder = caseFolder(examination, id);
  for (const { path, from } of folder.files)
    if (typeof from !== 'string') cleared(from.toString('utf8'), `${path} in the zip`);
  const work = mkdtempSync(join(tmpdir(), 'whence-case-'));
  try {
    const there = opened(folder, work, options.today);
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
    await writeCaseZip(zip, caseEntries(folder, card));
    mkdirSync(dirname(out), { recursive: true });
    copyFileSync(zip, `${out}.part`);
    renameSync(`${out}.part`, out);
    process.stdout.write(
      `${shown(out)}: the case ${id} with ${folder.files.length} ${folder.files.length === 1 ? 'file' : 'files'}. Opened and checked, it ${there.digest === folder.digest ? 'has the digest it has here' : 'has another digest than here'}, and the same standing: ${folder.standing}.\n${
        folder.withheld > 0
          ? `${folder.withheld === 1 ? 'One living person was' : `${folder.withheld} living people were`} withheld.${there.digest === folder.digest ? '' : ` A review signed over there is of that version: ${there.digest}.`}\n`
          : ''
      }`,
    );
    return 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
    rmSync(`${out}.part`, { force: true });
  }
}

/** What the folder comes to when it is opened elsewhere. */
function opened(
  folder: CaseFolder,
  work: string,
  today: string,
): { digest: string | null; standing: string | null; independent: number } {
  const content = join(work, 'content');
  for (const { path, from } of folder.files) {
    const file = join(content, path);
    mkdirSync(dirname(file), { recursive: true });
    if (typeof from === 'string') copyFileSync(from, file);
    else writeFileSync(file, from);
  }
  const { findings, cases, digests } = examine(loadCorpus(content), today);
  const error = findings.find(({ severity }) => severity === 'error');
  if (error)
    throw new CannotRun(
      `The case ${folder.case} can’t be given out: opened elsewhere it has an error, ${error.file}:${error.line}: ${error.message}`,
    );
  const result = cases.get(folder.case);
  return {
    digest: digests.get(folder.case)?.whole ?? null,
    standing: result?.standing ?? null,
    independent: result?.independent ?? 0,
  };
}

/** Only an earlier zip of a case is written over. */
function demandOurs(path: string): void {
  if (!existsSync(path)) return;
  if (statSync(path).isFile()) {
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
    `${path} is there already and is no earlier zip of a case; it was left as it is. Name another file with --out.`,
  );
}
