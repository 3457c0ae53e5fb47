/** `npm run new`: a content folder, or a file in one, to fill in. Never overwrites anything. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { Argument, InvalidArgumentError, Option, type Command } from 'commander';
import { writeEditorFiles } from '../corpus/editor/write.ts';
import { loadCorpus } from '../corpus/load.ts';
import { CannotRun } from '../corpus/types.ts';
import { askerOn, silent, type Asker } from './new/asker.ts';
import { folderFiles } from './new/content-folder.ts';
import {
  answers,
  newCase,
  newPerson,
  newPlace,
  newReview,
  newSearch,
  results,
  sexes,
} from './new/entries.ts';
import { NewFolder, writeNew } from './new/folder.ts';
import { idProblem } from './new/ids.ts';
import { newRecord } from './new/record.ts';
import { eventKinds } from './new/shapes/shape.ts';
import { contentOption, todayOption, verb } from './shared/options.ts';
import { asCalled, fromCaller, projectRoot } from './shared/paths.ts';
import { exitWith } from './shared/run.ts';

const kinds = ['folder', 'person', 'record', 'case', 'search', 'place', 'review'] as const;

const program = verb(
  'npm run new --',
  'Makes a content folder, or a file in one, to fill in. On a terminal it asks what is not said. Nothing that is there is ever overwritten.',
);

program
  .command('folder')
  .description('a new content folder')
  .argument('[dir]', 'a folder that is not there yet, or is empty')
  .option('--title <text>', 'the title of the site')
  .option('--language <tag>', 'the language you write in, such as en or nb')
  .addOption(noQuestions())
  .action((dir: string | undefined, options: { title?: string; language?: string; questions: boolean }) =>
    exitWith(() => asking(options, (asker) => makeFolder(dir, options, asker))),
  );

inFolder<Parameters<typeof newRecord>[2]>('record', 'one document you examined', newRecord)
  .option('--title <text>', 'what the record is called; names the file where no id is given')
  .option(
    '--series <id>',
    'the series it belongs to, such as us-federal-census-1900: what that tells is laid out',
  )
  .addOption(
    new Option('--event <kind>', 'of a register or certificate: what it records').choices(eventKinds),
  )
  .option('--place <id>', 'where it was made')
  .option('--made <date>', 'when; of a census the day is known')
  .option('--name <text...>', 'those it names, as written: bride after groom, child before father and mother')
  .option('--ship <text>', 'of a passenger list')
  .option('--line <text>', 'the shipping line of a passenger list')
  .option('--from <port>', 'where the ship sailed from, as written')
  .option('--to <port>', 'where it sailed to, as written');
inFolder<Parameters<typeof newPerson>[2]>('person', 'one person', newPerson)
  .option('--name <text>', 'the person’s name')
  .addOption(new Option('--sex <letter>', 'M, F, X or U').choices(sexes))
  .option('--born <date>', 'such as 1840~')
  .option('--died <date>', 'such as 1903-06-02')
  .option('--mentions <ref...>', 'the mentions that are this person, such as marriage-1868#m2');
inFolder<Parameters<typeof newCase>[2] & { today: string }>(
  'case',
  'a research question about one person’s place of origin',
  (folder, id, given, asker) => newCase(folder, id, given, given.today, asker),
)
  .option('--subject <person>', 'the id of the person')
  .option('--question <text>', 'the question')
  .addOption(todayOption());
inFolder<Parameters<typeof newSearch>[2] & { today: string }>(
  'search',
  'one look into a series of records',
  (folder, id, given, asker) => newSearch(folder, id, given, given.today, asker),
)
  .option('--for <person...>', 'whom you looked for')
  .option('--series <id>', 'the series you looked in')
  .option('--coverage <years>', 'the years you looked through, such as 1863/1865')
  .addOption(new Option('--result <word>', 'what came of it; not-found unless said').choices(results))
  .addOption(todayOption('the day of the search'));
inFolder<Parameters<typeof newPlace>[2]>('place', 'one place of your own', newPlace)
  .option('--name <text>', 'its name')
  .option('--kind <word>', 'townland, parish, city, county …')
  .option('--within <id...>', 'what it lies in');
inFolder<Parameters<typeof newReview>[2] & { today: string }>(
  'review',
  'a reviewer’s signed answer to a case, named by the case’s id',
  (folder, id, given, asker) => newReview(folder, id, given, given.today, asker),
)
  .option('--reviewer <name>', 'who signs')
  .addOption(new Option('--overall <answer>', 'the answer on the whole').choices(answers))
  .addOption(todayOption('the day of the review'));

program.addHelpText(
  'after',
  '\nExamples:\n  npm run new -- folder ~/tobin --title "The Tobins of Troy"\n  npm run new -- record --content ~/tobin --series us-federal-census-1900 --name "Ellen Burke"\n  npm run new -- search s1 --for ellen-tobin --series us-passenger-lists-1820-1891 --content ~/tobin\n\nExit code: 0 made, 2 nothing made.',
);

// Without a word, somebody on a terminal is asked; anybody else gets the help.
program.action(async () => {
  if (!process.stdin.isTTY) program.help({ error: true });
  await exitWith(async () => {
    const kind = await asking({ questions: true }, (asker) =>
      asker.ask({
        ask: `What do you want to make? ${kinds.join(', ')}`,
        required: true,
        problem: (said) =>
          (kinds as readonly string[]).includes(said) ? undefined : `Answer one of ${kinds.join(', ')}.`,
      }),
    );
    await program.parseAsync([kind!, ...process.argv.slice(2)], { from: 'user' });
    return (process.exitCode ?? 0) as 0;
  });
});
program.allowUnknownOption(false);

await program.parseAsync();

type Make<Given> = (
  folder: NewFolder,
  id: string | undefined,
  given: Given,
  asker: Asker,
) => Promise<[path: string, text: string]>;

/** A subcommand that makes one file in a content folder. */
function inFolder<Given>(kind: string, description: string, make: Make<Given>): Command {
  return program
    .command(kind)
    .description(description)
    .addArgument(new Argument('[id]', 'its id: lower-case words joined by hyphens').argParser(checkedId))
    .addOption(contentOption())
    .addOption(noQuestions())
    .action((id: string | undefined, options: Given & { content: string; questions: boolean }) =>
      exitWith(() =>
        asking(options, async (asker) => {
          const folder = new NewFolder(options.content);
          const [path, text] = await make(folder, id, options, asker);
          folder.write(path, text);
          process.stdout.write(
            `Made ${asCalled(join(folder.dir, path))}. Fill it in, then: npm run check -- --content ${folder.dir}\n`,
          );
          return 0 as const;
        }),
      ),
    );
}

