/** `npm run import`: what other files hold, into a content folder. */
import { Argument } from 'commander';
import { gedcomImport, looksLikeGedcom } from './import/gedcom.ts';
import { verb } from './shared/options.ts';
import { fromCaller } from './shared/paths.ts';

const program = verb('npm run import --', 'Brings what other files hold into a content folder.');

/** Each kind of file, with how it is told when no kind is named. */
const kinds = [{ command: gedcomImport(), looksLike: looksLikeGedcom }];

for (const { command } of kinds) program.addCommand(command);
program
  .addArgument(new Argument('[file]', 'without a kind, it is told from the file itself'))
  .addHelpText(
    'after',
    '\nExit code: 0 done, 1 the file breaks its own rules and nothing was written, 2 could not run.',
  );

await program.parseAsync(withKind(process.argv.slice(2)), { from: 'user' });

/** The arguments with the kind of the file in front, where they name a file alone. */
function withKind(args: string[]): string[] {
  const names = kinds.map(({ command }) => command.name());
  const first = args[0];
  if (first === undefined) return ['--help'];
  if (first.startsWith('-') || names.includes(first) || first === 'help') return args;
  const kind = kinds.find(({ looksLike }) => looksLike(fromCaller(first)));
  return kind ? [kind.command.name(), ...args] : args;
}
