/** `npm run export`: the content, in forms that others read. */
import { gedcomExport } from './export/gedcom.ts';
import { verb } from './shared/options.ts';

const program = verb('npm run export --', 'Writes the content in forms that others read.');
for (const command of [gedcomExport()]) program.addCommand(command);
program.addHelpText(
  'after',
  '\nExit code: 0 done, 1 the content has errors and nothing was written, 2 could not run.',
);

await program.parseAsync(process.argv.length < 3 ? [...process.argv, '--help'] : process.argv);
