/** `npm run import`: files that people have, into a content folder. One file in `import/` for each kind. */
import { caseCommand } from './import/case.ts';
import { gazetteerCommand } from './import/gazetteer.ts';
import { gedcomImport } from './import/gedcom.ts';
import { withKind } from './import/kind.ts';
import { tableCommand } from './import/table.ts';
import { verb } from './shared/options.ts';

const program = verb(
  'npm run import --',
  'Brings files that you have into a content folder. With a file alone, what kind it is is told from the file. What would be written is shown first; --write writes it, and nothing of yours is written over.',
);
for (const command of [gedcomImport(), tableCommand(), gazetteerCommand(), caseCommand()])
  program.addCommand(command.copyInheritedSettings(program));

await program.parseAsync(withKind(process.argv.slice(2), program), { from: 'user' });
