/**
 * What the rooms of kin, associates, journeys, plans, clues and candidate families add to the time of a check, over
 * content of growing size and in shapes that have nothing to hold on to. The check asks for associates itself; that
 * part of it is taken off before the ratio is reckoned, so that no room is measured against itself.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadCorpus } from '../../src/corpus/load.ts';
import type { Corpus } from '../../src/corpus/types.ts';
import { associatesView } from '../../src/dossier/associates.ts';
import { candidateViews } from '../../src/dossier/candidates.ts';
import { clueViews } from '../../src/dossier/clues.ts';
import { examine } from '../../src/dossier/examine.ts';
import { journeysView } from '../../src/dossier/journeys.ts';
import { kinshipView } from '../../src/dossier/kinship.ts';
import { planView } from '../../src/dossier/plan.ts';
import type { Case } from '../../src/model/case.ts';
import type { Facts } from '../../src/model/facts.ts';
import { english } from '../../src/interface/index.ts';
import { identityHints } from '../../src/reasoning/identity/hints.ts';
import { generate } from './generate.ts';

const today = '2025-06-01';

type PerCase = (facts: Facts, c: Case) => unknown;
const perCase = (view: PerCase) => (facts: Facts) => {
  for (const c of facts.cases.values()) view(facts, c);
};

/** The rooms, in the order a dossier asks them. */
const rooms: readonly (readonly [name: string, run: (facts: Facts) => unknown])[] = [
  ['kinship', perCase((facts, c) => kinshipView(facts, c, english))],
  ['clues', perCase((facts, c) => clueViews(facts, c, english))],
  ['candidates', perCase((facts, c) => candidateViews(facts, c, english))],
  ['plan', perCase(planView)],
  ['associates', associatesView],
  ['journeys', journeysView],
];

/** The rooms whose sum the aim is about. */
const counted = new Set(['clues', 'plan', 'associates', 'journeys']);

interface Timed {
  check: number;
  rooms: Map<string, number>;
}

function seconds(run: () => unknown): number {
  const start = process.hrtime.bigint();
  run();
  return Number(process.hrtime.bigint() - start) / 1e9;
}

/** The same corpus as an object of its own, so that nothing worked out for another is remembered. */
const afresh = (corpus: Corpus): Corpus => ({ ...corpus });

/**
 * Loading and examining; then, on facts of which only the namings have been compared (which every check does), each room
 * in the order of a build.
 */
function timed(dir: string): Timed & { mentions: number } {
  let corpus!: Corpus;
  const check = seconds(() => {
    corpus = loadCorpus(dir);
    examine(corpus, today);
  });
  const own = afresh(corpus);
  identityHints(own);
  const times = new Map<string, number>();
  for (const [name, run] of rooms)
    times.set(
      name,
      seconds(() => run(own)),
    );
  return { check, rooms: times, mentions: corpus.counts.mentions };
}

