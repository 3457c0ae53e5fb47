import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { excerpt } from '../../src/corpus/excerpt.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { goodContent, readMarks, withContent } from './content.ts';

interface BadInput {
  name: string;
  rules: string[];
  files: Record<string, string>;
  /** Findings about a whole folder point to the folder, not to a file in it. */
  folders?: string[];
}

const here = import.meta.dirname;
const cases = load(readFileSync(join(here, 'bad-input.yaml'), 'utf8')) as BadInput[];
const golden = join(here, 'bad-input.golden.txt');

const reported = cases.map((item) => {
  const { files, positions } = readMarks(item.files);
  const expected = positions.map((position) => {
    const folder = item.folders?.find((name) => position.startsWith(`${name}/`));
    return folder ? `${folder}:1:1` : position;
  });
  return withContent({ ...goodContent, ...files }, (dir) => {
    const corpus = loadCorpus(dir);
    const texts = corpus.findings.map((finding) =>
      [
        `${finding.file}:${finding.line}:${finding.column} ${finding.severity} ${finding.rule}`,
        ...excerpt(corpus.source(finding.file), finding, 0)
          .split('\n')
          .filter(Boolean)
          .map((line) => `    ${line}`),
        `  ${finding.message}`,
        `  ${finding.help}`,
      ].join('\n'),
    );
    return { item, expected, findings: corpus.findings, text: [`# ${item.name}`, ...texts].join('\n') };
  });
});

describe('each slip is found at its place', () => {
  test.each(reported)('$item.name', ({ item, expected, findings }) => {
    expect(findings.map((finding) => `${finding.file}:${finding.line}:${finding.column}`)).toEqual(
      expected.toSorted(inFileOrder),
    );
    expect(findings.map((finding) => finding.rule).toSorted()).toEqual(item.rules.toSorted());
  });
});

test('the sentences are those agreed on (RENEW=1 writes them anew)', () => {
  const text = `${reported.map((report) => report.text).join('\n\n')}\n`;
  if (process.env['RENEW']) writeFileSync(golden, text);
  expect(text).toBe(readFileSync(golden, 'utf8'));
});

test('no sentence is empty, comes from a library or names what only programs know', () => {
  for (const { findings } of reported)
    for (const { message, help } of findings) {
      expect(message).toMatch(/[.?!]$/);
      expect(help.length).toBeGreaterThan(10);
      expect(`${message} ${help}`).not.toMatch(
        /undefined|\[object|invalid input|expected string|regex|must match|schema|NaN/i,
      );
    }
});

function inFileOrder(a: string, b: string): number {
  const [fileA, lineA, columnA] = a.split(':');
  const [fileB, lineB, columnB] = b.split(':');
  return (
    (fileA! < fileB! ? -1 : fileA! > fileB! ? 1 : 0) ||
    Number(lineA) - Number(lineB) ||
    Number(columnA) - Number(columnB)
  );
}
