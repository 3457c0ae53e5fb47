/**
 * What must hold of every case when its content is changed a little, checked on random corpora: above all that saying
 * less never counts for more.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Evidence } from '../../src/model/case.ts';
import type { Facts } from '../../src/model/facts.ts';
import type { Person } from '../../src/model/person.ts';
import { computeCase } from '../../src/reasoning/case.ts';
import type { CaseResult } from '../../src/reasoning/types.ts';
import { corpora, caseId } from '../twin/arbitrary.ts';
import { aRecord, theCase, withCase, withoutInformants, withRecord } from '../twin/changes.ts';
import { fromReal } from '../twin/compare.ts';
import { exemplars } from '../twin/records.ts';
import { leftWithout } from '../twin/twin.ts';

const solved = (facts: Facts): CaseResult => computeCase(facts, caseId);
const which = fc.nat({ max: 999 });
const minute = 600_000;

/** Runs a property over random corpora and a number to choose with. */
function always(check: (facts: Facts, at: number) => void, numRuns = 8000) {
  fc.assert(fc.property(corpora, which, check), { seed: 99, numRuns });
}

/** Without arguments for pairs that are dependent: to argue one of those is an error, and nothing is promised then. */
function withoutVainArguments(facts: Facts): Facts {
  const dependent = solved(withCase(facts, { independence: [] })).pairs.filter(
    (pair) => pair.relation === 'dependent',
  );
  const independence = theCase(facts).independence.filter(
    ({ between }) => !dependent.some(({ a, b }) => between.includes(a) && between.includes(b)),
  );
  return withCase(facts, { independence });
}

/** Every number of the case is at most what it was. */
function expectNoMore(after: CaseResult, before: CaseResult) {
  const numbers = (result: CaseResult) => [
    ['at the place', result.independent],
    ['margin', result.margin],
    ...result.support.map((level) => [level.place, level.independent]),
  ];
  const was = new Map(numbers(before) as [string, number][]);
  const raised = numbers(after).filter(
    ([name, number]) => (number as number) > (was.get(name as string) ?? 0),
  );
  expect(raised).toEqual([]);
}

describe('saying less never counts for more', { timeout: minute }, () => {
  test('without a record’s place', () => {
    always((facts, at) => {
      const { id } = aRecord(facts, at);
      expectNoMore(
        solved(withRecord(facts, id, (record) => ({ ...record, place: undefined }))),
        solved(facts),
      );
    });
  });

  test('without the knowledge of a record’s informants', () => {
    always((given, at) => {
      const facts = withoutVainArguments(given);
      const silent = withRecord(facts, aRecord(facts, at).id, (record) => ({
        ...record,
        informants: Object.fromEntries(
          Object.entries(record.informants).map(([name, informant]) => [
            name,
            { ...informant, knowledge: undefined },
          ]),
        ),
      }));
      expectNoMore(solved(silent), solved(facts));
    });
  });

  test('without the informants of a record that copies none for certain', () => {
    // A copy is different: its information is then the exemplar's alone, and one root fewer may be shared.
    always((given, at) => {
      const facts = withoutVainArguments(given);
      const { id, derivedFrom } = aRecord(facts, at);
      if (derivedFrom.some((source) => typeof source === 'string')) return;
      expectNoMore(solved(withRecord(facts, id, withoutInformants)), solved(facts));
    });
  });

  test('with an item cited no longer', () => {
    always((facts, at) => {
      const kase = theCase(facts);
      if (!kase.conclusion) return;
      const gone = kase.evidence[at % kase.evidence.length]?.id;
      const cites = kase.conclusion.cites.filter((id) => id !== gone);
      expectNoMore(solved(withCase(facts, { conclusion: { ...kase.conclusion, cites } })), solved(facts));
    });
  });

  test('with an argument given up', () => {
    always((facts, at) => {
      const { independence } = theCase(facts);
      const fewer = independence.filter((_, i) => i !== at % Math.max(1, independence.length));
      expectNoMore(solved(withCase(facts, { independence: fewer })), solved(facts));
    });
  });
});

