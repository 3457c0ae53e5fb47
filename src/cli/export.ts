/** `npm run export`: content out into files that others read. One file in `export/` for each kind. */
import { caseCommand } from './export/case.ts';
import { checkCommand } from './export/check.ts';
import { csvCommand } from './export/csv.ts';
import { gedcomExport } from './export/gedcom.ts';
import { linkedDataCommand } from './export/linked-data.ts';
import { sourcesCommand } from './export/sources.ts';
import { verb } from './shared/options.ts';

const program = verb(
  'npm run export --',
  'Writes content into files that other programs and other people read. What is public holds nobody living.',
);
for (const command of [
  gedcomExport(),
  csvCommand(),
  sourcesCommand(),
  linkedDataCommand(),
  caseCommand(),
  checkCommand(),
])
  program.addCommand(command.copyInheritedSettings(program));

await program.parseAsync(process.argv.length < 3 ? [...process.argv, '--help'] : process.argv);
