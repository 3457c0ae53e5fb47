import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { loadCorpus } from '../src/corpus/load.ts';
import { examine } from '../src/dossier/examine.ts';
import { gazetteerOf } from '../src/reasoning/places/gazetteer.ts';
import { resolveReading } from '../src/reasoning/places/resolve.ts';

/** The files that the README has a new author write, in order: a path in backticks on a line, then a code block. */
const readme = readFileSync(resolve(import.meta.dirname, '../README.md'), 'utf8');
const files = [...readme.matchAll(/^`([^`\n]+)`\n```\w+\n([\s\S]*?)^```$/gm)].map((match) => ({
  path: match[1]!,
  text: match[2]!,
}));

let dir: string;
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'whence-readme-'));
  write({ path: 'site.yaml', text: 'title: The Tobins of Troy\n' });
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

function write({ path, text }: { path: string; text: string }): void {
  mkdirSync(dirname(join(dir, path)), { recursive: true });
  writeFileSync(join(dir, path), text);
}

test('the ten minutes begin with a hypothesis that falls short', () => {
  const first = files.findIndex((file) => file.path.startsWith('cases/'));
  for (const file of files.slice(0, first + 1)) write(file);
  const { findings, cases } = examine(loadCorpus(dir), '2026-06-01');
  expect(findings).toEqual([]);
  expect(cases.get('ellen-tobin')).toMatchObject({ standing: 'open', claim: 'hypothesis', independent: 1 });
});

test('and end with a conclusion that meets the rule', () => {
  for (const file of files) write(file);
  write({
    path: 'people/ellen-tobin.md',
    text: readFileSync(join(dir, 'people/ellen-tobin.md'), 'utf8').replace(
      '[marriage-1868#m1]',
      '[marriage-1868#m1, gravestone-1911#m1]',
    ),
  });
  const { findings, cases, living } = examine(loadCorpus(dir), '2026-06-01');
  expect(findings).toEqual([]);
  expect(cases.get('ellen-tobin')).toMatchObject({
    standing: 'meets',
    claim: 'probable',
    independent: 2,
    margin: 1,
  });
  expect([...living]).toEqual([]);
});

test('the misspelt place of the README is the parish of its case', () => {
  for (const file of files) write(file);
  const reading = /npm run place -- "([^"]+)" --content/.exec(readme)![1]!;
  const found = resolveReading(gazetteerOf(loadCorpus(dir).places.values()), reading);
  expect(found).toMatchObject({ outcome: 'clear', candidates: [{ id: 'mullinahone' }] });
});
