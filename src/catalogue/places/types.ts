/** One jurisdiction a place lies in; the dates say when it did, as EDTF, where it was not always so. */
export interface BuiltInWithin {
  place: string;
  from?: string;
  to?: string;
}

/**
 * One place the catalogue knows without being told: the shape of a row of an author's place file, and the codes
 * of ISO 3166 and the Chapman codes beside it.
 */
export interface BuiltInPlace {
  /** The permanent id; once published it never changes its meaning. */
  id: string;
  /** The name in English, as the trade writes it today. */
  name: string;
  /** What sort of place: `country`, `province`, `county`, `state`, `territory` and the like. */
  kind: string;
  /** What it lies in, the present and usual one first. Empty for a country that lies in nothing. */
  within: BuiltInWithin[];
  /** Other spellings, native names and former names. */
  variants: string[];
  /** Ids of places that share ground with this one without nesting in it. */
  overlaps: string[];
  /** A point near the middle, in decimal degrees, good to about a tenth of a degree. */
  lat?: number;
  lon?: number;
  /** When a place of this name existed, as EDTF, where it did not always. */
  from?: string;
  to?: string;
  /** ISO 3166-1 alpha-2 code of a country, or ISO 3166-2 code of a part of one. */
  iso?: string;
  /** Chapman county code. */
  chapman?: string;
  /** Where the row comes from. */
  source: string;
}
