/** `npm run torture -- --kills 200 --seed 1`: kills builds at random moments and says what was left. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Command } from 'commander';
import { killBuilds } from './kills.ts';

const whole = (value: string) => Number.parseInt(value, 10);
const { kills, seed } = new Command('npm run torture --')
  .option('--kills <n>', 'how many builds are killed', whole, 20)
  .option('--seed <n>', 'at which moments', whole, 1)
  .parse()
  .opts<{ kills: number; seed: number }>();

const work = mkdtempSync(join(tmpdir(), 'whence-torture-'));
const counts = await killBuilds({ work, kills, seed, say: (line) => process.stdout.write(`${line}\n`) });
process.stdout.write(`${JSON.stringify(counts)}\n`);
process.exitCode = counts.faults.length > 0 ? 1 : 0;
