/**
 * `npm run bench`: whole-process times of check and build beside Eleventy rendering the same record files, in the same
 * run on the same machine. Read the ratios; single seconds depend on the machine and on what else it does.
 *
 *   npm run bench -- [--sizes 1000,5000] [--runs 3] [--only check|places|compare|crowd|citations|search|imports|gedcom] [--townlands FILE.csv]
 */
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { citationsReport } from './citations.ts';
import { benchCompare } from './compare.ts';
import { crowdReport, degenerateReport } from './crowd.ts';
import { generate } from './generate.ts';
import { benchGedcom } from './gedcom.ts';
import { importsReport } from './imports.ts';
import { measure, median, type Measured } from './measure.ts';
import { placesReport } from './places.ts';
import { searchReport } from './search.ts';

const { values } = parseArgs({
  options: {
    sizes: { type: 'string', default: '1000,5000' },
    runs: { type: 'string', default: '3' },
    only: { type: 'string' },
    townlands: { type: 'string' },
  },
});
const project = join(import.meta.dirname, '../..');
const eleventy = join(project, 'node_modules/@11ty/eleventy/cmd.cjs');
const runs = Number(values.runs);
const rows: string[][] = [['records', 'what', 'seconds', 'peak MB', '× Eleventy']];

const wanted = (section: string) => values.only === undefined || values.only === section;
const sizes = wanted('check') || wanted('build') ? values.sizes.split(',').map(Number) : [];

for (const size of sizes) {
  const work = mkdtempSync(join(tmpdir(), 'whence-bench-'));
  try {
    const content = join(work, 'content');
    generate(content, size);
    const peer = join(work, 'peer');
    cpSync(join(content, 'records'), join(peer, 'records'), { recursive: true });
    writeFileSync(join(peer, 'records/records.json'), JSON.stringify({ layout: 'page.html' }));
    cpSync(join(import.meta.dirname, 'eleventy-layout.html'), join(peer, '_includes/page.html'));
    const times = new Map<string, Measured>();
    times.set(
      'Eleventy',
      await median(
        () =>
          measure(
            process.execPath,
            [eleventy, '--quiet', '--input', peer, '--output', join(work, 'peer-site')],
            peer,
          ),
        runs,
      ),
    );
    times.set(
      'check',
      await median(
        () => measure(process.execPath, ['src/cli/check.ts', '--content', content], project),
        runs,
      ),
    );
    if (values.only !== 'check') {
      const build = () =>
        measure(
          process.execPath,
          ['src/cli/build.ts', '--content', content, '--out', join(work, 'site')],
          project,
        );
      // After an update of the project its pages are bundled anew; else the first build of a content finds nothing kept
      // of it, the second everything.
      const forget = (...names: string[]) => {
        for (const name of names)
          rmSync(join(project, 'node_modules/.whence', name), { recursive: true, force: true });
      };
      forget('cache', 'programs', 'compiled');
      times.set('build, updated', await build());
      forget('cache');
      rmSync(join(work, 'site'), { recursive: true, force: true });
      times.set('build, first', await build());
      times.set('build, again', await build());
    }
    const base = times.get('Eleventy')!.seconds;
    for (const [what, { seconds, peak, code }] of times)
      rows.push([
        String(size),
        code === 0 ? what : `${what} (exit ${code})`,
        seconds.toFixed(2),
        peak === null ? '–' : peak.toFixed(0),
        (seconds / base).toFixed(2),
      ]);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

function print(table: readonly string[][]): void {
  const widths = table[0]!.map((_, column) => Math.max(...table.map((row) => row[column]!.length)));
  for (const row of table)
    console.log(
      row.map((cell, i) => (i < 2 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  '),
    );
}

if (sizes.length > 0) print(rows);

if (wanted('places')) {
  console.log('\nreadings of places, mangled as clerks do, the county given');
  for (const text of placesReport(4000, values.townlands)) console.log(text);
}

if (wanted('compare')) {
  console.log('\ntables of people compared');
  print(await benchCompare(project));
}

if (wanted('citations')) {
  console.log('\nrecords cited');
  print(citationsReport());
}

if (wanted('crowd')) {
  console.log('\nkin, associates, journeys, plans, clues and candidates beside the check, in seconds');
  print(crowdReport());
  console.log('\nshapes with nothing to hold on to, in seconds');
  print(degenerateReport());
}

if (wanted('search')) {
  console.log('\nthings looked up, the processor of the browser slowed to a quarter');
  print(await searchReport());
}

if (wanted('imports')) {
  console.log('\ntables and gazetteers brought in');
  print(await importsReport(project, { passengers: 5_000, places: 50_000 }));
}

if (wanted('gedcom')) {
  console.log('\na family file of 100,000 people brought in, and the folder checked');
  print(await benchGedcom(project, 100_000));
}
