/** What a series may tell of a person that helps to find an origin, the most telling first. */
export const tellingFields = [
  'birthplace',
  'lastResidence',
  'nearest',
  'joining',
  'parents-birthplace',
  'parents-names',
  'maiden-name',
  'previous-residence',
  'immigrated',
  'voyage',
  'naturalized',
  'year-naturalized',
  'mother-tongue',
  'destination',
  'relations',
  'children',
  'religion',
  'born',
  'age',
  'residence',
  'household',
  'occupation',
  'landlord',
  'signature',
] as const;
export type TellingField = (typeof tellingFields)[number];

/** Those of the fields that help, the most telling first. */
export function tellingOf(fields: readonly string[]): TellingField[] {
  const has = new Set(fields);
  return tellingFields.filter((key) => has.has(key));
}
