import { describe, expect, test } from 'vitest';
import { ageScale, stretchOn } from '../../components/charts/ages.ts';
import { daySpan } from '../../src/model/edtf.ts';

const days = (date: string) => {
  const { first, last } = daySpan(date);
  return { first: first!, last: last! };
};

describe('the scale of the chart of ages', () => {
  test.each([
    [['1840-05-02']],
    [['1840', '1843-06']],
    [['1831/1832', '1855']],
    [['1700', '1890']],
    [['1', '2000'].map((year) => year.padStart(4, '0'))],
  ])('holds %j, with few enough years to letter', (dates) => {
    const stretches = dates.map(days);
    const scale = ageScale(stretches);
    for (const stretch of stretches) {
      const { left, width } = stretchOn(scale, stretch);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(width).toBeGreaterThanOrEqual(0.8);
      expect(left + width).toBeLessThanOrEqual(100.001);
    }
    expect(scale.ticks.length).toBeGreaterThanOrEqual(2);
    expect(scale.ticks.length).toBeLessThanOrEqual(7);
    for (const tick of scale.ticks)
      expect(tick.at).toBe(scale.at(days(String(tick.year).padStart(4, '0')).first));
  });

  test('later days stand farther to the right, in proportion', () => {
    const scale = ageScale([days('1840/1849')]);
    const [a, b, c] = ['1842', '1844', '1846'].map((year) => scale.at(days(year).first));
    expect(b! - a!).toBeCloseTo(c! - b!, 1);
    expect(b!).toBeGreaterThan(a!);
  });
});
