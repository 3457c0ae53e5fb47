/** How often something is expected, in words that fit behind “would”. */

/** “0.3”, “fewer than 0.01”. */
export function expectedWords(mean: number): string {
  return mean < 0.01 ? 'fewer than 0.01' : String(Number(mean.toPrecision(2)));
}

/** A chance as “in about 20 of 100 families” or “in about one of 400 families”. */
export function oddsWords(chance: number): string {
  if (chance >= 0.095) return `in about ${Math.round(chance * 100)} of 100 families`;
  if (chance < 1e-6) return 'in fewer than one of a million families';
  return `in about one of ${thousands(Number((1 / chance).toPrecision(2)))} families`;
}

const thousands = (value: number): string => String(value).replace(/\B(?=(?:\d{3})+$)/gu, ',');
