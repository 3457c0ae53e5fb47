/* What conflicts with a conclusion is defined by the rules of proof; what answers something else is only hinted at. */
import { describe, expect, test } from 'vitest';
import { loadCorpus } from '../../src/corpus/load.ts';
import { examine } from '../../src/dossier/examine.ts';
import { goodContent, withContent } from '../corpus/content.ts';

/** The findings about a case that concludes on Knockmahon, by file, line and column. */
function check(...lines: string[]): { at: string; rule: string; severity: string; text: string }[] {
  const files = {
    ...goodContent,
    'people/people.yaml': [
      '- { id: maurice-phelan, name: Maurice Phelan, mentions: [deed#m1, letter#m1] }',
      '- { id: johanna-kirwan, name: Johanna Kirwan, mentions: [letter#m2] }',
      '',
    ].join('\n'),
    'records/letter.md': [
      '---',
      'title: Letter',
      'form: original',
      'made: 1871',
      'place: michigan',
      'mentions:',
      '  - { id: m1, birthplace: Ballingarry, residence: Hancock }',
      '  - { id: m2, birthplace: Kill }',
      '---',
      '',
    ].join('\n'),
    'searches/s.yaml': [
      '- { id: s1, date: 2025, for: maurice-phelan, series: ireland-tithe-applotment, result: not-found }',
      '- { id: s2, date: 2025, for: maurice-phelan, series: ireland-tithe-applotment, result: not-found }',
      '',
    ].join('\n'),
    'cases/c.md': [
      '---',
      'question: Where?',
      'subject: maurice-phelan',
      'evidence:',
      '  - { id: e1, from: deed#m1, states: birthplace, place: knockmahon, kind: direct }',
      '  - { id: e2, from: letter#m1, states: birthplace, place: co-tipperary, kind: direct }',
      '  - { id: e3, from: letter#m2, states: birthplace, place: kill, kind: indirect, tiedBy: e1 }',
      '  - { id: e4, from: letter#m1, states: residence, place: michigan, kind: indirect }',
      '  - { id: e5, from: letter#m1, states: residence, kind: indirect }',
      ...lines,
      '---',
      '',
    ].join('\n'),
  };
  return withContent(files, (dir) =>
    examine(loadCorpus(dir), '2026-06-01')
      .findings.filter(({ rule }) => ['answer-is-to-a-conflict', 'unanswered-conflict'].includes(rule))
      .map(({ file, line, column, rule, severity, message, help }) => ({
        at: `${file}:${line}:${column}`,
        rule,
        severity,
        text: `${message} ${help}`,
      })),
  );
}

describe('an answer under conflicts', () => {
  const concluded = ['conclusion: { place: knockmahon, claim: probable, cites: [e1, e3], because: So. }'];

  test('to an item that conflicts is right, whether the case concludes or supposes', () => {
    const answer = ['conflicts:', '  - { evidence: e2, resolution: A slip. }'];
    expect(check(...concluded, ...answer)).toEqual([]);
    expect(check('hypothesis: { place: knockmahon, cites: [e1] }', ...answer)).toEqual([]);
  });

  test.each([
    ['e1', 'it reads Knockmahon, and the two places agree'],
    ['e3', 'it is not, or not only, of the subject'],
    ['e4', 'it does not state the birthplace that the case asks for'],
    ['e5', 'it names no place'],
    ['n1', 'it speaks against County Tipperary, and the case names a place that does not lie there'],
  ])('to %s is a hint that says why there is no conflict', (id, why) => {
    const found = check(
      '  - { id: n1, from: search:s1, kind: negative, against: co-tipperary }',
      ...concluded,
      'conflicts:',
      '  - { evidence: e2, resolution: A slip. }',
      `  - { evidence: ${id}, resolution: So. }`,
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      at: 'cases/c.md:14:7',
      rule: 'answer-is-to-a-conflict',
      severity: 'hint',
    });
    expect(found[0]!.text).toContain(`does not conflict with Knockmahon: ${why}.`);
  });

  test('is not judged where the case names no place', () =>
    expect(check('conflicts:', '  - { evidence: e1, resolution: So. }')).toEqual([]));
});

test.each([
  ['deed#m2', 'why what is not in deed#m2 does not overturn'],
  ['search:s1', 'why nothing found in the search s1 does not overturn'],
  ['[search:s1, search:s2]', 'why nothing found in the searches s1 and s2 does not overturn'],
  [
    '[letter#m1, search:s2]',
    'why what is not in letter#m1, and nothing found in the search s2, does not overturn',
  ],
])('negative evidence from %s is answered as what it is', (from, said) => {
  const found = check(
    `  - { id: n1, from: ${from}, kind: negative, against: kill }`,
    'conclusion: { place: knockmahon, claim: probable, cites: [e1, e3], because: So. }',
    'conflicts:',
    '  - { evidence: e2, resolution: A slip. }',
  );
  expect(found.map(({ rule }) => rule)).toEqual(['unanswered-conflict']);
  expect(found[0]!.text).toContain(said);
});
