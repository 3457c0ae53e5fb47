/** How long tables and gazetteers take to come in: whole processes, on invented lists and a made-up island. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { csvLine } from '../../src/dossier/csv.ts';
import { generatedTownlands } from './gazetteers.ts';
import { measure } from './measure.ts';
import { voyage } from './voyages.ts';

/** A row for each size: passengers, and places in a plain table and in the GeoNames format. */
export async function importsReport(
  project: string,
  sizes: { passengers: number; places: number },
): Promise<string[][]> {
  const rows = [['rows', 'what', 'seconds', 'peak MB']];
  const work = mkdtempSync(join(tmpdir(), 'whence-bench-'));
  const run = async (what: string, count: number, verb: string, args: string[]) => {
    const { seconds, peak, code } = await measure(
      process.execPath,
      [join(project, `src/cli/${verb}.ts`), ...args, '--content', join(work, 'content')],
      project,
    );
    rows.push([
      String(count),
      code === 0 ? what : `${what} (exit ${code})`,
      seconds.toFixed(2),
      peak === null ? '–' : peak.toFixed(0),
    ]);
  };
  try {
    mkdirSync(join(work, 'content'));
    writeFileSync(join(work, 'content/site.yaml'), 'title: Lists\n');
    writeFileSync(join(work, 'passengers.csv'), passengers(sizes.passengers));
    await run('passengers in', sizes.passengers, 'import', [
      'table',
      join(work, 'passengers.csv'),
      '--write',
    ]);
    await run('check of them', sizes.passengers, 'check', []);
    writeFileSync(join(work, 'townlands.csv'), townlands(sizes.places));
    await run('places in', sizes.places, 'import', ['gazetteer', join(work, 'townlands.csv'), '--write']);
    await run('the same again', sizes.places, 'import', [
      'gazetteer',
      join(work, 'townlands.csv'),
      '--write',
    ]);
    writeFileSync(join(work, 'places.txt'), geoNames(sizes.places));
    await run('GeoNames format, a look', sizes.places, 'import', ['gazetteer', join(work, 'places.txt')]);
    return rows;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

/** Invented passengers of many ships, as somebody types them. */
function passengers(count: number): string {
  const lines = [
    csvLine(['Ship', 'Arrived', 'Line', 'Name', 'Age', 'Sex', 'Occupation', 'Native place', 'Ticket']),
  ];
  for (let ship = 0; lines.length <= count; ship++) {
    const { entries } = voyage({
      name: `ship ${ship}`,
      seed: ship + 1,
      entries: 240,
      order: 'as embarked',
      tickets: 'per party',
      origins: 'place',
      bound: 'none',
    });
    entries
      .slice(0, count + 1 - lines.length)
      .forEach((entry, i) =>
        lines.push(
          csvLine([
            `Star ${ship + 1}`,
            `${(ship % 28) + 1} May ${1850 + (ship % 60)}`,
            i + 1,
            entry.name ?? '',
            entry.age ?? '',
            entry.sex ?? '',
            entry.occupation ?? '',
            'Ireland',
            entry.ticket ?? '',
          ]),
        ),
      );
  }
  return lines.join('');
}

function townlands(count: number): string {
  const { places, townlands: all } = generatedTownlands(count);
  const names = new Map(places.map((place) => [place.id, place.name]));
  return [
    csvLine(['name', 'county', 'civil parish', 'kind']),
    ...all.map(({ place, county }) =>
      csvLine([place.name, county, names.get(place.within[0]!.place)!, 'townland']),
    ),
  ].join('');
}

function geoNames(count: number): string {
  const { townlands: all } = generatedTownlands(count, 2);
  return all
    .map(({ place }, i) =>
      [
        i + 1,
        place.name,
        place.name,
        '',
        52 + (i % 3000) / 1000,
        -9 + (i % 2000) / 1000,
        'P',
        'PPL',
        'IE',
        '',
      ]
        .concat(['M', '', '', '', 0, '', 10, 'Europe/Dublin', '2020-01-01'] as never[])
        .join('\t'),
    )
    .join('\n');
}
