/**
 * Two independent ways to one answer: the reasoning, and a slow twin that tries every subset. First the twin against
 * cases worked by hand from the sentences of the rule, then the two against each other on random corpora.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computeCase } from '../../src/reasoning/case.ts';
import { caseId, corpora, rawCorpora } from '../twin/arbitrary.ts';
import { fromReal, fromTwin } from '../twin/compare.ts';
import { facts } from '../twin/facts.ts';
import { handCases } from '../twin/hand-cases.ts';
import { twinCase } from '../twin/twin.ts';

describe('cases worked by hand', () => {
  test.each(handCases)('$title: the twin', ({ facts: content, expected }) => {
    expect(fromTwin(twinCase(content, 'hand'))).toMatchObject(expected);
  });

  test.each(handCases)('$title: the reasoning', ({ facts: content, expected }) => {
    expect(fromReal(computeCase(content, 'hand'))).toMatchObject(expected);
  });
});

test('the reasoning and its twin agree on 3,000 random corpora', () => {
  fc.assert(
    // On failure the smallest content that tells them apart is printed, with the seed and path that lead to it.
    fc.property(rawCorpora, (raw) => {
      const content = facts(raw);
      expect(fromReal(computeCase(content, caseId))).toEqual(fromTwin(twinCase(content, caseId)));
    }),
    { seed: 1871, numRuns: 3000 },
  );
}, 60_000);

test('the random corpora are worth comparing: each outcome of the rule comes up', () => {
  const results = fc
    .sample(corpora, { seed: 1871, numRuns: 1500 })
    .map((content) => twinCase(content, caseId));
  const often = (holds: (result: (typeof results)[number]) => boolean) => results.filter(holds).length;
  expect(often((r) => r.standing === 'meets')).toBeGreaterThan(150);
  expect(often((r) => r.standing === 'contested')).toBeGreaterThan(30);
  expect(often((r) => r.standing === 'short')).toBeGreaterThan(150);
  expect(often((r) => r.independent >= 3)).toBeGreaterThan(50);
  expect(often((r) => r.margin >= 2)).toBeGreaterThan(50);
  expect(often((r) => r.criticalRecords.length > 0)).toBeGreaterThan(100);
  expect(often((r) => r.argued.length > 0)).toBeGreaterThan(100);
  expect(
    often((r) => r.conflicts.some((c) => c.answered) && r.conflicts.some((c) => !c.answered)),
  ).toBeGreaterThan(5);
  expect(
    often((r) =>
      Object.values(r.roots)
        .flat()
        .some((root) => root.viaPerhaps),
    ),
  ).toBeGreaterThan(100);
});
