import { expect, test } from 'vitest';
import {
  bounded,
  limits,
  moved,
  whole,
  zoomed,
  type Size,
  type View,
} from '../../components/scripts/scan-view.ts';

const frames: Size[] = [
  { width: 390, height: 760 },
  { width: 1260, height: 700 },
  { width: 333, height: 333 },
];
const images: Size[] = [
  { width: 1800, height: 1380 },
  { width: 240, height: 4000 },
  { width: 60, height: 40 },
];
const pairs = frames.flatMap((frame) => images.map((image) => ({ frame, image })));

/** Whether an image leaves no empty edge where it is larger than its frame, and lies in the middle where it is smaller. */
function fills(view: View, frame: Size, image: Size): boolean {
  const along = (at: number, room: number, length: number) =>
    length <= room + 1e-6
      ? Math.abs(at - (room - length) / 2) < 1e-6
      : at <= 1e-6 && at + length >= room - 1e-6;
  return (
    along(view.x, frame.width, image.width * view.scale) &&
    along(view.y, frame.height, image.height * view.scale)
  );
}

test('the whole image lies within its frame, in the middle, never larger than it is', () => {
  for (const { frame, image } of pairs) {
    const view = whole(frame, image);
    expect(view.scale).toBeLessThanOrEqual(1);
    expect(image.width * view.scale).toBeLessThanOrEqual(frame.width + 1e-6);
    expect(image.height * view.scale).toBeLessThanOrEqual(frame.height + 1e-6);
    expect(fills(view, frame, image)).toBe(true);
  }
});

test('wherever one zooms and moves, the scale keeps its limits and no edge stands empty', () => {
  for (const { frame, image } of pairs) {
    const { least, most } = limits(frame, image);
    let view = whole(frame, image);
    for (let i = 0; i < 60; i++) {
      const at = { x: (i * 97) % frame.width, y: (i * 61) % frame.height };
      view =
        i % 3 === 0
          ? moved(view, { x: (i % 7) * 60 - 180, y: (i % 5) * 90 - 180 }, frame, image)
          : zoomed(view, i % 4 === 0 ? 0.6 : 1.4, at, frame, image);
      expect(view.scale).toBeGreaterThanOrEqual(least);
      expect(view.scale).toBeLessThanOrEqual(most);
      expect(fills(view, frame, image)).toBe(true);
      expect(bounded(view, frame, image)).toEqual(view);
    }
  }
});

test('the spot under the point zoomed about stays there, where no edge is in the way', () => {
  const frame = { width: 400, height: 300 };
  const image = { width: 2000, height: 1500 };
  const view: View = { scale: 1, x: -700, y: -500 };
  for (const at of [
    { x: 200, y: 150 },
    { x: 90, y: 240 },
  ])
    for (const factor of [0.9, 1.4, 2]) {
      const next = zoomed(view, factor, at, frame, image);
      expect((at.x - next.x) / next.scale).toBeCloseTo((at.x - view.x) / view.scale, 6);
      expect((at.y - next.y) / next.scale).toBeCloseTo((at.y - view.y) / view.scale, 6);
      expect(next.scale).toBeCloseTo(view.scale * factor, 9);
    }
});
