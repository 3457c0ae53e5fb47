/** Content as a generator would ruin it: the reading never breaks off, and every finding has a place and a sentence. */
import fc from 'fast-check';
import { stringify } from 'yaml';
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { caseFile } from '../../src/model/case.ts';
import { evidence } from '../../src/model/case.ts';
import { personFile } from '../../src/model/person.ts';
import { placeEntry } from '../../src/model/place.ts';
import { informant, mention, recordFile } from '../../src/model/record.ts';
import { search } from '../../src/model/search.ts';
import { goodContent, withContent } from './content.ts';

const rich: Readonly<Record<string, string>> = {
  ...goodContent,
  'series/s.yaml': '- { id: x, title: X, of: michigan, kind: vital, from: 1867, to: .. }\n',
  'searches/s.yaml': '- { id: s1, date: 2025, for: maurice-phelan, series: x, result: not-found }\n',
  'cases/phelan.md': [
    '---',
    'question: In which townland was he born?',
    'subject: maurice-phelan',
    'evidence:',
    '  - { id: e1, from: deed#m1, states: birthplace, place: knockmahon, kind: direct }',
    '  - { id: e2, from: search:s1, kind: negative, against: kill, tiedBy: [e1, [e1, e1]] }',
    'hypothesis: { place: knockmahon, cites: [e1] }',
    'independence:',
    '  - between: [e1, e2]',
    '    because: >-',
    '      They lived far apart.',
    '---',
    'Told in [@deed] and [#e1].',
    '',
  ].join('\n'),
};

function expectOrderly(files: Readonly<Record<string, string>>): void {
  withContent(files, (dir) => {
    const corpus = loadCorpus(dir);
    for (const finding of corpus.findings) {
      expect(finding.message, finding.rule).toMatch(/[.?!]$/);
      expect(`${finding.message} ${finding.help}`).not.toMatch(/undefined|\[object|Invalid|NaN/);
      const lines = corpus.source(finding.file).split('\n');
      expect(finding.line).toBeGreaterThanOrEqual(1);
      expect(finding.line).toBeLessThanOrEqual(lines.length);
      expect(finding.column).toBeLessThanOrEqual(Array.from(lines[finding.line - 1]!).length + 1);
    }
    // What cannot be read is never missing without a word.
    const bad = corpus.findings.some((finding) => finding.severity === 'error');
    if (!bad) expect(corpus.broken.size).toBe(0);
  });
}

describe('ruined content', () => {
  test('one good folder has no findings', () =>
    withContent(rich, (dir) => expect(loadCorpus(dir).findings).toEqual([])));

  const signs = [
    '',
    ' ',
    '  ',
    '\t',
    ':',
    ': ',
    ', ',
    '"',
    "'",
    '[',
    ']',
    '{',
    '}',
    '*',
    '&',
    '!',
    '|',
    '- ',
    '\n',
    '\n  ',
    '#',
    '---\n',
    '<<: x',
    'é',
    '😀',
    '0',
    '..',
    '\\',
  ];
  const slip = fc.record({
    file: fc.constantFrom(...Object.keys(rich)),
    at: fc.nat(400),
    length: fc.nat(12),
    insert: fc.constantFrom(...signs),
  });

  test('by slips of the pen', () => {
    fc.assert(
      fc.property(fc.array(slip, { minLength: 1, maxLength: 4 }), (slips) => {
        const files: Record<string, string> = { ...rich };
        for (const { file, at, length, insert } of slips) {
          const text = files[file]!;
          const place = at % (text.length + 1);
          files[file] = text.slice(0, place) + insert + text.slice(place + length);
        }
        expectOrderly(files);
      }),
      { numRuns: 80, seed: 1 },
    );
  });

  const shapes = [recordFile, caseFile, personFile, placeEntry, mention, evidence, search, informant].map(
    (schema) => Object.keys(schema.shape),
  );
  const key = fc.constantFrom(...new Set(shapes.flat()), 'unknown', 'constructor', '__proto__', 'e1', 'm1');
  const word = fc.constantFrom(
    'm1',
    'e1',
    'deed',
    'deed#m1',
    'search:s1',
    'maurice-phelan',
    'kill',
    '1840~',
    '11 Apr 1840',
    'Morris Whelan',
    'direct',
    'original',
    '',
    '..',
    'says.x',
  );
  const { value } = fc.letrec((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      word,
      fc.constantFrom(null, true, 12, -3.5),
      fc.array(tie('value'), { maxLength: 3 }),
      fc.array(fc.tuple(key, tie('value')), { maxLength: 5 }).map((pairs) => new Map(pairs)),
    ),
  }));

  test('by right keys with wrong values', () => {
    fc.assert(
      fc.property(value, value, value, value, (record, item, people, places) => {
        expectOrderly({
          ...rich,
          'records/wrong.md': `---\n${stringify(record, { lineWidth: 0 })}---\n`,
          'cases/wrong.md': `---\n${stringify(item, { lineWidth: 0 })}---\n`,
          'people/wrong.yaml': stringify([people], { lineWidth: 0 }),
          'places/wrong.yaml': stringify([places], { lineWidth: 0 }),
        });
      }),
      { numRuns: 60, seed: 1 },
    );
  });
});