describe('what changes nothing', { timeout: minute }, () => {
  test('an item neither cited nor in conflict changes no number', () => {
    always((facts, at) => {
      const refs = [...facts.records.values()].flatMap((record) =>
        record.mentions.map((m) => `${record.id}#${m.id}`),
      );
      const extra: Evidence = {
        id: 'extra',
        from: [refs[at % refs.length] as string],
        states: 'name',
        kind: 'direct',
      };
      const place = theCase(facts).conclusion?.place;
      const before = fromReal(solved(facts));
      for (const item of [extra, { ...extra, place }]) {
        const first = at % 2 === 0;
        const evidence = first ? [item, ...theCase(facts).evidence] : [...theCase(facts).evidence, item];
        const { untied, holds, roots, ...after } = fromReal(solved(withCase(facts, { evidence })));
        expect(after).toEqual((({ untied: _u, holds: _h, roots: _r, ...rest }) => rest)(before));
        expect(untied.filter((id) => id !== 'extra')).toEqual(before.untied);
        expect(holds).toMatchObject(before.holds);
        expect(roots).toMatchObject(before.roots);
      }
    });
  });

  test('the order of files: records, people, places and searches', () => {
    always((facts, at) => {
      const turned = <T>(entries: ReadonlyMap<string, T>) => {
        const list = [...entries].reverse();
        const cut = at % Math.max(1, list.length);
        return new Map([...list.slice(cut), ...list.slice(0, cut)]);
      };
      const shuffled: Facts = {
        ...facts,
        records: turned(facts.records),
        people: turned(facts.people),
        places: turned(facts.places),
        searches: turned(facts.searches),
      };
      const plain = ({
        weakest,
        points: _points,
        problems: _problems,
        items,
        pairs,
        ...rest
      }: CaseResult) => ({
        ...rest,
        weakest: weakest.length,
        counts: items.map((item) => item.counts),
        relations: pairs.map((pair) => pair.relation),
      });
      expect(plain(solved(shuffled))).toEqual(plain(solved(facts)));
      expect(fromReal(solved(shuffled))).toEqual(fromReal(solved(facts)));
    });
  });

  test('the order of evidence changes no number', () => {
    always((facts) => {
      const evidence = [...theCase(facts).evidence].reverse();
      const numbers = (result: CaseResult) => ({
        standing: result.standing,
        margin: result.margin,
        criticalRecords: result.criticalRecords,
        support: result.support.map(({ place, independent, evidence: items }) => [
          place,
          independent,
          [...items].sort(),
        ]),
        conflicts: result.conflicts.map(({ evidence: id, answered }) => [id, answered].join()).sort(),
      });
      expect(numbers(solved(withCase(facts, { evidence })))).toEqual(numbers(solved(facts)));
    });
  });

  test('parents and spouses nobody’s information came from', () => {
    always((facts) => {
      const stranger: Person = {
        id: 'stranger',
        name: 'A stranger',
        placeholder: false,
        parents: [{ person: 'p0', from: [] }],
        spouses: [{ person: 'p1', from: [] }],
        mentions: [],
        body: '',
      };
      const more: Facts = { ...facts, people: new Map([['stranger', stranger], ...facts.people]) };
      expect(fromReal(solved(more))).toEqual(fromReal(solved(facts)));
    });
  });
});

