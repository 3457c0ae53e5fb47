import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { buildDossier } from '../../src/dossier/build.ts';
import { examine } from '../../src/dossier/examine.ts';
import { styleOf } from '../citations/styles.ts';
import { goodContent, withContent } from './content.ts';

const look = (
  site: string,
  files: Record<string, string | Uint8Array> = {},
  before?: (dir: string) => void,
) =>
  withContent({ ...goodContent, 'site.yaml': `title: The Phelans\n${site}\n`, ...files }, (dir) => {
    before?.(dir);
    const examination = examine(loadCorpus(dir), '2026-01-01');
    return {
      findings: examination.findings
        .filter(({ file }) => file === 'site.yaml' || file.startsWith('styles'))
        .map(({ rule, severity, file, line, column, message, help }) => ({
          rule,
          severity,
          at: `${file}:${line}:${column}`,
          message,
          help,
        })),
      note: buildDossier(examination).records.get('deed')!.note,
    };
  });
const loud = styleOf('<text variable="title" text-case="uppercase"/>');

describe('a style of citation that site.yaml names', () => {
  test('sets the notes', () => {
    expect(look('citationStyle: styles/mine.csl', { 'styles/mine.csl': loud })).toEqual({
      findings: [],
      note: 'DEED OF 1870',
    });
    expect(look('description: without').note).toBe('Deed of 1870');
  });

  test('may stand in a folder of its own there, with a BOM and other line ends', () => {
    const text = `\ufeff${loud.replaceAll('\n', '\r\n')}`;
    expect(look('citationStyle: styles/a/mine.csl', { 'styles/a/mine.csl': text })).toEqual({
      findings: [],
      note: 'DEED OF 1870',
    });
  });

  test('that is missing is an error at the key, and the notes are in our own style', () => {
    expect(look('citationStyle: styles/mime.csl', { 'styles/mine.csl': loud })).toEqual({
      findings: [
        {
          rule: 'citation-style-is-csl',
          severity: 'error',
          at: 'site.yaml:2:16',
          message: 'There is no file styles/mime.csl in the content folder.',
          help: 'Did you mean styles/mine.csl?',
        },
      ],
      note: 'Deed of 1870',
    });
  });

  test('that is no style is an error at the place in its file', () => {
    const { findings, note } = look('citationStyle: styles/mine.csl', {
      'styles/mine.csl': '<style>\n<info>\n</style>',
    });
    expect(findings.map(({ rule, at }) => [rule, at])).toEqual([
      ['citation-style-is-csl', 'styles/mine.csl:3:1'],
    ]);
    expect(note).toBe('Deed of 1870');
  });

  test('that is not text, or too long, is told of', () => {
    expect(
      look('citationStyle: styles/mine.csl', { 'styles/mine.csl': new Uint8Array([60, 255]) }).findings[0]
        ?.rule,
    ).toBe('file-is-utf8');
    expect(
      look('citationStyle: styles/mine.csl', { 'styles/mine.csl': ' '.repeat(6_000_000) }).findings[0]?.rule,
    ).toBe('file-is-of-reasonable-size');
  });

  test.each([
    '/etc/mine.csl',
    '../mine.csl',
    'styles/../../mine.csl',
    'mine.csl',
    'styles/mine.xml',
    'styles\\mine.csl',
    'styles/.csl',
  ])('is not looked for at %s', (path) => {
    const { findings } = look(`citationStyle: '${path}'`, { 'styles/mine.csl': loud });
    expect(findings.map(({ severity, at }) => [severity, at])).toEqual([['error', 'site.yaml:2:16']]);
    expect(findings[0]?.message).toContain('styles/journal.csl');
  });

  test('that a link brings in from outside is an error, and is not read', () => {
    withContent({ 'mine.csl': loud }, (outside) => {
      const { findings, note } = look('citationStyle: styles/mine.csl', { 'styles/readme.txt': '' }, (dir) =>
        symlinkSync(join(outside, 'mine.csl'), join(dir, 'styles/mine.csl')),
      );
      expect(findings.map(({ rule, at }) => [rule, at])).toEqual([
        ['file-lies-inside-the-content', 'site.yaml:2:16'],
      ]);
      expect(note).toBe('Deed of 1870');
      const folder = look('citationStyle: styles/mine.csl', {}, (dir) =>
        symlinkSync(outside, join(dir, 'styles')),
      );
      expect(folder.findings.some(({ rule }) => rule === 'file-lies-inside-the-content')).toBe(true);
      expect(folder.note).toBe('Deed of 1870');
    });
  });
});
