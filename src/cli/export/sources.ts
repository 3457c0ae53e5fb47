/** `npm run export -- sources`: the citations of all records for reference managers. */
import { extname } from 'node:path';
import { Command, Option } from 'commander';
import { buildDossier } from '../../dossier/build.ts';
import { ownKept } from '../../dossier/kept.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { outOption, writeOut } from '../shared/out.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith } from '../shared/run.ts';

interface Options {
  content: string;
  today: string;
  out?: string;
  as?: 'csl-json' | 'bibtex';
}

/** The command. */
export function sourcesCommand(): Command {
  return new Command('sources')
    .description('the citations of all records: CSL-JSON or BibTeX')
    .addOption(contentOption())
    .addOption(
      new Option(
        '--as <form>',
        'the form; without it, what the ending of --out says (.bib), else csl-json',
      ).choices(['csl-json', 'bibtex']),
    )
    .addOption(outOption())
    .addOption(todayOption())
    .action((options: Options) =>
      exitWith(() => {
        const { examination, cleared } = publishable(options.content, options.today);
        const { library } = buildDossier(examination, ownKept());
        const form =
          options.as ?? (extname(options.out ?? '').toLowerCase() === '.bib' ? 'bibtex' : 'csl-json');
        const text = form === 'bibtex' ? library.bibtex() : library.cslJson();
        writeOut(options.out, options.content, cleared(text, 'The source list'));
        return 0;
      }),
    );
}