describe('arguments and derivation', { timeout: minute }, () => {
  test('an argument lifts the pair it speaks of when that is undetermined, and nothing else', () => {
    always((facts, at) => {
      const before = solved(facts);
      const pair = before.pairs[at % Math.max(1, before.pairs.length)];
      if (!pair) return;
      const argument = { between: [pair.a, pair.b], because: 'They never met.' };
      const after = solved(withCase(facts, { independence: [...theCase(facts).independence, argument] }));
      const without = (pairs: [string, string][]) => pairs.filter(([a, b]) => a !== pair.a || b !== pair.b);
      expect(after.dependence).toEqual(before.dependence);
      expect(after.undetermined).toEqual(without(before.undetermined));
      expect(without(after.argued)).toEqual(without(before.argued));
      expect(after.argued.some(([a, b]) => a === pair.a && b === pair.b)).toBe(
        pair.relation === 'undetermined',
      );
      expectNoMore(before, after);
    });
  });

  test('to derive certainly where it was perhaps never counts for more, if the record names its informant', () => {
    // Without an informant it can: then only the `perhaps` left the record's own unknown root standing.
    always((facts, at) => {
      const likely = [...facts.records.values()].flatMap((record) =>
        record.derivedFrom.flatMap((source) =>
          typeof source !== 'string' && 'perhaps' in source ? [{ record, source }] : [],
        ),
      );
      const chosen = likely[at % Math.max(1, likely.length)];
      if (!chosen || exemplars(facts, chosen.source.perhaps).includes(chosen.record.id)) return;
      const names = Object.keys(chosen.record.informants);
      if (chosen.record.informant === undefined && names.length !== 1) return;
      const certain = withRecord(facts, chosen.record.id, (record) => ({
        ...record,
        derivedFrom: record.derivedFrom.map((source) =>
          source === chosen.source ? chosen.source.perhaps : source,
        ),
      }));
      expectNoMore(solved(certain), solved(facts));
    }, 1500);
  });

  test('two items of one record, or of a record and its exemplar, are never independent', () => {
    always((facts) => {
      const result = solved(facts);
      const records = new Map(
        result.items.map((item) => [item.id, item.records.flatMap((r) => [r, ...exemplars(facts, r)])]),
      );
      for (const { a, b, relation } of result.pairs)
        if (records.get(a)?.some((record) => records.get(b)?.includes(record)))
          expect(relation).toBe('dependent');
    });
  });
});

describe('numbers that belong together', { timeout: minute }, () => {
  test('a place that contains another has at least its number', () => {
    always((facts) => {
      const { support } = solved(facts);
      for (const inner of support)
        for (const outer of support)
          if (facts.places.get(inner.place)?.within.some((one) => one.place === outer.place))
            expect(outer.independent).toBeGreaterThanOrEqual(inner.independent);
    });
  });

  test('the first level of support is the concluded place, and no level comes before one it contains', () => {
    always((facts) => {
      const { support, place, independent } = solved(facts);
      if (place === null) return;
      expect(support[0]).toMatchObject({ place, independent });
      for (const [i, level] of support.entries())
        for (const later of support.slice(i + 1))
          expect(facts.places.get(later.place)?.within.map((one) => one.place)).not.toContain(level.place);
    });
  });

  test('standing says what the numbers say', () => {
    always((facts) => {
      const result = solved(facts);
      const answered = result.conflicts.every((conflict) => conflict.answered);
      const expected = result.independent < 2 ? 'short' : answered ? 'meets' : 'contested';
      expect(result.standing).toBe(theCase(facts).conclusion ? expected : 'open');
    });
  });

  test('the margin is 0 exactly when there are fewer than two, and less than the number of items', () => {
    always((facts) => {
      const { independent, margin, support } = solved(facts);
      expect(margin === 0).toBe(independent < 2);
      // One record of every item but one would do.
      expect(margin).toBeLessThanOrEqual(Math.max(0, (support[0]?.evidence.length ?? 0) - 1));
    });
  });

  test('there are critical records exactly when the margin is 1, and losing one really leaves fewer than two', () => {
    always((facts) => {
      const { margin, criticalRecords, place } = solved(facts);
      expect(criticalRecords.length > 0).toBe(margin === 1);
      expect(criticalRecords).toEqual([...criticalRecords].sort());
      for (const id of place === null || margin === 0 ? [] : facts.records.keys())
        expect([id, leftWithout(facts, caseId, [id]) < 2]).toEqual([id, criticalRecords.includes(id)]);
    });
  });

  test('the weakest set is as large as the margin, and losing it really leaves fewer than two', () => {
    always((facts) => {
      const { margin, weakest } = solved(facts);
      expect(new Set(weakest).size).toBe(margin);
      expect(leftWithout(facts, caseId, weakest)).toBeLessThan(2);
    });
  });
});
