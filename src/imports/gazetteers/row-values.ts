/** What rows of every gazetteer have: names, coordinates, and whether the row is wanted. */

/** Beyond these nothing is taken in: places, other names of one, signs of a name. */
export const most = { rows: 1_000_000, variants: 40, text: 200 };

/** What of the file is wanted, so that a country’s file need not be held whole. */
export interface Wanted {
  /** Kinds or feature codes, in small letters; all usual ones where it is empty. */
  kinds: readonly string[];
  /** South, west, north, east. */
  box: readonly [number, number, number, number] | undefined;
  /** The beginning of a row’s codes, such as `US.MI.061`. */
  admin: string | undefined;
}

/** Coordinates of WGS 84, or `undefined`. */
export function degrees(text: string, most: number): number | undefined {
  const plain = text.trim().replace(/^(-?\d{1,3}),(\d+)$/, '$1.$2');
  if (!/^-?\d{1,3}(?:\.\d{1,20})?$/.test(plain)) return undefined;
  const value = Number(plain);
  return Math.abs(value) <= most ? Math.round(value * 1e5) / 1e5 : undefined;
}

/** Whether a point lies in the box that is wanted. */
export const inBox = (box: Wanted['box'], lat: number | undefined, lon: number | undefined): boolean => {
  if (!box) return true;
  if (lat === undefined || lon === undefined) return false;
  const [south, west, north, east] = box;
  const across = west <= east ? lon >= west && lon <= east : lon >= west || lon <= east;
  return lat >= south && lat <= north && across;
};

/** Names in letters of the West, each once, without codes and addresses of pages. */
export function distinct(names: readonly string[], own: string): string[] {
  const seen = new Set([own]);
  return names
    .filter(
      (name) =>
        name !== '' &&
        name.length <= most.text &&
        /\p{Script=Latin}/u.test(name) &&
        !/^(?:https?:|[A-Z]{3}$)|[\p{Cc}]/u.test(name) &&
        !seen.has(name) &&
        seen.add(name),
    )
    .slice(0, most.variants);
}
