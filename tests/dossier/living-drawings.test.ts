/**
 * Living relatives of the demo’s families, where every drawing and list would have them: in a public dossier none of
 * these says a word of them, and in the family’s each does, so that their silence means something.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import type { Dossier } from '../../src/dossier/types.ts';

const demo = resolve(import.meta.dirname, '../../content');
let folder: string;
let open: Dossier;
let family: Dossier;

/** Their names begin as no other word of the demo does, and so do their ids and what only they say. */
const theirs = /wyx|qex/i;
const list = (year: number, place: string, town: string) => `---
title: A list of ${year}
form: original
made: ${year}-05-04
place: ${place}
informants:
  house: { oneOf: [patrick-phelan-hancock, wyx-ella] }
  clerk: { person: wyx-ella, knowledge: primary }
informant: clerk
mentions:
  - { id: m1, name: Patrick Phelan, role: head, birthplace: Knockmahon, household: 1, voyage: { ship: Wave, from: Cork, to: New York, arrived: ${year}-05-04 } }
  - { id: m2, name: Ella Wyxdro, role: witness, age: 30, birthplace: "Qextown, ${town}", residence: Qextown, household: 1, relations: [{ as: witness, of: m1 }], voyage: { ship: Wave, from: Cork, to: New York, arrived: ${year}-05-04, bound: Qextown } }
  - { id: m3, name: Owen Wyxcli, role: child, age: 3, birthplace: Qextown, household: 1, relations: [{ as: child, of: m1 }, { as: sibling, of: m2 }], voyage: { ship: Wave, from: Cork, to: New York, arrived: ${year}-05-04, bound: Qextown } }
  - { id: m4, name: Abel Wyxkra, role: neighbour, birthplace: Qextown, relations: [{ as: neighbour, of: m1 }] }
---
A list.
`;
const additions: Record<string, string> = {
  'people/wyx.yaml': `
- { id: wyx-ella, name: Ella Wyxdro, sex: F, living: true, parents: [patrick-phelan-hancock, nora-hurley], spouses: [{ person: thomas-phelan-hancock, married: 1912-03-04, place: hancock }], mentions: [${[1901, 1904, 1907].map((year) => `list-${year}#m2`).join(', ')}], born: { date: 1880~, place: hancock } }
- { id: wyx-owen, name: Owen Wyxcli, sex: M, living: true, parents: [patrick-phelan-hancock, wyx-ella], mentions: [${[1901, 1904, 1907].map((year) => `list-${year}#m3`).join(', ')}], born: { place: knockmahon } }
- { id: wyx-abel, name: Abel Wyxkra, sex: M, living: true, mentions: [list-1901#m4, list-1904#m4, list-1907#m4] }
- { id: wyx-rival, name: Maurice Qexphelan, sex: M, living: true }
`,
  'records/list-1901.md': list(1901, 'hancock', 'Michigan'),
  'records/list-1904.md': list(1904, 'hancock', 'Kill'),
  'records/list-1907.md': list(1907, 'knockmahon', 'Kill'),
  'searches/wyx.yaml': `
- { id: s-of-today, date: 2025-01-01, for: [wyx-owen], series: us-federal-census-1880, result: not-found, note: Nothing }
`,
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'whence-living-'));
  cpSync(demo, folder, { recursive: true });
  for (const [file, text] of Object.entries(additions)) writeFileSync(join(folder, file), text);
  const person = join(folder, 'people/patrick-phelan-hancock.md');
  writeFileSync(
    person,
    readFileSync(person, 'utf8').replace(
      'mentions:\n',
      'mentions:\n  - list-1901#m1\n  - list-1904#m1\n  - list-1907#m1\n',
    ),
  );
  const ofCase = join(folder, 'cases/phelan-knockmahon.mdx');
  writeFileSync(
    ofCase,
    readFileSync(ofCase, 'utf8')
      .replace(
        'evidence:\n',
        "evidence:\n  - { id: e90, from: 'list-1901#m2', states: birthplace, kind: indirect, note: Her word }\n",
      )
      .replace(
        '\ncandidates:\n',
        '\ncandidates:\n  - { id: z, people: [wyx-rival, patrick-phelan-hancock], note: A family }\n',
      ),
  );
  const build = (audience: 'public' | 'family') => {
    const site = join(folder, 'site.yaml');
    writeFileSync(site, readFileSync(site, 'utf8').replace(/audience: \w+/, `audience: ${audience}`));
    const examination = examine(loadCorpus(folder), '2026-06-01');
    expect(examination.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    return buildDossier(examination);
  };
  open = build('public');
  family = build('family');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Everything a part of the dossier holds, keys of maps included, but for where the content lies. */
function said(value: unknown): string {
  return JSON.stringify(value, (_key, item: unknown) =>
    item instanceof Map ? [...item] : item instanceof Set ? [...item] : item,
  ).replaceAll(folder, '');
}

const ofCase = (dossier: Dossier) => dossier.cases.get('phelan-knockmahon')!;
const parts: [string, (dossier: Dossier) => unknown][] = [
  ['people: pages, parents, children, marriages, the years drawn', (d) => d.people],
  [
    'the births that records allow',
    (d) => [...d.people.values()].map(({ births, born, outliers }) => [births, born, outliers]),
  ],
  ['records: mentions, informants, relations', (d) => d.records],
  ['surnames', (d) => d.surnames],
  ['places: what is counted and listed there', (d) => d.places],
  ['associates', (d) => d.associates],
  ['journeys: who travelled together', (d) => d.journeys],
  ['the family of the case, and its lines', (d) => ofCase(d).kinship],
  ['clues', (d) => ofCase(d).clues],
  ['candidate families', (d) => [ofCase(d).case.candidates, ofCase(d).families]],
  ['what to search next', (d) => ofCase(d).plan],
  ['the computed case: roots, ties, pairs', (d) => ofCase(d).result],
  ['links between mentions', (d) => ofCase(d).links],
  ['citations to copy', (d) => [d.library, d.sources]],
  ['news and cards', (d) => d.publishing],
  ['the facts themselves', (d) => ({ ...d.facts, root: '', findings: [] })],
];
/** Where those of the demo would not be even if they were shown. */
const silentAnyway = new Set([
  'the births that records allow',
  'clues',
  'links between mentions',
  'citations to copy',
  'news and cards',
]);

describe('living relatives', () => {
  test.each(parts)('%s', (name, part) => {
    expect(said(part(open))).not.toMatch(theirs);
    if (!silentAnyway.has(name)) expect(said(part(family))).toMatch(theirs);
  });

  test('the dead beside them are there as before', () => {
    expect(open.people.get('patrick-phelan-hancock')!.mentions.map(({ ref }) => ref)).toContain(
      'list-1901#m1',
    );
    expect(open.records.get('list-1901')!.mentions.map(({ ref }) => ref)).toEqual(['list-1901#m1']);
    expect(open.records.get('list-1901')!.record.informants['living2']).toMatchObject({
      described: 'a living person',
    });
    expect(ofCase(open).result!.items.find(({ id }) => id === 'e90')!.mentions).toMatchObject([
      { person: 'living' },
    ]);
  });

  test('a digest tells nothing of them: it is the same whatever they are called and whenever they were born', () => {
    const digest = () => examine(loadCorpus(folder), '2026-06-01').digests.get('phelan-knockmahon')!.whole;
    const site = join(folder, 'site.yaml');
    writeFileSync(site, readFileSync(site, 'utf8').replace(/audience: \w+/, 'audience: public'));
    const before = digest();
    for (const file of ['people/wyx.yaml', 'records/list-1901.md']) {
      const path = join(folder, file);
      writeFileSync(
        path,
        readFileSync(path, 'utf8')
          .replaceAll('Ella Wyxdro', 'Anna Wyxhru')
          .replaceAll('age: 30', 'age: 31')
          .replaceAll('1880~', '1881'),
      );
    }
    expect(before).toMatch(/^sha256-/);
    expect(digest()).toBe(before);
  });
});
