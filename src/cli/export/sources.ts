/** `npm run export -- sources`: the citations of all records for reference managers. */
import { extname } from 'node:path';
import { Command, Option } from 'commander';
import { buildDossier } from '../../dossier/build.ts';
import { ownKept } from '../../dossier/kept.ts';
import { bibtexMark, forceOption, isOurBibtex, isOurCslJson } from '../shared/earlier.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { demandPlace, outOption, writeOut } from '../shared/out.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith } from '../shared/run.ts';

interface Options {
  content: string;
  today: string;
  out?: string;
  as?: 'csl-json' | 'bibtex';
  force: boolean;
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
    .addOption(forceOption())
    .addOption(todayOption())
    .action((options: Options) =>
      exitWith(() => {
        const { out: path, content, today, force } = options;
        const form = options.as ?? (extname(path ?? '').toLowerCase() === '.bib' ? 'bibtex' : 'csl-json');
        const out = { path, content, force, isOurs: form === 'bibtex' ? isOurBibtex : isOurCslJson };
        demandPlace(out);
        const { examination, cleared } = publishable(content, today);
        const { library } = buildDossier(examination, ownKept());
        const text = form === 'bibtex' ? bibtexMark + library.bibtex() : marked(library.cslJson());
        writeOut(out, cleared(text, 'The source list'));
        return 0;
      }),
    );
}

/** The same items, the first of them saying by whom they were written. */
function marked(cslJson: string): string {
  const [first, ...others] = JSON.parse(cslJson) as object[];
  if (!first) return cslJson;
  return `${JSON.stringify([{ custom: { madeBy: 'whence' }, ...first }, ...others], null, 2)}\n`;
}
