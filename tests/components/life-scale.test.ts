import { describe, expect, test } from 'vitest';
import { lifeScale, type Turn } from '../../components/cases/life-scale.ts';

const turn = (at: number, word = 'married', said = `${Math.floor(at)}, aged 25 or 26`): Turn => ({
  at,
  word,
  said,
});
const life = (turns: Turn[], records: number[] = [], children: number[] = []) => ({
  turns,
  records,
  children,
});

describe('a life along a scale of years', () => {
  test('is laid over whole decades, in proportion', () => {
    const drawn = lifeScale(life([turn(1841), turn(1899)]), 612)!;
    expect(drawn.decades.map(({ year }) => year)).toEqual([1840, 1850, 1860, 1870, 1880, 1890]);
    expect([drawn.first, drawn.last]).toEqual([6, 606]);
    expect(drawn.turns.map(({ x }) => x)).toEqual([16, 596]);
  });

  test('needs two moments a year apart', () => {
    expect(lifeScale(life([]), 600)).toBeUndefined();
    expect(lifeScale(life([turn(1840)]), 600)).toBeUndefined();
    expect(lifeScale(life([turn(1840)], [1840.5]), 600)).toBeUndefined();
    expect(lifeScale(life([turn(1840)], [1850]), 600)).toBeDefined();
  });

  test.each([340, 760])('in %d units no two turns share ground, and none leaves the drawing', (width) => {
    const drawn = lifeScale(life([1840, 1864, 1866.2, 1866.9, 1901, 1903.4].map((at) => turn(at))), width)!;
    const boxes = drawn.turns.map(({ x, top, anchor }) => {
      const wide = 115;
      return { x, top, left: anchor === 'start' ? x : x - wide, right: anchor === 'start' ? x + wide : x };
    });
    for (const [i, a] of boxes.entries()) {
      expect(a.left).toBeGreaterThanOrEqual(0);
      expect(a.right).toBeLessThanOrEqual(width + 5);
      for (const b of boxes.slice(i + 1))
        if (a.top === b.top) expect(a.right <= b.left || b.right <= a.left).toBe(true);
    }
  });

  test('no line runs through the words of another turn where there is a way round', () => {
    const drawn = lifeScale(life([turn(1840), turn(1864), turn(1866), turn(1870)]), 760)!;
    const tops = drawn.turns.map(({ top }) => top);
    // The earlier of those close together rise over the later, whose words stand right of their lines.
    expect(tops[1]).toBeLessThan(tops[2]!);
    expect(tops[2]).toBeLessThan(tops[3]!);
  });

  test('years are named as seldom as there is room for', () => {
    const named = (width: number) =>
      lifeScale(life([turn(1700), turn(1799)]), width)!.decades.filter(({ isNamed }) => isNamed).length;
    expect(named(760)).toBe(10);
    expect(named(340)).toBe(5);
  });
});
