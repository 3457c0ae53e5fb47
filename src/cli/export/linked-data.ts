/** `npm run export -- linked-data`: cases as JSON-LD, with the provenance of their evidence. */
import { Command } from 'commander';
import { CannotRun } from '../../corpus/types.ts';
import { buildDossier } from '../../dossier/build.ts';
import { ownKept } from '../../dossier/kept.ts';
import { addressFrom, linkedData } from '../../dossier/linked-data.ts';
import { beginsLike, forceOption } from '../shared/earlier.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { outOption, writeOut } from '../shared/out.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith } from '../shared/run.ts';

interface Options {
  content: string;
  today: string;
  out?: string;
  force: boolean;
}

/** The command. */
export function linkedDataCommand(): Command {
  return new Command('linked-data')
    .description('cases as JSON-LD (W3C PROV-O and schema.org), as they stand in the pages too')
    .argument('[case...]', 'ids of cases; without one, all')
    .addOption(contentOption())
    .addOption(outOption())
    .addOption(forceOption())
    .addOption(todayOption())
    .addHelpText(
      'after',
      '\nAddresses are those of the site where site.yaml gives its address, and relative to its first page otherwise.',
    )
    .action((ids: string[], options: Options) =>
      exitWith(() => {
        const { examination, cleared } = publishable(options.content, options.today);
        const dossier = buildDossier(examination, ownKept());
        const unknown = ids.find((id) => !dossier.cases.has(id));
        if (unknown !== undefined)
          throw new CannotRun(
            `There is no case ${unknown}. The cases are: ${[...dossier.cases.keys()].join(', ')}.`,
          );
        const cases = [...dossier.cases.values()].filter(({ id }) => ids.length === 0 || ids.includes(id));
        const document = linkedData(dossier, cases, addressFrom('/index.html', dossier.site.address));
        const text = `${JSON.stringify(document, null, 2)}\n`;
        const { out: path, content, force } = options;
        writeOut({ path, content, force, isOurs: beginsLike(text) }, cleared(text, 'The linked data'));
        return 0;
      }),
    );
}
