/**
 * The worked examples, each put into a folder, read and examined as an author's content would be. What should come out
 * was worked out by hand from the sentences of the rules; the steps stand beside each example under `why`.
 */
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { groups, readExamples, type Example } from '../../src/catalogue/examples/read.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine, type Examination } from '../../src/dossier/examine.ts';
import { isoDay } from '../../src/model/days.ts';
import type { Finding } from '../../src/model/finding.ts';
import type { CaseResult } from '../../src/reasoning/types.ts';
import { english } from '../../src/interface/index.ts';

const folder = fileURLToPath(new URL('../../src/catalogue/examples/', import.meta.url));
const texts = Object.fromEntries(
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
);
const { sentences, examples } = readExamples(texts);

const scratch = mkdtempSync(join(tmpdir(), 'whence-examples-'));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

test('every sentence of the rules has an example, and every example shows a sentence of its rules', () => {
  const keys = sentences.map((sentence) => sentence.key);
  const shown = new Set(examples.flatMap((example) => example.shows));
  expect(keys.filter((key) => !shown.has(key))).toEqual([]);
  expect([...shown].filter((key) => !keys.includes(key))).toEqual([]);
  expect(new Set(keys).size).toBe(keys.length);
});

test('ids of examples are unique, each file is a group, and each shared file is used', () => {
  expect(new Set(examples.map((example) => example.id)).size).toBe(examples.length);
  expect(Object.keys(texts).sort()).toEqual(
    [...groups, 'base', 'sentences'].map((name) => `${name}.yaml`).sort(),
  );
  const used = new Set(
    examples.flatMap(({ files, content }) =>
      files.filter(({ path }) => !(path in content)).map(({ path }) => path),
    ),
  );
  const { always, files } = parse(texts['base.yaml'] ?? '') as Record<'always' | 'files', object>;
  expect([...used].sort()).toEqual([...Object.keys(always), ...Object.keys(files)].sort());
});

for (const group of groups)
  describe(group, () => {
    test.each(
      examples.filter((example) => example.group === group).map((example) => [example.id, example] as const),
    )('%s', (_, example) => {
      const examination = examined(example);
      const said = examination.findings.map(briefly).join('\n');
      expect(outcome(examination, example), said).toEqual(asWanted(example));
      for (const { rule, severity, at, says } of example.expect.findings) {
        const fits = (finding: Finding) =>
          finding.rule === rule &&
          (severity ?? finding.severity) === finding.severity &&
          (at ?? position(finding)) === position(finding) &&
          finding.message.includes(says ?? '');
        expect(
          examination.findings.some(fits),
          `${rule} ${severity ?? ''} ${at ?? ''} ${says ?? ''}, among\n${said}`,
        ).toBe(true);
      }
    });
  });

function examined(example: Example): Examination {
  const root = join(scratch, example.id);
  for (const { path, text } of example.files) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return examine(loadCorpus(root), '2025-06-01');
}

const position = ({ file, line, column }: Finding) => `${file}:${line}:${column}`;
const briefly = (finding: Finding) =>
  `${position(finding)} ${finding.severity} ${finding.rule}: ${finding.message}`;

/** Of the computation, what the example speaks of. */
function outcome(examination: Examination, { expect: wanted }: Example): Record<string, unknown> {
  const found: Record<string, unknown> = {
    findings: examination.findings.map((finding) => finding.rule).sort(),
  };
  const { cases, births } = examination;
  const result = cases.get('c');
  for (const key of caseKeys) {
    if (wanted[key] === undefined) continue;
    if (!result) throw new Error('The case could not be computed.');
    found[key] = ofCase[key](result);
  }
  if (wanted.roots && result)
    found.roots = Object.fromEntries(
      Object.keys(wanted.roots).map((id) => [
        id,
        (result.items.find((item) => item.id === id)?.roots ?? []).map(plainRoot).sort(byKey),
      ]),
    );
  if (result) {
    const points = (list: readonly string[] | undefined, holds: boolean) =>
      list?.filter((id) => result.points.find(({ point }) => point === id)?.holds === holds);
    if (wanted.held) found.held = points(wanted.held, true);
    if (wanted.notHeld) found.notHeld = points(wanted.notHeld, false);
    if (wanted.reasons)
      found.reasons = Object.fromEntries(
        Object.entries(wanted.reasons).map(([id, words]) => {
          const said = result.points.find(({ point }) => point === id)?.said;
          const because = said ? english.points.because(said) : '';
          return [id, because.includes(words) ? words : because];
        }),
      );
  }
  if (wanted.people)
    found.people = Object.fromEntries(
      Object.keys(wanted.people).map((id) => {
        const { first, last, outliers } = births.get(id) ?? { first: null, last: null, outliers: [] };
        return [
          id,
          {
            born: `${first === null ? '..' : isoDay(first)}/${last === null ? '..' : isoDay(last)}`,
            outliers,
          },
        ];
      }),
    );
  return found;
}

const ofCase = {
  place: (c: CaseResult) => c.place,
  claim: (c: CaseResult) => c.claim,
  standing: (c: CaseResult) => c.standing,
  independent: (c: CaseResult) => c.independent,
  support: (c: CaseResult) =>
    c.support.map(({ place, independent, evidence }) => ({ place, independent, evidence })),
  counting: (c: CaseResult) => c.items.filter((item) => item.counts).map((item) => item.id),
  dependence: (c: CaseResult) => c.dependence,
  undetermined: (c: CaseResult) => c.undetermined,
  argued: (c: CaseResult) => c.argued,
  untied: (c: CaseResult) => c.untied,
  conflicts: (c: CaseResult) =>
    Object.fromEntries(
      c.conflicts.map(({ evidence, answered }) => [evidence, answered ? 'answered' : 'unanswered']),
    ),
  margin: (c: CaseResult) => c.margin,
  criticalRecords: (c: CaseResult) => c.criticalRecords,
};
const caseKeys = Object.keys(ofCase) as (keyof typeof ofCase)[];

function asWanted({ expect: { findings, roots, ...rest } }: Example): Record<string, unknown> {
  const wanted: Record<string, unknown> = {
    ...rest,
    findings: findings.map((finding) => finding.rule).sort(),
  };
  if (roots)
    wanted.roots = Object.fromEntries(
      Object.entries(roots).map(([id, list]) => [id, list.map(plainRoot).sort(byKey)]),
    );
  return wanted;
}

/** An unknown root is neither known nor possible in words; whether it came through a perhaps matters. */
function plainRoot({ key, known, viaPerhaps }: { key: string; known: boolean; viaPerhaps: boolean }) {
  return { key, known: key.startsWith('unknown:') ? false : known, viaPerhaps };
}

function byKey(a: { key: string }, b: { key: string }): number {
  return a.key < b.key ? -1 : a.key > b.key ? 1 : 0;
}
