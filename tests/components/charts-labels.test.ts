/** Names on maps: none overprints another, a mark or ground that is taken, and none leaves the sheet. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clustered,
  placeLabels,
  widthOf,
  type Ask,
  type Box,
  type Label,
} from '../../components/charts/labels.ts';

const frame: Box = [0, 0, 400, 300];
const asks = fc.array(
  fc.record({
    x: fc.integer({ min: 5, max: 395 }),
    y: fc.integer({ min: 5, max: 295 }),
    text: fc.constantFrom('Bergen', 'Knockmahon', 'New York City', 'Å', 'Houghton County and 3 more'),
    size: fc.constantFrom(12, 14, 20),
    reach: fc.constantFrom(3, 6, 12),
  }),
  { maxLength: 60 },
);

const boxOf = (label: Label, { size }: Ask): Box => {
  const wide = widthOf(label.text) * size;
  const left = label.x - { start: 0, middle: wide / 2, end: wide }[label.anchor];
  return [left, label.y - size * 0.8, left + wide, label.y + size * 0.26];
};
const meet = (a: Box, b: Box) =>
  a[0] < b[2] - 1e-9 && a[2] > b[0] + 1e-9 && a[1] < b[3] - 1e-9 && a[3] > b[1] + 1e-9;

describe('placing names', () => {
  test('leaves no two on the same ground', () => {
    const taken: Box = [300, 250, 400, 300];
    fc.assert(
      fc.property(asks, (some) => {
        const labels = placeLabels(some, frame, [taken]);
        const boxes = labels.map((label) => boxOf(label, some[label.of]!));
        const marks = some.map(({ x, y, reach }): Box => [x - reach, y - reach, x + reach, y + reach]);
        boxes.forEach((box, i) => {
          expect(box[0] >= frame[0] && box[1] >= frame[1] && box[2] <= frame[2] && box[3] <= frame[3]).toBe(
            true,
          );
          for (const other of [...boxes.slice(i + 1), ...marks, taken]) expect(meet(box, other)).toBe(false);
        });
      }),
      { numRuns: 100 },
    );
  });

  test('gives the first asked its first side, and another side where that one is taken', () => {
    const ask = { text: 'Vik', size: 14, reach: 4 };
    const alone = placeLabels([{ ...ask, x: 200, y: 150 }], frame);
    expect(alone).toMatchObject([{ anchor: 'start', of: 0 }]);
    const wall: Box = [205, 0, 400, 300];
    expect(placeLabels([{ ...ask, x: 200, y: 150 }], frame, [wall])).toMatchObject([{ anchor: 'end' }]);
    expect(placeLabels([{ ...ask, x: 200, y: 150 }], frame, [frame])).toEqual([]);
  });

  test('finds room for each of many that stand apart', () => {
    const many = Array.from({ length: 20_000 }, (_, i) => ({
      x: 100 + (i % 100) * 200,
      y: 20 + Math.floor(i / 100) * 40,
      text: 'Kilmacthomas',
      size: 14,
      reach: 4,
    }));
    expect(placeLabels(many, [0, 0, 20_200, 8_040])).toHaveLength(20_000);
  });
});

test('points close together are one group, led by the first; those apart are not', () => {
  const points = [
    { x: 0, y: 0, id: 'a' },
    { x: 30, y: 0, id: 'b' },
    { x: 6, y: 6, id: 'c' },
    { x: 30, y: 9.9, id: 'd' },
  ];
  const ids = clustered(points, 10).map((group) => group.map(({ id }) => id));
  expect(ids).toEqual([
    ['a', 'c'],
    ['b', 'd'],
  ]);
});