async function makeFolder(
  given: string | undefined,
  options: { title?: string; language?: string },
  asker: Asker,
): Promise<0> {
  const named =
    given ?? (await asker.ask({ ask: 'Which folder? A path that is not there yet', required: true }));
  if (named === undefined) throw new CannotRun('Say which folder is to be made: npm run new -- folder DIR.');
  const dir = fromCaller(named);
  if (existsSync(dir) && (!statSync(dir).isDirectory() || readdirSync(dir).length > 0))
    throw new CannotRun(`${dir} is there already and is not an empty folder; nothing was written.`);
  const fallback = 'Where our people came from';
  const title = options.title ?? (await asker.ask({ ask: 'The title of the site', fallback })) ?? fallback;
  const language =
    options.language ??
    (await asker.ask({ ask: 'The language you write in (en, nb, de …)', fallback: 'en' })) ??
    'en';
  for (const [path, text] of Object.entries(folderFiles(title, language))) writeNew(join(dir, path), text);
  writeEditorFiles(loadCorpus(dir, { schemaOnly: true }));
  process.stdout.write(
    [
      `Made the content folder ${dir}.`,
      'Next, for example:',
      `  npm run new -- record marriage-1868 --content ${dir}`,
      `  npm run new -- person ellen-tobin --name "Ellen Tobin" --content ${dir}`,
      `  npm run new -- case ellen-tobin --content ${dir}`,
      `  npm run check -- --content ${dir}`,
      `  npm start -- --content ${dir}`,
      ...(dir.startsWith(projectRoot + sep)
        ? [
            'It lies within the folder of the program. Better keep what is yours apart, such as in ~/tobin: move it.',
          ]
        : []),
      '',
    ].join('\n'),
  );
  return 0;
}

function noQuestions(): Option {
  return new Option('--no-questions', 'ask nothing, leave open what is not said');
}

/** Work with somebody to ask, where there is somebody. */
async function asking<T>(
  { questions }: { questions: boolean },
  work: (asker: Asker) => Promise<T>,
): Promise<T> {
  const asker =
    questions && process.stdin.isTTY && process.stdout.isTTY
      ? askerOn(process.stdin, process.stdout)
      : silent;
  try {
    return await work(asker);
  } finally {
    asker.end();
  }
}

function checkedId(value: string): string {
  const problem = idProblem(value);
  if (problem) throw new InvalidArgumentError(problem);
  return value;
}
