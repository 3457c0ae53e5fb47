/** `npm run export -- gedcom`. */
import { closeSync, openSync, writeSync } from 'node:fs';
import { Command } from 'commander';
import { loadCorpus } from '../../corpus/load.ts';
import { buildDossier } from '../../dossier/build.ts';
import { examine } from '../../dossier/examine.ts';
import { gedcomOf } from '../../exports/gedcom/write.ts';
import { checkReport } from '../report/check.ts';
import { paintFor } from '../report/paint.ts';
import { forceOption, isOurGedcom } from '../shared/earlier.ts';
import { contentOption, formatOption, todayOption } from '../shared/options.ts';
import { demandPlace, writeFile } from '../shared/out.ts';
import { fromCaller } from '../shared/paths.ts';
import { exitWith, type ExitCode } from '../shared/run.ts';

interface Options {
  content: string;
  out: string;
  dryRun: boolean;
  force: boolean;
  format: 'text' | 'json';
  today: string;
}

/** The command that exports GEDCOM. */
export function gedcomExport(): Command {
  return new Command('gedcom')
    .description('a family file of GEDCOM 7.0: people, families, places, sources, and how each case stands')
    .addOption(contentOption())
    .requiredOption('--out <file>', 'the file to write, usually ending in .ged', fromCaller)
    .addOption(forceOption())
    .option('--dry-run', 'say what would be written, and write nothing', false)
    .addOption(formatOption())
    .addOption(todayOption())
    .addHelpText(
      'after',
      `
Nobody living, or presumed to be, is written, unless site.yaml says audience: family.

  npm run export -- gedcom --content ~/tobin --out tobin.ged`,
    )
    .action((options: Options) => exitWith(() => run(options)));
}

function run({ content, out, dryRun, force, format, today }: Options): ExitCode {
  demandPlace({ path: out, content, force, isOurs: isOurGedcom });
  const examination = examine(loadCorpus(content), today);
  if (!examination.ok) {
    process.stderr.write(checkReport(examination, 'text', paintFor(process.stderr)));
    process.stderr.write('The content has errors, so nothing was written.\n');
    return 1;
  }
  const dossier = buildDossier(examination);
  if (!dryRun) write(out, gedcomOf(dossier));
  const { people, records } = dossier.facts;
  const counts = {
    people: people.size,
    withheld: examination.corpus.people.size - people.size,
    sources: records.size,
    cases: dossier.cases.size,
  };
  process.stdout.write(
    format === 'json'
      ? `${JSON.stringify({ version: 1, kind: 'gedcom', gedcom: '7.0', dryRun, out, ...counts }, null, 2)}\n`
      : `${dryRun ? 'Would write' : 'Wrote'} ${counted(counts.people, 'person', 'people')}, ${counted(counts.sources, 'source')} and ${counted(counts.cases, 'case')} as GEDCOM 7.0: ${out}\n${counts.withheld > 0 ? `${counts.withheld} ${counts.withheld === 1 ? 'person was' : 'people were'} left out, as living or presumed to be.\n` : ''}`,
  );
  return 0;
}

function counted(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

function write(out: string, pieces: Iterable<string>): void {
  writeFile(out, (part) => {
    const file = openSync(part, 'wx');
    try {
      for (const piece of pieces) writeSync(file, piece);
    } finally {
      closeSync(file);
    }
  });
}
