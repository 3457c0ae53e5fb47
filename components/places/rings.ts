/** The places around a place as a surveyor would sketch them: rings of distance, marks by direction. */
import { placeLabels, type Label } from '../charts/labels.ts';
import type { Dossier, PlaceView } from '../../src/dossier/types.ts';

export interface Rings {
  rings: { km: number; r: number }[];
  marks: { x: number; y: number }[];
  labels: Label[];
}

export const ringSheet = { width: 380, height: 340, reach: 142, name: 13.5, figures: 12.5 };

/** Steps a reader reckons in. */
const steps = [0.5, 1, 2, 5, 10, 15];

/** The sketch for a place with neighbours that lie apart from it, or nothing. */
export function ringsOf(dossier: Dossier, { place, near }: PlaceView): Rings | undefined {
  const { lat, lon } = place;
  if (lat === undefined || lon === undefined) return undefined;
  const others = near.flatMap(({ place: id }) => {
    const other = dossier.places.get(id)?.place;
    if (other?.lat === undefined || other.lon === undefined) return [];
    const east = (other.lon - lon) * 111.32 * Math.cos((lat * Math.PI) / 180);
    const north = (other.lat - lat) * 110.57;
    return [{ east, north, name: other.name }];
  });
  const far = Math.max(0, ...others.map(({ east, north }) => Math.hypot(east, north)));
  if (far < 0.3) return undefined;
  const step = steps.find((km) => 3 * km >= far) ?? steps.at(-1)!;
  const { width, height, reach, name: size } = ringSheet;
  const unit = reach / (3 * step);
  const [cx, cy] = [width / 2, height / 2];
  const marks: { x: number; y: number; names: string[] }[] = [];
  for (const { east, north, name } of others) {
    const [x, y] = [cx + east * unit, cy - north * unit];
    const same = marks.find((mark) => Math.hypot(mark.x - x, mark.y - y) < 5);
    if (!same) marks.push({ x, y, names: [name] });
    else if (!same.names.includes(name)) same.names.push(name);
  }
  const rings = [1, 2, 3].map((n) => ({ km: n * step, r: n * step * unit }));
  const labels = placeLabels(
    [
      { x: cx, y: cy, text: place.name, size: size + 2, reach: 8, bold: true },
      ...marks.map(({ x, y, names }) => ({
        x,
        y,
        text: names.slice(0, 2).join(', '),
        size,
        reach: 4,
        sides:
          x < cx
            ? (['west', 'above', 'below', 'east'] as const)
            : (['east', 'above', 'below', 'west'] as const),
      })),
    ],
    [2, 2, width - 2, height - 2],
    rings.map(({ r }) => [cx - 22, cy + r - 8, cx + 22, cy + r + 8] as const),
  );
  return { rings, marks, labels };
}
