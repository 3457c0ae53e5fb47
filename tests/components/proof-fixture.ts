/** Invented case results for the tests of the proof page: any shape the computation may hand over. */
import fc from 'fast-check';
import type { Evidence } from '../../src/model/case.ts';
import type { CaseResult, ItemResult, Pair, Relation, SupportLevel } from '../../src/reasoning/types.ts';

export interface Shape {
  result: CaseResult;
  evidence: Evidence[];
}

/** The first largest set of pairwise independent items, found by trying every set. */
export function largestSet(
  items: readonly string[],
  independent: (a: string, b: string) => boolean,
): string[] {
  let best: string[] = [];
  const grow = (from: number, chosen: string[]) => {
    if (chosen.length > best.length) best = chosen;
    if (chosen.length + items.length - from <= best.length) return;
    for (let i = from; i < items.length; i++)
      if (chosen.every((c) => independent(c, items[i]!))) grow(i + 1, [...chosen, items[i]!]);
  };
  grow(0, []);
  return best;
}

const relations: Relation[] = ['independent', 'independent', 'undetermined', 'dependent'];

/** A case of `many` items at most, over a chain of places, some of which branch. */
export function anyCase(many: number): fc.Arbitrary<Shape> {
  return fc
    .record({
      levels: fc.integer({ min: 1, max: 8 }),
      items: fc.array(
        fc.record({
          // The innermost level it reaches; -1 is a place of its own, -2 none.
          reach: fc.integer({ min: -2, max: 7 }),
          skips: fc.array(fc.integer({ min: 1, max: 7 }), { maxLength: 2 }),
          cited: fc.boolean(),
          tie: fc.constantFrom(
            'not-needed' as const,
            'holds' as const,
            'broken' as const,
            'missing' as const,
          ),
          conflict: fc.constantFrom('none' as const, 'answered' as const, 'open' as const),
          negative: fc.nat(9).map((n) => n === 0),
        }),
        { maxLength: many },
      ),
      relation: fc.array(fc.constantFrom(...relations), { minLength: 60, maxLength: 300 }),
      argued: fc.array(fc.nat(300), { maxLength: 4 }),
    })
    .map(({ levels, items, relation, argued }) => {
      const evidence = items.map((item, index) => ({
        id: `e${index + 1}`,
        from: [`record-${index}#m1`],
        kind: item.negative ? 'negative' : 'direct',
        ...(item.negative
          ? { against: 'p0' }
          : item.reach === -2
            ? {}
            : { place: item.reach === -1 ? 'elsewhere' : `p${item.reach % levels}` }),
      })) as Evidence[];
      const counts = items.map(
        (item) =>
          item.cited && !item.negative && item.reach !== -2 && ['not-needed', 'holds'].includes(item.tie),
      );
      const ids = evidence
        .filter((e, index) => e.place !== undefined && items[index]!.cited)
        .map((e) => e.id);
      const pairs: Pair[] = [];
      for (const [i, a] of ids.entries())
        for (const b of ids.slice(i + 1)) {
          const kind = relation[pairs.length % relation.length]!;
          const argument = kind === 'undetermined' ? argued.indexOf(pairs.length) : -1;
          pairs.push({ a, b, relation: kind, reasons: [], ...(argument >= 0 ? { argument } : {}) });
        }
      const free = new Set(
        pairs
          .filter((p) => p.relation === 'independent' || p.argument !== undefined)
          .flatMap((p) => [`${p.a} ${p.b}`, `${p.b} ${p.a}`]),
      );
      const support: SupportLevel[] = Array.from({ length: levels }, (_, level) => {
        const here = evidence.filter((_e, i) => {
          const { reach, skips } = items[i]!;
          return (
            counts[i] &&
            reach >= 0 &&
            reach % levels <= level &&
            (reach % levels === level || !skips.includes(level))
          );
        });
        const witnesses = largestSet(
          here.map((e) => e.id),
          (a, b) => free.has(`${a} ${b}`),
        );
        return {
          place: `p${level}`,
          kind: level % 3 === 0 ? 'county' : 'civil parish',
          independent: witnesses.length,
          evidence: here.map((e) => e.id),
          witnesses,
        };
      });
      const conflicts = evidence.flatMap((e, i) =>
        items[i]!.conflict !== 'none' &&
        (items[i]!.negative || (e.place !== undefined && !support[0]!.evidence.includes(e.id)))
          ? [{ evidence: e.id, answered: items[i]!.conflict === 'answered' }]
          : [],
      );
      const results = items.map((item, index): ItemResult => ({
        id: `e${index + 1}`,
        index,
        cited: item.cited,
        counts: counts[index]!,
        needsTie: item.tie !== 'not-needed',
        tie: item.tie,
        tieReasons: [],
        roots: [],
        records: [`record-${index}`],
        exemplars: [`record-${index}`],
        mentions: [],
        onQuestion: true,
      }));
      const result: CaseResult = {
        id: 'case',
        subject: 'subject',
        claim: 'probable',
        place: 'p0',
        standing: 'meets',
        independent: support[0]!.independent,
        support,
        items: results,
        pairs,
        dependence: [],
        undetermined: [],
        argued: [],
        untied: [],
        conflicts,
        margin: 0,
        weakest: [],
        criticalRecords: [],
        searched: true,
        points: [],
        problems: [],
      };
      return { result, evidence };
    });
}