function inFolder<T>(fill: (dir: string) => void, run: (dir: string) => T): T {
  const dir = mkdtempSync(join(tmpdir(), 'whence-crowd-'));
  try {
    fill(dir);
    return run(dir);
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

/** Growing content: seconds of each room, its ratio to the check, and how it grew since the size before. */
export function crowdReport(sizes: readonly number[] = [2500, 5000, 10_000]): string[][] {
  // One small run first, so that nothing of the start is counted.
  inFolder((dir) => generate(dir, 300, 1, true), timed);
  const table: string[][] = [
    ['records', 'mentions', 'check', ...rooms.map(([name]) => name), 'sum ÷ rest of check', 'growth'],
  ];
  let before: { sum: number; size: number } | undefined;
  for (const size of sizes) {
    const one = inFolder((dir) => generate(dir, size, 1, true), timed);
    const sum = [...one.rooms].reduce((all, [name, time]) => all + (counted.has(name) ? time : 0), 0);
    table.push([
      String(size),
      String(one.mentions),
      one.check.toFixed(2),
      ...rooms.map(([name]) => one.rooms.get(name)!.toFixed(2)),
      (sum / (one.check - one.rooms.get('associates')!)).toFixed(2),
      before ? `${(sum / before.sum).toFixed(1)} for ${(size / before.size).toFixed(1)} times` : '–',
    ]);
    before = { sum, size };
  }
  return table;
}

/** Shapes with nothing to hold on to: seconds of the check and of each room. */
export function degenerateReport(): string[][] {
  const table: string[][] = [['shape', 'check', ...rooms.map(([name]) => name)]];
  for (const [name, fill] of shapes) {
    const one = inFolder(fill, timed);
    table.push([name, one.check.toFixed(2), ...rooms.map(([room]) => one.rooms.get(room)!.toFixed(2))]);
  }
  return table;
}

const json = (value: unknown) => JSON.stringify(value);

function write(dir: string, path: string, entry: Record<string, unknown>): void {
  mkdirSync(join(dir, path, '..'), { recursive: true });
  const lines = Object.entries(entry).map(([key, value]) =>
    Array.isArray(value) && typeof value[0] === 'object'
      ? `${key}:\n${value.map((one) => `  - ${json(one)}\n`).join('')}`
      : `${key}: ${json(value)}\n`,
  );
  writeFileSync(join(dir, path), `---\n${lines.join('')}---\n`);
}

const shapes: readonly (readonly [name: string, fill: (dir: string) => void])[] = [
  [
    'one list of 2,000 mentions',
    (dir) => {
      start(dir);
      const mentions = Array.from({ length: 2000 }, (_, i) => ({
        id: `m${i + 1}`,
        name: `${['Patrick', 'John', 'Mary', 'Bridget'][i % 4]} ${['Power', 'Foley', 'Casey'][i % 3]}`,
        role: i === 0 ? 'declarant' : 'passenger',
        age: 20 + (i % 40),
        voyage: { ship: 'Harvest Home', arrived: '1864-05-02', line: i + 1, bound: 'Hancock' },
        ...(i > 0 && i % 5 === 0 ? { relations: [{ as: 'child', of: `m${i}` }] } : {}),
      }));
      write(dir, 'records/list.md', {
        ...head('A list'),
        series: 'us-passenger-lists-1820-1891',
        mentions,
      });
      family(dir, ['list#m1', 'paper#m1']);
    },
  ],
  [
    'everybody named alike',
    (dir) => {
      start(dir);
      for (let i = 0; i < 1500; i++)
        write(dir, `records/r${i}.md`, {
          ...head(`Paper ${i}`),
          mentions: [
            { id: 'm1', name: 'John Smith', role: 'head', age: 20 + (i % 50) },
            { id: 'm2', name: 'John Smith', role: 'witness', relations: [{ as: 'witness', of: 'm1' }] },
            { id: 'm3', name: 'Mary Smith', role: 'wife', relations: [{ as: 'spouse', of: 'm1' }] },
            { id: 'm4', name: 'John Smith', role: 'neighbour', relations: [{ as: 'neighbour', of: 'm1' }] },
          ],
        });
      family(dir, [...Array.from({ length: 1500 }, (_, i) => `r${i}#m1`), 'paper#m1']);
    },
  ],
  [
    'one family of 3,000',
    (dir) => {
      start(dir);
      for (let i = 1; i < 3000; i++)
        write(dir, `people/p${i}.md`, {
          name: `${i % 2 ? 'John' : 'Mary'} Power`,
          sex: i % 2 ? 'M' : 'F',
          parents: i < 3 ? [] : i % 100 === 0 ? ['p1'] : [`p${Math.floor(i / 2)}`],
        });
      write(dir, 'people/siblings.md', { name: 'Anne Power', sex: 'F', parents: ['p1'] });
      family(dir, ['paper#m1'], ['p2999']);
    },
  ],
];

const head = (title: string) => ({ title, form: 'original', made: '1870-06-01', place: 'hancock' });

function start(dir: string): void {
  for (const folder of ['records', 'people', 'cases', 'places'])
    mkdirSync(join(dir, folder), { recursive: true });
  writeFileSync(join(dir, 'site.yaml'), 'title: A shape\ninvented: true\nlanguage: en\n');
  writeFileSync(
    join(dir, 'places/here.yaml'),
    '- { id: hancock, name: Hancock, kind: city, within: [michigan] }\n- { id: kill, name: Kill, kind: civil parish, within: [co-waterford] }\n',
  );
}

/** A subject with a case, its mentions, and a candidate over there. */
function family(dir: string, mentions: readonly string[], parents: readonly string[] = []): void {
  write(dir, 'records/paper.md', {
    ...head('A paper'),
    mentions: [{ id: 'm1', name: 'Patrick Power', role: 'head', birthplace: 'Kill, Co. Waterford' }],
  });
  write(dir, 'records/register.md', {
    ...head('A register'),
    made: '1840',
    place: 'kill',
    mentions: [
      {
        id: 'm1',
        name: 'Patrick',
        role: 'child',
        event: { kind: 'baptism', date: '1840', place: 'Kill' },
        relations: [{ as: 'child', of: 'm2' }],
      },
      { id: 'm2', name: 'John Power', role: 'father', sex: 'M' },
    ],
  });
  write(dir, 'people/subject.md', { name: 'Patrick Power', sex: 'M', parents, mentions });
  write(dir, 'cases/c.md', {
    question: 'Where was he born?',
    subject: 'subject',
    candidates: [{ id: 'a', records: ['register'] }],
  });
}
