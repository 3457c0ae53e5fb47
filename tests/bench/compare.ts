/**
 * How well and how fast tables of people are compared, on the invented lists of `compare-data.ts`, in the same run as a
 * plain rival: every pair of a part of the lists by the likeness of the whole name, years at most five apart.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readTable } from '../../src/corpus/table.ts';
import { foldName } from '../../src/reasoning/names/fold.ts';
import { jaroWinkler } from '../../src/reasoning/names/jaro-winkler.ts';
import { germanRegister, irishLists, type TwoTables } from './compare-data.ts';
import { measure } from './measure.ts';

interface Pair {
  a: string;
  b: string;
  probability: number;
}

/** Runs the section; gives rows for the table of results. */
export async function benchCompare(project: string): Promise<string[][]> {
  const work = mkdtempSync(join(tmpdir(), 'whence-bench-compare-'));
  const rows = [['lists', 'what', 'seconds', 'peak MB', 'F1', 'recall at 0.85']];
  const run = async (
    label: string,
    what: string,
    files: readonly string[],
    truth: ReadonlySet<string>,
    ...args: string[]
  ) => {
    const out = join(work, 'pairs.csv');
    const told = await measure(
      process.execPath,
      ['src/cli/compare.ts', ...files, '--out', out, ...args],
      project,
    );
    const { f } = quality(pairsOf(out), truth);
    const all = await measure(
      process.execPath,
      ['src/cli/compare.ts', ...files, '--out', out, '--threshold', '0.01', ...args],
      project,
    );
    if (told.code !== 0 || all.code !== 0) throw new Error(`compare ended with ${told.code}`);
    rows.push([
      label,
      what,
      told.seconds.toFixed(1),
      told.peak?.toFixed(0) ?? '–',
      f.toFixed(3),
      quality(pairsOf(out), truth).recallAt85.toFixed(3),
    ]);
  };
  try {
    const put = (name: string, text: string) => {
      writeFileSync(join(work, name), text);
      return join(work, name);
    };
    const register = germanRegister(10_000, 1_000, 1);
    const one = [put('register.csv', register.csv)];
    await run('register of 10,000', 'compare', one, register.truth);
    await run('register of 10,000', 'compare, flat', one, register.truth, '--weights', 'flat');
    for (const county of [true, false]) {
      const lists = irishLists({ rowsA: 1500, rowsB: 1500, shared: 700, county, seed: 7 });
      const two = [put('a.csv', lists.a), put('b.csv', lists.b)];
      const label = `1,500 × 1,500 men${county ? ', county' : ''}`;
      await run(label, 'compare', two, lists.truth);
      await run(label, 'compare, flat', two, lists.truth, '--weights', 'flat');
      const start = process.hrtime.bigint();
      const { f, recallAt85 } = quality(byLikeness(lists), lists.truth);
      const seconds = Number(process.hrtime.bigint() - start) / 1e9;
      rows.push([
        label,
        'every pair by likeness',
        seconds.toFixed(1),
        '–',
        `${f.toFixed(3)} at best`,
        recallAt85.toFixed(3),
      ]);
    }
    const big = irishLists({ rowsA: 50_000, rowsB: 50_000, shared: 20_000, county: true, seed: 3 });
    await run(
      '50,000 × 50,000 men, county',
      'compare',
      [put('a.csv', big.a), put('b.csv', big.b)],
      big.truth,
    );
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
  return rows;
}

function pairsOf(file: string): Pair[] {
  return readTable(readFileSync(file, 'utf8')).rows.map(({ cells }) => ({
    a: cells[0]!,
    b: cells[1]!,
    probability: Number(cells[3]),
  }));
}

/** F of all the pairs, and the most that is found while no more than 15 in 100 are wrong, the likeliest taken first. */
function quality(pairs: readonly Pair[], truth: ReadonlySet<string>): { f: number; recallAt85: number } {
  let found = 0;
  let recallAt85 = 0;
  pairs.forEach(({ a, b }, at) => {
    if (truth.has(`${a} ${b}`) || truth.has(`${b} ${a}`)) found++;
    if (found / (at + 1) >= 0.85) recallAt85 = found / truth.size;
  });
  return { f: (2 * found) / (pairs.length + truth.size), recallAt85 };
}

/** The plain rival: each row’s best by the likeness of the whole name, with the best cut that hindsight can find. */
function byLikeness(lists: TwoTables): Pair[] {
  const people = (csv: string) =>
    readTable(csv).rows.map(({ cells }) => ({
      id: cells[0]!,
      name: foldName(`${cells[1]} ${cells[2]}`),
      year: Number(cells[3]),
    }));
  const others = people(lists.b);
  const best = people(lists.a).flatMap((one) => {
    let found: Pair | undefined;
    for (const other of others) {
      if (Math.abs(one.year - other.year) > 5) continue;
      const probability = jaroWinkler(one.name, other.name) - Math.abs(one.year - other.year) / 100;
      if (!found || probability > found.probability) found = { a: one.id, b: other.id, probability };
    }
    return found ? [found] : [];
  });
  const sorted = best.sort((x, y) => y.probability - x.probability);
  let found = 0;
  let most = 0;
  let cut = 0;
  sorted.forEach(({ a, b }, at) => {
    if (lists.truth.has(`${a} ${b}`)) found++;
    const f = (2 * found) / (at + 1 + lists.truth.size);
    if (f > most) [most, cut] = [f, at + 1];
  });
  return sorted.slice(0, cut);
}
