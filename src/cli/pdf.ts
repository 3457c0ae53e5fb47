/** `pdf`: the check, then the proof pages of one or all cases as PDFs. */
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import { Option } from 'commander';
import type { Paper } from '../exports/pdf/print.ts';
import { CannotWrite } from '../exports/site/problems.ts';
import { interruptible, privateFolder, startMaking } from './shared/making.ts';
import { contentOption, todayOption, verb } from './shared/options.ts';
import { demandEarlier, forceOption, isOurPdf } from './shared/earlier.ts';
import { asCalled, fromCaller, projectRoot } from './shared/paths.ts';
import { exitWith } from './shared/run.ts';

const program = verb(
  'npm run pdf --',
  'Checks the content and prints the proof page of each case into a PDF named after it. With errors nothing is written.',
)
  .argument('[cases...]', 'ids of cases; all of them when none is named')
  .addOption(contentOption())
  .addOption(
    new Option(
      '--out <dir>',
      'the folder to write the PDFs into; earlier ones of the same case are written over',
    )
      .argParser(fromCaller)
      .default(resolve(projectRoot, 'pdf'), 'pdf/ of the project'),
  )
  .addOption(new Option('--paper <size>', 'the size of the sheets').choices(['a4', 'letter']).default('a4'))
  .addOption(forceOption())
  .addOption(todayOption())
  .addHelpText(
    'after',
    '\nExample: npm run pdf -- phelan-knockmahon --paper letter\n\nNothing but the PDFs is written, and no other file in the folder is touched.\nExit code: 0 fine, 1 the content has errors, 2 could not run.',
  )
  .parse();
const options = program.opts<{ content: string; out: string; paper: Paper; force: boolean; today: string }>();

await exitWith(async () => {
  const wanted = [...new Set(program.args)];
  for (const id of wanted) mustBeCase(id);
  mustTakePdfs(options.out);
  for (const id of wanted) demandEarlier(join(options.out, `${id}.pdf`), isOurPdf, options.force);
  const work = privateFolder();
  const interruption = interruptible('Stopped. PDFs that were finished stay; nothing else was written.');
  let finished = false;
  try {
    mkdirSync(work, { recursive: true });
    const code = await interruption.guard(
      startMaking({
        content: options.content,
        today: options.today,
        base: '/',
        work,
        unwritten: 'No PDF was written; earlier ones, if there are any, are as they were.',
      }),
    );
    if (code !== 0) return code;
    const site = join(work, 'site');
    const cases = wanted.length > 0 ? wanted : casesOf(site);
    const orders = cases.map((id) => ({
      page: join(site, 'cases', id, 'proof.html'),
      pdf: join(options.out, `${id}.pdf`),
    }));
    for (const { pdf } of orders) demandEarlier(pdf, isOurPdf, options.force);
    mkdirSync(options.out, { recursive: true });
    const { printPages } = await import('../exports/pdf/print.ts');
    await printPages(orders, { site, paper: options.paper, day: options.today }, ({ pdf }, sheets) =>
      process.stdout.write(`${shortest(pdf)}: ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'}\n`),
    );
    if (orders.length === 0) process.stdout.write('There is no case to print.\n');
    finished = true;
    return 0;
  } finally {
    rmSync(work, { recursive: true, force: true });
    interruption.end(finished);
  }
});

/** Whether a case is there is asked of its file, before anything is made. */
function mustBeCase(id: string): void {
  const folder = join(options.content, 'cases');
  const files = existsSync(folder) ? readdirSync(folder).sort() : [];
  if (files.includes(`${id}.md`) || files.includes(`${id}.mdx`)) return;
  const known = files.flatMap((file) => /^([a-z0-9-]+)\.mdx?$/.exec(file)?.[1] ?? []);
  throw new CannotWrite(
    `There is no case ${id} in ${folder}. ${known.length > 0 ? `Its cases are: ${known.join(', ')}.` : 'There are no cases in it.'}`,
  );
}

/** PDFs go into a folder, and never among the files they are made from. */
function mustTakePdfs(out: string): void {
  const refuse = (why: string): never => {
    throw new CannotWrite(
      `${out} can’t take the PDFs: ${why}. Nothing was written. Name another folder with --out.`,
    );
  };
  if (existsSync(out) && !statSync(out).isDirectory()) refuse('it is a file');
  if (out === options.content || out.startsWith(options.content + sep))
    refuse('it lies in the content folder');
}

function casesOf(site: string): string[] {
  const folder = join(site, 'cases');
  const names = existsSync(folder) ? readdirSync(folder).sort() : [];
  return names.filter((name) => existsSync(join(folder, name, 'proof.html')));
}

function shortest(file: string): string {
  const near = asCalled(file);
  return near.startsWith('..') ? file : near;
}
