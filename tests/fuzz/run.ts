/**
 * Mutated content folders through `check`, as many as one likes:
 *
 *     npm run fuzz -- --cases 1000 --seed 1 [--from 0]
 *     npm run fuzz -- --cases 20 --seed 1 --build
 *     npm run fuzz -- --show 17 --seed 1        what the folder of a number differs in
 *
 * No folder may break off the check, keep it for more than ten seconds, or get a finding without a place; with
 * `--build`, every folder without errors is made into a site, out of which nothing may have escaped. What is found
 * becomes a test in `found/`.
 */
import { Command } from 'commander';
import { smallImage } from '../hostile/images.ts';
import { buildMany } from './build-many.ts';
import { checkMany } from './check-many.ts';
import { mutated } from './mutate.ts';

const whole = (value: string) => Number.parseInt(value, 10);
const { cases, seed, from, build, show } = new Command('npm run fuzz --')
  .option('--cases <n>', 'how many folders', whole, 1000)
  .option('--seed <n>', 'which folders', whole, 1)
  .option('--from <n>', 'the number of the first', whole, 0)
  .option('--build', 'also make a site of those without errors')
  .option('--show <n>', 'print what the folder of one number differs in', whole)
  .parse()
  .opts<{ cases: number; seed: number; from: number; build?: true; show?: number }>();

const image = await smallImage();
if (show !== undefined) {
  const { files, changed } = mutated(seed, show, image);
  for (const path of changed) {
    const content = files[path];
    process.stdout.write(
      `=== ${path}\n${content === undefined ? '(gone)' : typeof content === 'string' ? content : Buffer.from(content).toString('latin1')}\n`,
    );
  }
} else {
  const say = (line: string) => process.stdout.write(`${line}\n`);
  const { found, counts } = await (build ? buildMany : checkMany)({ cases, seed, from, image, say });
  say(`${cases} folders of seed ${seed} from ${from}: ${JSON.stringify(counts)}, ${found} broke a promise`);
  process.exitCode = found > 0 ? 1 : 0;
}
