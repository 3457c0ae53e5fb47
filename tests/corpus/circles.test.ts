import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circles } from '../../src/corpus/circles.ts';

describe('circles', () => {
  test('of a chain of a hundred thousand are none, and found without running out of stack', () => {
    const nodes = Array.from({ length: 100_000 }, (_, index) => String(index));
    expect(circles(nodes, (node) => (node === '99999' ? [] : [String(Number(node) + 1)]))).toEqual([]);
    expect(circles(nodes, (node) => [String((Number(node) + 1) % 100_000)])[0]).toHaveLength(100_000);
  });

  test('are found exactly where walking on from a node leads back to it', () => {
    const graph = fc.array(fc.array(fc.nat(6), { maxLength: 3 }), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(graph, (edges) => {
        const next = (node: string) => edges[Number(node)]!.map(String);
        const nodes = edges.map((_, index) => String(index));
        const reaches = (from: string, to: string) => {
          const seen = new Set<string>();
          const open = [...next(from)];
          for (let node = open.pop(); node !== undefined; node = open.pop()) {
            if (seen.has(node)) continue;
            seen.add(node);
            open.push(...next(node));
          }
          return seen.has(to);
        };
        const found = circles(nodes, next);
        for (const circle of found)
          circle.forEach((node, index) => expect(next(node)).toContain(circle[(index + 1) % circle.length]!));
        const knots = nodes.filter((node) => reaches(node, node));
        for (const node of knots)
          expect(
            found.some(
              (circle) => circle[0] === node || (reaches(circle[0]!, node) && reaches(node, circle[0]!)),
            ),
          ).toBe(true);
        for (const circle of found) expect(knots).toContain(circle[0]!);
      }),
      { numRuns: 500, seed: 1 },
    );
  });
});
