/** `npm run export -- csv`: tables of what the content holds. */
import { join } from 'node:path';
import { Command } from 'commander';
import { CannotRun } from '../../corpus/types.ts';
import { buildDossier } from '../../dossier/build.ts';
import { ownKept } from '../../dossier/kept.ts';
import { tables } from '../../exports/tables/tables.ts';
import { forceOption, hasHeadingsOf } from '../shared/earlier.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { demandPlace, outOption, writeOut } from '../shared/out.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith } from '../shared/run.ts';

interface Options {
  content: string;
  today: string;
  out?: string;
  bom: boolean;
  force: boolean;
}

/** The command. */
export function csvCommand(): Command {
  const names = Object.keys(tables);
  return new Command('csv')
    .description(`tables for spreadsheets: ${names.join(', ')}`)
    .argument('<table...>', `which tables, or all; of several, --out names a folder`)
    .addOption(contentOption())
    .addOption(outOption('the file, or of several tables the folder; without it, standard output'))
    .option(
      '--bom',
      'begins with a byte order mark, for spreadsheet programs that take UTF-8 for something older without it',
      false,
    )
    .addOption(forceOption())
    .addOption(todayOption())
    .addHelpText(
      'after',
      `
Commas, UTF-8, headings in the first line. A cell that a spreadsheet program would take for a formula, since it begins
with = + - @ or a tab, has an apostrophe before it; an import of a table takes it off again.

  npm run export -- csv people --out people.csv
  npm run export -- csv all --out tables/

Exit code: 0 done, 1 the content has errors or would name somebody living, 2 could not run.`,
    )
    .action((wanted: string[], options: Options) =>
      exitWith(() => {
        const chosen = wanted.includes('all') ? names : [...new Set(wanted)];
        const unknown = chosen.find((name) => !names.includes(name));
        if (unknown !== undefined)
          throw new CannotRun(
            `There is no table ${unknown}. The tables are ${names.join(', ')}; all gives every one.`,
          );
        if (chosen.length > 1 && options.out === undefined)
          throw new CannotRun('Several tables can’t go to standard output; name a folder with --out.');
        const { examination, cleared } = publishable(options.content, options.today);
        const dossier = buildDossier(examination, ownKept());
        const { content, force } = options;
        const isFolder = chosen.length > 1 || wanted.includes('all');
        const made = chosen.map((name) => {
          const table = cleared(tables[name]!(dossier), `The table ${name}`);
          const path = isFolder ? join(options.out!, `${name}.csv`) : options.out;
          const out = { path, content, force, isOurs: hasHeadingsOf(table) };
          return { out, text: (options.bom ? '\uFEFF' : '') + table };
        });
        for (const { out } of made) demandPlace(out);
        for (const { out, text } of made) writeOut(out, text);
        return 0;
      }),
    );
}
