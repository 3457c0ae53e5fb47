/** GEDCOM through the import and the export, as the verbs do it, without a process of their own. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadCorpus } from '../../../src/corpus/load.ts';
import type { Corpus } from '../../../src/corpus/types.ts';
import { buildDossier } from '../../../src/dossier/build.ts';
import { examine } from '../../../src/dossier/examine.ts';
import { gedcomOf } from '../../../src/exports/gedcom/write.ts';
import { writeChanges } from '../../../src/imports/changes.ts';
import { planGedcom, type GedcomImport } from '../../../src/imports/gedcom/import.ts';
import { wholeReport } from '../../../src/imports/gedcom/report.ts';
import { writeWhole } from '../../../src/imports/whole-file.ts';

export const today = '2026-06-01';

/** A folder that is gone when the work is done. */
export async function inFolder<T>(work: (dir: string) => Promise<T> | T): Promise<T> {
  const dir = mkdtempSync(join(tmpdir(), 'whence-gedcom-'));
  try {
    return await work(dir);
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

/** Imports a text into the folder `content` under another; the site is the family’s unless it is said to be public. */
export async function bringIn(
  dir: string,
  gedcom: string | Buffer,
  {
    name = 'family',
    file = 'family.ged',
    lenient = false,
    audience = 'public',
    country = undefined as string | undefined,
  } = {},
): Promise<{ done: GedcomImport; content: string; report: string }> {
  const content = join(dir, 'content');
  mkdirSync(content, { recursive: true });
  writeFileSync(join(content, 'site.yaml'), `title: The family\naudience: ${audience}\n`);
  const path = join(dir, file);
  writeFileSync(path, gedcom);
  const corpus = loadCorpus(content, { schemaOnly: true });
  const done = await planGedcom({ path, content, corpus, name, today, lenient, country });
  if ('broken' in done)
    throw new Error(done.tree.faults.list.map(({ line, text }) => `line ${line}: ${text}`).join('\n'));
  for (const { from, name: picture } of done.copies)
    writeWhole(content, `media/${picture}`, readFileSync(from));
  writeChanges(content, `gedcom/${name}`, done.plan, done.of);
  const report = [...wholeReport(done)].join('');
  return { done, content, report };
}

/** What the content holds, and what the check has against it. */
export function look(content: string): { corpus: Corpus; errors: string[] } {
  const corpus = loadCorpus(content);
  const { findings } = examine(corpus, today);
  return {
    corpus,
    errors: findings
      .filter(({ severity }) => severity === 'error')
      .map(({ file, line, message }) => `${file}:${line} ${message}`),
  };
}

/** The export of a content folder. */
export function takeOut(content: string): string {
  return [...gedcomOf(buildDossier(examine(loadCorpus(content), today)))].join('');
}

/** People, places and records of a content, for comparison. */
export function facts({ people, places, records }: Corpus): Record<string, unknown> {
  const plain = (map: ReadonlyMap<string, unknown>) =>
    Object.fromEntries([...map].sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    people: plain(people),
    places: plain(new Map([...places].filter(([, { builtIn }]) => !builtIn))),
    records: plain(records),
  };
}
