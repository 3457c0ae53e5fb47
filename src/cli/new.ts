/** `npm run new`: a content folder, case, record, person or search to fill in. Never overwrites anything. */
import { existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { Argument, InvalidArgumentError } from 'commander';
import { CannotRun } from '../corpus/types.ts';
import { idPattern } from '../model/common.ts';
import {
  caseText,
  folderFiles,
  personText,
  recordText,
  searchText,
  titleFromId,
  type Fill,
} from './new/templates.ts';
import { contentOption, verb } from './shared/options.ts';
import { fromCaller } from './shared/paths.ts';
import { exitWith } from './shared/run.ts';

const program = verb(
  'npm run new --',
  'Makes a content folder, or a file in one, to fill in. Nothing that is there is ever overwritten.',
);

program
  .command('folder')
  .description('a new content folder')
  .argument('<dir>', 'a folder that is not there yet, or is empty')
  .option('--title <text>', 'the title of the site', 'Where our people came from')
  .action((dir: string, options: { title: string }) =>
    exitWith(() => makeFolder(fromCaller(dir), options.title)),
  );

inFolder('case', 'a research question about one person’s place of origin', (id, fill) => [
  `cases/${id}.md`,
  caseText(id, fill),
])
  .option('--subject <person>', 'the id of the person')
  .option('--question <text>', 'the question');
inFolder('record', 'one document you examined', (id, fill) => [`records/${id}.md`, recordText(id, fill)])
  .option('--title <text>', 'what the record is called')
  .option('--name <text>', 'the first name it mentions, as written')
  .option('--series <id>', 'the series it belongs to')
  .option('--place <id>', 'where it was made');
inFolder('person', 'one person', (id, fill) => [`people/${id}.md`, personText(id, fill)]).option(
  '--name <text>',
  'the person’s name',
);
inFolder('search', 'one look into a series of records', (id, fill) => [
  `searches/${id}.yaml`,
  searchText(id, fill),
])
  .option('--for <person...>', 'whom you looked for')
  .option('--series <id>', 'the series you looked in');

await program.parseAsync();

/** A subcommand that makes one file in a content folder. */
function inFolder(
  kind: string,
  description: string,
  make: (id: string, fill: Fill) => [path: string, text: string],
) {
  return program
    .command(kind)
    .description(description)
    .addArgument(new Argument('<id>', 'its id: lower-case words joined by hyphens').argParser(checkedId))
    .addOption(contentOption())
    .action((id: string, options: Omit<Fill, 'date'> & { content: string }) =>
      exitWith(() => {
        const { content, ...given } = options;
        if (!existsSync(content) || !statSync(content).isDirectory())
          throw new CannotRun(
            `There is no content folder ${content}. Make one with: npm run new -- folder ${content}`,
          );
        const [path, text] = make(id, { ...given, date: new Date().toISOString().slice(0, 10) });
        write(join(content, path), text);
        process.stdout.write(
          `Made ${relative(process.env.INIT_CWD ?? process.cwd(), join(content, path))}. Fill it in, then: npm run check -- --content ${content}\n`,
        );
        return 0;
      }),
    );
}

function makeFolder(dir: string, title: string): 0 {
  if (existsSync(dir) && (!statSync(dir).isDirectory() || readdirSync(dir).length > 0))
    throw new CannotRun(`${dir} is there already and is not an empty folder; nothing was written.`);
  for (const [path, text] of Object.entries(folderFiles(title))) write(join(dir, path), text);
  process.stdout.write(
    [
      `Made the content folder ${dir}.`,
      'Next, for example:',
      `  npm run new -- person maurice-phelan --content ${dir}`,
      `  npm run new -- record declaration-1871 --content ${dir}`,
      `  npm run new -- case phelan --subject maurice-phelan --content ${dir}`,
      `  npm run check -- --content ${dir}`,
      '',
    ].join('\n'),
  );
  return 0;
}

function write(file: string, text: string): void {
  mkdirSync(dirname(file), { recursive: true });
  try {
    writeFileSync(file, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST')
      throw new CannotRun(`${file} is there already; it was left as it is.`);
    throw error;
  }
}

function checkedId(value: string): string {
  if (!idPattern.test(value))
    throw new InvalidArgumentError(
      `An id is lower-case words joined by hyphens, such as ${
        titleFromId(value)
          .toLowerCase()
          .replace(/[^a-z0-9]+/g, '-')
          .replace(/^-|-$/g, '') || 'maurice-phelan'
      }.`,
    );
  return value;
}
