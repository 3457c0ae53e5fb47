/** `npm run export -- check`: the check as JSON, to be given away: in public without anyone living. */
import { Command } from 'commander';
import { publicCheckDocument } from '../report/public-check.ts';
import { forceOption, isOurCheck } from '../shared/earlier.ts';
import { contentOption, todayOption } from '../shared/options.ts';
import { demandPlace, outOption, writeOut } from '../shared/out.ts';
import { publishable } from '../shared/publishable.ts';
import { exitWith } from '../shared/run.ts';

/** The command. */
export function checkCommand(): Command {
  return new Command('check')
    .description(
      'findings and the standing of every case, as check --format json has them, without anyone living',
    )
    .addOption(contentOption())
    .addOption(outOption())
    .addOption(forceOption())
    .addOption(todayOption())
    .action((options: { content: string; today: string; out?: string; force: boolean }) =>
      exitWith(() => {
        const { out: path, content, force } = options;
        const out = { path, content, force, isOurs: isOurCheck };
        demandPlace(out);
        const { examination, cleared } = publishable(options.content, options.today);
        const text = `${JSON.stringify(publicCheckDocument(examination), null, 2)}\n`;
        writeOut(out, cleared(text, 'The check'));
        return 0;
      }),
    );
}
