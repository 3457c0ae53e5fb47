import type { BuiltInPlace, BuiltInWithin } from './types.ts';

/** Everything of a place that its table row says; what is left out is empty. */
export interface PlaceRow {
  id: string;
  name: string;
  kind: string;
  within?: readonly (string | BuiltInWithin)[];
  variants?: readonly string[];
  overlaps?: readonly string[];
  lat?: number;
  lon?: number;
  from?: string;
  to?: string;
  iso?: string;
  chapman?: string;
}

/**
 * A whole place from a short table row: `within` may hold bare ids, lists may be absent, and the table's source is
 * every row's source.
 */
export function place(row: PlaceRow, source: string): BuiltInPlace {
  const { id, name, kind, within = [], variants = [], overlaps = [], ...rest } = row;
  return {
    id,
    name,
    kind,
    within: within.map((above) => (typeof above === 'string' ? { place: above } : above)),
    variants: [...variants],
    overlaps: [...overlaps],
    ...rest,
    source,
  };
}
