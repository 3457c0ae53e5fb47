import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { associatesCsv } from '../../src/dossier/associates.ts';
import { csvLine } from '../../src/dossier/csv.ts';
import { examine } from '../../src/dossier/examine.ts';
import { planChanges, writeChanges } from '../../src/imports/changes.ts';
import { readMemory } from '../../src/imports/memory.ts';
import { mapColumns, mappingFile } from '../../src/imports/tables/mapping.ts';
import { readMentionTable } from '../../src/imports/tables/read.ts';
import { recordsOf } from '../../src/imports/tables/records.ts';
import { voyage } from '../bench/voyages.ts';
import { caseFile } from '../exports/published-content.ts';
import { goodContent } from '../corpus/content.ts';

let work: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-list-'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** Invented lists of several ships, as somebody types them. */
function spreadsheet(ships: number, each: number): string {
  const lines = [
    csvLine(['Ship', 'Arrived', 'No', 'Name', 'Age', 'Sex', 'Occupation', 'Native place', 'Ticket']),
  ];
  for (let ship = 0; ship < ships; ship++) {
    const { entries } = voyage({
      name: `ship ${ship}`,
      seed: ship + 1,
      entries: each,
      order: 'as embarked',
      tickets: 'per party',
      origins: 'place',
      bound: 'none',
    });
    entries.forEach((entry, i) =>
      lines.push(
        csvLine([
          `Star ${ship + 1}`,
          `${ship + 1} May 1864`,
          i + 1,
          // Among them the two the case is about.
          i === 5 ? 'Maurice Phelan' : (entry.name ?? ''),
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

test('a table of passengers becomes records that the check accepts and the associates are found in', () => {
  const content = join(work, 'content');
  const files = {
    ...goodContent,
    'cases/phelan.md': caseFile(''),
    'people/people.yaml': goodContent['people/people.yaml']!.replace(
      '[deed#m1]',
      '[deed#m1, star-1-1864-05-01#m6]',
    ),
  };
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(content, file)), { recursive: true });
    writeFileSync(join(content, file), text);
  }
  const path = join(work, 'lists.csv');
  writeFileSync(path, spreadsheet(3, 120));
  const table = readMentionTable(path, 'lists.csv');
  const mapping = mapColumns(
    table.headings,
    mappingFile.parse({
      record: {
        form: 'original',
        seen: 'film',
        made: '{Arrived}',
        series: 'us-passenger-lists-1820-1891',
        place: 'new-york',
      },
    }),
    'lists.csv',
  );
  const { records, problems } = recordsOf(table, mapping, { placeOf: () => undefined });
  expect(problems).toEqual([]);
  expect(records.map(({ id }) => id)).toEqual([
    'star-1-1864-05-01',
    'star-2-1864-05-02',
    'star-3-1864-05-03',
  ]);
  const plan = () => planChanges(content, records, readMemory(content, 'tables'));
  writeChanges(content, 'tables', plan());

  const corpus = loadCorpus(content);
  const { findings } = examine(corpus, '2026-06-01');
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  // A list that says where the subject was from is to be weighed; that alone is missed.
  expect(
    findings
      .filter(({ severity, file }) => severity === 'warning' && file.startsWith('records/'))
      .map(({ rule }) => rule),
  ).toEqual(['every-birthplace-weighed']);
  const beside = table.rows.slice(3, 9).map(({ cells }) => cells[3]!);
  const sightings = associatesCsv(corpus)
    .split('\n')
    .filter((line) => line.includes('star-1-1864-05-01'));
  for (const name of beside.filter((one) => one !== 'Maurice Phelan'))
    expect(sightings.some((line) => line.includes(name))).toBe(true);

  // Brought in again it is the same, and a record the author has taken away stays away.
  rmSync(join(content, 'records/star-2-1864-05-02.md'));
  expect(plan().changes.map(({ fate }) => fate)).toEqual(['same', 'deleted', 'same']);
  expect(writeChanges(content, 'tables', plan())).toEqual([]);
});
